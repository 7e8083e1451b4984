using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain.Faults;
using Litterfall.Domain.Trees;

namespace Litterfall.Domain.DesignFile;

/// <summary>A design file: its text, what it says, and where each value stands in the text.</summary>
public sealed class DesignDocument
{
    internal DesignDocument(
        string file,
        string text,
        Design design,
        ImmutableDictionary<string, TextSpan> spans
    )
    {
        File = file;
        Text = text;
        Design = design;
        Spans = spans;
    }

    /// <summary>Name used in messages.</summary>
    public string File { get; }

    /// <summary>The text exactly as written.</summary>
    public string Text { get; }

    /// <summary>What it says.</summary>
    public Design Design { get; }

    /// <summary>
    /// Where each value stands, by path such as <c>floor.soil.front</c> or <c>vents[0].area</c>.
    /// </summary>
    public ImmutableDictionary<string, TextSpan> Spans { get; }

    /// <summary>
    /// The document with one single value replaced; comments, order and every other character stay as they
    /// are.
    /// </summary>
    /// <param name="path">A path in <see cref="Spans"/> that leads to a single value.</param>
    /// <param name="value">New text of the value, e.g. "5 1/2 in".</param>
    public Reading<DesignDocument> WithValue(string path, string value)
    {
        if (!Spans.TryGetValue(path, out var span))
        {
            return new(
                null,
                [new TextFault(File, 1, 1, $"the design does not write '{path}'", "a value that is written")]
            );
        }

        var old = Text[span.Start..span.End];
        if (old.Contains('\n', StringComparison.Ordinal) || old.StartsWith('{') || old.StartsWith('['))
        {
            return new(
                null,
                [
                    new TextFault(
                        File,
                        span.Line,
                        span.Column,
                        $"'{path}' has parts",
                        "the path of one of them"
                    ),
                ]
            );
        }

        return DesignReader.Read(
            File,
            string.Concat(
                Text.AsSpan(0, span.Start),
                YamlText.Scalar(value, old.StartsWith('"') || old.StartsWith('\'')),
                Text.AsSpan(span.End)
            )
        );
    }

    /// <summary>
    /// The fault for a value at a path; the nearest written parent is used when it is not written.
    /// </summary>
    public TextFault Fault(string path, string message, string expected)
    {
        for (var at = path; at.Length > 0; at = Parent(at))
        {
            if (Spans.TryGetValue(at, out var span))
            {
                return new TextFault(File, span.Line, span.Column, message, expected);
            }
        }

        return new TextFault(File, 1, 1, message, expected);
    }

    /// <summary>"line 12" for a written value; "" otherwise.</summary>
    public string LineOf(string path) => Spans.TryGetValue(path, out var span) ? $"line {span.Line}" : "";

    private static string Parent(string path)
    {
        var cut = Math.Max(path.LastIndexOf('.'), path.LastIndexOf('['));
        return cut < 0 ? "" : path[..cut];
    }
}

/// <summary>Spelling of single values.</summary>
internal static class YamlText
{
    /// <summary>
    /// True for a text that other YAML readers take for a number, or for yes or no, when it is not quoted.
    /// </summary>
    public static bool ReadsAsOther(string text) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out _)
        || text.ToLowerInvariant() is "true" or "false" or "yes" or "no" or "on" or "off" or "y" or "n";

    /// <summary>
    /// The value as YAML that reads back as exactly this text, in block and flow form alike.
    /// </summary>
    public static string Scalar(string value, bool keepQuotes = false)
    {
        var plain =
            !keepQuotes
            && value.Length > 0
            && value == value.Trim()
            && (
                char.IsLetterOrDigit(value[0])
                || value[0] == '-' && value.Length > 1 && char.IsAsciiDigit(value[1])
            )
            && value.All(c => c is '"' || (Quoted(c).Length == 1 && !",[]{}#:".Contains(c)))
            && value is not ("null" or "none");
        return plain ? value : "\"" + string.Concat(value.Select(Quoted)) + "\"";
    }

    /// <summary>
    /// A character as it stands between quotes, YAML 1.2.2, 5.7: what would break or fold a line is written
    /// out.
    /// </summary>
    private static string Quoted(char c) =>
        c switch
        {
            '\\' => @"\\",
            '"' => "\\\"",
            '\n' => @"\n",
            '\r' => @"\r",
            '\t' => @"\t",
            < ' ' or (>= '\u007f' and < '\u00a0') or '\u2028' or '\u2029' or '\ufeff' => $"\\u{(int)c:x4}",
            _ => c.ToString(),
        };
}
