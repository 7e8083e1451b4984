using System.Collections.Immutable;

namespace Litterfall.Physics.Numerics;

/// <summary>
/// Points and weights of Gauss and Legendre on 0 to 1; exact for polynomials of degree 2n − 1.
/// </summary>
public sealed class GaussLegendre
{
    private const int Most = 32;
    private static readonly GaussLegendre?[] Known = new GaussLegendre?[Most + 1];

    private GaussLegendre(int count)
    {
        double[] points = new double[count];
        double[] weights = new double[count];
        for (int i = 0; i < count; i++)
        {
            // Newton from the usual first guess; the rule is symmetric, so no order is lost by doing all.
            double x = Math.Cos(Math.PI * (i + 0.75) / (count + 0.5));
            double slope = 0.0;
            for (int k = 0; k < 20; k++)
            {
                var (value, derivative) = Legendre(count, x);
                slope = derivative;
                double step = value / derivative;
                x -= step;
                if (Math.Abs(step) < 1e-15)
                {
                    break;
                }
            }

            points[count - 1 - i] = 0.5 * (1.0 + x);
            weights[count - 1 - i] = 1.0 / ((1.0 - (x * x)) * slope * slope);
        }

        Points = [.. points];
        Weights = [.. weights];
    }

    /// <summary>Points, rising, within 0 to 1.</summary>
    public ImmutableArray<double> Points { get; }

    /// <summary>Weights; they add up to 1.</summary>
    public ImmutableArray<double> Weights { get; }

    /// <summary>A rule.</summary>
    /// <param name="count">Points, 1 to 32.</param>
    /// <returns>The rule.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Fewer or more points.</exception>
    public static GaussLegendre Of(int count)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(count, Most);
        return Known[count] ??= new GaussLegendre(count);
    }

    private static (double Value, double Derivative) Legendre(int degree, double x)
    {
        double before = 1.0;
        double value = x;
        for (int k = 2; k <= degree; k++)
        {
            (before, value) = (value, (((2 * k) - 1) * x * value / k) - ((k - 1) * before / k));
        }

        return (value, degree * ((x * value) - before) / ((x * x) - 1.0));
    }
}
