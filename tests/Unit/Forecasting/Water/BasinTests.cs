using Litterfall.Domain.Checking;
using Litterfall.Domain.DesignFile;
using Litterfall.Forecasting.Climate;
using Litterfall.Physics.Air;
using Litterfall.Physics.Coupling;
using Litterfall.UnitTests.House;
using Litterfall.UnitTests.Judging;
using Litterfall.UnitTests.Judging.Rules;
using Xunit;

namespace Litterfall.UnitTests.Forecasting.Water;

/// <summary>
/// Basins of open water: their place in the floor by hand-worked arithmetic, their water by the closed books
/// of a coupled run, and their evaporation against a published correlation.
/// </summary>
public sealed class BasinTests
{
    private const string Layers =
        "{ drainage: { material: expanded-clay-8-16, depth: 5 cm }, "
        + "soil: { recipe: standard-rainforest, depth: 6 cm, settling: 15 % }, "
        + "litter: { material: oak-leaves, depth: 3 cm } }";

    private const string Fittings =
        "lid: { material: glass, thickness: 4 mm, gap: 2 mm }\n"
        + "misting: { nozzles: 1, each: 60 mL/min, times: [ { at: \"07:30\", for: 30 s } ] }\n"
        + "room: { temperature: 21 C, swing: 1 K, humidity: 45 % }\n"
        + "drain: { kind: siphon }\n";

    private static PosedDesign In(string more) => Posed.Run(RuleCheck.Cube, Layers, Fittings + more);

    /// <summary>
    /// Inside 440 × 440 × 445 mm, a basin of 20 × 20 × 4 cm with 1 cm of edge in 6 cm of soil: soil and
    /// leaves on 1936 − 400 cm², 1.6 L of water, which stands on a foot of 1 cm.
    /// </summary>
    [Fact]
    public void Soil_and_leaves_lie_beside_it_and_not_under_it()
    {
        var n = In("basins: [ { length: 20 cm, width: 20 cm, depth: 4 cm } ]").Numbers;
        Assert.Equal(0.1536 * 0.06, n.Layers[1].Finished.Si, 1e-12);
        Assert.Equal(0.1536 * 0.03, n.Layers[2].Finished.Si, 1e-12);
        Assert.Equal(0.1936 * 0.05, n.Layers[0].Finished.Si, 1e-12);
        Assert.Equal(0.0016, n.Weights.BasinWater!.Si, 1e-12);
        double air = (0.1936 * (0.445 - 0.05)) - (0.1536 * 0.09) - (0.04 * (0.06 - 0.01));
        Assert.Equal(air, n.Headspace.Volume.Si, 1e-9);
    }

    /// <summary>10 cm of water and 1 cm of edge sink 5 cm below 6 cm of soil: to the base.</summary>
    [Fact]
    public void A_basin_deeper_than_the_soil_sinks_into_the_drainage_layer()
    {
        var n = In("basins: [ { length: 20 cm, width: 20 cm, depth: 8 cm } ]").Numbers;
        Assert.Equal((0.1936 * 0.05) - (0.04 * 0.03), n.Layers[0].Finished.Si, 1e-12);
    }

    /// <summary>The water of the basin is in the weight of the planted box, kilogram for liter.</summary>
    [Fact]
    public void Its_water_is_in_the_weight_of_the_box()
    {
        var shallow = In("basins: [ { length: 20 cm, width: 20 cm, depth: 2 cm } ]").Numbers;
        var deep = In("basins: [ { length: 20 cm, width: 20 cm, depth: 5 cm } ]").Numbers;
        Assert.Equal(1.2, deep.Weights.Planted.Si - shallow.Weights.Planted.Si, 1e-9);
    }

    [Theory]
    [InlineData("waterArea: 10 %\nbasins: [ { length: 20 cm, width: 20 cm, depth: 4 cm } ]", "told twice")]
    [InlineData("basins: [ { length: 20 cm, width: 20 cm, depth: 11 cm } ]", "water and edge are 12 cm")]
    [InlineData("basins: [ { length: 60 cm, width: 20 cm, depth: 4 cm } ]", "larger than the floor")]
    [InlineData(
        "basins: [ { length: 20 cm, width: 20 cm, depth: 4 cm, at: { x: 5 cm, y: 20 cm } } ]",
        "through a wall"
    )]
    [InlineData("waterArea: 95 %", "needs a part that is not water")]
    public void What_cannot_be_is_refused(string more, string words)
    {
        var text = $"litterfall: 1\nname: posed\nbox: {RuleCheck.Cube}\nfloor: {Layers}\n{more}\n";
        var read = DesignReader.Read("posed", text);
        Assert.True(read.IsGood);
        var faults = DesignChecker.Check(read.Value!, SampleFiles.Catalog).Faults;
        Assert.Contains(faults, f => f.Message.Contains(words, StringComparison.Ordinal));
    }

