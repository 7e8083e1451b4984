namespace Litterfall.Physics.Crew;

/// <summary>Rate-modifying factors of the Rothamsted carbon model.</summary>
public static class RothC
{
    // Coleman and Jenkinson, RothC-26.3 (users' guide; released code read):
    // a = 47.91 / (1 + exp(106.06 / (T + 18.27))), zero below −5 °C.
    private const double Ceiling = 47.91;
    private const double Steepness = 106.06;
    private const double Offset = 18.27;
    private const double Freezing = -5.0;

    /// <summary>
    /// Temperature factor of decomposition, relative to a field at about 9.3 °C. Only ratios between two
    /// temperatures carry over to litter whose decay constant was measured elsewhere.
    /// </summary>
    /// <param name="temperatureCelsius">Temperature, °C, −50 to 60; fitted to monthly means of 0 to about 30
    /// °C.</param>
    /// <returns>Factor without unit; 0 below −5 °C.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is out of range.</exception>
    public static double TemperatureFactor(double temperatureCelsius)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(temperatureCelsius, -50.0);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(temperatureCelsius, 60.0);
        return temperatureCelsius < Freezing
            ? 0.0
            : Ceiling / (1.0 + Math.Exp(Steepness / (temperatureCelsius + Offset)));
    }
}
