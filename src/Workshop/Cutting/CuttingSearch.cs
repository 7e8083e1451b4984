using Litterfall.Domain.Cutting;

namespace Litterfall.Workshop.Cutting;

/// <summary>How long and how a cutting plan is looked for.</summary>
public sealed record CuttingSearch
{
    /// <summary>Time after which the best plan so far is taken; null for as much work as is usual.</summary>
    public TimeSpan? Limit { get; init; }

    /// <summary>Seed of random numbers: the same seed gives the same plan.</summary>
    public int Seed { get; init; } = 1;

    /// <summary>Told each better plan; null for nobody.</summary>
    public Action<CuttingPlan>? Found { get; init; }
}
