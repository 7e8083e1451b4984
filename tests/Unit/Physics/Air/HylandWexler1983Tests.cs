using Litterfall.Physics.Air;

namespace Litterfall.UnitTests.Physics.Air;

/// <summary>Saturation pressures against a steam table.</summary>
public sealed class HylandWexler1983Tests
{
    // Steam table, kPa, from memory; 0.01 and 100 °C are the triple point and, nearly, the boiling point.
    [Theory]
    [InlineData(0.01, 0.6117, 0.0003)]
    [InlineData(20.0, 2.339, 0.0015)]
    [InlineData(21.0, 2.488, 0.0015)]
    [InlineData(24.0, 2.985, 0.0015)]
    [InlineData(25.0, 3.169, 0.0015)]
    [InlineData(100.0, 101.42, 0.06)]
    public void Saturation_pressure_is_that_of_the_steam_table(
        double celsius,
        double kilopascals,
        double miss
    ) => Assert.Equal(kilopascals, HylandWexler1983.SaturationPascals(celsius + 273.15) / 1e3, miss);

    /// <summary>Ideal gas by hand: 24 °C, 80 %: 0.8 · 2985/(461.5 · 297.15) = 17.41 g/m³.</summary>
    [Fact]
    public void Vapor_is_an_ideal_gas() =>
        Assert.Equal(17.41e-3, HylandWexler1983.VaporDensity(297.15, 0.8), 0.02e-3);

    [Fact]
    public void Values_out_of_range_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => HylandWexler1983.SaturationPascals(250.0));
        Assert.Throws<ArgumentOutOfRangeException>(() => HylandWexler1983.SaturationPascals(500.0));
        Assert.Throws<ArgumentOutOfRangeException>(() => HylandWexler1983.VaporDensity(297.15, 1.1));
    }
}
