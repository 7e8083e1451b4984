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

    /// <summary>Temperature the thermostat holds.</summary>
    [Means("Temperature of the floor that the thermostat holds; 24 C if left out.")]
    public Typed<Temperature>? Target { get; init; }
}

/// <summary>What a fan does.</summary>
public enum FanUse
{
    /// <summary>Moves the air inside.</summary>
    Stir,

    /// <summary>Blows through a vent.</summary>
    Vent,
}

/// <summary>A small fan.</summary>
[Means("A small fan, inside or at a vent; behind mesh, out of reach of animals.")]
public sealed record Fan
{
    /// <summary>Free flow.</summary>
    [Means("Free flow by its label, such as 6 m3/h; through mesh four tenths are counted.")]
    public required Typed<Flow> Flow { get; init; }

    /// <summary>What it does.</summary>
    [Means("Stirs the air inside, or blows through a vent.")]
    public FanUse Use { get; init; } = FanUse.Stir;

    /// <summary>Time it goes on.</summary>
    [Means("Time it goes on, as \"09:00\"; all day if left out.")]
    public TimeOnly? On { get; init; }

    /// <summary>Time it goes off.</summary>
    [Means("Time it goes off, as \"09:20\".")]
    public TimeOnly? Off { get; init; }
}

/// <summary>An ultrasonic fogger.</summary>
[Means("An ultrasonic fogger; its fog is breathed, so pure water and a clean pot.")]
public sealed record Fogger
{
    /// <summary>Water it throws.</summary>
    [Means("Water it throws, measured over an hour, such as 100 mL/h.")]
    public required Typed<Flow> Rate { get; init; }

    /// <summary>Times.</summary>
    [Means("When it fogs, and for how long.")]
    public Seq<MistTime> Times { get; init; } = [];
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
