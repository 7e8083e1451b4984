using System.Collections.Immutable;
using Litterfall.Domain;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;

namespace Litterfall.Quantities.Sizing;

/// <summary>
/// A basin as it stands in the floor: on the barrier, its edge level with the soil around it. What is
/// deeper than the soil sinks into the drainage layer; what is shallower stands on a foot.
/// </summary>
/// <param name="Number">1 for the first.</param>
/// <param name="Path">Its key in the design.</param>
public sealed record WaterBasin(int Number, string Path)
{
    /// <summary>Its water along the front.</summary>
    public required Figure Length { get; init; }

    /// <summary>Its water from front to back.</summary>
    public required Figure Width { get; init; }

    /// <summary>Its water face.</summary>
    public required Figure Area { get; init; }

    /// <summary>Depth of its water when full.</summary>
    public required Figure Depth { get; init; }

    /// <summary>Its edge over the full water.</summary>
    public required Figure Edge { get; init; }

    /// <summary>Its water when full.</summary>
    public required Figure Volume { get; init; }

    /// <summary>What it weighs empty; null where the design does not say.</summary>
    public Figure? Mass { get; init; }

    /// <summary>How animals get out; null where the design does not say.</summary>
    public BasinSides? Sides { get; init; }

    /// <summary>Its middle, m from the left and from the front inside.</summary>
    public required (double X, double Y) Middle { get; init; }

    /// <summary>True where it is read out of a share of the floor.</summary>
    public bool IsAssumed { get; init; }

    /// <summary>True where a place lies over its water.</summary>
    /// <param name="x">From the left inside, m.</param>
    /// <param name="y">From the front inside, m.</param>
    public bool Holds(double x, double y) =>
        Math.Abs(x - Middle.X) <= 0.5 * Length.Si && Math.Abs(y - Middle.Y) <= 0.5 * Width.Si;
}

/// <summary>The basins of a floor, and the ground that they leave.</summary>
public static class WaterBasins
{
    private static readonly Figure UsualEdge = Figure.Choice(
        "edge of a basin over its water",
        1,
        Unit.Centimeter,
        "soil washes in over a lower edge; enter edge to replace it"
    );

    private static readonly Figure AssumedDepth = Figure.Choice(
        "depth of the assumed basin",
        3,
        Unit.Centimeter,
        "waterArea says no depth, and a shallow dish is usual; describe it by basins: to replace it"
    );

    /// <summary>The basins of a design; of a share of the floor, one along the left end is assumed.</summary>
    /// <param name="design">The design.</param>
    /// <param name="box">Its sizes.</param>
    public static ImmutableArray<WaterBasin> Of(CheckedDesign design, BoxGeometry box) =>
        design.Design.Basins.Count > 0 ? [.. design.Design.Basins.Select((_, i) => One(design, box, i))]
        : design.Design.WaterArea is { Si: > 0 } ? Assumed(design, box)
        : [];

    /// <summary>Water faces together; null without a basin.</summary>
    /// <param name="design">The design.</param>
    /// <param name="box">Its sizes.</param>
    public static Figure? Area(CheckedDesign design, BoxGeometry box)
    {
        var basins = Of(design, box);
        return basins.IsEmpty
            ? null
            : Figure
                .Total([.. basins.Select(b => b.Area)], Unit.SquareCentimeter.Dimension)
                .As("floor under open water", Unit.SquareCentimeter);
    }

    /// <summary>Water of all basins when full; null without.</summary>
    /// <param name="design">The design.</param>
    /// <param name="box">Its sizes.</param>
    public static Figure? Water(CheckedDesign design, BoxGeometry box)
    {
        var basins = Of(design, box);
        return basins.IsEmpty
            ? null
            : Figure
                .Total([.. basins.Select(b => b.Volume)], Unit.Liter.Dimension)
                .As("water in the basins", Unit.Liter);
    }

