using System.Text;

namespace Litterfall.Documents.Text;

/// <summary>
/// A plain table for the terminal: columns aligned, numbers to the right, nothing but blanks and text.
/// </summary>
public sealed class TextTable(params string[] heads)
{
    private readonly List<string[]> rows = [];

    /// <summary>Adds a row with one cell per column.</summary>
    public TextTable Add(params string[] cells)
    {
        rows.Add([.. cells.Select(Terminal.Clean)]);
        return this;
    }

    /// <summary>True when there is nothing to show.</summary>
    public bool IsEmpty => rows.Count == 0;

    /// <inheritdoc/>
    public override string ToString()
    {
        var widths = heads
            .Select((head, i) => Math.Max(head.Length, rows.Count == 0 ? 0 : rows.Max(r => r[i].Length)))
            .ToArray();
        var right = heads
            .Select((_, i) => rows.Count > 0 && rows.All(r => r[i].Length == 0 || IsNumber(r[i])))
            .ToArray();
        var text = new StringBuilder();
        foreach (var row in heads.All(h => h.Length == 0) ? rows : rows.Prepend(heads))
        {
            var line = new StringBuilder("  ");
            for (var i = 0; i < row.Length; i++)
            {
                line.Append(right[i] ? row[i].PadLeft(widths[i]) : row[i].PadRight(widths[i])).Append("  ");
            }

            text.Append(line.ToString().TrimEnd()).Append('\n');
        }

        return text.ToString();
    }

    private static bool IsNumber(string cell) =>
        cell == "–"
        || double.TryParse(
            cell,
            System.Globalization.NumberStyles.Float,
            System.Globalization.CultureInfo.InvariantCulture,
            out _
        );
}

/// <summary>Text that is safe to print.</summary>
public static class Terminal
{
    /// <summary>Control characters become a visible mark, so no file can steer a terminal.</summary>
    public static string Clean(string text) =>
        text.Any(IsUnsafe) ? string.Concat(text.Select(c => IsUnsafe(c) ? '\uFFFD' : c)) : text;

    /// <summary>Control signs, and those that turn the direction of what follows.</summary>
    private static bool IsUnsafe(char c) =>
        char.IsControl(c) || c is >= '\u202A' and <= '\u202E' or >= '\u2066' and <= '\u2069';

    /// <summary>Breaks a sentence into lines of at most so many characters, indented.</summary>
    public static string Wrapped(string text, string indent, int width = 100)
    {
        var lines = new StringBuilder();
        var line = new StringBuilder(indent);
        foreach (var word in Clean(text).Split(' '))
        {
            if (line.Length > indent.Length && line.Length + word.Length + 1 > width)
            {
                lines.Append(line).Append('\n');
                line.Clear().Append(indent);
            }

            line.Append(line.Length > indent.Length ? " " : "").Append(word);
        }

        return lines.Append(line).Append('\n').ToString();
    }
}
