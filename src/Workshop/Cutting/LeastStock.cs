using System.Collections.Immutable;
using Litterfall.Domain.Cutting;
using Litterfall.Workshop.Cutting.Trees;

namespace Litterfall.Workshop.Cutting;

/// <summary>All parts from as little stock as can be: sheets, money, or millimeters of a roll.</summary>
internal sealed class LeastStock
{
    private const int FewParts = 160;
    private const int FewSheets = 12;
    private const int UsualTurns = 12_000;
    private const int TurnsPerPart = 200;
    private const int UsualWork = 1_500_000;
    private const int ManyTurns = 60_000;
    private const double FillShare = 0.6;
    private const int TimedRestTurns = 4000;
    private const int MostChoices = 8;

    private readonly GridTask grid;
    private readonly CuttingSearch search;
    private readonly ImmutableArray<GridPart> parts;
    private readonly ImmutableArray<GridSheet> sheets;
    private readonly CutRules rules;
    private readonly int[] demand;
    private readonly int[] wanted;
    private readonly bool isCounted;
    private StockPlan? best;
    private double bound;

    /// <summary>The search for a task.</summary>
    /// <param name="grid">The task.</param>
    /// <param name="search">How it is looked for.</param>
    public LeastStock(GridTask grid, CuttingSearch search)
    {
        this.grid = grid;
        this.search = search;
        parts = [.. grid.Parts.Select(p => p with { Value = p.Area })];
        sheets = grid.Sheets;
        rules = new(grid.Kerf, grid.Strip, grid.Task.Stages ?? int.MaxValue);
        demand = [.. parts.Select(p => p.Count)];
        wanted = [.. demand.SelectMany((n, i) => Enumerable.Repeat(i, n))];
        isCounted = !CuttingValue.IsMoney(grid.Task);
    }

    private int Turns =>
        search.Limit is { } limit
            ? sheets.Length == 1 ? int.MaxValue / 2 : (int)Math.Max(4000, limit.TotalSeconds * 4000)
            : Math.Clamp(TurnsPerPart * wanted.Length, 1000, UsualTurns);

    /// <summary>Turns of each trial for a larger rest.</summary>
    private int RestTurns =>
        search.Limit is { } limit ? (int)Math.Max(2000, limit.TotalSeconds * TimedRestTurns) : Turns / 4;

    /// <summary>Turns for a part of the search; as many as wanted where time ends it.</summary>
    private TurnBudget Budget(double share) =>
        new(
            search.Limit is not null
                ? int.MaxValue
                : (int)(share * Math.Min(UsualTurns * 3, UsualWork / Math.Max(1, wanted.Length)))
        );

    /// <summary>Searches; null where the stock does not suffice.</summary>
    /// <param name="cancel">Ends it early with the best so far.</param>
    public CuttingPlan? Solve(CancellationToken cancel)
    {
        if (wanted.Length == 0)
        {
            return new StockPlan([], [], 0).Laid(grid, 0, 0);
        }

        bound = Step(AreaBound());
        var isFew = wanted.Length <= FewParts && bound <= FewSheets * sheets.Max(s => s.Cost);
        var mix = new SheetMix(parts, sheets, rules, search.Seed, Budget(1)) { Found = Take };
        // A first plan at once, then bounds, then better plans.
        _ = mix.Find(wanted, double.MaxValue, Turns / 4, cancel);
        if (best is null && !isFew)
        {
            return null;
        }

        var pool = new PatternPool(parts, sheets, demand);
        if (!IsClosed)
        {
            Grow(pool, isFew, cancel);
            bound = Math.Max(bound, Step(Math.Max(bound, pool.Bound)));
            Tell();
        }

        if (isFew)
        {
            FillFew(mix, cancel);
        }
        else
        {
            MixMany(pool, cancel);
        }

        if (best is null)
        {
            return null;
        }

        if (isFew && !cancel.IsCancellationRequested)
        {
            var rest = new LongRest(grid, parts, rules, search.Seed, Budget(0.4));
            best = rest.Improve(best, wanted, RestTurns, cancel);
        }

        return best.Laid(grid, best.Cost, bound);
    }

    private bool IsClosed => best is not null && best.Cost <= bound + 1e-9 * Math.Max(1, bound);

    /// <summary>
    /// Bounds take at most a third of the time where few parts are to be put together besides.
    /// </summary>
    private void Grow(PatternPool pool, bool isFew, CancellationToken cancel)
    {
        using var ended = CancellationTokenSource.CreateLinkedTokenSource(cancel);
        if (isFew && search.Limit is { } limit)
        {
            ended.CancelAfter(limit / 3);
        }

        pool.Grow(isCounted, search.Limit is null ? pool.UsualFills : PatternPool.MostFills, ended.Token);
    }

    private void FillFew(SheetMix mix, CancellationToken cancel)
    {
        if (IsClosed)
        {
            return;
        }

        // A quick look first; then, where one sheet is in question, the exact search that can also say no.
        Take(mix.Find(wanted, bound, Math.Min(Turns, 3000), cancel));
        if (!IsClosed && isCounted && bound <= 1 + 1e-9 && sheets.Length == 1)
        {
            var one = new OneSheet(parts, demand, sheets[0], rules).Solve(
                null,
                search.Limit is not null,
                cancel
            );
            var all = parts.Select((p, i) => p.Area * demand[i]).Sum();
            if (one.Value >= all - 0.5 && rules.Stages == int.MaxValue)
            {
                Take(StockPlan.From([sheets[0]], [one.Tree]));
            }
            else if (one.Bound < all - 0.5)
            {
                bound = 2;
            }
        }

        if (IsClosed)
        {
            return;
        }

        // Some of the time is left to make the rest large.
        using var ended = CancellationTokenSource.CreateLinkedTokenSource(cancel);
        if (search.Limit is { } limit)
        {
            ended.CancelAfter(limit * FillShare);
        }

        Take(mix.Find(wanted, bound, Turns, ended.Token));
    }

    private void MixMany(PatternPool pool, CancellationToken cancel)
    {
        var rounding = new StockRounding(parts, sheets, rules, search.Seed, Budget(1));
        Take(rounding.Round(demand, pool, bound, Math.Min(Turns, ManyTurns), cancel));
        var turns = search.Limit is null ? 1 : MostChoices;
        for (var turn = 0; turn < turns && !IsClosed && !cancel.IsCancellationRequested; turn++)
        {
            pool.Enrich(60, search.Seed + turn, cancel);
            Take(PatternChoice.Find(parts, sheets, demand, pool.Patterns, 2 + turn, cancel));
        }
    }

    private void Take(StockPlan? plan)
    {
        if (plan is null || (best is not null && plan.Cost >= best.Cost - 1e-9))
        {
            return;
        }

        best = plan;
        Tell();
    }

    private void Tell()
    {
        if (best is not null)
        {
            search.Found?.Invoke(best.Laid(grid, best.Cost, bound));
        }
    }

    /// <summary>Cost of the parts' area at the cheapest sheet for its area.</summary>
    private double AreaBound() =>
        parts.Select((p, i) => p.Area * demand[i]).Sum() * sheets.Min(s => s.Cost / s.Area);

    /// <summary>The first sum of whole sheets that is no less.</summary>
    private double Step(double cost)
    {
        if (isCounted)
        {
            return Math.Ceiling(cost - 1e-6);
        }

        return StockSums.Next(sheets, cost, best?.Cost ?? double.MaxValue);
    }
}
