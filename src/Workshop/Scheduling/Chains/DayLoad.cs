namespace Litterfall.Workshop.Scheduling.Chains;

/// <summary>What is left of each resource on each day while jobs are put in and taken out.</summary>
internal sealed class DayLoad
{
    private readonly JobProblem problem;

    /// <summary>Everything is left.</summary>
    public DayLoad(JobProblem problem)
    {
        this.problem = problem;
        Left = [.. problem.Capacity.Select(c => (int[])c.Clone())];
    }

    /// <summary>What is left by resource and day.</summary>
    public int[][] Left { get; }

    /// <summary>Puts a job in, or nothing where it does not fit.</summary>
    /// <param name="job">Index of the job.</param>
    /// <param name="days">Day of each stage.</param>
    public bool Put(int job, int[] days)
    {
        if (Change(job, days, -1))
        {
            return true;
        }

        Change(job, days, 1);
        return false;
    }

    /// <summary>Takes a job out.</summary>
    /// <param name="job">Index of the job.</param>
    /// <param name="days">Day of each stage.</param>
    public void Take(int job, int[] days) => Change(job, days, 1);

    /// <summary>What a job costs.</summary>
    /// <param name="job">The job.</param>
    /// <param name="days">Day of each stage.</param>
    public static long Cost(Job job, int[] days)
    {
        var sum = 0L;
        for (var k = 0; k < days.Length; k++)
        {
            sum += job.Stages[k].Costs[Array.BinarySearch(job.Stages[k].Days, days[k])];
        }

        return sum;
    }

    private bool Change(int job, int[] days, int sign)
    {
        var fits = true;
        var stages = problem.Jobs[job].Stages;
        for (var k = 0; k < stages.Length; k++)
        {
            var stage = stages[k];
            foreach (var use in stage.Uses[Array.BinarySearch(stage.Days, days[k])])
            {
                for (var d = use.Day; d < use.End; d++)
                {
                    fits &= (Left[use.Resource][d] += sign * use.Amount) >= 0;
                }
            }

            foreach (var hold in stage.Holds)
            {
                for (var d = days[k]; d < days[stage.Next]; d++)
                {
                    fits &= (Left[hold.Resource][d] += sign * hold.Amount) >= 0;
                }
            }
        }

        return fits;
    }
}
