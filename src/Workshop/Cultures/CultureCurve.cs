using System.Collections.Immutable;
using Litterfall.Domain.Cultures;
using Litterfall.Physics.Crew;

namespace Litterfall.Workshop.Cultures;

/// <summary>A culture on a day, as the model has it.</summary>
/// <param name="Day">The day.</param>
/// <param name="Animals">Animals that walk.</param>
/// <param name="Low">Fewest of them.</param>
/// <param name="High">Most of them.</param>
public sealed record CulturePoint(DateOnly Day, double Animals, double Low, double High);

/// <summary>A culture over days: what it held, corrected by its counts, and what it will hold.</summary>
/// <param name="Culture">The culture.</param>
/// <param name="Points">One for each day, from its first.</param>
/// <param name="Plateau">Animals that walk at most; infinite where nobody tells.</param>
/// <param name="WeeklyShare">Share that can be taken this week.</param>
public sealed record CultureCurve(
    Culture Culture,
    ImmutableArray<CulturePoint> Points,
    double Plateau,
    double WeeklyShare
)
{
    /// <summary>Leads a culture from its first day to another.</summary>
    /// <param name="kind">The animal.</param>
    /// <param name="culture">The culture.</param>
    /// <param name="celsius">Mean temperature of a day, °C.</param>
    /// <param name="until">Last day; at most ten years after the first.</param>
    /// <param name="today">Day whose surplus is told.</param>
    public static CultureCurve Lead(
        CultureKind kind,
        Culture culture,
        Func<DateOnly, double> celsius,
        DateOnly until,
        DateOnly today
    )
    {
        const int longest = 3653;
        var last = culture.End is { } end && end.Day < until ? end.Day : until;
        last = Earlier(last, culture.Since.AddDays(longest));
        var points = ImmutableArray.CreateBuilder<CulturePoint>();
        var (share, plateau) = (0.0, 0.0);
        foreach (var (day, run) in Walk(kind, culture, celsius, last))
        {
            points.Add(new(day, run.Walking, run.Walking / run.Band, run.Walking * run.Band));
            plateau = run.Plateau;
            if (day == today)
            {
                share = kind.WeeklyShare(celsius(day), run.IsNearPlateau);
            }
        }

        return new(culture, points.ToImmutable(), plateau, share);
    }

    /// <summary>The culture on a day; the nearest day it has.</summary>
    /// <param name="day">The day.</param>
    public CulturePoint On(DateOnly day) =>
        Points[Math.Clamp(day.DayNumber - Points[0].Day.DayNumber, 0, Points.Length - 1)];

    /// <summary>The state of a culture on a day, to plan from.</summary>
    /// <param name="kind">The animal.</param>
    /// <param name="culture">The culture.</param>
    /// <param name="celsius">Mean temperature of a day, °C.</param>
    /// <param name="day">The day.</param>
    public static CultureRun StateOn(
        CultureKind kind,
        Culture culture,
        Func<DateOnly, double> celsius,
        DateOnly day
    ) => Walk(kind, culture, celsius, day).Last().Run;

    private static IEnumerable<(DateOnly Day, CultureRun Run)> Walk(
        CultureKind kind,
        Culture culture,
        Func<DateOnly, double> celsius,
        DateOnly last
    )
    {
        var run = CultureRun.Start(
            kind,
            culture.StartedWith,
            culture.IsFromAdults,
            culture.Liters,
            celsius(culture.Since)
        );
        var rates = new DayRates(kind, celsius, culture.Since, last);
        Happen(run, culture, culture.Since);
        yield return (culture.Since, run);
        for (var day = culture.Since.AddDays(1); day <= last; day = day.AddDays(1))
        {
            run.Day(rates.On(day));
            Happen(run, culture, day);
            yield return (day, run);
        }
    }

    /// <summary>What people did on a day: splits and harvests first, then what they counted.</summary>
    private static void Happen(CultureRun run, Culture culture, DateOnly day)
    {
        foreach (var split in culture.Splits.Where(s => s.Day == day))
        {
            run.Split(split.Share, culture.Liters);
        }

        foreach (var harvest in culture.Harvests.Where(h => h.Day == day))
        {
            run.Harvest(harvest.Animals);
        }

        foreach (var count in culture.Counts.Where(c => c.Day == day))
        {
            run.Count(count.Animals, count.Way);
        }
    }

    private static DateOnly Earlier(DateOnly a, DateOnly b) => a < b ? a : b;
}

/// <summary>Rates of each day of a shelf; in whole days where every day is alike.</summary>
internal sealed class DayRates
{
    private readonly CultureKind kind;
    private readonly Func<DateOnly, double> celsius;
    private readonly Dictionary<double, LifeTable> known = [];
    private readonly bool isEven = true;

    public DayRates(CultureKind kind, Func<DateOnly, double> celsius, DateOnly from, DateOnly until)
    {
        (this.kind, this.celsius) = (kind, celsius);
        var first = celsius(from);
        for (var day = from; day <= until && isEven; day = day.AddDays(1))
        {
            isEven = celsius(day).Equals(first);
        }
    }

    public LifeTable On(DateOnly day)
    {
        var warm = celsius(day);
        if (!known.TryGetValue(warm, out var rates))
        {
            rates = known[warm] = isEven ? kind.Rates(warm) : kind.Species.At(warm);
        }

        return rates;
    }
}
