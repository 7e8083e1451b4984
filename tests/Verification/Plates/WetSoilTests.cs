using Litterfall.Physics.Plates;
using Xunit;

namespace Litterfall.Tests.Verification.Plates;

/// <summary>Pressure of wet soil against values by hand, g = 9.80665 m/s², water 1000 kg/m³.</summary>
public sealed class WetSoilTests
{
    [Fact]
    public void Soil_over_a_water_table()
    {
        PressureKnot[] load = PlateLoad.Of(new WetSoil(0.200, 0.060, 1400.0));
        // Bottom: u = 588.399, γd = 2745.862; 0.5 (2745.862 − 588.399) + 588.399 = 1667.131.
        // Water table: 0.5 · 1400 · 9.80665 · 0.14 = 961.052. Surface: 0.
        Assert.Equal(3, load.Length);
        Assert.Equal(1667.131, load[0].Pascals, 1e-3);
        Assert.Equal(new PressureKnot(0.060, load[1].Pascals), load[1]);
        Assert.Equal(961.052, load[1].Pascals, 1e-3);
        Assert.Equal(new PressureKnot(0.200, 0.0), load[2]);
    }

    [Fact]
    public void Saturated_soil_pushes_as_soil_and_water()
    {
        PressureKnot[] load = PlateLoad.Of(new WetSoil(0.200, 0.200, 1400.0));
        // 0.5 (1400 − 1000) · 9.80665 · 0.2 + 1000 · 9.80665 · 0.2 = 392.266 + 1961.330
        Assert.Equal(2, load.Length);
        Assert.Equal(2353.596, load[0].Pascals, 1e-3);
    }

    [Fact]
    public void Soil_lighter_than_its_water_pushes_with_the_water_alone()
    {
        PressureKnot[] load = PlateLoad.Of(new WetSoil(0.200, 0.180, 800.0));
        // Grain stress: 800 (0.2 − y) = 1000 (0.18 − y) at y = 0.1. Below: water, 1000 · 9.80665 · 0.18 =
        // 1765.197.
        Assert.Equal(1765.197, load[0].Pascals, 1e-3);
        Assert.Equal(0.1, load[1].YMeters, 1e-12);
        Assert.Equal(784.532, load[1].Pascals, 1e-3);
    }

    [Fact]
    public void A_water_table_above_the_soil_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => PlateLoad.Of(new WetSoil(0.1, 0.2, 1000.0)));
}
