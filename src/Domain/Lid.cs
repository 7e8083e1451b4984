using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Keys;
using Litterfall.Domain.Units;

namespace Litterfall.Domain;

/// <summary>Lid of the top opening.</summary>
[Means("The lid: a pane, or a mesh lid with the share left open.")]
public sealed record Lid
{
    /// <summary>"glass", a sheet or a mesh.</summary>
    [Means("glass, another sheet, or a mesh."), Names(EntryKind.Sheet, EntryKind.Mesh)]
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

    /// <summary>What a pane lies on.</summary>
    [Means(
        "What a pane lies on; all-edges if left out, back-hangs beside a strip. sides and front-and-back are "
            + "two edges, corners are clips."
    )]
    public PaneHold? Held { get; init; }

    /// <summary>A bar under the lid.</summary>
    [Means("true when a bar holds the lid under its middle.")]
    public bool Braced { get; init; }

    /// <summary>What carries its edges.</summary>
    [Means(
        "What carries its edges: ledges glued to the walls, clips over the walls, or the rim; rim beside "
            + "overlap or a rim of the box, ledges if left out."
    )]
    public LidRest? Rests { get; init; }

    /// <summary>Panes side by side.</summary>
    [Means("How many panes lie side by side along the front, on a bar at each joint."), Whole(1, 6)]
    public int Panes { get; init; } = 1;

    /// <summary>Depth of a front part that folds up.</summary>
    [Means("Depth, front to back, of a front part that folds up on hinges.")]
    public Typed<Length>? Hinged { get; init; }

    /// <summary>Width of the frame of a mesh lid.</summary>
    [Means("Width of the frame around a mesh lid; 20 mm if left out.")]
    public Typed<Length>? Frame { get; init; }
}

/// <summary>What carries the edges of a lid.</summary>
public enum LidRest
{
    /// <summary>Strips glued to the walls inside.</summary>
    Ledges,

    /// <summary>Clips that hang over the walls.</summary>
    Clips,

    /// <summary>The upper edges of the walls, or the rim of the box.</summary>
    Rim,
}

/// <summary>What a level pane lies on.</summary>
public enum PaneHold
{
    /// <summary>All four edges lie on a rim or ledge.</summary>
    AllEdges,

    /// <summary>Sides and front edge lie on something; the back edge hangs over a loose strip.</summary>
    BackHangs,

    /// <summary>Only the left and the right edge lie on something.</summary>
    Sides,

    /// <summary>Only the front and the back edge lie on something.</summary>
    FrontAndBack,

    /// <summary>Clips or tabs hold the four corners.</summary>
    Corners,
}
