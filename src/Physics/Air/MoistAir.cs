namespace Litterfall.Physics.Air;

/// <summary>
/// Moist air as a mixture of ideal gases; one convention for latent heat in the whole program: vapor carries
/// 2 501 000 + 1860 T, liquid 4186 T J/kg (ASHRAE Handbook - Fundamentals 2017, chapter 1, recalled).
/// Temperatures in °C unless the name says kelvin; w is kilograms of vapor to a kilogram of dry air.
/// </summary>
public static class MoistAir
{
    /// <summary>Gas constant of dry air, J/(kg K).</summary>
    public const double DryAirGasConstant = 287.042;

    /// <summary>Gas constant of water vapor, J/(kg K).</summary>
    public const double VaporGasConstant = 461.524;

    /// <summary>Molar mass of water over that of dry air.</summary>
    public const double MassRatio = 0.621945;

    /// <summary>Heat capacity of dry air, J/(kg K).</summary>
    public const double DryAirHeatCapacity = 1006.0;

    /// <summary>Heat capacity of vapor, J/(kg K).</summary>
    public const double VaporHeatCapacity = 1860.0;

    /// <summary>Heat capacity of liquid water, J/(kg K).</summary>
    public const double LiquidHeatCapacity = 4186.0;

    /// <summary>Enthalpy of vapor at 0 °C over liquid at 0 °C, J/kg.</summary>
    public const double VaporEnthalpyAtZero = 2_501_000.0;

    /// <summary>Standard pressure, Pa.</summary>
    public const double StandardPascals = 101_325.0;

    private const double DriestPascals = 0.01;
    private const double ColdestCelsius = -100.0;

    /// <summary>Pressure at an altitude, Pa: the ASHRAE form of the standard atmosphere (recalled).</summary>
    /// <param name="altitudeMeters">Height over the sea, m, −5000 to 11 000.</param>
    public static double PressureAt(double altitudeMeters) =>
        StandardPascals * Math.Pow(1.0 - (2.25577e-5 * altitudeMeters), 5.2559);

    /// <summary>Enthalpy of vapor, J/kg.</summary>
    /// <param name="celsius">Temperature, °C.</param>
    public static double VaporEnthalpy(double celsius) => VaporEnthalpyAtZero + (VaporHeatCapacity * celsius);

    /// <summary>Enthalpy of liquid water, J/kg.</summary>
    /// <param name="celsius">Temperature, °C.</param>
    public static double LiquidEnthalpy(double celsius) => LiquidHeatCapacity * celsius;

    /// <summary>w from the pressure of the vapor, kg/kg.</summary>
    /// <param name="vaporPascals">Pressure of the vapor, Pa, below the total.</param>
    /// <param name="pascals">Total pressure, Pa.</param>
    public static double HumidityRatio(double vaporPascals, double pascals = StandardPascals) =>
        MassRatio * vaporPascals / (pascals - vaporPascals);

    /// <summary>Pressure of the vapor from w, Pa.</summary>
    /// <param name="humidityRatio">w, kg/kg.</param>
    /// <param name="pascals">Total pressure, Pa.</param>
    public static double VaporPressure(double humidityRatio, double pascals = StandardPascals) =>
        pascals * humidityRatio / (MassRatio + humidityRatio);

    /// <summary>
    /// Saturation pressure over liquid water, Pa, by Hyland and Wexler (1983); over supercooled water below
    /// 0 °C.
    /// </summary>
    /// <param name="celsius">Temperature, °C, −40 to 200.</param>
    public static double SaturationPressure(double celsius) =>
        Math.Exp(HylandWexler1983.LogSaturation(celsius + Constants.ZeroCelsiusKelvin));

    /// <summary>w of a temperature and a relative humidity, kg/kg.</summary>
    /// <param name="celsius">Temperature, °C, 0 to 200.</param>
    /// <param name="relativeHumidity">Relative humidity, 0 to 1.</param>
    /// <param name="pascals">Total pressure, Pa.</param>
    public static double HumidityRatio(double celsius, double relativeHumidity, double pascals) =>
        HumidityRatio(relativeHumidity * SaturationPressure(celsius), pascals);

