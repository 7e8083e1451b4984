namespace Litterfall.Workshop.Orders;

/// <summary>Days on which suppliers and the workshop work: Monday to Friday.</summary>
public static class WorkDays
{
    /// <summary>The day after so many working days.</summary>
    /// <param name="from">Day that does not count.</param>
    /// <param name="days">Working days, 0 or more.</param>
    public static DateOnly After(DateOnly from, int days)
    {
        var day = from;
        for (var left = days; left > 0;)
        {
            day = day.AddDays(1);
            left -= day.DayOfWeek is DayOfWeek.Saturday or DayOfWeek.Sunday ? 0 : 1;
        }

        return day;
    }

    /// <summary>The Monday of a week.</summary>
    /// <param name="day">A day of it.</param>
    public static DateOnly Monday(DateOnly day) => day.AddDays(-(((int)day.DayOfWeek + 6) % 7));
}
