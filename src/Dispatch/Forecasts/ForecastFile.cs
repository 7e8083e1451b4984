using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Faults;
using Litterfall.Domain.Lists;
using Litterfall.Domain.Tanks;
using Litterfall.Running.Loggers;
using Litterfall.Running.Loggers.Cells;

namespace Litterfall.Dispatch.Forecasts;

/// <summary>What is known beforehand about a forecast file.</summary>
public sealed record ForecastWish
{
    /// <summary>Zone of the tz database for times that name none.</summary>
    public required string Zone { get; init; }

    /// <summary>"C", "F" or "K" where the file names no unit; empty where nobody said.</summary>
    public string Unit { get; init; } = "";

    /// <summary>Name of the column; empty to guess it.</summary>
    public string Column { get; init; } = "";
}

/// <summary>Hours of a forecast file, and how they were read.</summary>
/// <param name="Hours">Hours in the order of time.</param>
/// <param name="Column">Name of the column that was taken.</param>
/// <param name="Unit">Unit of the file, as it was named or guessed.</param>
/// <param name="Zone">Zone in which its times were read.</param>
/// <param name="Notes">What was guessed, one sentence each.</param>
public sealed record ForecastHours(
    Seq<ForecastHour> Hours,
    string Column,
    string Unit,
    string Zone,
    Seq<string> Notes
);

/// <summary>
/// Reads an hourly forecast of any usual style, as tables or JSON. Columns, marks, dates and offsets are
/// guessed as those of logger files are. A unit that is not named is guessed only where its values leave no
/// doubt.
/// </summary>
public static class ForecastFile
{
    /// <summary>Largest file, bytes.</summary>
    public const int LargestFile = 8 * 1024 * 1024;

    // Middle of a forecast, °C: above it no climate of ours; as °F it is a mild day.
    private const double WarmestMiddle = 33;
    private const double WarmestFahrenheit = 130;
    private const double LeastKelvin = 200;
    private const string Expected = "rows with a time and a temperature";

    private static readonly string[] NotAir =
    [
        "dew",
        "feel",
        "apparent",
        "chill",
        "wet",
        "soil",
        "ground",
        "water",
        "sea",
        "min",
        "max",
        "indoor",
        "sensor",
        "kf",
    ];

    /// <summary>Reads a file.</summary>
    /// <param name="name">Its name, for messages.</param>
    /// <param name="bytes">Its bytes.</param>
    /// <param name="wish">What is known beforehand.</param>
    public static Reading<ForecastHours> Read(string name, ReadOnlySpan<byte> bytes, ForecastWish wish)
    {
        if (bytes.Length > LargestFile)
        {
            return Refused(name, "the file is too large", "an hourly forecast of some days");
        }

        if (PlaceClock.Find(wish.Zone) is null)
        {
            return Refused(name, $"the zone “{wish.Zone}” is unknown", "one such as Europe/Berlin");
        }

        if (!IsJson(bytes))
        {
            return Rows(name, bytes, wish);
        }

        try
        {
            var reader = new Utf8JsonReader(Bare(bytes), new() { AllowTrailingCommas = true });
            using var document = JsonDocument.ParseValue(ref reader);
            return ForecastTable.Read(document.RootElement) is { } table
                ? Rows(name, Encoding.UTF8.GetBytes(table), wish)
                : Refused(name, "no list of hours is in it", Expected);
        }
        catch (JsonException e)
        {
            var line = (int)Math.Min((e.LineNumber ?? 0) + 1, int.MaxValue);
            return new(null, [new TextFault(name, line, 1, "the JSON does not read", Expected)]);
        }
        catch (InvalidOperationException)
        {
            // The reader says so where a text in quotes is no text of Unicode.
            return Refused(name, "a text in the JSON does not read", Expected);
        }
    }

    private static Reading<ForecastHours> Rows(string name, ReadOnlySpan<byte> bytes, ForecastWish wish)
    {
        var reading = LoggerFile.Read(name, bytes, new LoggerWish { Zone = wish.Zone });
        return reading.Value is { } read ? Taken(name, read, wish) : new(null, reading.Faults);
    }

    private static ReadOnlySpan<byte> Bare(ReadOnlySpan<byte> bytes) =>
        bytes.StartsWith("\uFEFF"u8) ? bytes[3..] : bytes;

    private static bool IsJson(ReadOnlySpan<byte> bytes)
    {
        var text = Bare(bytes);
        var at = text.IndexOfAnyExcept(" \t\r\n"u8);
        return at >= 0 && text[at] is (byte)'{' or (byte)'[';
    }

