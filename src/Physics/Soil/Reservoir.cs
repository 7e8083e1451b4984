namespace Litterfall.Physics.Soil;

/// <summary>The drainage layer as a store of water: level against volume.</summary>
/// <param name="AreaSquareMeters">Area of the layer, m².</param>
/// <param name="DepthMeters">Depth of the layer, m.</param>
/// <param name="Drainable">Water per volume of layer that flows freely, m³/m³: its voids.</param>
/// <param name="OpenShare">Share of the layer that wood and stone leave free, 0 to 1.</param>
public readonly record struct Reservoir(
    double AreaSquareMeters,
    double DepthMeters,
    double Drainable,
    double OpenShare
)
{
    /// <summary>Surface tension of water at 20 °C over its weight, 4σ/(ρg), m².</summary>
    public const double RiseSquareMeters = 0.297e-4;

    /// <summary>The pore between grains over the grain (common practice, no source).</summary>
    public const double PorePerGrain = 0.4;

    /// <summary>Water per meter of level, m³/m.</summary>
    public double CubicMetersPerMeter => AreaSquareMeters * Drainable * OpenShare;

    /// <summary>Free water below a level, m³; the layer holds no more than its depth.</summary>
    /// <param name="levelMeters">Level over the base, m.</param>
    public double CubicMeters(double levelMeters) =>
        CubicMetersPerMeter * Math.Clamp(levelMeters, 0.0, DepthMeters);

    /// <summary>Level of a volume of free water, m, at most the depth.</summary>
    /// <param name="cubicMeters">Free water, m³.</param>
    public double LevelMeters(double cubicMeters) =>
        CubicMetersPerMeter > 0.0 ? Math.Clamp(cubicMeters / CubicMetersPerMeter, 0.0, DepthMeters) : 0.0;

    /// <summary>Height to which water climbs between grains over the free level (Jurin), m.</summary>
    /// <param name="grainMeters">Size of the grains, m, above 0.</param>
    /// <param name="porePerGrain">Pore between grains over the grain.</param>
    public static double CapillaryRiseMeters(double grainMeters, double porePerGrain = PorePerGrain) =>
        RiseSquareMeters / (porePerGrain * grainMeters);
}