    /// <summary>The floor that is not water: where soil, moss and leaves lie.</summary>
    /// <param name="design">The design.</param>
    /// <param name="box">Its sizes.</param>
    public static Figure Ground(CheckedDesign design, BoxGeometry box) =>
        Area(design, box) is { } water
            ? Figure.NotNegative(box.OpenFloor - water).As("floor beside the water", Unit.SquareCentimeter)
            : box.OpenFloor;

    /// <summary>Share of the open floor that is water; 0 without a basin.</summary>
    /// <param name="design">The design.</param>
    /// <param name="box">Its sizes.</param>
    public static double Share(CheckedDesign design, BoxGeometry box) =>
        Area(design, box) is { } water && box.OpenFloor.Si > 0
            ? Math.Clamp(water.Si / box.OpenFloor.Si, 0, 1)
            : 0;

    /// <summary>
    /// What the basins take from the drainage layer, as far as they are deeper than the soil.
    /// </summary>
    /// <param name="basins">The basins.</param>
    /// <param name="soil">Mean depth of the soil; null without.</param>
    /// <param name="drainage">Depth of the drainage layer.</param>
    public static Figure? Sunk(ImmutableArray<WaterBasin> basins, Figure? soil, Figure drainage) =>
        basins.IsEmpty
            ? null
            : Figure
                .Total(
                    [.. basins.Select(b => b.Area * Figure.Min(Below(b, soil), drainage))],
                    Unit.Liter.Dimension
                )
                .As("taken from the drainage layer by basins", Unit.Liter);

    /// <summary>What the basins take of the inside below their water face, their feet included.</summary>
    /// <param name="basins">The basins.</param>
    /// <param name="soil">Mean depth of the soil; null without.</param>
    public static Figure? Taken(ImmutableArray<WaterBasin> basins, Figure? soil) =>
        basins.IsEmpty
            ? null
            : Figure
                .Total(
                    [
                        .. basins.Select(b =>
                            b.Area
                            * Figure.Max(b.Depth, soil is null ? b.Depth : Figure.NotNegative(soil - b.Edge))
                        ),
                    ],
                    Unit.Liter.Dimension
                )
                .As("taken by basins below their water", Unit.Liter);

    /// <summary>The soil that would lie where the basins are, each at the depth of its middle.</summary>
    /// <param name="design">A design with a soil.</param>
    /// <param name="box">Its sizes.</param>
    public static Figure InPlaceOfSoil(CheckedDesign design, BoxGeometry box) =>
        Figure
            .Total([.. Of(design, box).Select(b => b.Area * SoilAt(design, box, b))], Unit.Liter.Dimension)
            .As("soil that basins take the place of", Unit.Liter);

    /// <summary>Depth of a straight wedge at the middle of a basin: its mean over the basin.</summary>
    private static Figure SoilAt(CheckedDesign design, BoxGeometry box, WaterBasin basin)
    {
        var soil = design.Design.Floor.Soil!;
        var (left, front) = Corner(design, box);
        var depths = SoilDepths.Of(design, soil);
        var end = 0.0;
        for (var i = 0; i < soil.Zones.Count; i++)
        {
            end += soil.Zones[i].Share.Si;
            if (basin.Middle.X < left + (end * box.OpenLength.Si) || i == soil.Zones.Count - 1)
            {
                depths = SoilDepths.Zone(design, i);
                break;
            }
        }

        var share =
            box.OpenDepth.Si > 0 ? Math.Clamp((basin.Middle.Y - front) / box.OpenDepth.Si, 0, 1) : 0.5;
        return Figure
            .Computed(
                FormattableString.Invariant($"soil {100 * share:0} % of the way from front to back"),
                depths.Front.Si + (share * (depths.Back.Si - depths.Front.Si)),
                Unit.Meter.Dimension,
                depths.Front,
                depths.Back
            )
            .As("depth of the soil around the basin", Unit.Centimeter);
    }

    private static Figure Below(WaterBasin basin, Figure? soil) =>
        soil is null ? basin.Depth + basin.Edge : Figure.NotNegative(basin.Depth + basin.Edge - soil);

