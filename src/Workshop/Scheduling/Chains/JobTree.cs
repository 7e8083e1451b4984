namespace Litterfall.Workshop.Scheduling.Chains;

/// <summary>
/// Tries all days of one job after the other that the bound of the prices leaves: the way to a proof without
/// the solver.
/// </summary>
internal sealed class JobTree
{
    private const double Rounding = 0.02;
    private const int MostWays = 20_000;
    private readonly JobProblem problem;
    private readonly JobInsertion found;
    private readonly double[][] prices;
    private readonly JobPricing[] pricing;
    private readonly DayLoad load;
    private readonly int[][] plan;
    private readonly CancellationToken cancel;
    private long nodes;

    private JobTree(JobProblem problem, JobInsertion found, double[][] prices, CancellationToken cancel)
    {
        this.problem = problem;
        this.found = found;
        this.prices = prices;
        this.cancel = cancel;
        pricing = [.. problem.Jobs.Select(j => new JobPricing(j, problem.Horizon))];
        load = new DayLoad(problem);
        plan = new int[problem.Jobs.Length][];
    }

    /// <summary>Searches; plans that are found go to the others.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="found">The plans so far.</param>
    /// <param name="prices">Prices with a good bound.</param>
    /// <param name="nodes">Most branches that are looked at.</param>
    /// <param name="cancel">Ends the search.</param>
    /// <returns>Whether everything was searched.</returns>
    public static bool Search(
        JobProblem problem,
        JobInsertion found,
        double[][] prices,
        long nodes,
        CancellationToken cancel
    )
    {
        var tree = new JobTree(problem, found, prices, cancel) { nodes = nodes };
        return tree.Visit([.. Enumerable.Range(0, problem.Jobs.Length)], 0);
    }

    private bool Visit(int[] open, double put)
    {
        if (open.Length == 0)
        {
            found.Offer([.. plan]);
            return true;
        }

        if (nodes-- <= 0 || cancel.IsCancellationRequested)
        {
            return false;
        }

        var least = Array.ConvertAll(open, j => pricing[j].Price(prices, load.Left));
        var sum = put + least.Sum() - Rent();
        if (!(Room(sum) >= 0))
        {
            return true;
        }

        var (at, ways) = Narrowest(open, least, Room(sum));
        if (ways is null)
        {
            return false;
        }

        var isDone = true;
        int[] rest = [.. open.Where((_, i) => i != at)];
        foreach (var days in ways)
        {
            if (load.Put(open[at], days))
            {
                plan[open[at]] = days;
                isDone &= Visit(rest, put + DayLoad.Cost(problem.Jobs[open[at]], days));
                load.Take(open[at], days);
            }

            if (nodes <= 0)
            {
                return false;
            }
        }

        return isDone;
    }

    private double Room(double sum) =>
        (found.Best is null ? JobPricing.Blocked / 4 : found.Cost - 1) + Rounding - sum;

    /// <summary>The job with the fewest last days that are left, and its ways.</summary>
    private (int At, List<int[]>? Ways) Narrowest(int[] open, double[] least, double room)
    {
        var at = 0;
        var fewest = int.MaxValue;
        for (var i = 0; i < open.Length; i++)
        {
            var limit = least[i] + room;
            var days = pricing[open[i]].Least().Sum(s => s.Count(x => x <= limit));
            (at, fewest) = days < fewest ? (i, days) : (at, fewest);
        }

        return (at, pricing[open[at]].Within(least[at] + room, MostWays));
    }

    private double Rent()
    {
        var sum = 0.0;
        for (var r = 0; r < prices.Length; r++)
        {
            for (var d = 0; d < prices[r].Length; d++)
            {
                sum += prices[r][d] * load.Left[r][d];
            }
        }

        return sum;
    }
}
