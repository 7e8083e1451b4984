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