    /// <summary>Relative humidity, 0 to 1 and above where the air is oversaturated.</summary>
    /// <param name="celsius">Temperature, °C.</param>
    /// <param name="humidityRatio">w, kg/kg.</param>
    /// <param name="pascals">Total pressure, Pa.</param>
    public static double RelativeHumidity(
        double celsius,
        double humidityRatio,
        double pascals = StandardPascals
    ) => VaporPressure(humidityRatio, pascals) / SaturationPressure(celsius);

    /// <summary>Enthalpy, J to a kilogram of dry air.</summary>
    /// <param name="celsius">Temperature, °C.</param>
    /// <param name="humidityRatio">w, kg/kg.</param>
    public static double Enthalpy(double celsius, double humidityRatio) =>
        (DryAirHeatCapacity * celsius) + (humidityRatio * VaporEnthalpy(celsius));

    /// <summary>Volume of moist air with a kilogram of dry air in it, m³/kg.</summary>
    /// <param name="celsius">Temperature, °C.</param>
    /// <param name="humidityRatio">w, kg/kg.</param>
    /// <param name="pascals">Total pressure, Pa.</param>
    public static double SpecificVolume(
        double celsius,
        double humidityRatio,
        double pascals = StandardPascals
    ) =>
        DryAirGasConstant
        * (celsius + Constants.ZeroCelsiusKelvin)
        * (1.0 + (humidityRatio / MassRatio))
        / pascals;

    /// <summary>Density of moist air, kg/m³.</summary>
    /// <param name="celsius">Temperature, °C.</param>
    /// <param name="humidityRatio">w, kg/kg.</param>
    /// <param name="pascals">Total pressure, Pa.</param>
    public static double Density(double celsius, double humidityRatio, double pascals = StandardPascals) =>
        (1.0 + humidityRatio) / SpecificVolume(celsius, humidityRatio, pascals);

    /// <summary>
    /// Temperature of dry air of the same density, K: buoyancy counts damp air as warmer, 0.608 w of it.
    /// </summary>
    /// <param name="celsius">Temperature, °C.</param>
    /// <param name="humidityRatio">w, kg/kg.</param>
    public static double VirtualKelvin(double celsius, double humidityRatio) =>
        (celsius + Constants.ZeroCelsiusKelvin) * (1.0 + (0.608 * humidityRatio));

    /// <summary>Coldest air and surface that is computed, °C; far below every room.</summary>
    public const double ColdestLawCelsius = -60.0;

    /// <summary>
    /// Warmest air and surface that is computed, °C: near boiling the humidity ratio has no bound.
    /// </summary>
    public const double WarmestLawCelsius = 95.0;

    /// <summary>True where the laws of moist air hold.</summary>
    /// <param name="celsius">Temperature, °C.</param>
    public static bool Holds(double celsius) => celsius is >= ColdestLawCelsius and <= WarmestLawCelsius;

    /// <summary>Dew point, °C: Newton on the logarithm of the saturation pressure.</summary>
    /// <param name="vaporPascals">
    /// Pressure of the vapor, Pa, 100 to 100 000; air drier than 0.01 Pa counts as that dry.
    /// </param>
    public static double DewPoint(double vaporPascals)
    {
        double target = Math.Log(Math.Max(vaporPascals, DriestPascals));
        double celsius = 20.0;
        for (int i = 0; i < 50; i++)
        {
            double kelvin = celsius + Constants.ZeroCelsiusKelvin;
            double change =
                (target - HylandWexler1983.LogSaturation(kelvin)) / HylandWexler1983.LogSlope(kelvin);
            celsius = Math.Max(celsius + change, ColdestCelsius);
            if (Math.Abs(change) < 1e-10)
            {
                break;
            }
        }

        return celsius;
    }
}
