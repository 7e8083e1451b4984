using System.Collections.Immutable;
using Litterfall.Domain;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Quantities.Openings;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Quantities.Cutting;

/// <summary>
/// The parts of a lid as they are cut: each cell of its plan less the play around it, or with the overlap on
/// the rim; and the ledges it lies on. Lengths in meters.
/// </summary>
public static class LidParts
{
    private static readonly Figure Two = Figure.Number(2);

    /// <summary>The parts; none without a lid.</summary>
    /// <param name="design">The design.</param>
    /// <param name="box">Its sizes.</param>
    public static IEnumerable<CutPart> Of(CheckedDesign design, BoxGeometry box)
    {
        if (LidPlan.Of(design, box) is not { } plan)
        {
            return [];
        }

        var parts = plan.Cells.Select(cell => Part(design, plan, cell)).ToList();
        AddPassages(design, parts);
        return [.. parts, .. LidLedges.Of(design, box)];
    }

    /// <summary>Clearance on each side of an inset lid, m.</summary>
    /// <param name="design">A design with a lid.</param>
    public static Figure Clearance(CheckedDesign design) =>
        design.Design.Lid!.Gap is { } g
            ? design.Figure("lid.gap", "lid clearance on each side", g, Unit.Millimeter)
            : OpeningPolicy.LidClearance;

    private static CutPart Part(CheckedDesign design, OpeningPlan plan, OpeningCell cell)
    {
        var lid = design.Design.Lid!;
        var isStrip = cell.Kind is CellKind.HoseStrip or CellKind.VentStrip;
        var entry = design.Entry("lid.material");
        var (left, right) = (
            Edge(design, cell.Left.Si <= 1e-9),
            Edge(design, cell.RightSi >= plan.Length.Si - 1e-9)
        );
        // A strip fills its run from front to back; the panes beside it give way.
        var (low, high) = isStrip
            ? (OpeningPlan.Zero, Lies(design, !cell.HighHangs))
            : (Edge(design, !cell.LowHangs), Edge(design, !cell.HighHangs));
        var part = CutList.Part(
            cell.Name,
            isStrip ? OpeningPolicy.StripSheet : entry.Key,
            design,
            CutList.Fit($"{cell.Name} length", cell.Length + left + right),
            isStrip && high.Si <= 0 && low.Si <= 0
                ? cell.Width
                : CutList.Fit($"{cell.Name} depth", cell.Width + low + high),
            Note(design, cell, entry is MeshEntry)
        );
        return part with
        {
            Thickness = lid.Thickness is { } t
                ? design.Figure("lid.thickness", "lid thickness", t, Unit.Millimeter)
                : null,
            Key = cell.Kind switch
            {
                CellKind.HoseStrip => "lid.strip",
                CellKind.VentStrip => cell.Openings[0].Vent.Path,
                _ => "lid",
            },
            CutOuts = CutOuts(cell, left, low),
            Holes = Holes(cell, left, low),
            SeenFrom = cell.Openings.Length > 0 ? "seen from above, front edge below" : "",
        };
    }

    private static ImmutableArray<CutOut> CutOuts(OpeningCell cell, Figure left, Figure low) =>
        [
            .. cell
                .Openings.Where(o => !o.Vent.IsRound)
                .Select(o => new CutOut(
                    From(o.Left, cell.Left, left),
                    From(o.Low, cell.Low, low),
                    o.Length,
                    o.Width
                )
                {
                    For = FormattableString.Invariant($"vent {o.Vent.Index + 1}"),
                    Key = o.Vent.Path,
                }),
        ];

    private static ImmutableArray<CutHole> Holes(OpeningCell cell, Figure left, Figure low) =>
        [
            .. cell
                .Openings.Where(o => o.Vent.IsRound)
                .Select(o => new CutHole(
                    From(o.Left + o.Length / Two, cell.Left, left),
                    From(o.Low + o.Width / Two, cell.Low, low),
                    o.Length,
                    FormattableString.Invariant($"vent {o.Vent.Index + 1}"),
                    o.Vent.Path
                )),
        ];

