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
