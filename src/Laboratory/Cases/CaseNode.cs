using System.Globalization;

namespace Litterfall.Laboratory.Cases;

/// <summary>A place in a text, both counted from 1; columns count characters.</summary>
public readonly record struct TextPlace(int Line, int Column);

/// <summary>A value of a case file, with its place and the way to it from the top.</summary>
public abstract class CaseNode(TextPlace place, CaseNode? parent, string? key, int index)
{
    /// <summary>Where it stands.</summary>
    public TextPlace Place => place;

    /// <summary>The way to it, as <c>layers[0].soil.n</c>; empty for the whole file.</summary>
    public string Path
    {
        get
        {
            if (parent is null)
            {
                return "";
            }

            string above = parent.Path;
            return key is null ? string.Create(CultureInfo.InvariantCulture, $"{above}[{index}]")
                : above.Length == 0 ? key
                : $"{above}.{key}";
        }
    }

    /// <summary>What it is, in words, for messages.</summary>
    public abstract string Kind { get; }
}

/// <summary>A key of an object, with its place.</summary>
public readonly record struct CaseMember(string Key, TextPlace Place, CaseNode Value);

/// <summary>An object in braces.</summary>
public sealed class CaseObject(TextPlace place, CaseNode? parent, string? key, int index)
    : CaseNode(place, parent, key, index)
{
    private readonly List<CaseMember> members = [];
    private readonly Dictionary<string, CaseNode> byKey = new(StringComparer.Ordinal);

    /// <summary>Its members in the order of the file.</summary>
    public IReadOnlyList<CaseMember> Members => members;

    /// <inheritdoc/>
    public override string Kind => "an object";

    /// <summary>The value of a key, or null.</summary>
    public CaseNode? Find(string key) => byKey.GetValueOrDefault(key);

    /// <summary>Adds a member; false when the key is there already.</summary>
    internal bool TryAdd(CaseMember member)
    {
        if (!byKey.TryAdd(member.Key, member.Value))
        {
            return false;
        }

        members.Add(member);
        return true;
    }
}

/// <summary>A list in brackets.</summary>
public sealed class CaseList(TextPlace place, CaseNode? parent, string? key, int index)
    : CaseNode(place, parent, key, index)
{
    private readonly List<CaseNode> items = [];

    /// <summary>Its items.</summary>
    public IReadOnlyList<CaseNode> Items => items;

    /// <inheritdoc/>
    public override string Kind => "a list";

    internal void Add(CaseNode item) => items.Add(item);
}

/// <summary>A finite number.</summary>
public sealed class CaseNumber(TextPlace place, CaseNode? parent, string? key, int index, double value)
    : CaseNode(place, parent, key, index)
{
    /// <summary>Its value.</summary>
    public double Value => value;

    /// <inheritdoc/>
    public override string Kind => value.ToString(CultureInfo.InvariantCulture);
}

/// <summary>A text in quotes.</summary>
public sealed class CaseText(TextPlace place, CaseNode? parent, string? key, int index, string text)
    : CaseNode(place, parent, key, index)
{
    private const int Shown = 40;

    /// <summary>The text.</summary>
    public string Text => text;

    /// <inheritdoc/>
    public override string Kind =>
        text.Length <= Shown ? $"the text '{text}'" : $"the text '{text[..Shown]}...'";
}

/// <summary>True or false.</summary>
public sealed class CaseFlag(TextPlace place, CaseNode? parent, string? key, int index, bool value)
    : CaseNode(place, parent, key, index)
{
    /// <summary>Its value.</summary>
    public bool Value => value;

    /// <inheritdoc/>
    public override string Kind => value ? "true" : "false";
}

/// <summary>Null.</summary>
public sealed class CaseNull(TextPlace place, CaseNode? parent, string? key, int index)
    : CaseNode(place, parent, key, index)
{
    /// <inheritdoc/>
    public override string Kind => "null";
}
