using System.Collections.Immutable;
using Litterfall.Dispatch.Regions;
using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Lists;

namespace Litterfall.Dispatch.Verdicts;

/// <summary>Judges parcels over the days of a week.</summary>
public static class WeekJudge
{
    /// <summary>The verdicts of one parcel.</summary>
    /// <param name="task">The parcel with all that it is judged by.</param>
    /// <param name="cancel">Stops it.</param>
    public static WeekVerdict Judge(WeekTask task, CancellationToken cancel) => Judge([task], cancel)[0];

    /// <summary>The verdicts of many parcels, in their order.</summary>
    /// <param name="tasks">The parcels.</param>
    /// <param name="cancel">Stops it.</param>
    public static ImmutableArray<WeekVerdict> Judge(ImmutableArray<WeekTask> tasks, CancellationToken cancel)
    {
        ImmutableArray<DayJudge> judges = [.. tasks.Select(t => new DayJudge(t))];
        var days = tasks.Select(t => new DayVerdict[Math.Max(0, t.Days)]).ToArray();
        var work = tasks.SelectMany((t, i) => Enumerable.Range(0, t.Days).Select(d => (Task: i, Day: d)));
        Parallel.ForEach(work, new ParallelOptions { CancellationToken = cancel }, w =>
            days[w.Task][w.Day] = judges[w.Task].Judge(tasks[w.Task].From.AddDays(w.Day), cancel)
        );
        return [.. tasks.Select((_, i) => Week(judges[i], days[i]))];
    }

    private static WeekVerdict Week(DayJudge judge, DayVerdict[] days)
    {
        var band = judge.Band;
        return new()
        {
            Strictest = band?.Strictest.Content.Key,
            Class = band?.Limits.Letter ?? "",
            BandLowCelsius = band?.Limits.KeepLow,
            BandHighCelsius = band?.Limits.KeepHigh,
            Days = [.. days.Select(d => Cured(d, days))],
            NextDay = First(days, d => d.MayShip),
            NextDayOnceDone = days.Any(d => d.MayShip) ? null : First(days, OpenTasks.Only),
            NextPlainDay = First(days, d => d.Verdict == ShipVerdict.Ship),
        };
    }

    private static DateOnly? First(IEnumerable<DayVerdict> days, Func<DayVerdict, bool> does) =>
        days.FirstOrDefault(does)?.Day;

    /// <summary>The first day that works; else the first that works once the workshop did its part.</summary>
    private static DayVerdict? Next(IEnumerable<DayVerdict> days, Func<DayVerdict, bool> does)
    {
        var ours = days.Where(d => d.MayShip || OpenTasks.Only(d)).Where(does).ToList();
        return ours.Find(d => d.MayShip) ?? (ours.Count > 0 ? ours[0] : null);
    }

    private static string Words(DayVerdict? next) =>
        next is null ? ""
        : next.MayShip ? $"Ship on {CalendarWords.Day(next.Day)}."
        : $"Ship on {CalendarWords.Day(next.Day)}, {OpenTasks.Once(next)}.";

    /// <summary>Every hold names a cure: what was found, else the next day that works.</summary>
    private static DayVerdict Cured(DayVerdict day, DayVerdict[] days) =>
        day.Verdict < ShipVerdict.DepotOnly
            ? day
            : day with
            {
                Reasons = [.. day.Reasons.Select(r => Cured(r, day, days))],
            };

    private static ShipReason Cured(ShipReason reason, DayVerdict day, DayVerdict[] days)
    {
        if (reason.Verdict < ShipVerdict.DepotOnly || reason.CureDay is not null)
        {
            return reason.Rule == ShipRule.Calendar ? Cleared(reason, days) : reason;
        }

        var isWeather =
            reason.Rule
            is ShipRule.PublishedGuide
                or ShipRule.ClassBands
                or ShipRule.ShopPolicy
                or ShipRule.Journey;
        var next = isWeather
            ? Next(days.Where(d => d.Day > day.Day), d => Rule(d, reason) < reason.Verdict)
            : null;
        var bought = day.Reasons.FirstOrDefault(r => r.Rule == ShipRule.Journey && r.Cure.Length > 0)?.Cure;
        var words = Words(next);
        var other =
            reason.Verdict == ShipVerdict.DepotOnly
                ? "Have it picked up at the depot, or wait for a milder day."
                : $"None of the days up to {CalendarWords.Day(days[^1].Day)} will do: judge again with the "
                    + "next forecast.";
        return reason with
        {
            CureDay = next?.Day,
            Cure =
                reason.Cure.Length > 0 ? $"{reason.Cure} {words}".TrimEnd()
                : isWeather && BandRule.IsPassable(reason) && bought is not null
                    ? $"{bought} {words}".TrimEnd()
                : words.Length > 0 ? words
                : other,
        };
    }

    /// <summary>A day on which the calendar is clear is no cure where something else holds it.</summary>
    private static ShipReason Cleared(ShipReason reason, DayVerdict[] days)
    {
        var clear = days.FirstOrDefault(d => d.Day == reason.CureDay);
        if (clear is null or { MayShip: true })
        {
            return reason;
        }

        var next = Next(days.Where(d => d.Day >= clear.Day), _ => true);
        return reason with
        {
            CureDay = next?.Day,
            Cure = next is not null
                ? Words(next)
                : $"The calendar is clear on {CalendarWords.Day(clear.Day)}, but that day is held for "
                    + "another reason; see there.",
        };
    }

    private static ShipVerdict Rule(DayVerdict day, ShipReason reason) =>
        day.Rules.Where(r => r.Rule == reason.Rule).Select(r => r.Verdict).DefaultIfEmpty().Max();
}
