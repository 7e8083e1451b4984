using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Lists;

namespace Litterfall.Dispatch.Evidence;

/// <summary>All that a verdict rested on when a parcel was cleared.</summary>
public sealed record ClearedFacts
{
    /// <summary>The parcel.</summary>
    public required Parcel Parcel { get; init; }

    /// <summary>The verdicts of the days that were looked at.</summary>
    public required WeekVerdict Week { get; init; }

    /// <summary>The verdict of the day it leaves.</summary>
    public required DayVerdict Day { get; init; }

    /// <summary>The forecasts, hour by hour.</summary>
    public required Seq<PlaceForecast> Forecasts { get; init; }

    /// <summary>How it is packed.</summary>
    public required PackingPlan Plan { get; init; }

    /// <summary>The carrier's terms.</summary>
    public required CarrierTerms Carrier { get; init; }

    /// <summary>The shop's rules.</summary>
    public required DispatchRules Rules { get; init; }

    /// <summary>Papers of the animals.</summary>
    public Seq<AnimalPaper> Papers { get; init; } = [];

    /// <summary>Version of the program.</summary>
    public required string Program { get; init; }
}
