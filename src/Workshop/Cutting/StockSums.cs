using System.Collections.Immutable;
using System.Numerics;
using Litterfall.Workshop.Cutting.Trees;

namespace Litterfall.Workshop.Cutting;

/// <summary>What whole sheets can cost together.</summary>
internal static class StockSums
{
    private const long MostSums = 2_000_000;

    /// <summary>
    /// The smallest sum of whole sheets that is no less than a cost; the cost itself where prices are no
    /// whole
    /// cents.
    /// </summary>
    /// <param name="sheets">Kinds of sheets.</param>
    /// <param name="cost">The cost.</param>
    /// <param name="known">Sum of a plan that is known; no larger one is looked for.</param>
    public static double Next(ImmutableArray<GridSheet> sheets, double cost, double known)
    {
        var step = 0L;
        foreach (var sheet in sheets)
        {
            var cents = Cents(sheet.Cost);
            if (Math.Abs(cents - sheet.Cost * 100) > 1e-6)
            {
                return cost;
            }

            step = (long)BigInteger.GreatestCommonDivisor(step, cents);
        }

        if (step == 0)
        {
            return cost;
        }

        var least = (long)Math.Ceiling(cost * 100 / step - 1e-6);
        var most = known < 1e12 ? Cents(known) / step : long.MaxValue;
        if (most <= MostSums)
        {
            var reached = Reached(sheets, step, (int)most);
            while (least < most && !reached[least])
            {
                least++;
            }
        }

        return (double)(Math.Min(least, most) * step) / 100;
    }

    private static bool[] Reached(ImmutableArray<GridSheet> sheets, long step, int most)
    {
        var reached = new bool[most + 1];
        reached[0] = true;
        foreach (var sheet in sheets)
        {
            var size = Cents(sheet.Cost) / step;
            if (size == 0 || size > most)
            {
                continue;
            }

            // How many of this sheet the sum needs beyond those without it; fewer than there are.
            var taken = new int[most + 1];
            for (var sum = (int)size; sum <= most; sum++)
            {
                var before = sum - (int)size;
                if (!reached[sum] && reached[before] && taken[before] < sheet.Count)
                {
                    reached[sum] = true;
                    taken[sum] = taken[before] + 1;
                }
            }
        }

        return reached;
    }

    private static long Cents(double cost) => (long)Math.Round(cost * 100);
}
