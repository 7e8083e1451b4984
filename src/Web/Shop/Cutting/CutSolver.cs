using Litterfall.Domain.Cutting;

namespace Litterfall.Web.Shop.Cutting;

/// <summary>Who finds cutting plans.</summary>
/// <param name="Solve">
/// Finds the best plan within a time and tells each better one; stopped, it returns the best so far.
/// </param>
/// <param name="Refusal">Why a task cannot be cut at all, in one sentence; null where it can.</param>
/// <param name="Faults">What an independent checker finds wrong with a plan, a sentence each.</param>
public sealed record CutSolver(
    Func<CuttingTask, TimeSpan, Action<CuttingPlan>, CancellationToken, CuttingPlan> Solve,
    Func<CuttingTask, string?> Refusal,
    Func<CuttingTask, CuttingPlan, IReadOnlyList<string>> Faults
);
