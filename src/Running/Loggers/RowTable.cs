using System.Globalization;
using Litterfall.Domain.Faults;
using Litterfall.Running.Loggers.Cells;

namespace Litterfall.Running.Loggers;

/// <summary>All rows of a file: raw times and values by column; what was passed over is counted.</summary>
internal sealed class RowTable
{
    private readonly LoggerText text;
    private readonly FileLayout layout;
    private readonly string file;

    private RowTable(LoggerText text, FileLayout layout, string file)
    {
        this.text = text;
        this.layout = layout;
        this.file = file;
        var most = text.Count - layout.First;
        Times = new RawTime[most];
        Lines = new int[most];
        Values = [.. layout.Columns.Select(_ => new double[most])];
    }

    /// <summary>Rows.</summary>
    public int Count { get; private set; }

    /// <summary>Raw times; the first <see cref="Count"/> count.</summary>
    public RawTime[] Times { get; }

    /// <summary>Line of each row.</summary>
    public int[] Lines { get; }

    /// <summary>Values as kept, by column.</summary>
    public double[][] Values { get; }

    /// <summary>Rows on which the logger itself had an alarm.</summary>
    public int Alarms { get; private set; }

    /// <summary>Rows on which the logger was switched on.</summary>
    public int Starts { get; private set; }

    /// <summary>Lines of words among the rows: events, heads that come again.</summary>
    public int Events { get; private set; }

    /// <summary>True where the last line ends amid a row.</summary>
    public bool IsCut { get; private set; }

    /// <summary>What cannot be read; null for nothing.</summary>
    public TextFault? Fault { get; private set; }

    /// <summary>Reads all rows.</summary>
    public static RowTable Read(LoggerText text, FileLayout layout, string file)
    {
        var table = new RowTable(text, layout, file);
        table.Read();
        return table;
    }

    private void Read()
    {
        Span<Range> cells = stackalloc Range[CellSplit.MostCells];
        var width = Math.Max(layout.Time.Date, layout.Time.Clock);
        width = Math.Min(CellSplit.MostCells, Math.Max(width, layout.Columns.Max(c => c.Index)) + 2);
        foreach (var state in layout.States)
        {
            width = Math.Max(width, state + 1);
        }

        for (var line = layout.First; line < text.Count; line++)
        {
            var row = text[line];
            if (row.IsWhiteSpace())
            {
                continue;
            }

            var count = CellSplit.Cut(row, layout.Mark, cells[..width]);
            if (!Add(row, cells[..count], line))
            {
                return;
            }
        }
    }

    /// <summary>Takes a row in; false at one that cannot be read.</summary>
    private bool Add(ReadOnlySpan<char> row, ReadOnlySpan<Range> cells, int line)
    {
        var time = new RawTime { Offset = RawTime.NoOffset };
        var isTimed = TryTime(row, cells, ref time);
        var isRead = TryValues(row, cells, out var badCell, out var numbers);
        if (isTimed && isRead)
        {
            Times[Count] = time;
            Lines[Count] = line;
            Count++;
            CountStates(row, cells);
            return true;
        }

        if (line == text.Count - 1 && Count > 0)
        {
            IsCut = true;
            return true;
        }

        if (numbers == 0 && (!isTimed || IsWords(row, cells)))
        {
            Events++;
            return true;
        }

        Fault = isTimed
            ? Wrong(
                line,
                badCell,
                cells,
                row,
                "is no number",
                $"a number in the column \"{layout.Columns[badCell].Name}\""
            )
            : Wrong(line, -1, cells, row, "is no time", "a date and a time as in the rows before");
        return false;
    }

    private bool TryTime(ReadOnlySpan<char> row, ReadOnlySpan<Range> cells, ref RawTime time)
    {
        var (date, clock, form) = layout.Time;
        if (date >= cells.Length || clock >= cells.Length)
        {
            return false;
        }

        if (form != TimeForm.Written)
        {
            return TrySeconds(row[cells[date]], form, ref time);
        }

        return TimeCell.TryRead(row[cells[date]], ref time)
            && (clock < 0 || TimeCell.TryRead(row[cells[clock]], ref time))
            && time.HasDate
            && (time.HasTime || clock < 0);
    }

    private static bool TrySeconds(ReadOnlySpan<char> cell, TimeForm form, ref RawTime time)
    {
        if (!NumberCell.TryRead(cell, out var value) || double.IsNaN(value))
        {
            return false;
        }

        var seconds = form == TimeForm.Seconds ? value : value / 1000.0;
        if (seconds is < 0.0 or > 1e10)
        {
            return false;
        }

        var at = DateTime.UnixEpoch.AddTicks(
            (long)(Math.Round(seconds * 1000.0) * TimeSpan.TicksPerMillisecond)
        );
        time.First = (short)at.Year;
        time.Second = (short)at.Month;
        time.Third = (short)at.Day;
        time.Ticks = at.TimeOfDay.Ticks;
        time.Offset = 0;
        time.Sign = 'p';
        time.HasDate = time.HasTime = true;
        return true;
    }

    private bool TryValues(ReadOnlySpan<char> row, ReadOnlySpan<Range> cells, out int bad, out int numbers)
    {
        (bad, numbers) = (-1, 0);
        for (var c = 0; c < layout.Columns.Count; c++)
        {
            var column = layout.Columns[c];
            var value = double.NaN;
            if (column.Index < cells.Length && !NumberCell.TryRead(row[cells[column.Index]], out value))
            {
                bad = bad < 0 ? c : bad;
            }

            if (!double.IsNaN(value))
            {
                numbers++;
                Values[c][Count] = column.Unit is null ? value : column.Unit.Convert(value);
            }
            else
            {
                Values[c][Count] = double.NaN;
            }
        }

        return bad < 0;
    }

    /// <summary>A line of an event has its time and words where numbers are in others.</summary>
    private bool IsWords(ReadOnlySpan<char> row, ReadOnlySpan<Range> cells)
    {
        foreach (var column in layout.Columns)
        {
            if (column.Index < cells.Length && row[cells[column.Index]].IndexOfAnyInRange('0', '9') >= 0)
            {
                return false;
            }
        }

        return true;
    }

    private void CountStates(ReadOnlySpan<char> row, ReadOnlySpan<Range> cells)
    {
        var (alarm, start) = (false, false);
        foreach (var state in layout.States)
        {
            if (state < cells.Length && row[cells[state]] is [var letter, ..])
            {
                alarm |= letter is 'A' or 'a';
                start |= letter is 'P' or 'p';
            }
        }

        Alarms += alarm ? 1 : 0;
        Starts += start ? 1 : 0;
    }

    private TextFault Wrong(
        int line,
        int column,
        ReadOnlySpan<Range> cells,
        ReadOnlySpan<char> row,
        string what,
        string expected
    )
    {
        var index = column < 0 ? layout.Time.Date : layout.Columns[column].Index;
        var range = index < cells.Length ? cells[index] : 0..row.Length;
        var shown = row[range];
        var cell = shown[..Math.Min(shown.Length, 40)].ToString();
        return new(
            file,
            line + 1,
            range.Start.GetOffset(row.Length) + 1,
            string.Create(CultureInfo.InvariantCulture, $"\"{cell}\" {what}"),
            expected
        );
    }
}
