using Litterfall.Domain.Checking;
using Litterfall.Forecasting.Climate;
using Litterfall.Physics.Coupling;
using Litterfall.Running.Correcting;
using Litterfall.UnitTests.Judging;
using Xunit;

namespace Litterfall.UnitTests.Running.Correcting;

/// <summary>
/// A tank's life in spans, with water drawn off and poured in by hand: books that close, and states that go
/// on.
/// </summary>
public sealed class TankHistoryTests
{
    /// <summary>The box of our own worked example of water, misted 180 mL a day.</summary>
    internal const string Reference =
        "litterfall: 1\nname: posed\nplanted: 2026-03-02\n"
        + "box: { outside: { length: 45 cm, depth: 45 cm, height: 60 cm }, "
        + "glass: { walls: 5 mm, base: 5 mm } }\n"
        + "floor: { drainage: { material: expanded-clay-8-16, depth: 5 cm }, "
        + "soil: { recipe: ready-rainforest, depth: 7 cm, settling: 15 % }, "
        + "litter: { material: oak-leaves, depth: 3 cm } }\n"
        + "lid: { material: glass, thickness: 4 mm, gap: 2 mm }\n"
        + "drain: { kind: siphon }\n"
        + "misting: { nozzles: 2, each: 90 mL/min, times: [ { at: \"07:30\", for: 20 s }, "
        + "{ at: \"12:30\", for: 20 s }, { at: \"18:30\", for: 20 s } ] }\n"
        + "room: { temperature: 21 C, humidity: 50 % }\n";

    /// <summary>The same with its air held at 24 °C, 92 % and two changes an hour.</summary>
    internal const string Held =
        Reference + "headspace: { hold: { air: 24 C, humidity: 92 %, airChanges: 2 } }\n";

    private static readonly DateOnly First = new(2026, 3, 2);

    private static BoxSetup Setup(string text) => new(Posed.Text(text).Design);

    private static TankHistory Life(BoxSetup setup) =>
        new()
        {
            Spans = [new(First, setup, ClimateChange.None)],
            Watched = First.ToDateTime(TimeOnly.MinValue).AddDays(1000),
        };

    private static DateTime At(int day, int hour) => First.ToDateTime(new TimeOnly(hour, 0)).AddDays(day);

    [Theory]
    [InlineData(1)]
    [InlineData(6)]
    public void An_amount_is_drawn_off_to_the_milliliter_and_the_books_close(int floorHours)
    {
        var life = Life(Setup(Held)) with
        {
            StartLevelMeters = 0.02,
            Pace = new SimulationPace(floorHours, 1),
            ByHand = [new(At(2, 9), 0.5), new(At(3, 9), -0.3)],
        };
        var run = life.Run(24 * 5, null, TestContext.Current.CancellationToken)!;
        var drawn = Assert.Single(run.Events, e => e.Kind == "drawn");
        Assert.Equal(57.0, drawn.Hour);
        Assert.Equal(0.5, drawn.Kilograms, 1e-3);
        var books = run.Parts[0].Water;
        Assert.Equal(0.5, books.Drained, 1e-3);
        Assert.Equal(0.3, books.ToppedUp, 1e-9);
        Assert.Equal(0.0, books.BalanceError, 1e-6);
    }

    /// <summary>Nobody can draw off more than there is.</summary>
    [Fact]
    public void More_than_there_is_takes_all_there_is()
    {
        var life = Life(Setup(Held)) with { StartLevelMeters = 0.01, ByHand = [new(At(0, 5), 50)] };
        var run = life.Run(24, null, TestContext.Current.CancellationToken)!;
        var drawn = Assert.Single(run.Events, e => e.Kind == "drawn");
        Assert.InRange(drawn.Kilograms, 0.5, 1.5);
        Assert.True(run.Hours[6].LevelMeters < 0.003);
    }

    /// <summary>
    /// Until someone watches it a tank fills beyond its mark; then it is drawn off at once.
    /// </summary>
    [Fact]
    public void It_is_drained_at_its_mark_only_from_the_day_on_that_someone_watches()
    {
        var setup = Setup(Held);
        var life = Life(setup) with { StartLevelMeters = 0.038, Watched = At(4, 9) };
        var run = life.Run(24 * 8, null, TestContext.Current.CancellationToken)!;
        var drain = Assert.Single(run.Events, e => e.Kind == "drain");
        Assert.InRange(drain.Hour, 105.0, 106.0);
        Assert.True(run.Hours[104].LevelMeters > 0.04);
    }

