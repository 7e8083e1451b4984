using System.Globalization;
using System.Text.RegularExpressions;
using Litterfall.Documents.Drawings;

namespace Litterfall.Web.Library;

/// <summary>
/// A drawing for the screen: inks become names that the page gives its colors, light or dark.
/// </summary>
public static partial class Inked
{
    private static readonly (string Ink, string Name)[] Names =
    [
        .. Enum.GetValues<Tone>()
            .Select(t =>
                (
                    string.Create(CultureInfo.InvariantCulture, $"\"#{Inks.Of(t):x6}\""),
                    $"\"var(--d-{t.ToString().ToLowerInvariant()})\""
                )
            ),
    ];

    /// <summary>The drawing without its first line and size, so that the page sets these.</summary>
    /// <param name="svg">A drawing as it is written to a file.</param>
    public static string Of(string svg)
    {
        var start = svg.IndexOf("<svg", StringComparison.Ordinal);
        var end = svg.IndexOf('>', start);
        var head = svg[start..end];
        var box = head[head.IndexOf("viewBox", StringComparison.Ordinal)..];
        var body = svg[(end + 1)..];
        var title = body.IndexOf("</title>", StringComparison.Ordinal);
        body = title < 0 ? body : body[(title + 8)..];
        foreach (var (ink, name) in Names)
        {
            body = body.Replace(ink, name, StringComparison.Ordinal);
        }

        body = Filled()
            .Replace(body, "fill=\"color-mix(in srgb, #${color} var(--d-tint), var(--d-paper))\" stroke=");

        return $"<svg xmlns=\"http://www.w3.org/2000/svg\" {box} aria-hidden=\"true\" "
            + $"focusable=\"false\">{body}";
    }

    /// <summary>
    /// Leaves, wood and animals: colors of things under an outline, which a dark page takes back.
    /// </summary>
    [GeneratedRegex("fill=\"#(?<color>[0-9a-f]{6})\" stroke=", RegexOptions.ExplicitCapture, 5000)]
    private static partial Regex Filled();
}
