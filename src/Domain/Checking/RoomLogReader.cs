using System.Collections.Immutable;
using System.Globalization;
using CsvHelper;
using CsvHelper.Configuration;
using Litterfall.Domain.Faults;

namespace Litterfall.Domain.Checking;

/// <summary>
/// Reads logger files as they come: split by comma, semicolon or tab, with lines before the head or
/// without a head,
/// dates in any order, decimal point or comma, units in the cells, cells without a value. What can be read in
/// two ways is refused with its line.
/// </summary>
/// <param name="file">Name used in messages.</param>
internal sealed class RoomLogReader(string file)
{
    private const int LeastRows = 2;
    private const int MostLinesBefore = 200;
    private const int RowsToGuessBy = 2000;
    private const double MostHumidity = 1.06;
    private static readonly char[] Splits = [';', '\t', ','];

    private readonly record struct Row(int Line, string[] Cells);

    private readonly record struct Moment(int Line, string Text, LoggerTime Time, RoomReading Reading);

    /// <summary>The log, or what is wrong with the file and where.</summary>
    public Reading<RoomLog> Read(string text)
    {
        var plain = text.TrimStart('\uFEFF');
        if (plain.Trim().Length == 0)
        {
            return Refused(1, "the logger file is empty", "a head line with time, temperature and humidity");
        }

        var (rows, columns, isHead) = Table(plain);
        if (columns is not { } of)
        {
            return isHead
                ? Refused(
                    FirstWide(rows),
                    "the head line of the logger file lacks a column",
                    "columns named time, temperature and humidity"
                )
                : Refused(
                    FirstWide(rows),
                    "nothing says which column of the logger file is the temperature and which the humidity",
                    "a head line with time, temperature and humidity, or units in the cells"
                );
        }

        var moments = new List<Moment>();
        var blank = 0;
        foreach (var row in rows)
        {
            if (row.Cells.All(c => c.Trim().Length == 0))
            {
                continue;
            }

            var (moment, fault) = Value(row, of);
            if (fault is not null)
            {
                return new(null, [fault]);
            }

            if (moment is { } m)
            {
                moments.Add(m);
            }
            else
            {
                blank++;
            }
        }

        return Log(moments, blank, rows.Count > 0 ? rows[0].Line : 1);
    }

    /// <summary>Lines after the head, with the columns.</summary>
    private static (List<Row> Rows, LoggerColumns? Columns, bool IsHead) Table(string text)
    {
        List<Row>? best = null;
        foreach (var split in Splits)
        {
            var rows = Split(text, split);
            for (var i = 0; i < Math.Min(rows.Count, MostLinesBefore); i++)
            {
                if (LoggerColumns.ByHeads(rows[i].Cells) is { } columns)
                {
                    return (rows[(i + 1)..], columns, true);
                }
            }

            var start = rows.FindIndex(r => r.Cells.Length > 2 && IsTimed(r.Cells));
            if (start >= 0)
            {
                var data = rows[start..];
                var guess = data.Take(RowsToGuessBy).Select(r => r.Cells).ToList();
                if (start > 0 && rows[start - 1].Cells.Length >= data[0].Cells.Length)
                {
                    best ??= rows;
                }
                else
                {
                    return (data, LoggerColumns.ByValues(guess), false);
                }
            }
        }

        return (best ?? Split(text, ','), null, true);
    }

    private static bool IsTimed(string[] cells) =>
        cells.Any(c => LoggerTime.Read(c) is not null || LoggerTime.Read(c + " 00:00") is not null);

    private static int FirstWide(List<Row> rows) =>
        rows.Count == 0 ? 1
        : rows.FindIndex(r => r.Cells.Length > 1) is >= 0 and var at ? rows[at].Line
        : rows[0].Line;

    private static List<Row> Split(string text, char split)
    {
        var configuration = new CsvConfiguration(CultureInfo.InvariantCulture)
        {
            Delimiter = split.ToString(),
            BadDataFound = null,
            IgnoreBlankLines = true,
        };
        using var parser = new CsvParser(new StringReader(text), configuration);
        var rows = new List<Row>();
        while (parser.Read())
        {
            rows.Add(new Row(parser.RawRow, parser.Record!));
        }

        return rows;
    }

