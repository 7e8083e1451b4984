using Litterfall.Physics.Parcel;
using Xunit;

namespace Litterfall.UnitTests.Physics.Parcel;

/// <summary>Air of chambers and cups at the ends of their range, by hand.</summary>
public sealed class ChamberAirTests
{
    /// <summary>With G the fall is use/G (1 − e^(−G t/V)): half of it at V/G ln 2.</summary>
    [Fact]
    public void A_vented_chamber_falls_slower_and_not_below_its_end()
    {
        const double Volume = 1e-3;
        const double Exchange = 1e-6;
        const double Use = 4e-8;
        double half = ChamberAir.OutdoorOxygen - 0.02;
        Assert.Equal(
            Volume / Exchange * Math.Log(2.0),
            ChamberAir.SecondsTo(Volume, Use, Exchange, half),
            1e-6
        );
        Assert.Equal(
            ChamberAir.OutdoorOxygen - 0.04,
            ChamberAir.SteadyOxygen(Use, Exchange, 0.209476),
            1e-12
        );
        Assert.Equal(double.PositiveInfinity, ChamberAir.SecondsTo(Volume, Use, Exchange, 0.16));
        Assert.Equal(double.PositiveInfinity, ChamberAir.SecondsTo(Volume, 0.0, 0.0, 0.19));
    }

    [Fact]
    public void A_sealed_chamber_ends_without_oxygen_and_an_empty_one_keeps_it()
    {
        Assert.Equal(0.0, ChamberAir.SteadyOxygen(1e-9, 0.0, 0.2));
        Assert.Equal(0.2, ChamberAir.SteadyOxygen(0.0, 0.0, 0.2));
        Assert.Equal(1.0, ChamberAir.SteadyCarbonDioxide(1e-9, 0.0, 0.001));
        Assert.Equal(0.001, ChamberAir.SteadyCarbonDioxide(0.0, 0.0, 0.001));
        Assert.Equal(1.0, ChamberAir.SupplyShare(0.0, 0.0));
        Assert.Equal(0.0, ChamberAir.SupplyShare(1e-9, 0.0));
    }

    [Fact]
    public void No_holes_pass_nothing()
    {
        Assert.Equal(0.0, new VentHoles(0, 1e-3, 0.0).Conductance(2e-5));
        var cup = new CupAir(5e-4, new VentHoles(0, 1e-3, 0.0), new AnimalBreath(4.5, 1, 1.0));
        Assert.Equal(0.0, cup.WaterPerSecond(24.0, 0.5));
    }
}
