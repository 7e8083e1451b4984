namespace Litterfall.Physics.Soil;

/// <summary>
/// How much water one material holds and how fast it conducts, as functions of the pressure head h in
/// meters of water (negative is suction). At h ≥ 0 it is saturated. Drying branch only: no hysteresis.
/// </summary>
public abstract class HydraulicCurve
{
    /// <summary>Water content of the saturated material, m³/m³.</summary>
    public abstract double SaturatedWaterContent { get; }

    /// <summary>Water content that no suction takes out, m³/m³.</summary>
    public abstract double ResidualWaterContent { get; }

    /// <summary>Conductivity of the saturated material, m/s.</summary>
    public abstract double SaturatedConductivityMetersPerSecond { get; }

    /// <summary>Head at which the capacity is largest, m, below 0: the knee of the retention curve.</summary>
    public abstract double SteepestHeadMeters { get; }

    /// <summary>Water content θ(h), m³/m³.</summary>
    /// <param name="headMeters">Pressure head, m.</param>
    public abstract double WaterContent(double headMeters);

    /// <summary>Capacity dθ/dh, 1/m; 0 where saturated.</summary>
    /// <param name="headMeters">Pressure head, m.</param>
    public abstract double CapacityPerMeter(double headMeters);

    /// <summary>Hydraulic conductivity K(h), m/s.</summary>
    /// <param name="headMeters">Pressure head, m.</param>
    public abstract double ConductivityMetersPerSecond(double headMeters);

    /// <summary>Air-filled porosity θs − θ(h), m³/m³.</summary>
    /// <param name="headMeters">Pressure head, m.</param>
    public double AirContent(double headMeters) => SaturatedWaterContent - WaterContent(headMeters);

    /// <summary>
    /// Head at which the material holds a given water content, by bisection in ln|h|: 0 at saturation and
    /// above, <see cref="DriestHeadMeters"/> at the residual water content and below.
    /// </summary>
    /// <param name="waterContent">θ, m³/m³.</param>
    /// <returns>Pressure head, m, accurate to 1e-12 of itself.</returns>
    public double HeadMeters(double waterContent)
    {
        if (waterContent >= WaterContent(-SmallestSuction))
        {
            return 0.0;
        }

        double wet = Math.Log(SmallestSuction);
        double dry = Math.Log(-DriestHeadMeters);
        if (waterContent <= WaterContent(DriestHeadMeters))
        {
            return DriestHeadMeters;
        }

        while (dry - wet > 1e-12)
        {
            double middle = 0.5 * (wet + dry);
            if (WaterContent(-Math.Exp(middle)) > waterContent)
            {
                wet = middle;
            }
            else
            {
                dry = middle;
            }
        }

        return -Math.Exp(0.5 * (wet + dry));
    }

    /// <summary>
    /// Driest head considered anywhere, m: 1e7 cm of suction, in balance with air of 0.1 %.
    /// </summary>
    public const double DriestHeadMeters = -1e5;

    private const double SmallestSuction = 1e-9;
}
