using System.Collections.Immutable;
using Litterfall.Domain.Cutting;
using Litterfall.Workshop.Cutting.Trees;

namespace Litterfall.Workshop.Cutting;

/// <summary>
/// All parts from the shortest piece of a roll, with offcuts and sheets beside it that are cheaper for their
/// area. Whole rolls but the last are filled; of the last one the length is made shorter and shorter.
/// </summary>
internal sealed class RollSearch
{
    private const int UsualTurns = 6_000;
    private const int TurnsPerPart = 100;
    private const int UsualWork = 1_500_000;
    private const int Trials = 12;
    private const int MostLengths = 4000;

    private readonly GridTask grid;
    private readonly CuttingSearch search;
    private readonly ImmutableArray<GridPart> parts;
    private readonly GridSheet roll;
    private readonly CutRules rules;
    private readonly int[] demand;
    private readonly int[] wanted;
    private readonly double perUnit;
    private readonly CutPoints lengths;
    private readonly TurnBudget budget;
    private StockPlan? best;
    private double bound;

    /// <summary>The search for a task with a roll.</summary>
    /// <param name="grid">The task.</param>
    /// <param name="search">How it is looked for.</param>
    public RollSearch(GridTask grid, CuttingSearch search)
    {
        this.grid = grid;
        this.search = search;
        parts = [.. grid.Parts.Select(p => p with { Value = p.Area })];
        rules = new(grid.Kerf, grid.Strip, grid.Task.Stages ?? int.MaxValue);
        demand = [.. parts.Select(p => p.Count)];
        wanted = [.. demand.SelectMany((n, i) => Enumerable.Repeat(i, n))];
        roll = grid.Sheets.Where(s => grid.Task.Stock[s.Stock].IsRoll).MinBy(PerUnit)!;
        perUnit = PerUnit(roll);
        lengths = CutPoints.Along(parts, roll.Length, true);
        budget = new(search.Limit is not null ? int.MaxValue : UsualWork / Math.Max(1, wanted.Length));
    }

    /// <summary>Searches; null where the stock does not suffice.</summary>
    /// <param name="cancel">Ends it early with the best so far.</param>
    public CuttingPlan? Solve(CancellationToken cancel)
    {
        var sheets = Beside();
        bound = AreaBound(sheets);
        if (First(sheets) is not { } first)
        {
            return null;
        }

        Take(first);
        Bound(sheets, cancel);
        var share = Turns;
        for (
            var trial = 0;
            trial < Trials && !IsClosed && !cancel.IsCancellationRequested && budget.Left > 0;
            trial++
        )
        {
            // Half way to the bound at first, then closer to what is known: the last trials ask for little.
            if (!Shorten(Math.Pow(0.5, trial % 6 + 1), share, cancel) && trial % 6 == 5)
            {
                share *= 2;
            }
        }

        return best!.Laid(grid, Charged(best.Cost), Math.Min(Charged(best.Cost), bound));
    }

    private int Turns =>
        search.Limit is { } limit
            ? (int)Math.Max(3000, limit.TotalSeconds * 1500)
            : Math.Clamp(TurnsPerPart * wanted.Length, 500, UsualTurns);

    private bool IsClosed => best is not null && Charged(best.Cost) <= bound + 1e-9 * Math.Max(1, bound);

    private double PerUnit(GridSheet one) =>
        CuttingValue.IsMoney(grid.Task)
            ? (double)grid.Task.Stock[one.Stock].PricePerMeter!.Value * grid.Millimeters(1) / 1000
            : grid.Millimeters(1);

    /// <summary>Cost of a length, whose last kerf is not taken from the roll.</summary>
    private double CostOf(int length) => perUnit * (length - grid.Kerf);

    private static double Charged(double cost) => Math.Round(cost, 6);

    /// <summary>Sheets and offcuts that cost less than the roll for their area.</summary>
    private ImmutableArray<GridSheet> Beside() =>
        [
            .. grid
                .Sheets.Where(s => !grid.Task.Stock[s.Stock].IsRoll)
                .Where(s => s.Cost < perUnit * s.Area / roll.Width)
                .OrderBy(s => s.Cost / s.Area),
        ];

    private double AreaBound(ImmutableArray<GridSheet> sheets)
    {
        var left = parts.Select((p, i) => p.Area * demand[i]).Sum();
        var cost = 0.0;
        foreach (var sheet in sheets)
        {
            var times = Math.Min(sheet.Count, Math.Ceiling(left / sheet.Area));
            var taken = Math.Min(left, times * sheet.Area);
            cost += taken * sheet.Cost / sheet.Area;
            left -= taken;
        }

        return Math.Max(0, cost + perUnit * left / roll.Width - perUnit * grid.Kerf * Math.Max(1, Rolls()));
    }

    /// <summary>Most rolls that can be needed.</summary>
    private int Rolls() =>
        (int)Math.Ceiling(parts.Select((p, i) => p.Area * demand[i]).Sum() / roll.Area) + 1;

