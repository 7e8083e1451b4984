using Litterfall.Domain.Lists;

namespace Litterfall.Domain.Cutting;

/// <summary>What a cutting plan is to reach.</summary>
public enum CuttingGoal
{
    /// <summary>All parts from as little stock as can be.</summary>
    LeastStock,

    /// <summary>The parts of most value from one sheet.</summary>
    MostValue,
}

/// <summary>A sheet, an offcut or a roll that may be cut. Lengths in millimeters.</summary>
public sealed record StockSheet
{
    /// <summary>Its name; for an offcut the number on its label.</summary>
    public required string Id { get; init; }

    /// <summary>Edge along x; of a roll, the longest piece that may be taken.</summary>
    public required double Length { get; init; }

    /// <summary>Edge along y; of a roll, its width.</summary>
    public required double Width { get; init; }

    /// <summary>How many there are; null for as many as wanted.</summary>
    public int? Count { get; init; }

    /// <summary>What one costs, or what an offcut is worth; null where nobody said.</summary>
    public decimal? Price { get; init; }

    /// <summary>True for a roll.</summary>
    public bool IsRoll { get; init; }

    /// <summary>What a meter of a roll costs; null where nobody said.</summary>
    public decimal? PricePerMeter { get; init; }
}

/// <summary>A part to cut. Lengths in millimeters.</summary>
public sealed record CutDemand
{
    /// <summary>Its name, unique in the task.</summary>
    public required string Id { get; init; }

    /// <summary>Edge along x unless it is turned.</summary>
    public required double Length { get; init; }

    /// <summary>Edge along y unless it is turned.</summary>
    public required double Width { get; init; }

    /// <summary>How many; null for as many as fit, where the goal is most value.</summary>
    public int? Count { get; init; }

    /// <summary>True where it may be turned by a quarter: no grain, no print, no weave.</summary>
    public bool MayTurn { get; init; } = true;

    /// <summary>What one is worth, where the goal is most value; null for its area in mm².</summary>
    public double? Value { get; init; }
}

/// <summary>What is to be cut from what, and how the tool cuts. Lengths in millimeters.</summary>
public sealed record CuttingTask
{
    /// <summary>What may be cut.</summary>
    public required Seq<StockSheet> Stock { get; init; }

    /// <summary>What is wanted.</summary>
    public required Seq<CutDemand> Parts { get; init; }

    /// <summary>Width that a cut takes away.</summary>
    public double Kerf { get; init; }

    /// <summary>
    /// Taken off every edge of a sheet, its own cut included; off the two long edges of a roll.
    /// </summary>
    public double Trim { get; init; }

    /// <summary>Narrowest strip that can be broken off; 0 where any can.</summary>
    public double NarrowestStrip { get; init; }

    /// <summary>True where every cut goes from edge to edge.</summary>
    public bool IsStraight { get; init; } = true;

    /// <summary>Most stages of cuts, each across those before; null for as many as wanted.</summary>
    public int? Stages { get; init; }

    /// <summary>What is to be reached.</summary>
    public CuttingGoal Goal { get; init; }

    /// <summary>Shorter edge of the smallest offcut that is kept.</summary>
    public double OffcutShort { get; init; } = 150;

    /// <summary>Longer edge of the smallest offcut that is kept.</summary>
    public double OffcutLong { get; init; } = 300;
}
