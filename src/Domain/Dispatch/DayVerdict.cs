using Litterfall.Domain.Figures;
using Litterfall.Domain.Lists;

namespace Litterfall.Domain.Dispatch;

/// <summary>What may be done with a parcel on a day; the later, the stricter.</summary>
public enum ShipVerdict
{
    /// <summary>It may go as it is.</summary>
    Ship,

    /// <summary>It may go with the named packs.</summary>
    ShipWithPacks,

    /// <summary>It may go where the customer picks it up at the depot.</summary>
    DepotOnly,

    /// <summary>Not on this day.</summary>
    Hold,

    /// <summary>Not at all while this holds: it would kill, or it is forbidden.</summary>
    Never,
}

/// <summary>Whose rule says something.</summary>
public enum ShipRule
{
    /// <summary>The published guide for amphibians.</summary>
    PublishedGuide,

    /// <summary>Bands by class of animal, made from measured limits.</summary>
    ClassBands,

    /// <summary>The shop's own policy.</summary>
    ShopPolicy,

    /// <summary>The parcel computed over many journeys.</summary>
    Journey,

    /// <summary>Days on which nothing leaves or arrives.</summary>
    Calendar,

    /// <summary>Terms of the carrier.</summary>
    Carrier,

    /// <summary>Health, quarantine and papers of the animals.</summary>
    Animals,

    /// <summary>What is not known: a forecast, a band, a length.</summary>
    Knowledge,

    /// <summary>Carton, packs, cups.</summary>
    Packing,
}

/// <summary>One reason of a verdict: who says what, why, and what cures it.</summary>
public sealed record ShipReason
{
    /// <summary>Its stable name.</summary>
    public required string Slug { get; init; }

    /// <summary>Whose rule.</summary>
    public required ShipRule Rule { get; init; }

    /// <summary>What it allows.</summary>
    public required ShipVerdict Verdict { get; init; }

    /// <summary>In one plain sentence.</summary>
    public required string Text { get; init; }

    /// <summary>What would cure it; empty where nothing has to be.</summary>
    public string Cure { get; init; } = "";

    /// <summary>First day on which it is cured, where a day does that.</summary>
    public DateOnly? CureDay { get; init; }

    /// <summary>True where it protects an animal or a person: nobody can pass over it.</summary>
    public bool IsProtective { get; init; }

    /// <summary>Place of the route it speaks of; null for the whole.</summary>
    public RouteNode? Node { get; init; }

    /// <summary>What was found, °C or the unit of the text; null where nothing is measured.</summary>
    public double? Measured { get; init; }

    /// <summary>What the rule allows, in the same unit; null where it is no limit.</summary>
    public double? Limit { get; init; }

    /// <summary>Key of the source.</summary>
    public string Source { get; init; } = "";

    /// <summary>Place in the source.</summary>
    public string SourcePlace { get; init; } = "";

    /// <summary>How far it can be trusted.</summary>
    public Provenance Provenance { get; init; } = Provenance.OwnChoice;
}

/// <summary>What one rule alone says; rules stand side by side, the strictest decides.</summary>
/// <param name="Rule">Whose rule.</param>
/// <param name="Verdict">What it says.</param>
/// <param name="Words">In a few words: "cold pack, depot pick-up only".</param>
public sealed record RuleVerdict(ShipRule Rule, ShipVerdict Verdict, string Words);

/// <summary>Inside of a parcel over its journeys at one hour.</summary>
/// <param name="Hour">Hours from hand-over.</param>
/// <param name="Low">5 % of the journeys are colder, °C.</param>
/// <param name="Middle">Half of the journeys are colder, °C.</param>
/// <param name="High">5 % of the journeys are warmer, °C.</param>
/// <param name="AmbientCelsius">Middle of the air outside, °C.</param>
/// <param name="OutShare">Share of the journeys that left the band by then, 0 to 1.</param>
public sealed record JourneyHour(
    double Hour,
    double Low,
    double Middle,
    double High,
    double AmbientCelsius,
    double OutShare
);

