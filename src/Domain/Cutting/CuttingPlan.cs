using Litterfall.Domain.Lists;

namespace Litterfall.Domain.Cutting;

/// <summary>A part where it lies on a sheet; millimeters from the corner of the raw sheet.</summary>
/// <param name="Part">Name of the part.</param>
/// <param name="X">Its left edge.</param>
/// <param name="Y">Its lower edge.</param>
/// <param name="Length">Its edge along x as it lies.</param>
/// <param name="Width">Its edge along y as it lies.</param>
/// <param name="IsTurned">True where it is turned by a quarter.</param>
public sealed record PlacedPart(string Part, double X, double Y, double Length, double Width, bool IsTurned);

/// <summary>One straight cut; millimeters from the corner of the raw sheet.</summary>
/// <param name="Stage">Its stage: 0 for trimming, then 1 for the first cuts.</param>
/// <param name="IsUpright">True for a cut along y, at one x.</param>
/// <param name="At">
/// Its place along the other axis: the good edge of the piece before it; the kerf lies beyond.
/// </param>
/// <param name="From">Where it begins along its own axis.</param>
/// <param name="To">Where it ends along its own axis.</param>
public sealed record CutLine(int Stage, bool IsUpright, double At, double From, double To);

/// <summary>A rectangle left over; millimeters from the corner of the raw sheet.</summary>
/// <param name="X">Its left edge.</param>
/// <param name="Y">Its lower edge.</param>
/// <param name="Length">Its edge along x.</param>
/// <param name="Width">Its edge along y.</param>
public sealed record Offcut(double X, double Y, double Length, double Width);

/// <summary>One sheet, offcut or roll and how it is cut. Lengths in millimeters.</summary>
public sealed record CutSheet
{
    /// <summary>Name of the stock it is.</summary>
    public required string Stock { get; init; }

    /// <summary>Its edge along x; of a roll, what is taken off.</summary>
    public required double Length { get; init; }

    /// <summary>Its edge along y.</summary>
    public required double Width { get; init; }

    /// <summary>How far it is used along x; of a roll, what is taken off.</summary>
    public required double UsedLength { get; init; }

    /// <summary>Parts on it.</summary>
    public required Seq<PlacedPart> Parts { get; init; }

    /// <summary>Cuts in cutting order.</summary>
    public required Seq<CutLine> Cuts { get; init; }

    /// <summary>Rectangles worth keeping.</summary>
    public required Seq<Offcut> Offcuts { get; init; }
}

/// <summary>How all parts are cut.</summary>
public sealed record CuttingPlan
{
    /// <summary>True where nothing better can be: value and bound are one.</summary>
    public required bool IsProved { get; init; }

    /// <summary>Price, number of sheets, millimeters of a roll, or value of the parts.</summary>
    public required double Value { get; init; }

    /// <summary>No plan has less (or, for most value, more) than this.</summary>
    public required double Bound { get; init; }

    /// <summary>Sheets in the order they are cut.</summary>
    public required Seq<CutSheet> Sheets { get; init; }
}
