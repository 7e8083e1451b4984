namespace Litterfall.Workshop.Scheduling.Chains;

/// <summary>
/// The cheapest days of one job where each unit of a resource has a price on each day: a shortest way through
/// its stages, which takes one pass over their days.
/// </summary>
internal sealed class JobPricing
{
    /// <summary>Price of what is not there.</summary>
    public const double Blocked = 1e10;

    /// <summary>No plan costs more.</summary>
    public const long Most = (long)1e15;

    private readonly Job job;
    private readonly double[][] values;
    private readonly double[][] joined;
    private readonly double[][] outer;
    private readonly int[][] picks;
    private readonly double[][] held;

    /// <summary>Prepares a job.</summary>
    /// <param name="job">The job.</param>
    /// <param name="horizon">Days that are looked at.</param>
    public JobPricing(Job job, int horizon)
    {
        this.job = job;
        values = [.. job.Stages.Select(s => new double[s.Days.Length])];
        outer = [.. job.Stages.Select(s => new double[s.Days.Length])];
        joined = [.. job.Stages.Select(s => new double[Waiting(s)])];
        picks = [.. job.Stages.Select(s => new int[Waiting(s)])];
        held = [.. job.Stages.Select(s => s.Holds.Length == 0 ? [] : new double[horizon + 1])];
    }

    /// <summary>The job.</summary>
    public Job Job => job;

    /// <summary>The least that the job costs at these prices.</summary>
    /// <param name="prices">Price of a unit by resource and day; null for no prices.</param>
    /// <param name="left">What is left by resource and day; null where everything is there.</param>
    /// <returns>The cost, from <see cref="Blocked"/> on where there is no way.</returns>
    public double Price(double[][]? prices, int[][]? left)
    {
        var stages = job.Stages;
        for (var k = 0; k < stages.Length; k++)
        {
            var stage = stages[k];
            for (var a = 0; a < stage.Days.Length; a++)
            {
                double sum = stage.Costs[a];
                foreach (var use in stage.Uses[a])
                {
                    for (var d = use.Day; d < use.End; d++)
                    {
                        sum += Of(use.Resource, d, use.Amount, prices, left);
                    }
                }

                values[k][a] = sum;
            }

            Hold(k, prices, left);
        }

        for (var k = 0; k < stages.Length; k++)
        {
            if (stages[k].Next >= 0)
            {
                Join(k);
            }
        }

        var last = values[^1];
        return last.Length == 0 ? double.PositiveInfinity : last[Best()];
    }

    /// <summary>The days behind the last price.</summary>
    public int[] Days()
    {
        var at = new int[job.Stages.Length];
        at[^1] = Best();
        for (var k = at.Length - 2; k >= 0; k--)
        {
            at[k] = picks[k][at[job.Stages[k].Next]];
        }

        return [.. at.Select((a, k) => job.Stages[k].Days[a])];
    }

    /// <summary>The least that the job costs for each stage and each of its days, after a price.</summary>
    public double[][] Least()
    {
        Array.Clear(outer[^1]);
        for (var k = job.Stages.Length - 2; k >= 0; k--)
        {
            Spread(k);
        }

        return [.. values.Select((v, k) => v.Select((x, a) => x + outer[k][a]).ToArray())];
    }

    /// <summary>
    /// All days of the job that cost no more than an amount, after a price; the cheapest first.
    /// </summary>
    /// <param name="most">The amount.</param>
    /// <param name="count">Most that are listed.</param>
    /// <returns>The days; null where there are more.</returns>
    public List<int[]>? Within(double most, int count)
    {
        var found = new List<(double Cost, int[] Days)>();
        var at = new int[job.Stages.Length];
        for (var a = 0; a < values[^1].Length && found.Count <= count; a++)
        {
            at[^1] = a;
            Each(at.Length - 2, at, (values[^1][a], most), found, count);
        }

        return found.Count > count ? null : [.. found.OrderBy(f => f.Cost).Select(f => f.Days)];
    }

    private void Each(
        int k,
        int[] at,
        (double Cost, double Most) sum,
        List<(double Cost, int[] Days)> found,
        int count
    )
    {
        if (!(sum.Cost <= sum.Most) || found.Count > count)
        {
            return;
        }

        if (k < 0)
        {
            found.Add((sum.Cost, [.. at.Select((a, i) => job.Stages[i].Days[a])]));
            return;
        }

        var stage = job.Stages[k];
        var next = at[stage.Next];
        var day = job.Stages[stage.Next].Days[next];
        var rest = sum.Cost - joined[k][next] + Held(k, day);
        for (var j = 0; j < stage.Days.Length && stage.Ready[j] <= day; j++)
        {
            at[k] = j;
            Each(k - 1, at, (rest + values[k][j] - Held(k, stage.Days[j]), sum.Most), found, count);
        }
    }

    private int Waiting(JobStage stage) => stage.Next < 0 ? 0 : job.Stages[stage.Next].Days.Length;

    private int Best()
    {
        var last = values[^1];
        var best = 0;
        for (var a = 1; a < last.Length; a++)
        {
            best = last[a] < last[best] ? a : best;
        }

        return best;
    }

    private static double Of(int resource, int day, int amount, double[][]? prices, int[][]? left) =>
        (prices is null ? 0 : prices[resource][day] * amount)
        + (left is not null && left[resource][day] < amount ? Blocked : 0);

    private void Hold(int k, double[][]? prices, int[][]? left)
    {
        var sums = held[k];
        for (var d = 0; d + 1 < sums.Length; d++)
        {
            var day = 0.0;
            foreach (var hold in job.Stages[k].Holds)
            {
                day += Of(hold.Resource, d, hold.Amount, prices, left);
            }

            sums[d + 1] = sums[d] + day;
        }
    }

    private double Held(int k, int day) => held[k].Length == 0 ? 0 : held[k][day];

    /// <summary>Adds the best way up to a stage to each day of the stage that waits for it.</summary>
    private void Join(int k)
    {
        var stage = job.Stages[k];
        var next = job.Stages[stage.Next];
        var best = double.PositiveInfinity;
        var pick = 0;
        var j = 0;
        for (var a = 0; a < next.Days.Length; a++)
        {
            for (; j < stage.Days.Length && stage.Ready[j] <= next.Days[a]; j++)
            {
                var value = values[k][j] - Held(k, stage.Days[j]);
                if (value <= best)
                {
                    best = value;
                    pick = j;
                }
            }

            joined[k][a] = best + Held(k, next.Days[a]);
            picks[k][a] = pick;
            values[stage.Next][a] += joined[k][a];
        }
    }

    /// <summary>What the rest of the job costs beside the ways up to a stage, for each day of it.</summary>
    private void Spread(int k)
    {
        var stage = job.Stages[k];
        var next = job.Stages[stage.Next];
        var best = double.PositiveInfinity;
        var a = next.Days.Length - 1;
        for (var j = stage.Days.Length - 1; j >= 0; j--)
        {
            for (; a >= 0 && next.Days[a] >= stage.Ready[j]; a--)
            {
                var whole = values[stage.Next][a];
                if (!double.IsInfinity(whole))
                {
                    var value = outer[stage.Next][a] + whole - joined[k][a] + Held(k, next.Days[a]);
                    best = Math.Min(best, value);
                }
            }

            outer[k][j] = best - Held(k, stage.Days[j]);
        }
    }
}
