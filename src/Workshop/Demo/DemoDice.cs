namespace Litterfall.Workshop.Demo;

/// <summary>Chance of the demo: the same numbers on every machine.</summary>
/// <param name="seed">Where it begins.</param>
internal sealed class DemoDice(uint seed)
{
    private uint state = seed;

    /// <summary>The next number from one end to the other.</summary>
    public double Between(double low, double high) => low + (high - low) * Next();

    /// <summary>The next whole number below a limit.</summary>
    public int Below(int limit) => (int)(Next() * limit);

    // Numerical Recipes' quick generator (Press et al. 1992, recalled); good enough for invented hours.
    private double Next()
    {
        state = unchecked(state * 1664525u + 1013904223u);
        return (state >> 8) / (double)(1 << 24);
    }
}
