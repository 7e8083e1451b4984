using Litterfall.Domain.Keys;
using Litterfall.Domain.Units;

namespace Litterfall.Domain;

/// <summary>A hole for a cable, a hose or a tube.</summary>
[Means("A hole for a cable, a hose or a tube.")]
public sealed record Passage
{
    /// <summary>What goes through.</summary>
    [Means("What goes through, such as mist hose, lamp cable or dip tube.")]
    public required string For { get; init; }

    /// <summary>Width of the hole.</summary>
    [Means("Width of the hole.")]
    public required Typed<Length> Hole { get; init; }

    /// <summary>Thickness of what goes through.</summary>
    [Means("Thickness of what goes through it.")]
    public required Typed<Length> Through { get; init; }

    /// <summary>Sealed.</summary>
    [Means("true when the gap is closed by a grommet, sponge or silicone.")]
    public bool Sealed { get; init; }

    /// <summary>The part it is in.</summary>
    [Means("Where it is: lid, wall or barrier.")]
    public PassagePart In { get; init; } = PassagePart.Lid;

    /// <summary>Wall it is in.</summary>
    [Means("The wall it is in, beside in: wall; back if left out.")]
    public Side? Side { get; init; }

    /// <summary>Place of its middle along its wall.</summary>
    [Means("Where its middle is along its wall or the lid, from the left or front end.")]
    public Typed<Length>? Along { get; init; }

    /// <summary>Height of its middle, in a wall.</summary>
    [Means("Height of its middle above the base inside, in a wall.")]
    public Typed<Length>? Height { get; init; }
}

/// <summary>The part a passage is in.</summary>
public enum PassagePart
{
    /// <summary>Lid or strip.</summary>
    Lid,

    /// <summary>A wall.</summary>
    Wall,

    /// <summary>The barrier mesh.</summary>
    Barrier,
}
