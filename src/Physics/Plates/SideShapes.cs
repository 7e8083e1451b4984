using Litterfall.Physics.Numerics;

namespace Litterfall.Physics.Plates;

/// <summary>How the two ends of a side of a pane are held.</summary>
internal enum SideEnds
{
    /// <summary>Both ends rest; shapes that are alike from both ends.</summary>
    BothHeld,

    /// <summary>Both ends are free; shapes that are alike from both ends.</summary>
    FreeAlike,

    /// <summary>The end at −1 rests, the other is free.</summary>
    LowHeld,

    /// <summary>Both ends are free.</summary>
    Free,
}

/// <summary>
/// Shapes along one side of a pane, from −1 to 1, made of Legendre's polynomials so that each meets how the
/// ends are held: P(n+2) − P(n) is 0 at both ends, P(n+1) + P(n) at the lower one.
/// </summary>
internal sealed class SideShapes
{
    /// <summary>Points of the rule: exact to degree 63, and no product of two shapes has more.</summary>
    private const int Points = 32;
    private readonly SideEnds ends;

    private SideShapes(SideEnds ends, int count)
    {
        this.ends = ends;
        Count = count;
        None = new double[count, count];
        First = new double[count, count];
        Second = new double[count, count];
        Mixed = new double[count, count];
    }

    /// <summary>How many shapes.</summary>
    public int Count { get; }

    /// <summary>Integrals of f g over the side.</summary>
    public double[,] None { get; }

    /// <summary>Integrals of f′ g′.</summary>
    public double[,] First { get; }

    /// <summary>Integrals of f″ g″.</summary>
    public double[,] Second { get; }

    /// <summary>Integrals of f″ g.</summary>
    public double[,] Mixed { get; }

    private int Degrees => (2 * Count) + 3;

    /// <summary>The shapes with their integrals, exact by Gauss's rule.</summary>
    /// <param name="ends">How the ends are held.</param>
    /// <param name="count">How many shapes.</param>
    public static SideShapes Of(SideEnds ends, int count)
    {
        var made = new SideShapes(ends, count);
        var rule = GaussLegendre.Of(Points);
        Span<double> at = stackalloc double[3 * count];
        for (int g = 0; g < rule.Points.Length; g++)
        {
            made.At((2.0 * rule.Points[g]) - 1.0, at);
            double weight = 2.0 * rule.Weights[g];
            for (int i = 0; i < count; i++)
            {
                for (int k = 0; k < count; k++)
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

    /// <summary>Value and two derivatives of each shape at a place.</summary>
    /// <param name="x">The place, −1 to 1.</param>
    /// <param name="into">Three numbers for each shape.</param>
    public void At(double x, Span<double> into)
    {
        int most = Degrees;
        Span<double> p = stackalloc double[3 * most];
        p.Clear();
        p[0] = 1.0;
        p[3] = x;
        p[4] = 1.0;
        for (int k = 1; k + 1 < most; k++)
        {
            double f = (2.0 * k) + 1.0;
            p[3 * (k + 1)] = ((f * x * p[3 * k]) - (k * p[3 * (k - 1)])) / (k + 1);
            p[(3 * (k + 1)) + 1] = p[(3 * (k - 1)) + 1] + (f * p[3 * k]);
            p[(3 * (k + 1)) + 2] = p[(3 * (k - 1)) + 2] + (f * p[(3 * k) + 1]);
        }

        for (int i = 0; i < Count; i++)
        {
            for (int d = 0; d < 3; d++)
            {
                into[(3 * i) + d] = ends switch
                {
                    SideEnds.BothHeld => p[(3 * ((2 * i) + 2)) + d] - p[(6 * i) + d],
                    SideEnds.FreeAlike => p[(6 * i) + d],
                    SideEnds.LowHeld => p[(3 * (i + 1)) + d] + p[(3 * i) + d],
                    _ => p[(3 * i) + d],
                };
            }
        }
    }

    /// <summary>Mean of each shape over a stretch of the side.</summary>
    /// <param name="from">Its start, −1 to 1.</param>
    /// <param name="to">Its end.</param>
    public double[] Mean(double from, double to)
    {
        var rule = GaussLegendre.Of(Points);
        double[] mean = new double[Count];
        Span<double> at = stackalloc double[3 * Count];
        for (int g = 0; g < rule.Points.Length; g++)
        {
            At(from + ((to - from) * rule.Points[g]), at);
            for (int i = 0; i < Count; i++)
            {
                mean[i] += rule.Weights[g] * at[3 * i];
            }
        }

        return mean;
    }
}
