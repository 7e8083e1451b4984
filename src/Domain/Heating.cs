using Litterfall.Domain.Keys;
using Litterfall.Domain.Units;

namespace Litterfall.Domain;

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
