using System.Collections.Immutable;

namespace Litterfall.Workshop.Cutting.Trees;

/// <summary>One way to cut a sheet.</summary>
/// <param name="Sheet">Kind of the sheet.</param>
/// <param name="Tree">Its cuts.</param>
/// <param name="Counts">Parts of each kind.</param>
/// <param name="Cost">What the sheet, or the length of the roll, costs.</param>
internal sealed record CutPattern(int Sheet, CutNode Tree, int[] Counts, double Cost)
{
    /// <summary>Length that is taken, grid units; 0 for a whole sheet.</summary>
    public int Length { get; init; }

    /// <summary>A pattern from its cuts.</summary>
    public static CutPattern From(ImmutableArray<GridPart> parts, int sheet, CutNode tree, double cost)
    {
        var counts = new int[parts.Length];
        tree.CountInto(counts);
        return new(sheet, tree, counts, cost);
    }
}
