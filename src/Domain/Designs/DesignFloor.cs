using Litterfall.Domain.Quantities;

namespace Litterfall.Domain.Designs;

/// <summary>The floor.</summary>
[Means("The layers of the floor from the base up.")]
public sealed record Floor
{
    /// <summary>Drainage layer or raised floor.</summary>
    [Means("Drainage layer, raised floor, or none.")]
    public DrainageLayer? Drainage { get; init; }

    /// <summary>Barrier mesh.</summary>
    [Means("Mesh between drainage and soil, or none.")]
    public Barrier? Barrier { get; init; }

    /// <summary>Soil.</summary>
    [Means("The soil mix.")]
    public SoilLayer? Soil { get; init; }

    /// <summary>Moss.</summary>
    [Means("Moss on the soil, or none.")]
    public MossLayer? Moss { get; init; }

    /// <summary>Leaf litter.</summary>
    [Means("Leaf litter on top, or none.")]
    public LeafLitter? Litter { get; init; }
}

/// <summary>A drainage layer, or a grid that carries the floor over open water.</summary>
[Means("A drainage layer (material and depth), or a raised floor (raised, with an optional grid).")]
public sealed record DrainageLayer
{
    /// <summary>Aggregate.</summary>
    [Means("Drainage aggregate."), Names("aggregate")]
    public string? Material { get; init; }

    /// <summary>Depth.</summary>
    [Means("Depth of the layer.")]
    public Typed<Length>? Depth { get; init; }

    /// <summary>Height of a raised floor.</summary>
    [Means("Height of a raised floor over the base.")]
    public Typed<Length>? Raised { get; init; }

    /// <summary>Grid of a raised floor.</summary>
    [Means("Grid of a raised floor."), Names("grid")]
    public string? Grid { get; init; }

    /// <summary>Loss.</summary>
    [Means("Share lost in handling; nothing if left out.")]
    public Typed<Share>? Loss { get; init; }
}

/// <summary>Mesh between drainage and soil.</summary>
[Means("Mesh between drainage and soil.")]
public sealed record Barrier
{
    /// <summary>Mesh.</summary>
    [Means("Mesh material."), Names("mesh")]
    public required string Material { get; init; }

    /// <summary>Upturn on all edges.</summary>
    [Means("Upturn on all four edges; 0 for a flat piece.")]
    public Typed<Length>? Upturn { get; init; }

    /// <summary>A cut piece already there.</summary>
    [Means("A cut piece already on hand.")]
    public Piece? OnHand { get; init; }
}

/// <summary>A rectangular piece.</summary>
[Means("A rectangular piece.")]
public sealed record Piece
{
    /// <summary>Along the front.</summary>
    [Means("Along the front."), AtMost(3)]
    public required Seq<Typed<Length>> Length { get; init; }

    /// <summary>Front to back.</summary>
    [Means("From front to back."), AtMost(3)]
    public required Seq<Typed<Length>> Depth { get; init; }
}

/// <summary>The soil: level (depth), wedge (front and back) or stepped (zones).</summary>
[Means("The soil: depth for a level layer, front and back for a wedge, zones for steps.")]
public sealed record SoilLayer
{
    /// <summary>Recipe or single material.</summary>
    [Means("Recipe of the mix, or a single soil material."), Names("recipe", "soil")]
    public required string Recipe { get; init; }

    /// <summary>Level depth.</summary>
    [Means("Finished, settled depth of a level layer.")]
    public Typed<Length>? Depth { get; init; }

    /// <summary>Depth at the front.</summary>
    [Means("Depth at the front of a wedge.")]
    public Typed<Length>? Front { get; init; }

    /// <summary>Depth at the back.</summary>
    [Means("Depth at the back of a wedge.")]
    public Typed<Length>? Back { get; init; }

    /// <summary>Steps from left to right.</summary>
    [Means("Steps from left to right, each over its share of the length.")]
    public Seq<SoilZone> Zones { get; init; } = [];

    /// <summary>A retainer holds the slope.</summary>
    [Means("true when a retainer of wood, stone or grid holds a steep slope.")]
    public bool Retainer { get; init; }

    /// <summary>Settling.</summary>
    [Means("Share of depth lost as the fresh mix settles; the recipe's if left out.")]
    public Typed<Share>? Settling { get; init; }

    /// <summary>Mixing yield.</summary>
    [Means("Mixed liters per liter of loose parts, from a bucket test; the recipe's if left out.")]
    public Typed<Share>? MixingYield { get; init; }

    /// <summary>Squeeze wetness.</summary>
    [Means("Water by volume of the finished mix at squeeze wetness; the recipe's if left out.")]
    public Typed<Share>? Squeeze { get; init; }

    /// <summary>Loss.</summary>
    [Means("Share lost in handling; nothing if left out.")]
    public Typed<Share>? Loss { get; init; }
}

/// <summary>One step of a stepped soil.</summary>
[Means("One step of a stepped soil.")]
public sealed record SoilZone
{
    /// <summary>Share of the length.</summary>
    [Means("Share of the inside length.")]
    public required Typed<Share> Share { get; init; }

    /// <summary>Level depth.</summary>
    [Means("Depth of a level step.")]
    public Typed<Length>? Depth { get; init; }

    /// <summary>Front depth.</summary>
    [Means("Depth at the front of a wedge step.")]
    public Typed<Length>? Front { get; init; }

    /// <summary>Back depth.</summary>
    [Means("Depth at the back of a wedge step.")]
    public Typed<Length>? Back { get; init; }
}

/// <summary>Moss on the soil.</summary>
[Means("Moss on the soil.")]
public sealed record MossLayer
{
    /// <summary>Material.</summary>
    [Means("Moss."), Names("moss")]
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

/// <summary>Loose leaves on top.</summary>
[Means("Loose leaves on top.")]
public sealed record LeafLitter
{
    /// <summary>Material.</summary>
    [Means("Leaves."), Names("litter")]
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

/// <summary>What a piece of hardscape stands on.</summary>
public enum Seat
{
    /// <summary>Pressed into the soil.</summary>
    Soil,

    /// <summary>Standing on the base glass, through all layers.</summary>
    Base,
}

/// <summary>A piece of wood, cork or stone.</summary>
[Means("A piece of wood, cork or stone.")]
public sealed record HardscapePiece
{
    /// <summary>Material.</summary>
    [Means("Wood, cork or stone."), Names("hardscape")]
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

/// <summary>The floor of a box that already runs.</summary>
[Means("The floor of a box that already runs: drained, over a level of water.")]
public sealed record Running
{
    /// <summary>Level.</summary>
    [Means("Water level above the base inside, as the dip tube shows it.")]
    public required Typed<Length> Level { get; init; }
}
