using System.Text;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using Ical.Net.Serialization;
using Litterfall.Domain.Schedule;
using ICalendar = Ical.Net.Calendar;

namespace Litterfall.Documents.Calendar;

/// <summary>
/// Tasks as an iCalendar feed (RFC 5545): all-day events whose identifiers stay the same, so that a phone
/// that asks again moves them and does not double them.
/// </summary>
public static class TaskCalendar
{
    /// <summary>The feed: the same bytes for the same tasks.</summary>
    /// <param name="tasks">Tasks; each key once.</param>
    /// <param name="product">Who writes it.</param>
    /// <param name="made">Day it is written.</param>
    public static byte[] Write(IEnumerable<DayTask> tasks, string product, DateOnly made)
    {
        var calendar = new ICalendar { ProductId = product, Version = "2.0" };
        var stamp = new CalDateTime(made.Year, made.Month, made.Day, 0, 0, 0, "UTC");
        foreach (var task in tasks)
        {
            calendar.Events.Add(
                new CalendarEvent
                {
                    Uid = $"{task.Key}@litterfall",
                    DtStamp = stamp,
                    // A later writing counts as the newer one.
                    Sequence = made.DayNumber,
                    Start = new CalDateTime(task.Day),
                    End = new CalDateTime(task.Day.AddDays(1)),
                    Summary = CalendarFile.Clean(task.Title),
                    Description = CalendarFile.Clean(task.Detail),
                    Transparency = "TRANSPARENT",
                }
            );
        }

        return new UTF8Encoding(false).GetBytes(
            CalendarFile.Fold(new CalendarSerializer().SerializeToString(calendar)!)
        );
    }
}
