using System.Runtime.CompilerServices;

namespace Litterfall.Physics.Plates;

/// <summary>The summed Lévy series of one pane and one load, and the search for its extremes.</summary>
internal sealed class LevyScan
{
    // The terms of the moments fall off as 1/m³, so 40 odd terms leave 2e-5 of the value; a long low pane
    // needs terms until α·b is large, hence the share of the aspect ratio.
    private const int FewestTerms = 40;
    private const int MostTerms = 400;
    private const double TermsPerAspect = 8.0;
    private const int CellsAcross = 24;
    private const int CellsUp = 48;
    private const int Zooms = 6;

    // Marked methods are compiled for speed at once: a check solves a few dozen panes and then ends, too
    // short a
    // life for the runtime to find out by itself.
    private readonly PlatePane pane;
    private readonly LevyMode[] modes;
    private readonly double[] alphas;
    private readonly double[] across;
    private readonly double[] up;
    private readonly double[] twist;

    private LevyScan(in PlatePane pane, int terms)
    {
        this.pane = pane;
        modes = new LevyMode[terms];
        alphas = new double[terms];
        across = new double[terms];
        up = new double[terms];
        twist = new double[terms];
    }

    public static LevyScan Of(in PlatePane pane, LoadShape load)
    {
        double wanted = FewestTerms + (TermsPerAspect * pane.WidthMeters / pane.HeightMeters);
        var scan = new LevyScan(pane, (int)Math.Min(MostTerms, wanted));
        for (int k = 0; k < scan.modes.Length; k++)
        {
            double alpha = ((2 * k) + 1) * Math.PI / pane.WidthMeters;
            scan.alphas[k] = alpha;
            scan.modes[k] = LevyMode.Solve(alpha, pane, load);
        }

        return scan;
    }

    public PlateResult Result()
    {
        Spot best = Coarse(out double topEdgeMoment);
        best = Zoom(best);
        (double deflection, double deflectionY) = LargestDeflection();
        double perMoment = 6.0 / (pane.ThicknessMeters * pane.ThicknessMeters);
        return new PlateResult(
            perMoment * best.Moment,
            best.X,
            best.Y,
            perMoment * topEdgeMoment,
            deflection,
            deflectionY
        );
    }

    public PlateMoments At(double x, double y)
    {
        Row(y);
        PlateMoments moments = Sum(x);
        return moments with { DeflectionMeters = Deflection(x, y) };
    }

    private Spot Coarse(out double topEdgeMoment)
    {
        var best = new Spot(0.0, 0.0, -1.0);
        double top = 0.0;
        double[] sines = Waves(Math.Sin);
        double[] cosines = Waves(Math.Cos);
        for (int j = 0; j <= CellsUp; j++)
        {
            double y = HeightOf(j);
            Row(y);
            double rowBest = 0.0;
            for (int i = 0; i <= CellsAcross; i++)
            {
                int start = i * modes.Length;
                PlateMoments sum = Sum(
                    sines.AsSpan(start, modes.Length),
                    cosines.AsSpan(start, modes.Length)
                );
                double moment = sum.LargestPrincipalNewtons;
                rowBest = Math.Max(rowBest, moment);
                best = moment > best.Moment ? new Spot(XOf(i), y, moment) : best;
            }

            top = j == CellsUp ? rowBest : top;
        }

        topEdgeMoment = top;
        return best;
    }

    private Spot Zoom(Spot best)
    {
        double stepX = 0.25 * pane.WidthMeters / CellsAcross;
        double stepY = 0.25 * Math.PI * pane.HeightMeters / CellsUp;
        for (int zoom = 0; zoom < Zooms; zoom++)
        {
            Spot center = best;
            for (int j = -1; j <= 1; j++)
            {
                double y = Math.Clamp(center.Y + (j * stepY), 0.0, pane.HeightMeters);
                Row(y);
                for (int i = -1; i <= 1; i++)
                {
                    double x = Math.Clamp(center.X + (i * stepX), 0.0, 0.5 * pane.WidthMeters);
                    double moment = Sum(x).LargestPrincipalNewtons;
                    best = moment > best.Moment ? new Spot(x, y, moment) : best;
                }
            }

            stepX *= 0.5;
            stepY *= 0.5;
        }

        return best;
    }

