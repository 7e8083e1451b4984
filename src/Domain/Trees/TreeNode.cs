using System.Globalization;

namespace Litterfall.Domain.Trees;

/// <summary>
/// A stretch of text: offsets in characters, and line and column of its start, counted from 1.
/// </summary>
public readonly record struct TextSpan(int Start, int End, int Line, int Column);

/// <summary>A node of a text as written, YAML or JSON, with its place.</summary>
/// <param name="span">Where it stands.</param>
public abstract class TreeNode(TextSpan span)
{
    private const int LongestShown = 40;

    /// <summary>Where it stands.</summary>
    public TextSpan Span => span;

    /// <summary>What it is, in words, for messages.</summary>
    public abstract string Kind { get; }

    /// <summary>As much of a text as a message shows.</summary>
    /// <param name="text">The text.</param>
    public static string Shown(string text) =>
        text.Length <= LongestShown
            ? text
            : text[..(LongestShown - (char.IsHighSurrogate(text[LongestShown - 1]) ? 1 : 0))] + "…";
}

/// <summary>What a single value is. YAML knows words alone, plain or in quotes; JSON tells more.</summary>
public enum ScalarForm
{
    /// <summary>A word without quotes; what it means depends on who reads it.</summary>
    Plain,

    /// <summary>A text in quotes.</summary>
    Quoted,

    /// <summary>A finite number.</summary>
    Number,

    /// <summary>True or false.</summary>
    Flag,

    /// <summary>Nothing.</summary>
    Null,
}

/// <summary>A single value.</summary>
/// <param name="span">Where it stands.</param>
/// <param name="text">Its text, without quotes.</param>
/// <param name="form">What it is.</param>
public sealed class TreeScalar(TextSpan span, string text, ScalarForm form) : TreeNode(span)
{
    /// <summary>Its text, without quotes.</summary>
    public string Text => text;

    /// <summary>What it is.</summary>
    public ScalarForm Form => form;

    /// <summary>The number; not a number for any other value.</summary>
    public double Number { get; init; } = double.NaN;

    /// <summary>True inside of braces or brackets.</summary>
    public bool InFlow { get; init; }

    /// <summary>True where nothing is written.</summary>
    public bool IsEmpty => form == ScalarForm.Plain && text is "" or "~" or "null";

    /// <summary>True for the plain word none.</summary>
    public bool IsNone => form == ScalarForm.Plain && text == "none";

    /// <inheritdoc/>
    public override string Kind =>
        form switch
        {
            ScalarForm.Number => Number.ToString(CultureInfo.InvariantCulture),
            ScalarForm.Flag or ScalarForm.Null => text,
            _ => $"the text '{Shown(text)}'",
        };
}

/// <summary>Keys and values.</summary>
/// <param name="span">Where it stands.</param>
/// <param name="members">Its keys, each once, and their values, in the order of the text.</param>
public sealed class TreeMap(TextSpan span, IReadOnlyList<(TreeScalar Key, TreeNode Value)> members)
    : TreeNode(span)
{
    private const int Few = 12;
    private Dictionary<string, TreeNode>? byKey;

    /// <summary>Its keys, each once, and their values, in the order of the text.</summary>
    public IReadOnlyList<(TreeScalar Key, TreeNode Value)> Members => members;

    /// <summary>True inside of braces or brackets.</summary>
    public bool InFlow { get; init; }

    /// <inheritdoc/>
    public override string Kind => "an object";

    /// <summary>The value of a key, or null.</summary>
    /// <param name="key">The key.</param>
    public TreeNode? Find(string key)
    {
        if (members.Count <= Few)
        {
            return members.FirstOrDefault(m => m.Key.Text == key).Value;
        }

        byKey ??= members.ToDictionary(m => m.Key.Text, m => m.Value, StringComparer.Ordinal);
        return byKey.GetValueOrDefault(key);
    }
}

/// <summary>Entries in order.</summary>
/// <param name="span">Where it stands.</param>
/// <param name="items">The entries.</param>
public sealed class TreeList(TextSpan span, IReadOnlyList<TreeNode> items) : TreeNode(span)
{
    /// <summary>The entries.</summary>
    public IReadOnlyList<TreeNode> Items => items;

    /// <inheritdoc/>
    public override string Kind => "a list";
}
