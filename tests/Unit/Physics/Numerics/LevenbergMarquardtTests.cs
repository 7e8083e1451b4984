using Litterfall.Physics.Numerics;

namespace Litterfall.UnitTests.Physics.Numerics;

/// <summary>The fit against certified values and closed forms.</summary>
public sealed class LevenbergMarquardtTests
{
    // NIST Statistical Reference Datasets, nonlinear regression, Misra1a: y = b1 (1 − exp(−b2 x)). Data and
    // certified values from memory; data typed wrongly could not give the certified sum of squares.
    private static readonly (double Y, double X)[] misra =
    [
        (10.07, 77.6),
        (14.73, 114.9),
        (17.94, 141.1),
        (23.93, 190.8),
        (29.61, 239.9),
        (35.18, 289.0),
        (40.02, 332.8),
        (44.82, 378.4),
        (50.76, 434.8),
        (55.05, 477.3),
        (61.01, 536.8),
        (66.40, 593.1),
        (75.47, 689.1),
        (81.78, 760.0),
    ];

    [Theory]
    [InlineData(500.0, 0.0001)]
    [InlineData(250.0, 0.0005)]
    public void Misra1aComesOutAsCertified(double first, double second)
    {
        static void BalanceError(ReadOnlySpan<double> b, Span<double> miss)
        {
            for (int i = 0; i < miss.Length; i++)
            {
                miss[i] = (b[0] * (1.0 - Math.Exp(-b[1] * misra[i].X))) - misra[i].Y;
            }
        }

        var fit = LevenbergMarquardt.Fit(
            BalanceError,
            misra.Length,
            [first, second],
            [0.0, 1e-5],
            [1e4, 0.1]
        );
        Assert.True(fit.Converged);
        Assert.Equal(2.3894212918e2, fit.Parameters[0], 1e-4);
        Assert.Equal(5.5015643181e-4, fit.Parameters[1], 1e-9);
        Assert.Equal(1.2455138894e-1, fit.SumOfSquares, 1e-10);
    }

    [Fact]
    public void RosenbrockEndsAtOneAndOne()
    {
        var fit = LevenbergMarquardt.Fit(Rosenbrock, 2, [-1.2, 1.0], [-10.0, -10.0], [10.0, 10.0]);
        Assert.Equal(1.0, fit.Parameters[0], 1e-6);
        Assert.Equal(1.0, fit.Parameters[1], 1e-6);
    }

    [Fact]
    public void ABoundHoldsAndTheOtherParameterFollows()
    {
        // With x at most 0.5 the sum (1 − x)² + 100 (y − x²)² is least at x = 0.5, y = 0.25: 0.25.
        var fit = LevenbergMarquardt.Fit(Rosenbrock, 2, [-1.2, 1.0], [-10.0, -10.0], [0.5, 10.0]);
        Assert.Equal(0.5, fit.Parameters[0], 1e-9);
        Assert.Equal(0.25, fit.Parameters[1], 1e-6);
        Assert.Equal(0.25, fit.SumOfSquares, 1e-9);
    }

    [Fact]
    public void BoundsMustMatchTheStart() =>
        Assert.Throws<ArgumentException>(() =>
            LevenbergMarquardt.Fit(Rosenbrock, 2, [0.0], [0.0, 0.0], [1.0])
        );

    private static void Rosenbrock(ReadOnlySpan<double> p, Span<double> miss)
    {
        miss[0] = 10.0 * (p[1] - (p[0] * p[0]));
        miss[1] = 1.0 - p[0];
    }
}