    private static Figure From(Figure place, Figure corner, Figure margin) =>
        (place - corner + margin).As("from the edge of the part", Unit.Millimeter);

    /// <summary>What an edge adds to its cell: play inside, overlap where it lies on the rim.</summary>
    private static Figure Edge(CheckedDesign design, bool isOuter) =>
        isOuter && design.Design.Lid!.Overlap is not null
            ? Lies(design, true)
            : OpeningPlan.Zero - Clearance(design);

    /// <summary>Overlap of a strip at an edge that lies on the rim; nothing elsewhere.</summary>
    private static Figure Lies(CheckedDesign design, bool isOuter) =>
        isOuter && design.Design.Lid!.Overlap is { } o
            ? design.Figure("lid.overlap", "overlap on each side", o, Unit.Millimeter)
            : OpeningPlan.Zero;

    private static string Note(CheckedDesign design, OpeningCell cell, bool isMesh)
    {
        var rests =
            design.Design.Lid!.Overlap is not null ? "lies on the rim; seam the edges"
            : isMesh ? "in a frame, no wire ends inside"
            : "set into the opening; polish edges that are touched";
        return cell.Kind switch
        {
            CellKind.HoseStrip => "for hoses and cables, taped or latched",
            CellKind.VentStrip => "carries the mesh of the vent",
            _ when cell.Name == "lid-front" => $"{rests}; folds up on hinges or tape",
            _ => rests,
        };
    }

    /// <summary>Hoses and cables go through the strip, else through a notch at the back.</summary>
    private static void AddPassages(CheckedDesign design, List<CutPart> parts)
    {
        if (parts.Count == 0 || design.Find("lid.material") is MeshEntry)
        {
            return;
        }

        var index = parts.FindIndex(p => p.Part == "strip");
        index =
            index >= 0 ? index : parts.FindLastIndex(p => p.Part.StartsWith("lid", StringComparison.Ordinal));
        var isStrip = parts[index].Part == "strip";
        var at = OpeningPlan.Zero;
        for (var i = 0; i < design.Design.Passages.Count; i++)
        {
            var passage = design.Design.Passages[i];
            if (passage.In != PassagePart.Lid)
            {
                continue;
            }

            var path = FormattableString.Invariant($"passages[{i}]");
            var hole = design.Figure($"{path}.hole", "width of the hole", passage.Hole, Unit.Millimeter);
            var pane = parts[index];
            var along = passage.Along is { } typed
                ? design.Figure($"{path}.along", "middle of the hole", typed, Unit.Millimeter)
                : (at + Two * hole).As("middle of the hole", Unit.Millimeter);
            at = along;
            parts[index] = isStrip
                ? pane with
                {
                    Holes = [.. pane.Holes, InStrip(pane, along, hole, (passage.For, path))],
                }
                : pane with
                {
                    CutOuts =
                    [
                        .. pane.CutOuts,
                        Notch(pane, along, (hole, Lies(design, true)), (passage.For, path)),
                    ],
                };
        }
    }

    private static CutHole InStrip(CutPart strip, Figure along, Figure hole, (string For, string Key) what) =>
        new(along, (strip.Width / Two).As("middle of the strip", Unit.Millimeter), hole, what.For, what.Key);

    /// <summary>As deep inside the box as it is wide: what lies on the rim is added.</summary>
    private static CutOut Notch(
        CutPart pane,
        Figure along,
        (Figure Hole, Figure OnRim) size,
        (string For, string Key) what
    )
    {
        var deep = (size.Hole + size.OnRim).As("depth of the notch", Unit.Millimeter);
        return new CutOut(
            Figure.NotNegative(along - size.Hole / Two).As("left edge of the notch", Unit.Millimeter),
            Figure.NotNegative(pane.Width - deep).As("front edge of the notch", Unit.Millimeter),
            size.Hole,
            deep
        )
        {
            For = what.For,
            Key = what.Key,
        };
    }
}
