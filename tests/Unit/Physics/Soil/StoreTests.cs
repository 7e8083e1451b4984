using Litterfall.Physics.Soil;

namespace Litterfall.UnitTests.Physics.Soil;

/// <summary>Leaves as a bucket and the drainage layer as a tank, by hand.</summary>
public sealed class StoreTests
{
    // Capacity 2 mm. Dry first, then hold, then pass on.
    [Theory]
    [InlineData(0.0, 0.0, 0.0, 0.0, 0.0, 0.0)]
    [InlineData(0.0, 1.0, 0.0, 1.0, 0.0, 0.0)]
    [InlineData(1.5, 1.0, 0.0, 2.0, 0.5, 0.0)]
    [InlineData(1.5, 0.0, 0.4, 1.1, 0.0, 0.4)]
    [InlineData(0.3, 0.0, 0.4, 0.0, 0.0, 0.3)]
    [InlineData(1.5, 1.0, 0.7, 1.8, 0.0, 0.7)]
    [InlineData(2.0, 5.0, 0.5, 2.0, 4.5, 0.5)]
    public void Leaves_dry_first_then_hold_then_pass_on(
        double water,
        double rain,
        double demand,
        double left,
        double through,
        double evaporated
    )
    {
        const double millimeter = 1e-3;
        var span = new LitterStore(2.0 * millimeter).Span(
            water * millimeter,
            rain * millimeter,
            demand * millimeter
        );
        Assert.Equal(left * millimeter, span.Water, 1e-15);
        Assert.Equal(through * millimeter, span.Through, 1e-15);
        Assert.Equal(evaporated * millimeter, span.Evaporated, 1e-15);
    }

    /// <summary>
    /// 4σ/(ρg) = 4 · 0.0728/(998 · 9.80665) m² = 0.2975 cm² (σ recalled); pores of 0.4 grains.
    /// </summary>
    [Theory]
    [InlineData(0.004, 1.859)]
    [InlineData(0.008, 0.930)]
    [InlineData(0.016, 0.465)]
    public void Water_climbs_between_grains(double grainMeters, double centimeters) =>
        Assert.Equal(centimeters, 100.0 * Reservoir.CapillaryRiseMeters(grainMeters), 0.005 * centimeters);
}
