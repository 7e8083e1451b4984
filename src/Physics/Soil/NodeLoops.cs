using System.Numerics;
using System.Runtime.CompilerServices;

namespace Litterfall.Physics.Soil;

/// <summary>Sums and largest values over the nodes, several at once.</summary>
internal static class NodeLoops
{
    // A head is known to its last digit only; times the conductance of a long step that is what no
    // iteration mends.
    private const double RoundOff = 1e-15;

    /// <summary>How far an equation is off beyond its round-off, as θ.</summary>
    /// <param name="residual">What it misses, m.</param>
    /// <param name="diagonal">Its slope.</param>
    /// <param name="head">Head of its node, m.</param>
    /// <param name="perWidth">One over the thickness of the node, 1/m.</param>
    public static double Miss(double residual, double diagonal, double head, double perWidth) =>
        Math.Max(0.0, Math.Abs(residual) - (RoundOff * diagonal * Math.Abs(head))) * perWidth;

    /// <summary>Sum of squares of the misses by thickness, and the largest, over the first nodes.</summary>
    /// <param name="arrays">The iterate.</param>
    /// <param name="count">How many nodes.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static (double Sum, double Worst) Misses(ColumnArrays arrays, int count)
    {
        var (residual, diagonal, head) = (arrays.Residual, arrays.Diagonal, arrays.Head);
        var (width, perWidth) = (arrays.Width, arrays.PerWidth);
        var sums = Vector<double>.Zero;
        var most = Vector<double>.Zero;
        var roundOff = new Vector<double>(RoundOff);
        int i = 0;
        for (; i <= count - Vector<double>.Count; i += Vector<double>.Count)
        {
            var noise = roundOff * new Vector<double>(diagonal, i) * Vector.Abs(new Vector<double>(head, i));
            var over = Vector.Abs(new Vector<double>(residual, i)) - noise;
            var miss = Vector.Max(Vector<double>.Zero, over) * new Vector<double>(perWidth, i);
            sums += miss * miss * new Vector<double>(width, i);
            most = Vector.Max(most, miss);
        }

        double sum = Vector.Sum(sums);
        double worst = Largest(most);
        for (; i < count; i++)
        {
            double miss = Miss(residual[i], diagonal[i], head[i], perWidth[i]);
            sum += miss * miss * width[i];
            worst = Math.Max(worst, miss);
        }

        return (sum, worst);
    }

    /// <summary>The largest of some numbers.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static double Largest(double[] values)
    {
        var most = new Vector<double>(double.NegativeInfinity);
        int i = 0;
        for (; i <= values.Length - Vector<double>.Count; i += Vector<double>.Count)
        {
            most = Vector.Max(most, new Vector<double>(values, i));
        }

        double largest = Largest(most);
        for (; i < values.Length; i++)
        {
            largest = Math.Max(largest, values[i]);
        }

        return largest;
    }

    /// <summary>
    /// The largest bend of a node's water content in a step, as θ: its change less that at the last rate, or
    /// the whole change if that is more and asked for.
    /// </summary>
    /// <param name="arrays">The step.</param>
    /// <param name="nodes">First node, and the one after the last.</param>
    /// <param name="seconds">Length of the step, s.</param>
    /// <param name="wholeChange">1 where the whole change counts, too; else 0.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static double Bend(
        ColumnArrays arrays,
        (int From, int To) nodes,
        double seconds,
        double wholeChange
    )
    {
        var (water, old, rate, perWidth) = (arrays.Water, arrays.OldWater, arrays.Rate, arrays.PerWidth);
        var most = Vector<double>.Zero;
        int i = nodes.From;
        for (; i <= nodes.To - Vector<double>.Count; i += Vector<double>.Count)
        {
            var change = new Vector<double>(water, i) - new Vector<double>(old, i);
            var bend = Vector.Abs(change - (seconds * new Vector<double>(rate, i)));
            bend = Vector.Max(bend, wholeChange * Vector.Abs(change));
            most = Vector.Max(most, bend * new Vector<double>(perWidth, i));
        }

        double worst = Largest(most);
        for (; i < nodes.To; i++)
        {
            double change = water[i] - old[i];
            double bend = Math.Max(Math.Abs(change - (seconds * rate[i])), wholeChange * Math.Abs(change));
            worst = Math.Max(worst, bend * perWidth[i]);
        }

        return worst;
    }

    private static double Largest(Vector<double> values)
    {
        double largest = values[0];
        for (int i = 1; i < Vector<double>.Count; i++)
        {
            largest = Math.Max(largest, values[i]);
        }

        return largest;
    }
}
