using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using CsvHelper;
using CsvHelper.Configuration;
using Litterfall.Domain.Trees;

namespace Litterfall.Workshop.Importing;

/// <summary>A list that somebody saved from a spreadsheet or pasted: columns and rows as text.</summary>
public sealed record TypedTable
{
    /// <summary>Most rows that are taken.</summary>
    public const int MostRows = 20_000;

    private const string Separators = ";\t,|";
    private const int Looked = 30;

    /// <summary>Names of the columns; "column 1" and so on where the list has no header.</summary>
    public required ImmutableArray<string> Columns { get; init; }

    /// <summary>Rows below the header, each with as many cells as there are columns.</summary>
    public required ImmutableArray<ImmutableArray<string>> Rows { get; init; }

    /// <summary>Line of the file in which each row stands.</summary>
    public required ImmutableArray<int> Lines { get; init; }

    /// <summary>What separates the columns.</summary>
    public required char Separator { get; init; }

    /// <summary>True where a comma stands before the decimals.</summary>
    public required bool HasDecimalComma { get; init; }

    /// <summary>The same for every list of this form: what was once set for it counts again.</summary>
    public string Fingerprint => string.Join('|', Columns.Select(c => c.Trim().ToLowerInvariant()));

    /// <summary>Reads a file or pasted text; what is wrong in one sentence where it is no table.</summary>
    /// <param name="bytes">The file.</param>
    /// <param name="trouble">What is wrong; empty where nothing is.</param>
    public static TypedTable? Read(byte[] bytes, out string trouble) =>
        Read(FileText.Decode(bytes).TrimStart('\uFEFF'), out trouble);

    /// <summary>Reads pasted text.</summary>
    /// <param name="text">The text.</param>
    /// <param name="trouble">What is wrong; empty where nothing is.</param>
    public static TypedTable? Read(string text, out string trouble)
    {
        trouble = "";
        if (text.Contains('\0', StringComparison.Ordinal) || string.IsNullOrWhiteSpace(text))
        {
            trouble = "There is no list in it. Expected a table with one row for each pack.";
            return null;
        }

        var separator = Guess(text);
        var lines = Split(text, separator);
        if (lines.Count > MostRows)
        {
            trouble = $"The list has {lines.Count} rows. Expected at most {MostRows}.";
            return null;
        }

        var width = Usual(lines);
        var head = lines.FindIndex(line =>
            Filled(line.Cells) >= Math.Min(2, width) && line.Cells.Length >= width
        );
        if (head < 0 || width < 2)
        {
            trouble = "It has one column only. Expected at least a name and a price in each row.";
            return null;
        }

        var hasHeader = lines[head].Cells.All(c => !IsNumber(c));
        var rows = lines.Skip(hasHeader ? head + 1 : head).Where(line => Filled(line.Cells) > 0).ToList();
        if (rows.Count == 0)
        {
            trouble = "There are no rows below the header.";
            return null;
        }

        return new TypedTable
        {
            Columns =
            [
                .. Enumerable
                    .Range(0, width)
                    .Select(i =>
                        hasHeader && lines[head].Cells[i].Trim() is { Length: > 0 } name
                            ? name
                            : FormattableString.Invariant($"column {i + 1}")
                    ),
            ],
            Rows = [.. rows.Select(line => Fitted(line.Cells, width))],
            Lines = [.. rows.Select(line => line.Line)],
            Separator = separator,
            HasDecimalComma = PrefersComma(rows.SelectMany(line => line.Cells), separator),
        };
    }

