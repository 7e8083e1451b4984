using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Cultures;
using Litterfall.Workshop.Cultures;

namespace Litterfall.UnitTests.Workshop.Cultures;

/// <summary>Fly cups by cohort, famine ahead, rations.</summary>
public sealed class FlyTests
{
    private static readonly DateOnly Today = new(2026, 9, 3);

    private static FlyKind Kind(string key = "drosophila-melanogaster") =>
        FlyKind.From(CultureModelTests.Library.Value.Find<FeederEntry>(key)!)!;

    private static Culture Cup(int daysAgo, string number = "FLY-1") =>
        new()
        {
            Number = number,
            Species = "drosophila-melanogaster",
            Line = "A",
            Since = Today.AddDays(-daysAgo),
            Liters = 0.15,
            StartedWith = 60,
            Shelf = "warm",
        };

    /// <summary>
    /// Own worked example: a line through 19 d at 18 °C and 8.5 d at 25 °C, K = 107.7 and T0 = 12.34; for the
    /// large kind K = 180. Two days of laying and one to harden come on top.
    /// </summary>
    [Theory]
    [InlineData("drosophila-melanogaster", 21, 12.44)]
    [InlineData("drosophila-melanogaster", 28, 6.88)]
    [InlineData("drosophila-melanogaster", 24, 9.24)]
    [InlineData("drosophila-hydei", 25, 14.22)]
    [InlineData("drosophila-hydei", 18, 31.80)]
    public void Development_goes_by_warmth(string key, double celsius, double days) =>
        Assert.Equal(days + 3, Kind(key).Lead(celsius), 2);

    /// <summary>
    /// 9.24 + 2 + 1 days are 12 at 24 °C; 21 °C for five days leave 64.4 K d, 5.5 more days.
    /// </summary>
    [Fact]
    public void The_first_flies_come_by_the_warmth_of_each_day()
    {
        Assert.Equal(Today.AddDays(12), Kind().FirstFlies(Today, _ => 24));
        // 107.7 − 5 · 8.66 = 64.4; 64.4 ÷ 11.66 = 5.52; 10.52 + 3 = 13.52.
        Assert.Equal(Today.AddDays(14), Kind().FirstFlies(Today, day => day < Today.AddDays(5) ? 21 : 24));
        Assert.Null(Kind().FirstFlies(Today, _ => 12));
    }

    /// <summary>Ten frogs at 40.2 flies a day: 2,814 a week over 700 · 0.85 are 4.73, so five cups.</summary>
    [Fact]
    public void Cups_a_week_are_rounded_up() => Assert.Equal(5, Kind().CupsPerWeek(402));

    /// <summary>0.40 in the first five days, 0.35 in the next five, 0.25 in ten: 1 in all.</summary>
    [Fact]
    public void All_flies_come_out_once()
    {
        Assert.Equal(1, Enumerable.Range(-5, 60).Sum(FlyPractice.ShareOn), 1e-12);
        var cup = Cup(12);
        var first = Today;
        Assert.Equal(700 * 0.85 * 0.08, Kind().Emerging(cup, first, Today), 6);
        Assert.Equal(700 * 0.85 * 0.07, Kind().Emerging(cup, first, Today.AddDays(5)), 6);
        Assert.Equal(700 * 0.85 * 0.025, Kind().Emerging(cup, first, Today.AddDays(10)), 6);
        // The cup is thrown away at 30 days, before its last flies.
        Assert.Equal(0, Kind().Emerging(cup, first, Today.AddDays(18)));
    }

    /// <summary>
    /// A cup that gave 24 of the 47.6 flies expected on its first day, all counted: variance (0.25 + 0.30)²,
    /// weight 0.3025 ÷ 0.305 = 0.9918, factor (24 ÷ 47.6)^0.9918 = 0.507.
    /// </summary>
    [Fact]
    public void A_count_corrects_what_is_still_to_come()
    {
        var cup = Cup(12) with { Counts = [new CultureCount(Today, 24, CountWay.All, "Ilse")] };
        Assert.Equal(
            0.507,
            Kind().Emerging(cup, Today, Today.AddDays(1)) / Kind().Emerging(Cup(12), Today, Today.AddDays(1)),
            3
        );
    }

    /// <summary>
    /// One cup gives 47.6 flies a day for five days, then 41.65; 45 are eaten. 13 that waited from the first
    /// days cover the 3.35 a day that are missing for some days; the famine is named with the cup that had to
    /// be started twelve days before.
    /// </summary>
    [Fact]
    public void A_famine_is_seen_ahead_with_the_start_that_was_missing()
    {
        var cups = new[] { Cup(12) };
        var forecast = FlyForecast.Find(Kind(), cups, (_, _) => 24, _ => 45, (Today, FlyForecast.Ahead));
        // Days 0 to 4 leave 2.6 each, 13 in all; from day 5 on 3.35 are missing: 3 days are covered, the
        // fourth lacks 4 · 3.35 − 13 = 0.4.
        Assert.Equal(Today.AddDays(8), forecast.Famine!.Day);
        Assert.Equal(0.4, forecast.Famine.Missing, 1);
        Assert.Equal(Today.AddDays(8 - 12), forecast.Famine.StartBy);
        Assert.All(forecast.Days.Take(8), d => Assert.Equal(0, d.Missing));
        Assert.Contains(
            "was missing",
            CultureWords.Told(forecast.Famine, "small flies", Today),
            StringComparison.Ordinal
        );
    }

    /// <summary>Five cups a week are three on one day and two on the other.</summary>
    [Fact]
    public void Starts_are_staggered()
    {
        var forecast = FlyForecast.Find(Kind(), [], (_, _) => 24, _ => 402, (Today, FlyForecast.Ahead));
        Assert.Equal(
            [(DayOfWeek.Sunday, 3), (DayOfWeek.Wednesday, 2)],
            forecast
                .Starts(Today, Today.AddDays(6), CultureTasks.FlyDays)
                .Select(s => (s.Day.DayOfWeek, s.Cups))
        );
    }

    /// <summary>
    /// Own worked example: 12.07 mg of dry flies with 1.1 % phosphorus and 0.11 % calcium need 0.186 mg
    /// calcium for 1.5 to 1, in 0.464 mg of calcium carbonate.
    /// </summary>
    [Fact]
    public void Chalk_brings_the_flies_to_the_ratio() =>
        Assert.Equal(0.464, RationTable.Chalk(12.07, 0.0011, 0.011), 3);

    /// <summary>An adult of 4.5 g at 24 °C eats 40.2 small flies a day (own worked example).</summary>
    [Fact]
    public void Rations_follow_mass_and_age()
    {
        var group = new FedGroup
        {
            Key = "a",
            Tank = "room 1",
            Animal = "dendrobates-auratus",
            Count = 10,
            Grams = 4.5,
            Since = Today.AddDays(-28),
        };
        var ration = RationTable.For(group, CultureModelTests.Library.Value);
        Assert.Equal(402, ration.FliesPerDay!.Value, 0.5);
        Assert.Equal(2, ration.CalciumEvery);
        Assert.True(ration.HasVitamins(Today));
        Assert.False(ration.HasVitamins(Today.AddDays(1)));
        var young = RationTable.For(group with { Class = FedClass.Froglet }, CultureModelTests.Library.Value);
        Assert.Equal(402 * 2 / 1.5, young.FliesPerDay!.Value, 0.7);
        Assert.Equal((1, 7), (young.CalciumEvery, young.VitaminDays));
    }
}
