namespace Litterfall.Domain.Sums;

/// <summary>
/// How an amount of money becomes one that can be charged: to a step of the currency, half away from zero.
/// </summary>
public sealed record RoundingRule
{
    private RoundingRule(string word, decimal step) => (Word, Step) = (word, step);

    /// <summary>To the cent.</summary>
    public static RoundingRule Cent { get; } = new("cent", 0.01m);

    /// <summary>To five cents, where there are no smaller coins.</summary>
    public static RoundingRule FiveCents { get; } = new("five-cents", 0.05m);

    /// <summary>To whole units of the currency.</summary>
    public static RoundingRule Whole { get; } = new("whole", 1m);

    /// <summary>All rules.</summary>
    public static IReadOnlyList<RoundingRule> All { get; } = [Cent, FiveCents, Whole];

    /// <summary>Its word in files.</summary>
    public string Word { get; }

    /// <summary>The step, currency units.</summary>
    public decimal Step { get; }

    /// <summary>The nearest multiple of the step, half away from zero.</summary>
    /// <param name="amount">An amount, currency units.</param>
    public decimal Round(decimal amount) =>
        Math.Round(amount / Step, 0, MidpointRounding.AwayFromZero) * Step;
}
