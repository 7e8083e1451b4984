using System.Collections.Immutable;
using Litterfall.Workshop.Cutting.Trees;

namespace Litterfall.Workshop.Cutting;

/// <summary>
/// Makes the rest that is worth keeping as large as can be, on the same sheets: the rest is asked for as if
/// it
/// were a part, as long or as wide as a sheet.
/// </summary>
/// <param name="grid">The task.</param>
/// <param name="parts">Kinds of parts.</param>
/// <param name="rules">What cuts there may be.</param>
/// <param name="seed">Seed of the random numbers.</param>
/// <param name="budget">Turns that are left for all.</param>
internal sealed class LongRest(
    GridTask grid,
    ImmutableArray<GridPart> parts,
    CutRules rules,
    int seed,
    TurnBudget budget
)
{
    private const int Trials = 7;

    /// <summary>The plan with the largest rest that was found.</summary>
    /// <param name="plan">A plan.</param>
    /// <param name="wanted">Parts, by kind.</param>
    /// <param name="turns">Turns of each trial.</param>
    /// <param name="cancel">Ends it early.</param>
    public StockPlan Improve(StockPlan plan, IReadOnlyList<int> wanted, int turns, CancellationToken cancel)
    {
        var most = plan.Sheets.Sum(s => s.Area) - wanted.Sum(p => parts[p].Area);
        var least = Largest(plan);
        for (var trial = 0; trial < Trials && !cancel.IsCancellationRequested; trial++)
        {
            // The first trial asks for nearly all that is free: plans without waste do exist.
            var area = trial == 0 ? 0.97 * most : (least + most) / 2;
            if (area < least * 1.01 || most < least * 1.02)
            {
                break;
            }

            if (Try(plan, wanted, area, turns, cancel) is { } better)
            {
                (plan, least) = (better, Math.Max(area, Largest(better)));
            }
            else
            {
                most = area;
            }
        }

        return plan;
    }

    private StockPlan? Try(
        StockPlan plan,
        IReadOnlyList<int> wanted,
        double area,
        int turns,
        CancellationToken cancel
    )
    {
        foreach (var sheet in plan.Sheets.DistinctBy(s => (s.Length, s.Width)))
        {
            foreach (var isUpright in (bool[])[sheet.Width <= sheet.Length, sheet.Width > sheet.Length])
            {
                var edge = (int)Math.Ceiling(area / (isUpright ? sheet.Width : sheet.Length));
                if (edge > (isUpright ? sheet.Length : sheet.Width) || edge < 1)
                {
                    continue;
                }

                var rest = new GridPart(
                    isUpright ? edge : sheet.Length,
                    isUpright ? sheet.Width : edge,
                    1,
                    false,
                    area
                )
                {
                    Demands = [],
                };
                var fill = new FillSearch(parts.Add(rest), rules, seed, budget);
                if (fill.Find([.. wanted, parts.Length], plan.Sheets, turns, cancel) is { } trees)
                {
                    return plan with { Trees = [.. trees] };
                }
            }
        }

        return null;
    }

    private double Largest(StockPlan plan) =>
        plan.Sheets.Select((sheet, i) => Largest(sheet, plan.Trees[i])).DefaultIfEmpty().Max();

    private double Largest(GridSheet sheet, CutNode? tree) =>
        SheetLayout.LargestRest(grid, sheet, tree, parts.Length);
}
