using Litterfall.Domain.Cutting;

namespace Litterfall.Workshop.Cutting;

/// <summary>Plans how parts are cut from sheets, offcuts and rolls by straight cuts.</summary>
public static class CuttingTable
{
    /// <summary>The best plan that is found in the time.</summary>
    /// <param name="task">What is cut from what; it can be cut.</param>
    /// <param name="search">How it is looked for.</param>
    /// <param name="cancel">Ends the search with the best plan so far.</param>
    /// <returns>The plan; null where the stock does not suffice for all parts.</returns>
    public static CuttingPlan? Solve(CuttingTask task, CuttingSearch search, CancellationToken cancel)
    {
        using var ended = CancellationTokenSource.CreateLinkedTokenSource(cancel);
        if (search.Limit is { } limit)
        {
            ended.CancelAfter(limit);
        }

        var grid = GridTask.From(task);
        return task.Goal == CuttingGoal.MostValue ? MostValue.Solve(grid, search, ended.Token)
            : task.Stock.Any(s => s.IsRoll) && (CuttingValue.IsMoney(task) || CuttingValue.IsLength(task))
                ? new RollSearch(grid, search).Solve(ended.Token)
            : new LeastStock(grid, search).Solve(ended.Token);
    }
}
