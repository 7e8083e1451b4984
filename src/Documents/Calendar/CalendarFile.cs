using System.Text;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using Ical.Net.Serialization;
using Litterfall.Instructions.Care;
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

    /// <summary>Octets in a line without its break (RFC 5545, section 3.1).</summary>
    private const int LongestLine = 75;

    private const string Product = "-//Litterfall//Care dates//EN";

    /// <summary>The file: the same bytes for the same plan, number and name.</summary>
    /// <param name="plan">The dates.</param>
    /// <param name="tank">Number of the tank; it is in every identifier and summary.</param>
    /// <param name="name">Name of the build; it may name a customer, so it stands in descriptions
    /// only.</param>
    public static byte[] Write(CarePlan plan, string tank, string name)
    {
        var calendar = new ICalendar { ProductId = Product, Version = "2.0" };
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

        return new UTF8Encoding(false).GetBytes(Fold(new CalendarSerializer().SerializeToString(calendar)!));
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
    internal static string Clean(string text)
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

    /// <summary>
    /// Folds again between characters: the library cuts after 75 octets even inside a pair of surrogates,
    /// which turns an emoji into two question marks.
    /// </summary>
    internal static string Fold(string text)
    {
        var folded = new StringBuilder(text.Length + text.Length / 32);
        var octets = 0;
        foreach (var rune in text.Replace("\r\n ", "", StringComparison.Ordinal).EnumerateRunes())
        {
            if (rune.Value is '\r' or '\n')
            {
                octets = 0;
            }
            else if (octets + rune.Utf8SequenceLength > LongestLine)
            {
                // The space that marks a continued line counts as one of its octets.
                folded.Append("\r\n ");
                octets = 1 + rune.Utf8SequenceLength;
            }
            else
            {
                octets += rune.Utf8SequenceLength;
            }

            folded.Append(rune.ToString());
        }

        return folded.ToString();
    }
}
