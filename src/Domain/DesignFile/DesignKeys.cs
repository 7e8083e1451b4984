using System.Collections;
using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Units;

namespace Litterfall.Domain.DesignFile;

/// <summary>How the value of a key is written.</summary>
public enum KeyForm
{
    /// <summary>A quantity with its unit.</summary>
    Quantity,

    /// <summary>A whole number.</summary>
    Whole,

    /// <summary>Text.</summary>
    Text,

    /// <summary>A day.</summary>
    Day,

    /// <summary>A time of day.</summary>
    Time,

    /// <summary>Yes or no.</summary>
    Flag,

    /// <summary>One of several words.</summary>
    Choice,

    /// <summary>An entry of the catalog.</summary>
    Entry,

    /// <summary>Keys below it.</summary>
    Record,
}

/// <summary>A key of the design file, as the reader takes it.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Form">How its value, or each value of its list, is written.</param>
/// <param name="Record">The record below it; null where it has none.</param>
public sealed record DesignKey(string Name, KeyForm Form, Type? Record)
{
    /// <summary>The record it is a key of.</summary>
    public required Type Owner { get; init; }

    /// <summary>True where the record does not read without it.</summary>
    public required bool IsRequired { get; init; }

    /// <summary>Most values it takes; 1 where it is no list.</summary>
    public required int Most { get; init; }

    /// <summary>True where it takes several values.</summary>
    public bool IsList => Most > 1;

    /// <summary>Words it takes; empty where it is no choice.</summary>
    public ImmutableArray<string> Words { get; init; } = [];

    /// <summary>Kinds of catalog entries it takes; empty where it names none.</summary>
    public ImmutableArray<EntryKind> Kinds { get; init; } = [];

    /// <summary>What kind of quantity it is; null where it is none.</summary>
    public QuantityKind? Quantity { get; init; }
}

/// <summary>
/// Every key of the design file, from the same shapes that reader, writer and schema use: who shows the keys
/// to people cannot miss one.
/// </summary>
public static class DesignKeys
{
    private static readonly ConcurrentDictionary<Type, ImmutableArray<DesignKey>> Known = new();

    /// <summary>Keys of a record of the design, in their order.</summary>
    /// <param name="record">Such as the type of <see cref="Design"/> or <see cref="Lid"/>.</param>
    public static ImmutableArray<DesignKey> Of(Type record) => Known.GetOrAdd(record, Read);

    /// <summary>
    /// The value at a path as the file would write it, also one that is not written and stands by itself;
    /// null
    /// where there is none.
    /// </summary>
    /// <param name="design">The design.</param>
    /// <param name="path">Its path, such as "box.opening" or "vents[0].side".</param>
    public static string? ValueAt(Design design, string path)
    {
        object? at = design;
        foreach (var step in path.Split('.'))
        {
            var open = step.IndexOf('[', StringComparison.Ordinal);
            var name = open < 0 ? step : step[..open];
            at = at is null ? null : FileShape.Of(at.GetType()).Find(name)?.Get(at);
            if (open > 0)
            {
                at =
                    int.TryParse(
                        step.AsSpan(open + 1).TrimEnd(']'),
                        NumberStyles.None,
                        CultureInfo.InvariantCulture,
                        out var i
                    ) && at is IEnumerable items
                        ? items.Cast<object>().ElementAtOrDefault(i)
                        : null;
            }
        }

        return at switch
        {
            null => null,
            string text => text,
            IEnumerable => null,
            _ => FileTypes.IsRecord(at.GetType()) ? null : FileTypes.Write(at),
        };
    }

    private static ImmutableArray<DesignKey> Read(Type record) =>
        [.. FileShape.Of(record).Members.Select(m => Key(record, m))];

    private static DesignKey Key(Type owner, FileMember member)
    {
        var type = member.IsList ? member.Type.GenericTypeArguments[0] : member.Type;
        var kind = FileTypes.KindOf(type);
        var form =
            FileTypes.IsRecord(type) ? KeyForm.Record
            : kind is not null ? KeyForm.Quantity
            : type.IsEnum ? KeyForm.Choice
            : type == typeof(bool) ? KeyForm.Flag
            : type == typeof(int) ? KeyForm.Whole
            : type == typeof(DateOnly) ? KeyForm.Day
            : type == typeof(TimeOnly) ? KeyForm.Time
            : member.Kinds.Length > 0 ? KeyForm.Entry
            : KeyForm.Text;
        return new(member.Key, form, form == KeyForm.Record ? type : null)
        {
            Owner = owner,
            IsRequired = member.IsRequired,
            Most = member.IsList ? member.MostItems : 1,
            Words = type.IsEnum ? [.. FileMember.EnumValues(type).Select(FileMember.EnumWord)] : [],
            Kinds = [.. member.Kinds],
            Quantity = kind,
        };
    }
}
