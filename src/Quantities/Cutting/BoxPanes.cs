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
/// Panes of a box that is glued for this build. Build-up: the base lies full size under the walls, front and
/// back run over the whole length, the sides stand between them; a top without a lid is glued between the
/// walls; each joint takes its silicone. Lengths in meters.
/// </summary>
public static class BoxPanes
{
    private static readonly Figure Two = Figure.Number(2);

    private static readonly Figure UsualHeight = Figure.Choice(
        "height of the outlet",
        2,
        Unit.Centimeter,
        "low in the drainage layer, where the design does not say"
    );

    private static readonly Figure UsualPlace = Figure.Choice(
        "place of the outlet along its side",
        90,
        Unit.Percent,
        "near one end, where a hose is least in the way"
    );

    /// <summary>The panes; none for a box that is bought ready.</summary>
    /// <param name="design">The design.</param>
    /// <param name="box">Its sizes.</param>
    public static IEnumerable<CutPart> Of(CheckedDesign design, BoxGeometry box)
    {
        if (design.Design.Box.Panes != PaneSource.Cut || box.OutsideLength is null)
        {
            yield break;
        }

        yield return Standpipe(
            design,
            box,
            Pane(design, "base", (box.OutsideLength, box.OutsideDepth!), box.Base!, "under the walls")
        );
        List<Side> sides = [Side.Front, Side.Back, Side.Left, Side.Right];
        if (design.Design is { Lid: null, Box.Opening: Opening.Front })
        {
            sides.Add(Side.Top);
        }

        foreach (var side in sides)
        {
            var plan = WallPlan.Of(design, box, side);
            foreach (var cell in plan.Cells.Where(c => c.Kind is not (CellKind.Mesh or CellKind.Doors)))
            {
                yield return Cut(design, box, side, (plan, cell));
            }
        }
    }

    /// <summary>
    /// The hole for a bulkhead in a wall: its middle along the side and over the base inside, in meters; null
    /// where nothing is drilled there.
    /// </summary>
    public static (Figure Along, Figure Height, Figure? Diameter)? Hole(
        CheckedDesign design,
        BoxGeometry box,
        Side side
    )
    {
        if (
            design.Design.Drain is not { Kind: DrainKind.Bulkhead } drain
            || (drain.Side ?? Side.Back) != side
        )
        {
            return null;
        }

        var height = drain.Height is { } h
            ? design.Figure("drain.height", "height of the outlet", h, Unit.Millimeter)
            : UsualHeight;
        return (Along(design, box, drain, side), height, Diameter(design, drain));
    }

    private static Figure Along(CheckedDesign design, BoxGeometry box, Drain drain, Side side)
    {
        var inside = side is Side.Left or Side.Right ? box.InsideDepth : box.InsideLength;
        return drain.Along is { } a
            ? design.Figure("drain.along", "outlet along its side", a, Unit.Millimeter)
            : (inside * UsualPlace).As("outlet along its side", Unit.Millimeter);
    }

    private static Figure? Diameter(CheckedDesign design, Drain drain) =>
        drain.Diameter is { } d
            ? design.Figure("drain.diameter", "diameter of the hole", d, Unit.Millimeter)
            : null;

    private static CutPart Pane(
        CheckedDesign design,
        string name,
        (Figure Length, Figure Width) size,
        Figure thickness,
        string note
    )
    {
        var material = (design.Find<SheetEntry>("box.material") ?? design.Catalog.Find("float-glass"))!.Key;
        return CutList.Part($"pane-{name}", material, design, size.Length, size.Width, note) with
        {
            Thickness = thickness,
            Key = "box.glass",
        };
    }

    private static CutPart Cut(
        CheckedDesign design,
        BoxGeometry box,
        Side side,
        (OpeningPlan Plan, OpeningCell Cell) of
    )
    {
        var cell = of.Cell;
        var isFiller = cell.Name.Contains("beside", StringComparison.Ordinal);
        var width = isFiller
            ? CutList.Fit("height beside the vent", cell.Width - Two * OpeningPolicy.Joint)
            : cell.Width;
        var pane = Pane(design, cell.Name, (cell.Length, width), box.Walls!, Note(design, side, of));
        return pane with
        {
            CutOuts =
            [
                .. cell
                    .Openings.Where(o => !o.Vent.IsRound)
                    .Select(o => new CutOut(From(o.Left, cell.Left), From(o.Low, cell.Low), o.Length, o.Width)
                    {
                        For = FormattableString.Invariant($"vent {o.Vent.Index + 1}"),
                        Key = o.Vent.Path,
                    }),
            ],
            Holes =
            [
                .. cell
                    .Openings.Where(o => o.Vent.IsRound)
                    .Select(o => new CutHole(
                        From(o.Left + o.Length / Two, cell.Left),
                        From(o.Low + o.Width / Two, cell.Low),
                        o.Length,
                        FormattableString.Invariant($"vent {o.Vent.Index + 1}"),
                        o.Vent.Path
                    )),
                .. WallHoles(design, box, side, cell),
            ],
            SeenFrom = Seen(design, box, side, cell),
        };
    }