    /// <summary>
    /// Twice the open water: twice the liters, more from its face, less ground, and the box lighter by the
    /// soil it takes the place of (soil at squeeze wetness is heavier than 3 cm of water).
    /// </summary>
    [Fact]
    public void A_share_of_the_floor_moves_the_numbers()
    {
        var (some, more) = (In("waterArea: 30 %").Numbers, In("waterArea: 60 %").Numbers);
        Assert.Equal(2.0, more.Weights.BasinWater!.Si / some.Weights.BasinWater!.Si, 1e-9);
        var (a, b) = (some.Water.Balance, more.Water.Balance);
        Assert.True(b.Basins!.Evaporated.Value.Si > 1.3 * a.Basins!.Evaporated.Value.Si);
        Assert.True(b.Gain!.Si > a.Gain!.Si);
        Assert.True(more.Weights.Wet.Si < some.Weights.Wet.Si);
        Assert.True(more.Headspace.Volume.Si > some.Headspace.Volume.Si);
        Assert.Equal(0.7 / 0.4, some.Layers[1].Finished.Si / more.Layers[1].Finished.Si, 1e-9);
    }

    /// <summary>
    /// Ten days of air, floor and basin: each kilogram is booked, the heat closes, and what the basin lost
    /// is what was filled up: evaporated − caught + run over − filled up = 0 over whole days.
    /// </summary>
    [Theory]
    [InlineData("")]
    [InlineData("headspace: { hold: { air: 24 C, humidity: 80 %, airChanges: 4 } }\n")]
    public void The_books_of_water_and_heat_close(string held)
    {
        var design = In("waterArea: 40 %\n" + held).Design;
        var run = BoxRun.From(new BoxSetup(design), BoxRun.FirstDay(design))!;
        var result = run.Through(10, null, TestContext.Current.CancellationToken);
        Assert.Null(result.StoppedEarly);
        Assert.Equal(0.0, result.Water.BalanceError, 1e-6);
        Assert.True(result.Water.ToppedUp > 0.0);
        Assert.True(Math.Abs(result.Heat.BalanceErrorJoules) <= 1e-6 * (Math.Abs(result.Heat.Outside) + 1.0));
        double Sum(Func<SimulationHour, double> of) => result.Hours.Sum(of);
        double basin = Sum(h => h.OpenWaterKilograms) - Sum(h => h.CaughtKilograms);
        Assert.Equal(basin, Sum(h => h.ToppedUpKilograms) - Sum(h => h.OverflowKilograms), 1e-9);
    }

    /// <summary>
    /// Bower and Saylor 2009 (Int. J. Heat Mass Transfer 52:3055), from memory: Sh = 0.230 Sc^⅓ Ra^0.321 of a
    /// free water face, Ra by the density difference of moist air. Dish of 20 cm, water and air 25 °C, 50 %:
    /// w 0.0200 and 0.0099, Δρ/ρ = 0.61 · 0.0101 = 0.0062; ν 1.56e-5, α 2.2e-5, D 2.5e-5 m²/s. A correlation
    /// from heat transfer and one from evaporation: the best of those compared by Shah 2002 is off by 18 %.
    /// </summary>
    [Fact]
    public void Open_water_evaporates_as_published()
    {
        const double width = 0.2;
        double rayleigh = 9.81 * 0.0062 * Math.Pow(width, 3) / (1.56e-5 * 2.2e-5);
        double sherwood = 0.230 * Math.Cbrt(1.56e-5 / 2.5e-5) * Math.Pow(rayleigh, 0.321);
        double published = sherwood * 2.5e-5 / width;
        var laws = new BoxLaws([new(SurfaceRole.Floor, width)], (_, _, _) => 0.0, 0.05, (1.0, 1.0));
        double convection = laws.Convection(
            0,
            new SurfaceAir(25.0, 0.0200, 25.0, 0.0099),
            new HeadspaceDrive { Room = _ => default }
        );
        Assert.InRange(laws.MassTransfer(0, convection) / published, 0.75, 1.25);
    }

    [Fact]
    public void The_ground_is_lit_where_it_is_and_not_on_the_water()
    {
        const string lamp = "lamps: [ { lamp: led-bar-6500k, lumens: 2000, watts: 18, above: 3 cm } ]\n";
        var dry = In(lamp).Numbers.Light!;
        var wet = In(lamp + "waterArea: 50 %").Numbers.Light!;
        Assert.NotEqual(dry.GroundMean.Value.Si, wet.GroundMean.Value.Si);
        // Half a box under one lamp along its middle: no more light than the brightest, no less than half.
        Assert.InRange(wet.GroundMean.Value.Si / dry.GroundMean.Value.Si, 0.5, 2.0);
    }
}
