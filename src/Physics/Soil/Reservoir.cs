namespace Litterfall.Physics.Soil;

/// <summary>Water that climbs from the free level into the pores of a drainage layer.</summary>
public static class Reservoir
{
    /// <summary>Surface tension of water at 20 °C over its weight, 4σ/(ρg), m².</summary>
    public const double RiseSquareMeters = 0.297e-4;

    /// <summary>The pore between grains over the grain (common practice, no source).</summary>
    public const double PorePerGrain = 0.4;

    /// <summary>Height to which water climbs between grains over the free level (Jurin), m.</summary>
    /// <param name="grainMeters">Size of the grains, m, above 0.</param>
    /// <param name="porePerGrain">Pore between grains over the grain.</param>
    public static double CapillaryRiseMeters(double grainMeters, double porePerGrain = PorePerGrain) =>
        RiseSquareMeters / (porePerGrain * grainMeters);
}
