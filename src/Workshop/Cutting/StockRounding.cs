using System.Collections.Immutable;
using Litterfall.Workshop.Cutting.Trees;

namespace Litterfall.Workshop.Cutting;

/// <summary>
/// Whole plans for many parts from mixtures of patterns: what is whole is taken, the rest is mixed anew, and
/// the last few sheets are filled by hand (residual problems, Wäscher and Gau 1996).
/// </summary>
/// <param name="parts">Kinds of parts.</param>
/// <param name="sheets">Kinds of sheets.</param>
/// <param name="rules">What cuts there may be.</param>
/// <param name="seed">Seed of the random numbers.</param>
/// <param name="budget">Turns that are left for all.</param>
internal sealed class StockRounding(
    ImmutableArray<GridPart> parts,
    ImmutableArray<GridSheet> sheets,
    CutRules rules,
    int seed,
    TurnBudget budget
)
{
    private const int FewParts = 44;
    private const int FewSheets = 7;

    /// <summary>A whole plan, or null where the stock does not suffice.</summary>
    /// <param name="demand">How many of each part.</param>
    /// <param name="pool">Its patterns, mixed.</param>
    /// <param name="bound">Bound of the whole task.</param>
    /// <param name="turns">Turns of a filling by hand.</param>
    /// <param name="cancel">Makes it hurry.</param>
    public StockPlan? Round(int[] demand, PatternPool pool, double bound, int turns, CancellationToken cancel)
    {
        int[] left = [.. demand];
        int[] stock = [.. sheets.Select(s => s.Count)];
        var plan = new StockPlan([], [], 0);
        for (var now = pool; left.Any(n => n > 0);)
        {
            var before = plan.Sheets.Length;
            plan = TakeWhole(plan, now, left, stock);
            if (left.All(n => n <= 0))
            {
                break;
            }

            if (IsFew(left) && Last(left, stock, bound - plan.Cost, turns, cancel) is { } last)
            {
                return plan.With(last);
            }

            if (now != pool && plan.Sheets.Length == before && !TakeLargest(ref plan, now, left, stock))
            {
                return null;
            }

            now = new(parts, Left(stock), left);
            foreach (var pattern in pool.Patterns)
            {
                now.Add(pattern);
            }

            now.Grow(false, now.UsualFills, cancel);
            if (!now.Used.Any() && !TakeAny(ref plan, left, stock))
            {
                return null;
            }
        }

        return plan;
    }

    private ImmutableArray<GridSheet> Left(int[] stock) =>
        [.. sheets.Select((s, i) => s with { Count = stock[i] })];

    private bool IsFew(int[] left)
    {
        var area = left.Select((n, i) => n * parts[i].Area).Sum();
        return left.Sum() <= FewParts || area <= FewSheets * sheets.Max(s => s.Area);
    }

    private StockPlan TakeWhole(StockPlan plan, PatternPool pool, int[] left, int[] stock)
    {
        foreach (var (pattern, amount) in pool.Used.OrderByDescending(u => u.Amount - Math.Floor(u.Amount)))
        {
            var times = (int)Math.Floor(amount + 1e-7);
            for (var i = 0; i < left.Length; i++)
            {
                times = pattern.Counts[i] > 0 ? Math.Min(times, left[i] / pattern.Counts[i]) : times;
            }

            times = Math.Min(times, stock[pattern.Sheet]);
            for (var time = 0; time < times; time++)
            {
                plan = Take(plan, pattern.Sheet, pattern.Tree, left, stock);
            }
        }

        return plan;
    }

    /// <summary>Takes the pattern that is used most, filled up with what is left.</summary>
    private bool TakeLargest(ref StockPlan plan, PatternPool pool, int[] left, int[] stock)
    {
        foreach (var (pattern, _) in pool.Used.OrderByDescending(u => u.Amount))
        {
            var tree = Refill.Within(parts, left, sheets[pattern.Sheet], rules, pattern.Tree);
            if (tree is not null && stock[pattern.Sheet] > 0)
            {
                plan = Take(plan, pattern.Sheet, tree, left, stock);
                return true;
            }
        }

        return TakeAny(ref plan, left, stock);
    }

    private bool TakeAny(ref StockPlan plan, int[] left, int[] stock)
    {
        for (var s = 0; s < sheets.Length; s++)
        {
            if (stock[s] > 0 && Refill.Within(parts, left, sheets[s], rules, null) is { } tree)
            {
                plan = Take(plan, s, tree, left, stock);
                return true;
            }
        }

        return false;
    }

    private StockPlan Take(StockPlan plan, int sheet, CutNode tree, int[] left, int[] stock)
    {
        var counts = new int[left.Length];
        tree.CountInto(counts);
        for (var i = 0; i < left.Length; i++)
        {
            left[i] -= counts[i];
        }

        stock[sheet] -= stock[sheet] == GridSheet.Unlimited ? 0 : 1;
        return plan.With(StockPlan.From([sheets[sheet]], [tree]));
    }

    /// <summary>The last parts from as few sheets as can be.</summary>
    private StockPlan? Last(int[] left, int[] stock, double bound, int turns, CancellationToken cancel)
    {
        var wanted = left.SelectMany((n, i) => Enumerable.Repeat(i, Math.Max(0, n))).ToArray();
        var mix = new SheetMix(parts, Left(stock), rules, seed, budget);
        return mix.Find(wanted, bound, turns, cancel);
    }
}
