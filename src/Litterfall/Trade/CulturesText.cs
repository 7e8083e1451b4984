using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using System.Text.Json;
using Litterfall.Documents.Json;
using Litterfall.Documents.Text;
using Litterfall.Quantities.Measures;
using Litterfall.Workshop.Cultures;

namespace Litterfall.App.Trade;

/// <summary>What a case of <c>cultures</c> came to.</summary>
/// <param name="Plans">One for each order, by their days.</param>
/// <param name="Days">Stock by day.</param>
/// <param name="Risk">Odds of the mothers.</param>
public sealed record CulturesOutcome(
    ImmutableArray<SplitPlan> Plans,
    ImmutableArray<SplitDay> Days,
    CrashRisk Risk
);

/// <summary>The result of <c>cultures</c>: one JSON document, or lines for people.</summary>
internal static class CulturesText
{
    /// <summary>Solves a case.</summary>
    public static CulturesOutcome Solve(CulturesCase asked, CancellationToken cancel)
    {
        var plans = SplitSearch.Find(asked.Split, asked.Orders, cancel);
        return new(
            plans,
            SplitDays.Lead(asked.Split, plans),
            CrashRisk.Find(asked.CupsByLine, CulturePractice.LineLoss.Si, asked.Split.Failing)
        );
    }

    /// <summary>One JSON document.</summary>
    public static string Json(CulturesCase asked, CulturesOutcome outcome, double milliseconds) =>
        ReportJson.Text(json =>
        {
            var (kind, celsius) = (asked.Split.Kind, asked.Split.Celsius(asked.Split.From));
            var rates = kind.Rates(celsius);
            var growth = rates.GrowthFactor();
            json.WriteStartObject();
            json.WriteString("species", kind.Entry.Key);
            json.WriteNumber("shelfC", celsius);
            json.WriteNumber("growthPerDay", growth);
            Number(json, "doublingDays", growth > 1 ? Math.Log(2) / Math.Log(growth) : null);
            Number(json, "eggToLayingDays", double.IsFinite(rates.Days) ? rates.Days : null);
            json.WriteNumber("weeklyHarvestPercent", 100 * kind.WeeklyShare(celsius, false));
            json.WriteNumber("weeklyHarvestNearPlateauPercent", 100 * kind.WeeklyShare(celsius, true));
            json.WriteStartArray("plans");
            foreach (var plan in outcome.Plans)
            {
                Write(json, plan, CultureWords.Outcome(plan, kind, celsius));
            }

            json.WriteEndArray();
            json.WriteStartArray("days");
            foreach (var day in outcome.Days)
            {
                json.WriteStartObject();
                json.WriteString("date", Iso(day.Day));
                json.WriteNumber("mothers", day.Mothers);
                json.WriteNumber("motherAnimals", day.MotherAnimals);
                json.WriteNumber("cups", day.Cups);
                json.WriteNumber("cupAnimals", day.CupAnimals);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteStartObject("risk");
            json.WriteNumber("lines", asked.CupsByLine.Length);
            json.WriteNumber("mothers", asked.CupsByLine.Sum());
            json.WriteNumber("allLost", outcome.Risk.None);
            json.WriteEndObject();
            json.WriteNumber("elapsedMs", milliseconds);
            json.WriteEndObject();
        });

    /// <summary>Lines for people.</summary>
    public static string Lines(CulturesCase asked, CulturesOutcome outcome)
    {
        var (kind, celsius) = (asked.Split.Kind, asked.Split.Celsius(asked.Split.From));
        var rates = kind.Rates(celsius);
        var text = new StringBuilder();
        text.Append($"{kind.Entry.Name} at {CultureWords.Celsius(celsius)}");
        if (rates.GrowthFactor() is > 1 and var growth)
        {
            var doubling = Math.Log(2) / Math.Log(growth);
            text.Append(
                CultureInfo.InvariantCulture,
                $": {rates.Days:0} days from egg to laying, doubles in {doubling:0.0} days"
            );
            text.Append(
                CultureInfo.InvariantCulture,
                $", {100 * kind.WeeklyShare(celsius, false):0} % a week can be taken"
            );
        }

        text.Append(". Many of these numbers are from memory, source not checked.\n");
        foreach (var plan in outcome.Plans)
        {
            var name = plan.Order.Name.Length > 0 ? $"{plan.Order.Name}: " : "";
            text.Append($"\n{name}{CultureWords.Outcome(plan, kind, celsius)}\n");
            foreach (var step in plan.Steps)
            {
                text.Append($"  {CultureWords.Told(step)}\n");
            }
        }

        return text.Append('\n').Append(Odds(asked, outcome)).ToString();
    }

    private static string Odds(CulturesCase asked, CulturesOutcome outcome)
    {
        var lines = NumberText.Count(asked.CupsByLine.Length, "line", "lines");
        var all = string.Create(CultureInfo.InvariantCulture, $"{100 * outcome.Risk.None:0.#} %");
        var one =
            asked.CupsByLine.Length < 2
                ? " Keep a second line on another shelf: mites in this one take all.\n"
                : "\n";
        return $"Chance that all mothers of {lines} are lost: {all}.{one}";
    }

    private static void Write(Utf8JsonWriter json, SplitPlan plan, string words)
    {
        json.WriteStartObject();
        json.WriteString("name", plan.Order.Name);
        json.WriteString("date", Iso(plan.Order.Due));
        json.WriteNumber("cups", plan.Order.Cups);
        json.WriteNumber("animals", plan.Order.Animals);
        json.WriteBoolean("possible", plan.IsPossible);
        json.WriteNumber("started", plan.Started);
        Day(json, "ready", plan.Ready);
        json.WriteString("cause", Cause(plan.Bar));
        json.WriteStartArray("steps");
        foreach (var step in plan.Steps)
        {
            json.WriteStartObject();
            json.WriteString("date", Iso(step.Day));
            json.WriteString("mother", step.Mother);
            json.WriteString("line", step.Line);
            json.WriteNumber("mothers", step.Mothers);
            json.WriteNumber("newCups", step.Cups);
            json.WriteNumber("animalsEach", step.AnimalsEach);
            json.WriteBoolean("becomeMothers", step.IsForMothers);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        Day(json, "earliest", plan.Earliest);
        Number(json, "mothersMore", plan.MothersMore);
        json.WriteNumber("cupsPossible", plan.IsPossible ? plan.Order.Cups : plan.CupsPossible);
        json.WriteNumber("cupsToBuy", plan.IsPossible ? 0 : plan.CupsToBuy);
        Number(json, "betterShelfC", plan.Celsius);
        json.WriteString("words", words);
        json.WriteEndObject();
    }

    private static string? Cause(SplitBar bar) =>
        bar switch
        {
            SplitBar.None => null,
            SplitBar.NoMother => "no-mother",
            SplitBar.Temperature => "temperature",
            SplitBar.CupTooSmall => "cup-too-small",
            _ => "too-few-mothers",
        };

    private static void Day(Utf8JsonWriter json, string key, DateOnly? day)
    {
        if (day is { } on)
        {
            json.WriteString(key, Iso(on));
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
            json.WriteNumber(key, value);
        }
        else
        {
            json.WriteNull(key);
        }
    }

    private static string Iso(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
