using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Cultures;
using Litterfall.Domain.Units;

namespace Litterfall.Workshop.Cultures;

/// <summary>A feeder fly as it is bred in cups.</summary>
/// <param name="Entry">Its entry in the library.</param>
/// <param name="DegreeDays">Warmth from egg to fly, K d.</param>
/// <param name="ThresholdCelsius">Threshold of development, °C.</param>
/// <param name="LayAndHarden">Days to lay before and to harden after.</param>
/// <param name="PerCup">Flies of a cup over its life.</param>
/// <param name="Failing">Share of cups that fail.</param>
public sealed record FlyKind(
    FeederEntry Entry,
    double DegreeDays,
    double ThresholdCelsius,
    double LayAndHarden,
    double PerCup,
    double Failing
)
{
    /// <summary>The fly; null where the library lacks what its cultures need.</summary>
    /// <param name="entry">Its entry.</param>
    public static FlyKind? From(FeederEntry entry) =>
        entry
            is
        {
            WarmthToAdults: { Si: > 0 } warmth,
            DevelopmentZero: { } zero,
            LayAndHarden: { } laying,
            PerCulture: { Si: > 0 } flies,
            FailingShare: { Si: < 1 } failing,
        }
            ? new(
                entry,
                Unit.Day.FromSi(warmth.Si),
                Unit.Celsius.FromSi(zero.Si),
                Unit.Day.FromSi(laying.Si),
                flies.Si,
                failing.Si
            )
            : null;

    /// <summary>Days from set-up to the first flies that can be fed, at an even temperature: K ÷ (T − T0)
    /// and the days to lay and to harden.</summary>
    /// <param name="celsius">Temperature, °C, above the threshold.</param>
    public double Lead(double celsius) =>
        Physics.Crew.DegreeDays.DevelopmentDays(DegreeDays, ThresholdCelsius, celsius) + LayAndHarden;

    /// <summary>Cups to start each week: 7 times the flies of a day over what a cup gives, failures
    /// counted, rounded up.</summary>
    /// <param name="fliesPerDay">Flies eaten in a day.</param>
    public int CupsPerWeek(double fliesPerDay) =>
        (int)Math.Ceiling((7 * fliesPerDay / (PerCup * (1 - Failing))) - 1e-9);

    /// <summary>First day with flies to feed, to the nearest day.</summary>
    /// <param name="started">Day of set-up.</param>
    /// <param name="celsius">Mean temperature of a day, °C.</param>
    /// <returns>Null where it is too cold for a year.</returns>
    public DateOnly? FirstFlies(DateOnly started, Func<DateOnly, double> celsius)
    {
        const int longest = 365;
        var left = DegreeDays;
        for (var day = 0; day < longest; day++)
        {
            var warmth = Math.Max(0, celsius(started.AddDays(day)) - ThresholdCelsius);
            if (warmth > 0 && left <= warmth)
            {
                return started.AddDays((int)Math.Round(day + (left / warmth) + LayAndHarden));
            }

            left -= warmth;
        }

        return null;
    }

    /// <summary>Flies that come out of a cup on a day, failures counted; counts correct them.</summary>
    /// <param name="cup">The cup.</param>
    /// <param name="first">Its first day with flies.</param>
    /// <param name="day">The day.</param>
    public double Emerging(Culture cup, DateOnly first, DateOnly day)
    {
        var age = day.DayNumber - cup.Since.DayNumber;
        var isGone = !cup.IsUsable || age >= CulturePractice.Days(FlyPractice.Discard);
        return isGone
            ? 0
            : FlyPractice.ShareOn(day.DayNumber - first.DayNumber) * Expected(cup) * Told(cup, first);
    }

    private double Expected(Culture cup) =>
        PerCup * (1 - Failing) * cup.Liters / (FlyPractice.Medium.Si * 1000);

    /// <summary>
    /// What counts say against what was expected by then, to the power of their weight: a cup that gave half
    /// by its first count gives less later too.
    /// </summary>
    private double Told(Culture cup, DateOnly first)
    {
        var factor = 1.0;
        var variance = Math.Pow(CulturePractice.SampleError.Si + CulturePractice.StartError.Si, 2);
        foreach (var count in cup.Counts.OrderBy(c => c.Day))
        {
            var expected = factor * Expected(cup) * SharesUpTo(count.Day.DayNumber - first.DayNumber);
            if (expected <= 0)
            {
                continue;
            }

            var error = CultureRun.ErrorOf(count.Way);
            var weight = variance / (variance + (error * error));
            factor *= Math.Pow(Math.Max(count.Animals, 0.5) / expected, weight);
            variance *= 1 - weight;
        }

        return factor;
    }

    private static double SharesUpTo(int day)
    {
        var sum = 0.0;
        for (var on = 0; on <= day; on++)
        {
            sum += FlyPractice.ShareOn(on);
        }

        return sum;
    }
}
