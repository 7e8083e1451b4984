using System.Collections.Immutable;

namespace Litterfall.Physics.Soil;

/// <summary>A layer of one material, cut into elements.</summary>
/// <param name="Curve">The material.</param>
/// <param name="ElementMeters">Thickness of its elements from the top down, m, each above 0.</param>
public sealed record ColumnLayer(HydraulicCurve Curve, ImmutableArray<double> ElementMeters)
{
    /// <summary>Thickness, m.</summary>
    public double ThicknessMeters => ElementMeters.Sum();

    /// <summary>A layer of equal elements.</summary>
    /// <param name="curve">The material.</param>
    /// <param name="thicknessMeters">Thickness, m, above 0.</param>
    /// <param name="elements">Number of elements, at least 1.</param>
    public static ColumnLayer Even(HydraulicCurve curve, double thicknessMeters, int elements) =>
        new(curve, [.. Enumerable.Repeat(thicknessMeters / elements, elements)]);
}

/// <summary>
/// Heads between which roots take up water (Feddes, Kowalik and Zaradny 1978): nothing above the first,
/// rising to the second, all of it down to the third, falling to nothing at the fourth. In m, falling.
/// </summary>
/// <param name="TooWetMeters">Wetter than this roots take nothing: no air.</param>
/// <param name="WetMeters">Drier than this they take all they want.</param>
/// <param name="DryMeters">Down to this they do.</param>
/// <param name="WiltedMeters">Drier than this they take nothing.</param>
public readonly record struct FeddesHeads(
    double TooWetMeters,
    double WetMeters,
    double DryMeters,
    double WiltedMeters
)
{
    /// <summary>Share of the demand that is met at a head, 0 to 1, and its slope, 1/m.</summary>
    /// <param name="headMeters">Pressure head, m.</param>
    public (double Share, double Slope) At(double headMeters) =>
        headMeters >= TooWetMeters || headMeters <= WiltedMeters ? (0.0, 0.0)
        : headMeters > WetMeters
            ? ((TooWetMeters - headMeters) / (TooWetMeters - WetMeters), -1.0 / (TooWetMeters - WetMeters))
        : headMeters >= DryMeters ? (1.0, 0.0)
        : ((headMeters - WiltedMeters) / (DryMeters - WiltedMeters), 1.0 / (DryMeters - WiltedMeters));
}

/// <summary>Where roots are, evenly over a range of depth.</summary>
/// <param name="FromMeters">Upper end, m below the surface.</param>
/// <param name="ToMeters">Lower end, m below the surface.</param>
/// <param name="Heads">How they answer to wet and dry.</param>
public sealed record RootZone(double FromMeters, double ToMeters, FeddesHeads Heads);

/// <summary>One ground zone: its layers from the top down, its roots and its share of the floor.</summary>
/// <param name="Layers">Layers from the top down.</param>
/// <param name="Roots">Roots, or null.</param>
/// <param name="AreaShare">Share of the floor, above 0; the shares of all zones add to 1.</param>
public sealed record SoilProfile(
    ImmutableArray<ColumnLayer> Layers,
    RootZone? Roots = null,
    double AreaShare = 1.0
);