/// <summary>A way of packing, with what it does.</summary>
public sealed record PackChoice
{
    /// <summary>Key of the carton.</summary>
    public required string Carton { get; init; }

    /// <summary>Packs in it.</summary>
    public Seq<PackUse> Packs { get; init; } = [];

    /// <summary>Local hour of hand-over.</summary>
    public required double HandOverHour { get; init; }

    /// <summary>Share of the journeys on which it leaves the band, 0 to 1.</summary>
    public required double OutShare { get; init; }

    /// <summary>Share of the journeys on which it passes the absolute limit, 0 to 1.</summary>
    public double LethalShare { get; init; }

    /// <summary>Hour by hour.</summary>
    public Seq<JourneyHour> Hours { get; init; } = [];

    /// <summary>Journeys that were computed.</summary>
    public int Journeys { get; init; }

    /// <summary>Seed of the journeys.</summary>
    public int Seed { get; init; }
}

/// <summary>What may be done with a parcel on a day, and why.</summary>
public sealed record DayVerdict
{
    /// <summary>The day it would leave.</summary>
    public required DateOnly Day { get; init; }

    /// <summary>Day it would arrive; null where it cannot leave.</summary>
    public DateOnly? Arrives { get; init; }

    /// <summary>The strictest of all rules.</summary>
    public required ShipVerdict Verdict { get; init; }

    /// <summary>Each rule alone.</summary>
    public Seq<RuleVerdict> Rules { get; init; } = [];

    /// <summary>Reasons, the strictest first.</summary>
    public Seq<ShipReason> Reasons { get; init; } = [];

    /// <summary>The way of packing that works best; null where none was looked for.</summary>
    public PackChoice? Choice { get; init; }

    /// <summary>Coldest forecast by place of the route, °C.</summary>
    public Seq<NodeRange> Nodes { get; init; } = [];

    /// <summary>When the oldest forecast that it knew was taken, UTC; null where it knew none.</summary>
    public DateTime? ForecastTakenAt { get; init; }

    /// <summary>When it was made, UTC; null where nobody wrote it down.</summary>
    public DateTime? JudgedAt { get; init; }

    /// <summary>True where it may leave on this day, in the way that the verdict says.</summary>
    public bool MayShip => Verdict is ShipVerdict.Ship or ShipVerdict.ShipWithPacks or ShipVerdict.DepotOnly;
}

/// <summary>Forecast of a place while the parcel is there.</summary>
/// <param name="Node">Which place.</param>
/// <param name="Place">Its name.</param>
/// <param name="LowCelsius">Coldest, °C.</param>
/// <param name="HighCelsius">Warmest, °C.</param>
public sealed record NodeRange(RouteNode Node, string Place, double LowCelsius, double HighCelsius);

/// <summary>A parcel over the days of a week.</summary>
public sealed record WeekVerdict
{
    /// <summary>Key of the strictest of what lives in it; null where one has no band.</summary>
    public string? Strictest { get; init; }

    /// <summary>Letter of its class of temperature; empty where it has none.</summary>
    public string Class { get; init; } = "";

    /// <summary>Band to keep inside the parcel, °C.</summary>
    public double? BandLowCelsius { get; init; }

    /// <summary>Band to keep inside the parcel, °C.</summary>
    public double? BandHighCelsius { get; init; }

    /// <summary>The days, in their order.</summary>
    public Seq<DayVerdict> Days { get; init; } = [];

    /// <summary>First day on which it may go; null where none of the days will do.</summary>
    public DateOnly? NextDay { get; init; }

    /// <summary>
    /// First day that only something holds which the workshop itself has to do, such as papers to look at;
    /// null where one works anyhow, or none would.
    /// </summary>
    public DateOnly? NextDayOnceDone { get; init; }

    /// <summary>First day on which it needs neither pack nor depot; null for none.</summary>
    public DateOnly? NextPlainDay { get; init; }
}
