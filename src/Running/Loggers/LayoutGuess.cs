using Litterfall.Domain.Tanks;
using Litterfall.Running.Loggers.Cells;

namespace Litterfall.Running.Loggers;

/// <summary>Guesses the layout from rows all over the file.</summary>
internal sealed class LayoutGuess
{
    private const int MostSamples = 80;
    private const int MostHeadLines = 4;
    private const double FirstSecond = 9.4e8;
    private const double LastSecond = 4.2e9;

    private readonly LoggerText text;
    private readonly List<int> samples = [];

    private LayoutGuess(LoggerText text)
    {
        this.text = text;
        var filled = new List<int>();
        for (var i = 0; i < text.Count; i++)
        {
            if (!text[i].IsWhiteSpace())
            {
                filled.Add(i);
            }
        }

        var step = Math.Max(1.0, filled.Count / (double)MostSamples);
        for (var at = 0.0; at < filled.Count; at += step)
        {
            samples.Add(filled[(int)at]);
        }
    }

    /// <summary>The layout; null where no row has a time and a number.</summary>
    public static FileLayout? Find(LoggerText text, LoggerStyle? style)
    {
        var guess = new LayoutGuess(text);
        var best = (Score: 0, Mark: CellMark.Comma, Time: default(TimeCells));
        foreach (var mark in CellSplit.All)
        {
            var (score, time) = guess.Score(mark);
            best = score > best.Score ? (score, mark, time) : best;
        }

        return best.Score == 0 ? null : guess.Layout(best.Mark, best.Time, style);
    }

    private (int Score, TimeCells Time) Score(CellMark mark)
    {
        var votes = new Dictionary<TimeCells, (int Rows, int Cells)>();
        Span<Range> cells = stackalloc Range[CellSplit.MostCells];
        foreach (var line in samples)
        {
            var row = text[line];
            var count = CellSplit.Cut(row, mark, cells);
            if (Time(row, cells[..count], out var isWhole) is not { } time)
            {
                continue;
            }

            var numbers = 0;
            for (var c = 0; c < count; c++)
            {
                numbers += c != time.Date && c != time.Clock && IsNumber(row[cells[c]]) ? 1 : 0;
            }

            if (numbers > 0)
            {
                var (rows, all) = votes.GetValueOrDefault(time);
                votes[time] = (rows + (isWhole ? 1000 : 400), all + Math.Min(numbers, 40));
            }
        }

        if (votes.Count == 0)
        {
            return (0, default);
        }

        var (cellsOfTime, most) = votes.MaxBy(v => v.Value.Rows);
        // Mixed marks cut numbers at their decimal commas: they count only where no plain mark reads
        // the rows.
        return (most.Rows + (mark == CellMark.Mixed ? 0 : most.Cells), cellsOfTime);
    }

    private static bool IsNumber(ReadOnlySpan<char> cell) =>
        NumberCell.TryRead(cell, out var value) && !double.IsNaN(value);

    /// <summary>Which cells of a row tell the time.</summary>
    private static TimeCells? Time(ReadOnlySpan<char> row, ReadOnlySpan<Range> cells, out bool isWhole)
    {
        isWhole = true;
        for (var c = 0; c < Math.Min(cells.Length, 10); c++)
        {
            var time = default(RawTime);
            if (!TimeCell.TryRead(row[cells[c]], ref time))
            {
                continue;
            }

            if (time is { HasDate: true, HasTime: true })
            {
                return new(c, -1, TimeForm.Written);
            }

            var next = default(RawTime);
            var isPair = c + 1 < cells.Length && TimeCell.TryRead(row[cells[c + 1]], ref next);
            if (isPair && time.HasDate != next.HasDate && time.HasTime != next.HasTime)
            {
                return time.HasDate ? new(c, c + 1, TimeForm.Written) : new(c + 1, c, TimeForm.Written);
            }

            if (time.HasDate)
            {
                isWhole = false;
                return new(c, -1, TimeForm.Written);
            }
        }

        for (var c = 0; c < Math.Min(cells.Length, 3); c++)
        {
            var cell = row[cells[c]];
            if (cell.Length is < 9 or > 14 || !NumberCell.TryRead(cell, out var value))
            {
                continue;
            }

            if (value is > FirstSecond and < LastSecond)
            {
                return new(c, -1, TimeForm.Seconds);
            }

            if (value is > FirstSecond * 1000.0 and < LastSecond * 1000.0)
            {
                return new(c, -1, TimeForm.Thousandths);
            }
        }

        return null;
    }

