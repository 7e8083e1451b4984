using System.Globalization;
using System.Text;
using System.Text.Json;
using Litterfall.Documents.Json;
using Litterfall.Documents.Text;
using Litterfall.Physics.Light;

namespace Litterfall.Laboratory.Light;

/// <summary>The result of <c>lab light</c>: one JSON document, or tables for people.</summary>
public static class LightText
{
    private const int MostRows = 40;

    /// <summary>One JSON document.</summary>
    public static string Json(LightCase asked, LightOutcome outcome) =>
        ReportJson.Text(json =>
        {
            json.WriteStartObject();
            json.WriteStartArray("pointsLux");
            foreach (double lux in outcome.Points)
            {
                json.WriteNumberValue(lux);
            }

            json.WriteEndArray();
            Map(json, asked, outcome);
            json.WriteStartObject("fluxBudgetPercent");
            foreach (var (name, share) in outcome.Budget)
            {
                json.WriteNumber(name, 100.0 * share);
            }

            json.WriteEndObject();
            json.WriteStartArray("notes");
            foreach (string note in asked.Notes)
            {
                json.WriteStringValue(note);
            }

            json.WriteEndArray();
            json.WriteNumber("elapsedMs", outcome.Milliseconds);
            json.WriteEndObject();
        });

    private static void Map(Utf8JsonWriter json, LightCase asked, LightOutcome outcome)
    {
        if (outcome.Map is not { } map)
        {
            json.WriteNull("mapLux");
            json.WriteNull("statistics");
            return;
        }

        int width = asked.Map!.Value.CellsX;
        json.WriteStartArray("mapLux");
        for (int row = 0; row < map.Length; row += width)
        {
            json.WriteStartArray();
            for (int i = 0; i < width; i++)
            {
                json.WriteNumberValue(map[row + i]);
            }

            json.WriteEndArray();
        }

        json.WriteEndArray();
        json.WriteStartObject("statistics");
        foreach (var (key, value) in Values(MapStatistics.Of(map)))
        {
            json.WriteNumber(key, value);
        }

        json.WriteEndObject();
    }

    /// <summary>Tables for people.</summary>
    public static string Table(LightCase asked, LightOutcome outcome)
    {
        var text = new StringBuilder();
        if (outcome.Points.Length > 0)
        {
            var table = new TextTable("x m", "y m", "z m", "lx");
            foreach (var (point, lux) in asked.Points.Zip(outcome.Points).Take(MostRows))
            {
                table.Add(
                    Text(point.At.X, "0.###"),
                    Text(point.At.Y, "0.###"),
                    Text(point.At.Z, "0.###"),
                    Text(lux, "0.0")
                );
            }

            text.Append(table).Append('\n');
        }

        if (outcome.Map is { } map)
        {
            var table = new TextTable("map", "lx");
            foreach (var (key, value) in Values(MapStatistics.Of(map)))
            {
                table.Add(key, Text(value, value < 10.0 ? "0.000" : "0.0"));
            }

            text.Append(table).Append('\n');
        }

        var ends = new TextTable("light ends on", "%");
        foreach (var (name, share) in outcome.Budget)
        {
            ends.Add(name, Text(100.0 * share, "0.0"));
        }

        text.Append(ends);
        foreach (string note in asked.Notes)
        {
            text.Append('\n').Append(note);
        }

        return text.Append(string.Create(CultureInfo.InvariantCulture, $"\n{outcome.Milliseconds:0.#} ms\n"))
            .ToString();
    }

    private static IEnumerable<(string Key, double Value)> Values(MapStatistics s) =>
        [
            ("mean", s.Mean),
            ("min", s.Least),
            ("max", s.Most),
            ("minOverMean", s.Mean > 0.0 ? s.Least / s.Mean : 0.0),
            ("minOverMax", s.Most > 0.0 ? s.Least / s.Most : 0.0),
            ("cv", s.Variation),
            ("p10", s.Tenth),
            ("p50", s.Half),
            ("p90", s.NineTenths),
        ];

    private static string Text(double value, string format) =>
        value.ToString(format, CultureInfo.InvariantCulture);
}
