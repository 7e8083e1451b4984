using System.Text;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using Ical.Net.Serialization;
using Litterfall.Planning.Care;
using ICalendar = Ical.Net.Calendar;

namespace Litterfall.Documents.Calendar;

/// <summary>
/// The dates of one tank as an iCalendar file (RFC 5545): all-day events with exclusive end, and identifiers
/// that stay the same when the file is written again, so that a phone updates and does not double them.
/// </summary>
public static class CalendarFile
{
    /// <summary>Media type of the bytes.</summary>
    public const string MediaType = "text/calendar; charset=utf-8";

    private const string Product = "-//Litterfall//Care dates//EN";

    /// <summary>The file: the same bytes for the same plan, number and name.</summary>
    /// <param name="plan">The dates.</param>
    /// <param name="tank">Number of the tank; it is in every identifier and summary.</param>
    /// <param name="name">Name of the build; it may name a customer, so it stands in descriptions only.</param>
    public static byte[] Write(CarePlan plan, string tank, string name)
    {
        var calendar = new ICalendar
        {
            ProductId = Product,
            Version = "2.0",
            Method = "PUBLISH",
        };
        var stamp = new CalDateTime(
            plan.Planting.Year,
            plan.Planting.Month,
            plan.Planting.Day,
            0,
            0,
            0,
            "UTC"
        );
        foreach (var date in plan.Dates)
        {
            calendar.Events.Add(Event(date, tank, name, stamp));
        }

        return new UTF8Encoding(false).GetBytes(new CalendarSerializer().SerializeToString(calendar)!);
    }

    private static CalendarEvent Event(CareDate date, string tank, string name, CalDateTime stamp)
    {
        var entry = new CalendarEvent
        {
            Uid = $"{tank}-{date.Key}@litterfall",
            DtStamp = stamp,
            Sequence = 0,
            Start = new CalDateTime(date.Day),
            End = new CalDateTime(date.Day.AddDays(1)),
            Summary = Clean($"{date.Title} ({tank})"),
            Description = Clean($"{date.Text}\n{name}"),
            Transparency = "TRANSPARENT",
        };
        if (date.Repeat is { } repeat)
        {
            entry.RecurrenceRule = new RecurrenceRule(
                repeat.Unit == CareUnit.Week ? Ical.Net.FrequencyType.Weekly : Ical.Net.FrequencyType.Daily,
                repeat.Every
            );
        }

        return entry;
    }

    /// <summary>
    /// Text as RFC 5545 section 3.3.11 allows it: line breaks as one sign, no other control characters.
    /// </summary>
    private static string Clean(string text)
    {
        var clean = new StringBuilder(text.Length);
        foreach (
            var rune in text.Replace("\r\n", "\n", StringComparison.Ordinal)
                .Replace('\r', '\n')
                .EnumerateRunes()
        )
        {
            clean.Append(rune.Value == '\n' || !Rune.IsControl(rune) ? rune.ToString() : " ");
        }

        return clean.ToString();
    }
}
