using System.Collections.Immutable;
using Litterfall.Domain;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Quantities.Openings;

/// <summary>
/// An opening for air with its side, size and place; what the design leaves open is placed here, once for
/// climate, light, drawings and cut list. Lengths in meters.
/// </summary>
/// <param name="Index">Its place in the list of vents.</param>
/// <param name="Side">The side it is in.</param>
public sealed record VentShape(int Index, Side Side)
{
    /// <summary>Share of a side that a vent of which only the area is known takes at most.</summary>
    private static readonly Figure LongestShare = Figure.Choice(
        "longest vent, share of its side",
        90,
        Unit.Percent,
        "a strip needs some frame at both ends"
    );

    /// <summary>Height of an opening of which only the area is known, m.</summary>
    public static readonly Figure UsualWidth = Figure.Choice(
        "height of a vent that says only its area",
        3,
        Unit.Centimeter,
        "vents of front-opening boxes are 2 to 4 cm high"
    );

    /// <summary>Height over the base of a vent that tells none, share of the box.</summary>
    public static readonly Figure UsualHeight = Figure.Choice(
        "height of a vent over the base, share of the box",
        90,
        Unit.Percent,
        "near the top, where the design does not say"
    );

    /// <summary>Along its side; the diameter of a round one.</summary>
    public required Figure Length { get; init; }

    /// <summary>Across; the diameter of a round one.</summary>
    public required Figure Width { get; init; }

    /// <summary>True for a round one.</summary>
    public bool IsRound { get; init; }

    /// <summary>Its middle from the left end of its side, or the front end of left and right.</summary>
    public required Figure Along { get; init; }

    /// <summary>
    /// Its middle over the base inside; in a lid behind the front edge, null where the program places it.
    /// </summary>
    public Figure? Across { get; init; }

    /// <summary>How it is made.</summary>
    public VentMake Make { get; init; }

    /// <summary>True where the program placed or shaped it.</summary>
    public bool IsPlaced { get; init; }

    /// <summary>Its mesh; null for an open one.</summary>
    public MeshEntry? Mesh { get; init; }

    /// <summary>Its key in the design.</summary>
    public string Path => FormattableString.Invariant($"vents[{Index}]");

    /// <summary>All vents of a design.</summary>
    /// <param name="design">The design.</param>
    /// <param name="box">Its sizes.</param>
    public static ImmutableArray<VentShape> Of(CheckedDesign design, BoxGeometry box) =>
        [.. Enumerable.Range(0, design.Design.Vents.Count).Select(i => One(design, box, i))];

    /// <summary>
    /// The side of a vent: as entered, else low in front of a box that opens there, else in the back.
    /// </summary>
    /// <param name="vent">The vent.</param>
    /// <param name="box">Its box.</param>
    /// <param name="insideHeightMeters">Inside height of that box, m.</param>
    public static Side SideOf(Vent vent, Box box, double insideHeightMeters) =>
        vent.Side
        ?? (
            box.Opening == Opening.Front && vent.Height?.Si < insideHeightMeters / 2 ? Side.Front : Side.Back
        );

    private static VentShape One(CheckedDesign design, BoxGeometry box, int i)
    {
        var vent = design.Design.Vents[i];
        var path = FormattableString.Invariant($"vents[{i}]");
        var side = SideOf(vent, design.Design.Box, box.InsideHeight.Si);
        var run = side is Side.Left or Side.Right ? box.InsideDepth : box.InsideLength;
        var (length, width) = Size(design, i, run);
        return new VentShape(i, side)
        {
            Length = length,
            Width = width,
            IsRound = vent.Diameter is not null,
            Along = vent.Along is { } along
                ? design.Figure($"{path}.along", "middle of the vent along its side", along, Unit.Millimeter)
                : (run / Figure.Number(2)).As("middle of the side", Unit.Millimeter),
            Across = Placed(design, box, (vent, path), side),
            Make = vent.Make ?? Usual(design, vent, side),
            IsPlaced =
                (vent.Length is null && vent.Diameter is null)
                || (side == Side.Top ? vent.Behind is null : vent.Height is null),
            Mesh = design.Find<MeshEntry>($"{path}.mesh"),
        };
    }

    private static (Figure Length, Figure Width) Size(CheckedDesign design, int i, Figure run)
    {
        var vent = design.Design.Vents[i];
        var path = FormattableString.Invariant($"vents[{i}]");
        if (vent.Diameter is { } round)
        {
            var diameter = design.Figure($"{path}.diameter", "vent diameter", round, Unit.Millimeter);
            return (diameter, diameter);
        }

        var width = vent.Width is { } typed
            ? design.Figure($"{path}.width", "vent width", typed, Unit.Millimeter)
            : UsualWidth;
        if (vent.Length is { } length)
        {
            return (design.Figure($"{path}.length", "vent length", length, Unit.Millimeter), width);
        }

        if (vent.Area is not { } open || width.Si <= 0)
        {
            return (Figure.Number(0) * run, width);
        }

        var area = design.Figure($"{path}.area", "open area of the vent", open, Unit.SquareCentimeter);
        var most = (LongestShare * run).As("longest vent", Unit.Millimeter);
        var wanted = (area / width).As("vent length", Unit.Millimeter);
        return wanted.Si <= most.Si || most.Si <= 0
            ? (wanted, width)
            : (most, (area / most).As("vent width", Unit.Millimeter));
    }

    private static Figure? Placed(
        CheckedDesign design,
        BoxGeometry box,
        (Vent Vent, string Path) of,
        Side side
    )
    {
        if (side == Side.Top)
        {
            return of.Vent.Behind is { } behind
                ? design.Figure(
                    $"{of.Path}.behind",
                    "middle of the vent behind the front",
                    behind,
                    Unit.Millimeter
                )
                : null;
        }

        return of.Vent.Height is { } height
            ? design.Figure($"{of.Path}.height", "middle of the vent over the base", height, Unit.Millimeter)
            : (UsualHeight * box.InsideHeight).As("middle of the vent over the base", Unit.Millimeter);
    }

    /// <summary>Plastic and round ones are cut out; glass ends before a strip.</summary>
    private static VentMake Usual(CheckedDesign design, Vent vent, Side side)
    {
        var sheet = design.Find<SheetEntry>(
            side == Side.Top && design.Design.Lid is not null ? "lid.material" : "box.material"
        );
        return vent.Diameter is not null || SheetKind.IsPlastic(sheet) ? VentMake.Cutout : VentMake.Strip;
    }
}
