namespace Litterfall.Workshop.Scheduling.Chains;

/// <summary>
/// Plans by putting one job after the other where it is cheapest in what the others left, and better ones by
/// taking a few out and putting them in again.
/// </summary>
internal sealed class JobInsertion
{
    private const int MostTaken = 4;
    private const int Round = 10_000;
    private const double Hot = 0.1;
    private const double Cooling = 0.01;
    private readonly JobProblem problem;
    private readonly JobPricing[] pricing;
    private readonly Random random = new(1);

    /// <summary>Prepares the jobs.</summary>
    public JobInsertion(JobProblem problem)
    {
        this.problem = problem;
        pricing = [.. problem.Jobs.Select(j => new JobPricing(j, problem.Horizon))];
    }

    /// <summary>The best plan so far; null for none.</summary>
    public int[][]? Best { get; private set; }

    /// <summary>What it costs.</summary>
    public long Cost { get; private set; } = long.MaxValue;

    /// <summary>Takes a plan that somebody else found, where it is better.</summary>
    /// <param name="plan">Day of each stage of each job; it fits.</param>
    public void Offer(int[][] plan)
    {
        var cost = plan.Select((days, j) => DayLoad.Cost(problem.Jobs[j], days)).Sum();
        if (cost < Cost)
        {
            Best = plan;
            Cost = cost;
        }
    }

    /// <summary>Puts all jobs in, in an order, the cheapest way at these prices.</summary>
    /// <param name="order">Indices of the jobs.</param>
    /// <param name="prices">Price of a unit by resource and day; null for no prices.</param>
    public void Fill(IEnumerable<int> order, double[][]? prices)
    {
        var plan = new int[problem.Jobs.Length][];
        var load = new DayLoad(problem);
        if (order.All(j => Put(plan, load, j, prices)))
        {
            Offer(plan);
        }
    }

    /// <summary>Takes a few jobs out again and again, and puts them in by other orders.</summary>
    /// <param name="tries">How often.</param>
    /// <param name="bound">No plan costs less.</param>
    /// <param name="cancel">Ends it.</param>
    /// <remarks>
    /// What is worse is taken with a chance that falls (simulated annealing; Kirkpatrick, Gelatt and Vecchi
    /// 1983, recalled).
    /// </remarks>
    public void Improve(int tries, long bound, CancellationToken cancel)
    {
        if (Best is null)
        {
            return;
        }

        var plan = Best.ToArray();
        var load = new DayLoad(problem);
        for (var j = 0; j < plan.Length; j++)
        {
            load.Put(j, plan[j]);
        }

        for (var i = 0; i < tries && Cost > bound && !cancel.IsCancellationRequested; i++)
        {
            var heat = Math.Max(1, Hot * Cost) * Math.Pow(Cooling, i % Round / (double)Round);
            var worse = -heat * Math.Log(1 - random.NextDouble());
            if (Exchange(plan, load, worse))
            {
                Offer([.. plan]);
            }
        }
    }

    /// <summary>
    /// Takes a few jobs out and puts them in by another order; back where that costs too much.
    /// </summary>
    private bool Exchange(int[][] plan, DayLoad load, double worse)
    {
        var taken = Some(Math.Min(plan.Length, 1 + random.Next(MostTaken)));
        var before = taken.Select(j => plan[j]).ToArray();
        var was = Sum(taken, plan);
        Array.ForEach(taken, j => load.Take(j, plan[j]));
        var put = taken.TakeWhile(j => Put(plan, load, j, null)).Count();
        if (put == taken.Length && Sum(taken, plan) <= was + worse)
        {
            return true;
        }

        foreach (var j in taken.Take(put))
        {
            load.Take(j, plan[j]);
        }

        for (var t = 0; t < taken.Length; t++)
        {
            plan[taken[t]] = before[t];
            load.Put(taken[t], before[t]);
        }

        return false;
    }

    private long Sum(int[] jobs, int[][] plan) => jobs.Sum(j => DayLoad.Cost(problem.Jobs[j], plan[j]));

    private bool Put(int[][] plan, DayLoad load, int job, double[][]? prices)
    {
        if (pricing[job].Price(prices, load.Left) >= JobPricing.Blocked / 2)
        {
            return false;
        }

        var days = pricing[job].Days();
        if (!load.Put(job, days))
        {
            return false;
        }

        plan[job] = days;
        return true;
    }

    private int[] Some(int count)
    {
        var all = Enumerable.Range(0, problem.Jobs.Length).ToArray();
        for (var i = 0; i < count; i++)
        {
            var other = i + random.Next(all.Length - i);
            (all[i], all[other]) = (all[other], all[i]);
        }

        return all[..count];
    }
}
