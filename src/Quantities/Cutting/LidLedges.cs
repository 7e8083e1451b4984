using Litterfall.Domain;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Quantities.Openings;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Quantities.Cutting;

/// <summary>
/// Ledges that an inset lid lies on: strips of the sheet of the walls, glued level to them so that the lid
/// ends flush with the upper edge.
/// </summary>
public static class LidLedges
{
    private static readonly Figure Two = Figure.Number(2);

    /// <summary>True for a lid that lies on ledges, as entered or as assumed.</summary>
    /// <param name="design">The design.</param>
    public static bool Any(CheckedDesign design) =>
        design.Design.Lid is { Overlap: null } lid
        && (lid.Rests ?? (design.Design.Box.Rim is null ? LidRest.Ledges : LidRest.Rim)) == LidRest.Ledges
        && lid.Held != PaneHold.Corners;

    /// <summary>The ledges as they are cut: along the sides whole, front and back between them.</summary>
    /// <param name="design">The design.</param>
    /// <param name="box">Its sizes.</param>
    public static IEnumerable<CutPart> Of(CheckedDesign design, BoxGeometry box)
    {
        if (!Any(design) || box.OpeningLength.Si <= 2 * OpeningPolicy.LedgeWidth.Si)
        {
            yield break;
        }

        var held = design.Design.Lid!.Held;
        if (held is null or PaneHold.AllEdges or PaneHold.BackHangs or PaneHold.Sides)
        {
            yield return Ledge(design, box, "ledge-side", box.OpeningDepth, "under the lid, left and right");
        }

        if (held != PaneHold.Sides)
        {
            var between = (box.OpeningLength - Two * OpeningPolicy.LedgeWidth).As(
                "between the ledges of the sides",
                Unit.Millimeter
            );
            yield return Ledge(
                design,
                box,
                "ledge-long",
                held == PaneHold.FrontAndBack ? box.OpeningLength : between,
                "under the lid, front and back"
            );
        }
    }

    /// <summary>
    /// Height that an inset lid and its ledge take from the top of a wall, m; null where nothing is there.
    /// </summary>
    /// <param name="design">The design.</param>
    /// <param name="box">Its sizes.</param>
    /// <param name="side">The wall.</param>
    public static Figure? Taken(CheckedDesign design, BoxGeometry box, Side side)
    {
        if (design.Design.Lid is not { Overlap: null, Thickness: { } typed } || box.Rim())
        {
            return null;
        }

        var lid = design.Figure("lid.thickness", "lid thickness", typed, Unit.Millimeter);
        var across = side is Side.Left or Side.Right;
        var held = design.Design.Lid!.Held;
        var ledge = Any(design) && (across ? held != PaneHold.FrontAndBack : held != PaneHold.Sides);
        return ledge && box.Walls is { } thick
            ? (lid + thick).As("height of lid and ledge", Unit.Millimeter)
            : lid;
    }

    private static bool Rim(this BoxGeometry box) => box.OpeningLength.Si < box.InsideLength.Si - 1e-9;

    private static CutPart Ledge(
        CheckedDesign design,
        BoxGeometry box,
        string name,
        Figure length,
        string note
    )
    {
        var sheet = design.Find<SheetEntry>("box.material")?.Key ?? "float-glass";
        var part = CutList.Part(
            name,
            sheet,
            design,
            CutList.Fit("ledge length", length),
            OpeningPolicy.LedgeWidth,
            $"{note}; glue it level, its upper face one lid below the edge; polish"
        );
        return part with
        {
            Count = (Two * part.Count).As("ledges, all boxes", Unit.One),
            Thickness = box.Walls,
            Key = "lid.rests",
        };
    }
}
