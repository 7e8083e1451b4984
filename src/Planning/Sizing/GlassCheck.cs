using System.Collections.Immutable;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Designs;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Quantities;
using Litterfall.Physics.Plates;

namespace Litterfall.Planning.Sizing;

/// <summary>
/// One pane under its loads, by thin-plate theory: an estimate to talk over with a glazier.
/// </summary>
public sealed record PaneCheck
{
    /// <summary>front, side or sill.</summary>
    public required string Pane { get; init; }

    /// <summary>Width between the corners.</summary>
    public required Figure Width { get; init; }

    /// <summary>Height over the base.</summary>
    public required Figure Height { get; init; }

    /// <summary>Stress with the floor flooded to the top of the soil.</summary>
    public required Figure Stress { get; init; }

    /// <summary>Allowable stress of this pane.</summary>
    public required Figure Allowable { get; init; }

    /// <summary>Thickness that would just carry the flooded floor.</summary>
    public required Figure Needed { get; init; }

    /// <summary>Deepest water the pane carries, at most its height.</summary>
    public required Figure LargestWaterDepth { get; init; }
}

/// <summary>The walls against a flooded floor, and against filling by mistake.</summary>
public static class GlassCheck
{
    private static readonly Citation PlateTheory = new(
        "timoshenko-woinowsky-krieger-1959",
        "chapter 5, simply supported and three-edge rectangular plates, Levy's method",
        Provenance.Recomputed
    );

    /// <summary>Bulk density of soaked soil in the load; the upper end of wet mixes.</summary>
    private static readonly Figure SoakedSoil = Figure.Choice(
        "bulk density of soaked soil",
        1100,
        Units.KilogramPerCubicMeter,
        "a saturated organic mix; soil behind glass is taken at its heaviest"
    );

    /// <summary>Thickness a pane of nominal thickness may fall short of it.</summary>
    public static readonly Figure ThicknessTolerance = Figure.Given(
        "thickness tolerance",
        0.0002,
        Units.Millimeter,
        new Citation("en-572-2", "recalled: tolerance of 3 to 6 mm float glass", Provenance.Recalled)
    );

    /// <summary>
    /// Checks front and side; nothing when no glass was entered or the box cannot be built.
    /// </summary>
    public static ImmutableArray<PaneCheck> Of(
        CheckedDesign design,
        BoxGeometry box,
        ImmutableArray<FloorLayer> layers
    )
    {
        var ground = layers.Where(l => l.Layer is "drainage" or "soil").Select(l => l.Highest).ToArray();
        if (box.Walls is null || !box.IsBuildable || ground.Length == 0 || Flood(ground, box).Si <= 0)
        {
            return [];
        }

        var flood = Flood(ground, box);
        var sheet = design.Find("box.material") ?? design.Catalog.Find("float-glass");
        var front = design.Design.Box is { Opening: Opening.Front, Sill: { Si: > 0 } s }
            ? design.Figure("box.sill", "height of the front sill", s, Units.Centimeter)
            : null;
        var held = Held(design);
        var inputs = new PaneInputs(
            box,
            flood,
            sheet?.Figure("allowablePermanent") ?? Permanent,
            sheet?.Figure("allowableFreeEdge") ?? FreeEdge
        );
        return
        [
            front is null
                ? Check("front", box.InsideLength, box.InsideHeight, held, inputs)
                : Check(
                    "sill",
                    box.InsideLength,
                    Figure.Min(front, box.InsideHeight).As("height of the front strip", Units.Centimeter),
                    PlateEdge.TopFree,
                    inputs
                ),
            Check("side", box.InsideDepth, box.InsideHeight, held, inputs),
        ];
    }

    private sealed record PaneInputs(BoxGeometry Box, Figure Flood, Figure Permanent, Figure FreeEdge);

    private static Figure Permanent =>
        Figure.Given(
            "allowable permanent stress",
            AllowableStress.PermanentPascals,
            Units.Megapascal,
            new Citation("en-16612", "recalled: annealed float, permanent load", Provenance.Recalled)
        );

    private static Figure FreeEdge =>
        Figure.Given(
            "allowable stress at a free edge",
            AllowableStress.PermanentCutEdgePascals,
            Units.Megapascal,
            new Citation(
                "en-16612",
                "recalled: annealed float, permanent load, edge as cut",
                Provenance.Recalled
            )
        );

    private static PlateEdge Held(CheckedDesign design)
    {
        var box = design.Design.Box;
        var edge =
            box.TopEdge
            ?? (box.Rim is not null || box.Opening == Opening.Front ? TopEdge.Held : TopEdge.Free);
        return edge == TopEdge.Held ? PlateEdge.TopHeld : PlateEdge.TopFree;
    }

    private static Figure Flood(Figure[] ground, BoxGeometry box)
    {
        var top = Figure
            .Total(ground, Units.Meter.Dimension)
            .As("top of the soil over the base", Units.Centimeter);
        return Figure.Min(top, box.InsideHeight).As("flooded to", Units.Centimeter);
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
            .NotNegative(inputs.Box.Walls! - ThicknessTolerance)
            .As("least wall thickness", Units.Millimeter);
        var allowable = edge == PlateEdge.TopFree ? inputs.FreeEdge : inputs.Permanent;
        var pane = PlatePane.Glass(width.Si, height.Si, Math.Max(thickness.Si, 1e-4), edge);
        var flooded = Math.Min(inputs.Flood.Si, height.Si);
        var load = PlateLoad.Of(new WetSoil(flooded, flooded, SoakedSoil.Si));
        var stress = LevyPlate.Solve(pane, load).LargestStressPascals;
        var depth = LevyPlate.LargestWaterDepth(pane, allowable.Si);
        var top = edge == PlateEdge.TopFree ? "upper edge free" : "upper edge held";
        return new PaneCheck
        {
            Pane = name,
            Width = width,
            Height = height,
            Allowable = allowable,
            Stress = Figure
                .Computed(
                    $"largest principal bending stress of a thin plate, {top}, under soaked soil",
                    stress,
                    Units.Megapascal.Dimension,
                    width,
                    height,
                    thickness,
                    inputs.Flood,
                    SoakedSoil
                )
                .As($"stress in the {name} pane", Units.Megapascal, PlateTheory),
            Needed = Figure
                .Computed(
                    "least wall thickness × √(stress ÷ allowable stress)",
                    pane.ThicknessMeters * Math.Sqrt(stress / allowable.Si),
                    Units.Meter.Dimension,
                    width,
                    height,
                    inputs.Flood,
                    allowable
                )
                .As($"thickness needed in the {name} pane", Units.Millimeter, PlateTheory),
            LargestWaterDepth = Figure
                .Computed(
                    $"water depth at which the stress reaches the allowable stress, {top}",
                    depth,
                    Units.Meter.Dimension,
                    width,
                    height,
                    thickness,
                    allowable
                )
                .As($"deepest water for the {name} pane", Units.Millimeter, PlateTheory),
        };
    }
}