    private static WaterBasin One(CheckedDesign design, BoxGeometry box, int i)
    {
        var basin = design.Design.Basins[i];
        var path = FormattableString.Invariant($"basins[{i}]");
        var length = design.Figure($"{path}.length", "length of the basin", basin.Length, Unit.Centimeter);
        var width = design.Figure($"{path}.width", "width of the basin", basin.Width, Unit.Centimeter);
        var depth = design.Figure(
            $"{path}.depth",
            "depth of the basin's water",
            basin.Depth,
            Unit.Centimeter
        );
        var (left, front) = Corner(design, box);
        var share = (i + 0.5) / design.Design.Basins.Count;
        return With(
            new WaterBasin(i + 1, path)
            {
                Length = length,
                Width = width,
                Area = length,
                Depth = depth,
                Volume = depth,
                Edge = basin.Edge is { } edge
                    ? design.Figure($"{path}.edge", "edge of the basin over its water", edge, Unit.Centimeter)
                    : UsualEdge,
                Mass = basin.Mass is { } mass
                    ? design.Figure($"{path}.mass", "mass of the empty basin", mass, Unit.Kilogram)
                    : null,
                Sides = basin.Sides,
                Middle = (
                    basin.At?.X.Si ?? left + (share * box.OpenLength.Si),
                    basin.At?.Y.Si ?? front + (0.5 * width.Si)
                ),
            }
        );
    }

    private static WaterBasin With(WaterBasin basin)
    {
        var area = (basin.Length * basin.Width).As("water face of the basin", Unit.SquareCentimeter);
        return basin with
        {
            Area = area,
            Volume = (area * basin.Depth).As("water in the full basin", Unit.Liter),
        };
    }

    /// <summary>
    /// A share of the floor as one basin at the left end, from front to back, as deep as the floor allows
    /// and at most <see cref="AssumedDepth"/>; none where the floor has no layer to hold it.
    /// </summary>
    private static ImmutableArray<WaterBasin> Assumed(CheckedDesign design, BoxGeometry box)
    {
        var share = design.Figure("waterArea", "open water", design.Design.WaterArea!.Value, Unit.Percent);
        var room = Deepest(design) - UsualEdge.Si;
        if (room <= 0 || !box.IsBuildable)
        {
            return [];
        }

        var depth =
            room >= AssumedDepth.Si
                ? AssumedDepth
                : Figure.Choice(
                    "depth of the assumed basin",
                    room * 100,
                    Unit.Centimeter,
                    "as deep as the layers of the floor less the edge"
                );
        var length = (box.OpenLength * share).As("length of the assumed basin", Unit.Centimeter);
        var (left, front) = Corner(design, box);
        return
        [
            With(
                new WaterBasin(1, "waterArea")
                {
                    Length = length,
                    Width = box.OpenDepth,
                    Area = length,
                    Depth = depth,
                    Volume = depth,
                    Edge = UsualEdge,
                    Middle = (left + (0.5 * length.Si), front + (0.5 * box.OpenDepth.Si)),
                    IsAssumed = true,
                }
            ),
        ];
    }

    /// <summary>Least depth of soil and drainage together, m.</summary>
    private static double Deepest(CheckedDesign design)
    {
        var floor = design.Design.Floor;
        var below = floor.Drainage is { } d ? (d.Raised ?? d.Depth)?.Si ?? 0 : 0;
        return below + (floor.Soil is { } soil ? SoilDepths.Of(design, soil).Mean.Si : 0);
    }

    private static (double Left, double Front) Corner(CheckedDesign design, BoxGeometry box)
    {
        var thick = box.BackgroundThickness?.Si ?? 0;
        var sides = design.Design.Background?.Sides;
        return (
            sides is not null && sides.Contains(Side.Left) ? thick : 0,
            sides is not null && sides.Contains(Side.Front) ? thick : 0
        );
    }
}
