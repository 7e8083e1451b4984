using System.Collections.Immutable;
using System.Globalization;

namespace Litterfall.Domain.Figures;

/// <summary>
/// Finds a number of a report by its key: <c>weights.dryKg</c>, <c>quantities[0].massKg</c>,
/// <c>quantities.0.massKg</c>, or by name, <c>quantities[drainage].massKg</c>.
/// </summary>
public static class ReportPath
{
    /// <summary>The node at a key, or null.</summary>
    public static ReportNode? Find(ReportNode root, string key)
    {
        ReportNode? node = root;
        foreach (var step in Steps(key))
        {
            node = node switch
            {
                ReportObject branch => branch.Find(step),
                ReportList list => Item(list, step),
                _ => null,
            };
        }

        return node;
    }

    /// <summary>Keys that contain one of the words of what was asked, nearest first, at most five.</summary>
    public static ImmutableArray<string> Near(ReportNode root, string key)
    {
        var words = Steps(key).Where(s => s.Length > 2 && !char.IsAsciiDigit(s[0])).ToArray();
        return
        [
            .. root.Leaves()
                .Where(leaf => leaf.Node is ReportNumber or ReportAbsent)
                .Select(leaf =>
                    (
                        leaf.Path,
                        Hits: words.Count(w => leaf.Path.Contains(w, StringComparison.OrdinalIgnoreCase))
                    )
                )
                .Where(leaf => leaf.Hits > 0)
                .OrderByDescending(leaf => leaf.Hits)
                .Select(leaf => leaf.Path)
                .Take(5),
        ];
    }

    private static ReportNode? Item(ReportList list, string step) =>
        int.TryParse(step, NumberStyles.None, CultureInfo.InvariantCulture, out var index)
            ? index < list.Items.Length
                ? list.Items[index]
                : null
            : list.Items.FirstOrDefault(item =>
                item is ReportObject o
                && o.Members.Any(m =>
                    m.Value is ReportText text
                    && string.Equals(text.Text, step, StringComparison.OrdinalIgnoreCase)
                )
            );

    private static List<string> Steps(string key)
    {
        var steps = new List<string>();
        var text = key.Trim().TrimStart('$', '/', '.');
        var start = 0;
        var inBrackets = false;
        for (var i = 0; i <= text.Length; i++)
        {
            var ends = i == text.Length || (inBrackets ? text[i] == ']' : text[i] is '.' or '[' or '/');
            if (!ends)
            {
                continue;
            }

            var step = text[start..i].Trim(' ', '\'', '"');
            if (step.Length > 0)
            {
                steps.Add(step);
            }

            inBrackets = i < text.Length && text[i] == '[';
            start = i + 1;
        }

        return steps;
    }
}
