using Litterfall.Domain;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Lists;
using Litterfall.Domain.Units;

namespace Litterfall.Quantities.Sizing;

/// <summary>
/// True sizes of the box: outside and inside edges, open floor, opening. All lengths in meters.
/// </summary>
public sealed record BoxGeometry
{
    /// <summary>Outside length; null when only the inside is known and no glass was entered.</summary>
    public Figure? OutsideLength { get; init; }

    /// <summary>Outside depth.</summary>
    public Figure? OutsideDepth { get; init; }

    /// <summary>Outside height.</summary>
    public Figure? OutsideHeight { get; init; }

    /// <summary>Thickness of the walls.</summary>
    public Figure? Walls { get; init; }

    /// <summary>Thickness of the base.</summary>
    public Figure? Base { get; init; }

    /// <summary>Inside length, not below 0.</summary>
    public required Figure InsideLength { get; init; }

    /// <summary>Inside depth, not below 0.</summary>
    public required Figure InsideDepth { get; init; }

    /// <summary>Inside height over the base, not below 0.</summary>
    public required Figure InsideHeight { get; init; }

    /// <summary>Length between backgrounds on the left and right.</summary>
    public required Figure OpenLength { get; init; }

    /// <summary>Depth between backgrounds on the front and back.</summary>
    public required Figure OpenDepth { get; init; }

    /// <summary>Inside floor without background.</summary>
    public required Figure GrossFloor { get; init; }

    /// <summary>Floor left between the backgrounds.</summary>
    public required Figure OpenFloor { get; init; }

    /// <summary>Lower edge of the background above the base; null without background.</summary>
    public Figure? BackgroundFrom { get; init; }

    /// <summary>Mean thickness of the background; null without.</summary>
    public Figure? BackgroundThickness { get; init; }

    /// <summary>Top opening along the front.</summary>
    public required Figure OpeningLength { get; init; }

    /// <summary>Top opening front to back.</summary>
    public required Figure OpeningDepth { get; init; }

    /// <summary>True when each inside edge and the open floor are longer than nothing.</summary>
    public bool IsBuildable => InsideHeight.Si > 0 && OpenLength.Si > 0 && OpenDepth.Si > 0;

    /// <summary>Measures a design.</summary>
    public static BoxGeometry Of(CheckedDesign design)
    {
        var box = design.Design.Box;
        var walls = box.Glass is { } g
            ? design.Figure("box.glass.walls", "wall thickness", g.Walls, Unit.Millimeter)
            : null;
        var baseGlass =
            box.Glass is { Base: { } b }
                ? design.Figure("box.glass.base", "base thickness", b, Unit.Millimeter)
            : walls is null ? null
            : (walls * Figure.Number(1)).As("base thickness, as the walls", Unit.Millimeter);
        var two = Figure.Number(2);
        var (outside, inside) = (Edges(design, box.Outside, "outside"), Edges(design, box.Inside, "inside"));
        if (outside is { } o && inside is null)
        {
            inside = (
                Inside("inside length", o.Length - two * walls!),
                Inside("inside depth", o.Depth - two * walls!),
                Inside("inside height", o.Height - baseGlass!)
            );
        }
        else if (walls is not null && inside is { } i)
        {
            outside = (
                (i.Length + two * walls).As("outside length", Unit.Millimeter),
                (i.Depth + two * walls).As("outside depth", Unit.Millimeter),
                (i.Height + baseGlass!).As("outside height", Unit.Millimeter)
            );
        }

        return Complete(
            design,
            inside!.Value,
            new BoxGeometry
            {
                OutsideLength = outside?.Length,
                OutsideDepth = outside?.Depth,
                OutsideHeight = outside?.Height,
                Walls = walls,
                Base = baseGlass,
                InsideLength = inside.Value.Length,
                InsideDepth = inside.Value.Depth,
                InsideHeight = inside.Value.Height,
                OpenLength = inside.Value.Length,
                OpenDepth = inside.Value.Depth,
                GrossFloor = inside.Value.Length,
                OpenFloor = inside.Value.Length,
                OpeningLength = inside.Value.Length,
                OpeningDepth = inside.Value.Depth,
            }
        );
    }

