using Litterfall.Domain.Faults;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace Litterfall.Domain.Trees;

/// <summary>
/// Turns text into a tree with places. Anchors, tags and deep nesting have no use here and are refused.
/// </summary>
/// <param name="file">Name of the text in messages.</param>
/// <param name="text">The text.</param>
/// <param name="slip">
/// Finds a slip of the pen at or before a line that cannot be read, in the keys the reader knows.
/// </param>
internal sealed class YamlTree(string file, string text, Func<int, TextFault?>? slip = null)
{
    private const int DeepestNesting = 12;
    private const string PlainForm = "plain keys and values as `litterfall new` writes them";
    private readonly Parser parser = new(new StringReader(text));
    private ParsingEvent current = null!;

    /// <summary>The root, or the first fault.</summary>
    public (TreeNode? Root, TextFault? Fault) Read()
    {
        try
        {
            Next();
            Next();
            if (current is StreamEnd)
            {
                return (
                    null,
                    new TextFault(file, 1, 1, "the file is empty", "litterfall: 1 and a design below it")
                );
            }

            Next();
            var root = ReadNode(0, false);
            Next();
            Next();
            return current is StreamEnd
                ? (root, null)
                : (null, Fault(current.Start, "the file holds a second document", "one design in one file"));
        }
        catch (FileTroubleException trouble)
        {
            return (null, trouble.Fault);
        }
        catch (YamlException e)
        {
            return (null, Explained(e));
        }
        catch (Exception e)
            when (e is InvalidOperationException or ArgumentException or IndexOutOfRangeException)
        {
            // The scanner of the YAML library gives up so on some unfinished flow maps.
            var at = current?.End ?? Mark.Empty;
            var after = new Mark(at.Index, Math.Max(1, at.Line), Math.Max(1, at.Column));
            return (
                null,
                Fault(
                    after,
                    "a bracket is not closed after this place",
                    "brackets closed on the line they open"
                )
            );
        }
    }

    /// <summary>What the library says, and what a maker can do about it.</summary>
    private static readonly (string Says, string Message, string Expected)[] Explanations =
    [
        (
            "expected ',' or",
            "a comma or a closing bracket is missing here",
            "entries parted by commas, brackets closed"
        ),
        ("invalid mapping", "a colon, or a line set deeper, stands where no key can be", PlainForm),
        ("did not find expected key", "this line has no key, or its indent fits no line above", PlainForm),
        (
            "expected '-' indicator",
            "this line does not go on with the list above",
            "a dash, or a line set less deep"
        ),
        ("not allowed in this context", "a list cannot begin on this line", "the dashes below the key"),
        ("cannot start any token", "a value cannot begin with this sign", "the value in quotes"),
        ("unknown escape", "the backslash in this value is not understood", "the value without a backslash"),
        ("quoted scalar", "a quote that opens here is not closed", "the closing quote on the same line"),
        ("tab", "a tab indents this line", "spaces for indenting"),
    ];

    private TextFault Explained(YamlException e)
    {
        var known = Array.Find(Explanations, x =>
            e.Message.Contains(x.Says, StringComparison.OrdinalIgnoreCase)
        );
        return slip?.Invoke((int)e.Start.Line)
            ?? Fault(e.Start, known.Message ?? "the line cannot be read", known.Expected ?? PlainForm);
    }

    private void Next()
    {
        if (!parser.MoveNext())
        {
            throw new FileTroubleException(
                new TextFault(file, 1, 1, "the file ends too early", "a complete design")
            );
        }

        current = parser.Current!;
    }

    private TreeNode ReadNode(int depth, bool inFlow)
    {
        if (depth > DeepestNesting)
        {
            throw Trouble(current.Start, "the file is nested too deeply", $"at most {DeepestNesting} levels");
        }

        if (current is AnchorAlias || current is NodeEvent { Anchor.IsEmpty: false })
        {
            throw Trouble(current.Start, "anchors and aliases are not used here", "every value written out");
        }

        if (current is NodeEvent { Tag.IsEmpty: false })
        {
            throw Trouble(current.Start, "tags are not used here", "plain values without !");
        }

        return current switch
        {
            YamlDotNet.Core.Events.Scalar scalar => ReadScalar(scalar, inFlow),
            MappingStart map => ReadMap(map, depth, inFlow || map.Style == MappingStyle.Flow),
            SequenceStart list => ReadList(list, depth, inFlow || list.Style == SequenceStyle.Flow),
            _ => throw Trouble(current.Start, "something unexpected stands here", PlainForm),
        };
    }

    private static TreeScalar ReadScalar(YamlDotNet.Core.Events.Scalar scalar, bool inFlow) =>
        new(
            Span(scalar.Start, scalar.End),
            scalar.Value,
            scalar.Style == ScalarStyle.Plain ? ScalarForm.Plain : ScalarForm.Quoted
        )
        {
            InFlow = inFlow,
        };

    private TreeMap ReadMap(MappingStart start, int depth, bool inFlow)
    {
        var members = new List<(TreeScalar, TreeNode)>();
        var seen = new HashSet<string>(StringComparer.Ordinal);
        for (Next(); current is not MappingEnd; Next())
        {
            if (ReadNode(depth + 1, inFlow) is not TreeScalar key)
            {
                throw Trouble(start.Start, "a key must be a word", PlainForm);
            }

            if (!seen.Add(key.Text))
            {
                throw new FileTroubleException(
                    new TextFault(
                        file,
                        key.Span.Line,
                        key.Span.Column,
                        $"the key '{TreeNode.Shown(key.Text)}' stands here twice",
                        "each key once"
                    )
                );
            }

            Next();
            members.Add((key, ReadNode(depth + 1, inFlow)));
        }

        return new TreeMap(Span(start.Start, current.End), members) { InFlow = inFlow };
    }

    private TreeList ReadList(SequenceStart start, int depth, bool inFlow)
    {
        var items = new List<TreeNode>();
        for (Next(); current is not SequenceEnd; Next())
        {
            items.Add(ReadNode(depth + 1, inFlow));
        }

        return new TreeList(Span(start.Start, current.End), items);
    }

    private static TextSpan Span(Mark start, Mark end) =>
        new((int)start.Index, (int)end.Index, (int)start.Line, (int)start.Column);

    private TextFault Fault(Mark at, string message, string expected) =>
        new(file, (int)at.Line, (int)at.Column, message, expected);

    private FileTroubleException Trouble(Mark at, string message, string expected) =>
        new(Fault(at, message, expected));
}

/// <summary>Carries a fault out of the recursive reader; never leaves this folder.</summary>
#pragma warning disable CA1032, CA1064 // private to the reader
internal sealed class FileTroubleException(TextFault fault) : Exception(fault.Message)
{
    public TextFault Fault { get; } = fault;
}
#pragma warning restore CA1032, CA1064
