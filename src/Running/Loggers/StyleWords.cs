using System.Globalization;
using Litterfall.Domain.Tanks;
using Litterfall.Running.Loggers.Cells;
using Litterfall.Running.Loggers.Clocks;

namespace Litterfall.Running.Loggers;

/// <summary>How a file is written, in words, and what is unusual about it.</summary>
internal sealed record StyleWords(LoggerText Text, FileLayout Layout, RowTable Table, FileZone Zone)
{
    /// <summary>One sentence about the style.</summary>
    public string Style(DateOrder order)
    {
        var mark = Layout.Mark switch
        {
            CellMark.Tab => "columns parted by tabs",
            CellMark.Semicolon => "columns parted by semicolons",
            CellMark.Bar => "columns parted by upright strokes",
            CellMark.Comma => "columns parted by commas",
            _ => "columns parted by spaces and commas",
        };
        var point = Layout.HasComma ? "decimal comma" : "decimal point";
        var head =
            Layout.Head < 0 ? "no header"
            : Layout.Units >= 0 ? "header with a row of units"
            : Layout.Head > 1 ? "header below a block of details"
            : "header row";
        var date =
            Layout.Time.Form != TimeForm.Written ? "seconds since 1970"
            : order == DateOrder.YearMonthDay ? "dates as year, month, day"
            : order == DateOrder.MonthDayYear ? "dates as month, day, year"
            : "dates as day, month, year";
        var code = Text.Code switch
        {
            LetterCode.Utf8Marked => ", UTF-8 with a byte-order mark",
            LetterCode.Utf16 => ", UTF-16",
            LetterCode.OldCode => ", an old code page",
            _ => "",
        };
        return $"{mark}, {point}, {head}, {date}{code}";
    }

    /// <summary>What is unusual, one sentence each.</summary>
    public IEnumerable<string> Quirks(DateGuess dates, bool isNewestFirst, int conflicts)
    {
        if (Layout.HasComma)
        {
            yield return "Numbers have a decimal comma.";
        }

        if (Text.Code is LetterCode.Utf8Marked)
        {
            yield return "The file starts with a byte-order mark.";
        }

        if (Text.Code is LetterCode.Utf16)
        {
            yield return "The file is written in UTF-16.";
        }

        if (Text.Code is LetterCode.OldCode)
        {
            yield return "The file is written in an old code page; its degree sign was repaired.";
        }

        if (Layout.Columns.Any(c => c.Unit == UnitWord.Fahrenheit))
        {
            yield return Layout.IsFahrenheitGuessed
                ? LoggerReading.FahrenheitGuess
                : "Temperatures are in °F and were turned into °C.";
        }

        if (!dates.IsCertain)
        {
            yield return dates.Order == DateOrder.MonthDayYear
                ? "Dates could be read two ways; the month was taken first. Check one date."
                : "Dates could be read two ways; the day was taken first. Check one date.";
        }

        foreach (var quirk in Clock().Concat(Rows(isNewestFirst, conflicts)))
        {
            yield return quirk;
        }
    }

    private IEnumerable<string> Clock()
    {
        if (Zone.Summer == SummerTime.Ignored)
        {
            yield return $"The logger's clock did not follow the clock change of {Zone.Name}; "
                + "it was read with the offset it started with.";
            yield break;
        }

        switch (Zone.Origin)
        {
            case ZoneOrigin.Given:
                yield return $"Times are local and the file names no zone; they were read as {Zone.Name}.";
                break;
            case ZoneOrigin.Changes:
                yield return $"Times are local and the file names no zone; "
                    + $"its clock change is that of {Zone.Name}.";
                break;
            case ZoneOrigin.Nowhere:
                yield return "The file names no time zone and none was given; times were taken as UTC.";
                break;
            default:
                break;
        }
    }

    private IEnumerable<string> Rows(bool isNewestFirst, int conflicts)
    {
        if (isNewestFirst)
        {
            yield return "The newest row stands first.";
        }

        if (Table.Alarms > 0)
        {
            yield return Counted(Table.Alarms, "row carries", "rows carry")
                + " an alarm of the logger itself.";
        }

        if (Table.Starts > 0)
        {
            yield return Counted(Table.Starts, "row says", "rows say") + " that the logger was switched on.";
        }

        if (Table.Events > 0)
        {
            yield return Counted(Table.Events, "line without readings was", "lines without readings were")
                + " passed over.";
        }

        if (Table.IsCut)
        {
            yield return "The last line is cut off and was passed over.";
        }

        if (conflicts > 0)
        {
            yield return Counted(conflicts, "time stands", "times stand")
                + " twice with different values; all were kept.";
        }
    }

    private static string Counted(int count, string one, string many) =>
        string.Create(CultureInfo.InvariantCulture, $"{count} {(count == 1 ? one : many)}");
}
