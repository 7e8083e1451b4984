using Litterfall.Physics.Numerics;

namespace Litterfall.Physics.Plates;

/// <summary>
/// A pane that rests on its four corners only, under a uniform load: Ritz's method on Kirchhoff's bending
/// energy with even Legendre polynomials, the edges free (Timoshenko and Woinowsky-Krieger 1959, chapter 10,
/// recalled). An estimate, not a structural design; a clip holds an area, so its own corner is not looked at.
/// </summary>
public static class CornerPlate
{
    /// <summary>Even polynomials along each half side: degrees 0 to 14.</summary>
    private const int Count = 8;
    private const int Cells = 32;

    /// <summary>Share of the half sides at the corners where the point support itself shows.</summary>
    private const double NearCorner = 0.9;

    /// <summary>Largest bending stress away from the clips, and the sag of the middle.</summary>
    /// <param name="pane">The pane; how its top is held does not count.</param>
    /// <param name="loadPascals">Uniform pressure, Pa, 0 or more.</param>
    /// <returns>Stress, Pa, and deflection of the middle under the corners, m.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of range.</exception>
    public static (double StressPascals, double SagMeters) Solve(PlatePane pane, double loadPascals)
    {
        pane.ThrowIfImpossible(nameof(pane));
        ArgumentOutOfRangeException.ThrowIfNegative(loadPascals);
        var shares = Shares(pane, loadPascals);
        double largest = 0.0;
        for (int i = 0; i <= Cells; i++)
        {
            for (int j = 0; j <= Cells; j++)
            {
                double x = (double)i / Cells;
                double y = (double)j / Cells;
                if (Math.Min(x, y) <= NearCorner)
                {
                    largest = Math.Max(largest, Moments(pane, shares, x, y).LargestPrincipalNewtons);
                }
            }
        }

        double sag = Moments(pane, shares, 0.0, 0.0).DeflectionMeters;
        return (6.0 * largest / (pane.ThicknessMeters * pane.ThicknessMeters), sag);
    }

    /// <summary>Coefficients of P_i(ξ) P_j(η) − 1, 0 in all corners; the first is not used.</summary>
    private static double[] Shares(in PlatePane pane, double loadPascals)
    {
        int n = (Count * Count) - 1;
        double[] matrix = new double[n * n];
        double[] right = new double[n];
        var (a, b) = (0.5 * pane.WidthMeters, 0.5 * pane.HeightMeters);
        double across = a * b / (a * a * a * a);
        double up = a * b / (b * b * b * b);
        double both = a * b / (a * a * b * b);
        var line = Integrals.Value;
        for (int p = 0; p < n; p++)
        {
            var (i, j) = ((p + 1) / Count, (p + 1) % Count);
            for (int q = 0; q < n; q++)
            {
                var (k, l) = ((q + 1) / Count, (q + 1) % Count);
                double bent =
                    (across * line.Second[i, k] * line.None[j, l])
                    + (up * line.None[i, k] * line.Second[j, l]);
                double mixed = (line.Mixed[i, k] * line.Mixed[l, j]) + (line.Mixed[k, i] * line.Mixed[j, l]);
                double twist = 2.0 * (1.0 - pane.PoissonRatio) * line.First[i, k] * line.First[j, l];
                matrix[(p * n) + q] =
                    pane.StiffnessNewtonMeters * (bent + (both * ((pane.PoissonRatio * mixed) + twist)));
            }

            right[p] = -4.0 * a * b * loadPascals;
        }

        if (!DenseSolve.TrySolve(matrix, right))
        {
            throw new InvalidOperationException("The bending energy of a pane has a single least value.");
        }

        return [0.0, .. right];
    }

    private static PlateMoments Moments(in PlatePane pane, double[] shares, double x, double y)
    {
        Span<double> px = stackalloc double[3 * Count];
        Span<double> py = stackalloc double[3 * Count];
        Polynomials(x, px);
        Polynomials(y, py);
        double sag = 0.0,
            xx = 0.0,
            yy = 0.0,
            xy = 0.0;
        for (int p = 1; p < shares.Length; p++)
        {
            var (i, j) = (p / Count, p % Count);
            sag += shares[p] * ((px[3 * i] * py[3 * j]) - 1.0);
            xx += shares[p] * px[(3 * i) + 2] * py[3 * j];
            yy += shares[p] * px[3 * i] * py[(3 * j) + 2];
            xy += shares[p] * px[(3 * i) + 1] * py[(3 * j) + 1];
        }

        var (a, b) = (0.5 * pane.WidthMeters, 0.5 * pane.HeightMeters);
        (xx, yy, xy) = (xx / (a * a), yy / (b * b), xy / (a * b));
        double d = pane.StiffnessNewtonMeters;
        double nu = pane.PoissonRatio;
        return new PlateMoments(
            -d * (xx + (nu * yy)),
            -d * (yy + (nu * xx)),
            -d * (1.0 - nu) * xy,
            sag
        );
    }

    /// <summary>Value and two derivatives of P0, P2, P4 … at a point.</summary>
    private static void Polynomials(double x, Span<double> into)
    {
        Span<double> before = [0.0, 0.0, 0.0];
        Span<double> now = [1.0, 0.0, 0.0];
        for (int k = 0; k <= 2 * (Count - 1); k++)
        {
            if (k % 2 == 0)
            {
                now.CopyTo(into[(3 * (k / 2))..]);
            }

            double f = (2.0 * k) + 1.0;
            Span<double> next =
            [
                ((f * x * now[0]) - (k * before[0])) / (k + 1),
                ((f * (now[0] + (x * now[1]))) - (k * before[1])) / (k + 1),
                ((f * ((2.0 * now[1]) + (x * now[2]))) - (k * before[2])) / (k + 1),
            ];
            now.CopyTo(before);
            next.CopyTo(now);
        }
    }

    private static readonly Lazy<LineIntegrals> Integrals = new(LineIntegrals.Make);

    /// <summary>Integrals of products of the polynomials and their derivatives from −1 to 1.</summary>
    private sealed record LineIntegrals(
        double[,] None,
        double[,] First,
        double[,] Second,
        double[,] Mixed
    )
    {
        public static LineIntegrals Make()
        {
            var rule = GaussLegendre.Of(2 * Count);
            var made = new LineIntegrals(
                new double[Count, Count],
                new double[Count, Count],
                new double[Count, Count],
                new double[Count, Count]
            );
            Span<double> at = stackalloc double[3 * Count];
            for (int g = 0; g < rule.Points.Length; g++)
            {
                Polynomials(rule.Points[g], at);
                double weight = 2.0 * rule.Weights[g];
                for (int i = 0; i < Count; i++)
                {
                    for (int k = 0; k < Count; k++)
                    {
                        made.None[i, k] += weight * at[3 * i] * at[3 * k];
                        made.First[i, k] += weight * at[(3 * i) + 1] * at[(3 * k) + 1];
                        made.Second[i, k] += weight * at[(3 * i) + 2] * at[(3 * k) + 2];
                        made.Mixed[i, k] += weight * at[(3 * i) + 2] * at[3 * k];
                    }
                }
            }

            return made;
        }
    }
}
