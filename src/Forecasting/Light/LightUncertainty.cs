namespace Litterfall.Forecasting.Light;

/// <summary>
/// Uncertainty of computed light: shares at one standard deviation, summed by squares, doubled (GUM, JCGM
/// 100; the parts
/// are our own estimates).
/// </summary>
internal static class LightUncertainty
{
    private const double Numerics = 0.006;
    private const double Geometry = 0.013;
    private const double Surroundings = 0.03;

    /// <summary>Between points of one map: what does not scale the whole, k = 2.</summary>
    public static double Relative => 2.0 * Root(Surroundings, Geometry, Numerics);

    /// <summary>Of the whole, k = 2.</summary>
    /// <param name="lamp">What is known of the lamp.</param>
    /// <param name="hasGlass">True where most of the light comes through a pane.</param>
    public static double Absolute(LampKnowledge lamp, bool hasGlass)
    {
        double flux = lamp.HasFile ? 0.017 : 0.058;
        double spread = lamp.HasFile ? 0.02 : 0.05;
        double photons =
            lamp.HasPhotons ? 0.0
            : lamp.HasSpectrum ? 0.01
            : 0.03;
        double lid = hasGlass ? Root(0.012, 0.03, 0.04) : 0.02;
        return 2.0 * Root(flux, spread, photons, lid, Surroundings, Geometry, Numerics);
    }

    /// <summary>
    /// Of the whole after a reading, k = 2: the meter, the relative part, and the photons of a lux.
    /// </summary>
    /// <param name="meter">Of the meter, k = 2.</param>
    /// <param name="lamp">What is known of the lamp.</param>
    public static double Measured(double meter, LampKnowledge lamp) =>
        Root(meter, Relative, lamp.HasSpectrum ? 0.02 : 0.06);

    private static double Root(params ReadOnlySpan<double> parts)
    {
        double sum = 0.0;
        foreach (double part in parts)
        {
            sum += part * part;
        }

        return Math.Sqrt(sum);
    }
}

/// <summary>What is known of a lamp beyond its label.</summary>
/// <param name="HasFile">A measured luminaire file.</param>
/// <param name="HasSpectrum">A spectrum.</param>
/// <param name="HasPhotons">A stated photon flux.</param>
internal readonly record struct LampKnowledge(bool HasFile, bool HasSpectrum, bool HasPhotons);
