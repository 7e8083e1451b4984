using Litterfall.Domain.Quantities;

namespace Litterfall.Domain.Designs;

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

/// <summary>A heat mat or cable.</summary>
[Means("A heat mat or cable under the floor.")]
public sealed record Heating
{
    /// <summary>Power.</summary>
    [Means("Electrical power in watts.")]
    public required Typed<Power> Watts { get; init; }

    /// <summary>Covered share of the floor.</summary>
    [Means("Share of the floor it lies under; half if left out.")]
    public Typed<Share>? Cover { get; init; }

    /// <summary>Thermostat.</summary>
    [Means("true when a thermostat switches it.")]
    public bool Thermostat { get; init; }
}

/// <summary>Electrical protection.</summary>
[Means("How the electrical parts are protected.")]
public sealed record Electrics
{
    /// <summary>Trip current of the residual-current device.</summary>
    [Means("Trip current of the residual-current (ground-fault) device, such as 30 mA.")]
    public Typed<ElectricCurrent>? Trip { get; init; }

    /// <summary>Drip loops.</summary>
    [Means("true when every cable hangs in a drip loop below its socket.")]
    public bool DripLoops { get; init; }
}
