using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Litterfall.Domain.Faults;
using Litterfall.Domain.Lists;
using Litterfall.Domain.Trees;

namespace Litterfall.Domain.DesignFile;

/// <summary>
/// Reads design files. Every fault says where, what, and what was expected; the file is never changed.
/// </summary>
public static class DesignReader
{
    /// <summary>Largest design file in bytes; the samples have about 2 000.</summary>
    public const int LargestFile = 512 * 1024;

    /// <summary>Reads the bytes of a file: UTF-8, with or without byte-order mark.</summary>
    /// <param name="file">Name used in messages.</param>
    /// <param name="bytes">The whole file.</param>
    public static Reading<DesignDocument> Read(string file, ReadOnlySpan<byte> bytes)
    {
        var fault = EncodingFault(file, bytes, out var text);
        return fault is null ? Read(file, text) : new Reading<DesignDocument>(null, [fault]);
    }

    /// <summary>Reads text.</summary>
    public static Reading<DesignDocument> Read(string file, string text)
    {
        var fault = ControlFault(file, text);
        if (fault is not null)
        {
            return new(null, [fault]);
        }

        var (root, trouble) = new YamlTree(file, text, line => MissingColon.Find(file, text, line)).Read();
        if (trouble is not null)
        {
            return new(null, [trouble]);
        }

        var binder = new DesignBinder(new TreeFaults(file));
        var design = binder.Bind(root!);
        return !binder.Faults.IsEmpty || design is null
            ? new(null, binder.Faults.ToSeq())
            : new(new DesignDocument(file, text, design, binder.Spans.ToImmutable()), []);
    }

    private static TextFault? EncodingFault(string file, ReadOnlySpan<byte> bytes, out string text)
    {
        const string expected = "a text file in UTF-8";
        text = "";
        if (bytes.Length > LargestFile)
        {
            return new(file, 1, 1, "the file is too large", $"a design of at most {LargestFile / 1024} KB");
        }

        if (bytes.StartsWith<byte>([0xFF, 0xFE]) || bytes.StartsWith<byte>([0xFE, 0xFF]))
        {
            return new(file, 1, 1, "the file is saved in UTF-16", expected);
        }

        try
        {
            var start = bytes.StartsWith<byte>([0xEF, 0xBB, 0xBF]) ? 3 : 0;
            text = new UTF8Encoding(false, true).GetString(bytes[start..]);
            return null;
        }
        catch (DecoderFallbackException e)
        {
            var (line, column) = PlaceOf(bytes[..Math.Clamp(e.Index, 0, bytes.Length)]);
            return new(
                file,
                line,
                column,
                "a byte here is not UTF-8 text (an older code page, or not a text file)",
                expected
            );
        }
    }

    private static (int Line, int Column) PlaceOf(ReadOnlySpan<byte> before)
    {
        var line = before.Count((byte)'\n') + 1;
        return (line, before.Length - before.LastIndexOf((byte)'\n'));
    }

    private static TextFault? ControlFault(string file, string text)
    {
        var line = 1;
        var lineStart = 0;
        var onlyBlanks = true;
        for (var i = 0; i < text.Length; i++)
        {
            var c = text[i];
            if (c == '\t' && onlyBlanks)
            {
                return new(file, line, i - lineStart + 1, "a tab indents this line", "spaces for indenting");
            }

            // Line breaks of other alphabets would end a value in YAML.
            if (c is (< ' ' and not ('\t' or '\n' or '\r')) or '\u0085' or '\u2028' or '\u2029')
            {
                return new(
                    file,
                    line,
                    i - lineStart + 1,
                    "a control character stands here",
                    "a text file in UTF-8"
                );
            }

            onlyBlanks &= c is ' ';
            if (c == '\n')
            {
                line++;
                lineStart = i + 1;
                onlyBlanks = true;
            }
        }

        return null;
    }
}

/// <summary>Fills the design records from the tree, by their <see cref="FileShape"/>.</summary>
internal sealed class DesignBinder(TreeFaults faults)
{
    private const int MostFaults = 50;
    private const int LongestWord = 40;

    public TreeFaults Faults => faults;

    public ImmutableDictionary<string, TextSpan>.Builder Spans { get; } =
        ImmutableDictionary.CreateBuilder<string, TextSpan>(StringComparer.Ordinal);

    public Design? Bind(TreeNode root)
    {
        if (root is not TreeMap)
        {
            Add(root, "the file does not begin with keys", "litterfall: 1 and a design below it");
            return null;
        }

        return BindRecord(typeof(Design), root, "") as Design;
    }

    private object? BindRecord(Type type, TreeNode node, string path)
    {
        var shape = FileShape.Of(type);
        var keys = string.Join(", ", shape.Members.Select(m => m.Key));
        if (node is not TreeMap map)
        {
            AddNoKeys(node, path, keys);
            return null;
        }

        var made = Activator.CreateInstance(type)!;
        for (var i = 0; i < map.Members.Count; i++)
        {
            var (key, value) = map.Members[i];
            if (i + 1 < map.Members.Count && IsTornDecimal(map, i + 1))
            {
                // The torn-off decimals are the fault; what is left before the comma says nothing.
                continue;
            }

            if (shape.Find(key.Text) is { } member)
            {
                BindMember(made, member, value, path.Length == 0 ? member.Key : $"{path}.{member.Key}");
            }
            else
            {
                AddUnknown(key, IsTornDecimal(map, i), shape);
            }
        }

        foreach (
            var missing in shape.Members.Where(m => m.IsRequired && map.Members.All(x => x.Key.Text != m.Key))
        )
        {
            Add(
                map,
                $"'{missing.Key}' is missing{(path.Length == 0 ? "" : $" in '{Label(path)}'")}",
                Expected(missing)
            );
        }

