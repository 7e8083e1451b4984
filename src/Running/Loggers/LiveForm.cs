using System.Globalization;
using System.Text.Json;
using Litterfall.Domain.Tanks;
using Litterfall.Running.Loggers.Cells;

namespace Litterfall.Running.Loggers;

/// <summary>Readings that a sensor sends as JSON, or as a bare number under a topic.</summary>
public static class LiveForm
{
    /// <summary>Most readings at once.</summary>
    public const int Most = 10_000;

    private const int MostPlace = 60;

    /// <summary>Reads "{ place, quantity, value, unit, at }" or a list of them.</summary>
    /// <param name="json">The text.</param>
    /// <param name="now">Time of those without one, UTC.</param>
    /// <param name="refusal">Why it cannot be taken, in one sentence; empty where it can.</param>
    public static List<LiveReading> Read(string json, DateTime now, out string refusal)
    {
        var readings = new List<LiveReading>();
        try
        {
            using var document = JsonDocument.Parse(json);
            var root = document.RootElement;
            var items = root.ValueKind == JsonValueKind.Array ? root.EnumerateArray().ToList() : [root];
            refusal = items.Count is 0 or > Most
                ? string.Create(CultureInfo.InvariantCulture, $"Send 1 to {Most} readings at a time.")
                : "";
            for (var i = 0; i < items.Count && refusal.Length == 0; i++)
            {
                var one = One(items[i], now, out var wrong);
                refusal =
                    wrong.Length == 0
                        ? ""
                        : string.Create(CultureInfo.InvariantCulture, $"Reading {i + 1}: {wrong}.");
                if (one is not null)
                {
                    readings.Add(one);
                }
            }
        }
        catch (JsonException)
        {
            refusal = "These readings do not read; expected JSON with place, quantity, value and at.";
        }

        return readings;
    }

    /// <summary>A bare number under a topic that ends in place and quantity: "tanks/A3/humidity".</summary>
    public static LiveReading? Read(string topic, string payload, DateTime now)
    {
        var levels = topic.Split('/', StringSplitOptions.RemoveEmptyEntries);
        if (
            levels.Length < 2
            || !NumberCell.TryRead(payload.AsSpan().Trim(), out var value)
            || double.IsNaN(value)
        )
        {
            return null;
        }

        return Quantity(levels[^1]) is { } quantity && levels[^2].Length <= MostPlace
            ? Made(levels[^2], quantity, "", value, now)
            : null;
    }

    private static LiveReading? One(JsonElement item, DateTime now, out string wrong)
    {
        wrong = "";
        if (item.ValueKind != JsonValueKind.Object)
        {
            wrong = "expected an object with place, quantity, value and at";
            return null;
        }

        var place = Text(item, "place").Trim();
        var at = now;
        if (place.Length is 0 or > MostPlace)
        {
            wrong = "place is missing; expected a tank such as A3, or room";
        }
        else if (Quantity(Text(item, "quantity")) is null)
        {
            wrong = "quantity is missing; expected temperature, humidity, dew-point, pressure or light";
        }
        else if (!item.TryGetProperty("value", out var v) || v.ValueKind != JsonValueKind.Number)
        {
            wrong = "value is missing; expected a number";
        }
        else if (item.TryGetProperty("at", out var told) && !TryTime(told, out at))
        {
            wrong = "at is no time; expected one such as 2026-03-01T09:00:00Z";
        }
        else if (v.TryGetDouble(out var value) && double.IsFinite(value))
        {
            return Made(place, Quantity(Text(item, "quantity"))!.Value, Text(item, "unit"), value, at);
        }

        wrong = wrong.Length > 0 ? wrong : "value is too large";
        return null;
    }

    private static LiveReading Made(
        string place,
        LogQuantity quantity,
        string unit,
        double value,
        DateTime at
    )
    {
        var known = UnitWord.Find(unit);
        var isFit = known is not null && (known.Quantity == quantity || quantity == LogQuantity.DewPoint);
        var usual = quantity switch
        {
            LogQuantity.Temperature or LogQuantity.DewPoint => "°C",
            LogQuantity.Humidity => "%",
            LogQuantity.Pressure => "hPa",
            LogQuantity.Light => "lx",
            _ => unit,
        };
        return isFit
            ? new(place, quantity, known!.Kept, known.Convert(value), at)
            : new(place, quantity, usual, value, at);
    }

    private static bool TryTime(JsonElement told, out DateTime at)
    {
        at = default;
        if (
            told.ValueKind != JsonValueKind.String
            || !DateTimeOffset.TryParse(
                told.GetString(),
                CultureInfo.InvariantCulture,
                DateTimeStyles.AssumeUniversal,
                out var time
            )
            || time.Year is < 1970 or > 2199
        )
        {
            return false;
        }

        at = time.UtcDateTime;
        return true;
    }

    private static string Text(JsonElement item, string name) =>
        item.TryGetProperty(name, out var value) && value.ValueKind == JsonValueKind.String
            ? value.GetString() ?? ""
            : "";

    private static LogQuantity? Quantity(string word)
    {
        var plain = word.Trim();
        if (
            Enum.TryParse<LogQuantity>(
                plain.Replace("-", "", StringComparison.Ordinal),
                true,
                out var quantity
            ) && !char.IsAsciiDigit(plain.FirstOrDefault('0'))
        )
        {
            return quantity;
        }

        var head = HeadCell.Read(plain);
        return head.Role == HeadRole.Reading ? head.Quantity : null;
    }
}
