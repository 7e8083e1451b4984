using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Litterfall.Domain.Dispatch;

namespace Litterfall.Dispatch.Evidence;

/// <summary>
/// The text of the link that clears a parcel: JSON in one fixed form, first in plain sentences, then every
/// figure: verdict with all rules and reasons, forecast hour by hour, packing plan, carrier's terms, and what
/// of the shop's rules counted.
/// </summary>
public static class ClearedText
{
    /// <summary>Names this form of the text.</summary>
    public const string Form = "litterfall cleared 1";

    /// <summary>Writes it.</summary>
    /// <param name="facts">What the verdict rested on.</param>
    public static string Write(ClearedFacts facts)
    {
        using var bytes = new MemoryStream();
        var options = new JsonWriterOptions
        {
            Indented = true,
            IndentSize = 2,
            NewLine = "\n",
            // People read it: letters and degree signs as they are.
            Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        };
        using (var json = new Utf8JsonWriter(bytes, options))
        {
            json.WriteStartObject();
            json.WriteString("form", Form);
            json.WriteString("program", $"Litterfall {facts.Program}");
            Texts(json, "inWords", ClearedWords.Lines(facts));
            Of(json, facts.Parcel);
            Of(json, "verdict", facts.Day);
            Of(json, facts.Week);
            json.WriteStartArray("forecasts");
            foreach (var forecast in facts.Forecasts)
            {
                Of(json, forecast);
            }

            json.WriteEndArray();
            Of(json, facts.Plan);
            Of(json, facts.Carrier);
            Of(json, facts.Rules);
            Papers(json, facts);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(bytes.ToArray());
    }

    private static void Of(Utf8JsonWriter json, Parcel parcel)
    {
        json.WriteStartObject("parcel");
        json.WriteNumber("number", parcel.Number);
        Optional(json, "order", parcel.Order);
        json.WriteString("recipient", parcel.Recipient);
        json.WriteString("region", parcel.Region);
        json.WriteString("hub", parcel.HubPlace);
        json.WriteString("destination", parcel.DestinationPlace);
        json.WriteBoolean("depotPickUp", parcel.IsDepotPickUp);
        json.WriteStartArray("contents");
        foreach (var content in parcel.Contents)
        {
            json.WriteStartObject();
            json.WriteString("key", content.Key);
            json.WriteNumber("count", content.Count);
            json.WriteString("from", content.From);
            Optional(json, "lengthMeters", content.LengthMeters);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Of(Utf8JsonWriter json, string name, DayVerdict day)
    {
        json.WriteStartObject(name);
        json.WriteString("day", Day(day.Day));
        Optional(json, "arrives", day.Arrives);
        json.WriteString("verdict", day.Verdict.ToString());
        json.WriteStartArray("rules");
        foreach (var rule in day.Rules)
        {
            json.WriteStartObject();
            json.WriteString("rule", rule.Rule.ToString());
            json.WriteString("verdict", rule.Verdict.ToString());
            json.WriteString("words", rule.Words);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("reasons");
        foreach (var reason in day.Reasons)
        {
            Of(json, reason);
        }

        json.WriteEndArray();
        json.WriteStartArray("places");
        foreach (var node in day.Nodes)
        {
            json.WriteStartObject();
            json.WriteString("node", node.Node.ToString());
            json.WriteString("place", node.Place);
            json.WriteNumber("lowCelsius", Rounded(node.LowCelsius));
            json.WriteNumber("highCelsius", Rounded(node.HighCelsius));
            json.WriteEndObject();
        }

        json.WriteEndArray();
        if (day.Choice is { } choice)
        {
            Of(json, choice);
        }

        json.WriteEndObject();
    }

    private static void Of(Utf8JsonWriter json, ShipReason reason)
    {
        json.WriteStartObject();
        json.WriteString("slug", reason.Slug);
        json.WriteString("rule", reason.Rule.ToString());
        json.WriteString("verdict", reason.Verdict.ToString());
        json.WriteString("text", reason.Text);
        json.WriteString("cure", reason.Cure);
        Optional(json, "cureDay", reason.CureDay);
        json.WriteBoolean("protects", reason.IsProtective);
        json.WriteString("node", reason.Node?.ToString());
        Optional(json, "measured", reason.Measured);
        Optional(json, "limit", reason.Limit);
        json.WriteString("source", reason.Source);
        json.WriteString("place", reason.SourcePlace);
        json.WriteString("provenance", reason.Provenance.ToString());
        json.WriteEndObject();
    }

    private static void Of(Utf8JsonWriter json, PackChoice choice)
    {
        json.WriteStartObject("choice");
        json.WriteString("carton", choice.Carton);
        json.WriteStartArray("packs");
        foreach (var use in choice.Packs)
        {
            json.WriteStartObject();
            json.WriteString("pack", use.Pack);
            json.WriteNumber("count", use.Count);
            json.WriteNumber("liquidShare", Rounded(use.LiquidShare));
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteNumber("handOverHour", Rounded(choice.HandOverHour));
        json.WriteNumber("outShare", Rounded(choice.OutShare));
        json.WriteNumber("lethalShare", Rounded(choice.LethalShare));
        json.WriteNumber("journeys", choice.Journeys);
        json.WriteNumber("seed", choice.Seed);
        json.WriteStartArray("hours");
        foreach (var hour in choice.Hours)
        {
            json.WriteStringValue(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{hour.Hour:0.##} h: {hour.Low:0.0} / {hour.Middle:0.0} / {hour.High:0.0} °C inside, "
                )
                    + string.Create(
                        CultureInfo.InvariantCulture,
                        $"{hour.AmbientCelsius:0.0} °C outside, {hour.OutShare * 100:0.##} % out"
                    )
            );
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Of(Utf8JsonWriter json, WeekVerdict week)
    {
        json.WriteStartObject("week");
        json.WriteString("strictest", week.Strictest);
        json.WriteString("class", week.Class);
        Optional(json, "bandLowCelsius", week.BandLowCelsius);
        Optional(json, "bandHighCelsius", week.BandHighCelsius);
        json.WriteStartArray("days");
        foreach (var day in week.Days)
        {
            json.WriteStringValue($"{Day(day.Day)}: {day.Verdict}");
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Of(Utf8JsonWriter json, PlaceForecast forecast)
    {
        json.WriteStartObject();
        json.WriteString("node", forecast.Node.ToString());
        json.WriteString("place", forecast.Place);
        json.WriteString("zone", forecast.Zone);
        json.WriteString("takenAt", Time(forecast.TakenAt));
        json.WriteString("from", forecast.From);
        json.WriteStartArray("hours");
        foreach (var hour in forecast.Hours)
        {
            json.WriteStringValue(
                string.Create(CultureInfo.InvariantCulture, $"{Time(hour.At)} {hour.Celsius:0.###} °C")
            );
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Of(Utf8JsonWriter json, PackingPlan plan)
    {
        json.WriteStartObject("packing");
        json.WriteString("carton", plan.Carton.Name);
        json.WriteString(
            "cartonInsideMeters",
            string.Create(
                CultureInfo.InvariantCulture,
                $"{plan.Carton.LengthMeters} x {plan.Carton.WidthMeters} x {plan.Carton.HeightMeters}"
            )
        );
        json.WriteNumber("wallMeters", plan.Carton.WallMeters);
        json.WriteNumber("kilograms", plan.Kilograms);
        json.WriteNumber("contentsKilogramsOfWater", plan.ContentsKilogramsOfWater);
        json.WriteNumber("paddingLiters", plan.PaddingLiters);
        json.WriteNumber("fastHours", plan.FastHours);
        json.WriteStartArray("cups");
        foreach (var cup in plan.Cups)
        {
            json.WriteStartObject();
            json.WriteNumber("count", cup.Count);
            json.WriteString("name", cup.Name);
            json.WriteString("cup", cup.CupName);
            json.WriteNumber("liters", cup.Liters);
            json.WriteNumber("holes", cup.Holes);
            json.WriteNumber("mossGrams", cup.MossGrams);
            json.WriteNumber("waterGrams", cup.WaterGrams);
            json.WriteString("from", cup.From);
            json.WriteString("cites", cup.Cites);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        Texts(json, "packs", plan.Packs);
        Texts(json, "list", plan.List.Select(l => $"{l.Amount} {l.What}"));
        Texts(json, "steps", plan.Steps);
        Texts(json, "cautions", plan.Cautions);
        json.WriteEndObject();
    }

    private static void Of(Utf8JsonWriter json, CarrierTerms terms)
    {
        json.WriteStartObject("carrier");
        json.WriteString("name", terms.Name);
        json.WriteNumber("transitDays", terms.TransitDays);
        json.WriteString("arrivalDays", string.Join(", ", terms.ArrivalDays));
        json.WriteNumber("handOverHour", terms.HandOverHour);
        json.WriteNumber("deliversFromHour", terms.DeliversFromHour);
        json.WriteNumber("deliversUntilHour", terms.DeliversUntilHour);
        json.WriteNumber("dayLateChance", terms.DayLateChance);
        Optional(json, "rulesReadOn", terms.RulesReadOn);
        Optional(json, "guaranteedFromCelsius", terms.GuaranteedFromCelsius);
        Optional(json, "guaranteedToCelsius", terms.GuaranteedToCelsius);
        json.WriteString("note", terms.Note);
        json.WriteEndObject();
    }

    private static void Of(Utf8JsonWriter json, DispatchRules rules)
    {
        json.WriteStartObject("rules");
        json.WriteNumber("riskPercent", rules.RiskPercent);
        json.WriteNumber("forecastErrorKelvin", rules.ForecastErrorKelvin);
        json.WriteNumber("forecastErrorPerDayKelvin", rules.ForecastErrorPerDayKelvin);
        json.WriteNumber("vanSunKelvin", rules.VanSunKelvin);
        json.WriteNumber("doorstepHours", rules.DoorstepHours);
        json.WriteNumber("doorstepSunKelvin", rules.DoorstepSunKelvin);
        Texts(
            json,
            "ownBands",
            rules.Bands.Select(b =>
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{b.Class}: held below {b.HoldBelowCelsius} or above {b.HoldAboveCelsius} °C"
                )
            )
        );
        json.WriteNumber("claimHours", rules.ClaimHours);
        json.WriteNumber("answerDays", rules.AnswerDays);
        Texts(json, "claimTerms", rules.ClaimTerms);
        json.WriteEndObject();
    }

    private static void Papers(Utf8JsonWriter json, ClearedFacts facts) =>
        Texts(
            json,
            "papers",
            facts.Papers.Select(p =>
                $"{(p.IsThere ? "there" : p.IsNeeded ? "missing" : "ask")}: {p.Species} {p.Text}"
            )
        );

    private static void Texts(Utf8JsonWriter json, string name, IEnumerable<string> texts)
    {
        json.WriteStartArray(name);
        foreach (var text in texts)
        {
            json.WriteStringValue(text);
        }

        json.WriteEndArray();
    }

    private static void Optional(Utf8JsonWriter json, string name, double? value)
    {
        if (value is { } number)
        {
            json.WriteNumber(name, Rounded(number));
        }
        else
        {
            json.WriteNull(name);
        }
    }

    private static void Optional(Utf8JsonWriter json, string name, DateOnly? value) =>
        json.WriteString(name, value is { } day ? Day(day) : null);

    private static double Rounded(double value) => Math.Round(value, 4);

    private static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static string Time(DateTime at) =>
        at.ToString("yyyy-MM-dd'T'HH:mm:ss'Z'", CultureInfo.InvariantCulture);
}
