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
