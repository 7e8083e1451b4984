using System.Collections.Immutable;
using Litterfall.Domain;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Quantities.Cutting;

/// <summary>
/// Panes of a box that is glued for this build. Build-up: the base lies full size under the walls, front and
/// back run over the whole length, the sides stand between them; each joint takes its silicone. Lengths in
/// meters.
/// </summary>
public static class BoxPanes
{
    private static readonly Figure Two = Figure.Number(2);

    /// <summary>Silicone between two panes.</summary>
    public static readonly Figure Joint = Figure.Given(
        "silicone joint between panes",
        0.0015,
        Unit.Millimeter,
        Citation.Habit("1 to 2 mm between panes, middle taken")
    );

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
    public static IEnumerable<CutPart> Of(CheckedDesign design, BoxGeometry box)
    {
        if (design.Design.Box.Panes != PaneSource.Cut || box.OutsideLength is null)
        {
            yield break;
        }

        var material = (design.Find<SheetEntry>("box.material") ?? design.Catalog.Find("float-glass"))!.Key;
        var across = CutList.Fit("depth of a side pane", box.OutsideDepth! - Two * box.Walls! - Two * Joint);
        var tall = CutList.Fit("height of a wall pane", box.OutsideHeight! - box.Base! - Joint);
        yield return Pane("base", (box.OutsideLength, box.OutsideDepth!), box.Base!, "under the walls");
        if (design.Design.Box is { Opening: Opening.Front, Sill: { } typed })
        {
            var sill = design.Figure("box.sill", "height of the front sill", typed, Unit.Millimeter);
            yield return Pane(
                "front sill",
                (box.OutsideLength, CutList.Fit("height of the sill pane", sill - Joint)),
                box.Walls!,
                design.Design.Box.Doors?.Kind is null
                    ? "polish the upper edge; doors follow from their runner and are not listed"
                    : "polish the upper edge"
            );
        }
        else
        {
            yield return Pane("front", (box.OutsideLength, tall), box.Walls!, "polish the upper edge");
        }

        yield return Drilled(
            Pane("back", (box.OutsideLength, tall), box.Walls!, "seam the edges"),
            Side.Back
        );
        yield return Drilled(Pane("left", (across, tall), box.Walls!, "between front and back"), Side.Left);
        yield return Drilled(Pane("right", (across, tall), box.Walls!, "between front and back"), Side.Right);

        CutPart Pane(string name, (Figure Length, Figure Width) size, Figure thickness, string note) =>
            CutList.Part(
                $"pane-{name.Replace(' ', '-')}",
                material,
                design,
                size.Length,
                size.Width,
                note
            ) with
            {
                Thickness = thickness,
                Key = "box.glass",
            };

        CutPart Drilled(CutPart pane, Side side) => WallHole(design, box, side, pane);
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

        var inside = side is Side.Left or Side.Right ? box.InsideDepth : box.InsideLength;
        var along = drain.Along is { } a
            ? design.Figure("drain.along", "outlet along its side", a, Unit.Millimeter)
            : (inside * UsualPlace).As("outlet along its side", Unit.Millimeter);
        var height = drain.Height is { } h
            ? design.Figure("drain.height", "height of the outlet", h, Unit.Millimeter)
            : UsualHeight;
        var diameter = drain.Diameter is { } d
            ? design.Figure("drain.diameter", "diameter of the hole", d, Unit.Millimeter)
            : null;
        return (along, height, diameter);
    }

    private static CutPart WallHole(CheckedDesign design, BoxGeometry box, Side side, CutPart pane)
    {
        if (Hole(design, box, side) is not { } hole || hole.Diameter is null)
        {
            return pane;
        }

        var fromLeft = side == Side.Back ? hole.Along + box.Walls! : hole.Along - Joint;
        return pane with
        {
            SeenFrom = side == Side.Back ? "seen from the front" : "seen with the front edge on the left",
            Holes =
            [
                new CutHole(
                    CutList.Fit("hole from the left edge", fromLeft),
                    CutList.Fit("hole from the lower edge", hole.Height - Joint),
                    hole.Diameter,
                    "drain",
                    "drain"
                ),
            ],
        };
    }
}
