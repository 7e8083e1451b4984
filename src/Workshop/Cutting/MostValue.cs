using Litterfall.Domain.Cutting;
using Litterfall.Workshop.Cutting.Trees;

namespace Litterfall.Workshop.Cutting;

/// <summary>The parts of most value from one sheet.</summary>
internal static class MostValue
{
    /// <summary>The best sheet and its plan.</summary>
    /// <param name="grid">The task.</param>
    /// <param name="search">How it is looked for.</param>
    /// <param name="cancel">Ends it early with the best so far.</param>
    public static CuttingPlan Solve(GridTask grid, CuttingSearch search, CancellationToken cancel)
    {
        int[] counts = [.. grid.Parts.Select(p => p.Count)];
        var rules = new CutRules(grid.Kerf, grid.Strip, grid.Task.Stages ?? int.MaxValue);
        CuttingPlan? best = null;
        var bound = 0.0;
        foreach (var sheet in grid.Sheets)
        {
            var one = new OneSheet(grid.Parts, counts, sheet, rules);
            var plan = one.Solve(
                p => search.Found?.Invoke(Plan(grid, sheet, p, p.Bound)),
                search.Limit is not null,
                cancel
            );
            bound = Math.Max(bound, plan.Bound);
            if (best is null || plan.Value > best.Value)
            {
                best = Plan(grid, sheet, plan, plan.Bound);
            }
        }

        return best! with
        {
            Bound = bound,
            IsProved = grid.Task.IsStraight && best.Value >= bound - 1e-9 * bound,
        };
    }

    private static CuttingPlan Plan(GridTask grid, GridSheet sheet, SheetPlan plan, double bound) =>
        new()
        {
            IsProved = plan.IsProved && grid.Task.IsStraight,
            Value = plan.Value,
            Bound = bound,
            Sheets = [SheetLayout.Create(grid, sheet, plan.Tree, Demands.Queues(grid))],
        };
}
