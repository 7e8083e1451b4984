using System.Globalization;
using System.Text.RegularExpressions;

namespace Litterfall.Domain.Checking;

/// <summary>
/// A time as loggers write it: year, month and day in any order and with any mark, 12 or 24 hours, with or
/// without
/// an offset. The time of day is taken as written: an offset says which clock it is, not another time.
/// </summary>
/// <param name="First">The number before the first mark.</param>
/// <param name="Second">The number between.</param>
/// <param name="Third">The number after the second mark.</param>
/// <param name="Mark">The mark.</param>
/// <param name="OfDay">Time of day.</param>
internal readonly partial record struct LoggerTime(
    int First,
    int Second,
    int Third,
    char Mark,
    TimeSpan OfDay
)
{
    private const int Months = 12;
    private const int TwoDigits = 100;
    private const int Century = 2000;

    /// <summary>True where the mark does not say which of the first two numbers is the day.</summary>
    public bool NeedsOrder => First < TwoDigits && Mark != '.';

    /// <summary>The number before the first mark can only be a day.</summary>
    public bool IsDayFirst => NeedsOrder && First > Months;

    /// <summary>The second number can only be a day.</summary>
    public bool IsMonthFirst => NeedsOrder && Second > Months;

    /// <summary>Reads one; null where it is none.</summary>
    public static LoggerTime? Read(string text)
    {
        if (Form().Match(text.Trim()) is not { Success: true } m)
        {
            return null;
        }

        int Of(string name) => int.Parse(m.Groups[name].ValueSpan, CultureInfo.InvariantCulture);
        var hour = Of("h");
        if (m.Groups["half"] is { Success: true } half)
        {
            if (hour is < 1 or > 12)
            {
                return null;
            }

            hour = (hour % 12) + (half.ValueSpan[0] is 'p' or 'P' ? 12 : 0);
        }

        var seconds = m.Groups["s"].Success ? Of("s") : 0;
        return hour > 23 || Of("m") > 59 || seconds > 59
            ? null
            : new LoggerTime(
                Of("a"),
                Of("b"),
                Of("c"),
                m.Groups["mark"].ValueSpan[0],
                new TimeSpan(hour, Of("m"), seconds)
            );
    }

    /// <summary>The moment; null where there is no such day.</summary>
    /// <param name="isDayFirst">Whether the day comes before the month where nothing else says so.</param>
    public DateTime? At(bool isDayFirst)
    {
        var (year, month, day) =
            First >= TwoDigits ? (First, Second, Third)
            : !NeedsOrder || isDayFirst ? (Third, Second, First)
            : (Third, First, Second);
        year += year < TwoDigits ? Century : 0;
        return
            year is < 1990 or > 2099
            || month is < 1 or > Months
            || day < 1
            || day > DateTime.DaysInMonth(year, month)
            ? null
            : new DateTime(year, month, day, 0, 0, 0, DateTimeKind.Unspecified).Add(OfDay);
    }

    [GeneratedRegex(
        @"^(?<a>[0-9]{1,4})(?<mark>[-/.])(?<b>[0-9]{1,2})[-/.](?<c>[0-9]{1,4})[T ,]\s*"
            + @"(?<h>[0-9]{1,2}):(?<m>[0-9]{2})(:(?<s>[0-9]{2})([.,][0-9]+)?)?\s*"
            + @"((?<half>[aApP])\.?[mM]\.?)?\s*(Z|UTC|GMT|[+-][0-9]{2}:?[0-9]{2})?$",
        RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant,
        1000
    )]
    private static partial Regex Form();
}