    private static Reading<ForecastHours> Taken(string name, LoggerReading read, ForecastWish wish)
    {
        if (Channel(read, wish.Column) is not { } at)
        {
            return wish.Column.Length > 0
                ? Refused(
                    name,
                    $"no column of temperatures is named “{wish.Column}”",
                    string.Join(", ", read.Report.Channels.Select(c => c.Name))
                )
                : Refused(name, "no column looks like an air temperature", Expected);
        }

        var channel = read.Report.Channels[at];
        var shown = read.Columns.FirstOrDefault(c => c.Channel is not null && c.Channel == channel);
        var named = wish.Unit.Length > 0 ? null : Named(shown, read);
        var raw = Raw(read.Series[at], shown);
        if (raw.Count == 0)
        {
            return Refused(name, $"the column “{channel.Name}” holds no number", Expected);
        }

        var notes = new List<string>(read.Report.Quirks);
        var unit = Unit(wish.Unit) ?? named ?? Guessed(raw, read, notes);
        if (unit is null)
        {
            return Refused(
                name,
                $"the column “{channel.Name}” names no unit, and its values may be °C or °F",
                "say which unit it is in"
            );
        }

        return new(
            new(
                [.. raw.Select(r => new ForecastHour(r.At, unit.Convert(r.Value)))],
                channel.Name,
                unit.Name,
                read.Report.Zone,
                [.. notes]
            ),
            []
        );
    }

    /// <summary>Number of the channel with the air's temperature.</summary>
    private static int? Channel(LoggerReading read, string wished)
    {
        var channels = read.Report.Channels;
        var found = Enumerable
            .Range(0, channels.Count)
            .Where(i => channels[i].Quantity == LogQuantity.Temperature)
            .ToList();
        if (wished.Length > 0)
        {
            var exact = found.Where(i =>
                channels[i].Name.Equals(wished, StringComparison.OrdinalIgnoreCase)
                || read.Columns.Any(c =>
                    c.Channel == channels[i] && c.Head.Equals(wished, StringComparison.OrdinalIgnoreCase)
                )
            );
            return exact.Select(i => (int?)i).FirstOrDefault();
        }

        return found
            .OrderBy(i => NotAir.Any(n => channels[i].Name.Contains(n, StringComparison.OrdinalIgnoreCase)))
            .ThenBy(i => i)
            .Select(i => (int?)i)
            .FirstOrDefault();
    }

    private static UnitWord? Unit(string word) =>
        word.Length > 0 && UnitWord.Find(word) is { Quantity: LogQuantity.Temperature } unit ? unit : null;

    /// <summary>The unit that the head or the cells name; null where it was guessed from values.</summary>
    private static UnitWord? Named(ShownColumn? shown, LoggerReading read)
    {
        if (shown is null)
        {
            return null;
        }

        if (HeadCell.Read(shown.Head).Unit is { Quantity: LogQuantity.Temperature } unit)
        {
            return unit;
        }

        // A line of units, or a unit in the cells.
        return !read.IsFahrenheitGuessed && UnitWord.Find(shown.Unit) is { } told ? told : null;
    }

    /// <summary>Values as the file has them.</summary>
    private static List<(DateTime At, double Value)> Raw(LogSeries series, ShownColumn? shown)
    {
        var unit = shown is null ? null : UnitWord.Find(shown.Unit);
        var raw = new List<(DateTime, double)>(series.Count);
        for (var i = 0; i < series.Count; i++)
        {
            if (double.IsFinite(series.Values[i]))
            {
                var value = unit is null ? series.Values[i] : (series.Values[i] / unit.Scale) + unit.Zero;
                raw.Add((new DateTime(series.Ticks[i], DateTimeKind.Utc), Math.Round(value, 9)));
            }
        }

        return raw;
    }

    private static UnitWord? Guessed(
        List<(DateTime At, double Value)> raw,
        LoggerReading read,
        List<string> notes
    )
    {
        ImmutableArray<double> sorted = [.. raw.Select(r => r.Value).Order()];
        var middle = sorted[sorted.Length / 2];
        var unit =
            middle >= LeastKelvin ? UnitWord.Find("K")
            : middle > WarmestMiddle ? (IsFahrenheit(middle) ? UnitWord.Fahrenheit : null)
            : read.Dates == DateOrder.MonthDayYear ? null
            : UnitWord.Celsius;
        notes.Remove(LoggerReading.FahrenheitGuess);
        if (unit is not null)
        {
            notes.Add($"The file names no unit; its values read as {unit.Name}. Check one hour.");
        }

        return unit;
    }

    // Between a hot day in °C and a cool one in °F nobody can tell.
    private static bool IsFahrenheit(double middle) => middle is > 48 and < WarmestFahrenheit;

    private static Reading<ForecastHours> Refused(string name, string message, string expected) =>
        new(null, [new TextFault(name, 1, 1, message, expected)]);
}
