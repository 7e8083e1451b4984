using System.Collections.Immutable;

namespace Litterfall.Domain.Catalog.Entries;

/// <summary>What an entry of the library is, in the order of the words.</summary>
public enum EntryKind
{
    /// <summary>Silicone, glue or foam.</summary>
    Adhesive,

    /// <summary>Grains of a drainage layer.</summary>
    Aggregate,

    /// <summary>An animal the box is built for.</summary>
    Animal,

    /// <summary>Cork, foam or fiber at the walls.</summary>
    Background,

    /// <summary>An animal of the clean-up crew.</summary>
    Crew,

    /// <summary>A pump, tube, plug, clip or cup: what is bought beside panes, packs and plants.</summary>
    Equipment,

    /// <summary>An insect raised or bought as food.</summary>
    Feeder,

    /// <summary>The grid of a raised floor.</summary>
    Grid,

    /// <summary>Wood, cork or stone.</summary>
    Hardscape,

    /// <summary>A lamp.</summary>
    Lamp,

    /// <summary>Leaves on the soil.</summary>
    Litter,

    /// <summary>A mesh.</summary>
    Mesh,

    /// <summary>Moss of the ground.</summary>
    Moss,

    /// <summary>A pack as it is sold.</summary>
    Pack,

    /// <summary>A plant.</summary>
    Plant,

    /// <summary>A mix.</summary>
    Recipe,

    /// <summary>Glass or another sheet.</summary>
    Sheet,

    /// <summary>A soil material.</summary>
    Soil,
}

/// <summary>The words of files and screens for the kinds of entries.</summary>
public static class EntryKinds
{
    /// <summary>All kinds.</summary>
    public static ImmutableArray<EntryKind> All { get; } = [.. Enum.GetValues<EntryKind>()];

    private static readonly ImmutableArray<string> Words =
    [
        .. All.Select(kind => kind.ToString().ToLowerInvariant()),
    ];

    /// <summary>The word of a kind, such as "aggregate".</summary>
    public static string Word(this EntryKind kind) => Words[(int)kind];

    /// <summary>The kind a word names, or null.</summary>
    public static EntryKind? Find(string word) => Words.IndexOf(word) is var at and >= 0 ? All[at] : null;
}
