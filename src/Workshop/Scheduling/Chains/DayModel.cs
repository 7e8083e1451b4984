using Google.OrTools.Sat;

namespace Litterfall.Workshop.Scheduling.Chains;

/// <summary>
/// The whole problem for a solver of whole numbers, by days: for each stage and day whether it starts up to
/// then. Orders of stages are implications, places and hours are sums of a day. One worker and a fixed
/// seed, so that it finds the same each time.
/// </summary>
internal sealed class DayModel
{
    private const string Settings =
        "num_workers:1,random_seed:1,linearization_level:2,cut_level:0,cp_model_probing_level:3";

    private readonly CpModel model = new();
    private readonly JobProblem problem;
    private readonly BoolVar[][][] starts;
    private readonly LinearExpr[][][] begun;
    private readonly Dictionary<(int Resource, int Day), List<LinearExpr>> used = [];

    private DayModel(JobProblem problem)
    {
        this.problem = problem;
        starts =
        [
            .. problem.Jobs.Select(j =>
                j.Stages.Select(s => s.Days.Select(_ => model.NewBoolVar("")).ToArray()).ToArray()
            ),
        ];
        begun = [.. problem.Jobs.Select((j, i) => j.Stages.Select((_, k) => Begun(i, k)).ToArray())];
    }

    /// <summary>Looks for a plan that costs less than one in hand.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="most">Most that a plan may cost.</param>
    /// <param name="cancel">Ends the search.</param>
    /// <returns>The plan, a bound, and whether the search went to its end.</returns>
    public static (int[][]? Plan, long Bound, bool IsDone) Solve(
        JobProblem problem,
        long most,
        CancellationToken cancel
    )
    {
        var built = new DayModel(problem);
        for (var j = 0; j < problem.Jobs.Length; j++)
        {
            built.Chain(j);
        }

        built.Limit();
        return built.Run(most, cancel);
    }

    /// <summary>Whether a stage begins on one of its days up to each of them.</summary>
    private LinearExpr[] Begun(int job, int stage)
    {
        var own = starts[job][stage];
        model.AddExactlyOne(own);
        var sums = new LinearExpr[own.Length];
        BoolVar? before = null;
        for (var a = 0; a < own.Length; a++)
        {
            if (a == 0)
            {
                sums[a] = own[0];
                before = own[0];
                continue;
            }

            var sum = model.NewBoolVar("");
            model.Add(before! + own[a] == sum);
            sums[a] = sum;
            before = sum;
        }

        return sums;
    }

    private void Chain(int job)
    {
        var stages = problem.Jobs[job].Stages;
        for (var k = 0; k < stages.Length; k++)
        {
            Use(job, k);
            if (stages[k].Next < 0)
            {
                continue;
            }

            Follow(job, k);
            foreach (var hold in stages[k].Holds)
            {
                Hold(job, k, hold);
            }
        }
    }

    private void Use(int job, int k)
    {
        var stage = problem.Jobs[job].Stages[k];
        for (var a = 0; a < stage.Days.Length; a++)
        {
            foreach (var use in stage.Uses[a])
            {
                for (var d = use.Day; d < use.End; d++)
                {
                    Take((use.Resource, d), starts[job][k][a] * use.Amount);
                }
            }
        }
    }

    /// <summary>The next stage starts up to a day only where this one was ready by then.</summary>
    private void Follow(int job, int k)
    {
        var stage = problem.Jobs[job].Stages[k];
        var next = problem.Jobs[job].Stages[stage.Next];
        var ready = -1;
        for (var a = 0; a < next.Days.Length; a++)
        {
            while (ready + 1 < stage.Days.Length && stage.Ready[ready + 1] <= next.Days[a])
            {
                ready++;
            }

            if (ready < stage.Days.Length - 1)
            {
                var before = ready < 0 ? LinearExpr.Constant(0) : begun[job][k][ready];
                model.Add(begun[job][stage.Next][a] <= before);
            }
        }
    }

    private void Hold(int job, int k, DayHold hold)
    {
        var stage = problem.Jobs[job].Stages[k];
        var next = problem.Jobs[job].Stages[stage.Next];
        var last = next.Days.Length == 0 ? 0 : next.Days[^1];
        for (var d = stage.Days.Length == 0 ? 0 : stage.Days[0]; d < last; d++)
        {
            var mine = Up(stage.Days, d);
            var theirs = Up(next.Days, d);
            var on = begun[job][k][mine];
            Take(
                (hold.Resource, d),
                theirs < 0 ? on * hold.Amount : (on - begun[job][stage.Next][theirs]) * hold.Amount
            );
        }
    }

    private static int Up(int[] days, int day)
    {
        var at = Array.BinarySearch(days, day);
        return at >= 0 ? at : ~at - 1;
    }

    private void Take((int Resource, int Day) at, LinearExpr amount)
    {
        if (!used.TryGetValue(at, out var list))
        {
            used[at] = list = [];
        }

        list.Add(amount);
    }

    private void Limit()
    {
        foreach (var (at, amounts) in used.OrderBy(u => u.Key))
        {
            model.Add(LinearExpr.Sum(amounts) <= problem.Capacity[at.Resource][at.Day]);
        }
    }

    private (int[][]? Plan, long Bound, bool IsDone) Run(long most, CancellationToken cancel)
    {
        var variables = starts.SelectMany(j => j.SelectMany(s => s)).ToArray();
        var costs = problem.Jobs.SelectMany(j => j.Stages.SelectMany(s => s.Costs)).ToArray();
        var cost = LinearExpr.WeightedSum(variables, costs);
        model.Add(cost <= most);
        model.Minimize(cost);
        var solver = new CpSolver { StringParameters = Settings };
        using var registration = cancel.Register(solver.StopSearch);
        cancel.ThrowIfCancellationRequested();
        var status = solver.Solve(model);
        var plan = status is CpSolverStatus.Optimal or CpSolverStatus.Feasible ? Days(solver) : null;
        return status == CpSolverStatus.Infeasible
            ? (null, most + 1, true)
            : (
                plan,
                (long)Math.Ceiling(Math.Max(solver.BestObjectiveBound, long.MinValue / 2) - 1e-6),
                status == CpSolverStatus.Optimal
            );
    }

    private int[][] Days(CpSolver solver) =>
        [
            .. problem.Jobs.Select(
                (job, j) =>
                    job
                        .Stages.Select(
                            (s, k) => s.Days[Array.FindIndex(starts[j][k], v => solver.BooleanValue(v))]
                        )
                        .ToArray()
            ),
        ];
}
