using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Keys;

namespace Litterfall.Domain;

/// <summary>A crew animal.</summary>
[Means("A crew animal to seed.")]
public sealed record Inhabitant
{
    /// <summary>Catalog crew.</summary>
    [Key("animal"), Means("Crew animal."), Names(EntryKind.Crew)]
    public required string Kind { get; init; }

    /// <summary>Count.</summary>
    [Means("How many per box."), Whole(0, 1_000_000)]
    public required int Count { get; init; }
}
