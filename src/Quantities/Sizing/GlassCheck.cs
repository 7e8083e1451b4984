using System.Collections.Immutable;
using Litterfall.Domain;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Physics.Plates;

namespace Litterfall.Quantities.Sizing;

/// <summary>
/// One pane under its loads, by thin-plate theory: an estimate to talk over with a glazier.
/// </summary>
public sealed record PaneCheck
{
    /// <summary>front, side, sill, lid, strip, door or shelf.</summary>
    public required string Pane { get; init; }

    /// <summary>Width between the corners.</summary>
    public required Figure Width { get; init; }

    /// <summary>Height over the base.</summary>
    public required Figure Height { get; init; }

    /// <summary>
    /// Stress with the floor flooded to the top of the soil; of lid and shelf under their weight and load, of
    /// a door under the push of a hand.
    /// </summary>
    public required Figure Stress { get; init; }

    /// <summary>Allowable stress of this pane.</summary>
    public required Figure Allowable { get; init; }

    /// <summary>
    /// Thickness that would just carry the flooded floor; null for the lid, whose load is itself.
    /// </summary>
    public Figure? Needed { get; init; }

    /// <summary>Deepest water the pane carries, at most its height; null for the lid.</summary>
    public Figure? LargestWaterDepth { get; init; }

    /// <summary>How it is held, in words.</summary>
    public required string Held { get; init; }

    /// <summary>What bends it, as a sentence begins.</summary>
    public string Under { get; init; } = "With the floor flooded";

    /// <summary>Key of the design that makes it thicker.</summary>
    public string Key { get; init; } = "box.glass.walls";

    /// <summary>What makes it carry; "" for walls, which need a thickness.</summary>
    public string Fix { get; init; } = "";

    /// <summary>How far it bends under that load.</summary>
    public required Figure Sag { get; init; }

    /// <summary>Most sag of a level pane by the standard of glass; null for walls.</summary>
    public Figure? SagLimit { get; init; }

    /// <summary>Sag from which a level pane gapes at its edges; null for walls.</summary>
    public Figure? GapLimit { get; init; }

    /// <summary>
    /// False where it bends by more than half its thickness: the pane is then stiffer than computed.
    /// </summary>
    public required bool IsLinear { get; init; }
}

/// <summary>The walls against a flooded floor, and against filling by mistake.</summary>
public static class GlassCheck
{
    private static readonly Citation PlateTheory = new(
        "timoshenko-woinowsky-krieger-1959",
        "chapter 5, simply supported and three-edge rectangular plates, Levy's method",
        Provenance.Recomputed
    );

    /// <summary>Bulk density of soaked soil where the library does not tell.</summary>
    private static readonly Figure SoakedSoil = Figure.Choice(
        "density of the soaked soil",
        1400,
        Unit.KilogramPerCubicMeter,
        "the upper end of wet vivarium mixes; soil behind glass is taken at its heaviest"
    );

    internal static readonly Figure RestCoefficient = Figure.Given(
        "earth pressure at rest",
        0.5,
        Unit.One,
        new Citation("jaky-1944", "recalled: 1 − sin φ, about 0.5 for loose soil", Provenance.Recalled)
    );

    private const double ThinMeters = 0.006;

    /// <summary>Glass has 2500 kg/m³, plastics at most 1400.</summary>
    private const double LightestGlass = 2000;

    /// <summary>Where the library knows no tolerance of a sheet.</summary>
    private static readonly Figure UsualTolerance = Figure.Given(
        "thickness tolerance",
        0.0002,
        Unit.Millimeter,
        new Citation("en-572-2", "recalled: tolerance of 3 to 6 mm float glass", Provenance.Recalled)
    );

    /// <summary>
    /// Thickness a pane may fall short of its nominal: the value of its entry, and over 6 mm the most of its
    /// band, as EN 572-2 has 0.2 mm for float glass of 3 to 6 mm and 0.3 mm for 8 to 12 mm. Other glass is
    /// float glass first.
    /// </summary>
    internal static Figure ThicknessTolerance(CheckedDesign design, SheetEntry sheet, Figure nominal)
    {
        var from =
            sheet.ThicknessTolerance is null && sheet.Density?.Si > LightestGlass
                ? design.Catalog.Find<SheetEntry>("float-glass")
                : sheet;
        return nominal.Si > ThinMeters + 1e-9 && from?.ThicknessToleranceBand is { } band
            ? band.High
            : from?.ThicknessTolerance ?? UsualTolerance;
    }

    /// <summary>
    /// Checks front and side; nothing when no glass was entered or the box cannot be built.
    /// </summary>
    /// <param name="design">The design.</param>
    /// <param name="box">Its sizes.</param>
    /// <param name="layers">Its layers.</param>
    /// <param name="bent">Panes whose bending is known.</param>
    /// <param name="parted">Walls that end before a vent, and the height of their lowest pane, m.</param>
    public static ImmutableArray<PaneCheck> Of(
        CheckedDesign design,
        BoxGeometry box,
        ImmutableArray<FloorLayer> layers,
        BentPanes bent,
        IReadOnlyDictionary<Side, Figure> parted
    )
    {
        var ground = layers
            .Where(l => l.Kind is LayerKind.Drainage or LayerKind.Soil)
            .Select(l => l.Highest)
            .ToArray();
        if (box.Walls is null || !box.IsBuildable || ground.Length == 0 || Flood(ground, box).Si <= 0)
        {
            return [];
        }

        var flood = Flood(ground, box);
        var sheet = design.Find<SheetEntry>("box.material") ?? design.Catalog.Find<SheetEntry>("float-glass");
        if (
            sheet
            is not
            {
                AllowablePermanent: { } permanent,
                AllowableFreeEdge: { } free,
                YoungsModulus: { } young,
                Poisson: { } poisson
            }
        )
        {
            return [];
        }

        var front = design.Design.Box is { Opening: Opening.Front, Sill: { Si: > 0 } s }
            ? design.Figure("box.sill", "height of the front sill", s, Unit.Centimeter)
            : null;
        var held = Held(design);
        var inputs = new PaneInputs(box, flood, Soaked(layers), bent)
        {
            Permanent = permanent,
            FreeEdge = free,
            Modulus = sheet.CreepModulus ?? young,
            Poisson = poisson,
            Tolerance = ThicknessTolerance(design, sheet, box.Walls),
        };
        return
        [
            front is null
                ? Check("front", box.InsideLength, box.InsideHeight, held, inputs)
                : Check(
                    "sill",
                    box.InsideLength,
                    Figure.Min(front, box.InsideHeight).As("height of the front strip", Unit.Centimeter),
                    PlateEdge.TopFree,
                    inputs
                ),
            Check("side", box.InsideDepth, box.InsideHeight, held, inputs),
            .. parted.Where(p => p.Key != Side.Top).Select(p => Parted(p.Key, p.Value, box, inputs)),
        ];
    }