    private FileLayout? Layout(CellMark mark, TimeCells time, LoggerStyle? style)
    {
        var rows = Rows(mark, time);
        if (rows.Count == 0)
        {
            return null;
        }

        var first = FirstRow(mark, time);
        var width = rows.Max(r => r.Length);
        var (head, units) = HeadLine(mark, first, width);
        var heads = head < 0 ? [] : HeadCells(head, mark, time, rows[^1].Length);
        var unitCells = units < 0 ? [] : HeadCells(units, mark, time, rows[^1].Length);
        var guess = new ColumnGuess(heads, unitCells, rows, time);
        var columns = guess.Columns(style);
        return columns.Count == 0
            ? null
            : new FileLayout
            {
                Mark = mark,
                First = first,
                Head = head,
                Units = units,
                Time = time,
                Heads = heads,
                Columns = columns,
                States = guess.States(),
                HasComma = rows.Exists(r =>
                    columns.Any(c => c.Index < r.Length && NumberCell.HasComma(r[c.Index]))
                ),
                IsFahrenheitGuessed = guess.IsFahrenheitGuessed,
            };
    }

    /// <summary>Cells of the sampled rows that fit.</summary>
    private List<string[]> Rows(CellMark mark, TimeCells time)
    {
        var rows = new List<string[]>();
        foreach (var line in samples)
        {
            if (Fits(line, mark, time) is { } cells)
            {
                rows.Add(cells);
            }
        }

        return rows;
    }

    private int FirstRow(CellMark mark, TimeCells time)
    {
        for (var i = 0; i < samples[^1]; i++)
        {
            if (Fits(i, mark, time) is not null)
            {
                return i;
            }
        }

        return samples[^1];
    }

    private string[]? Fits(int line, CellMark mark, TimeCells wanted)
    {
        Span<Range> cells = stackalloc Range[CellSplit.MostCells];
        var row = text[line];
        var count = CellSplit.Cut(row, mark, cells);
        if (Time(row, cells[..count], out _) is not { } time || time != wanted)
        {
            return null;
        }

        var shown = new string[count];
        for (var c = 0; c < count; c++)
        {
            shown[c] = row[cells[c]].ToString();
        }

        return shown;
    }

    /// <summary>The head and the units stand in the last lines with text before the first row.</summary>
    private (int Head, int Units) HeadLine(CellMark mark, int first, int width)
    {
        var near = new List<int>();
        for (var i = first - 1; i >= 0 && near.Count < MostHeadLines; i--)
        {
            if (!text[i].IsWhiteSpace())
            {
                near.Add(i);
            }
        }

        for (var k = 0; k < Math.Min(near.Count, 3); k++)
        {
            var cells = Cells(near[k], mark, width);
            var heads = cells.Select(HeadCell.Read).ToList();
            var isUnits = k + 1 < near.Count && IsUnits(cells) && IsHead(near[k + 1], mark, width);
            if (isUnits)
            {
                return (near[k + 1], near[k]);
            }

            if (IsHead(heads, width))
            {
                return (near[k], -1);
            }
        }

        return (-1, -1);
    }

    private bool IsHead(int line, CellMark mark, int width) =>
        IsHead([.. Cells(line, mark, width).Select(HeadCell.Read)], width);

    private static bool IsHead(List<HeadCell> cells, int width)
    {
        var (readings, known) = (
            cells.Count(c => c.Role == HeadRole.Reading),
            cells.Count(c => c.Role != HeadRole.Unknown)
        );
        return cells.Count >= 2
            && cells.Count * 2 >= width
            && (readings > 0 || known >= 2 || (known > 0 && cells.Count >= width - 1));
    }

    private static bool IsUnits(string[] cells)
    {
        var (units, others) = (0, 0);
        foreach (var cell in cells)
        {
            var isUnit = UnitWord.Find(cell) is not null;
            units += isUnit ? 1 : 0;
            others += !isUnit && cell.Length > 0 && HeadCell.Read(cell).Role == HeadRole.Reading ? 1 : 0;
        }

        return units > 0 && others == 0;
    }

    /// <summary>A head of rows with mixed marks keeps its own mark: names hold spaces.</summary>
    private string[] Cells(int line, CellMark mark, int width)
    {
        if (mark != CellMark.Mixed)
        {
            return Cut(line, mark);
        }

        foreach (var own in (CellMark[])[CellMark.Comma, CellMark.Semicolon, CellMark.Tab])
        {
            var cells = Cut(line, own);
            if (cells.Length >= 2 && cells.Length >= width - 1)
            {
                return cells;
            }
        }

        return Cut(line, CellMark.Mixed);
    }

    private string[] Cut(int line, CellMark mark)
    {
        Span<Range> cells = stackalloc Range[CellSplit.MostCells];
        var row = text[line];
        var count = CellSplit.Cut(row, mark, cells);
        var shown = new string[count];
        for (var c = 0; c < count; c++)
        {
            shown[c] = row[cells[c]].ToString();
        }

        return shown;
    }

    /// <summary>Where one head stands over date and time, the columns after it move by one.</summary>
    private string[] HeadCells(int line, CellMark mark, TimeCells time, int width)
    {
        var cells = Cells(line, mark, width);
        var isOne = time.Clock >= 0 && cells.Length == width - 1 && mark == CellMark.Mixed;
        return isOne ? [.. cells[..(time.Date + 1)], "", .. cells[(time.Date + 1)..]] : cells;
    }
}
