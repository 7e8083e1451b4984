using System.Globalization;
using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Web.Library;

namespace Litterfall.Web.Shipping;

/// <summary>Words of dispatch on screens.</summary>
public static class ShipWords
{
    private static readonly CultureInfo Invariant = CultureInfo.InvariantCulture;

    /// <summary>Classes of temperature with their words.</summary>
    public static IReadOnlyList<(string Letter, string Words)> Classes { get; } =
    [
        ("A", "frogs that bear least heat"),
        ("B", "most small frogs"),
        ("C", "frogs and geckos that bear more"),
        ("D", "temperate springtails and isopods"),
        ("E", "tropical springtails, isopods, millipedes"),
        ("F", "fruit-fly cups"),
        ("G", "plants and moss"),
    ];

    /// <summary>A verdict in a word or two.</summary>
    /// <param name="verdict">The verdict.</param>
    public static string Word(ShipVerdict verdict) =>
        verdict switch
        {
            ShipVerdict.Ship => "ship",
            ShipVerdict.ShipWithPacks => "ship with packs",
            ShipVerdict.DepotOnly => "depot pick-up",
            ShipVerdict.Hold => "hold",
            _ => "never",
        };

    /// <summary>The shape that goes with a verdict.</summary>
    /// <param name="verdict">The verdict.</param>
    public static Severity Shape(ShipVerdict verdict) =>
        verdict switch
        {
            ShipVerdict.Ship or ShipVerdict.ShipWithPacks => Severity.Note,
            ShipVerdict.DepotOnly => Severity.Caution,
            _ => Severity.Stop,
        };

    /// <summary>The name of its look.</summary>
    /// <param name="verdict">The verdict.</param>
    public static string Look(ShipVerdict verdict) =>
        verdict switch
        {
            ShipVerdict.Ship => "go",
            ShipVerdict.ShipWithPacks => "packs",
            ShipVerdict.DepotOnly => "depot",
            ShipVerdict.Hold => "hold",
            _ => "never",
        };

    /// <summary>Whose rule.</summary>
    /// <param name="rule">The rule.</param>
    public static string Name(ShipRule rule) =>
        rule switch
        {
            ShipRule.PublishedGuide => "Published guide for amphibians",
            ShipRule.ClassBands => "Bands by class of animal",
            ShipRule.ShopPolicy => "Our own rules",
            ShipRule.Journey => "Computed journeys",
            ShipRule.Calendar => "Calendar",
            ShipRule.Carrier => "Carrier",
            ShipRule.Animals => "Animals",
            ShipRule.Knowledge => "What is not known",
            _ => "Packing",
        };

    /// <summary>How far a parcel is.</summary>
    /// <param name="state">The state.</param>
    public static string Name(ParcelState state) =>
        state switch
        {
            ParcelState.Planned => "planned",
            ParcelState.Cleared => "cleared",
            ParcelState.HandedOver => "on its way",
            ParcelState.Arrived => "arrived",
            _ => "dropped",
        };

    /// <summary>Place of a route.</summary>
    /// <param name="node">The place.</param>
    public static string Name(RouteNode node) =>
        node switch
        {
            RouteNode.Origin => "Workshop",
            RouteNode.Hub => "Hub",
            _ => "Destination",
        };

    /// <summary>What a link of the evidence is.</summary>
    /// <param name="kind">Its kind.</param>
    public static string Name(EvidenceKind kind) =>
        kind switch
        {
            EvidenceKind.Cleared => "Cleared to go",
            EvidenceKind.Photo => "Photo",
            EvidenceKind.HandedOver => "Handed over",
            EvidenceKind.Logger => "Logger file",
            EvidenceKind.Arrived => "Arrived",
            EvidenceKind.Claim => "Claim",
            EvidenceKind.Note => "Remark",
            _ => "Dropped",
        };

    /// <summary>What came of a claim.</summary>
    /// <param name="outcome">What came of it.</param>
    public static string Name(ClaimOutcome outcome) =>
        outcome switch
        {
            ClaimOutcome.Open => "not decided yet",
            ClaimOutcome.Replaced => "replaced",
            ClaimOutcome.PaidBack => "paid back",
            _ => "refused",
        };

    /// <summary>A temperature in the reader's unit: "27 °C".</summary>
    /// <param name="units">The reader's units.</param>
    /// <param name="celsius">The temperature, °C.</param>
    public static string Degrees(UnitPreferences units, double celsius)
    {
        var unit = units.For(Unit.Celsius);
        return string.Create(
            Invariant,
            $"{unit.FromSi(Unit.Celsius.ToSiValue(celsius)):0.#}{UnitPreferences.Symbol(unit)}"
        );
    }

    /// <summary>A span of temperatures in the reader's unit: "16–24 °C".</summary>
    /// <param name="units">The reader's units.</param>
    /// <param name="low">Low end, °C.</param>
    /// <param name="high">High end, °C.</param>
    public static string Span(UnitPreferences units, double low, double high)
    {
        var unit = units.For(Unit.Celsius);
        var (from, to) = (Said(low), Said(high));
        // A dash beside a minus does not read.
        var joint = from < 0 || to < 0 ? " to " : "–";
        return string.Create(Invariant, $"{from:0.#}{joint}{to:0.#}{UnitPreferences.Symbol(unit)}");

        double Said(double celsius) => unit.FromSi(Unit.Celsius.ToSiValue(celsius));
    }

    /// <summary>Odds as people say them: "none of 500 journeys", "12 of 500 journeys".</summary>
    /// <param name="share">Share of the journeys, 0 to 1.</param>
    /// <param name="journeys">Journeys that were computed.</param>
    public static string Odds(double share, int journeys) =>
        share <= 0
            ? string.Create(Invariant, $"none of {journeys} journeys")
            : string.Create(Invariant, $"{Math.Round(share * journeys):0} of {journeys} journeys");

    /// <summary>"2 animals", "1 animal".</summary>
    /// <param name="count">How many.</param>
    /// <param name="one">Word for one.</param>
    /// <param name="many">Word for more.</param>
    public static string Count(int count, string one, string many) =>
        string.Create(Invariant, $"{count} {(count == 1 ? one : many)}");

    /// <summary>A day without its year: "Tue 1 Dec".</summary>
    /// <param name="day">The day.</param>
    public static string Day(DateOnly day) => day.ToString("ddd d MMM", Invariant);
}
