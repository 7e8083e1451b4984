using System.Collections.Immutable;
using Litterfall.Domain;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Physics.Plates;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Quantities.Cutting;

/// <summary>
/// The lid and the strip beside it under their own weight, as they are held: a level pane on four, three or
/// two edges, or on its corners. Sag counts with the modulus that is left after years.
/// </summary>
public static class HeldPanes
{
    /// <summary>Load on a lid besides its own weight.</summary>
    private static readonly Figure LidLoad = Figure.Choice(
        "load on the lid",
        0.02,
        Unit.Kilopascal,
        "dust, drops and a light lamp; nothing heavy is put on a lid"
    );

    private static readonly Figure Half = Figure.Number(0.5);
    private static readonly Figure Two = Figure.Number(2);

    /// <summary>EN 16612: span over this.</summary>
    public static readonly Figure StandardShare = Figure.Number(65);

    /// <summary>Own limit for gaps: span over this.</summary>
    public static readonly Figure GapShare = Figure.Number(250);

    private static readonly Citation Standard = new(
        "en-16612",
        "9.1.4: default limit of deflection, span ÷ 65 or 50 mm, whichever is less",
        Provenance.Read
    );

    /// <summary>EN 16612: no more than this however long the span.</summary>
    public static readonly Figure StandardMost = Figure.Given(
        "most sag of a pane",
        0.05,
        Unit.Millimeter,
        Standard
    );

    private static readonly Citation Gaps = new(
        "own-choice",
        "a lid that sags by less than span ÷ 250 shows no gap at its edges",
        Provenance.OwnChoice
    );

    /// <summary>The lid and its strip; none for mesh, or without a thickness.</summary>
    /// <param name="design">The design.</param>
    /// <param name="box">Its sizes.</param>
    public static ImmutableArray<PaneCheck> Of(CheckedDesign design, BoxGeometry box)
    {
        if (
            design.Design.Lid is not { Thickness: { } typed } lid
            || design.Find("lid.material") is not SheetEntry sheet
        )
        {
            return [];
        }

        var thickness = design.Figure("lid.thickness", "lid thickness", typed, Unit.Millimeter);
        var strip = lid.Strip is { } s
            ? design.Figure("lid.strip", "strip for hoses and cables", s, Unit.Millimeter)
            : null;
        var (length, depth) = Supports(design, box, strip);
        var held = lid.Held ?? (strip is null ? PaneHold.AllEdges : PaneHold.BackHangs);
        if (lid.Braced && held != PaneHold.FrontAndBack)
        {
            length = (length * Half).As("half the lid, to the bar", Unit.Millimeter);
        }

        var panes = new[]
        {
            Check("lid", sheet, (length, depth, thickness), held),
            strip is not null && design.Catalog.Find<SheetEntry>("acrylic-sheet") is { } acrylic
                ? Check("strip", acrylic, (box.OpeningLength, strip, thickness), PaneHold.BackHangs)
                : null,
        };
        return [.. panes.OfType<PaneCheck>()];
    }

    /// <summary>
    /// Between what holds it: the opening under a pane that overlaps it, the pane itself where it is set in.
    /// </summary>
    private static (Figure Length, Figure Depth) Supports(
        CheckedDesign design,
        BoxGeometry box,
        Figure? strip
    )
    {
        var depth = strip is null ? box.OpeningDepth : box.OpeningDepth - strip;
        var lid = design.Design.Lid!;
        if (lid.Overlap is not null)
        {
            return (box.OpeningLength, depth.As("depth of the lid", Unit.Millimeter));
        }

        var gap = lid.Gap is { } g
            ? design.Figure("lid.gap", "lid clearance on each side", g, Unit.Millimeter)
            : CutList.LidClearance;
        return (
            (box.OpeningLength - Two * gap).As("length of the lid", Unit.Millimeter),
            (depth - Two * gap).As("depth of the lid", Unit.Millimeter)
        );
    }

