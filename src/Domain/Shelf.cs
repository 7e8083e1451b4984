using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Keys;
using Litterfall.Domain.Units;

namespace Litterfall.Domain;

/// <summary>What the box stands on.</summary>
[Means("The shelf or stand.")]
public sealed record Shelf
{
    /// <summary>Rated load.</summary>
    [Means("Load the maker of the shelf allows for the boxes on it.")]
    public Typed<Mass>? Rated { get; init; }
}

/// <summary>A level pane inside the box that carries plants, wood or stone.</summary>
[Means("A shelf inside the box, level, that carries plants, wood or stone.")]
public sealed record InsideShelf
{
    /// <summary>Along the front.</summary>
    [Means("Along the front; from side to side of the box if left out.")]
    public Typed<Length>? Length { get; init; }

    /// <summary>Front to back.</summary>
    [Means("From front to back.")]
    public required Typed<Length> Depth { get; init; }

    /// <summary>Thickness.</summary>
    [Means("Its thickness.")]
    public required Typed<Length> Thickness { get; init; }

    /// <summary>Sheet.</summary>
    [Means("Its material; that of the walls if left out."), Names(EntryKind.Sheet)]
    public string? Material { get; init; }

    /// <summary>What carries it.</summary>
    [Means(
        "What carries it: ends (left and right), three-edges (ends and back) or corners (clips); ends if "
            + "left out."
    )]
    public ShelfHold Held { get; init; } = ShelfHold.Ends;

    /// <summary>What stands on it.</summary>
    [Means(
        "What stands on it in all, wet; not added to the weight of the box, whose parts are entered apart."
    )]
    public required Typed<Mass> Load { get; init; }

    /// <summary>Its place.</summary>
    [Means("Where the middle of its upper face is inside, for paper and drawing; z is its height.")]
    public Place? At { get; init; }
}

/// <summary>What a shelf inside the box lies on.</summary>
public enum ShelfHold
{
    /// <summary>Its left and right end.</summary>
    Ends,

    /// <summary>Its ends and its back edge; the front edge hangs.</summary>
    ThreeEdges,

    /// <summary>Clips or brackets at its four corners.</summary>
    Corners,
}