        return made;
    }

    /// <summary>
    /// { depth: 4,5 cm } reads as depth 4 and a key "5 cm": say so instead of "unknown key".
    /// </summary>
    private void AddUnknown(TreeScalar key, bool isTornDecimal, FileShape shape)
    {
        if (isTornDecimal)
        {
            Add(
                key,
                $"inside {{ }} the decimal comma before '{TreeNode.Shown(key.Text)}' ends the value",
                $"a decimal point, as in \"4.5 cm\", or the value in quotes, as in \"4,5 cm\""
            );
        }
        else
        {
            AddUnlike(key, shape);
        }
    }

    private void AddUnlike(TreeScalar key, FileShape shape)
    {
        if (Faults.Count >= MostFaults)
        {
            return;
        }

        var word = key.Text.Split(' ', 2)[0];
        if (word.Length < key.Text.Length && shape.Find(word) is not null)
        {
            Add(key, $"a colon is missing after '{word}'", $"{word}: and its value");
            return;
        }

        var known = shape.Members.Select(m => m.Key).ToList();
        var near = key.Text.Length <= LongestWord ? NearWords.Of(key.Text, known).FirstOrDefault() : null;
        Add(
            key,
            $"'{TreeNode.Shown(key.Text)}' is not a key here"
                + (near is null ? "" : $"; did you mean {near}?"),
            near ?? "one of " + string.Join(", ", known)
        );
    }

    /// <summary>"drain: no" says plainly what is meant, but none is the word for it.</summary>
    private void AddNoKeys(TreeNode node, string path, string keys)
    {
        if (node is TreeScalar { Text: "no" or "No" or "false" or "off" or "without" or "nothing" } word)
        {
            Add(node, $"'{word.Text}' is not the word here; did you mean none?", $"none, or the keys {keys}");
        }
        else
        {
            Add(node, $"'{Label(path)}' needs keys below it", keys);
        }
    }

    private static bool IsTornDecimal(TreeMap map, int at) =>
        map.InFlow
        && map.Members[at] is ({ Text.Length: > 0 } key, TreeScalar { IsEmpty: true })
        && char.IsAsciiDigit(key.Text[0]);

    private void BindMember(object owner, FileMember member, TreeNode node, string path)
    {
        if (!Spans.TryAdd(path, node.Span))
        {
            Add(node, $"'{member.Key}' stands here twice under two spellings", "each key once");
            return;
        }

        if (node is TreeScalar { IsNone: true } && member.AcceptsNone)
        {
            return;
        }

        if (node is TreeScalar { IsEmpty: true })
        {
            Add(
                node,
                $"'{member.Key}' has no value",
                member.AcceptsNone ? $"{Expected(member)}, or none" : Expected(member)
            );
            return;
        }

        var value = member.IsList ? BindList(member, node, path) : BindOne(member.Type, member, node, path);
        if (value is not null)
        {
            member.Set(owner, value);
        }
    }

    private object? BindList(FileMember member, TreeNode node, string path)
    {
        var itemType = member.Type.GenericTypeArguments[0];
        IReadOnlyList<TreeNode> nodes = node is TreeList list ? list.Items : [node];
        if (nodes.Count > member.MostItems || nodes.Count == 0)
        {
            Add(node, $"'{member.Key}' has {nodes.Count} entries", $"1 to {member.MostItems}");
            return null;
        }

        if (node is not TreeList && node is not TreeScalar)
        {
            Add(node, $"'{member.Key}' is not a list", "entries each with a dash, or in [ ]");
            return null;
        }

        var items = Array.CreateInstance(itemType, nodes.Count);
        for (var i = 0; i < nodes.Count; i++)
        {
            Spans[$"{path}[{i}]"] = nodes[i].Span;
            if (BindOne(itemType, member, nodes[i], $"{path}[{i}]") is not { } item)
            {
                return null;
            }

            items.SetValue(item, i);
        }

        return SeqOf(itemType, items);
    }

    private static object SeqOf(Type itemType, Array items) =>
        Activator.CreateInstance(
            typeof(Seq<>).MakeGenericType(itemType),
            System.Reflection.BindingFlags.Instance | System.Reflection.BindingFlags.NonPublic,
            null,
            [items],
            null
        )!;

    private object? BindOne(Type type, FileMember member, TreeNode node, string path)
    {
        if (FileTypes.IsRecord(type))
        {
            return BindRecord(type, node, path);
        }

        if (node is not TreeScalar scalar)
        {
            Add(node, $"'{member.Key}' needs a single value", FileTypes.Expected(type, member));
            return null;
        }

        if (FileTypes.TryParse(type, member, Unquoted(scalar.Text.Trim()), out var value, out var problem))
        {
            return value;
        }

        Add(scalar, $"{member.Key}: {problem}", FileTypes.Expected(type, member));
        return null;
    }

    /// <summary>Quotes as word processors write them mean the same as straight ones around a value.</summary>
    private static string Unquoted(string text) =>
        text.Length > 2 && text[0] is '“' or '„' or '‘' or '‚' && text[^1] is '”' or '“' or '’' or '‘'
            ? text[1..^1]
            : text;

    private static string Expected(FileMember member) =>
        member.IsList
            ? FileTypes.Expected(member.Type.GenericTypeArguments[0], member)
            : FileTypes.Expected(member.Type, member);

    private static string Label(string path) => path.Length == 0 ? "the design" : path;

    private void Add(TreeNode node, string message, string expected) =>
        faults.Add(node.Span, message, expected);
}
