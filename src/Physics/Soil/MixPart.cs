namespace Litterfall.Physics.Soil;

/// <summary>One component of a mix, as it lies loose before mixing.</summary>
/// <param name="VolumeCubicMeters">Loose volume, m³, above 0.</param>
/// <param name="Curve">Its water curve at that volume.</param>
/// <param name="DryDensityKilogramsPerCubicMeter">Dry mass per loose volume, kg/m³, above 0.</param>
/// <param name="AshShare">Share of its dry mass that does not burn, 0 (organic) to 1 (mineral).</param>
public sealed record MixPart(
    double VolumeCubicMeters,
    HydraulicCurve Curve,
    double DryDensityKilogramsPerCubicMeter,
    double AshShare
);

/// <summary>What mixing is taken to do; the defaults are recalled and good to a few points.</summary>
public sealed record MixingLaw
{
    /// <summary>
    /// Share of the loose volume of the coarse parts that lies between their particles, 0.4 to 0.5.
    /// </summary>
    public double CoarseVoidShare { get; init; } = 0.45;

    /// <summary>
    /// How far fines find their way into those voids, η, 0 to 1: 0.2 for fiber, 0.6 for fine peat in bark.
    /// </summary>
    public double Filling { get; init; } = 0.4;

    /// <summary>Air that stays in when the mix is wetted, m³/m³, 0 to 0.05.</summary>
    public double EntrappedAir { get; init; } = 0.04;

    /// <summary>Mixed volume over loose volume where it was measured; null to estimate it.</summary>
    public double? MixingYield { get; init; }
}

/// <summary>A mix as estimated from its parts.</summary>
/// <param name="Parameters">Its curve: two pore systems.</param>
/// <param name="RmsMisfit">
/// How far the curve is from the water of the components, m³/m³, root mean square at
/// <see cref="MixRetention.MisfitHeadsMeters"/>.
/// </param>
/// <param name="RmsMisfitDecades">
/// How far log₁₀ K of the curve is from the random mix's, root mean square at
/// <see cref="MixEstimate.ConductivityHeadsMeters"/>.
/// </param>
/// <param name="VolumeCubicMeters">Mixed volume, m³.</param>
/// <param name="DryDensityKilogramsPerCubicMeter">Dry mass per mixed volume, kg/m³.</param>
/// <param name="ParticleDensityKilogramsPerCubicMeter">Dry mass per volume of solids, kg/m³.</param>
public sealed record MixedSoil(
    VanGenuchtenParameters Parameters,
    double RmsMisfit,
    double RmsMisfitDecades,
    double VolumeCubicMeters,
    double DryDensityKilogramsPerCubicMeter,
    double ParticleDensityKilogramsPerCubicMeter
);
