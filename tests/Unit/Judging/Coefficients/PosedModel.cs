using Litterfall.App.Files;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Checking;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Figures;
using Litterfall.Forecasting;
using Litterfall.Forecasting.Climate;
using Litterfall.Forecasting.Life;
using Litterfall.Forecasting.Light;
using Litterfall.Forecasting.Water;
using Litterfall.Judging;
using Litterfall.Quantities.Sizing;
using Xunit;

namespace Litterfall.UnitTests.Judging.Coefficients;

/// <summary>A small design, and the one model of which it shows coefficients at work.</summary>
/// <param name="Part">headspace, water, light or crew.</param>
/// <param name="Text">The design below its box.</param>
/// <param name="Box">The box; a cube of glass where left out.</param>
internal sealed record PosedModel(string Part, string Text, string Box = PosedModel.Cube)
{
    public const string Cube =
        "{ outside: { length: 40 cm, depth: 40 cm, height: 45 cm }, glass: { walls: 5 mm, base: 5 mm } }";

    private static readonly Lazy<TradeCatalog> Catalog = new(() => Shop.Catalog(null).Value!);

    /// <summary>Values taken out of the entry at a path, as in a workshop's own that lacks them.</summary>
    public (string Path, string[] Values)[] Lacks { get; init; } = [];

    public CheckedDesign Design()
    {
        var document = DesignReader.Read("posed", $"litterfall: 1\nname: posed\nbox: {Box}\n{Text}\n");
        Assert.True(document.IsGood, string.Join("; ", document.Faults) + Text);
        var reading = DesignChecker.Check(document.Value!, Catalog.Value);
        Assert.True(reading.IsGood, string.Join("; ", reading.Faults) + Text);
        var design = reading.Value!;
        foreach (var (path, values) in Lacks)
        {
            var entry = design.Entry(path);
            design = design.With(
                entry with
                {
                    Values = [.. entry.Values.Where(v => !values.Contains(v.Name))],
                }
            );
        }

        return design;
    }

    /// <summary>All numbers of its part of the report, by key.</summary>
    public Dictionary<string, ReportNumber> Numbers(CheckedDesign design) =>
        Report(design)
            .Leaves()
            .Where(l => l.Node is ReportNumber)
            .ToDictionary(l => l.Path, l => (ReportNumber)l.Node, StringComparer.Ordinal);

    private ReportNode Report(CheckedDesign design)
    {
        var numbers = new DesignNumbers(design);
        return Part switch
        {
            "light" => LightReport.Write(numbers.Light),
            "crew" => LifeReport.Write(numbers.Upto(Reach.WholeWithoutBands).Life, []),
            "headspace" => ClimateReport.Write(numbers.Upto(Reach.Month).Climate),
            _ => WaterReport.Write(numbers.Upto(Reach.Month).Water),
        };
    }
}
