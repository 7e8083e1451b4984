using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Keys;
using Litterfall.Domain.Units;

namespace Litterfall.Domain;

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
    [Means("Mesh over the opening, or none."), Names(EntryKind.Mesh)]
    public string? Mesh { get; init; }

    /// <summary>Side.</summary>
    [Means("The side it is in.")]
    public Side? Side { get; init; }

    /// <summary>Diameter of a round opening.</summary>
    [Means("Diameter of a round opening, instead of length and width.")]
    public Typed<Length>? Diameter { get; init; }

    /// <summary>Place of its middle along its side.</summary>
    [Means(
        "Where its middle is along its side: from the left end of front, back and lid, from the front end of "
            + "the sides; placed by the program if left out."
    )]
    public Typed<Length>? Along { get; init; }

    /// <summary>Place of its middle behind the front, in a lid.</summary>
    [Means("How far its middle is behind the front pane, for a vent in the lid; at the back if left out.")]
    public Typed<Length>? Behind { get; init; }

    /// <summary>How it is made.</summary>
    [Means(
        "strip: the pane is made shorter and a strip carries the mesh; cutout: cut into the pane. A strip in "
            + "glass, a cutout in plastic and for round ones if left out."
    )]
    public VentMake? Make { get; init; }
}

/// <summary>How an opening for air is made in its pane.</summary>
public enum VentMake
{
    /// <summary>The pane ends before it; a strip or fillers fill the rest of its band.</summary>
    Strip,

    /// <summary>Cut or drilled into the pane.</summary>
    Cutout,
}
