namespace Litterfall.Physics.Parcel;

/// <summary>
/// Diffusion of gases in still air near the surface of the earth, D = D0 (T/273.15 K)^1.81 p0/p.
/// </summary>
/// <remarks>
/// Massman, W. J. 1998, A review of the molecular diffusivities of H2O, CO2, CH4, CO, O3, SO2, NH3, N2O, NO,
/// and NO2 in air, O2 and N2 near STP, Atmospheric Environment 32:1111-1127. The value of water vapor was
/// read in the code of another library, those of carbon dioxide and oxygen are recalled; handbooks differ by
/// 2 to 3 %. From 0 to 100 °C.
/// </remarks>
public static class Massman1998
{
    private const double WaterVaporAtZero = 0.2178e-4;
    private const double CarbonDioxideAtZero = 0.1381e-4;
    private const double OxygenAtZero = 0.1820e-4;
    private const double Exponent = 1.81;

    /// <summary>Water vapor in air, m²/s.</summary>
    /// <param name="celsius">Temperature, °C.</param>
    public static double WaterVapor(double celsius) => WaterVaporAtZero * Warmth(celsius);

    /// <summary>Carbon dioxide in air, m²/s.</summary>
    /// <param name="celsius">Temperature, °C.</param>
    public static double CarbonDioxide(double celsius) => CarbonDioxideAtZero * Warmth(celsius);

    /// <summary>Oxygen in air, m²/s.</summary>
    /// <param name="celsius">Temperature, °C.</param>
    public static double Oxygen(double celsius) => OxygenAtZero * Warmth(celsius);

    private static double Warmth(double celsius) =>
        Math.Pow((celsius + Constants.ZeroCelsiusKelvin) / Constants.ZeroCelsiusKelvin, Exponent);
}
