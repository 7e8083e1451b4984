namespace Litterfall.Workshop.Scheduling.Chains;

/// <summary>How a plan is looked for.</summary>
public sealed record SearchWish
{
    /// <summary>False to do without the solver.</summary>
    public bool HasSolver { get; init; } = true;

    /// <summary>A plan that fits, to begin with; null for none.</summary>
    public int[][]? Known { get; init; }

    /// <summary>
    /// Exchanges of a few jobs before the proof begins; 0 for as many as suit their number.
    /// </summary>
    public int Tries { get; init; }

    /// <summary>True where a plan is enough and nothing is to be proved.</summary>
    public bool IsQuick { get; init; }
}

/// <summary>
/// The cheapest days of jobs that share resources: a bound and many plans from prices of the days, better
/// plans by putting jobs in anew, days ruled out that the bound does not allow, and what is left to the
/// solver, or to a tree where there is none.
/// </summary>
public sealed class JobSolver
{
    private const int Steps = 600;
    private const int FillEvery = 4;
    private const int FirstTries = 20_000;
    private const int TriesPerJob = 4000;
    private const int ShuffledOrders = 200;
    private const long MostNodes = 300_000;
    private readonly JobProblem problem;
    private readonly JobInsertion found;
    private readonly DayPrices prices;
    private readonly CancellationToken cancel;

    private JobSolver(JobProblem problem, CancellationToken cancel)
    {
        this.problem = problem;
        this.cancel = cancel;
        found = new JobInsertion(problem);
        prices = new DayPrices(problem);
    }

    /// <summary>
    /// Finds the cheapest plan; the same problem gives the same plan unless it is ended early.
    /// </summary>
    /// <param name="problem">Stages by rising days; costs are whole and below 10⁹ each.</param>
    /// <param name="wish">How it is looked for.</param>
    /// <param name="cancel">Ends the search; the best plan found by then is told.</param>
    /// <returns>The plan, or null and whether it is certain that there is none.</returns>
    public static (JobPlan? Plan, bool IsCertain) Find(
        JobProblem problem,
        SearchWish wish,
        CancellationToken cancel
    ) => problem.Jobs.Length == 0 ? (new JobPlan([], 0, 0), true) : new JobSolver(problem, cancel).Find(wish);

    private (JobPlan? Plan, bool IsCertain) Find(SearchWish wish)
    {
        if (wish.Known is { } known)
        {
            found.Offer(known);
        }

        if (!Price())
        {
            return (null, true);
        }

        Shuffle();
        var tries = wish.Tries > 0 ? wish.Tries : FirstTries + (TriesPerJob * problem.Jobs.Length);
        found.Improve(tries, prices.Bound, cancel);
        var (bound, isDone) = Bound(wish);
        return found.Best is null
            ? (null, isDone)
            : (new JobPlan(found.Best, found.Cost, isDone ? found.Cost : Math.Min(bound, found.Cost)), true);
    }

    /// <summary>Sets prices, and takes plans from them.</summary>
    /// <returns>False where a job cannot be planned even alone.</returns>
    private bool Price()
    {
        found.Fill(Enumerable.Range(0, problem.Jobs.Length), null);
        for (var i = 0; i < Steps && !cancel.IsCancellationRequested; i++)
        {
            var cost = found.Best is null ? prices.Value + Math.Abs(prices.Value) + 1000 : found.Cost;
            var goesOn = prices.Step(double.IsFinite(cost) ? cost : 1000);
            if (double.IsPositiveInfinity(prices.Value))
            {
                return false;
            }

            if (i % FillEvery == 0)
            {
                found.Fill(prices.Order, prices.Prices);
                found.Fill(prices.Order, null);
            }

            if (!goesOn || prices.Bound >= found.Cost)
            {
                break;
            }
        }

        return true;
    }

    /// <summary>Other orders, where none has fitted yet.</summary>
    private void Shuffle()
    {
        var random = new Random(2);
        var order = Enumerable.Range(0, problem.Jobs.Length).ToArray();
        for (var i = 0; i < ShuffledOrders && found.Best is null && !cancel.IsCancellationRequested; i++)
        {
            random.Shuffle(order);
            found.Fill(order, null);
        }
    }

    private (long Bound, bool IsDone) Bound(SearchWish wish) =>
        found.Cost <= prices.Bound ? (found.Cost, true)
        : wish.IsQuick ? (prices.Bound, false)
        : Prove(wish.HasSolver);

    private (long Bound, bool IsDone) Prove(bool hasSolver)
    {
        var left = found.Best is null ? problem : Narrowed();
        if (left.Jobs.Any(j => j.Stages.Any(s => s.Days.Length == 0)))
        {
            return (found.Cost, true);
        }

        try
        {
            if (hasSolver)
            {
                return Solve(left);
            }
        }
        catch (Exception fault) when (IsMissing(fault))
        {
            // The published program has no solver: the tree does it.
        }
        catch (OperationCanceledException)
        {
            return (prices.Bound, false);
        }

        var isDone = JobTree.Search(left, found, prices.Best, MostNodes, cancel);
        return (prices.Bound, isDone);
    }

    private static bool IsMissing(Exception fault) =>
        (fault as TypeInitializationException)?.InnerException is DllNotFoundException
        || fault is DllNotFoundException or System.IO.FileNotFoundException;

    private (long Bound, bool IsDone) Solve(JobProblem left)
    {
        var most = found.Best is null ? JobPricing.Most : found.Cost - 1;
        var (plan, bound, isDone) = DayModel.Solve(left, most, cancel);
        if (plan is not null)
        {
            found.Offer(plan);
        }

        return (Math.Max(prices.Bound, bound), isDone);
    }

    private JobProblem Narrowed()
    {
        var left = prices.Left(found.Cost - 1);
        return problem with
        {
            Jobs =
            [
                .. problem.Jobs.Select(
                    (j, i) => j with { Stages = [.. j.Stages.Select((s, k) => s.Keep(left[i][k]))] }
                ),
            ],
        };
    }
}
