using Litterfall.Domain.Cutting;
using Litterfall.Workshop.Cutting;

namespace Litterfall.Web.Shop.Cutting;

/// <summary>Who finds cutting plans.</summary>
/// <param name="Solve">
/// Finds the best plan within a time and tells each better one; stopped, it returns the best so far. Null
/// where stock does not suffice.
/// </param>
/// <param name="Refusal">Why a task cannot be cut at all, in one sentence; null where it can.</param>
/// <param name="Faults">What an independent checker finds wrong with a plan, a sentence each.</param>
public sealed record CutSolver(
    Func<CuttingTask, TimeSpan, Action<CuttingPlan>, CancellationToken, CuttingPlan?> Solve,
    Func<CuttingTask, string?> Refusal,
    Func<CuttingTask, CuttingPlan, IReadOnlyList<string>> Faults
)
{
    /// <summary>The solver of the workshop with its checker.</summary>
    public static CutSolver Own { get; } =
        new(
            (task, limit, found, cancel) =>
                CuttingTable.Solve(task, new CuttingSearch { Limit = limit, Found = found }, cancel),
            task => CuttingRefusal.Find(task) is { } refusal ? Words(refusal) : null,
            (task, plan) => CuttingCheck.Faults(task, plan)
        );

    /// <summary>What is said when all parts together need more than there is.</summary>
    /// <param name="task">The task.</param>
    public static string Short(CuttingTask task) => Words(CuttingRefusal.Short(task));

    private static string Words(CuttingRefusal refusal) => $"{refusal.Message}. Needed: {refusal.Expected}.";
}
