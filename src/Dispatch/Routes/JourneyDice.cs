using Litterfall.Running.Correcting;

namespace Litterfall.Dispatch.Routes;

/// <summary>
/// Shares from 0 to 1 dealt by a seed, the same on every machine: for each quantity one from each of as many
/// equally likely parts as there are journeys (Latin hypercube, McKay and others 1979, recalled), in an order
/// of its own.
/// </summary>
internal sealed class JourneyDice
{
    private const double Least = 1e-9;
    private readonly double[][] shares;

    public JourneyDice(int journeys, int quantities, int seed)
    {
        shares = new double[quantities][];
        // Mixing function of Steele, Lea and Flood 2014.
        var state = (ulong)seed * 0x9E3779B97F4A7C15UL;
        for (var q = 0; q < quantities; q++)
        {
            var row = new double[journeys];
            for (var i = 0; i < journeys; i++)
            {
                row[i] = (i + Math.Clamp(Next(ref state), Least, 1 - Least)) / journeys;
            }

            for (var i = journeys - 1; i > 0; i--)
            {
                var j = (int)(Next(ref state) * (i + 1));
                (row[i], row[j]) = (row[j], row[i]);
            }

            shares[q] = row;
        }
    }

    /// <summary>A share.</summary>
    public double Share(int quantity, int journey) => shares[quantity][journey];

    /// <summary>A standard normal number.</summary>
    public double Normal(int quantity, int journey) => NormalDraws.Quantile(shares[quantity][journey]);

    /// <summary>A factor about 1 with a standard error, cut off where a piece would be thrown away.</summary>
    public double Factor(int quantity, int journey, double error)
    {
        var most = RouteChoices.MostErrors;
        return 1 + (error * Math.Clamp(Normal(quantity, journey), -most, most));
    }

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
