using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Keys;
using Litterfall.Domain.Units;

namespace Litterfall.Domain;

/// <summary>Moss on the soil.</summary>
[Means("Moss on the soil.")]
public sealed record MossLayer
{
    /// <summary>Material.</summary>
    [Means("Moss."), Names(EntryKind.Moss)]
    public required string Material { get; init; }

    /// <summary>Depth.</summary>
    [Means("Depth where it lies.")]
    public required Typed<Length> Depth { get; init; }

    /// <summary>Covered share of the floor.</summary>
    [Means("Share of the floor it covers; all of it if left out.")]
    public Typed<Share>? Cover { get; init; }

    /// <summary>Loss.</summary>
    [Means("Share lost in handling; nothing if left out.")]
    public Typed<Share>? Loss { get; init; }
}