    private static BoxGeometry Complete(
        CheckedDesign design,
        (Figure Length, Figure Depth, Figure Height) inside,
        BoxGeometry geometry
    )
    {
        var background = design.Design.Background;
        var thickness = background is null
            ? null
            : design.Figure(
                "background.thickness",
                "background thickness",
                background.Thickness,
                Unit.Millimeter
            );
        var sides =
            background is null ? []
            : background.Sides.Count == 0 ? [Side.Back]
            : background.Sides;
        var openLength = Shrunk(
            "length between backgrounds",
            inside.Length,
            thickness,
            sides,
            Side.Left,
            Side.Right
        );
        var openDepth = Shrunk(
            "depth between backgrounds",
            inside.Depth,
            thickness,
            sides,
            Side.Front,
            Side.Back
        );
        var rim = design.Design.Box.Rim is { } r
            ? design.Figure("box.rim", "rim width", r, Unit.Millimeter)
            : null;
        return geometry with
        {
            OpenLength = openLength,
            OpenDepth = openDepth,
            GrossFloor = (inside.Length * inside.Depth).As("inside floor", Unit.SquareCentimeter),
            OpenFloor = (openLength * openDepth).As("floor between backgrounds", Unit.SquareCentimeter),
            BackgroundThickness = thickness,
            BackgroundFrom =
                background is null ? null
                : background.From is { } f
                    ? design.Figure("background.from", "lower edge of the background", f, Unit.Centimeter)
                : Figure.Choice(
                    "lower edge of the background",
                    0,
                    Unit.Centimeter,
                    "it stands on the base unless the design says otherwise"
                ),
            OpeningLength = Opening("length of the top opening", inside.Length, rim),
            OpeningDepth = Opening("depth of the top opening", inside.Depth, rim),
        };
    }

    private static Figure Inside(string name, Figure difference) =>
        Figure.NotNegative(difference).As(name, Unit.Millimeter);

    private static Figure Opening(string name, Figure inside, Figure? rim) =>
        rim is null ? inside : Figure.NotNegative(inside - Figure.Number(2) * rim).As(name, Unit.Millimeter);

    private static Figure Shrunk(
        string name,
        Figure edge,
        Figure? thickness,
        IReadOnlyList<Side> sides,
        Side one,
        Side other
    )
    {
        var count = (sides.Contains(one) ? 1 : 0) + (sides.Contains(other) ? 1 : 0);
        return thickness is null || count == 0
            ? edge
            : Figure.NotNegative(edge - Figure.Number(count) * thickness).As(name, Unit.Millimeter);
    }

    private static (Figure Length, Figure Depth, Figure Height)? Edges(
        CheckedDesign design,
        Edges? edges,
        string which
    ) =>
        edges is null
            ? null
            : (
                Smallest(design, edges.Length, $"box.{which}.length", $"{which} length"),
                Smallest(design, edges.Depth, $"box.{which}.depth", $"{which} depth"),
                Smallest(design, edges.Height, $"box.{which}.height", $"{which} height")
            );

    /// <summary>The smallest of up to three measurements of one edge.</summary>
    public static Figure Smallest(CheckedDesign design, Seq<Typed<Length>> edge, string path, string name)
    {
        if (edge.Count == 1)
        {
            return design.Figure(path, name, edge[0], Unit.Millimeter);
        }

        var figures = edge.Select(
                (one, i) =>
                    design.Figure($"{path}[{i}]", $"{name}, measurement {i + 1}", one, Unit.Millimeter)
            )
            .ToArray();
        return Figure.Min(figures).As(name, Unit.Millimeter);
    }
}
