using Litterfall.Domain.Lists;

namespace Litterfall.Domain.Dispatch;

/// <summary>A band of the shop; it only counts where it is stricter than the published ones.</summary>
/// <param name="Class">Letter of the class of temperature.</param>
/// <param name="HoldBelowCelsius">Held below, °C.</param>
/// <param name="HoldAboveCelsius">Held above, °C.</param>
public sealed record OwnBand(string Class, double HoldBelowCelsius, double HoldAboveCelsius);

/// <summary>
/// The shop's own rules of dispatch; all can be edited, none can loosen a limit that protects.
/// </summary>
public sealed record DispatchRules
{
    /// <summary>Key under which the one record is kept.</summary>
    public const string Key = "dispatch";

    /// <summary>Key of the region of the workshop.</summary>
    public string HomeRegion { get; init; } = "home";

    /// <summary>Name of the place of the workshop.</summary>
    public string HomePlace { get; init; } = "workshop";

    /// <summary>Share of the journeys that may leave the band, percent.</summary>
    public double RiskPercent { get; init; } = 2;

    /// <summary>Journeys that are computed.</summary>
    public int Journeys { get; init; } = 500;

    /// <summary>Seed of the journeys.</summary>
    public int Seed { get; init; } = 1;

    /// <summary>Standard error of a forecast for the first day, K.</summary>
    public double ForecastErrorKelvin { get; init; } = 1.5;

    /// <summary>What each further day adds, K.</summary>
    public double ForecastErrorPerDayKelvin { get; init; } = 0.4;

    /// <summary>How much warmer than the shade a van is by day, K.</summary>
    public double VanSunKelvin { get; init; } = 5;

    /// <summary>Longest time at the door before somebody takes it in, h.</summary>
    public double DoorstepHours { get; init; } = 4;

    /// <summary>How much warmer than the shade a doorstep is by day, K.</summary>
    public double DoorstepSunKelvin { get; init; } = 4;

    /// <summary>Own bands.</summary>
    public Seq<OwnBand> Bands { get; init; } = [];

    /// <summary>Hours after delivery within which a photo must come for a claim.</summary>
    public int ClaimHours { get; init; } = 24;

    /// <summary>Days within which a claim is answered.</summary>
    public int AnswerDays { get; init; } = 3;

    /// <summary>Days that the terms of a carrier count as read.</summary>
    public int CarrierRulesDays { get; init; } = 180;

    /// <summary>Hours that animals are fasted before they are packed.</summary>
    public int FastHours { get; init; } = 24;

    /// <summary>Telephone on the label for an emergency; empty for the workshop's.</summary>
    public string EmergencyPhone { get; init; } = "";

    /// <summary>Terms of claims, one sentence each.</summary>
    public Seq<string> ClaimTerms { get; init; } =
    [
        "The first delivery attempt is met by an adult.",
        "Photos of each animal in its closed cup, and of the label, come within the named hours.",
        "An animal that arrived dead is replaced or paid back; shipping is not.",
    ];

    /// <summary>Cartons.</summary>
    public Seq<Carton> Cartons { get; init; } = [];

    /// <summary>Packs.</summary>
    public Seq<TransportPack> Packs { get; init; } = [];

    /// <summary>Cups.</summary>
    public Seq<TransportCup> Cups { get; init; } = [];

    /// <summary>Carriers.</summary>
    public Seq<CarrierTerms> Carriers { get; init; } = [];

    /// <summary>Regions.</summary>
    public Seq<DeliveryRegion> Regions { get; init; } = [];
}
