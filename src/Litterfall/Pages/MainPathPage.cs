using System.Globalization;
using System.Text;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Planning;

namespace Litterfall.App.Pages;

/// <summary>The generated walk of one sample from text to findings.</summary>
public static class MainPathPage
{
    /// <summary>The page as Markdown.</summary>
    /// <param name="file">Name of the sample.</param>
    /// <param name="design">The checked sample.</param>
    /// <param name="result">What came of it.</param>
    public static string Write(string file, CheckedDesign design, DesignResult result)
    {
        var n = result.Numbers;
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"# The main path, walked with `{file}`\n\n");
        text.Append(
            "Generated from the code. `CheckCommand` → `DesignRun.Execute` → `FloorLayers.Of` → `Figure`.\n\n"
        );
        text.Append("## 1. Text becomes a `Design`\n\n");
        var soil = design.Design.Floor.Soil!;
        var span = design.Document.Spans["floor.soil.front"];
        text.Append("`DesignReader.Read` keeps the text and the place of every value. ")
            .Append(
                CultureInfo.InvariantCulture,
                $"`floor.soil.front` stands in line {span.Line}, column {span.Column}; "
            )
            .Append(CultureInfo.InvariantCulture, $"it was typed as `{soil.Front!.Value.Text}` ")
            .Append(CultureInfo.InvariantCulture, $"and is {soil.Front.Value.Si:0.####} m.\n\n");
        text.Append("## 2. A `Design` becomes a `CheckedDesign`\n\n");
        text.Append("`DesignChecker.Check` resolves names and refuses parts that do not fit together. ")
            .Append(
                CultureInfo.InvariantCulture,
                $"`{soil.Recipe}` is the entry “{design.Entry("floor.soil.recipe").Name}” "
            )
            .Append(
                CultureInfo.InvariantCulture,
                $"with {design.Entry("floor.soil.recipe").Parts.Length} parts.\n\n"
            );
        text.Append(
            "## 3. `DesignRun.Execute` computes\n\n| step | number | value | equation |\n|---|---|---|---|\n"
        );
        Row(text, "`BoxGeometry.Of`", n.Box.InsideLength);
        Row(text, "`BoxGeometry.Of`", n.Box.OpenFloor);
        foreach (var layer in n.Layers)
        {
            Row(text, "`FloorLayers.Of`", layer.Finished);
        }

        var mix = n.Layers.First(l => l.Layer == "soil");
        Row(text, "`FloorLayers.Of`", mix.Mixed);
        Row(text, "`FloorLayers.Of`", mix.Loose);
        Row(text, "`MixComponents.Of`", mix.Components[0].Loose);
        Row(text, "`SoilWater.Add`", mix.WaterToAdd!);
        Row(text, "`Weights.Of`", n.Weights.Wet);
        Row(text, "`CutList.Of`", n.Cuts[0].Length);
        Row(text, "`GlassCheck.Of`", n.Panes[0].Stress);
        Findings(text, result);
        return text.ToString();
    }

    private static void Findings(StringBuilder text, DesignResult result)
    {
        text.Append("\n## 4. `Rules.Judge` finds\n\n");
        foreach (var finding in result.Findings)
        {
            text.Append(CultureInfo.InvariantCulture, $"- {finding.Severity.ToString().ToLowerInvariant()} ")
                .Append(CultureInfo.InvariantCulture, $"`{finding.Slug}`: {finding.Text}\n");
        }

        text.Append("\n## 5. `CheckReport.Write` makes the report\n\n");
        text.Append(
                CultureInfo.InvariantCulture,
                $"It holds {result.Report.Leaves().Count(l => l.Node is ReportNumber)} "
            )
            .Append(
                "numbers, each a `Figure`; `ReportJson` prints them, `litterfall why` follows each "
                    + "back to the file.\n"
            );
    }

    private static void Row(StringBuilder text, string step, Figure figure) =>
        text.Append(CultureInfo.InvariantCulture, $"| {step} | {figure.Name} | {figure.Value:0.###} ")
            .Append(CultureInfo.InvariantCulture, $"{figure.Unit!.Symbol} | {figure.Equation} |\n");
}
