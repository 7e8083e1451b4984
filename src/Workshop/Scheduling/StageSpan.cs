using Litterfall.Domain.Schedule;

namespace Litterfall.Workshop.Scheduling;

/// <summary>
/// Days that the work of a stage takes: so many days in a row that none takes more than a share of all hands,
/// the same minutes on each. A day on which fewer minutes are worked is left out.
/// </summary>
/// <param name="Days">How many days.</param>
/// <param name="Minutes">Minutes on each of them, whole.</param>
public readonly record struct StageSpan(int Days, int Minutes)
{
    /// <summary>Own choice: the rest of a day is for what was not planned.</summary>
    private const double MostOfDay = 0.7;

    private const int Week = 7;

    /// <summary>The days of a stage.</summary>
    /// <param name="calendar">Days of the workshop.</param>
    /// <param name="minutes">All its work, minutes.</param>
    public static StageSpan From(ShopCalendar calendar, double minutes)
    {
        var monday = new DateOnly(2001, 1, 1);
        var usual = calendar with
        {
            Holidays = [],
            Workers = [.. calendar.Workers.Select(w => w with { Away = [] })],
        };
        var best = Enumerable.Range(0, Week).Max(d => usual.Minutes(monday.AddDays(d)));
        var days =
            minutes <= 0 || best <= 0 ? 1 : Math.Max(1, (int)Math.Ceiling(minutes / (MostOfDay * best)));
        return new(days, (int)Math.Ceiling(Math.Max(0, minutes) / days));
    }

    /// <summary>Whether there is time enough on a day.</summary>
    public bool Does(ShopCalendar calendar, DateOnly day) =>
        calendar.IsWork(day) && calendar.Minutes(day) >= Minutes;

    /// <summary>The first day of the work that ends on a day; null where there is none.</summary>
    public DateOnly? First(ShopCalendar calendar, DateOnly last) =>
        Each(calendar, last).ToList() is { Count: var count } days && count == Days ? days[0] : null;

    /// <summary>
    /// The day on which work ends that begins on a day or soon after; null where there is none.
    /// </summary>
    public DateOnly? Last(ShopCalendar calendar, DateOnly from)
    {
        var self = this;
        var day = PlanDays.From(from, d => self.Does(calendar, d));
        for (var i = 1; i < Days && day is { } known; i++)
        {
            day = PlanDays.From(known.AddDays(1), d => self.Does(calendar, d));
        }

        return day;
    }

    /// <summary>The days of the work that ends on a day, in their order.</summary>
    public IEnumerable<DateOnly> Each(ShopCalendar calendar, DateOnly last)
    {
        var self = this;
        var days = new List<DateOnly> { last };
        while (
            days.Count < Days && PlanDays.UpTo(days[0].AddDays(-1), d => self.Does(calendar, d)) is { } before
        )
        {
            days.Insert(0, before);
        }

        return days;
    }
}
