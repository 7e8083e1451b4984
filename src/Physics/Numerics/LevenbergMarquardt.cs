using System.Collections.Immutable;

namespace Litterfall.Physics.Numerics;

/// <summary>Misses of a model at its parameters.</summary>
/// <param name="parameters">Parameters.</param>
/// <param name="misses">Filled with one miss for each observation.</param>
public delegate void Misses(ReadOnlySpan<double> parameters, Span<double> misses);

/// <summary>Outcome of a least-squares fit.</summary>
/// <param name="Parameters">Best parameters found, inside their bounds.</param>
/// <param name="SumOfSquares">Sum of the squared misses there.</param>
/// <param name="Converged">False when it ran out of iterations.</param>
public sealed record LeastSquaresFit(ImmutableArray<double> Parameters, double SumOfSquares, bool Converged);

/// <summary>
/// Least squares by Levenberg (1944) and Marquardt (1963), recalled, with bounds: a parameter on its bound
/// whose slope points outward is held, all others step and are cut back to their bounds. For up to about
/// ten parameters of like size; it finds the nearest minimum, not the lowest.
/// </summary>
public static class LevenbergMarquardt
{
    private const int MostIterations = 500;
    private const double LeastDamping = 1e-12;
    private const double MostDamping = 1e12;
    private const double SmallGain = 1e-15;

    /// <summary>Fits parameters.</summary>
    /// <param name="misses">Misses at given parameters; must be finite inside the bounds.</param>
    /// <param name="observations">Number of misses, 1 or more.</param>
    /// <param name="start">Where to begin; cut to the bounds.</param>
    /// <param name="lower">Lower bounds.</param>
    /// <param name="upper">Upper bounds, above the lower ones.</param>
    /// <returns>The nearest minimum.</returns>
    /// <exception cref="ArgumentException">The sizes do not belong together.</exception>
    public static LeastSquaresFit Fit(
        Misses misses,
        int observations,
        ReadOnlySpan<double> start,
        ReadOnlySpan<double> lower,
        ReadOnlySpan<double> upper
    )
    {
        if (start.Length != lower.Length || start.Length != upper.Length || observations < 1)
        {
            throw new ArgumentException("bounds and start must have one value each", nameof(start));
        }

        return new Search(misses, observations, start, lower, upper).Run();
    }

    private sealed class Search
    {
        private readonly Misses misses;
        private readonly double[] at;
        private readonly double[] lower;
        private readonly double[] upper;
        private readonly double[] trial;
        private readonly double[] miss;
        private readonly double[] above;
        private readonly double[] below;
        private readonly double[] slopes;
        private readonly double[] downhill;
        private readonly double[] normal;
        private double sum;
        private double damping = 1e-3;

        public Search(
            Misses misses,
            int observations,
            ReadOnlySpan<double> start,
            ReadOnlySpan<double> lower,
            ReadOnlySpan<double> upper
        )
        {
            int n = start.Length;
            this.misses = misses;
            at = new double[n];
            this.lower = lower.ToArray();
            this.upper = upper.ToArray();
            trial = new double[n];
            miss = new double[observations];
            above = new double[observations];
            below = new double[observations];
            slopes = new double[observations * n];
            downhill = new double[n];
            normal = new double[n * n];
            for (int i = 0; i < n; i++)
            {
                at[i] = Math.Clamp(start[i], lower[i], upper[i]);
            }
        }

        public LeastSquaresFit Run()
        {
            sum = SumAt(at, miss);
            bool converged = false;
            for (int i = 0; i < MostIterations && !converged; i++)
            {
                Linearize();
                converged = !Improve();
            }

            return new LeastSquaresFit([.. at], sum, converged);
        }

        private double SumAt(double[] parameters, double[] into)
        {
            misses(parameters, into);
            double total = 0.0;
            foreach (double one in into)
            {
                total += one * one;
            }

            return total;
        }

        /// <summary>Slopes by central differences, one-sided on a bound.</summary>
        private void Linearize()
        {
            int n = at.Length;
            at.CopyTo(trial, 0);
            for (int j = 0; j < n; j++)
            {
                double range = upper[j] - lower[j];
                double step = 1e-6 * Math.Max(Math.Abs(at[j]), double.IsFinite(range) ? 1e-3 * range : 1e-6);
                double high = Math.Min(at[j] + step, upper[j]);
                double low = Math.Max(at[j] - step, lower[j]);
                trial[j] = high;
                misses(trial, above);
                trial[j] = low;
                misses(trial, below);
                trial[j] = at[j];
                downhill[j] = 0.0;
                for (int k = 0; k < miss.Length; k++)
                {
                    double slope = (above[k] - below[k]) / (high - low);
                    slopes[(k * n) + j] = slope;
                    downhill[j] -= slope * miss[k];
                }
            }
        }

        /// <summary>Raises the damping until a step lowers the sum; false when none does.</summary>
        private bool Improve()
        {
            while (damping < MostDamping)
            {
                if (Step())
                {
                    double next = SumAt(trial, above);
                    if (next < sum)
                    {
                        bool worth = sum - next > SmallGain * sum;
                        trial.CopyTo(at, 0);
                        above.CopyTo(miss, 0);
                        sum = next;
                        damping = Math.Max(0.2 * damping, LeastDamping);
                        return worth;
                    }
                }

                damping *= 5.0;
            }

            return false;
        }

        private bool Step()
        {
            int n = at.Length;
            Span<double> step = trial;
            for (int i = 0; i < n; i++)
            {
                bool held = Held(i);
                step[i] = held ? 0.0 : downhill[i];
                for (int j = 0; j < n; j++)
                {
                    normal[(i * n) + j] = held || Held(j) ? 0.0 : Product(i, j);
                }

                double own = normal[(i * n) + i];
                normal[(i * n) + i] = held ? 1.0 : own + (damping * Math.Max(own, 1e-12));
            }

            if (!DenseSolve.TrySolve(normal, step))
            {
                return false;
            }

            for (int i = 0; i < n; i++)
            {
                step[i] = Math.Clamp(at[i] + step[i], lower[i], upper[i]);
            }

            return true;
        }

        private bool Held(int i) =>
            (at[i] <= lower[i] && downhill[i] < 0.0) || (at[i] >= upper[i] && downhill[i] > 0.0);

        private double Product(int i, int j)
        {
            int n = at.Length;
            double total = 0.0;
            for (int k = 0; k < miss.Length; k++)
            {
                total += slopes[(k * n) + i] * slopes[(k * n) + j];
            }

            return total;
        }
    }
}
