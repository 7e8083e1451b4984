using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Keys;
using Litterfall.Domain.Lists;
using Litterfall.Domain.Units;

namespace Litterfall.Domain;

/// <summary>The soil: level (depth), wedge (front and back) or stepped (zones).</summary>
[Means("The soil: depth for a level layer, front and back for a wedge, zones for steps.")]
public sealed record SoilLayer
{
    /// <summary>Recipe or single material.</summary>
    [Means("Recipe of the mix, or a single soil material."), Names(EntryKind.Recipe, EntryKind.Soil)]
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
    [Means("Steps from left to right, each over its share of the length."), AtMost(PlausibleCounts.Steps)]
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
