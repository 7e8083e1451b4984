using Litterfall.Domain.Designs;
using Litterfall.Planning;

namespace Litterfall.Documents.Views;

/// <summary>
/// Heights of the floor layers over the inside base, in meters, at any place: x along the front from the
/// left,
/// y from front to back. A wedge is straight between the faces of the backgrounds.
/// </summary>
internal sealed class Terrain
{
    private readonly DesignNumbers numbers;
    private readonly SoilLayer? soil;

    public Terrain(DesignNumbers numbers)
    {
        this.numbers = numbers;
        soil = numbers.Design.Design.Floor.Soil;
        Drainage = Depth("drainage");
        Moss = Depth("moss");
        Litter = Depth("litter");
        var sides = Covered(numbers.Design.Design);
        var thick = numbers.Box.BackgroundThickness?.Si ?? 0;
        Left = sides.Contains(Side.Left) ? thick : 0;
        Right = Length - (sides.Contains(Side.Right) ? thick : 0);
        Front = sides.Contains(Side.Front) ? thick : 0;
        Back = DepthOfBox - (sides.Contains(Side.Back) ? thick : 0);
    }

    public double Length => numbers.Box.InsideLength.Si;

    public double DepthOfBox => numbers.Box.InsideDepth.Si;

    public double Height => numbers.Box.InsideHeight.Si;

    public double Drainage { get; }

    public double Moss { get; }

    public double Litter { get; }

    /// <summary>Faces of the backgrounds, or of the panes.</summary>
    public double Left { get; }

    public double Right { get; }

    public double Front { get; }

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

    private double Depth(string layer) => numbers.Layers.FirstOrDefault(l => l.Layer == layer)?.Depth.Si ?? 0;
}
