using System.Globalization;
using System.Text;
using Litterfall.Documents.Json;
using Litterfall.Documents.Text;

namespace Litterfall.Laboratory.Crew;

/// <summary>The result of <c>lab crew</c>: one JSON document, or a table for people.</summary>
public static class CrewText
{
    private const int MostRows = 45;

    /// <summary>One JSON document.</summary>
    public static string Json(CrewOutcome outcome) =>
        ReportJson.Text(json =>
        {
            json.WriteStartObject();
            json.WriteNumber("growthFactorPerDay", outcome.GrowthFactor);
            json.WriteStartArray("daily");
            foreach (var day in outcome.Days)
            {
                json.WriteStartObject();
                json.WriteNumber("day", day.Day);
                json.WriteNumber("eggs", day.Eggs);
                json.WriteNumber("juveniles", day.Juveniles);
                json.WriteNumber("adults", day.Adults);
                json.WriteNumber("mobile", day.Mobile);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteNumber("elapsedMs", outcome.Milliseconds);
            json.WriteEndObject();
        });

    /// <summary>A table; long runs are thinned.</summary>
    public static string Table(CrewOutcome outcome)
    {
        var table = new TextTable("day", "eggs", "juveniles", "adults", "mobile");
        int every = 1 + (outcome.Days.Length / MostRows);
        for (int i = 0; i < outcome.Days.Length; i++)
        {
            if (i % every == 0 || i == outcome.Days.Length - 1)
            {
                var day = outcome.Days[i];
                table.Add(
                    day.Day.ToString(CultureInfo.InvariantCulture),
                    Text(day.Eggs),
                    Text(day.Juveniles),
                    Text(day.Adults),
                    Text(day.Mobile)
                );
            }
        }

        double doubling = Math.Log(2.0) / Math.Log(outcome.GrowthFactor);
        string words = string.Create(
            CultureInfo.InvariantCulture,
            $"Growth factor {outcome.GrowthFactor:0.000000} a day"
        );
        return new StringBuilder()
            .Append(table)
            .Append('\n')
            .Append(words)
            .Append(doubling > 0.0 && double.IsFinite(doubling) ? $", doubles in {Text(doubling)} days" : "")
            .Append("; ")
            .Append(outcome.Milliseconds.ToString("0.#", CultureInfo.InvariantCulture))
            .Append(" ms\n")
            .ToString();
    }

    private static string Text(double value) => value.ToString("0.0", CultureInfo.InvariantCulture);
}
