using System.Collections.Immutable;
using Litterfall.Domain;
using Litterfall.Domain.Checking;

namespace Litterfall.Quantities.Placing;

/// <summary>
/// A vent, in meters: along its side from the left or front end, and its middle over the base.
/// </summary>
/// <param name="Number">1 for the first.</param>
/// <param name="Key">Its key in the design.</param>
/// <param name="Side">The side it is in.</param>
/// <param name="Middle">Its middle along that side, m.</param>
public sealed record VentSpot(int Number, string Key, Side Side, double Middle)
{
    /// <summary>Where the middle of a vent in the top lies, as a share of the depth.</summary>
    public const double TopPlace = 0.8;

    private const double UsualWidth = 0.04;

    /// <summary>Along its side, m.</summary>
    public required double Length { get; init; }

    /// <summary>Across, m.</summary>
    public required double Width { get; init; }

    /// <summary>Its middle over the base, m.</summary>
    public required double Height { get; init; }

    /// <summary>All vents of a design.</summary>
    /// <param name="design">The design.</param>
    /// <param name="terrain">Its ground.</param>
    public static ImmutableArray<VentSpot> Of(CheckedDesign design, Terrain terrain) =>
        [.. design.Design.Vents.Select((v, i) => One(terrain, v, i))];

    private static VentSpot One(Terrain terrain, Vent vent, int i)
    {
        var height = vent.Height?.Si ?? terrain.Height;
        var side = vent.Side ?? (height > terrain.Height - 0.03 ? Side.Top : Side.Front);
        var room = side is Side.Left or Side.Right ? terrain.DepthOfBox : terrain.Length;
        var width = vent.Width?.Si ?? UsualWidth;
        var length = vent.Length?.Si ?? Math.Min(room * 0.95, (vent.Area?.Si ?? 0) / width);
        return new VentSpot(i + 1, FormattableString.Invariant($"vents[{i}]"), side, room / 2)
        {
            Length = length,
            Width = width,
            Height = height,
        };
    }
}
