using System.Collections.Immutable;
using Litterfall.Domain;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Checking;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Quantities.Placing;

/// <summary>A piece of wood or stone at its place, in meters inside the box.</summary>
/// <param name="Number">1 for the first.</param>
/// <param name="Name">Its name.</param>
/// <param name="Key">Its key in the design.</param>
public sealed record PieceSpot(int Number, string Name, string Key)
{
    /// <summary>
    /// An ellipse covers π/4 of its frame; a rectangle of the same ground has edges √(π/4) times as long.
    /// </summary>
    public const double EllipseEdge = 0.886;

    private const double DepthToLength = 0.45;
    private const double MostDepth = 0.6;

    /// <summary>Its middle along the front, m.</summary>
    public required double X { get; init; }

    /// <summary>Its middle from front to back, m.</summary>
    public required double Y { get; init; }

    /// <summary>Its lowest point over the base, m.</summary>
    public required double Foot { get; init; }

    /// <summary>Along the front, m.</summary>
    public required double Length { get; init; }

    /// <summary>Front to back, m.</summary>
    public required double Depth { get; init; }

    /// <summary>Its height, m.</summary>
    public required double Height { get; init; }

    /// <summary>True for stone.</summary>
    public required bool IsStone { get; init; }

    /// <summary>All pieces of a design.</summary>
    /// <param name="design">The design.</param>
    /// <param name="terrain">Its ground.</param>
    public static ImmutableArray<PieceSpot> Of(CheckedDesign design, Terrain terrain) =>
        [.. design.Design.Hardscape.Select((p, i) => One(design, terrain, p, i))];

    private static PieceSpot One(CheckedDesign design, Terrain terrain, HardscapePiece piece, int i)
    {
        var entry = design.Entry<HardscapeEntry>(FormattableString.Invariant($"hardscape[{i}].material"));
        var volume = HardscapeSize.Volume(design, i).Si;
        var stone = entry.Seat?.Text == "base";
        var stretch = stone ? 1.5 : 2.6;
        var length = Math.Min(
            piece.Length?.Si ?? stretch * Math.Cbrt(volume / stretch * 1.4),
            terrain.Length * 0.8
        );
        var height = Math.Clamp(
            length > 0 ? Math.Sqrt(volume / length) * 1.25 : 0.02,
            0.01,
            terrain.Height * 0.7
        );
        var x = piece.At?.X.Si ?? terrain.Length * (i + 0.62) / (design.Design.Hardscape.Count + 0.24);
        var y = piece.At?.Y.Si ?? terrain.Front + (0.55 * (terrain.Back - terrain.Front));
        var ground = terrain.Ground(x, y);
        var onBase = (piece.Seat ?? (stone ? Seat.Base : Seat.Soil)) == Seat.Base;
        var buried = piece.Buried?.Si ?? SizingPolicy.Buried.Si;
        return new PieceSpot(i + 1, entry.Name, FormattableString.Invariant($"hardscape[{i}]"))
        {
            X = piece.Length is null ? Within(x, length, terrain.Length) : x,
            Y = y,
            Foot = onBase && stone ? Math.Max(0, ground - (height * buried)) : ground - (height * buried),
            Length = length,
            Depth = Math.Min(length * DepthToLength, terrain.DepthOfBox * MostDepth),
            Height = height,
            IsStone = stone,
        };
    }

    /// <summary>A piece whose length nobody entered is drawn inside the box.</summary>
    private static double Within(double middle, double length, double room) =>
        length >= room ? room / 2 : Math.Clamp(middle, length / 2, room - (length / 2));
}