    /// <summary>A better bound from mixtures of lengths, where these are few enough.</summary>
    private void Bound(ImmutableArray<GridSheet> sheets, CancellationToken cancel)
    {
        // No section is longer than the longest piece of the plan: a longer one costs more than the plan.
        var longest = best!.Sheets.Where(IsRoll).Select(s => s.Length).DefaultIfEmpty(roll.Length).Max();
        var sections = lengths
            .Places.Where(l => l > grid.Kerf && l <= longest)
            .Append(longest)
            .Distinct()
            .Select(l => roll with { Length = l, Count = GridSheet.Unlimited, Cost = perUnit * l })
            .ToArray();
        if (sections.Length > MostLengths || IsClosed)
        {
            return;
        }

        var pool = new PatternPool(parts, [.. sections, .. sheets], demand);
        using var ended = CancellationTokenSource.CreateLinkedTokenSource(cancel);
        if (search.Limit is { } limit)
        {
            ended.CancelAfter(limit / 2);
        }

        pool.Grow(false, search.Limit is null ? pool.UsualFills : PatternPool.MostFills, ended.Token);
        var rolls = best.Sheets.Count(IsRoll);
        bound = Math.Max(bound, pool.Bound - perUnit * grid.Kerf * Math.Max(1, rolls));
        if (sheets.IsEmpty && bound <= CostOf(roll.Length))
        {
            // One piece is as long as a sum of edges.
            var least = (int)Math.Ceiling(bound / perUnit + grid.Kerf - 1e-6 * roll.Length);
            bound = Math.Max(
                0,
                Charged(CostOf(lengths.Places[lengths.From(Math.Clamp(least, 0, roll.Length))]))
            );
        }
    }

    private bool IsRoll(GridSheet sheet) => grid.Task.Stock[sheet.Stock].IsRoll;

    /// <summary>
    /// Offcuts and sheets filled one after the other where they save more roll than they cost.
    /// </summary>
    private StockPlan? First(ImmutableArray<GridSheet> sheets)
    {
        int[] left = [.. demand];
        var plan = new StockPlan([], [], 0);
        foreach (var sheet in sheets)
        {
            for (var n = 0; n < sheet.Count && left.Any(d => d > 0); n++)
            {
                var tree = Refill.Within(parts, left, sheet, rules, null);
                if (tree is null || Area(tree) / roll.Width * perUnit < sheet.Cost)
                {
                    break;
                }

                Subtract(left, tree);
                plan = plan.With(StockPlan.From([sheet], [tree]));
            }
        }

        for (var n = 0; left.Any(d => d > 0); n++)
        {
            if (n >= roll.Count || Refill.Within(parts, left, roll, rules, null) is not { } tree)
            {
                return null;
            }

            Subtract(left, tree);
            var length = Math.Min(roll.Length, rules.Strip > 0 ? roll.Length : tree.Length);
            plan = plan.With(StockPlan.From([roll with { Length = length, Cost = CostOf(length) }], [tree]));
        }

        return plan;
    }

    /// <summary>Asks for all parts with the last roll so much closer to the bound.</summary>
    private bool Shorten(double share, int turns, CancellationToken cancel)
    {
        var last = best!
            .Sheets.Select((s, i) => (s, i))
            .Where(p => IsRoll(p.s))
            .Select(p => p.i)
            .DefaultIfEmpty(-1)
            .Last();
        if (last < 0)
        {
            return false;
        }

        var saving = (Charged(best.Cost) - bound) * share;
        var now = best.Sheets[last].Length;
        var length = lengths.Places[lengths.Below(Math.Max(0, now - 1))];
        var aim = lengths.Places[lengths.Below((int)Math.Max(0, now - saving / perUnit))];
        length = Math.Min(length, Math.Max(aim, 0));
        var sheets = best.Sheets.RemoveAt(last);
        if (length > grid.Kerf)
        {
            sheets = sheets.Insert(last, roll with { Length = length, Cost = CostOf(length) });
        }

        var fill = new FillSearch(parts, rules, search.Seed, budget);
        if (fill.Find(wanted, sheets, turns, cancel) is not { } trees)
        {
            return false;
        }

        Take(Shrunk(StockPlan.From(sheets, trees)));
        return true;
    }

    /// <summary>The plan with no more of a roll than its parts need.</summary>
    private StockPlan Shrunk(StockPlan plan)
    {
        var sheets = plan.Sheets.Select(
            (s, i) =>
                IsRoll(s) && rules.Strip == 0
                    ? s with
                    {
                        Length = plan.Trees[i]!.Length,
                        Cost = CostOf(plan.Trees[i]!.Length),
                    }
                    : s
        );
        return StockPlan.From([.. sheets], plan.Trees);
    }

    private double Area(CutNode tree)
    {
        var counts = new int[parts.Length];
        tree.CountInto(counts);
        return counts.Select((n, i) => n * parts[i].Area).Sum();
    }

    private static void Subtract(int[] left, CutNode tree)
    {
        var counts = new int[left.Length];
        tree.CountInto(counts);
        for (var i = 0; i < left.Length; i++)
        {
            left[i] -= counts[i];
        }
    }

    private void Take(StockPlan plan)
    {
        if (best is null || plan.Cost < best.Cost - 1e-9)
        {
            best = plan;
            search.Found?.Invoke(best.Laid(grid, Charged(best.Cost), bound));
        }
    }
}
