using System.Collections.Immutable;
using Litterfall.Workshop.Cutting.Trees;

namespace Litterfall.Workshop.Cutting;

/// <summary>
/// Cheapest choice of few sheets that gives all parts, by trying choices from a plan downward.
/// </summary>
/// <param name="parts">Kinds of parts.</param>
/// <param name="sheets">Kinds of sheets with what is left of them.</param>
/// <param name="rules">What cuts there may be.</param>
/// <param name="seed">Seed of the random numbers.</param>
/// <param name="budget">Turns that are left for all.</param>
internal sealed class SheetMix(
    ImmutableArray<GridPart> parts,
    ImmutableArray<GridSheet> sheets,
    CutRules rules,
    int seed,
    TurnBudget budget
)
{
    private const int MostChoices = 200_000;

    /// <summary>Room over area of the parts at which a choice is easy to fill.</summary>
    private const double Comfortable = 1.15;

    /// <summary>Told each better plan; null for nobody.</summary>
    public Action<StockPlan>? Found { get; init; }

    /// <summary>The cheapest plan that was found; null for none.</summary>
    /// <param name="wanted">Parts, by kind.</param>
    /// <param name="bound">No plan costs less.</param>
    /// <param name="turns">Turns for each choice.</param>
    /// <param name="cancel">Ends it early.</param>
    public StockPlan? Find(IReadOnlyList<int> wanted, double bound, int turns, CancellationToken cancel)
    {
        var fill = new FillSearch(parts, rules, seed, budget);
        var area = wanted.Sum(p => parts[p].Area);
        var best = Simple(wanted) ?? FromAll(fill, wanted, area, Math.Max(turns, 1), cancel);
        if (best is null)
        {
            return null;
        }

        Found?.Invoke(best);
        var failed = new List<int[]>();
        while (best.Cost > bound + 1e-9 && !cancel.IsCancellationRequested && budget.Left > 0)
        {
            var choice = Choices(area, bound, best.Cost)
                .Where(c => !failed.Any(f => IsNoLarger(c, f)))
                .OrderByDescending(c => Room(c) >= Comfortable * area ? -Cost(c) : double.MinValue)
                .ThenByDescending(Room)
                .FirstOrDefault();
            if (choice is null)
            {
                break;
            }

            GridSheet[] chosen = [.. choice.SelectMany((n, s) => Enumerable.Repeat(sheets[s], n))];
            if (fill.Find(wanted, chosen, turns, cancel) is { } trees)
            {
                best = StockPlan.From(chosen, trees);
                Found?.Invoke(best);
            }
            else
            {
                failed.Add(choice);
            }
        }

        return best;
    }

    /// <summary>
    /// All sheets there are, and of those without number so many that they have room and to spare.
    /// </summary>
    private StockPlan? FromAll(
        FillSearch fill,
        IReadOnlyList<int> wanted,
        double area,
        int turns,
        CancellationToken cancel
    )
    {
        GridSheet[] chosen =
        [
            .. sheets.SelectMany(s =>
                Enumerable.Repeat(
                    s,
                    (int)Math.Min(s.Count, Math.Min(wanted.Count, Math.Ceiling(1.5 * area / s.Area)))
                )
            ),
        ];
        return fill.Find(wanted, chosen, turns, cancel) is { } trees ? StockPlan.From(chosen, trees) : null;
    }

    private double Cost(int[] choice) => choice.Select((n, s) => n * sheets[s].Cost).Sum();

    private double Room(int[] choice) => choice.Select((n, s) => n * sheets[s].Area).Sum();

    private static bool IsNoLarger(int[] choice, int[] other) =>
        choice.Zip(other).All(pair => pair.First <= pair.Second);

    /// <summary>
    /// One sheet after the other, each as full as it gets, always the cheapest for its area.
    /// </summary>
    private StockPlan? Simple(IReadOnlyList<int> wanted)
    {
        var left = new int[parts.Length];
        foreach (var part in wanted)
        {
            left[part]++;
        }

        int[] stock = [.. sheets.Select(s => s.Count)];
        var plan = new StockPlan([], [], 0);
        while (left.Any(n => n > 0))
        {
            var next = Enumerable
                .Range(0, sheets.Length)
                .Where(s => stock[s] > 0)
                .Select(s => (Sheet: s, Tree: Refill.Within(parts, left, sheets[s], rules, null)))
                .Where(p => p.Tree is not null)
                .OrderBy(p => sheets[p.Sheet].Cost / AreaOf(p.Tree!))
                .ThenBy(p => sheets[p.Sheet].Area)
                .FirstOrDefault();
            if (next.Tree is null)
            {
                return null;
            }

            var counts = new int[parts.Length];
            next.Tree.CountInto(counts);
            for (var i = 0; i < left.Length; i++)
            {
                left[i] -= counts[i];
            }

            stock[next.Sheet] -= stock[next.Sheet] == GridSheet.Unlimited ? 0 : 1;
            plan = plan.With(StockPlan.From([sheets[next.Sheet]], [next.Tree]));
        }

        return plan;
    }

    private double AreaOf(CutNode tree)
    {
        var counts = new int[parts.Length];
        tree.CountInto(counts);
        return counts.Select((n, i) => n * parts[i].Area).Sum();
    }

    /// <summary>Choices of sheets between two costs with room for all parts.</summary>
    private List<int[]> Choices(double area, double bound, double below)
    {
        var found = new List<int[]>();
        var choice = new int[sheets.Length];
        Choose(0, 0.0, 0.0);
        return found;

        void Choose(int sheet, double cost, double room)
        {
            if (found.Count >= MostChoices)
            {
                return;
            }

            if (sheet == sheets.Length)
            {
                if (room >= area * (1 - 1e-12) && cost >= bound - 1e-9)
                {
                    found.Add([.. choice]);
                }

                return;
            }

            for (var n = 0; n <= sheets[sheet].Count; n++)
            {
                var sum = cost + n * sheets[sheet].Cost;
                if (sum >= below - 1e-9 || n > 64)
                {
                    break;
                }

                choice[sheet] = n;
                Choose(sheet + 1, sum, room + n * sheets[sheet].Area);
            }

            choice[sheet] = 0;
        }
    }
}
