namespace Litterfall.Running.Demo;

/// <summary>
/// Normal deviates from a seed, the same on every machine: SplitMix64 (Steele, Lea and Flood 2014) and the
/// polar form of Box and Muller (Marsaglia and Bray 1964).
/// </summary>
internal sealed class Chance(ulong seed)
{
    private ulong state = seed;
    private double spare = double.NaN;

    public double Normal()
    {
        if (!double.IsNaN(spare))
        {
            var kept = spare;
            spare = double.NaN;
            return kept;
        }

        while (true)
        {
            var (x, y) = ((2.0 * Even()) - 1.0, (2.0 * Even()) - 1.0);
            var square = (x * x) + (y * y);
            if (square is > 0.0 and < 1.0)
            {
                var factor = Math.Sqrt(-2.0 * Math.Log(square) / square);
                spare = y * factor;
                return x * factor;
            }
        }
    }

    private double Even() => (Next() >> 11) * (1.0 / (1UL << 53));

    private ulong Next()
    {
        state += 0x9E3779B97F4A7C15UL;
        var z = state;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EBUL;
        return z ^ (z >> 31);
    }
}
