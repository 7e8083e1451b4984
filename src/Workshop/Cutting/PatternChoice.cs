using System.Collections.Immutable;
using Google.OrTools.Sat;
using Litterfall.Workshop.Cutting.Trees;

namespace Litterfall.Workshop.Cutting;

/// <summary>
/// The cheapest whole choice among patterns that are known, by a solver of whole numbers: one worker and a
/// fixed seed. Where the solver is not there, nothing is chosen.
/// </summary>
internal static class PatternChoice
{
    private const string Settings =
        "num_workers:1,random_seed:1,linearization_level:2,relative_gap_limit:0.00001,"
        + "max_deterministic_time:";

    /// <summary>A plan; null where none was found.</summary>
    /// <param name="parts">Kinds of parts.</param>
    /// <param name="sheets">Kinds of sheets.</param>
    /// <param name="demand">How many of each part.</param>
    /// <param name="patterns">Patterns to choose from.</param>
    /// <param name="work">How much work the solver may do, in its own measure of about a second.</param>
    /// <param name="cancel">Ends it early.</param>
    public static StockPlan? Find(
        ImmutableArray<GridPart> parts,
        ImmutableArray<GridSheet> sheets,
        int[] demand,
        IReadOnlyList<CutPattern> patterns,
        double work,
        CancellationToken cancel
    )
    {
        if (cancel.IsCancellationRequested)
        {
            return null;
        }

        try
        {
            return Choose(parts, sheets, demand, patterns, work, cancel);
        }
        catch (Exception fault) when (IsMissing(fault))
        {
            return null;
        }
    }

    private static bool IsMissing(Exception fault) =>
        (fault as TypeInitializationException)?.InnerException is DllNotFoundException
        || fault is DllNotFoundException or System.IO.FileNotFoundException;

    private static StockPlan? Choose(
        ImmutableArray<GridPart> parts,
        ImmutableArray<GridSheet> sheets,
        int[] demand,
        IReadOnlyList<CutPattern> patterns,
        double work,
        CancellationToken cancel
    )
    {
        var model = new CpModel();
        var uses = patterns
            .Select(p => model.NewIntVar(0, Most(p, demand, sheets[p.Sheet].Count), ""))
            .ToArray();
        for (var i = 0; i < parts.Length; i++)
        {
            model.Add(LinearExpr.WeightedSum(uses, patterns.Select(p => (long)p.Counts[i])) >= demand[i]);
        }

        for (var s = 0; s < sheets.Length; s++)
        {
            if (sheets[s].Count != GridSheet.Unlimited)
            {
                model.Add(LinearExpr.Sum(uses.Where((_, p) => patterns[p].Sheet == s)) <= sheets[s].Count);
            }
        }

        model.Minimize(LinearExpr.WeightedSum(uses, patterns.Select(p => (long)Math.Round(p.Cost * 100))));
        var solver = new CpSolver { StringParameters = FormattableString.Invariant($"{Settings}{work}") };
        using (cancel.Register(solver.StopSearch))
        {
            return solver.Solve(model) is CpSolverStatus.Optimal or CpSolverStatus.Feasible
                ? Plan(sheets, demand, patterns, [.. uses.Select(solver.Value)])
                : null;
        }
    }

    private static long Most(CutPattern pattern, int[] demand, int stock)
    {
        var most = 0;
        for (var i = 0; i < demand.Length; i++)
        {
            if (pattern.Counts[i] > 0)
            {
                most = Math.Max(most, (demand[i] + pattern.Counts[i] - 1) / pattern.Counts[i]);
            }
        }

        return Math.Min(most, stock);
    }

    /// <summary>Takes parts away that are too many.</summary>
    private static StockPlan Plan(
        ImmutableArray<GridSheet> sheets,
        int[] demand,
        IReadOnlyList<CutPattern> patterns,
        long[] uses
    )
    {
        int[] left = [.. demand];
        var (chosen, trees) = (new List<GridSheet>(), new List<CutNode?>());
        for (var p = 0; p < uses.Length; p++)
        {
            for (var time = 0L; time < uses[p]; time++)
            {
                if (Without(patterns[p].Tree, left) is { } tree)
                {
                    chosen.Add(sheets[patterns[p].Sheet]);
                    trees.Add(tree);
                }
            }
        }

        return StockPlan.From(chosen, trees);
    }

    private static CutNode? Without(CutNode node, int[] left)
    {
        if (node.Part >= 0)
        {
            return left[node.Part]-- > 0 ? node : null;
        }

        var first = Without(node.First!, left);
        var second = Without(node.Second!, left);
        return first is null ? second
            : second is null ? first
            : CutNode.Join(first, second, node.IsBeside, 0, 0);
    }
}
