using System.Collections.Immutable;
using Litterfall.Domain;
using Litterfall.Domain.Checking;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Quantities.Placing;

/// <summary>
/// Heights of the floor layers over the inside base, in meters, at any place: x along the front from the
/// left, y from front
/// to back. A wedge is straight between the faces of the backgrounds.
/// </summary>
public sealed class Terrain
{
    private readonly ImmutableArray<FloorLayer> layers;
    private readonly BoxGeometry box;
    private readonly SoilLayer? soil;

    /// <summary>The ground of a design.</summary>
    /// <param name="design">The design.</param>
    /// <param name="box">Its sizes.</param>
    /// <param name="layers">Its layers.</param>
    public Terrain(CheckedDesign design, BoxGeometry box, ImmutableArray<FloorLayer> layers)
    {
        this.layers = layers;
        this.box = box;
        soil = design.Design.Floor.Soil;
        Drainage = Depth(LayerKind.Drainage);
        Moss = Depth(LayerKind.Moss);
        Litter = Depth(LayerKind.Litter);
        var sides = Covered(design.Design);
        var thick = box.BackgroundThickness?.Si ?? 0;
        Left = sides.Contains(Side.Left) ? thick : 0;
        Right = Length - (sides.Contains(Side.Right) ? thick : 0);
        Front = sides.Contains(Side.Front) ? thick : 0;
        Back = DepthOfBox - (sides.Contains(Side.Back) ? thick : 0);
    }

    /// <summary>Inside along the front, m.</summary>
    public double Length => box.InsideLength.Si;

    /// <summary>Inside from front to back, m.</summary>
    public double DepthOfBox => box.InsideDepth.Si;

    /// <summary>Inside from the base up, m.</summary>
    public double Height => box.InsideHeight.Si;

    /// <summary>Depth of the drainage layer, m.</summary>
    public double Drainage { get; }

    /// <summary>Depth of the moss, m.</summary>
    public double Moss { get; }

    /// <summary>Depth of the leaf litter, m.</summary>
    public double Litter { get; }

    /// <summary>Face of the left background, or pane, m.</summary>
    public double Left { get; }

    /// <summary>Face of the right background, or pane, m.</summary>
    public double Right { get; }

    /// <summary>Face of the front background, or pane, m.</summary>
    public double Front { get; }

    /// <summary>Face of the back background, or pane, m.</summary>
    public double Back { get; }

    /// <summary>Sides with a background.</summary>
    public static IReadOnlyList<Side> Covered(Design design) =>
        design.Background is null ? []
        : design.Background.Sides.Count == 0 ? [Side.Back]
        : design.Background.Sides;

    /// <summary>Settled depth of the soil at a place.</summary>
    public double Soil(double x, double y)
    {
        if (soil is null)
        {
            return 0;
        }

        if (soil.Zones.Count == 0)
        {
            return Wedge(soil.Depth?.Si, soil.Front?.Si, soil.Back?.Si, y);
        }

        var end = 0.0;
        var share = Right > Left ? Math.Clamp((x - Left) / (Right - Left), 0, 1) : 0;
        foreach (var zone in soil.Zones)
        {
            end += zone.Share.Si;
            if (share < end - 1e-9 || zone == soil.Zones[^1])
            {
                return Wedge(zone.Depth?.Si, zone.Front?.Si, zone.Back?.Si, y);
            }
        }

        return 0;
    }

    /// <summary>Where steps of the soil lie along the front, inside ends included.</summary>
    public IEnumerable<double> Steps()
    {
        yield return Left;
        var end = 0.0;
        foreach (var zone in soil?.Zones ?? [])
        {
            end += zone.Share.Si;
            if (end < 1 - 1e-9)
            {
                yield return Left + end * (Right - Left);
            }
        }

        yield return Right;
    }

    /// <summary>Top of the soil over the base.</summary>
    public double Ground(double x, double y) => Drainage + Soil(x, y);

    private double Wedge(double? level, double? front, double? back, double y)
    {
        if (level is { } depth)
        {
            return depth;
        }

        var share = Back > Front ? Math.Clamp((y - Front) / (Back - Front), 0, 1) : 0;
        return (front ?? 0) + share * ((back ?? 0) - (front ?? 0));
    }

    private double Depth(LayerKind layer) => layers.FirstOrDefault(l => l.Kind == layer)?.Depth.Si ?? 0;
}