    private static string Seen(CheckedDesign design, BoxGeometry box, Side side, OpeningCell cell)
    {
        var any = cell.Openings.Length > 0 || WallHoles(design, box, side, cell).Any();
        return !any ? ""
            : side is Side.Left or Side.Right ? "seen with the front edge on the left"
            : side == Side.Top ? "seen from above, front edge below"
            : "seen from the front";
    }

    private static Figure From(Figure place, Figure corner) =>
        (place - corner).As("from the edge of the pane", Unit.Millimeter);

    private static string Note(CheckedDesign design, Side side, (OpeningPlan Plan, OpeningCell Cell) of)
    {
        var topmost = of.Cell.HighSi >= of.Plan.Width.Si - 1e-9;
        return of.Cell.Kind switch
        {
            CellKind.Sill when design.Design.Box.Doors?.Kind is null =>
                "polish the upper edge; doors follow from their runner and are not listed",
            CellKind.Sill => "polish the upper edge",
            CellKind.Bar when of.Cell.Name.StartsWith("front-bar", StringComparison.Ordinal) =>
                "over the vent; the lower track is glued to it",
            CellKind.Bar => "over the doors; the upper track is glued to it",
            _ when of.Cell.Name.Contains("beside", StringComparison.Ordinal) =>
                "beside the vent; seam the edges",
            _ when side == Side.Top => "glued between the walls",
            _ when !topmost => "ends below the vent; seam the edges",
            _ when side == Side.Front => "polish the upper edge",
            _ when side == Side.Back => "seam the edges",
            _ => "between front and back",
        };
    }

    /// <summary>Holes for drain, hoses and cables that lie in a cell of a wall.</summary>
    private static IEnumerable<CutHole> WallHoles(
        CheckedDesign design,
        BoxGeometry box,
        Side side,
        OpeningCell cell
    )
    {
        var holes = new List<(Figure Along, Figure Height, Figure Diameter, string For, string Key)>();
        if (Hole(design, box, side) is { Diameter: { } diameter } drain)
        {
            holes.Add((drain.Along, drain.Height, diameter, "drain", "drain"));
        }

        for (var i = 0; i < design.Design.Passages.Count; i++)
        {
            var passage = design.Design.Passages[i];
            if (passage.In == PassagePart.Wall && (passage.Side ?? Side.Back) == side)
            {
                holes.Add(PassageSpot.InWall(design, box, i));
            }
        }

        foreach (var (along, height, across, what, key) in holes)
        {
            var left = side is Side.Left or Side.Right ? along - OpeningPolicy.Joint : along + box.Walls!;
            var up = height - OpeningPolicy.Joint;
            if (
                left.Si >= cell.Left.Si
                && left.Si <= cell.RightSi
                && up.Si >= cell.Low.Si
                && up.Si <= cell.HighSi
            )
            {
                yield return new CutHole(
                    CutList.Fit("hole from the left edge", left - cell.Left),
                    CutList.Fit("hole from the lower edge", up - cell.Low),
                    across,
                    what,
                    key
                );
            }
        }
    }

    /// <summary>A standpipe leaves through the base, near its side.</summary>
    private static CutPart Standpipe(CheckedDesign design, BoxGeometry box, CutPart pane)
    {
        if (
            design.Design.Drain is not { Kind: DrainKind.Standpipe } drain
            || Diameter(design, drain) is not { } diameter
        )
        {
            return pane;
        }

        var side = drain.Side ?? Side.Back;
        var along = (Along(design, box, drain, side) + box.Walls!).As(
            "outlet along its side",
            Unit.Millimeter
        );
        var covered =
            design.Design.Background is { } b && (b.Sides.Count == 0 ? [Side.Back] : b.Sides).Contains(side);
        var front = covered ? box.Walls! + box.BackgroundThickness! : box.Walls!;
        var near = (front + StandpipePlace + diameter / Two).As("outlet from its wall", Unit.Millimeter);
        var (left, low) = side switch
        {
            Side.Front => (along, near),
            Side.Left => (near, along),
            Side.Right => (
                (box.OutsideLength! - near).As("outlet from the left edge", Unit.Millimeter),
                along
            ),
            _ => (along, (box.OutsideDepth! - near).As("outlet from the front edge", Unit.Millimeter)),
        };
        return pane with
        {
            Holes = [new CutHole(left, low, diameter, "standpipe", "drain")],
            SeenFrom = "seen from above, front edge below",
        };
    }

    private static readonly Figure StandpipePlace = Figure.Choice(
        "edge of the hole from the wall",
        30,
        Unit.Millimeter,
        "clear of the joint, with room for the nut"
    );
}
