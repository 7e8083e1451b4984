using System.Globalization;
using Litterfall.Domain.Faults;
using Litterfall.Domain.Trees;

namespace Litterfall.Domain.DesignFile;

/// <summary>
/// Changes to a design file that touch nothing else: comments, order and every other sign stay as they are.
/// Each gives the document read anew, or what is wrong with it.
/// </summary>
public static class DesignEdits
{
    /// <summary>Writes a single value, where it stands or as a new key of what it belongs to.</summary>
    /// <param name="document">The design.</param>
    /// <param name="path">Its path, such as <c>floor.soil.front</c> or <c>plants[0].at.x</c>.</param>
    /// <param name="value">The value as typed.</param>
    public static Reading<DesignDocument> Set(DesignDocument document, string path, string value) =>
        Put(document, path, YamlText.Scalar(value, YamlText.ReadsAsOther(value) && !IsPlainKind(value)));

    /// <summary>Writes a part with keys of its own, in one line.</summary>
    /// <param name="document">The design.</param>
    /// <param name="path">Its path, such as <c>lid</c>.</param>
    /// <param name="part">The part in flow form, such as <c>{ material: glass, gap: 2 mm }</c>.</param>
    public static Reading<DesignDocument> SetPart(DesignDocument document, string path, string part) =>
        Put(document, path, part);

    /// <summary>Writes several single values as a list, one of them as itself.</summary>
    /// <param name="document">The design.</param>
    /// <param name="path">Its path, such as <c>box.inside.length</c>.</param>
    /// <param name="values">The values as typed; at least one.</param>
    public static Reading<DesignDocument> SetList(
        DesignDocument document,
        string path,
        IReadOnlyList<string> values
    ) =>
        values.Count == 1
            ? Set(document, path, values[0])
            : Put(document, path, $"[ {string.Join(", ", values.Select(v => YamlText.Scalar(v)))} ]");

    /// <summary>Adds to a list; the list is made where there is none.</summary>
    /// <param name="document">The design.</param>
    /// <param name="path">The list, such as <c>plants</c>.</param>
    /// <param name="item">The item in flow form.</param>
    public static Reading<DesignDocument> Add(DesignDocument document, string path, string item)
    {
        var text = document.Text;
        if (Tree(document) is not { } root)
        {
            return Unreadable(document);
        }

        if (Find(root, path) is not TreeList { Items.Count: > 0 } list)
        {
            return Find(root, path) is null && !path.Contains('.', StringComparison.Ordinal)
                ? Read(document, $"{text.TrimEnd('\n')}\n{path}:\n  - {item}\n")
                : Put(document, path, $"[ {item} ]");
        }

        if (text[list.Span.Start] == '[')
        {
            var last = End(list.Items[^1], text);
            return Read(document, text.Insert(last, $", {item}"));
        }

        var dash = DashOf(list.Items[^1], text);
        var indent = new string(' ', dash - LineStart(text, dash));
        return Read(document, After(text, End(list.Items[^1], text), $"{indent}- {item}"));
    }

    /// <summary>
    /// Takes away a key with all below it, or an item of a list; what is then empty goes too.
    /// </summary>
    /// <param name="document">The design.</param>
    /// <param name="path">Its path.</param>
    public static Reading<DesignDocument> Remove(DesignDocument document, string path)
    {
        var removed = RemoveNode(document, path);
        return removed.Value is { } without && path.EndsWith(']')
            ? AcceptedPaths.Follow(without, path)
            : removed;
    }

    private static Reading<DesignDocument> RemoveNode(DesignDocument document, string path)
    {
        if (Tree(document) is not { } root || Find(root, path) is not { } node)
        {
            return Missing(document, path);
        }

        var cut = Math.Max(path.LastIndexOf('.'), path.LastIndexOf('['));
        var parent = cut < 0 ? root : Find(root, path[..cut]);
        return parent switch
        {
            TreeList { Items.Count: 1 } or TreeMap { Members.Count: 1 } when cut > 0 => RemoveNode(
                document,
                path[..cut]
            ),
            TreeList list => RemoveItem(document, list, node),
            TreeMap map => RemoveMember(document, map, node),
            _ => Missing(document, path),
        };
    }

