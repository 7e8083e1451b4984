using System.Collections.Immutable;

namespace Litterfall.Workshop.Cutting.Trees;

/// <summary>A kind of part on the grid: equal parts are one kind, however they are called.</summary>
/// <param name="Length">Edge along x with its kerf, in grid units.</param>
/// <param name="Width">Edge along y with its kerf, in grid units.</param>
/// <param name="Count">How many; <see cref="GridSheet.Unlimited"/> for as many as fit.</param>
/// <param name="MayTurn">True where it may lie the other way, and then looks different.</param>
/// <param name="Value">What one is worth.</param>
internal sealed record GridPart(int Length, int Width, int Count, bool MayTurn, double Value)
{
    /// <summary>Indices of the demands it stands for, with what each asks.</summary>
    public required ImmutableArray<(int Demand, int Count)> Demands { get; init; }

    /// <summary>Area with kerf, grid units squared.</summary>
    public double Area => (double)Length * Width;
}

/// <summary>A kind of sheet on the grid.</summary>
/// <param name="Stock">Index of the stock.</param>
/// <param name="Length">Usable edge along x and one kerf, in grid units.</param>
/// <param name="Width">Usable edge along y and one kerf, in grid units.</param>
/// <param name="Count">How many there are; <see cref="GridSheet.Unlimited"/> for as many as wanted.</param>
/// <param name="Cost">What one costs in the unit of the plan's value.</param>
internal sealed record GridSheet(int Stock, int Length, int Width, int Count, double Cost)
{
    /// <summary>As many as wanted.</summary>
    public const int Unlimited = int.MaxValue;

    /// <summary>Area, grid units squared.</summary>
    public double Area => (double)Length * Width;

    /// <summary>True where a part fits on it in one way or the other.</summary>
    public bool Takes(GridPart part) =>
        (part.Length <= Length && part.Width <= Width)
        || (part.MayTurn && part.Width <= Length && part.Length <= Width);
}
