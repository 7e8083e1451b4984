using System.Collections.Immutable;
using Litterfall.Domain.Checking;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Forecasting.Climate;
using Litterfall.Forecasting.Coefficients;
using Litterfall.Forecasting.Floor;
using Litterfall.Forecasting.Life;
using Litterfall.Forecasting.Light;
using Litterfall.Forecasting.Water;
using Litterfall.Judging.Rules;
using Litterfall.Quantities.Cutting;
using Litterfall.Quantities.Hygiene;
using Litterfall.Quantities.Measures;
using Litterfall.Quantities.Packs;
using Litterfall.Quantities.Sizing;
using Litterfall.Quantities.Stocking;

namespace Litterfall.Judging;

/// <summary>A computed and judged design.</summary>
public sealed record DesignResult(
    DesignNumbers Numbers,
    ImmutableArray<Finding> Findings,
    ReportObject Report
)
{
    /// <summary>True when something must stop the build.</summary>
    public bool Stops => Findings.Any(f => f.Severity == Severity.Stop);
}

/// <summary>The main path from a checked design to quantities and findings.</summary>
public static class DesignRun
{
    /// <summary>Computes, judges and reports.</summary>
    public static DesignResult Execute(CheckedDesign design)
    {
        var numbers = Compute(design);
        var findings = RuleBook.Judge(numbers);
        return new DesignResult(numbers, findings, CheckReport.Write(numbers, findings));
    }

    /// <summary>
    /// Findings without the bands of what nobody measures, for many designs in a row; where the floor is
    /// left out,
    /// without its forecast as well. What rests on those is missing.
    /// </summary>
    /// <param name="design">The design.</param>
    /// <param name="withFloor">With the forecast of the floor.</param>
    internal static ImmutableArray<Finding> Glimpse(CheckedDesign design, bool withFloor) =>
        RuleBook.Judge(Compute(design, withFloor ? Depth.NoBands : Depth.NoFloor));

    /// <summary>
    /// The life of the floor of a design, without the bands of its air and water; null without a crew.
    /// </summary>
    /// <param name="design">The design.</param>
    public static LifeFigures? Life(CheckedDesign design) => FloorCourse.Of(Compute(design, Depth.NoBands));

    /// <summary>Sizes, quantities and cost of a design: nothing is simulated. Within milliseconds.</summary>
    /// <param name="design">The design.</param>
    public static DesignNumbers Shape(CheckedDesign design) => Compute(design, Depth.Shape);

    /// <summary>The same with a month of air and floor, without bands, light and crew.</summary>
    /// <param name="design">The design.</param>
    public static DesignNumbers Month(CheckedDesign design) => Compute(design, Depth.Month);

    private enum Depth
    {
        Shape,
        NoFloor,
        Month,
        NoBands,
        All,
    }

    private static DesignNumbers Compute(CheckedDesign design, Depth depth = Depth.All)
    {
        var box = BoxGeometry.Of(design);
        var layers = FloorLayers.Of(design, box);
        var weights = Weights.Of(design, box, layers);
        var headspace = AirSpace.Of(design, box, layers);
        var climate =
            depth == Depth.Shape
                ? null
                : ClimateFigures.Of(design, box, layers, headspace, depth == Depth.All, depth != Depth.Month);
        var numbers = new DesignNumbers
        {
            Design = design,
            Box = box,
            Layers = layers,
            Headspace = headspace,
            Climate = climate,
            Light = depth == Depth.All ? LightFigures.Of(design, box, layers) : null,
            Water = FloorWater.Of(
                design,
                headspace,
                layers,
                climate,
                (depth > Depth.NoFloor, depth == Depth.All)
            ),
            Weights = weights,
            Shelf = ShelfLoad.Of(design, box, weights),
            Cuts = CutList.Of(design, box),
            Sealants = Sealants.Of(design, box),
            Packs = GoodsCost.Packs(design, layers),
            Panes =
            [
                .. GlassCheck.Of(design, box, layers),
                .. new[] { GlassCheck.Lid(design, box) }.OfType<PaneCheck>(),
            ],
            Stocking = StockingTable.Of(design, box),
            Float = FloatCheck.Of(layers),
            Dip = PlantDip.Of(design),
        };
        return depth == Depth.All ? numbers with { Life = FloorCourse.Of(numbers) } : numbers;
    }
}
