using Litterfall.Domain.Quantities;

namespace Litterfall.Domain.Designs;

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
    [Means("Material of the panes; float-glass if left out."), Names("sheet")]
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
}

/// <summary>Where the panes of the box come from.</summary>
public enum PaneSource
{
    /// <summary>The box is bought ready.</summary>
    Bought,

    /// <summary>Its panes are ordered from the glass shop.</summary>
    Cut,
}

/// <summary>Doors of a front opening.</summary>
[Means("Doors of a front opening.")]
public sealed record Doors
{
    /// <summary>Number of panes.</summary>
    [Means("How many door panes."), Whole(1, 8)]
    public int Count { get; init; } = 2;

    /// <summary>Widest gap.</summary>
    [Means("Widest gap between the panes, or between pane and frame, when closed.")]
    public Typed<Length>? Gap { get; init; }
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

/// <summary>What covers walls on the inside.</summary>
[Means("Panels, tiles or carved foam on the walls.")]
public sealed record Background
{
    /// <summary>Material.</summary>
    [Means("Material of the background."), Names("background")]
    public required string Material { get; init; }

    /// <summary>Thickness.</summary>
    [Means("Mean thickness; it takes floor from the box.")]
    public required Typed<Length> Thickness { get; init; }

    /// <summary>Covered sides.</summary>
    [Means("Covered sides; the back if left out.")]
    public Seq<Side> Sides { get; init; } = [];

    /// <summary>Whether it stands on the base glass or on the floor layers.</summary>
    [Means("Lower edge above the base inside; 0 if left out.")]
    public Typed<Length>? From { get; init; }

    /// <summary>How foam is poured.</summary>
    [Means("How foam is poured, where it is poured here.")]
    public Pour? Poured { get; init; }
}

/// <summary>Pouring of foam.</summary>
[Means("Pouring of expanding foam.")]
public sealed record Pour
{
    /// <summary>Thickness of one pour.</summary>
    [Means("Thickness of one pour.")]
    public Typed<Length>? Lift { get; init; }

    /// <summary>Poured into a closed space.</summary>
    [Means("true when it is poured into a closed space, such as between trapped wood and a pane.")]
    public bool Enclosed { get; init; }
}

/// <summary>Lid of the top opening.</summary>
[Means("The lid: a pane, or a mesh lid with the share left open.")]
public sealed record Lid
{
    /// <summary>"glass", a sheet or a mesh.</summary>
    [Means("glass, another sheet, or a mesh."), Names("sheet", "mesh")]
    public required string Material { get; init; }

    /// <summary>Thickness of a pane.</summary>
    [Means("Thickness of a pane.")]
    public Typed<Length>? Thickness { get; init; }

    /// <summary>Clearance on each side of an inset pane.</summary>
    [Means("Clearance on each side of a pane set into the opening; 2 mm if left out.")]
    public Typed<Length>? Gap { get; init; }

    /// <summary>Overlap of a pane that lies on the rim.</summary>
    [Means("Overlap on each side of a pane that lies on the rim.")]
    public Typed<Length>? Overlap { get; init; }

    /// <summary>Share of a mesh lid left open.</summary>
    [Means("Share of the lid that is open mesh.")]
    public Typed<Share>? Share { get; init; }

    /// <summary>Width of a plastic strip for hoses and cables.</summary>
    [Means("Width of a lift-out strip at the back for hoses and cables.")]
    public Typed<Length>? Strip { get; init; }

    /// <summary>The strip is taped or latched.</summary>
    [Means("true when the strip is taped or latched.")]
    public bool Latched { get; init; }

    /// <summary>A bar under the lid.</summary>
    [Means("true when a bar holds the lid under its middle.")]
    public bool Braced { get; init; }
}

/// <summary>An opening for air.</summary>
[Means("An opening for air.")]
public sealed record Vent
{
    /// <summary>Area.</summary>
    [Means("Open area; or give length and width.")]
    public Typed<Area>? Area { get; init; }

    /// <summary>Length.</summary>
    [Means("Length of the opening.")]
    public Typed<Length>? Length { get; init; }

    /// <summary>Width.</summary>
    [Means("Width of the opening.")]
    public Typed<Length>? Width { get; init; }

    /// <summary>Height of its middle above the base inside.</summary>
    [Means("Height of its middle above the base inside.")]
    public Typed<Length>? Height { get; init; }

    /// <summary>Mesh.</summary>
    [Means("Mesh over the opening, or none."), Names("mesh")]
    public string? Mesh { get; init; }

    /// <summary>Side.</summary>
    [Means("The side it is in.")]
    public Side? Side { get; init; }
}

/// <summary>What the box stands on.</summary>
[Means("The shelf or stand.")]
public sealed record Shelf
{
    /// <summary>Rated load.</summary>
    [Means("Load the maker of the shelf allows for the boxes on it.")]
    public Typed<Mass>? Rated { get; init; }
}

/// <summary>Cleaning of plants and tools.</summary>
[Means("Cleaning of plants and tools.")]
public sealed record Hygiene
{
    /// <summary>Label strength of the bleach.</summary>
    [Means("Sodium hypochlorite on the label of the bleach, such as 6 %.")]
    public Typed<Share>? Bleach { get; init; }

    /// <summary>Volume of the bath.</summary>
    [Means("Volume of the bath; 10 L if left out.")]
    public Typed<Volume>? Bath { get; init; }
}
