using System.Runtime.CompilerServices;
using Litterfall.Physics.Numerics;

namespace Litterfall.Physics.Plates;

/// <summary>
/// One sine term of Lévy's solution. With α = mπ/a and η = αy the deflection of the term is
/// 4 f(η) / (mπ α⁴ D) · sin αx, where f'''' − 2f'' + f = p, f in pascals.
/// </summary>
/// <remarks>
/// f is the bounded answer of an endless strip to the line and the steps of the load, which is smooth across
/// every step by construction, plus four end terms in e^(−η), ηe^(−η), e^(−ζ), ζe^(−ζ), ζ = αb − η, that meet
/// the conditions of the bottom and top edge. No term grows, so high terms lose no digits.
/// </remarks>
internal readonly struct LevyMode
{
    private readonly double alpha;
    private readonly double heightEta;
    private readonly LoadShape load;
    private readonly double bottom;
    private readonly double bottomEta;
    private readonly double top;
    private readonly double topZeta;

    private LevyMode(double alpha, double length, LoadShape load, ReadOnlySpan<double> ends)
    {
        this.alpha = alpha;
        heightEta = length;
        this.load = load;
        bottom = ends[0];
        bottomEta = ends[1];
        top = ends[2];
        topZeta = ends[3];
    }

    public static LevyMode Solve(double alpha, in PlatePane pane, LoadShape load)
    {
        double length = alpha * pane.HeightMeters;
        Span<double> matrix = stackalloc double[16];
        Span<double> right = stackalloc double[4];
        ModeValue atBottom = Strip(alpha, 0.0, load);
        ModeValue atTop = Strip(alpha, pane.HeightMeters, load);
        right[0] = -atBottom.Value;
        right[1] = -atBottom.Second;
        bool free = pane.Top == PlateEdge.TopFree;
        double nu = pane.PoissonRatio;
        right[2] = free ? (nu * atTop.Value) - atTop.Second : -atTop.Value;
        right[3] = free ? ((2.0 - nu) * atTop.First) - atTop.Third : -atTop.Second;
        for (int term = 0; term < 4; term++)
        {
            ModeValue low = EndTerm(term, 0.0, length);
            ModeValue high = EndTerm(term, length, length);
            matrix[term] = low.Value;
            matrix[4 + term] = low.Second;
            matrix[8 + term] = free ? high.Second - (nu * high.Value) : high.Value;
            matrix[12 + term] = free ? high.Third - ((2.0 - nu) * high.First) : high.Second;
        }

        if (!DenseSolve.TrySolve(matrix, right))
        {
            throw new InvalidOperationException("The edge conditions have no single solution.");
        }

        return new LevyMode(alpha, length, load, right);
    }

    /// <summary>f and its first three derivatives with respect to η at height y.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public ModeValue At(double yMeters)
    {
        double eta = alpha * yMeters;
        double zeta = heightEta - eta;
        double low = Math.Exp(-eta);
        double high = Math.Exp(-zeta);
        ModeValue strip = Strip(alpha, yMeters, load);
        return new ModeValue(
            strip.Value + ((bottom + (bottomEta * eta)) * low) + ((top + (topZeta * zeta)) * high),
            strip.First
                + ((bottomEta - bottom - (bottomEta * eta)) * low)
                - ((topZeta - top - (topZeta * zeta)) * high),
            strip.Second
                + ((bottom - (2.0 * bottomEta) + (bottomEta * eta)) * low)
                + ((top - (2.0 * topZeta) + (topZeta * zeta)) * high),
            strip.Third
                + (((3.0 * bottomEta) - bottom - (bottomEta * eta)) * low)
                - (((3.0 * topZeta) - top - (topZeta * zeta)) * high)
        );
    }

    private static ModeValue EndTerm(int term, double eta, double length)
    {
        bool fromTop = term >= 2;
        double s = fromTop ? length - eta : eta;
        double sign = fromTop ? -1.0 : 1.0;
        double e = Math.Exp(-s);
        return term % 2 == 0
            ? new ModeValue(e, -sign * e, e, -sign * e)
            : new ModeValue(s * e, sign * (1.0 - s) * e, (s - 2.0) * e, sign * (3.0 - s) * e);
    }

    // Bounded solutions of f'''' − 2f'' + f = step(z) and = ramp(z), continuous to the third derivative:
    // step: 1/2 + sgn(z)[1/2 − (1/2 + |z|/4)e^(−|z|)];  ramp: (z + |z|)/2 + (3/4 + |z|/4)e^(−|z|).
    private static ModeValue Strip(double alpha, double yMeters, LoadShape load)
    {
        double f = load.StartPascals + (load.StartSlope * yMeters);
        double f1 = load.StartSlope / alpha;
        double f2 = 0.0;
        double f3 = 0.0;
        foreach (LoadStep step in load.Steps)
        {
            double z = alpha * (yMeters - step.YMeters);
            double u = Math.Abs(z);
            double side = z < 0.0 ? -1.0 : 1.0;
            double e = Math.Exp(-u);
            double ramp = step.SlopeChange / alpha;
            f += step.Jump * (0.5 + (side * (0.5 - ((0.5 + (0.25 * u)) * e))));
            f1 += step.Jump * 0.25 * (1.0 + u) * e;
            f2 -= step.Jump * 0.25 * z * e;
            f3 += step.Jump * 0.25 * (u - 1.0) * e;
            f += ramp * ((0.5 * (z + u)) + ((0.75 + (0.25 * u)) * e));
            f1 += ramp * (0.5 + (side * (0.5 - ((0.5 + (0.25 * u)) * e))));
            f2 += ramp * 0.25 * (1.0 + u) * e;
            f3 -= ramp * 0.25 * z * e;
        }

        return new ModeValue(f, f1, f2, f3);
    }
}

/// <summary>A function value with three derivatives.</summary>
internal readonly record struct ModeValue(double Value, double First, double Second, double Third);
