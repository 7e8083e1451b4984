using Litterfall.Physics.Numerics;

namespace Litterfall.Physics.Plates;

/// <summary>What holds a pane that is pushed.</summary>
public enum PushedHold
{
    /// <summary>The two ends of its width; bottom and top are free.</summary>
    Ends,

    /// <summary>The two ends of its width and its bottom; its top is free.</summary>
    EndsAndBottom,

    /// <summary>Its four corners.</summary>
    Corners,
}

/// <summary>A push on a square in the middle of the width.</summary>
/// <param name="ForceNewtons">Force, N, 0 or more.</param>
/// <param name="SideMeters">Side of the square, m, above 0.</param>
/// <param name="HeightShare">Height of its middle as a share of the pane's, 0 to 1; at 0 and 1 it ends at the
/// edge.</param>
public readonly record struct HandPush(double ForceNewtons, double SideMeters, double HeightShare);

/// <summary>
/// A thin pane under a push on a small square: Ritz's method on Kirchhoff's bending energy with Legendre's
/// polynomials (Timoshenko and Woinowsky-Krieger 1959, chapter 10, recalled). An estimate, not a structural
/// design; it rounds the stress under the push over about a twentieth of the pane.
/// </summary>
public static class PushedPlate
{
    private const int AlikeCount = 12;
    private const int Count = 20;
    private const int CellsAcross = 20;
    private const int CellsUp = 40;

    /// <summary>Share of the half sides at the corners where the point support itself shows.</summary>
    private const double NearCorner = 0.9;

    /// <summary>Largest bending stress, and largest deflection.</summary>
    /// <param name="pane">The pane; how its top is held does not count.</param>
    /// <param name="hold">What holds it.</param>
    /// <param name="push">The push.</param>
    /// <returns>Stress, Pa, and deflection, m.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of range.</exception>
    public static (double StressPascals, double SagMeters) Solve(
        PlatePane pane,
        PushedHold hold,
        HandPush push
    )
    {
        pane.ThrowIfImpossible(nameof(pane));
        ArgumentOutOfRangeException.ThrowIfNegative(push.ForceNewtons, nameof(push));
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(push.SideMeters, nameof(push));
        var across = SideShapes.Of(
            hold == PushedHold.Corners ? SideEnds.FreeAlike : SideEnds.BothHeld,
            AlikeCount
        );
        var up = SideShapes.Of(hold == PushedHold.EndsAndBottom ? SideEnds.LowHeld : SideEnds.Free, Count);
        var bent = new Bent(pane, across, up, hold == PushedHold.Corners);
        bent.Push(push);
        return bent.Worst();
    }

    /// <summary>The pane, its shapes and how much of each there is.</summary>
    private sealed class Bent(PlatePane pane, SideShapes across, SideShapes up, bool onCorners)
    {
        private readonly double a = 0.5 * pane.WidthMeters;
        private readonly double b = 0.5 * pane.HeightMeters;
        private readonly int skipped = onCorners ? 2 : 0;
        private double[] shares = [];

        public void Push(HandPush push)
        {
            int n = (across.Count * up.Count) - skipped;
            double[] matrix = new double[n * n];
            for (int p = 0; p < n; p++)
            {
                for (int q = p; q < n; q++)
                {
                    matrix[(p * n) + q] = matrix[(q * n) + p] = Energy(p + skipped, q + skipped);
                }
            }

            double[] right = Work(push)[skipped..];
            if (!DenseSolve.TrySolve(matrix, right))
            {
                throw new InvalidOperationException("The bending energy of a pane has a single least value.");
            }

            shares = [.. new double[skipped], .. right];
        }

        private double Energy(int p, int q)
        {
            var (i, j) = (p / up.Count, p % up.Count);
            var (k, l) = (q / up.Count, q % up.Count);
            double bent =
                (across.Second[i, k] * up.None[j, l] * b / (a * a * a))
                + (across.None[i, k] * up.Second[j, l] * a / (b * b * b));
            double mixed = (across.Mixed[i, k] * up.Mixed[l, j]) + (across.Mixed[k, i] * up.Mixed[j, l]);
            double twist = 2.0 * (1.0 - pane.PoissonRatio) * across.First[i, k] * up.First[j, l];
            return pane.StiffnessNewtonMeters * (bent + (((pane.PoissonRatio * mixed) + twist) / (a * b)));
        }

        /// <summary>
        /// What the push does on each shape; on corners less the level or tilted plane through them.
        /// </summary>
        private double[] Work(HandPush push)
        {
            double half = Math.Min(1.0, 0.5 * push.SideMeters / b);
            double wide = Math.Min(1.0, 0.5 * push.SideMeters / a);
            double middle = Math.Clamp((2.0 * push.HeightShare) - 1.0, half - 1.0, 1.0 - half);
            double[] x = across.Mean(-wide, wide);
            double[] y = up.Mean(middle - half, middle + half);
            double[] work = new double[x.Length * y.Length];
            for (int p = 0; p < work.Length; p++)
            {
                int j = p % y.Length;
                double plane =
                    !onCorners ? 0.0
                    : j % 2 == 0 ? 1.0
                    : middle;
                work[p] = push.ForceNewtons * ((x[p / y.Length] * y[j]) - plane);
            }

            return work;
        }

        public (double StressPascals, double SagMeters) Worst()
        {
            double moment = 0.0;
            double sag = 0.0;
            for (int i = 0; i <= CellsAcross; i++)
            {
                for (int j = 0; j <= CellsUp; j++)
                {
                    double x = (double)i / CellsAcross;
                    double y = -Math.Cos(Math.PI * j / CellsUp);
                    var at = At(x, y);
                    sag = Math.Max(sag, Math.Abs(at.DeflectionMeters));
                    if (!onCorners || Math.Min(x, Math.Abs(y)) <= NearCorner)
                    {
                        moment = Math.Max(moment, at.LargestPrincipalNewtons);
                    }
                }
            }

            return (6.0 * moment / (pane.ThicknessMeters * pane.ThicknessMeters), sag);
        }

        private PlateMoments At(double x, double y)
        {
            Span<double> px = stackalloc double[3 * across.Count];
            Span<double> py = stackalloc double[3 * up.Count];
            across.At(x, px);
            up.At(y, py);
            double sag = 0.0,
                xx = 0.0,
                yy = 0.0,
                xy = 0.0;
            for (int p = 0; p < shares.Length; p++)
            {
                var (i, j) = (p / up.Count, p % up.Count);
                double plane =
                    !onCorners ? 0.0
                    : j % 2 == 0 ? 1.0
                    : y;
                sag += shares[p] * ((px[3 * i] * py[3 * j]) - plane);
                xx += shares[p] * px[(3 * i) + 2] * py[3 * j];
                yy += shares[p] * px[3 * i] * py[(3 * j) + 2];
                xy += shares[p] * px[(3 * i) + 1] * py[(3 * j) + 1];
            }

            (xx, yy, xy) = (xx / (a * a), yy / (b * b), xy / (a * b));
            double d = pane.StiffnessNewtonMeters;
            double nu = pane.PoissonRatio;
            return new PlateMoments(-d * (xx + (nu * yy)), -d * (yy + (nu * xx)), -d * (1.0 - nu) * xy, sag);
        }
    }
}
