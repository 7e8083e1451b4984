using System.Collections.Frozen;
using System.Collections.Immutable;
using Litterfall.Domain.Catalog.Entries;

namespace Litterfall.Domain.Catalog;

/// <summary>One value entries of a kind may have.</summary>
/// <param name="Name">Its name in files.</param>
/// <param name="IsText">True for a text; false for a number with its unit.</param>
/// <param name="Properties">The members of the entry's record that read it.</param>
public sealed record EntryMember(string Name, bool IsText, ImmutableArray<string> Properties);

/// <summary>
/// The values an entry of each kind may have. The records of the kinds are asked for each of their members
/// once, and name the value they look for: the list can not fall behind the members.
/// </summary>
public static class EntryMembers
{
    private static readonly FrozenDictionary<EntryKind, ImmutableArray<EntryMember>> Known =
        EntryKinds.All.ToFrozenDictionary(kind => kind, Listed);

    /// <summary>The values of a kind, in the order of their names.</summary>
    public static ImmutableArray<EntryMember> Of(EntryKind kind) => Known[kind];

    /// <summary>The value of this name, or null when entries of the kind have none.</summary>
    public static EntryMember? Find(EntryKind kind, string name) =>
        Known[kind].FirstOrDefault(member => member.Name == name);

    private static ImmutableArray<EntryMember> Listed(EntryKind kind)
    {
        var asked = new List<(string Name, bool IsText, string Property)>();
        var property = "";
        var blank = BlankEntries.Of(kind) with { Asked = (name, text) => asked.Add((name, text, property)) };
        foreach (var member in blank.GetType().GetProperties())
        {
            property = member.Name;
            member.GetValue(blank);
        }

        return
        [
            .. asked
                .GroupBy(one => one.Name, StringComparer.Ordinal)
                .OrderBy(group => group.Key, StringComparer.Ordinal)
                .Select(group => new EntryMember(
                    group.Key,
                    group.First().IsText,
                    [.. group.Select(one => one.Property)]
                )),
        ];
    }
}