    /// <summary>A part as one line of flow form, such as another of its kind begins with.</summary>
    /// <param name="document">The design.</param>
    /// <param name="path">Its path, such as <c>plants[0]</c>.</param>
    /// <param name="without">Keys of the part that are left out.</param>
    /// <returns>The part; null where the design does not write it.</returns>
    public static string? FlowOf(DesignDocument document, string path, params string[] without) =>
        Tree(document) is { } root && Find(root, path) is { } node
            ? Flow(node, document.Text, without)
            : null;

    private static string Flow(TreeNode node, string text, string[] without) =>
        node switch
        {
            TreeMap map =>
                $"{{ {string.Join(
                ", ",
                map.Members.Where(m => !without.Contains(m.Key.Text))
                    .Select(m => $"{m.Key.Text}: {Flow(m.Value, text, [])}")
            )} }}",
            TreeList list => $"[ {string.Join(", ", list.Items.Select(i => Flow(i, text, [])))} ]",
            TreeScalar scalar => YamlText.Scalar(
                scalar.Text,
                text[scalar.Span.Start] is '"' or '\''
                    || YamlText.ReadsAsOther(scalar.Text) && !IsPlainKind(scalar.Text)
            ),
            _ => text[node.Span.Start..node.Span.End],
        };

    private static bool IsPlainKind(string value) =>
        int.TryParse(value, NumberStyles.None, CultureInfo.InvariantCulture, out _)
        || value is "true" or "false";

    private static Reading<DesignDocument> Put(DesignDocument document, string path, string yaml)
    {
        var text = document.Text;
        if (Tree(document) is not { } root)
        {
            return Unreadable(document);
        }

        if (Find(root, path) is { } there)
        {
            return Read(document, Replaced(text, there, yaml));
        }

        var cut = path.LastIndexOf('.');
        var key = cut < 0 ? path : path[(cut + 1)..];
        if (key.Contains('[', StringComparison.Ordinal))
        {
            return Missing(document, path);
        }

        return (cut < 0 ? root : Find(root, path[..cut])) switch
        {
            TreeMap map => Read(document, WithMember(text, map, $"{key}: {yaml}")),
            null or TreeScalar when cut > 0 => Put(document, path[..cut], $"{{ {key}: {yaml} }}"),
            _ => Missing(document, path),
        };
    }

    private static string Replaced(string text, TreeNode node, string yaml)
    {
        var (from, to) = (node.Span.Start, End(node, text));
        var isEmpty = from == to;
        var isBlock = node is not TreeScalar && text[from] is not ('{' or '[');
        if (!isBlock)
        {
            return string.Concat(text.AsSpan(0, from), isEmpty ? " " : "", yaml, text.AsSpan(to));
        }

        // A block of lines becomes one line behind its key.
        var colon = text.LastIndexOf(':', from);
        return string.Concat(text.AsSpan(0, colon + 1), " ", yaml, text.AsSpan(to));
    }

    private static string WithMember(string text, TreeMap map, string member)
    {
        if (text[map.Span.Start] != '{' || map.Members.Count == 0)
        {
            if (map.Members.Count == 0)
            {
                return string.Concat(
                    text.AsSpan(0, map.Span.Start),
                    $"{{ {member} }}",
                    text.AsSpan(Closed(text, map.Span))
                );
            }

            var first = map.Members[0].Key.Span.Start;
            var indent = new string(' ', first - LineStart(text, first));
            return After(text, End(map.Members[^1].Value, text), $"{indent}{member}");
        }

        return text.Insert(End(map.Members[^1].Value, text), $", {member}");
    }

    private static Reading<DesignDocument> RemoveItem(DesignDocument document, TreeList list, TreeNode node)
    {
        var text = document.Text;
        if (text[list.Span.Start] == '[')
        {
            return Read(document, WithoutFlow(text, node.Span.Start, End(node, text)));
        }

        return Read(document, WithoutLines(text, DashOf(node, text), End(node, text)));
    }

    private static Reading<DesignDocument> RemoveMember(DesignDocument document, TreeMap map, TreeNode node)
    {
        var text = document.Text;
        var key = map.Members.First(m => ReferenceEquals(m.Value, node)).Key;
        return Read(
            document,
            text[map.Span.Start] == '{' && map.InFlow
                ? WithoutFlow(text, key.Span.Start, End(node, text))
                : WithoutLines(text, key.Span.Start, End(node, text))
        );
    }

    /// <summary>
    /// Without a stretch in brackets and the comma before it, or after it where it is the first.
    /// </summary>
    private static string WithoutFlow(string text, int from, int to)
    {
        var before = from - 1;
        while (before > 0 && char.IsWhiteSpace(text[before]))
        {
            before--;
        }

        if (text[before] == ',')
        {
            return text.Remove(before, to - before);
        }

        var after = to;
        while (after < text.Length && char.IsWhiteSpace(text[after]))
        {
            after++;
        }

        return text[after] == ','
            ? text.Remove(from, after + 1 - from).Insert(from, "")
            : text.Remove(from, to - from);
    }

    private static string WithoutLines(string text, int from, int to)
    {
        var start = LineStart(text, from);
        var end = text.IndexOf('\n', to);
        return text.Remove(start, (end < 0 ? text.Length : end + 1) - start);
    }

    /// <summary>A line after the line that holds a place.</summary>
    private static string After(string text, int place, string line)
    {
        var end = text.IndexOf('\n', place);
        return end < 0 ? $"{text}\n{line}\n" : text.Insert(end + 1, line + "\n");
    }

    /// <summary>Where a node ends; the mark of a block is where the next one begins.</summary>
    private static int End(TreeNode node, string text) =>
        node switch
        {
            TreeMap { Members.Count: > 0 } map when text[map.Span.Start] != '{' => End(
                map.Members[^1].Value,
                text
            ),
            TreeList { Items.Count: > 0 } list when text[list.Span.Start] != '[' => End(list.Items[^1], text),
            TreeMap or TreeList => Closed(text, node.Span),
            _ => node.Span.End,
        };

    /// <summary>Behind the closing bracket: the mark of its end stands before or behind it.</summary>
    private static int Closed(string text, TextSpan span)
    {
        var bracket = text[span.Start] == '{' ? '}' : ']';
        return span.End > span.Start + 1 && text[span.End - 1] == bracket
            ? span.End
            : text.IndexOf(bracket, span.End) + 1;
    }

    private static int DashOf(TreeNode item, string text) =>
        text.LastIndexOf('-', Math.Max(0, item.Span.Start - 1));

    private static int LineStart(string text, int place) =>
        place == 0 ? 0 : text.LastIndexOf('\n', place - 1) + 1;

    private static TreeNode? Tree(DesignDocument document) =>
        new YamlTree(document.File, document.Text).Read().Root;

    private static TreeNode? Find(TreeNode root, string path)
    {
        TreeNode? node = root;
        foreach (var part in path.Split('.', '['))
        {
            node = part.EndsWith(']')
                ? node is TreeList list
                && int.TryParse(part[..^1], NumberStyles.None, CultureInfo.InvariantCulture, out var i)
                && i < list.Items.Count
                    ? list.Items[i]
                    : null
                : (node as TreeMap)?.Members.FirstOrDefault(m => m.Key.Text == part).Value;
            if (node is null)
            {
                return null;
            }
        }

        return node;
    }

    private static Reading<DesignDocument> Read(DesignDocument document, string text) =>
        DesignReader.Read(document.File, text);

    private static Reading<DesignDocument> Missing(DesignDocument document, string path) =>
        new(
            null,
            [new TextFault(document.File, 1, 1, $"the design does not write '{path}'", "a key of the design")]
        );

    private static Reading<DesignDocument> Unreadable(DesignDocument document) =>
        new(
            null,
            [new TextFault(document.File, 1, 1, "the design cannot be read", "a design file that reads")]
        );
}
