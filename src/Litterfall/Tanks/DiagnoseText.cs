using System.Globalization;
using System.Text;
using Litterfall.Documents.Json;
using Litterfall.Running.Diagnosis.Finding;
using Litterfall.Running.Diagnosis.Words;

namespace Litterfall.App.Tanks;

/// <summary>The answer of <c>diagnose</c>: one JSON document, or lines to read out over the phone.</summary>
internal static class DiagnoseText
{
    private const double Shown = 0.01;
    private const double Told = 0.05;

    /// <summary>One JSON document.</summary>
    public static string Json(FaultAnswer answer, double milliseconds) =>
        ReportJson.Text(json =>
        {
            json.WriteStartObject();
            json.WriteStartArray("causes");
            foreach (var cause in Worth(answer, Shown))
            {
                json.WriteStartObject();
                json.WriteString("cause", cause.Row.Title);
                json.WriteNumber("probability", Math.Round(cause.Probability, 4));
                Strings(json, "for", cause.For);
                Strings(json, "against", cause.Against);
                Fix(json, cause.Fix);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteStartObject("nextMeasurement");
            json.WriteString("what", answer.Next);
            json.WriteStartArray("if");
            foreach (var outcome in answer.Outcomes)
            {
                json.WriteStartObject();
                json.WriteString("result", outcome.Result);
                json.WriteString("then", outcome.Then);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
            Strings(json, "besides", answer.Besides);
            Strings(json, "ignored", answer.Ignored);
            json.WriteNumber("elapsedMs", milliseconds);
            json.WriteEndObject();
        });

    /// <summary>For people.</summary>
    public static string Lines(FaultAnswer answer)
    {
        var text = new StringBuilder();
        foreach (var cause in Worth(answer, Told))
        {
            text.Append(
                CultureInfo.InvariantCulture,
                $"{100 * cause.Probability,3:0} %  {cause.Row.Title}\n"
            );
            Each(text, "       for      ", cause.For);
            Each(text, "       against  ", cause.Against);
        }

        if (!answer.Besides.IsEmpty)
        {
            text.Append("\nMakes it worse\n");
            Each(text, "  - ", answer.Besides);
        }

        if (answer.Causes[0].Fix is { } fix)
        {
            text.Append("\nWhat to do, if it is the first\n");
            Each(text, "  - ", fix.Changes);
            if (fix.LevelMillimetersAfterMonth is { } level)
            {
                text.Append(
                    CultureInfo.InvariantCulture,
                    $"  Computed: the water then stands at {level:0} mm after 30 days.\n"
                );
            }

            text.Append(CultureInfo.InvariantCulture, $"  {fix.Text}\n");
        }

        text.Append(CultureInfo.InvariantCulture, $"\nNext: {answer.Next}\n");
        foreach (var outcome in answer.Outcomes)
        {
            text.Append(CultureInfo.InvariantCulture, $"  {outcome.Result}: {outcome.Then}\n");
        }

        if (!answer.Ignored.IsEmpty)
        {
            text.Append("\nNot used\n");
            Each(text, "  - ", answer.Ignored);
        }

        text.Append(
            "\nThe chances weigh what keepers see (from memory, source not checked) and your readings.\n"
        );
        return text.ToString();
    }

    /// <summary>What symptoms and facts are known.</summary>
    public static string Known()
    {
        var text = new StringBuilder("Symptoms (in your own words; these are understood)\n");
        foreach (var (_, title) in SymptomWords.All)
        {
            text.Append(CultureInfo.InvariantCulture, $"  {title}\n");
        }

        text.Append("\nFacts\n");
        foreach (var (_, key, form, title) in FactWords.All)
        {
            var how = form switch
            {
                FactForm.Number => "number",
                FactForm.Day => "day",
                _ => "yes or no",
            };
            text.Append(CultureInfo.InvariantCulture, $"  {key,-18} {how,-10} {title}\n");
        }

        return text.ToString();
    }

    /// <summary>The same as one JSON document.</summary>
    public static string KnownJson() =>
        ReportJson.Text(json =>
        {
            json.WriteStartObject();
            Strings(json, "symptoms", SymptomWords.All.Select(s => s.Title));
            json.WriteStartArray("facts");
            foreach (var (_, key, form, title) in FactWords.All)
            {
                json.WriteStartObject();
                json.WriteString("fact", key);
                json.WriteString(
                    "form",
                    form == FactForm.YesNo ? "yes-no"
                        : form == FactForm.Day ? "day"
                        : "number"
                );
                json.WriteString("means", title);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        });

    private static IEnumerable<RankedCause> Worth(FaultAnswer answer, double least) =>
        answer.Causes.Where((c, i) => i < 3 || c.Probability >= least);

    private static void Fix(System.Text.Json.Utf8JsonWriter json, FixPlan? fix)
    {
        if (fix is null)
        {
            json.WriteNull("fix");
            return;
        }

        json.WriteStartObject("fix");
        Strings(json, "changes", fix.Changes);
        if (fix.LevelMillimetersAfterMonth is { } level)
        {
            json.WriteNumber("levelMmAfter30Days", level);
        }
        else
        {
            json.WriteNull("levelMmAfter30Days");
        }

        json.WriteString("text", fix.Text);
        json.WriteEndObject();
    }

    private static void Strings(System.Text.Json.Utf8JsonWriter json, string key, IEnumerable<string> texts)
    {
        json.WriteStartArray(key);
        foreach (var text in texts)
        {
            json.WriteStringValue(text);
        }

        json.WriteEndArray();
    }

    private static void Each(StringBuilder text, string before, IEnumerable<string> lines)
    {
        foreach (var line in lines)
        {
            text.Append(CultureInfo.InvariantCulture, $"{before}{line}\n");
        }
    }
}
