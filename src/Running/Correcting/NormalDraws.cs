namespace Litterfall.Running.Correcting;

/// <summary>
/// Standard normal numbers dealt by a seed, the same on every machine: one from each of as many equally
/// likely parts as there are members (Latin hypercube, McKay and others 1979, recalled), with mean 0 and
/// variance 1 exactly.
/// </summary>
public static class NormalDraws
{
    /// <summary>Numbers of the members.</summary>
    /// <param name="members">How many.</param>
    /// <param name="seed">Seed.</param>
    /// <param name="place">Place among the rows of one seed.</param>
    public static double[] Deal(int members, int seed, int place)
    {
        var state = ((ulong)seed * 0x9E3779B97F4A7C15UL) + ((ulong)(place + 1) * 0xD1B54A32D192ED03UL);
        var order = Enumerable.Range(0, members).ToArray();
        for (var i = members - 1; i > 0; i--)
        {
            var j = (int)(Next(ref state) * (i + 1));
            (order[i], order[j]) = (order[j], order[i]);
        }

        var drawn = new double[members];
        for (var i = 0; i < members; i++)
        {
            drawn[i] = Quantile((order[i] + Math.Clamp(Next(ref state), 1e-9, 1 - 1e-9)) / members);
        }

        return Evened(drawn);
    }

    private static double[] Evened(double[] drawn)
    {
        var mean = drawn.Average();
        var spread = Math.Sqrt(drawn.Sum(d => (d - mean) * (d - mean)) / Math.Max(1, drawn.Length - 1));
        return [.. drawn.Select(d => spread > 0 ? (d - mean) / spread : 0)];
    }

    /// <summary>
    /// The standard normal number below which a share lies, right to seven digits (Wichura 1988, algorithm
    /// AS 241, recalled).
    /// </summary>
    /// <param name="share">The share, above 0 and below 1.</param>
    public static double Quantile(double share)
    {
        var q = share - 0.5;
        if (Math.Abs(q) <= 0.425)
        {
            var near = 0.180625 - (q * q);
            return q
                * ((((((59.109374720 * near) + 159.29113202) * near) + 50.434271938) * near) + 3.3871327179)
                / ((((((67.187563600 * near) + 78.757757664) * near) + 17.895169469) * near) + 1.0);
        }

        var r = Math.Sqrt(-Math.Log(q < 0 ? share : 1 - share));
        double far;
        if (r <= 5)
        {
            r -= 1.6;
            far =
                ((((((0.17023821103 * r) + 1.3067284816) * r) + 2.7568153900) * r) + 1.4234372777)
                / ((((0.12021132975 * r) + 0.73700164250) * r) + 1.0);
        }
        else
        {
            r -= 5;
            far =
                ((((((0.017337203997 * r) + 0.42868294337) * r) + 3.0812263860) * r) + 6.6579051150)
                / ((((0.012258202635 * r) + 0.24197894225) * r) + 1.0);
        }

        return q < 0 ? -far : far;
    }

    /// <summary>A number from 0 to 1 by the mixing function of Steele and others 2014 (recalled).</summary>
    private static double Next(ref ulong state)
    {
        state += 0x9E3779B97F4A7C15UL;
        var z = state;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EBUL;
        z ^= z >> 31;
        return (z >> 11) * (1.0 / (1UL << 53));
    }
}
