using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Keys;
using Litterfall.Domain.Units;

namespace Litterfall.Domain;

/// <summary>A plant.</summary>
[Means("A plant.")]
public sealed record Planting
{
    /// <summary>Catalog plant.</summary>
    [Key("plant"), Means("Plant."), Names(EntryKind.Plant)]
    public required string Kind { get; init; }

    /// <summary>Count.</summary>
    [Means("How many."), Whole(1, 1000)]
    public int Count { get; init; } = 1;

    /// <summary>Place.</summary>
    [Means("Where it sits.")]
    public Place? At { get; init; }

    /// <summary>Mounted above the ground.</summary>
    [Means("true when it is mounted on wood or background, not planted in soil.")]
    public bool Mounted { get; init; }

    /// <summary>Which way its leaves face.</summary>
    [Means("Which way its leaves face; up, or away from the wall for a climber, if left out.")]
    public LeafFacing? Leaves { get; init; }

    /// <summary>Time in plant quarantine.</summary>
    [Means("How long it has been in plant quarantine before planting.")]
    public Typed<Duration>? Quarantined { get; init; }

    /// <summary>Proof of legal origin of a protected kind.</summary>
    [Means("held when the proof of legal origin of a protected kind is on file, missing when there is none.")]
    public PaperState? Papers { get; init; }
}

/// <summary>Which way leaves face.</summary>
public enum LeafFacing
{
    /// <summary>Up.</summary>
    Up,

    /// <summary>To the front, as on a back wall.</summary>
    Front,

    /// <summary>To the back.</summary>
    Back,

    /// <summary>To the left.</summary>
    Left,

    /// <summary>To the right.</summary>
    Right,

    /// <summary>All ways: the mean of six faces counts.</summary>
    All,
}

/// <summary>
/// A point in the box: x along the front from the left, y from front to back, z up from the base.
/// </summary>
[Means("A point inside: x along the front from the left, y from front to back, z up from the base.")]
public sealed record Place
{
    /// <summary>Along the front.</summary>
    [Means("Along the front from the left.")]
    public required Typed<Length> X { get; init; }

    /// <summary>Front to back.</summary>
    [Means("From front to back.")]
    public required Typed<Length> Y { get; init; }

    /// <summary>Up.</summary>
    [Means("Up from the base; the ground there if left out.")]
    public Typed<Length>? Z { get; init; }
}
