using System.Collections.Immutable;

namespace Litterfall.Workshop.Cutting.Trees;

/// <summary>The best way found to cut one sheet.</summary>
/// <param name="Tree">Cuts; null for none.</param>
/// <param name="Value">Value of the parts.</param>
/// <param name="Bound">No plan has more.</param>
internal sealed record SheetPlan(CutNode? Tree, double Value, double Bound)
{
    /// <summary>True where no plan is better.</summary>
    public bool IsProved => Value >= Bound - 1e-6 * Math.Max(1, Math.Abs(Bound)) * 1e-3;
}

/// <summary>Most value from one sheet, any number of stages.</summary>
internal sealed class OneSheet
{
    private const int MostPieces = 6_000_000;
    private const int Turns = 300;

    /// <summary>Most work of a table, places times places times places.</summary>
    private const double MostWork = 6e10;

    /// <summary>
    /// Work of all tables, and of the largest table that is searched on, where no time ends it.
    /// </summary>
    private const double UsualWork = 1e11;
    private const double UsualSearch = 8e9;

    private readonly ImmutableArray<GridPart> parts;
    private readonly GridSheet sheet;
    private readonly CutRules rules;
    private readonly int[] counts;
    private readonly bool isWhole;

    /// <summary>A sheet and what may be cut from it.</summary>
    /// <param name="parts">Kinds of parts.</param>
    /// <param name="counts">How many of each there are.</param>
    /// <param name="sheet">The sheet.</param>
    /// <param name="rules">What cuts there may be.</param>
    public OneSheet(ImmutableArray<GridPart> parts, int[] counts, GridSheet sheet, CutRules rules)
    {
        var fitting = Enumerable
            .Range(0, parts.Length)
            .Where(i => counts[i] > 0 && sheet.Takes(parts[i]))
            .ToHashSet();
        this.parts = parts;
        this.counts = [.. counts.Select((n, i) => fitting.Contains(i) ? n : 0)];
        this.sheet = sheet;
        this.rules = rules;
        isWhole = parts.All(p => Math.Abs(p.Value - Math.Round(p.Value)) < 1e-9);
    }

    /// <summary>Searches.</summary>
    /// <param name="found">Told each better plan with the bound known so far; null for nobody.</param>
    /// <param name="isTimed">True where time ends it; else large sheets are looked at less often.</param>
    /// <param name="cancel">Ends it early with the best so far.</param>
    public SheetPlan Solve(Action<SheetPlan>? found, bool isTimed, CancellationToken cancel)
    {
        var limited = parts
            .Select((p, i) => p with { Count = (int)Math.Min(counts[i], sheet.Area / p.Area) })
            .ToImmutableArray();
        var (alongX, alongY) = (
            CutPoints.Along(limited, sheet.Length, true),
            CutPoints.Along(limited, sheet.Width, false)
        );
        var first = Refill.Within(parts, counts, sheet, rules, null);
        var known = new SheetPlan(first, ValueOf(first), Roof());
        found?.Invoke(known);
        var work = Work(alongX, alongY);
        if (work > MostWork)
        {
            return known;
        }

        var table = new ValueTable(limited, alongX, alongY);
        var prices = new Multipliers(parts, counts, sheet, rules, table);
        prices.Offer(first);
        try
        {
            prices.Improve(isTimed ? Turns : (int)Math.Clamp(UsualWork / work, 4, Turns), isWhole, cancel);
        }
        catch (OperationCanceledException)
        {
            return new(prices.Plan, prices.Value, Math.Min(Whole(prices.Bound), Roof()));
        }

        var plan = new SheetPlan(prices.Plan, prices.Value, Whole(prices.Bound));
        found?.Invoke(plan);
        return
            prices.IsClosed(isWhole)
            || !LimitedSearch.Serves(parts, counts, sheet)
            || (!isTimed && work > UsualSearch)
            ? plan
            : Search(table, prices, plan, cancel);
    }

    private SheetPlan Search(ValueTable table, Multipliers prices, SheetPlan plan, CancellationToken cancel)
    {
        try
        {
            double[] values = [.. parts.Select(p => p.Value)];
            table.Fill(values, cancel);
            var plain = new OutsideTable(table, cancel);
            for (var i = 0; i < values.Length; i++)
            {
                values[i] -= prices.Prices[i];
            }

            table.Fill(values, cancel);
            var bounds = new PieceBounds(
                new(table, cancel),
                plain,
                prices.Prices.ToArray(),
                plan.Value,
                isWhole
            );
            var search = new LimitedSearch(parts, counts, sheet, rules, bounds);
            _ = search.Run(MostPieces, cancel);
            var bound = Math.Max(search.Value, Math.Min(plan.Bound, Whole(search.Bound)));
            // Where stages are limited, the search without that limit bounds, and may still give the plan.
            return search.Best() is { } tree && tree.Stages() <= rules.Stages
                ? new(tree, search.Value, bound)
                : plan with
                {
                    Bound = bound,
                };
        }
        catch (OperationCanceledException)
        {
            return plan;
        }
    }

    private double Whole(double bound) => isWhole ? Math.Floor(bound + 1e-6) : bound;

    /// <summary>Value of all parts, or of the best of the area.</summary>
    private double Roof()
    {
        var all = parts.Select(
            (p, i) => counts[i] == 0 ? 0 : p.Value * Math.Min(counts[i], sheet.Area / p.Area)
        );
        var densest = parts
            .Where((_, i) => counts[i] > 0)
            .Select(p => p.Value / p.Area)
            .DefaultIfEmpty()
            .Max();
        return Whole(Math.Min(all.Sum(), densest * sheet.Area));
    }

    private double ValueOf(CutNode? tree)
    {
        if (tree is null)
        {
            return 0;
        }

        var number = new int[parts.Length];
        tree.CountInto(number);
        return number.Select((n, i) => n * parts[i].Value).Sum();
    }

    private static double Work(CutPoints alongX, CutPoints alongY) =>
        (double)alongX.Count * alongY.Count * (alongX.Count + alongY.Count);
}
