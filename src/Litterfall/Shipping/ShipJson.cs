using System.Globalization;
using System.Text.Json;
using Litterfall.Documents.Json;
using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Figures;

namespace Litterfall.App.Shipping;

/// <summary>The answer of <c>ship</c> as one JSON document.</summary>
internal static class ShipJson
{
    /// <summary>The document.</summary>
    public static string Text(ShipCase asked, WeekVerdict week, double milliseconds) =>
        ReportJson.Text(json =>
        {
            json.WriteStartObject();
            Day(json, "asked", asked.Day);
            Day(json, "nextDay", week.NextDay);
            Day(json, "nextDayOnceDone", week.NextDayOnceDone);
            Day(json, "nextPlainDay", week.NextPlainDay);
            json.WriteString("strictest", week.Strictest);
            json.WriteString("class", week.Class.Length > 0 ? week.Class : null);
            json.WriteStartObject("band");
            Number(json, "lowC", week.BandLowCelsius);
            Number(json, "highC", week.BandHighCelsius);
            json.WriteEndObject();
            json.WriteStartArray("notes");
            foreach (var note in asked.Notes)
            {
                json.WriteStringValue(note);
            }

            json.WriteEndArray();
            json.WriteStartArray("days");
            foreach (var day in week.Days)
            {
                Verdict(json, day);
            }

            json.WriteEndArray();
            json.WriteNumber("elapsedMs", milliseconds);
            json.WriteEndObject();
        });

    private static void Verdict(Utf8JsonWriter json, DayVerdict day)
    {
        json.WriteStartObject();
        Day(json, "day", day.Day);
        Day(json, "arrives", day.Arrives);
        json.WriteString("verdict", Word(day.Verdict.ToString()));
        json.WriteStartArray("rules");
        foreach (var rule in day.Rules)
        {
            json.WriteStartObject();
            json.WriteString("rule", Word(rule.Rule.ToString()));
            json.WriteString("verdict", Word(rule.Verdict.ToString()));
            json.WriteString("words", rule.Words);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("reasons");
        foreach (var reason in day.Reasons)
        {
            Reason(json, reason);
        }

        json.WriteEndArray();
        json.WriteStartArray("places");
        foreach (var node in day.Nodes)
        {
            json.WriteStartObject();
            json.WriteString("place", Word(node.Node.ToString()));
            json.WriteNumber("lowC", node.LowCelsius);
            json.WriteNumber("highC", node.HighCelsius);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        Choice(json, day.Choice);
        json.WriteEndObject();
    }

    private static void Reason(Utf8JsonWriter json, ShipReason reason)
    {
        json.WriteStartObject();
        json.WriteString("slug", reason.Slug);
        json.WriteString("rule", Word(reason.Rule.ToString()));
        json.WriteString("verdict", Word(reason.Verdict.ToString()));
        json.WriteString("text", reason.Text);
        json.WriteString("cure", reason.Cure.Length > 0 ? reason.Cure : null);
        Day(json, "cureDay", reason.CureDay);
        json.WriteString("place", reason.Node is { } node ? Word(node.ToString()) : null);
        Number(json, "measured", reason.Measured);
        Number(json, "limit", reason.Limit);
        json.WriteString("source", reason.Source.Length > 0 ? reason.Source : null);
        json.WriteString("sourcePlace", reason.SourcePlace.Length > 0 ? reason.SourcePlace : null);
        json.WriteString("provenance", reason.Provenance.Word());
        json.WriteString("protects", reason.IsProtective ? "animal" : null);
        json.WriteEndObject();
    }

    private static void Choice(Utf8JsonWriter json, PackChoice? choice)
    {
        if (choice is null)
        {
            json.WriteNull("choice");
            return;
        }

        json.WriteStartObject("choice");
        json.WriteString("carton", choice.Carton);
        json.WriteStartArray("packs");
        foreach (var pack in choice.Packs)
        {
            json.WriteStartObject();
            json.WriteString("pack", pack.Pack);
            json.WriteNumber("count", pack.Count);
            json.WriteNumber("liquidShare", pack.LiquidShare);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteNumber("handOverHour", choice.HandOverHour);
        json.WriteNumber("oddsOut", Rounded(choice.OutShare));
        json.WriteNumber("oddsLethal", Rounded(choice.LethalShare));
        json.WriteNumber("journeys", choice.Journeys);
        json.WriteNumber("seed", choice.Seed);
        json.WriteStartArray("hourly");
        foreach (var hour in choice.Hours)
        {
            json.WriteStartObject();
            json.WriteNumber("hour", hour.Hour);
            json.WriteNumber("p5C", Rounded(hour.Low));
            json.WriteNumber("p50C", Rounded(hour.Middle));
            json.WriteNumber("p95C", Rounded(hour.High));
            json.WriteNumber("ambientC", Rounded(hour.AmbientCelsius));
            json.WriteNumber("oddsOut", Rounded(hour.OutShare));
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static double Rounded(double value) => Math.Round(value, 4) + 0.0;

    /// <summary>"ShipWithPacks" as "ship-with-packs".</summary>
    private static string Word(string name) =>
        string.Concat(name.Select((c, i) => char.IsAsciiLetterUpper(c) && i > 0 ? $"-{c}" : $"{c}"))
            .ToLowerInvariant();

    private static void Day(Utf8JsonWriter json, string key, DateOnly? day)
    {
        if (day is { } on)
        {
            json.WriteString(key, on.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
        }
        else
        {
            json.WriteNull(key);
        }
    }

    private static void Number(Utf8JsonWriter json, string key, double? number)
    {
        if (number is { } value)
        {
            json.WriteNumber(key, Rounded(value));
        }
        else
        {
            json.WriteNull(key);
        }
    }
}
