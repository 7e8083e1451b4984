namespace Litterfall.Physics.Crew;

/// <summary>
/// Kelvin's relation between the matric potential of water in a pore and the relative humidity of the air in
/// balance with it: RH = exp(ψ Vw/(R T)). Thermodynamics; pure water, no salts.
/// </summary>
public static class Kelvin
{
    // Water at 20 °C: density 998.2 kg/m³ (recalled), hence 1.805e-5 m³/mol. It changes by 1 % from 0 to 45
    // °C.
    private const double WaterDensityAtTwentyCelsius = 998.2;
    private const double MolarVolume = Constants.WaterMolarMass / WaterDensityAtTwentyCelsius;

    /// <summary>Relative humidity in balance with a potential.</summary>
    /// <param name="potentialPascals">Matric potential ψ, Pa, 0 or negative.</param>
    /// <param name="temperatureKelvin">Temperature, K, 263 to 323.</param>
    /// <returns>Relative humidity, 0 to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of range.</exception>
    public static double RelativeHumidity(double potentialPascals, double temperatureKelvin)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThan(potentialPascals, 0.0);
        ThrowIfNotLivable(temperatureKelvin);
        return Math.Exp(potentialPascals * MolarVolume / (Constants.MolarGasConstant * temperatureKelvin));
    }

    private static void ThrowIfNotLivable(double temperatureKelvin)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(temperatureKelvin, 263.0);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(temperatureKelvin, 323.0);
    }
}
