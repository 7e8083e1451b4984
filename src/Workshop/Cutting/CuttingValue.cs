using Litterfall.Domain.Cutting;

namespace Litterfall.Workshop.Cutting;

/// <summary>What the value of a plan is counted in.</summary>
public static class CuttingValue
{
    /// <summary>True where the value is money: every sheet and roll has its price.</summary>
    /// <param name="task">The task.</param>
    public static bool IsMoney(CuttingTask task) =>
        task.Goal == CuttingGoal.LeastStock
        && task.Stock.Count > 0
        && task.Stock.All(s => s.IsRoll ? s.PricePerMeter is not null : s.Price is not null);

    /// <summary>True where the value is millimeters taken from the only roll.</summary>
    /// <param name="task">The task.</param>
    public static bool IsLength(CuttingTask task) =>
        task.Goal == CuttingGoal.LeastStock && !IsMoney(task) && task.Stock is [{ IsRoll: true }];
}
