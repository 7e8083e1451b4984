using System.Globalization;
using System.Text;
using Litterfall.Domain.Dispatch;

namespace Litterfall.Dispatch.Evidence;

/// <summary>
/// The one text that a link is fingerprinted as: UTF-8 without a mark, lines end with LF, members in a fixed
/// order, one to a line, longer texts below their name and indented by two blanks. The first line names the
/// form, so that texts of older forms stay readable.
/// </summary>
internal static class CanonicalText
{
    /// <summary>First line of every link of this form.</summary>
    public const string Form = "litterfall evidence 1";

    /// <summary>Stands where there is no link before.</summary>
    public const string None = "none";

    private const string Indent = "  ";

    /// <summary>The text of a link.</summary>
    public static string Write(EvidenceEntry entry)
    {
        var text = new StringBuilder();
        Line(text, Form);
        Member(text, "parcel", Whole(entry.Parcel));
        Member(text, "link", Whole(entry.Number));
        Member(text, "kind", Kind(entry.Kind));
        Member(text, "at", Time(entry.At));
        Member(text, "who", entry.Who);
        Member(text, "before", entry.Before.Length > 0 ? entry.Before : None);
        if (entry.Number == 1)
        {
            Member(text, "shop-before", entry.ShopBefore.Length > 0 ? entry.ShopBefore : None);
        }

        foreach (var file in entry.Files)
        {
            Member(text, "file", $"{file.Sha256} {Whole(file.Bytes)} {file.Name}");
        }

        Lines(text, "note", entry.Note);
        Lines(text, "text", entry.Text);
        return text.ToString();
    }

    /// <summary>
    /// A text as it is kept: line ends as LF, no half characters, nothing but tabs and line ends below the
    /// blank.
    /// </summary>
    public static string Clean(string text)
    {
        var lines = text.ReplaceLineEndings("\n");
        var whole = Encoding.UTF8.GetString(Encoding.UTF8.GetBytes(lines));
        return string.Create(whole.Length, whole, (span, from) =>
        {
            for (var i = 0; i < span.Length; i++)
            {
                span[i] = char.IsControl(from[i]) && from[i] is not ('\n' or '\t') ? '\uFFFD' : from[i];
            }
        });
    }

    /// <summary>The same on one line.</summary>
    public static string CleanLine(string text) => Clean(text).Replace('\n', ' ').Trim();

    /// <summary>"cleared", "handed-over".</summary>
    public static string Kind(EvidenceKind kind) =>
        kind switch
        {
            EvidenceKind.Cleared => "cleared",
            EvidenceKind.Photo => "photo",
            EvidenceKind.HandedOver => "handed-over",
            EvidenceKind.Logger => "logger",
            EvidenceKind.Arrived => "arrived",
            EvidenceKind.Claim => "claim",
            EvidenceKind.Note => "note",
            EvidenceKind.Dropped => "dropped",
            _ => throw new ArgumentOutOfRangeException(nameof(kind)),
        };

    private static void Lines(StringBuilder text, string name, string lines)
    {
        if (lines.Length == 0)
        {
            return;
        }

        Line(text, name + ":");
        foreach (var line in lines.Split('\n'))
        {
            Line(text, Indent + line);
        }
    }

    private static void Member(StringBuilder text, string name, string value) =>
        Line(text, $"{name}: {value}");

    private static void Line(StringBuilder text, string line) => text.Append(line).Append('\n');

    private static string Whole(long number) => number.ToString(CultureInfo.InvariantCulture);

    /// <summary>ISO 8601 in UTC to the millisecond, which every store keeps.</summary>
    private static string Time(DateTime at) =>
        at.ToString("yyyy-MM-dd'T'HH:mm:ss.fff'Z'", CultureInfo.InvariantCulture);
}
