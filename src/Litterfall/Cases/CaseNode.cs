namespace Litterfall.App.Cases;

/// <summary>A value of a JSON case with the place where it begins, both counted from 1.</summary>
public abstract class CaseNode(int line, int column)
{
    /// <summary>Line of its first sign.</summary>
    public int Line { get; } = line;

    /// <summary>Column of its first sign.</summary>
    public int Column { get; } = column;

    /// <summary>What it is, in words.</summary>
    public abstract string Words { get; }
}

/// <summary>An object, its members in the order of the file.</summary>
public sealed class CaseMembers(int line, int column) : CaseNode(line, column)
{
    private readonly List<CaseMember> members = [];
    private readonly Dictionary<string, CaseMember> byKey = new(StringComparer.Ordinal);

    /// <summary>The members, each key once.</summary>
    public IReadOnlyList<CaseMember> Members => members;

    /// <inheritdoc/>
    public override string Words => "an object";

    /// <summary>A member by its key, or null.</summary>
    public CaseMember? Find(string key) => byKey.GetValueOrDefault(key);

    /// <summary>Adds a member.</summary>
    /// <returns>False when the key is there already.</returns>
    public bool TryAdd(CaseMember member)
    {
        if (!byKey.TryAdd(member.Key, member))
        {
            return false;
        }

        members.Add(member);
        return true;
    }
}

/// <summary>A key of an object, where it stands, and its value.</summary>
public sealed record CaseMember(string Key, int Line, int Column, CaseNode Value);

/// <summary>A list.</summary>
public sealed class CaseItems(int line, int column) : CaseNode(line, column)
{
    private readonly List<CaseNode> items = [];

    /// <summary>Its items.</summary>
    public IReadOnlyList<CaseNode> Items => items;

    /// <inheritdoc/>
    public override string Words => items.Count == 0 ? "an empty list" : "a list";

    /// <summary>Adds an item.</summary>
    public void Add(CaseNode item) => items.Add(item);
}

/// <summary>A number; always finite.</summary>
public sealed class CaseNumber(int line, int column, double value) : CaseNode(line, column)
{
    /// <summary>Its value.</summary>
    public double Value { get; } = value;

    /// <inheritdoc/>
    public override string Words => Value.ToString("R", System.Globalization.CultureInfo.InvariantCulture);
}

/// <summary>A text.</summary>
public sealed class CaseText(int line, int column, string value) : CaseNode(line, column)
{
    private const int LongestShown = 40;

    /// <summary>Its value.</summary>
    public string Value { get; } = value;

    /// <inheritdoc/>
    public override string Words => $"the text '{Shown(Value)}'";

    /// <summary>A text short enough for a message.</summary>
    public static string Shown(string text) =>
        text.Length <= LongestShown ? text : text[..LongestShown] + "...";
}

/// <summary>True or false.</summary>
public sealed class CaseTruth(int line, int column, bool value) : CaseNode(line, column)
{
    /// <summary>Its value.</summary>
    public bool Value { get; } = value;

    /// <inheritdoc/>
    public override string Words => Value ? "true" : "false";
}

/// <summary>Null: the same as leaving the key out, where it may be left out.</summary>
public sealed class CaseNull(int line, int column) : CaseNode(line, column)
{
    /// <inheritdoc/>
    public override string Words => "null";
}
