using System.Collections.Immutable;
using Litterfall.Domain.Cutting;
using Litterfall.Workshop.Cutting.Trees;

namespace Litterfall.Workshop.Cutting;

/// <summary>Sheets and how each is cut.</summary>
/// <param name="Sheets">Sheets, one each; of a roll, the length that is taken.</param>
/// <param name="Trees">Cuts of each.</param>
/// <param name="Cost">What they cost together.</param>
internal sealed record StockPlan(
    ImmutableArray<GridSheet> Sheets,
    ImmutableArray<CutNode?> Trees,
    double Cost
)
{
    /// <summary>A plan from sheets and their cuts; sheets without a part are left out.</summary>
    public static StockPlan From(IReadOnlyList<GridSheet> sheets, IReadOnlyList<CutNode?> trees)
    {
        var used = Enumerable.Range(0, sheets.Count).Where(i => trees[i] is not null).ToArray();
        return new(
            [.. used.Select(i => sheets[i])],
            [.. used.Select(i => trees[i])],
            used.Sum(i => sheets[i].Cost)
        );
    }

    /// <summary>Two plans together.</summary>
    public StockPlan With(StockPlan other) =>
        new(Sheets.AddRange(other.Sheets), Trees.AddRange(other.Trees), Cost + other.Cost);

    /// <summary>The plan on its sheets, in millimeters.</summary>
    /// <param name="grid">The task.</param>
    /// <param name="value">Its value.</param>
    /// <param name="bound">No plan has less.</param>
    public CuttingPlan Laid(GridTask grid, double value, double bound)
    {
        var names = Demands.Queues(grid);
        var least = Math.Min(bound, value);
        return new()
        {
            IsProved = value <= least + 1e-9 * Math.Max(1, value),
            Value = value,
            Bound = least,
            Sheets = [.. Sheets.Select((sheet, i) => SheetLayout.Create(grid, sheet, Trees[i], names))],
        };
    }
}
