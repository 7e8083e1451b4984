using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Keys;
using Litterfall.Domain.Units;

namespace Litterfall.Domain;

/// <summary>A piece of wood, cork or stone.</summary>
[Means("A piece of wood, cork or stone.")]
public sealed record HardscapePiece
{
    /// <summary>Material.</summary>
    [Means("Wood, cork or stone."), Names(EntryKind.Hardscape)]
    public required string Material { get; init; }

    /// <summary>Mass.</summary>
    [Means("Its mass; or give the volume.")]
    public Typed<Mass>? Mass { get; init; }

    /// <summary>Outside volume.</summary>
    [Means("Its outside volume, from the mass if left out.")]
    public Typed<Volume>? Volume { get; init; }

    /// <summary>Share below the soil surface.</summary>
    [Means("Share of it that lies in the layers; a quarter if left out.")]
    public Typed<Share>? Buried { get; init; }

    /// <summary>Seat.</summary>
    [Means("base when it stands on the base glass, soil when it is pressed into the soil.")]
    public Seat? Seat { get; init; }

    /// <summary>Preparation.</summary>
    [Means("How it was cleaned; the build sheet gives the step if left out.")]
    public Preparation? Prepared { get; init; }

    /// <summary>Place of its foot.</summary>
    [Means("Where its middle stands, for the drawing.")]
    public Place? At { get; init; }

    /// <summary>Length.</summary>
    [Means("Its longest extent, for the drawing.")]
    public Typed<Length>? Length { get; init; }
}

/// <summary>What a piece of hardscape stands on.</summary>
public enum Seat
{
    /// <summary>Pressed into the soil.</summary>
    Soil,

    /// <summary>Standing on the base glass, through all layers.</summary>
    Base,
}
