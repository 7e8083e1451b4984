namespace Litterfall.Physics.Plates;

/// <summary>
/// Allowable bending stress of annealed float glass in the form of EN 16612:2019,
/// k_e · k_mod · k_sp · f_gk / γ_M (all figures recalled). A guide for estimates; a glazier decides.
/// </summary>
public static class AllowableStress
{
    // EN 16612:2019 (recalled): characteristic strength 45 MPa, material factor 1.8, surface factor 1 for
    // float.
    private const double CharacteristicPascals = 45e6;
    private const double MaterialFactor = 1.8;

    // k_mod = 0.663 t^(−1/16), t in hours, kept between 0.25 and 1 (recalled).
    private const double DurationFactor = 0.663;
    private const double DurationExponent = -1.0 / 16.0;
    private const double LeastDurationFactor = 0.25;

    /// <summary>k_mod of a permanent load, 50 years (recalled).</summary>
    public const double PermanentLoadFactor = 0.29;

    /// <summary>k_e of a stressed edge left as cut (recalled).</summary>
    public const double CutEdgeFactor = 0.8;

    /// <summary>
    /// Permanent load, away from stressed edges: 7.2 MPa, that is 45 · 0.29 / 1.8 = 7.25 rounded down
    /// (recalled).
    /// </summary>
    public const double PermanentPascals = 7.2e6;

    /// <summary>Permanent load at a stressed edge left as cut, such as a rimless top: 5.8 MPa
    /// (recalled).</summary>
    public const double PermanentCutEdgePascals = 5.8e6;

    /// <summary>Load-duration factor k_mod = 0.663 t^(−1/16), t in hours, between 0.25 and 1.</summary>
    /// <param name="durationHours">How long the load stands, hours, above 0.</param>
    /// <returns>Factor without unit.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The duration is not positive.</exception>
    public static double LoadDurationFactor(double durationHours)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(durationHours);
        double factor = DurationFactor * Math.Pow(durationHours, DurationExponent);
        return Math.Clamp(factor, LeastDurationFactor, 1.0);
    }

    /// <summary>Allowable stress from the two factors.</summary>
    /// <param name="loadDurationFactor">k_mod, above 0 to 1.</param>
    /// <param name="edgeFactor">k_e, above 0 to 1; 1 away from stressed edges.</param>
    /// <returns>Stress, Pa.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A factor is not in (0, 1].</exception>
    public static double Pascals(double loadDurationFactor, double edgeFactor)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(loadDurationFactor);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(loadDurationFactor, 1.0);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(edgeFactor);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(edgeFactor, 1.0);
        return edgeFactor * loadDurationFactor * CharacteristicPascals / MaterialFactor;
    }
}
