namespace Litterfall.Physics.Floor;

/// <summary>A drainage layer and what lies on it, per square meter of floor.</summary>
/// <param name="DepthMeters">Depth of the aggregate layer, m.</param>
/// <param name="BulkDensity">Bulk density of the dry aggregate as poured, kg/m³.</param>
/// <param name="VoidFraction">Voids between the grains, 0 to below 1.</param>
/// <param name="LoadAboveKilogramsPerSquareMeter">Soil and everything else resting on the layer,
/// kg/m².</param>
public readonly record struct AggregateLayer(
    double DepthMeters,
    double BulkDensity,
    double VoidFraction,
    double LoadAboveKilogramsPerSquareMeter
);

/// <summary>
/// Whether water rising in a light drainage aggregate lifts it with the soil on top (Archimedes' principle).
/// Grains are taken as closed: water fills only the voids between them, and friction at the walls is left
/// out, so the answer is on the careful side.
/// </summary>
public static class AggregateFlotation
{
    /// <summary>Buoyant lift of the grains below water, (1 − n) ρw h, as mass per area.</summary>
    /// <param name="layer">The layer.</param>
    /// <param name="waterHeightMeters">Water height above the floor, m, 0 or more; above the layer it counts
    /// no more.</param>
    /// <returns>Lift, kg/m².</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of range.</exception>
    public static double UpliftKilogramsPerSquareMeter(AggregateLayer layer, double waterHeightMeters)
    {
        ThrowIfImpossible(layer);
        ArgumentOutOfRangeException.ThrowIfNegative(waterHeightMeters);
        double wetMeters = Math.Min(waterHeightMeters, layer.DepthMeters);
        return wetMeters * (1.0 - layer.VoidFraction) * Constants.WaterDensity;
    }

    /// <summary>
    /// Water height at which lift would equal weight if the layer went on upward: above the layer depth it
    /// says how far from lifting the layer is.
    /// </summary>
    /// <param name="layer">The layer.</param>
    /// <returns>Height, m.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of range.</exception>
    public static double BalanceHeightMeters(AggregateLayer layer)
    {
        ThrowIfImpossible(layer);
        return Weight(layer) / ((1.0 - layer.VoidFraction) * Constants.WaterDensity);
    }

    /// <summary>Weight over lift with the layer full of water; below 1 it lifts before it is full.</summary>
    /// <param name="layer">The layer.</param>
    /// <returns>Ratio without unit.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of range.</exception>
    public static double SafetyRatioWhenFull(AggregateLayer layer) =>
        Weight(layer) / UpliftKilogramsPerSquareMeter(layer, layer.DepthMeters);

    private static double Weight(AggregateLayer layer) =>
        (layer.DepthMeters * layer.BulkDensity) + layer.LoadAboveKilogramsPerSquareMeter;

    private static void ThrowIfImpossible(AggregateLayer layer)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(layer.DepthMeters, nameof(layer));
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(layer.BulkDensity, nameof(layer));
        ArgumentOutOfRangeException.ThrowIfNegative(layer.VoidFraction, nameof(layer));
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(layer.VoidFraction, 1.0, nameof(layer));
        ArgumentOutOfRangeException.ThrowIfNegative(layer.LoadAboveKilogramsPerSquareMeter, nameof(layer));
    }
}
