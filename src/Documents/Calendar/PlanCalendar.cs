using System.Text;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using Ical.Net.Serialization;
using Litterfall.Domain.Schedule;
using ICalendar = Ical.Net.Calendar;

namespace Litterfall.Documents.Calendar;

/// <summary>
/// The plan of the workshop as an iCalendar file (RFC 5545): all-day events, identifiers that stay the same,
/// a sequence that rises when a task is moved, and cancelled tasks as such. No customer stands in it.
/// </summary>
public static class PlanCalendar
{
    private const string Product = "-//Litterfall//Plan of the workshop//EN";

    /// <summary>The file: the same bytes for the same plan.</summary>
    /// <param name="plan">The plan.</param>
    public static byte[] Write(ShopPlan plan)
    {
        var calendar = new ICalendar { ProductId = Product, Version = "2.0" };
        var made = plan.MadeOn;
        var stamp = new CalDateTime(made.Year, made.Month, made.Day, 0, 0, 0, "UTC");
        foreach (var task in plan.Orders.SelectMany(o => o.Tasks))
        {
            calendar.Events.Add(Event(task, stamp));
        }

        return new UTF8Encoding(false).GetBytes(
            CalendarFile.Fold(new CalendarSerializer().SerializeToString(calendar)!)
        );
    }

    private static CalendarEvent Event(PlannedTask planned, CalDateTime stamp) =>
        new()
        {
            Uid = $"{planned.Task.Key}@litterfall",
            DtStamp = stamp,
            Sequence = planned.Revision,
            Start = new CalDateTime(planned.Task.Day),
            End = new CalDateTime(planned.Task.Day.AddDays(1)),
            Summary = CalendarFile.Clean(planned.Task.Title),
            Description = CalendarFile.Clean(planned.Task.Detail),
            Status = planned.IsCancelled ? "CANCELLED" : "CONFIRMED",
            Transparency = "TRANSPARENT",
        };
}
