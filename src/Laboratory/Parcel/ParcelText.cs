using System.Globalization;
using System.Text;
using System.Text.Json;
using Litterfall.Documents.Json;
using Litterfall.Documents.Text;

namespace Litterfall.Laboratory.Parcel;

/// <summary>The result of <c>lab parcel</c>: one JSON document, or a table for people.</summary>
public static class ParcelText
{
    private const int MostRows = 49;
    private const double SecondsPerHour = 3600.0;

    /// <summary>One JSON document.</summary>
    public static string Json(ParcelResult result) =>
        ReportJson.Text(json =>
        {
            json.WriteStartObject();
            json.WriteStartArray("hourly");
            foreach (var row in result.Hours)
            {
                Row(json, row);
            }

            json.WriteEndArray();
            json.WriteNumber("uaWPerK", result.Conductance);
            json.WriteNumber("timeConstantHours", result.TimeConstantHours);
            Extreme(json, "coldest", result.Outcome.ColdestCelsius, result.Outcome.ColdestSeconds);
            Extreme(json, "warmest", result.Outcome.WarmestCelsius, result.Outcome.WarmestSeconds);
            if (result.Band is { } band)
            {
                Band(json, band);
            }

            if (result.Air is { } air)
            {
                ParcelAirText.Json(json, air);
            }

            json.WriteBoolean("settledAtStart", result.Outcome.IsSettled);
            json.WriteNumber("wallJoules", result.Outcome.WallJoules);
            json.WriteNumber("heatJoules", result.Outcome.HeatJoules);
            json.WriteNumber("storedJoules", result.Outcome.StoredJoules);
            json.WriteNumber("latentJoules", result.Outcome.LatentJoules);
            json.WriteNumber("turnoverJoules", result.Outcome.TurnoverJoules);
            json.WriteNumber("energyBalanceErrorJoules", result.Outcome.BalanceErrorJoules);
            json.WriteNumber("elapsedMs", result.Milliseconds);
            json.WriteEndObject();
        });

    /// <summary>A table; long runs are thinned.</summary>
    public static string Table(ParcelResult result)
    {
        var table = new TextTable("hour", "inside C", "liquid %");
        int every = 1 + (result.Hours.Length / MostRows);
        for (int i = 0; i < result.Hours.Length; i++)
        {
            if (i % every == 0 || i == result.Hours.Length - 1)
            {
                var row = result.Hours[i];
                table.Add(
                    Text(row.Hour, "0.##"),
                    Text(row.InsideC, "0.00"),
                    row.Liquid is { } liquid ? Text(100.0 * liquid, "0.0") : ""
                );
            }
        }

        var outcome = result.Outcome;
        var words = new StringBuilder().Append(table).Append('\n');
        words.Append(
            CultureInfo.InvariantCulture,
            $"UA {result.Conductance:0.####} W/K, time constant {result.TimeConstantHours:0.###} h\n"
        );
        words.Append(Extreme("coldest", outcome.ColdestCelsius, outcome.ColdestSeconds)).Append(", ");
        words.Append(Extreme("warmest", outcome.WarmestCelsius, outcome.WarmestSeconds)).Append('\n');
        if (result.Band is { } band)
        {
            words.Append(Side("below", band.LowC, band.HoursBelow, band.FirstBelowHour));
            words.Append(Side("above", band.HighC, band.HoursAbove, band.FirstAboveHour));
        }

        words.Append(result.Air is { } air ? ParcelAirText.Words(air) : "");
        if (outcome.IsSettled)
        {
            words.Append("packs and contents were not at one temperature and were settled at hour 0\n");
        }

        words.Append(
            CultureInfo.InvariantCulture,
            $"heat misses by {outcome.BalanceErrorJoules:0.0e+0} J; {result.Milliseconds:0.#} ms\n"
        );
        return words.ToString();
    }

    private static void Row(Utf8JsonWriter json, ParcelHour row)
    {
        json.WriteStartObject();
        json.WriteNumber("hour", row.Hour);
        json.WriteNumber("insideC", row.InsideC);
        Number(json, "liquidFraction", row.Liquid);
        if (!row.Packs.IsEmpty)
        {
            json.WriteStartArray("packLiquidFractions");
            foreach (double liquid in row.Packs)
            {
                json.WriteNumberValue(liquid);
            }

            json.WriteEndArray();
        }

        json.WriteEndObject();
    }

    private static void Extreme(Utf8JsonWriter json, string key, double celsius, double seconds)
    {
        json.WriteStartObject(key);
        json.WriteNumber("insideC", celsius);
        json.WriteNumber("hour", seconds / SecondsPerHour);
        json.WriteEndObject();
    }

    private static void Band(Utf8JsonWriter json, ParcelBand band)
    {
        json.WriteStartObject("band");
        json.WriteNumber("lowC", band.LowC);
        json.WriteNumber("highC", band.HighC);
        json.WriteNumber("hoursBelow", band.HoursBelow);
        json.WriteNumber("hoursAbove", band.HoursAbove);
        Number(json, "firstBelowHour", band.FirstBelowHour);
        Number(json, "firstAboveHour", band.FirstAboveHour);
        json.WriteEndObject();
    }

    internal static void Number(Utf8JsonWriter json, string key, double? value)
    {
        if (value is { } number)
        {
            json.WriteNumber(key, number);
        }
        else
        {
            json.WriteNull(key);
        }
    }

    private static string Extreme(string word, double celsius, double seconds) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{word} {celsius:0.00} C at hour {seconds / SecondsPerHour:0.##}"
        );

    private static string Side(string word, double celsius, double hours, double? first) =>
        first is { } hour
            ? string.Create(
                CultureInfo.InvariantCulture,
                $"{word} {celsius:0.##} C for {hours:0.00} h, first at hour {hour:0.00}\n"
            )
            : string.Create(CultureInfo.InvariantCulture, $"never {word} {celsius:0.##} C\n");

    private static string Text(double value, string format) =>
        value.ToString(format, CultureInfo.InvariantCulture);
}
