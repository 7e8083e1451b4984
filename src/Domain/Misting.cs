using Litterfall.Domain.Keys;
using Litterfall.Domain.Lists;
using Litterfall.Domain.Units;

namespace Litterfall.Domain;

/// <summary>Misting.</summary>
[Means("The misting system.")]
public sealed record Misting
{
    /// <summary>Nozzles.</summary>
    [Means("Number of nozzles."), Whole(1, 100)]
    public required int Nozzles { get; init; }

    /// <summary>Flow of each.</summary>
    [Means("Flow of each nozzle, measured in a cup.")]
    public required Typed<Flow> Each { get; init; }

    /// <summary>Times.</summary>
    [Means("When it mists, and for how long."), AtMost(PlausibleCounts.Mistings)]
    public Seq<MistTime> Times { get; init; } = [];

    /// <summary>Hose.</summary>
    [Means("The hose from the pump to the nozzles; left out, it counts as full.")]
    public MistHose? Hose { get; init; }
}

/// <summary>The hose of a misting system: what it takes to fill never leaves the nozzles.</summary>
[Means("The hose from the pump to the nozzles.")]
public sealed record MistHose
{
    /// <summary>Length.</summary>
    [Means("Length of all hose from the pump to the last nozzle.")]
    public required Typed<Length> Length { get; init; }

    /// <summary>Inner diameter.</summary>
    [Means("Inner diameter.")]
    public required Typed<Length> Bore { get; init; }

    /// <summary>Flow into the empty hose.</summary>
    [Means("Flow of the pump into the empty hose; that of all nozzles together if left out.")]
    public Typed<Flow>? Fill { get; init; }

    /// <summary>Check valve.</summary>
    [Means("true when a check valve or anti-drip nozzles keep it full between mistings.")]
    public bool CheckValve { get; init; }
}

/// <summary>One misting.</summary>
[Means("One misting.")]
public sealed record MistTime
{
    /// <summary>Time of day.</summary>
    [Means("Time of day, as \"07:30\".")]
    public required TimeOnly At { get; init; }

    /// <summary>Duration.</summary>
    [Means("How long.")]
    public required Typed<Duration> For { get; init; }
}

/// <summary>Water a keeper mists with.</summary>
public enum MistWater
{
    /// <summary>Reverse osmosis or distilled.</summary>
    Purified,

    /// <summary>Rain water.</summary>
    Rain,

    /// <summary>Tap water.</summary>
    Tap,
}