    private (Moment? Moment, TextFault? Fault) Value(Row row, LoggerColumns of)
    {
        if (row.Cells.Length <= of.Last)
        {
            return (null, Cannot(row.Line, "a column is missing", "as many columns as the first line has"));
        }

        var at =
            of.OfDay < 0 ? row.Cells[of.Time] : $"{row.Cells[of.Time].Trim()} {row.Cells[of.OfDay].Trim()}";
        if (LoggerTime.Read(at.Trim(' ', '"', '\'')) is not { } time)
        {
            return (null, Cannot(row.Line, $"the time '{Shown(at)}' is none", "a time as 2026-02-15 08:10"));
        }

        var (warm, damp) = (LoggerValue.Read(row.Cells[of.Warm]), LoggerValue.Read(row.Cells[of.Damp]));
        if (warm.IsBlank || damp.IsBlank)
        {
            return (null, null);
        }

        var isFahrenheit = warm.Unit == 'F' || (of.IsFahrenheit && warm.Unit != 'C');
        var celsius = isFahrenheit ? (warm.Number - 32) / 1.8 : warm.Number;
        if (celsius is not (>= -15 and <= 60))
        {
            var cell = Shown(row.Cells[of.Warm]);
            return (null, Cannot(row.Line, $"the temperature '{cell}'", "a temperature of -15 to 60 °C"));
        }

        return damp.Number / 100 is not (>= 0 and <= MostHumidity) and not null || damp.Number is null
            ? (
                null,
                Cannot(row.Line, $"the humidity '{Shown(row.Cells[of.Damp])}'", "a humidity of 0 to 106 %")
            )
            : (
                new Moment(
                    row.Line,
                    at,
                    time,
                    new RoomReading(default, celsius.Value, Math.Min(damp.Number.Value / 100, 1))
                ),
                null
            );
    }

    private Reading<RoomLog> Log(List<Moment> moments, int blank, int line)
    {
        var (isDayFirst, unclear) = Order(moments);
        if (unclear is { } doubt)
        {
            return Refused(
                doubt.Line,
                $"the date '{Shown(doubt.Text)}' can be read with the day or the month first",
                "dates as 2026-02-15, or a log that goes past the 12th of a month"
            );
        }

        var readings = new SortedDictionary<DateTime, RoomReading>();
        foreach (var moment in moments)
        {
            if (moment.Time.At(isDayFirst) is not { } at)
            {
                return new(
                    null,
                    [
                        Cannot(
                            moment.Line,
                            $"there is no day '{Shown(moment.Text)}'",
                            "a day from 1990 to 2099"
                        ),
                    ]
                );
            }

            readings[at] = moment.Reading with { Time = at };
        }

        return readings.Count < LeastRows
            ? Refused(Math.Max(1, line - 1), "the logger file has too few lines", "two readings or more")
            : new(
                new RoomLog([.. readings.Values])
                {
                    Repeated = moments.Count - readings.Count,
                    Blank = blank,
                },
                []
            );
    }

    /// <summary>
    /// Whether the day comes first: a number above 12 tells it, else the order in which the rows make
    /// steps of
    /// days while the other makes leaps of months.
    /// </summary>
    private static (bool IsDayFirst, Moment? Unclear) Order(List<Moment> moments)
    {
        var open = moments.Where(m => m.Time.NeedsOrder).ToList();
        if (open.Count == 0 || open.All(m => m.Time.First == m.Time.Second))
        {
            return (true, null);
        }

        var (dayFirst, monthFirst) = (open.Any(m => m.Time.IsDayFirst), open.Any(m => m.Time.IsMonthFirst));
        if (dayFirst != monthFirst)
        {
            return (dayFirst, null);
        }

        var (ifDay, ifMonth) = (LongestStep(open, true), LongestStep(open, false));
        return !dayFirst && ifDay <= OrdinaryDays && ifMonth > LeapDays ? (true, null)
            : !dayFirst && ifMonth <= OrdinaryDays && ifDay > LeapDays ? (false, null)
            : (true, open[0]);
    }

    private const double OrdinaryDays = 3;
    private const double LeapDays = 20;

    private static double LongestStep(List<Moment> moments, bool isDayFirst)
    {
        var worst = 0.0;
        for (var i = 1; i < moments.Count; i++)
        {
            if (moments[i].Time.At(isDayFirst) is { } now && moments[i - 1].Time.At(isDayFirst) is { } before)
            {
                worst = Math.Max(worst, Math.Abs((now - before).TotalDays));
            }
        }

        return worst;
    }

    private static string Shown(string cell) => cell.Length <= 40 ? cell.Trim() : cell[..40].Trim() + "…";

    private TextFault Cannot(int line, string what, string expected) =>
        new(file, line, 1, $"this line of the logger file cannot be read: {what}", expected);

    private Reading<RoomLog> Refused(int line, string message, string expected) =>
        new(null, [new TextFault(file, line, 1, message, expected)]);
}
