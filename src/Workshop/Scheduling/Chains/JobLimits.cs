namespace Litterfall.Workshop.Scheduling.Chains;

/// <summary>
/// What jobs of a plan wait for. Each job is planned once more in what the others leave, with more and more
/// resources free of them: the fewest that let it be better are what it waits for.
/// </summary>
public static class JobLimits
{
    /// <summary>Indices of the resources that each job waits for; empty for nothing.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="starts">A plan of it that fits.</param>
    public static IEnumerable<int[]> Find(JobProblem problem, int[][] starts)
    {
        var load = new DayLoad(problem);
        for (var j = 0; j < starts.Length; j++)
        {
            load.Put(j, starts[j]);
        }

        var subsets = Subsets(problem.Capacity.Length);
        for (var j = 0; j < starts.Length; j++)
        {
            load.Take(j, starts[j]);
            yield return Of(problem, j, DayLoad.Cost(problem.Jobs[j], starts[j]), load.Left, subsets);
            load.Put(j, starts[j]);
        }
    }

    private static int[] Of(JobProblem problem, int job, long cost, int[][] left, int[][] subsets)
    {
        var pricing = new JobPricing(problem.Jobs[job], problem.Horizon);
        return pricing.Price(null, problem.Capacity) >= cost || pricing.Price(null, left) < cost
            ? []
            : Array.Find(subsets, s =>
                pricing.Price(null, [.. left.Select((l, r) => s.Contains(r) ? problem.Capacity[r] : l)])
                < cost
            ) ?? [];
    }

    /// <summary>All choices of resources, those of few first.</summary>
    private static int[][] Subsets(int count) =>
        [
            .. Enumerable
                .Range(1, (1 << count) - 1)
                .Select(m => Enumerable.Range(0, count).Where(r => (m >> r & 1) == 1).ToArray())
                .OrderBy(s => s.Length),
        ];
}
