using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using CsvHelper;
using CsvHelper.Configuration;

namespace Litterfall.Documents.Tables;

/// <summary>How the numbers and columns of a CSV file are separated.</summary>
public enum CsvStyle
{
    /// <summary>Comma between columns, decimal point; the same on every machine.</summary>
    Invariant,

    /// <summary>Semicolon between columns, decimal comma, for spreadsheets that expect them.</summary>
    Semicolon,
}

/// <summary>One cell of a CSV table.</summary>
public abstract record CsvCell
{
    /// <summary>An empty cell.</summary>
    public static readonly CsvCell Empty = new CsvText("");

    /// <summary>A text, or an empty cell for null.</summary>
    public static CsvCell Of(string? text) => text is null ? Empty : new CsvText(text);

    /// <summary>A number, or an empty cell for null.</summary>
    public static CsvCell Of(double? number) => number is { } value ? new CsvNumber(value) : Empty;

    /// <summary>A day.</summary>
    public static CsvCell Of(DateOnly day) => new CsvDay(day);
}

/// <summary>Text; ids are text too, so that leading zeros stay.</summary>
public sealed record CsvText(string Text) : CsvCell;

/// <summary>A number in the unit its column names.</summary>
public sealed record CsvNumber(double Number) : CsvCell;

/// <summary>A day, written as ISO 8601.</summary>
public sealed record CsvDay(DateOnly Day) : CsvCell;

/// <summary>
/// Writes tables as RFC 4180 asks: a header row, CRLF, quotes doubled; UTF-8 with byte-order mark, because
/// spreadsheets need it. A text that a spreadsheet would run as a formula gets an apostrophe in front.
/// </summary>
public static class CsvTable
{
    /// <summary>Media type of the bytes.</summary>
    public const string MediaType = "text/csv; charset=utf-8";

    /// <summary>Characters that begin a formula, with the wide forms some spreadsheets take for
    /// them.</summary>
    private const string Starters = "=+-@\t\r\n＝＋－＠";

    /// <summary>The file.</summary>
    /// <param name="columns">Headers, with the unit in the name where the column has one.</param>
    /// <param name="rows">Cells, as many in each row as there are columns.</param>
    /// <param name="style">Separators.</param>
    /// <exception cref="ArgumentException">A row has more or fewer cells than there are columns.</exception>
    public static byte[] Write(
        IReadOnlyList<string> columns,
        IEnumerable<ImmutableArray<CsvCell>> rows,
        CsvStyle style = CsvStyle.Invariant
    )
    {
        var settings = new CsvConfiguration(CultureInfo.InvariantCulture)
        {
            Delimiter = style == CsvStyle.Semicolon ? ";" : ",",
            NewLine = "\r\n",
            Mode = CsvMode.RFC4180,
            InjectionOptions = InjectionOptions.None,
            ShouldQuote = field =>
                NeedsQuotes(field.Field, field.Row.Configuration.Delimiter)
                // A row of one empty cell would read as no row at all.
                || (columns.Count == 1 && string.IsNullOrEmpty(field.Field)),
        };
        using var stream = new MemoryStream();
        using (var text = new StreamWriter(stream, new UTF8Encoding(true)))
        using (var csv = new CsvWriter(text, settings))
        {
            foreach (var column in columns)
            {
                csv.WriteField(Guarded(column));
            }

            csv.NextRecord();
            foreach (var row in rows)
            {
                if (row.Length != columns.Count)
                {
                    throw new ArgumentException("A row does not fit the columns.", nameof(rows));
                }

                foreach (var cell in row)
                {
                    csv.WriteField(Printed(cell, style));
                }

                csv.NextRecord();
            }
        }

        return stream.ToArray();
    }

    /// <summary>
    /// The text, with an apostrophe in front where it begins like a formula, spaces before it included.
    /// </summary>
    public static string Guarded(string text)
    {
        // Tab, carriage return and line feed are blanks themselves and count as starters only when they lead.
        var start = text.AsSpan().TrimStart();
        var leads = text.Length > 0 && Starters.Contains(text[0], StringComparison.Ordinal);
        var runs = start.Length > 0 && Starters.Contains(start[0], StringComparison.Ordinal);
        return leads || runs ? $"'{text}" : text;
    }

    /// <summary>
    /// Rule 6 of RFC 4180, section 2, for either half of a line break alone too, and blanks at an end, which
    /// some readers trim.
    /// </summary>
    private static bool NeedsQuotes(string? text, string separator) =>
        !string.IsNullOrEmpty(text)
        && (
            text.AsSpan().IndexOfAny('"', '\r', '\n') >= 0
            || text.Contains(separator, StringComparison.Ordinal)
            || char.IsWhiteSpace(text[0])
            || char.IsWhiteSpace(text[^1])
        );

    private static string Printed(CsvCell cell, CsvStyle style) =>
        cell switch
        {
            CsvText text => Guarded(text.Text),
            CsvNumber number => Number(number.Number, style),
            CsvDay day => day.Day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
            _ => throw new ArgumentOutOfRangeException(nameof(cell)),
        };

    /// <summary>Ten significant digits, so that a sum of thirds does not print as noise.</summary>
    private static string Number(double number, CsvStyle style)
    {
        if (!double.IsFinite(number))
        {
            throw new ArgumentOutOfRangeException(nameof(number), "A table holds finite numbers only.");
        }

        var rounded = double.Parse(
            number.ToString("G10", CultureInfo.InvariantCulture),
            CultureInfo.InvariantCulture
        );
        var text = rounded.ToString("0.###############", CultureInfo.InvariantCulture);
        return style == CsvStyle.Semicolon ? text.Replace('.', ',') : text;
    }
}
