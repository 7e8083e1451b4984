using System.Collections.Immutable;
using System.Globalization;

namespace Litterfall.Domain.Trees;

/// <summary>Values that may be left out or be null, and pairs of whole numbers.</summary>
public sealed partial class TreeForm
{
    /// <summary>True when a key is there and holds something.</summary>
    public bool Holds(string key) =>
        branch.Find(key) is not null and not TreeScalar { Form: ScalarForm.Null };

    /// <summary>Where the value of a key stands, or the object when the key is not there.</summary>
    public TextSpan PlaceOf(string key) => branch.Find(key)?.Span ?? branch.Span;

    /// <summary>Takes keys as known without reading them.</summary>
    public void Ignore(params ReadOnlySpan<string> keys) => asked.AddRange(keys);

    /// <summary>
    /// A single value of any form as written; null where it is left out or no single value.
    /// </summary>
    public TreeScalar? Scalar(string key) => Optional(key) as TreeScalar;

    /// <summary>An object that may be left out or null.</summary>
    public TreeForm? ObjectOrNull(string key, string what)
    {
        Ignore(key);
        return Holds(key) ? OptionalObject(key, what) : null;
    }

    /// <summary>A list of objects that may be left out, null or empty.</summary>
    public ImmutableArray<TreeForm> ObjectsOrNull(string key, string what, int most)
    {
        Ignore(key);
        return Holds(key) ? OptionalObjects(key, what, most) : [];
    }

    /// <summary>A whole number that may be left out or null; null on a fault.</summary>
    public int? OptionalWhole(string key, int lowest, int highest)
    {
        Ignore(key);
        return Holds(key) ? Whole(key, lowest, highest) : null;
    }

    /// <summary>One of some words, or the first of them when it is left out or null.</summary>
    public string OptionalChoice(string key, params ReadOnlySpan<string> words)
    {
        Ignore(key);
        return Holds(key) ? Choice(key, words) ?? words[0] : words[0];
    }

    /// <summary>True or false, with a value for when it is left out or null.</summary>
    public bool FlagOrNull(string key, bool fallback)
    {
        Ignore(key);
        return Holds(key) ? Flag(key, fallback) : fallback;
    }

    /// <summary>A list of pairs of whole numbers from 0 on that must be there and hold some.</summary>
    public ImmutableArray<(int First, int Second)> WholePairs(string key, string pair, int highest, int most)
    {
        string expected = string.Create(
            CultureInfo.InvariantCulture,
            $"a list of 1 to {most} pairs {pair}, whole numbers from 0 to {highest}"
        );
        if (Required(key, expected) is not { } node)
        {
            return [];
        }

        if (node is not TreeList { Items.Count: > 0 } list || list.Items.Count > most)
        {
            faults.Add(node.Span, $"{Path(key)} is {Counted(node)}", expected);
            return [];
        }

        var pairs = ImmutableArray.CreateBuilder<(int, int)>(list.Items.Count);
        for (var i = 0; i < list.Items.Count; i++)
        {
            if (
                list.Items[i] is TreeList { Items: [TreeScalar first, TreeScalar second] }
                && IsWhole(first, highest)
                && IsWhole(second, highest)
            )
            {
                pairs.Add(((int)first.Number, (int)second.Number));
            }
            else
            {
                faults.Add(list.Items[i].Span, $"{Item(key, i)} is {Counted(list.Items[i])}", expected);
            }
        }

        return pairs.ToImmutable();
    }

    private static bool IsWhole(TreeScalar scalar, int highest) =>
        scalar is { Form: ScalarForm.Number, Number: var value }
        && value >= 0.0
        && value <= highest
        && value == Math.Floor(value);
}
