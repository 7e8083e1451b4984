using Litterfall.Domain.Tanks;
using Litterfall.Forecasting.Climate;
using Litterfall.Running.Correcting;
using Litterfall.UnitTests.Judging;
using Xunit;

namespace Litterfall.UnitTests.Running.Correcting;

/// <summary>
/// Corrections of tanks whose truth is known: inputs drawn from what is known before any reading, a life run
/// hour by hour, readings with noise. Bands are held to their promise by the binomial distribution.
/// </summary>
public sealed class CorrectorTests
{
    private static readonly DateOnly First = new(2026, 3, 2);

    private static BoxSetup Setup(string text) => new(Posed.Text(text).Design);

    private static TankReading Level(int day, double millimeters) =>
        new()
        {
            At = First.ToDateTime(new TimeOnly(9, 0)).AddDays(day),
            Kind = ReadingKind.Level,
            Amount = millimeters,
        };

    /// <summary>
    /// Own worked example: air changed half as often again as designed, nozzles that give 5 % more. Three
    /// readings with a dipstick, off by 1, −1 and 0.5 mm; the date of the next drain is right within two
    /// days.
    /// </summary>
    [Fact]
    public void After_three_dipstick_readings_the_next_drain_is_right_within_two_days()
    {
        var setup = Setup(TankHistoryTests.Held);
        var truth = ClimateChange.None with { HeldAir = 1.5, Mist = 1.05 };
        var midnight = First.ToDateTime(TimeOnly.MinValue);
        var run = new TankHistory { Spans = [new(First, setup, truth)], Watched = midnight }.Run(
            24 * 60,
            null,
            TestContext.Current.CancellationToken
        )!;
        var drain = run.Events.First(e => e.Kind == "drain").Hour / 24;
        var last = (int)drain - 5;
        double[] noise = [1, -1, 0.5];
        var readings = Enumerable
            .Range(0, 3)
            .Select(i => last - (9 * (2 - i)))
            .Select((day, i) => Level(day, (1000 * run.Hours[(24 * day) + 9].LevelMeters) + noise[i]));
        var corrected = Corrector.Run(
            TankCase.From(setup, [.. readings]),
            new CorrectionWish(32, 1, 60),
            null,
            TestContext.Current.CancellationToken
        )!;
        Assert.NotNull(corrected.After.NextDrain);
        Assert.Equal(drain, corrected.After.NextDrain.Day, 2.0);
        Assert.InRange(drain, corrected.After.NextDrain.Low, corrected.After.NextDrain.High!.Value);
        var (before, after) = (corrected.Before.Level, corrected.After.Level);
        var hour = (24 * last) + 9;
        Assert.True(after.High[hour] - after.Low[hour] < 0.5 * (before.High[hour] - before.Low[hour]));
        Assert.NotNull(corrected.Next);
    }

    /// <summary>
    /// Bands of 90 %: of n independent tanks fewer than the binomial distribution allows once in a thousand
    /// would say that they promise too much; on a long run they hold 85 to 95 % of the truths.
    /// </summary>
    [Fact]
    public void Bands_of_ninety_percent_hold_the_truth_as_often_as_they_say()
    {
        var setup = Setup(TankHistoryTests.Held);
        int tanks = LongRun.Cases(8, 200);
        var scores = Enumerable
            .Range(0, tanks)
            .Select(i =>
                new SyntheticTank(setup, 900 + i) { LookDays = [8, 13, 18] }.Score(
                    new CorrectionWish(24, 1 + i)
                )
            )
            .ToList();
        Assert.True(scores.Count(s => s.LevelHeld[0]) >= Least(tanks));
        Assert.True(scores.Count(s => s.DrainHeld) >= Least(tanks));
        if (LongRun.IsAsked)
        {
            Assert.InRange(scores.Count(s => s.LevelHeld[1]) / (double)tanks, 0.85, 0.95);
            Assert.InRange(scores.Count(s => s.DrainHeld) / (double)tanks, 0.85, 0.95);
        }

        Assert.True(scores.Average(s => s.LevelMiss) < 0.5 * scores.Average(s => s.LevelMissBefore));
    }

