using Litterfall.Domain.Keys;
using Litterfall.Domain.Units;

namespace Litterfall.Domain;

/// <summary>The headspace held constant.</summary>
[Means("Replaces the climate model by constants.")]
public sealed record Headspace
{
    /// <summary>The constants.</summary>
    [Means("The constants.")]
    public required HeldAir Hold { get; init; }
}

/// <summary>Constant air in the box.</summary>
[Means("Constant air in the box.")]
public sealed record HeldAir
{
    /// <summary>Temperature.</summary>
    [Means("Temperature of the air.")]
    public required Typed<Temperature> Air { get; init; }

    /// <summary>Humidity.</summary>
    [Means("Relative humidity.")]
    public required Typed<Share> Humidity { get; init; }

    /// <summary>Air changes.</summary>
    [Means("How often the air is replaced per hour.")]
    public required Typed<AirChangeRate> AirChanges { get; init; }
}
