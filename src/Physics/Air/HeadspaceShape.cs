using System.Collections.Immutable;

namespace Litterfall.Physics.Air;

/// <summary>How a film of water lies on a surface.</summary>
/// <param name="WetKilograms">A film of this mass leaves 1/e of the surface dry, kg.</param>
/// <param name="DripAboveKilograms">What a film holds before it runs off, kg.</param>
/// <param name="DripSeconds">Time in which the excess runs off, s.</param>
/// <param name="DripsTo">Place of the surface it runs to.</param>
public sealed record FilmRule(
    double WetKilograms,
    double DripAboveKilograms,
    double DripSeconds,
    int DripsTo
);

/// <summary>
/// A surface of the headspace with what lies behind it: a pane, the ground, the leaves. It exchanges heat
/// with the air and with the radiant node, and water with the air.
/// </summary>
public sealed record HeadspaceSurface
{
    /// <summary>Name, for results.</summary>
    public required string Name { get; init; }

    /// <summary>Area that exchanges, m².</summary>
    public required double AreaSquareMeters { get; init; }

    /// <summary>Heat capacities from the inner face outward, J/K; one or more, each above 0.</summary>
    public required ImmutableArray<double> CapacityJoulesPerKelvin { get; init; }

    /// <summary>
    /// Conductances from each node outward, W/K: to the next, and of the last to the outside; 0 for none.
    /// </summary>
    public required ImmutableArray<double> OutwardWattsPerKelvin { get; init; }

    /// <summary>Conductance to the radiant node, W/K.</summary>
    public double RadiantWattsPerKelvin { get; init; }

    /// <summary>Film; null where water soaks in.</summary>
    public FilmRule? Film { get; init; }

    /// <summary>True where water comes from behind the surface: soil, leaves.</summary>
    public bool HasSupply { get; init; }

    /// <summary>Share of the mist that falls on it.</summary>
    public double MistShare { get; init; }

    /// <summary>Temperature outside over that of the room, K.</summary>
    public double OutsideOffsetKelvin { get; init; }
}

/// <summary>The parts of a headspace that do not change.</summary>
public sealed record HeadspaceShape
{
    /// <summary>Mass of dry air inside, kg; held constant.</summary>
    public required double DryAirKilograms { get; init; }

    /// <summary>Surfaces.</summary>
    public required ImmutableArray<HeadspaceSurface> Surfaces { get; init; }

    /// <summary>Pressure, Pa.</summary>
    public double Pascals { get; init; } = MoistAir.StandardPascals;

    /// <summary>
    /// Surface that takes water that condenses in the air; null where air may be oversaturated.
    /// </summary>
    public int? SettlesOn { get; init; }
}
