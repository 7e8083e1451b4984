namespace Litterfall.Workshop.Scheduling.Chains;

/// <summary>
/// A price for each unit of a resource on each day, raised where jobs want more than there is and lowered
/// where they want less (Lagrangian relaxation; Fisher 1981, recalled; step length of Polyak 1969, recalled).
/// Any prices give a bound: no plan costs less than the jobs at these prices less what the resources earn.
/// </summary>
internal sealed class DayPrices
{
    private const double Rounding = 1e-6;
    private readonly JobProblem problem;
    private readonly JobPricing[] pricing;
    private readonly double[] weights;
    private double[][] prices;
    private double[][] direction;
    private double scale = 1.2;
    private int idle;

    /// <summary>Begins with what all prices are 0.</summary>
    public DayPrices(JobProblem problem)
    {
        this.problem = problem;
        pricing = [.. problem.Jobs.Select(j => new JobPricing(j, problem.Horizon))];
        // Resources count alike whatever their units are.
        weights = [.. problem.Capacity.Select(c => 1 / Math.Pow(Math.Max(1, c.Max()), 2))];
        prices = Zero();
        direction = Zero();
        Best = prices;
    }

    /// <summary>The best prices so far.</summary>
    public double[][] Best { get; private set; }

    /// <summary>Their bound, before rounding.</summary>
    public double Value { get; private set; } = double.NegativeInfinity;

    /// <summary>No plan costs less: costs are whole.</summary>
    public long Bound =>
        double.IsInfinity(Value)
            ? long.MinValue
            : (long)Math.Ceiling(Value - (Rounding * (1 + Math.Abs(Value))));

    /// <summary>The prices of the last step.</summary>
    public double[][] Prices => prices;

    /// <summary>Jobs in the order in which they want to begin at the last prices.</summary>
    public int[] Order { get; private set; } = [];

    /// <summary>One step.</summary>
    /// <param name="cost">What the best known plan costs.</param>
    /// <returns>False where no job can be planned, or nothing is wanted beyond what is there.</returns>
    public bool Step(double cost)
    {
        var over = Zero();
        var value = 0.0;
        var ends = new double[pricing.Length];
        for (var j = 0; j < pricing.Length; j++)
        {
            value += pricing[j].Price(prices, null);
            if (double.IsInfinity(value))
            {
                Value = double.PositiveInfinity;
                return false;
            }

            var days = pricing[j].Days();
            ends[j] = days[^1];
            Count(problem.Jobs[j], days, over);
        }

        Order = [.. Enumerable.Range(0, ends.Length).OrderBy(j => ends[j])];
        for (var r = 0; r < over.Length; r++)
        {
            for (var d = 0; d < over[r].Length; d++)
            {
                value -= prices[r][d] * problem.Capacity[r][d];
                over[r][d] -= problem.Capacity[r][d];
            }
        }

        Keep(value);
        return Move(over, cost - value);
    }

    /// <summary>Which days are left to each stage, where a plan is to cost no more than an amount.</summary>
    /// <param name="most">The amount.</param>
    public bool[][][] Left(long most)
    {
        var rent = 0.0;
        for (var r = 0; r < Best.Length; r++)
        {
            rent += Enumerable.Range(0, Best[r].Length).Sum(d => Best[r][d] * problem.Capacity[r][d]);
        }

        var least = pricing.Select(p => p.Price(Best, null)).ToArray();
        var rest = least.Sum() - rent;
        var room = most + (Rounding * (1 + Math.Abs(rest)) * 10);
        return
        [
            .. pricing.Select(
                (p, j) =>
                    p.Least().Select(s => s.Select(x => rest - least[j] + x <= room).ToArray()).ToArray()
            ),
        ];
    }

    private void Keep(double value)
    {
        if (value > Value + 1e-9)
        {
            idle = value > Value + (1e-4 * Math.Abs(Value)) ? 0 : idle + 1;
            Value = value;
            Best = [.. prices.Select(p => (double[])p.Clone())];
        }
        else
        {
            idle++;
        }

        if (idle > 12)
        {
            idle = 0;
            scale *= 0.7;
        }
    }

    private bool Move(double[][] over, double gap)
    {
        var length = 0.0;
        for (var r = 0; r < over.Length; r++)
        {
            for (var d = 0; d < over[r].Length; d++)
            {
                direction[r][d] = (0.65 * over[r][d]) + (0.35 * direction[r][d]);
                if (direction[r][d] > 0 || prices[r][d] > 0)
                {
                    length += direction[r][d] * direction[r][d] * weights[r];
                }
            }
        }

        if (length < 1e-12)
        {
            return false;
        }

        var step = scale * Math.Max(gap, 1) / length;
        prices =
        [
            .. prices.Select(
                (p, r) => p.Select((x, d) => Math.Max(0, x + (step * direction[r][d] * weights[r]))).ToArray()
            ),
        ];
        return true;
    }

    private static void Count(Job job, int[] days, double[][] sum)
    {
        for (var k = 0; k < days.Length; k++)
        {
            var stage = job.Stages[k];
            foreach (var use in stage.Uses[Array.BinarySearch(stage.Days, days[k])])
            {
                for (var d = use.Day; d < use.End; d++)
                {
                    sum[use.Resource][d] += use.Amount;
                }
            }

            foreach (var hold in stage.Holds)
            {
                for (var d = days[k]; d < days[stage.Next]; d++)
                {
                    sum[hold.Resource][d] += hold.Amount;
                }
            }
        }
    }

    private double[][] Zero() => [.. problem.Capacity.Select(c => new double[c.Length])];
}
