namespace Litterfall.Workshop.Pricing;

/// <summary>What the promise to replace lost shipments costs.</summary>
public static class LossReserve
{
    /// <summary>Cost of one replacement, currency units.</summary>
    /// <param name="asked">The case.</param>
    public static decimal Replacement(CostCase asked) =>
        asked.Loss?.ReplacementCost ?? asked.Live + asked.Packaging + asked.Shipping;

    /// <summary>
    /// Mean cost for each shipment: p·R for one replacement, p/(1 − p)·R when each lost one is replaced
    /// again (the mean of a geometric distribution).
    /// </summary>
    /// <param name="asked">The case; a chance below 100 % when lost ones are replaced again.</param>
    public static decimal Mean(CostCase asked)
    {
        if (asked.Loss is not { } loss)
        {
            return 0m;
        }

        var chance = loss.ChancePercent / 100m;
        return (loss.IsReplacedAgain ? chance / (1m - chance) : chance) * Replacement(asked);
    }

    /// <summary>
    /// The chance at which the reserve eats up an amount, percent; null when no chance below 100 % does.
    /// </summary>
    /// <param name="asked">The case with its promise.</param>
    /// <param name="amount">What there is for the reserve, currency units.</param>
    public static decimal? BreakingChancePercent(CostCase asked, decimal amount)
    {
        var replacement = Replacement(asked);
        if (asked.Loss is not { } loss || amount < 0m || replacement <= 0m)
        {
            return null;
        }

        var chance = loss.IsReplacedAgain ? amount / (replacement + amount) : amount / replacement;
        return chance < 1m ? 100m * chance : null;
    }
}

/// <summary>
/// Animals of one box are lost together when the box fails, else one by one.
/// </summary>
/// <param name="Animals">Animals in the box.</param>
/// <param name="BoxFails">Chance that the box fails, 0 to 1.</param>
/// <param name="EachDies">Chance of each animal in a box that does not, 0 to 1.</param>
public sealed record BoxLoss(int Animals, double BoxFails, double EachDies)
{
    /// <summary>Expected number lost: n(b + (1 − b)a).</summary>
    public double Expected => Animals * (BoxFails + ((1.0 - BoxFails) * EachDies));

    /// <summary>Chance that at least one is lost.</summary>
    public double AtLeastOne => 1.0 - ((1.0 - BoxFails) * Math.Pow(1.0 - EachDies, Animals));
}
