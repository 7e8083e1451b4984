using System.Globalization;
using System.Text;
using Litterfall.Documents.Layout;
using Litterfall.Documents.Papers;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Judging;
using Litterfall.Quantities.Sizing;

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
            "Generated from the code. From the command to the equation: `CheckCommand` → `DesignRun` → "
                + "`DesignStages` → `WaterForecast` → `WaterModel` → `Richards`, and for the air "
                + "`DesignStages` → `BoxRun` → `Simulation`; on to paper: `PapersCommand` → `PaperJob` → "
                + "`BuildSheet` → `SectionView` → `PdfWriter`.\n\n"
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
                $"`{soil.Recipe}` is the entry “{design.Entry<GroundEntry>("floor.soil.recipe").Name}” "
            )
            .Append(
                CultureInfo.InvariantCulture,
                $"with {design.Entry<GroundEntry>("floor.soil.recipe").Parts.Length} parts.\n\n"
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

        var mix = n.Layers.First(l => l.Kind == LayerKind.Soil);
        Row(text, "`FloorLayers.Of`", mix.Mixed);
        Row(text, "`FloorLayers.Of`", mix.Loose);
        Row(text, "`MixComponents.Of`", mix.Components[0].Loose);
        Row(text, "`SoilWater.Add`", mix.WaterToAdd!);
        Row(text, "`Weights.Of`", n.Weights.Wet);
        Row(text, "`CutList.Of`", n.Cuts[0].Length);
        Row(text, "`GlassCheck.Of`", n.Panes[0].Stress);
        Findings(text, result);
        Papers(text, result);
        return text.ToString();
    }

    private static void Findings(StringBuilder text, DesignResult result)
    {
        text.Append("\n## 4. `RuleBook.Judge` finds\n\n");
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

    private static void Papers(StringBuilder text, DesignResult result)
    {
        var job = new PaperJob(result, new PaperWish(PaperSize.A4, null, "", false), null);
        var section = job.Views.Section((110, 90));
        var soil = job.Corners.First(c => c.Kind == LayerKind.Soil);
        var keys = section.Marks.Select(m => m.Key).Where(k => k.Length > 0).Distinct(StringComparer.Ordinal);
        text.Append("\n## 6. `PaperList.Write` puts it on paper\n\n");
        text.Append(CultureInfo.InvariantCulture, $"`CornerDepths.Of`: the soil settles to ")
            .Append(CultureInfo.InvariantCulture, $"{soil.Depth.FrontLeft.Value:0.#} cm at the front and ")
            .Append(CultureInfo.InvariantCulture, $"{soil.Depth.BackLeft.Value:0.#} cm at the back; poured ")
            .Append(CultureInfo.InvariantCulture, $"{soil.Poured!.FrontLeft.Value:0.#} and ")
            .Append(CultureInfo.InvariantCulture, $"{soil.Poured.BackLeft.Value:0.#} cm.\n\n");
        text.Append(
                CultureInfo.InvariantCulture,
                $"`BuildSteps.Of`: {job.Steps.Length} cards; the " + $"first step is "
            )
            .Append(CultureInfo.InvariantCulture, $"“{job.Steps[0].Steps[0].Text}”\n\n");
        text.Append(
                CultureInfo.InvariantCulture,
                $"`SectionView.Draw`: {section.Marks.Length} " + $"marks at a scale of "
            )
            .Append(CultureInfo.InvariantCulture, $"1 : {1 / section.Scale:0.#}, each with its key, such as ")
            .Append(string.Join(", ", keys.Take(6).Select(k => $"`{k}`")))
            .Append(". The same marks become PDF (`PdfWriter`), SVG (`SvgWriter`) and DXF (`DxfWriter`).\n");
    }

    private static void Row(StringBuilder text, string step, Figure figure) =>
        text.Append(CultureInfo.InvariantCulture, $"| {step} | {figure.Name} | {figure.Value:0.###} ")
            .Append(CultureInfo.InvariantCulture, $"{figure.Unit!.Symbol} | {figure.Equation} |\n");
}
