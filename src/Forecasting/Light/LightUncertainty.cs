using Litterfall.Forecasting.Coefficients;

namespace Litterfall.Forecasting.Light;

/// <summary>
/// Uncertainty of computed light: shares at one standard deviation, summed by squares, doubled (GUM, JCGM
/// 100; the parts
/// are our own estimates).
/// </summary>
internal static class LightUncertainty
{
    /// <summary>Between points of one map: what does not scale the whole, k = 2.</summary>
    /// <param name="with">The parts.</param>
    public static double Relative(LightUncertaintyCoefficients with) =>
        2.0 * Root(with.Surroundings.UseSi(), with.Geometry.UseSi(), with.Numerics.UseSi());

    /// <summary>Of the whole, k = 2.</summary>
    /// <param name="lamp">What is known of the lamp.</param>
    /// <param name="hasGlass">True where most of the light comes through a pane.</param>
    /// <param name="with">The parts.</param>
    public static double Absolute(LampKnowledge lamp, bool hasGlass, LightUncertaintyCoefficients with)
    {
        double flux = (lamp.HasFile ? with.FluxOfFile : with.FluxOfLabel).UseSi();
        double spread = (lamp.HasFile ? with.SpreadOfFile : with.SpreadOfLabel).UseSi();
        double photons = lamp.HasPhotons
            ? 0.0
            : (lamp.HasSpectrum ? with.PhotonsOfSpectrum : with.PhotonsOfKind).UseSi();
        double lid = hasGlass
            ? Root(with.PaneIndex.UseSi(), with.PaneDirt.UseSi(), with.PaneDrops.UseSi())
            : with.OpenLid.UseSi();
        return 2.0
            * Root(
                flux,
                spread,
                photons,
                lid,
                with.Surroundings.UseSi(),
                with.Geometry.UseSi(),
                with.Numerics.UseSi()
            );
    }

    /// <summary>
    /// Of the whole after a reading, k = 2: the meter, the relative part, and the photons of a lux.
    /// </summary>
    /// <param name="meter">Of the meter, k = 2.</param>
    /// <param name="lamp">What is known of the lamp.</param>
    /// <param name="with">The parts.</param>
    public static double Measured(double meter, LampKnowledge lamp, LightUncertaintyCoefficients with) =>
        Root(meter, Relative(with), (lamp.HasSpectrum ? with.ReadWithSpectrum : with.ReadWithout).UseSi());

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
