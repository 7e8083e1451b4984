using Litterfall.Running.Correcting;
using Xunit;

namespace Litterfall.UnitTests.Running.Correcting;

/// <summary>
/// The smoother against the closed form of a linear model with normal errors (Bayes' rule; Kalman 1960):
/// inputs x ~ N(0, 1), readings d = G·x + e, e ~ N(0, R), so that the posterior has the covariance
/// C = (1 + GᵀR⁻¹G)⁻¹ and the mean C·GᵀR⁻¹d. With two inputs C is written out by hand.
/// </summary>
public sealed class EnsembleSmootherTests
{
    private static readonly double[][] Slopes =
    [
        [2.0, 0.5],
        [-1.0, 1.5],
        [0.3, 0.8],
    ];

    private static readonly double[] Read = [1.2, 0.7, -0.4];
    private static readonly double[] Spread = [0.5, 1.0, 0.8];

    /// <summary>Inverse of a 2 × 2 matrix by its determinant.</summary>
    private static (double Xx, double Xy, double Yy, double MeanX, double MeanY) Posterior()
    {
        var (a, b, c, u, v) = (1.0, 0.0, 1.0, 0.0, 0.0);
        for (int j = 0; j < Read.Length; j++)
        {
            double weight = 1.0 / (Spread[j] * Spread[j]);
            a += weight * Slopes[j][0] * Slopes[j][0];
            b += weight * Slopes[j][0] * Slopes[j][1];
            c += weight * Slopes[j][1] * Slopes[j][1];
            u += weight * Slopes[j][0] * Read[j];
            v += weight * Slopes[j][1] * Read[j];
        }

        double determinant = (a * c) - (b * b);
        return (
            c / determinant,
            -b / determinant,
            a / determinant,
            ((c * u) - (b * v)) / determinant,
            ((a * v) - (b * u)) / determinant
        );
    }

    private static double[][] Moved(int members, int seed)
    {
        double[][] Rows(int count, int from) =>
            [
                .. Enumerable
                    .Range(0, members)
                    .Select(m =>
                        Enumerable.Range(0, count).Select(r => Dealt[(members, seed, from + r)][m]).ToArray()
                    ),
            ];
        foreach (int row in Enumerable.Range(0, 2).Concat(Enumerable.Range(10, 3)))
        {
            Dealt[(members, seed, row)] = NormalDraws.Deal(members, seed, row);
        }

        var prior = Rows(2, 0);
        var smoother = new EnsembleSmoother(prior, Read, Spread, Rows(3, 10));
        var predicted = prior
            .Select(x => Slopes.Select(g => (g[0] * x[0]) + (g[1] * x[1])).ToArray())
            .ToArray();
        return smoother.Move(prior, predicted);
    }

    private static System.Collections.Concurrent.ConcurrentDictionary<
        (int, int, int),
        double[]
    > Dealt
    { get; } = new();

    /// <summary>Draws and errors have mean 0 exactly, so the mean of a linear model is exact too.</summary>
    [Theory]
    [InlineData(64)]
    [InlineData(1000)]
    public void The_mean_is_that_of_the_closed_form(int members)
    {
        var (_, _, _, x, y) = Posterior();
        var moved = Moved(members, 3);
        Assert.Equal(x, moved.Average(m => m[0]), 1e-7);
        Assert.Equal(y, moved.Average(m => m[1]), 1e-7);
    }

    /// <summary>
    /// A covariance of n draws is off by √((Cii·Cjj + Cij²) / n), so by less than four times that: the error
    /// falls with the root of the number of members.
    /// </summary>
    [Theory]
    [InlineData(64)]
    [InlineData(1000)]
    [InlineData(16_000)]
    public void The_covariance_comes_to_that_of_the_closed_form_with_the_root_of_the_members(int members)
    {
        var (xx, xy, yy, x, y) = Posterior();
        var moved = Moved(members, 5);
        double Covariance(int i, int j, double meanI, double meanJ) =>
            moved.Sum(m => (m[i] - meanI) * (m[j] - meanJ)) / (members - 1);
        double Off(double one, double other, double both) =>
            4.0 * Math.Sqrt(((one * other) + (both * both)) / members);
        Assert.Equal(xx, Covariance(0, 0, x, x), Off(xx, xx, xx));
        Assert.Equal(yy, Covariance(1, 1, y, y), Off(yy, yy, yy));
        Assert.Equal(xy, Covariance(0, 1, x, y), Off(xx, yy, xy));
    }

    /// <summary>On a linear model a second move changes nothing.</summary>
    [Fact]
    public void A_linear_model_is_done_in_one_move()
    {
        const int members = 64;
        double[][] Rows(int count, int from) =>
            [
                .. Enumerable
                    .Range(0, members)
                    .Select(m =>
                        Enumerable
                            .Range(0, count)
                            .Select(r => NormalDraws.Deal(members, 7, from + r)[m])
                            .ToArray()
                    ),
            ];
        double[][] Predicted(double[][] of) =>
            [.. of.Select(x => Slopes.Select(g => (g[0] * x[0]) + (g[1] * x[1])).ToArray())];
        var prior = Rows(2, 0);
        var smoother = new EnsembleSmoother(prior, Read, Spread, Rows(3, 10));
        var once = smoother.Move(prior, Predicted(prior));
        var twice = smoother.Move(once, Predicted(once));
        for (int m = 0; m < members; m++)
        {
            Assert.Equal(once[m][0], twice[m][0], 1e-6);
            Assert.Equal(once[m][1], twice[m][1], 1e-6);
        }
    }

    /// <summary>
    /// Quantiles as tables of the normal distribution print them (Abramowitz and Stegun 1964).
    /// </summary>
    [Theory]
    [InlineData(0.975, 1.959964)]
    [InlineData(0.95, 1.644854)]
    [InlineData(0.5, 0.0)]
    [InlineData(0.001, -3.090232)]
    [InlineData(0.999999, 4.753424)]
    public void Quantiles_are_those_of_the_tables(double share, double expected) =>
        Assert.Equal(expected, NormalDraws.Quantile(share), 2e-6);
}
