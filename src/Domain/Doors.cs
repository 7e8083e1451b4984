using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Keys;
using Litterfall.Domain.Units;

namespace Litterfall.Domain;

/// <summary>Doors of a front opening.</summary>
[Means("Doors of a front opening; with their kind they are cut, weighed and checked as they are held.")]
public sealed record Doors
{
    /// <summary>Number of panes.</summary>
    [Means("How many door panes; 2 if left out, 1 for a lift-out front."), Whole(1, 8)]
    public int? Count { get; init; }

    /// <summary>Widest gap.</summary>
    [Means("Widest gap between the panes, or between pane and frame, when closed.")]
    public Typed<Length>? Gap { get; init; }

    /// <summary>How they open, and what holds them.</summary>
    [Means(
        "sliding in a track below and above, hinged at one side, or lift-out: one pane held below and at "
            + "both sides."
    )]
    public DoorKind? Kind { get; init; }

    /// <summary>Sheet of the panes.</summary>
    [Means("Material of the door panes; that of the walls if left out."), Names(EntryKind.Sheet)]
    public string? Material { get; init; }

    /// <summary>Thickness of the panes.</summary>
    [Means("Thickness of the door panes; that of the walls if left out.")]
    public Typed<Length>? Thickness { get; init; }

    /// <summary>Height of the opening they close.</summary>
    [Means("Height of the opening the doors close; inside height less the sill if left out.")]
    public Typed<Length>? Height { get; init; }

    /// <summary>Overlap of sliding panes.</summary>
    [Means("How far sliding panes overlap; 25 mm if left out.")]
    public Typed<Length>? Overlap { get; init; }

    /// <summary>What tracks and play take from the height.</summary>
    [Means(
        "How much lower a sliding pane is than its opening: floors of both tracks and play; 5 mm if left out."
    )]
    public Typed<Length>? Play { get; init; }

    /// <summary>Mass its track or hinges bear.</summary>
    [Means("Mass of one pane that the maker of track or hinges allows.")]
    public Typed<Mass>? Rated { get; init; }

    /// <summary>What closes the gap between the panes.</summary>
    [Means("What closes the gap between the panes, and between pane and frame: none, brush, lip or tape.")]
    public DoorSeal Seal { get; init; } = DoorSeal.None;
}

/// <summary>What closes the gaps of doors.</summary>
public enum DoorSeal
{
    /// <summary>Nothing.</summary>
    None,

    /// <summary>A brush strip.</summary>
    Brush,

    /// <summary>A clear lip of soft plastic.</summary>
    Lip,

    /// <summary>Tape or a foam strip.</summary>
    Tape,
}

/// <summary>How doors open.</summary>
public enum DoorKind
{
    /// <summary>In tracks below and above.</summary>
    Sliding,

    /// <summary>On hinges at one side; closed, the other side rests on catches.</summary>
    Hinged,

    /// <summary>One pane in channels below and at both sides, lifted out.</summary>
    LiftOut,
}
