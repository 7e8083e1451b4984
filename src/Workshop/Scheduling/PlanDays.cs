using Litterfall.Domain.Schedule;

namespace Litterfall.Workshop.Scheduling;

/// <summary>The days of a workshop: when somebody works, when parcels leave and arrive.</summary>
public static class PlanDays
{
    /// <summary>Longest run of days without work or without a carrier that is looked over.</summary>
    private const int LongestRest = 400;

    /// <summary>Whether there is work on a day.</summary>
    public static bool IsWork(this ShopCalendar calendar, DateOnly day) =>
        calendar.WorkDays.Contains(day.DayOfWeek) && !calendar.Holidays.Any(h => h.IsClosed && h.Day == day);

    /// <summary>
    /// Whether parcels with live goods leave on a day. On the eve of a holiday on which carriers stop early
    /// they do not: they would lie over the holiday.
    /// </summary>
    public static bool IsShip(this ShopCalendar calendar, DateOnly day) =>
        calendar.ShipDays.Contains(day.DayOfWeek)
        && calendar.IsWork(day)
        && !calendar.Holidays.Any(h =>
            h.IsWithoutCarrier
            && (h.Day == day || (h.CarrierEndsEveAt is not null && h.Day == day.AddDays(1)))
        );

    /// <summary>Day a parcel arrives that leaves on a day: carriers drive from Monday to Friday.</summary>
    public static DateOnly Arrival(this ShopCalendar calendar, DateOnly ship)
    {
        var day = ship;
        for (var left = calendar.TransitDays; left > 0;)
        {
            day = day.AddDays(1);
            var rests =
                day.DayOfWeek is DayOfWeek.Saturday or DayOfWeek.Sunday
                || calendar.Holidays.Any(h => h.IsWithoutCarrier && h.Day == day);
            left -= rests ? 0 : 1;
        }

        return day;
    }

    /// <summary>The last day up to a day that will do; null where none comes for more than a year.</summary>
    public static DateOnly? UpTo(DateOnly day, Func<DateOnly, bool> does)
    {
        for (var i = 0; i < LongestRest; i++)
        {
            if (does(day.AddDays(-i)))
            {
                return day.AddDays(-i);
            }
        }

        return null;
    }

    /// <summary>
    /// The first day from a day on that will do; null where none comes for more than a year.
    /// </summary>
    public static DateOnly? From(DateOnly day, Func<DateOnly, bool> does)
    {
        for (var i = 0; i < LongestRest; i++)
        {
            if (does(day.AddDays(i)))
            {
                return day.AddDays(i);
            }
        }

        return null;
    }

    /// <summary>Minutes of work on a day by all who work here.</summary>
    public static double Minutes(this ShopCalendar calendar, DateOnly day) =>
        calendar.Workers.Count == 0
            ? (calendar.IsWork(day) ? UnnamedMinutes : 0)
            : calendar.Workers.Sum(w => calendar.Minutes(w, day));

    /// <summary>Minutes of work of one person on a day.</summary>
    public static double Minutes(this ShopCalendar calendar, Worker worker, DateOnly day)
    {
        var at = ((int)day.DayOfWeek + 6) % 7;
        return
            calendar.IsWork(day)
            && at < worker.Hours.Count
            && !worker.Away.Any(a => a.First <= day && day <= a.Last)
            ? worker.Hours[at] * 60
            : 0;
    }

    /// <summary>One person's day, until somebody is entered.</summary>
    private const double UnnamedMinutes = 360;
}
