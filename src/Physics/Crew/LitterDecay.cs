namespace Litterfall.Physics.Crew;

/// <summary>How fast leaf litter goes: first order (Olson 1963), by warmth, damp, air and fauna.</summary>
public sealed record LitterDecay
{
    /// <summary>As published; each method says where.</summary>
    public static readonly LitterDecay Usual = new();

    /// <summary>Suction up to which litter decays fully, kPa.</summary>
    public double WetKilopascals { get; init; } = 100.0;

    /// <summary>Suction from which it decays least, kPa.</summary>
    public double DryKilopascals { get; init; } = 1500.0;

    /// <summary>Share of its decay that is left then.</summary>
    public double DryShare { get; init; } = 0.2;

    /// <summary>Factor of the law of air in the pores.</summary>
    public double AirFactor { get; init; } = 2.0;

    /// <summary>Its exponent.</summary>
    public double AirExponent { get; init; } = 0.8;

    private const double ReferenceCelsius = 24.0;
    private const double LeastCelsius = -5.0;
    private const double MostCelsius = 60.0;

    /// <summary>
    /// Share of its decay by damp: all to −100 kPa, a fifth from −1.5 MPa, by the logarithm between (after
    /// RothC).
    /// </summary>
    /// <param name="kilopascals">Matric potential, kPa; 0 or less.</param>
    public double Damp(double kilopascals)
    {
        double suction = Math.Clamp(-kilopascals, WetKilopascals, DryKilopascals);
        return 1.0
            - (
                (1.0 - DryShare)
                * Math.Log(suction / WetKilopascals)
                / Math.Log(DryKilopascals / WetKilopascals)
            );
    }

    /// <summary>
    /// Share by the air in the pores: min(1, 2 (1 − s)^0.8) (Skopp et al. 1990, as a public library codes
    /// it).
    /// </summary>
    /// <param name="saturation">Share of the pores full of water, 0 to 1.</param>
    public double Air(double saturation) =>
        Math.Min(1.0, AirFactor * Math.Pow(Math.Clamp(1.0 - saturation, 0.0, 1.0), AirExponent));

    /// <summary>
    /// Factor of warmth, 1 at 24 °C; as at −5 °C below it and as at 60 °C above, where none was fitted.
    /// </summary>
    /// <param name="celsius">Temperature, °C.</param>
    public static double WarmthFactor(double celsius) =>
        Warmth(celsius) / RothC.TemperatureFactor(ReferenceCelsius);

    private static double Warmth(double celsius) =>
        RothC.TemperatureFactor(Math.Clamp(celsius, LeastCelsius, MostCelsius));

    /// <summary>Decay constant of a day, 1/d.</summary>
    /// <param name="perYearAt24">Constant at 24 °C in damp ground, 1/y.</param>
    /// <param name="celsius">Temperature, °C.</param>
    /// <param name="kilopascals">Matric potential, kPa.</param>
    /// <param name="saturation">Share of the pores full of water.</param>
    /// <param name="fauna">
    /// What fauna adds: 0.27 times its fill (García-Palacios et al. 2013, abstract).
    /// </param>
    public double PerDay(
        double perYearAt24,
        double celsius,
        double kilopascals,
        double saturation,
        double fauna
    ) => perYearAt24 / 365.0 * WarmthFactor(celsius) * Damp(kilopascals) * Air(saturation) * (1.0 + fauna);
}
