using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;

namespace Litterfall.Domain.Keys;

/// <summary>One sentence about a key, shown by editors through the JSON Schema.</summary>
[AttributeUsage(AttributeTargets.Property | AttributeTargets.Class)]
internal sealed class MeansAttribute(string text) : Attribute
{
    public string Text { get; } = text;
}

/// <summary>The key in the file when it is not the property's name.</summary>
[AttributeUsage(AttributeTargets.Property)]
internal sealed class KeyAttribute(string key) : Attribute
{
    public string Key { get; } = key;
}

/// <summary>Other spellings of a key that are read, but not written.</summary>
[AttributeUsage(AttributeTargets.Property)]
internal sealed class AlsoAttribute(params string[] keys) : Attribute
{
    public string[] Keys { get; } = keys;
}

/// <summary>The text names a catalog entry of one of these kinds.</summary>
[AttributeUsage(AttributeTargets.Property)]
internal sealed class NamesAttribute(params EntryKind[] kinds) : Attribute
{
    public EntryKind[] Kinds { get; } = kinds;
}

/// <summary>A list of at most so many items.</summary>
[AttributeUsage(AttributeTargets.Property)]
internal sealed class AtMostAttribute(int count) : Attribute
{
    public int Count { get; } = count;
}

/// <summary>Whole numbers from one value to another.</summary>
[AttributeUsage(AttributeTargets.Property)]
internal sealed class WholeAttribute(int from, int to) : Attribute
{
    public int From { get; } = from;
    public int To { get; } = to;
}
