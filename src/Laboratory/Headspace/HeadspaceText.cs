using System.Globalization;
using Litterfall.Documents.Json;
using Litterfall.Documents.Text;

namespace Litterfall.Laboratory.Headspace;

/// <summary>The result of <c>lab headspace</c>: one JSON document, or a table for people.</summary>
public static class HeadspaceText
{
    private const int MostRows = 49;

    /// <summary>One JSON document.</summary>
    public static string Json(HeadspaceOutcome outcome) =>
        ReportJson.Text(json =>
        {
            json.WriteStartObject();
            json.WriteStartArray("hourly");
            foreach (var row in outcome.Hours)
            {
                json.WriteStartObject();
                foreach (var (key, value) in Values(row))
                {
                    json.WriteNumber(key, value);
                }

                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteNumber("ledgerErrorGrams", outcome.LedgerErrorGrams);
            json.WriteNumber("elapsedMs", outcome.Milliseconds);
            json.WriteEndObject();
        });

    /// <summary>A table; long runs are thinned.</summary>
    public static string Table(HeadspaceOutcome outcome)
    {
        var table = new TextTable("hour", "air C", "RH %", "glass C", "soil C", "film g", "vented g");
        int every = 1 + (outcome.Hours.Length / MostRows);
        for (int i = 0; i < outcome.Hours.Length; i++)
        {
            if (i % every == 0 || i == outcome.Hours.Length - 1)
            {
                var h = outcome.Hours[i];
                table.Add(
                    Text(h.Hour, "0.##"),
                    Text(h.AirC, "0.00"),
                    Text(h.HumidityPercent, "0.0"),
                    Text(h.GlassC, "0.00"),
                    Text(h.SoilC, "0.00"),
                    Text(h.FilmGrams, "0.0"),
                    Text(h.VentedGrams, "0.0")
                );
            }
        }

        return table
            + string.Create(
                CultureInfo.InvariantCulture,
                $"\nwater misses by {outcome.LedgerErrorGrams:0.0e+0} g; {outcome.Milliseconds:0.#} ms\n"
            );
    }

    private static IEnumerable<(string Key, double Value)> Values(HeadspaceHour h) =>
        [
            ("hour", h.Hour),
            ("airC", h.AirC),
            ("humidityPercent", h.HumidityPercent),
            ("glassC", h.GlassC),
            ("soilC", h.SoilC),
            ("filmGrams", h.FilmGrams),
            ("ventedGrams", h.VentedGrams),
            ("soilEvaporationGrams", h.SoilEvaporationGrams),
            ("dripGrams", h.DripGrams),
            ("mistGrams", h.MistGrams),
        ];

    private static string Text(double value, string format) =>
        value.ToString(format, CultureInfo.InvariantCulture);
}