    /// <summary>A number as this list writes it; null where the text is none.</summary>
    /// <param name="text">Such as "1.234,50 €" or "$ 12.90".</param>
    public double? Number(string text)
    {
        var bare = new string([.. text.Where(c => char.IsAsciiDigit(c) || c is '.' or ',' or '-' or '\'')]);
        if (bare.Length == 0 || !bare.Any(char.IsAsciiDigit))
        {
            return null;
        }

        var (point, group) = HasDecimalComma ? (',', '.') : ('.', ',');
        // "12.90" in a list of decimal commas has no groups of three: it is twelve and ninety.
        if (
            bare.Count(c => c == group) == 1
            && !bare.Contains(point)
            && bare.Length - bare.IndexOf(group) - 1 != 3
        )
        {
            (point, group) = (group, point);
        }

        bare = bare.Replace(group.ToString(), "", StringComparison.Ordinal)
            .Replace("'", "", StringComparison.Ordinal)
            .Replace(point, '.');
        return double.TryParse(
            bare,
            NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign,
            CultureInfo.InvariantCulture,
            out var value
        )
            ? value
            : null;
    }

    /// <summary>The separator that cuts most of the first lines into the same number of cells.</summary>
    private static char Guess(string text)
    {
        var lines = text.Split('\n').Where(l => l.Trim().Length > 0).Take(Looked).ToList();
        return Separators
            .Select(separator =>
            {
                var counts = lines.ConvertAll(line => Outside(line, separator));
                var usual = counts
                    .Where(c => c > 0)
                    .GroupBy(c => c)
                    .OrderByDescending(g => g.Count())
                    .ThenByDescending(g => g.Key)
                    .FirstOrDefault();
                return (separator, Lines: usual?.Count() ?? 0, Cells: usual?.Key ?? 0);
            })
            .OrderByDescending(one => one.Lines)
            .ThenByDescending(one => one.Cells)
            .First()
            .separator;
    }

    private static int Outside(string line, char separator)
    {
        var (count, isQuoted) = (0, false);
        for (var i = 0; i < line.Length; i++)
        {
            isQuoted ^= line[i] == '"';
            // A comma between digits may be a decimal comma and says nothing.
            var isDecimal =
                separator == ','
                && i > 0
                && i + 1 < line.Length
                && char.IsAsciiDigit(line[i - 1])
                && char.IsAsciiDigit(line[i + 1]);
            count += !isQuoted && line[i] == separator && !isDecimal ? 1 : 0;
        }

        return count;
    }

    private static List<(int Line, string[] Cells)> Split(string text, char separator)
    {
        using var parser = new CsvParser(
            new StringReader(text),
            new CsvConfiguration(CultureInfo.InvariantCulture)
            {
                Delimiter = separator.ToString(),
                BadDataFound = null,
                IgnoreBlankLines = true,
            }
        );
        var lines = new List<(int, string[])>();
        while (lines.Count <= MostRows && parser.Read())
        {
            lines.Add((parser.RawRow, parser.Record ?? []));
        }

        return lines;
    }

    private static int Usual(List<(int Line, string[] Cells)> lines) =>
        lines
            .GroupBy(line => line.Cells.Length)
            .OrderByDescending(g => g.Count())
            .ThenByDescending(g => g.Key)
            .Select(g => g.Key)
            .FirstOrDefault();

    private static int Filled(string[] cells) => cells.Count(c => !string.IsNullOrWhiteSpace(c));

    private static ImmutableArray<string> Fitted(string[] cells, int width) =>
        [.. cells.Concat(Enumerable.Repeat("", width)).Take(width).Select(c => c.Trim())];

    private static bool IsNumber(string cell) =>
        cell.Any(char.IsAsciiDigit) && cell.All(c => !char.IsLetter(c)) && cell.Trim().Length > 0;

    /// <summary>A comma followed by one or two digits at the end of cells, more often than a point.</summary>
    private static bool PrefersComma(IEnumerable<string> cells, char separator)
    {
        var (commas, points) = (0, 0);
        foreach (var cell in cells)
        {
            var digits = new string([.. cell.Where(c => char.IsAsciiDigit(c) || c is '.' or ',')]);
            var last = digits.LastIndexOfAny(['.', ',']);
            if (last > 0 && digits.Length - last - 1 is 1 or 2)
            {
                commas += digits[last] == ',' ? 1 : 0;
                points += digits[last] == '.' ? 1 : 0;
            }
        }

        return commas > points || (commas == points && separator == ';');
    }
}