    // The largest deflection of a pane pressed one way lies on its middle line x = a/2 by symmetry.
    private (double Meters, double YMeters) LargestDeflection()
    {
        double x = 0.5 * pane.WidthMeters;
        double best = -1.0;
        double at = 0.0;
        for (int j = 0; j <= CellsUp; j++)
        {
            (best, at) = Larger(best, at, x, HeightOf(j));
        }

        double step = 0.25 * Math.PI * pane.HeightMeters / CellsUp;
        for (int zoom = 0; zoom < Zooms; zoom++)
        {
            double center = at;
            (best, at) = Larger(best, at, x, Math.Max(center - step, 0.0));
            (best, at) = Larger(best, at, x, Math.Min(center + step, pane.HeightMeters));
            step *= 0.5;
        }

        return (best, at);
    }

    private (double Best, double At) Larger(double best, double at, double x, double y)
    {
        double size = Math.Abs(Deflection(x, y));
        return size > best ? (size, y) : (best, at);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private double Deflection(double x, double y)
    {
        double sum = 0.0;
        for (int k = 0; k < modes.Length; k++)
        {
            double alpha = alphas[k];
            double scale = 4.0 / (alpha * pane.WidthMeters * alpha * alpha * alpha * alpha);
            sum += scale * modes[k].At(y).Value * Math.Sin(alpha * x);
        }

        return sum / pane.StiffnessNewtonMeters;
    }

    // Amplitudes of Mx = −D(w_xx + ν w_yy), My = −D(w_yy + ν w_xx), Mxy = D(1 − ν) w_xy at one height.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Row(double y)
    {
        double nu = pane.PoissonRatio;
        for (int k = 0; k < modes.Length; k++)
        {
            double alpha = alphas[k];
            double scale = 4.0 / (alpha * pane.WidthMeters * alpha * alpha);
            ModeValue f = modes[k].At(y);
            across[k] = scale * (f.Value - (nu * f.Second));
            up[k] = scale * ((nu * f.Value) - f.Second);
            twist[k] = scale * (1.0 - nu) * f.First;
        }
    }

    private PlateMoments Sum(double x)
    {
        Span<double> sines = stackalloc double[modes.Length];
        Span<double> cosines = stackalloc double[modes.Length];
        for (int k = 0; k < modes.Length; k++)
        {
            (sines[k], cosines[k]) = Math.SinCos(alphas[k] * x);
        }

        return Sum(sines, cosines);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private PlateMoments Sum(ReadOnlySpan<double> sines, ReadOnlySpan<double> cosines)
    {
        double mx = 0.0,
            my = 0.0,
            mxy = 0.0;
        for (int k = 0; k < sines.Length; k++)
        {
            mx += across[k] * sines[k];
            my += up[k] * sines[k];
            mxy += twist[k] * cosines[k];
        }

        return new PlateMoments(mx, my, mxy, 0.0);
    }

    private double[] Waves(Func<double, double> wave)
    {
        var values = new double[(CellsAcross + 1) * modes.Length];
        for (int i = 0; i <= CellsAcross; i++)
        {
            for (int k = 0; k < modes.Length; k++)
            {
                values[(i * modes.Length) + k] = wave(alphas[k] * XOf(i));
            }
        }

        return values;
    }

    private double XOf(int i) => 0.5 * pane.WidthMeters * i / CellsAcross;

    // Heights crowd at both edges, where the corner twist of a tall pane lives.
    private double HeightOf(int j) => 0.5 * pane.HeightMeters * (1.0 - Math.Cos(Math.PI * j / CellsUp));

    private readonly record struct Spot(double X, double Y, double Moment);
}
