namespace Litterfall.Physics.Crew;

/// <summary>Resting metabolic rate of amphibians from mass and temperature (Gillooly et al. 2001).</summary>
public static class Gillooly
{
    // Gillooly et al. 2001, Science 293:2248, as coded in a published library of thermal biology (code read):
    // B = exp(16.68 − 5760/T_K) · M^0.75 / 60, M in grams, B in watts.
    private const double Intercept = 16.68;
    private const double ActivationKelvin = 5760.0;
    private const double MassExponent = 0.75;
    private const double SecondsPerMinute = 60.0;

    /// <summary>
    /// Resting metabolic rate: an upper bound for small frogs. White et al. 2006 (Biol. Lett. 2:125) find
    /// that the mass exponent differs between vertebrate classes, so 0.75 is disputed.
    /// </summary>
    /// <param name="massGrams">Body mass, g, above 0.</param>
    /// <param name="temperatureKelvin">Body temperature, K, 273 to 313.</param>
    /// <returns>Rate, W.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of range.</exception>
    public static double RestingWatts(double massGrams, double temperatureKelvin)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(massGrams);
        ArgumentOutOfRangeException.ThrowIfLessThan(temperatureKelvin, 273.0);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(temperatureKelvin, 313.0);
        return Math.Exp(Intercept - (ActivationKelvin / temperatureKelvin))
            * Math.Pow(massGrams, MassExponent)
            / SecondsPerMinute;
    }
}
