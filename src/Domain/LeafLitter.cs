using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Keys;
using Litterfall.Domain.Units;

namespace Litterfall.Domain;

/// <summary>Loose leaves on top.</summary>
[Means("Loose leaves on top.")]
public sealed record LeafLitter
{
    /// <summary>Material.</summary>
    [Means("Leaves."), Names(EntryKind.Litter)]
    public required string Material { get; init; }

    /// <summary>Loose depth.</summary>
    [Means("Loose depth.")]
    public required Typed<Length> Depth { get; init; }

    /// <summary>Covered share of the floor.</summary>
    [Means("Share of the floor they cover; all of it if left out.")]
    public Typed<Share>? Cover { get; init; }

    /// <summary>Preparation.</summary>
    [Means("How the leaves were cleaned; the build sheet gives the step if left out.")]
    public Preparation? Prepared { get; init; }

    /// <summary>Loss.</summary>
    [Means("Share lost in handling; nothing if left out.")]
    public Typed<Share>? Loss { get; init; }
}

/// <summary>How wood, stone or leaves were cleaned.</summary>
public enum Preparation
{
    /// <summary>Not at all.</summary>
    Raw,

    /// <summary>Soaked or scrubbed only.</summary>
    Soaked,

    /// <summary>Boiled, or scalded.</summary>
    Boiled,

    /// <summary>Baked through.</summary>
    Baked,

    /// <summary>Steamed.</summary>
    Steamed,
}
