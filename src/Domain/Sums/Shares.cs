using Litterfall.Domain.Lists;

namespace Litterfall.Domain.Sums;

/// <summary>Parts of a sum that add up to it to the last step.</summary>
public static class Shares
{
    /// <summary>
    /// Splits a total in proportion to weights by the largest remainder: each part is a multiple of the step
    /// less than one step away from its exact share, and the parts add up to the total exactly. What of the
    /// total is no multiple of the step goes to the heaviest part. Equal remainders go in the order given.
    /// </summary>
    /// <param name="total">The total, currency units; may be negative.</param>
    /// <param name="weights">Weights, none negative; all zero means equal parts.</param>
    /// <param name="rule">The step.</param>
    /// <exception cref="ArgumentException">There is no weight, or one is negative.</exception>
    public static Seq<decimal> Split(decimal total, IReadOnlyList<decimal> weights, RoundingRule rule)
    {
        if (weights.Count == 0 || weights.Any(w => w < 0m))
        {
            throw new ArgumentException("a sum is split by weights that are not negative", nameof(weights));
        }

        var all = weights.Sum();
        var sign = Math.Sign(total);
        var steps = Math.Floor(Math.Abs(total) / rule.Step);
        var exact = weights.Select(w => all == 0m ? steps / weights.Count : steps * (w / all)).ToArray();
        var parts = exact.Select(Math.Floor).ToArray();
        var missing = (int)(steps - parts.Sum());
        foreach (
            var i in Enumerable
                .Range(0, parts.Length)
                .OrderByDescending(i => exact[i] - parts[i])
                .ThenBy(i => i)
                .Take(missing)
        )
        {
            parts[i]++;
        }

        var split = parts.Select(p => sign * p * rule.Step).ToArray();
        var heaviest = Enumerable.Range(0, weights.Count).MaxBy(i => weights[i]);
        split[heaviest] += total - split.Sum();
        return [.. split];
    }
}