    /// <summary>The number of hits in n that 90 % would fall short of once in a thousand.</summary>
    private static int Least(int n)
    {
        double below = 0;
        for (int k = 0; k <= n; k++)
        {
            below += Chance(n, k);
            if (below > 0.001)
            {
                return k;
            }
        }

        return n;
    }

    private static double Chance(int n, int k)
    {
        double chance = Math.Pow(0.9, k) * Math.Pow(0.1, n - k);
        for (int i = 0; i < k; i++)
        {
            chance *= (n - i) / (double)(i + 1);
        }

        return chance;
    }

    /// <summary>
    /// A nozzle in a cup: 80 ± 3.6 mL/min against 90 ± 3.85 of the prior (own worked example).
    /// </summary>
    [Fact]
    public void A_nozzle_in_a_cup_is_weighed_against_the_design()
    {
        var setup = Setup(TankHistoryTests.Held);
        var reading = new TankReading
        {
            At = First.ToDateTime(new TimeOnly(9, 0)).AddDays(2),
            Kind = ReadingKind.Mist,
            Amount = 80,
        };
        var corrected = Corrector.Run(
            TankCase.From(setup, [reading]),
            new CorrectionWish(32, 1, 4),
            null,
            TestContext.Current.CancellationToken
        )!;
        // In logarithms: prior 0 ± ln(1.07/0.93)/3.29, reading ln(80/90) ± 0.04, off by the curve of a few
        // hundredths.
        double prior = Math.Pow(Math.Log(1.07 / 0.93) / 3.289707, 2);
        double share = prior / (prior + (0.04 * 0.04));
        double expected = 90 * Math.Sqrt(0.93 * 1.07) * Math.Exp(share * Math.Log(80.0 / 90.0));
        var nozzle = Assert.Single(corrected.After.Parameters, p => p.Key == "nozzle");
        Assert.Equal(expected, nozzle.Mean, 0.6);
    }

    [Fact]
    public void The_same_seed_gives_the_same_numbers()
    {
        var setup = Setup(TankHistoryTests.Held);
        TankCorrection Run() =>
            Corrector.Run(
                TankCase.From(setup, [Level(5, 6), Level(8, 11)]),
                new CorrectionWish(16, 7, 10),
                null,
                TestContext.Current.CancellationToken
            )!;
        var (one, other) = (Run(), Run());
        Assert.Equal(one.After.Level.Millimeters, other.After.Level.Millimeters);
        Assert.Equal(one.After.Parameters, other.After.Parameters);
    }

    /// <summary>A level typed a hundred times too high must not turn the forecast over.</summary>
    [Fact]
    public void A_slip_of_the_pen_counts_little_and_is_told()
    {
        var setup = Setup(TankHistoryTests.Held);
        var corrected = Corrector.Run(
            TankCase.From(setup, [Level(8, 12), Level(9, 180)]),
            new CorrectionWish(16, 1, 12),
            null,
            TestContext.Current.CancellationToken
        )!;
        Assert.Contains(corrected.Ignored, i => i.Contains("180 mm", StringComparison.Ordinal));
    }

    /// <summary>Due dates: a look before an uncertain drain, none before a sure one.</summary>
    [Fact]
    public void A_look_is_due_before_a_drain_that_may_come_early()
    {
        var due = TankOutlook.Due(First, new DayBand(20.4, 15.2, 30.9), null, First.AddDays(10));
        Assert.Equal(
            [(DueKind.Look, new DateOnly(2026, 3, 17)), (DueKind.Drain, new DateOnly(2026, 3, 22))],
            due.Select(d => (d.Kind, d.On))
        );
        var sure = Assert.Single(TankOutlook.Due(First, new DayBand(20.4, 19.2, 21.9), null, null));
        Assert.Equal(DueKind.Drain, sure.Kind);
    }
}