    /// <summary>
    /// A run that goes on from the state of another is the run in one go, but for the first steps of the
    /// solver after it.
    /// </summary>
    [Theory]
    [InlineData(Held)]
    [InlineData(Reference)]
    public void A_life_that_goes_on_is_the_same_life(string text)
    {
        var life = Life(Setup(text));
        var whole = life.Run(24 * 6, null, TestContext.Current.CancellationToken)!;
        var part = life.Run(24 * 4, null, TestContext.Current.CancellationToken)!;
        var rest = life.Run(24 * 6, part.State, TestContext.Current.CancellationToken)!;
        Assert.Equal(96.0, rest.Hours[0].Hour);
        Assert.Equal(144.0, rest.Hours[^1].Hour);
        Assert.Equal(1000 * whole.Hours[^1].LevelMeters, 1000 * rest.Hours[^1].LevelMeters, 0.05);
        Assert.Equal(whole.Hours[^1].AirMean, rest.Hours[^1].AirMean, 0.05);
    }

    /// <summary>
    /// Misting stopped from a day on: 180 mL a day less from then (own worked example: 3 × 20 s of two
    /// nozzles of 90 mL a minute).
    /// </summary>
    [Fact]
    public void A_span_with_another_design_goes_on_from_the_one_before()
    {
        var dry = Setup(Held.Replace("each: 90 mL/min", "each: 1 mL/min", StringComparison.Ordinal));
        var life = Life(Setup(Held));
        var changed = life with
        {
            Spans = [.. life.Spans, new TankSpan(First.AddDays(3), dry, ClimateChange.None)],
        };
        var run = changed.Run(24 * 6, null, TestContext.Current.CancellationToken)!;
        Assert.Equal(2, run.Parts.Length);
        Assert.Equal(145, run.Hours.Length);
        Assert.Equal(3 * 0.180, run.Parts[0].Water.Misted, 1e-6);
        Assert.Equal(3 * 0.002, run.Parts[1].Water.Misted, 1e-6);
        Assert.Equal(run.Parts[0].Hours[^1].LevelMeters, run.Parts[1].Hours[0].LevelMeters, 1e-12);
    }

    /// <summary>
    /// The brisk pace of the members against the usual one: half a millimeter of level, a third of what the
    /// box of our own worked example gains in a day (135 mL on 0.81 L a centimeter).
    /// </summary>
    [Theory]
    [InlineData(Held, 1.0)]
    [InlineData(Reference, 1.0)]
    [InlineData(Reference, 0.6)]
    public void The_brisk_pace_costs_less_than_half_a_millimeter(string text, double air)
    {
        var setup = Setup(text);
        var change = ClimateChange.None with { AirFlow = air, HeldAir = air };
        var life = Life(setup) with { Spans = [new(First, setup, change)] };
        var fine = life.Run(24 * 25, null, TestContext.Current.CancellationToken)!;
        var brisk = (life with { Pace = TankCase.Brisk }).Run(
            24 * 25,
            null,
            TestContext.Current.CancellationToken
        )!;
        var worst = fine
            .Hours.Zip(brisk.Hours)
            .Max(h => Math.Abs(h.First.LevelMeters - h.Second.LevelMeters));
        Assert.InRange(1000 * worst, 0.0, 0.5);
        Assert.Equal(0.0, brisk.Parts[0].Water.BalanceError, 1e-6);
        Assert.True(brisk.Parts[0].AirSteps <= fine.Parts[0].AirSteps / 2);
    }

    /// <summary>Voids a tenth wider: a tenth more water stands in a centimeter.</summary>
    [Fact]
    public void Wider_voids_hold_more_in_a_centimeter()
    {
        double Drawn(double pores)
        {
            var setup = Setup(Held);
            var soil = ClimateChange.None.Soil with { DrainagePores = pores };
            var life = Life(setup) with
            {
                Spans = [new(First, setup, ClimateChange.None with { Soil = soil })],
                StartLevelMeters = 0.03,
                ByHand = [new(At(0, 1), 0, 0.01)],
            };
            return Assert.Single(life.Run(3)!.Events, e => e.Kind == "drawn").Kilograms;
        }

        Assert.Equal(1.1, Drawn(1.1) / Drawn(1.0), 0.03);
    }
}