    private static PaneCheck? Check(
        string name,
        SheetEntry sheet,
        (Figure Length, Figure Depth, Figure Thickness) size,
        PaneHold held
    )
    {
        if (
            size.Length.Si <= 0
            || size.Depth.Si <= 0
            || size.Thickness.Si <= 0
            || sheet is not { Density: { } density, YoungsModulus: { } young, Poisson: { } poisson }
            || (IsFree(held) ? sheet.AllowableFreeEdge : sheet.AllowablePermanent) is not { } allowable
        )
        {
            return null;
        }

        var modulus = sheet.CreepModulus ?? young;
        var load = (density * SizingPolicy.Gravity * size.Thickness + LidLoad).As(
            $"weight and load on the {name}",
            Unit.Kilopascal
        );
        var pane = new PlatePane(
            size.Length.Si,
            size.Depth.Si,
            size.Thickness.Si,
            modulus.Si,
            poisson.Si,
            held == PaneHold.AllEdges ? PlateEdge.TopHeld : PlateEdge.TopFree
        );
        var (stress, sag) = Bend(pane, load.Si, held);
        var span = Span(size.Length, size.Depth, held);
        Figure[] inputs = [size.Length, size.Depth, size.Thickness, load, poisson];
        return new PaneCheck
        {
            Pane = name,
            Width = size.Length,
            Height = size.Depth,
            Allowable = allowable,
            Held = Words(held),
            Stress = GlassCheck.Solved(
                ($"stress in the {name}", Unit.Megapascal),
                $"largest bending stress of a thin plate {Words(held)} under an even load",
                stress,
                inputs
            ),
            Sag = GlassCheck.Solved(
                ($"sag of the {name}", Unit.Millimeter),
                $"deflection of a thin plate {Words(held)} under an even load",
                sag,
                [.. inputs, modulus]
            ),
            SagLimit = Figure
                .Min(span / StandardShare, StandardMost)
                .As($"most sag of the {name}", Unit.Millimeter, Standard),
            GapLimit = (span / GapShare).As($"sag at which the {name} gapes", Unit.Millimeter, Gaps),
            IsLinear = IsTwoEdges(held) || pane.IsLinear(sag),
        };
    }

    private static (double Stress, double Sag) Bend(PlatePane pane, double load, PaneHold held)
    {
        if (held == PaneHold.Corners)
        {
            return CornerPlate.Solve(pane, load);
        }

        if (IsTwoEdges(held))
        {
            double span = held == PaneHold.Sides ? pane.WidthMeters : pane.HeightMeters;
            return (
                TwoEdgeSpan.StressPascals(load, span, pane.ThicknessMeters),
                TwoEdgeSpan.DeflectionMeters(load, span, pane.ThicknessMeters, pane.YoungsModulusPascals)
            );
        }

        var solved = LevyPlate.Solve(pane, PlateLoad.Uniform(load, pane.HeightMeters));
        return (solved.LargestStressPascals, solved.LargestDeflectionMeters);
    }

    private static bool IsTwoEdges(PaneHold held) => held is PaneHold.Sides or PaneHold.FrontAndBack;

    private static bool IsFree(PaneHold held) => held != PaneHold.AllEdges;

    /// <summary>What sags: the shorter way over four edges, the hanging edge, the way between two.</summary>
    private static Figure Span(Figure length, Figure depth, PaneHold held) =>
        held switch
        {
            PaneHold.AllEdges => Figure.Min(length, depth),
            PaneHold.FrontAndBack => depth,
            PaneHold.Corners => Figure.Max(length, depth),
            _ => length,
        };

    private static string Words(PaneHold held) =>
        held switch
        {
            PaneHold.AllEdges => "on four edges",
            PaneHold.BackHangs => "on three edges, its back edge hanging",
            PaneHold.Sides => "on its two sides",
            PaneHold.FrontAndBack => "on its front and back edge",
            _ => "on clips at its corners",
        };
}
