using System.Globalization;
using System.Text;
using System.Text.Json;
using Litterfall.Documents.Json;
using Litterfall.Documents.Text;
using Litterfall.Domain.Cutting;
using Litterfall.Workshop.Cutting;

namespace Litterfall.App.Trade;

/// <summary>The result of <c>cut</c>: one JSON document, or sheets for people.</summary>
internal static class CutText
{
    /// <summary>One JSON document.</summary>
    public static string Json(CuttingPlan plan, double milliseconds) =>
        ReportJson.Text(json =>
        {
            json.WriteStartObject();
            json.WriteString("status", plan.IsProved ? "proved" : "found");
            json.WriteNumber("value", plan.Value);
            json.WriteNumber("bound", plan.Bound);
            json.WriteStartArray("sheets");
            foreach (var sheet in plan.Sheets)
            {
                Sheet(json, sheet);
            }

            json.WriteEndArray();
            json.WriteNumber("elapsedMs", milliseconds);
            json.WriteEndObject();
        });

    private static void Sheet(Utf8JsonWriter json, CutSheet sheet)
    {
        json.WriteStartObject();
        json.WriteString("stock", sheet.Stock);
        json.WriteNumber("usedLengthMm", sheet.UsedLength);
        json.WriteStartArray("placements");
        foreach (var part in sheet.Parts)
        {
            json.WriteStartObject();
            json.WriteString("part", part.Part);
            json.WriteNumber("xMm", part.X);
            json.WriteNumber("yMm", part.Y);
            json.WriteNumber("lengthMm", part.Length);
            json.WriteNumber("widthMm", part.Width);
            json.WriteBoolean("turned", part.IsTurned);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("cuts");
        foreach (var cut in sheet.Cuts)
        {
            json.WriteStartObject();
            json.WriteNumber("stage", cut.Stage);
            json.WriteString("along", cut.IsUpright ? "y" : "x");
            json.WriteNumber("atMm", cut.At);
            json.WriteNumber("fromMm", cut.From);
            json.WriteNumber("toMm", cut.To);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("offcuts");
        foreach (var rest in sheet.Offcuts)
        {
            json.WriteStartObject();
            json.WriteNumber("xMm", rest.X);
            json.WriteNumber("yMm", rest.Y);
            json.WriteNumber("lengthMm", rest.Length);
            json.WriteNumber("widthMm", rest.Width);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    /// <summary>Sheets for people: each cut in its order, then what comes off.</summary>
    public static string List(CuttingTask task, CuttingPlan plan)
    {
        var text = new StringBuilder();
        for (var i = 0; i < plan.Sheets.Count; i++)
        {
            var sheet = plan.Sheets[i];
            text.Append(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{i + 1}. {Terminal.Clean(sheet.Stock)}, {sheet.Length:0.##} × {sheet.Width:0.##} mm, "
                        + $"waste {Waste(sheet):0.0} %\n"
                )
            );
            Cuts(text, sheet);
            var table = new TextTable("", "", "");
            foreach (var part in sheet.Parts)
            {
                table.Add(
                    Terminal.Clean(part.Part),
                    FormattableString.Invariant($"{part.Length:0.##} × {part.Width:0.##} mm"),
                    FormattableString.Invariant(
                        $"at {part.X:0.##}, {part.Y:0.##}{(part.IsTurned ? ", turned" : "")}"
                    )
                );
            }

            text.Append(table).Append('\n');
        }

        return text.Append(Sum(task, plan)).ToString();
    }

    private static void Cuts(StringBuilder text, CutSheet sheet)
    {
        for (var c = 0; c < sheet.Cuts.Count; c++)
        {
            var cut = sheet.Cuts[c];
            text.Append(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"   cut {c + 1}: {(cut.IsUpright ? "across" : "along")} at {cut.At:0.##} mm, "
                        + $"from {cut.From:0.##} to {cut.To:0.##} mm\n"
                )
            );
        }
    }

    private static double Waste(CutSheet sheet) =>
        100 * (1 - sheet.Parts.Sum(p => p.Length * p.Width) / (sheet.Length * sheet.Width));

    private static string Sum(CuttingTask task, CuttingPlan plan)
    {
        var (value, bound) = (Told(task, plan.Value), Told(task, plan.Bound));
        return plan.IsProved
            ? $"{value}; nothing better is possible.\n"
            : $"{value}; no plan can be better than this: {bound}.\n";
    }

    private static string Told(CuttingTask task, double value) =>
        task.Goal == CuttingGoal.MostValue ? FormattableString.Invariant($"Value {value:0.##}")
        : CuttingValue.IsMoney(task) ? FormattableString.Invariant($"Cost {value:0.00}")
        : CuttingValue.IsLength(task) ? FormattableString.Invariant($"{value:0.##} mm of the roll")
        : value == 1 ? "1 sheet"
        : FormattableString.Invariant($"{value:0.##} sheets");
}
