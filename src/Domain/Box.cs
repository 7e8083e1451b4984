using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Keys;
using Litterfall.Domain.Lists;
using Litterfall.Domain.Units;

namespace Litterfall.Domain;

/// <summary>The box.</summary>
[Means("The box: outside size with glass thickness, or inside size.")]
public sealed record Box
{
    /// <summary>Outside edges.</summary>
    [Means("Outside edges; needs glass.")]
    public Edges? Outside { get; init; }

    /// <summary>Inside edges.</summary>
    [Means("Inside edges.")]
    public Edges? Inside { get; init; }

    /// <summary>Glass.</summary>
    [Means("Thickness of the panes.")]
    public Glass? Glass { get; init; }

    /// <summary>Sheet material of the panes.</summary>
    [Means("Material of the panes; float-glass if left out."), Names(EntryKind.Sheet)]
    public string? Material { get; init; }

    /// <summary>Top or front.</summary>
    [Means("Where the box opens.")]
    public Opening Opening { get; init; } = Opening.Top;

    /// <summary>Height of the front sill over the inside floor.</summary>
    [Means("Height of the front sill above the base inside; layers must stay below it.")]
    public Typed<Length>? Sill { get; init; }

    /// <summary>How far a rim narrows the opening on each side.</summary>
    [Means("How far a rim narrows the top opening on each side.")]
    public Typed<Length>? Rim { get; init; }

    /// <summary>Free or held upper edges.</summary>
    [Means("free for a rimless box, held under a rim, bar or glued top.")]
    public TopEdge? TopEdge { get; init; }

    /// <summary>Whether the panes are cut for this build.</summary>
    [Means("cut when the panes of the box are ordered for this build; bought if left out.")]
    public PaneSource Panes { get; init; } = PaneSource.Bought;

    /// <summary>Doors.</summary>
    [Means("The doors of a front opening.")]
    public Doors? Doors { get; init; }

    /// <summary>Locked or screwed shut.</summary>
    [Means("true when lid and doors are locked or screwed shut.")]
    public bool Locked { get; init; }
}

/// <summary>Where the box opens.</summary>
public enum Opening
{
    /// <summary>Open on top, under a lid.</summary>
    Top,

    /// <summary>Doors in front, above a sill.</summary>
    Front,
}

/// <summary>A side of the box, seen from the front.</summary>
public enum Side
{
    /// <summary>Front.</summary>
    Front,

    /// <summary>Back.</summary>
    Back,

    /// <summary>Left.</summary>
    Left,

    /// <summary>Right.</summary>
    Right,

    /// <summary>Top.</summary>
    Top,
}

/// <summary>How the upper edges of the walls are held.</summary>
public enum TopEdge
{
    /// <summary>Rimless: the upper edges stand free.</summary>
    Free,

    /// <summary>Held by a rim, a glued bar or a glued top.</summary>
    Held,
}

/// <summary>Where the panes of the box come from.</summary>
public enum PaneSource
{
    /// <summary>The box is bought ready.</summary>
    Bought,

    /// <summary>Its panes are ordered from the glass shop.</summary>
    Cut,
}

/// <summary>Three edges, each measured up to three times; the smallest counts.</summary>
[Means(
    "Length along the front, depth front to back, height; each up to three measurements, the smallest counts."
)]
public sealed record Edges
{
    /// <summary>Along the front.</summary>
    [Means("Along the front."), AtMost(3)]
    public required Seq<Typed<Length>> Length { get; init; }

    /// <summary>Front to back.</summary>
    [Means("From front to back."), AtMost(3)]
    public required Seq<Typed<Length>> Depth { get; init; }

    /// <summary>Bottom to top.</summary>
    [Means("From bottom to top."), AtMost(3)]
    public required Seq<Typed<Length>> Height { get; init; }
}

/// <summary>Pane thicknesses.</summary>
[Means("Thickness of the panes.")]
public sealed record Glass
{
    /// <summary>Walls.</summary>
    [Means("Thickness of the four walls.")]
    public required Typed<Length> Walls { get; init; }

    /// <summary>Base.</summary>
    [Means("Thickness of the base; that of the walls if left out.")]
    public Typed<Length>? Base { get; init; }
}
