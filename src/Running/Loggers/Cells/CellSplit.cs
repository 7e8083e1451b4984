namespace Litterfall.Running.Loggers.Cells;

/// <summary>What stands between the cells of a row.</summary>
public enum CellMark
{
    /// <summary>A tab.</summary>
    Tab,

    /// <summary>A semicolon.</summary>
    Semicolon,

    /// <summary>A comma.</summary>
    Comma,

    /// <summary>An upright stroke.</summary>
    Bar,

    /// <summary>Spaces and commas as they come.</summary>
    Mixed,
}

/// <summary>Cuts a row into cells; a cell in quotes may hold the mark.</summary>
public static class CellSplit
{
    /// <summary>Most cells of a row that are looked at.</summary>
    public const int MostCells = 256;

    /// <summary>All marks, the surest first.</summary>
    public static readonly CellMark[] All =
    [
        CellMark.Tab,
        CellMark.Semicolon,
        CellMark.Bar,
        CellMark.Comma,
        CellMark.Mixed,
    ];

    /// <summary>Cuts a row.</summary>
    /// <param name="row">The row.</param>
    /// <param name="mark">What stands between its cells.</param>
    /// <param name="cells">Where each cell lies, without quotes and spaces around it.</param>
    /// <returns>How many there are.</returns>
    public static int Cut(ReadOnlySpan<char> row, CellMark mark, Span<Range> cells)
    {
        if (mark == CellMark.Mixed)
        {
            return CutMixed(row, cells);
        }

        var sign = mark switch
        {
            CellMark.Tab => '\t',
            CellMark.Semicolon => ';',
            CellMark.Bar => '|',
            _ => ',',
        };
        var count = 0;
        var start = 0;
        while (count < cells.Length)
        {
            var end = End(row, start, sign);
            cells[count++] = Trimmed(row, start, end);
            if (end >= row.Length)
            {
                break;
            }

            start = end + 1;
        }

        return count;
    }

    private static int End(ReadOnlySpan<char> row, int start, char sign)
    {
        var i = start;
        while (i < row.Length && row[i] == ' ')
        {
            i++;
        }

        if (i < row.Length && row[i] == '"')
        {
            var close = row[(i + 1)..].IndexOf('"');
            while (close >= 0 && i + close + 2 < row.Length && row[i + close + 2] == '"')
            {
                var next = row[(i + close + 3)..].IndexOf('"');
                close = next < 0 ? -1 : close + 2 + next;
            }

            i = close < 0 ? i : i + close + 2;
        }

        var at = i >= row.Length ? -1 : row[i..].IndexOf(sign);
        return at < 0 ? row.Length : i + at;
    }

    private static Range Trimmed(ReadOnlySpan<char> row, int start, int end)
    {
        while (start < end && IsPadding(row[start]))
        {
            start++;
        }

        while (end > start && IsPadding(row[end - 1]))
        {
            end--;
        }

        return start..end;
    }

    private static bool IsPadding(char c) => c is ' ' or '"' or '\'' or '\u00A0' or '\0' or '\t' or '\uFEFF';

    private static int CutMixed(ReadOnlySpan<char> row, Span<Range> cells)
    {
        var count = 0;
        var i = 0;
        while (count < cells.Length)
        {
            while (i < row.Length && IsMixed(row[i]))
            {
                i++;
            }

            if (i >= row.Length)
            {
                break;
            }

            var start = i;
            while (i < row.Length && !IsMixed(row[i]))
            {
                i++;
            }

            cells[count++] = Trimmed(row, start, i);
        }

        return count;
    }

    private static bool IsMixed(char c) => c is ' ' or ',' or '\t' or '\u00A0';
}
