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
    /// 60 by 45 cm, 42 % voids, a tenth taken by wood: 0.10206 L per millimeter of level.
    /// </summary>
    [Fact]
    public void A_reservoir_holds_its_area_times_its_voids()
    {
        var layer = new Reservoir(0.60 * 0.45, 0.05, 0.42, 0.9);
        Assert.Equal(0.10206e-3, layer.CubicMetersPerMeter * 1e-3, 1e-12);
        Assert.Equal(2.0412e-3, layer.CubicMeters(0.02), 1e-12);
        Assert.Equal(0.02, layer.LevelMeters(2.0412e-3), 1e-12);
        Assert.Equal(5.103e-3, layer.CubicMeters(0.08), 1e-12);
        Assert.Equal(0.05, layer.LevelMeters(0.1), 1e-12);
        Assert.Equal(0.0, layer.LevelMeters(-0.1));
    }

    [Fact]
    public void A_reservoir_all_wood_has_no_level() =>
        Assert.Equal(0.0, new Reservoir(0.27, 0.05, 0.42, 0.0).LevelMeters(1e-3));

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
