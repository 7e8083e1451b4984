using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Keys;
using Litterfall.Domain.Units;

namespace Litterfall.Domain;

/// <summary>A drainage layer, or a grid that carries the floor over open water.</summary>
[Means("A drainage layer (material and depth), or a raised floor (raised, with an optional grid).")]
public sealed record DrainageLayer
{
    /// <summary>Aggregate.</summary>
    [Means("Drainage aggregate."), Names(EntryKind.Aggregate)]
    public string? Material { get; init; }

    /// <summary>Depth.</summary>
    [Means("Depth of the layer.")]
    public Typed<Length>? Depth { get; init; }

    /// <summary>Height of a raised floor.</summary>
    [Means("Height of a raised floor over the base.")]
    public Typed<Length>? Raised { get; init; }

    /// <summary>Grid of a raised floor.</summary>
    [Means("Grid of a raised floor."), Names(EntryKind.Grid)]
    public string? Grid { get; init; }

    /// <summary>Loss.</summary>
    [Means("Share lost in handling; nothing if left out.")]
    public Typed<Share>? Loss { get; init; }
}

/// <summary>The floor of a box that already runs.</summary>
[Means("The floor of a box that already runs: drained, over a level of water.")]
public sealed record Running
{
    /// <summary>Level.</summary>
    [Means("Water level above the base inside, as the dip tube shows it.")]
    public required Typed<Length> Level { get; init; }
}
