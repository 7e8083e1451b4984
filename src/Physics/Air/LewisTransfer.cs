namespace Litterfall.Physics.Air;

/// <summary>
/// Mass transfer from heat transfer, k = h/(ρ c_p Le^(2/3)) (Chilton and Colburn 1934; ASHRAE Handbook -
/// Fundamentals, chapter 6; both recalled), with the properties of air at 25 °C: ρ c_p = 1192 J/(m³ K),
/// Le^(2/3) = 0.9033. They change by 2 % from 15 to 30 °C.
/// </summary>
public static class LewisTransfer
{
    private const double AirHeatCapacityPerCubicMeter = 1192.0;

    /// <summary>Le^(2/3) of moist air at 25 °C.</summary>
    public const double LewisTwoThirds = 0.9033;

    /// <summary>Coefficient of mass transfer, m/s.</summary>
    /// <param name="convectionWattsPerSquareMeterKelvin">Convection alone.</param>
    /// <param name="lewisTwoThirds">Le^(2/3).</param>
    public static double MetersPerSecond(
        double convectionWattsPerSquareMeterKelvin,
        double lewisTwoThirds = LewisTwoThirds
    ) => convectionWattsPerSquareMeterKelvin / (AirHeatCapacityPerCubicMeter * lewisTwoThirds);
}
