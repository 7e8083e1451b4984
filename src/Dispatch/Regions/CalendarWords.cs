using System.Globalization;

namespace Litterfall.Dispatch.Regions;

/// <summary>Words for days and hours.</summary>
public static class CalendarWords
{
    /// <summary>"Tue 14 Jul 2026".</summary>
    /// <param name="day">The day.</param>
    public static string Day(DateOnly day) => day.ToString("ddd d MMM yyyy", CultureInfo.InvariantCulture);

    /// <summary>"Tuesday".</summary>
    /// <param name="day">The day.</param>
    public static string Weekday(DayOfWeek day) =>
        CultureInfo.InvariantCulture.DateTimeFormat.GetDayName(day);

    /// <summary>"16:30".</summary>
    /// <param name="hour">Hour of the day, 0 to 24.</param>
    public static string Hour(double hour)
    {
        var minutes = (int)Math.Round(60 * hour);
        return string.Create(CultureInfo.InvariantCulture, $"{minutes / 60:00}:{minutes % 60:00}");
    }
}
