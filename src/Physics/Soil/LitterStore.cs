namespace Litterfall.Physics.Soil;

/// <summary>
/// Loose leaves as a bucket: they hold water up to a capacity, dry first, and pass on what does not fit.
/// A forest-floor interception study gives 1.66 mm per kg/m² of dry oak litter after drainage (abstract
/// read).
/// </summary>
/// <param name="CapacityMeters">Water they hold after draining, m over the whole floor.</param>
public readonly record struct LitterStore(double CapacityMeters)
{
    /// <summary>
    /// One span of constant rain and demand, exactly: what is left in the leaves, what reaches the soil and
    /// how much of the demand the leaves have met, all in m.
    /// </summary>
    /// <param name="waterMeters">Water in the leaves at the start, m.</param>
    /// <param name="rainMeters">Rain of the span, m.</param>
    /// <param name="demandMeters">Evaporation demand of the span, m.</param>
    public (double Water, double Through, double Evaporated) Span(
        double waterMeters,
        double rainMeters,
        double demandMeters
    )
    {
        double evaporated = Math.Min(demandMeters, waterMeters + rainMeters);
        double left = waterMeters + rainMeters - evaporated;
        double through = Math.Max(0.0, left - CapacityMeters);
        return (left - through, through, evaporated);
    }
}