    /// <summary>The lowest pane of a wall that ends before a vent: its upper edge is free.</summary>
    private static PaneCheck Parted(Side side, Figure height, BoxGeometry box, PaneInputs inputs) =>
        Check(
            $"lower {side.ToString().ToLowerInvariant()}",
            side is Side.Left or Side.Right ? box.InsideDepth : box.InsideLength,
            height,
            PlateEdge.TopFree,
            inputs
        );

    private sealed record PaneInputs(BoxGeometry Box, Figure Flood, Figure Soil, BentPanes Bent)
    {
        public required Figure Permanent { get; init; }

        public required Figure FreeEdge { get; init; }

        public required Figure Modulus { get; init; }

        public required Figure Poisson { get; init; }

        public required Figure Tolerance { get; init; }
    }

    /// <summary>Dry mass and all the water the soil holds, per finished volume.</summary>
    private static Figure Soaked(ImmutableArray<FloorLayer> layers) =>
        layers.FirstOrDefault(l => l.Kind == LayerKind.Soil)
            is { DryMass: { } dry, SaturatedWater: { } water, Finished: { Si: > 0 } finished }
            ? ((dry + water * SizingPolicy.Water) / finished).As(
                "density of the soaked soil",
                Unit.KilogramPerCubicMeter
            )
            : SoakedSoil;

    private static PlateEdge Held(CheckedDesign design)
    {
        var box = design.Design.Box;
        var edge = box.TopEdge
            ?? (box.Rim is not null || box.Opening == Opening.Front ? TopEdge.Held : TopEdge.Free);
        return edge == TopEdge.Held ? PlateEdge.TopHeld : PlateEdge.TopFree;
    }

    private static Figure Flood(Figure[] ground, BoxGeometry box)
    {
        var top = Figure
            .Total(ground, Unit.Meter.Dimension)
            .As("top of the soil over the base", Unit.Centimeter);
        return Figure.Min(top, box.InsideHeight).As("flooded to", Unit.Centimeter);
    }

    private static PaneCheck Check(
        string name,
        Figure width,
        Figure height,
        PlateEdge edge,
        PaneInputs inputs
    )
    {
        var thickness = Figure
            .NotNegative(inputs.Box.Walls! - inputs.Tolerance)
            .As("least wall thickness", Unit.Millimeter);
        var allowable = edge == PlateEdge.TopFree ? inputs.FreeEdge : inputs.Permanent;
        var pane = new PlatePane(
            width.Si,
            height.Si,
            Math.Max(thickness.Si, 1e-4),
            inputs.Modulus.Si,
            inputs.Poisson.Si,
            edge
        );
        var (stress, depth, sag) = inputs.Bent.Find(
            new BentPane(pane, Math.Min(inputs.Flood.Si, height.Si), inputs.Soil.Si, allowable.Si)
        );
        var top = edge == PlateEdge.TopFree ? "upper edge free" : "upper edge held";
        Figure[] size = [width, height, thickness];
        Figure[] loaded = [.. size, inputs.Flood, inputs.Soil, RestCoefficient, inputs.Poisson];
        return new PaneCheck
        {
            Pane = name,
            Width = width,
            Height = height,
            Allowable = allowable,
            Held = edge == PlateEdge.TopFree ? "on three edges, its upper edge free" : "on four edges",
            Sag = Solved(
                ($"bulge of the {name} pane", Unit.Millimeter),
                $"largest deflection of a thin plate, {top}, under soaked soil",
                sag,
                [.. loaded, inputs.Modulus]
            ),
            IsLinear = pane.IsLinear(sag),
            Stress = Solved(
                ($"stress in the {name} pane", Unit.Megapascal),
                $"largest principal bending stress of a thin plate, {top}, under soaked soil",
                stress,
                loaded
            ),
            Needed = Solved(
                ($"thickness needed in the {name} pane", Unit.Millimeter),
                "least wall thickness × √(stress ÷ allowable stress)",
                LevyPlate.ThicknessNeeded(pane.ThicknessMeters, stress, allowable.Si),
                [width, height, inputs.Flood, allowable]
            ),
            LargestWaterDepth = Solved(
                ($"deepest water for the {name} pane", Unit.Millimeter),
                $"water depth at which the stress reaches the allowable stress, {top}",
                depth,
                [.. size, allowable]
            ),
        };
    }

    /// <summary>A number that the theory of plates gives.</summary>
    internal static Figure Solved((string Name, Unit Unit) what, string how, double si, Figure[] inputs) =>
        Figure.Computed(how, si, what.Unit.Dimension, inputs).As(what.Name, what.Unit, PlateTheory);
}
