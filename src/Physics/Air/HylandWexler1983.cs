namespace Litterfall.Physics.Air;

/// <summary>
/// Saturation pressure over liquid water by Hyland and Wexler (1983), in the form of the ASHRAE Handbook -
/// Fundamentals 2017, chapter 1, equation 6 (recalled), 0 to 200 °C.
/// </summary>
public static class HylandWexler1983
{
    private const double C8 = -5.8002206e3;
    private const double C9 = 1.3914993;
    private const double C10 = -4.8640239e-2;
    private const double C11 = 4.1764768e-5;
    private const double C12 = -1.4452093e-8;
    private const double C13 = 6.5459673;
    private const double VaporGasConstant = 461.524;

    /// <summary>Saturation pressure, Pa.</summary>
    /// <param name="temperatureKelvin">Temperature, K, 273.15 to 473.15.</param>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is out of range.</exception>
    public static double SaturationPascals(double temperatureKelvin)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(temperatureKelvin, 273.0);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(temperatureKelvin, 474.0);
        return Math.Exp(LogSaturation(temperatureKelvin));
    }

    /// <summary>Natural logarithm of the saturation pressure in Pa, without a check of the range.</summary>
    /// <param name="temperatureKelvin">Temperature, K, 200 to 500.</param>
    public static double LogSaturation(double temperatureKelvin)
    {
        double t = temperatureKelvin;
        return (C8 / t) + C9 + (t * (C10 + (t * (C11 + (t * C12))))) + (C13 * Math.Log(t));
    }

    /// <summary>Slope of that logarithm, 1/K.</summary>
    /// <param name="temperatureKelvin">Temperature, K, 200 to 500.</param>
    public static double LogSlope(double temperatureKelvin)
    {
        double t = temperatureKelvin;
        return (-C8 / (t * t)) + C10 + (t * ((2.0 * C11) + (3.0 * t * C12))) + (C13 / t);
    }

    /// <summary>Mass of vapor in a volume of air, kg/m³, as an ideal gas.</summary>
    /// <param name="temperatureKelvin">Temperature, K, 273.15 to 473.15.</param>
    /// <param name="relativeHumidity">Relative humidity, 0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of range.</exception>
    public static double VaporDensity(double temperatureKelvin, double relativeHumidity)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(relativeHumidity);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(relativeHumidity, 1.0);
        return relativeHumidity
            * SaturationPascals(temperatureKelvin)
            / (VaporGasConstant * temperatureKelvin);
    }
}
