using Litterfall.Domain.Units;
using Litterfall.UnitTests.Judging;
using Litterfall.UnitTests.Judging.Rules;
using Xunit;

namespace Litterfall.UnitTests.Forecasting.Water;

/// <summary>Water of a day where an outlet keeps the level, and where hands mist beside a system.</summary>
public sealed class OutletTests
{
    private const string Floor =
        "{ drainage: { material: expanded-clay-8-16, depth: 5 cm }, soil: { recipe: standard-rainforest, "
        + "depth: 6 cm, settling: 15 % } }";

    private const string Mist =
        "misting: { nozzles: 1, each: 60 mL/min, times: [ { at: \"07:30\", for: 90 s } ] }\n"
        + "room: { temperature: 21 C, humidity: 45 % }\n"
        + "headspace: { hold: { air: 24 C, humidity: 92 %, airChanges: 2 } }\n";

    /// <summary>
    /// Inside 1936 cm², air 44.5 − 11 = 33.5 cm: 64.86 L. Vapor at 24 °C and 92 % 20.02 g/m³, at 21 °C and
    /// 45 % 8.25 (saturation 2985 and 2488 Pa ÷ 461.5 J/(kg K) and the temperature): 48 changes take 36.7 mL
    /// a day. 90 mL are misted, so 53.3 leave by the outlet, and a bottle of 1 L fills in 18.8 days.
    /// </summary>
    [Fact]
    public void An_open_outlet_drains_by_itself_into_a_bottle()
    {
        var water = Posed
            .Run(RuleCheck.Cube, Floor, Mist + "drain: { kind: bulkhead, height: 2 cm, diameter: 20 mm }")
            .Numbers.Water;
        Assert.Null(water.Balance.DrainEvery);
        Assert.True(water.Balance.DrainsByItself);
        var outlet = water.Balance.Outlet!;
        Assert.Equal(53.3, Unit.Milliliter.FromSi(outlet.PerDay.Si), 0.5);
        Assert.Equal(1.0, outlet.Bottle.Value);
        Assert.Equal(18.8, outlet.FillsIn.Value, 0.2);
    }

    [Theory]
    [InlineData("drain: { kind: siphon }")]
    [InlineData("drain: { kind: bulkhead }")]
    public void What_is_drained_by_hand_has_an_interval(string drain)
    {
        var balance = Posed.Run(RuleCheck.Cube, Floor, Mist + drain).Numbers.Water.Balance;
        Assert.NotNull(balance.DrainEvery);
        Assert.Null(balance.Outlet);
    }

    /// <summary>90 mL of the program and 100 by hand are 190, in the balance and in the run.</summary>
    [Fact]
    public void Hands_mist_beside_a_program()
    {
        var numbers = Posed
            .Run(RuleCheck.Cube, Floor, Mist + "drain: { kind: siphon }\nhabits: { handMist: 100 mL }")
            .Numbers;
        Assert.Equal(190.0, Unit.Milliliter.FromSi(numbers.Water.Balance.Misted!.Si), 1e-6);
        Assert.Equal(100.0, Unit.Milliliter.FromSi(numbers.Water.ByHand!.Si), 1e-9);
    }

    [Fact]
    public void Hands_mist_beside_a_program_in_the_coupled_run()
    {
        var open = Mist[..Mist.IndexOf("headspace", StringComparison.Ordinal)];
        var numbers = Posed
            .Run(RuleCheck.Cube, Floor, open + "drain: { kind: siphon }\nhabits: { handMist: 100 mL }")
            .Numbers;
        Assert.Equal(0.190, numbers.Climate!.Computed!.Days.Misted, 1e-6);
    }

    /// <summary>The ends of the gain are what is misted less the ends of what is vented.</summary>
    [Fact]
    public void The_gain_has_a_band()
    {
        var open = Mist[..Mist.IndexOf("headspace", StringComparison.Ordinal)];
        var balance = Posed
            .Run(RuleCheck.Cube, Floor, open + "drain: { kind: siphon }")
            .Numbers.Water.Balance;
        var (low, high) = balance.GainBand!.Value;
        Assert.Equal(balance.Misted!.Si - balance.VentedBand!.Value.High.Si, low.Si, 1e-15);
        Assert.Equal(balance.Misted!.Si - balance.VentedBand!.Value.Low.Si, high.Si, 1e-15);
        Assert.InRange(balance.Gain!.Si, low.Si, high.Si);
    }
}
