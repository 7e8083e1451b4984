using Litterfall.Domain.Figures;

namespace Litterfall.Dispatch.Bands;

/// <summary>What the published guide asks for at a forecast; the later, the stricter.</summary>
public enum GuideNeed
{
    /// <summary>Nothing.</summary>
    NoPack,

    /// <summary>A pack that warms.</summary>
    HeatPack,

    /// <summary>A pack that cools.</summary>
    ColdPack,

    /// <summary>Only where it is picked up at the depot.</summary>
    DepotOnly,

    /// <summary>It does not go.</summary>
    DoNotShip,
}

/// <summary>
/// A guide for amphibians from a keeper magazine: what a parcel needs by the outdoor forecast at origin, hub
/// and destination. It is printed in whole °F, so its figures in °C leave gaps of a degree Fahrenheit between
/// bands, and its last two bands overlap. A gap belongs to the band that asks for more; where two bands
/// overlap, the stricter one counts.
/// </summary>
public static class AmphibianGuide
{
    /// <summary>Not shipped below, °C (38 °F).</summary>
    public const double NotBelow = 3.3;

    /// <summary>Heat pack below, °C: printed up to 15, none from 15.6 on; between them a pack.</summary>
    public const double HeatPackBelow = 15.6;

    /// <summary>Cold pack above, °C: printed none up to 26, from 26.7 on; between them a pack.</summary>
    public const double ColdPackAbove = 26;

    /// <summary>Depot pick-up only from here on, °C; the cold pack ends and the depot begins here.</summary>
    public const double DepotFrom = 33;

    /// <summary>Not shipped above, °C (95 °F); the depot band goes on to 38, the stricter counts.</summary>
    public const double NotAbove = 35;

    /// <summary>Where it stands.</summary>
    public static Citation Origin { get; } =
        new(
            "amphibian-shipping-guide",
            "bands of the outdoor forecast at origin, hub and destination",
            Provenance.Read
        );

    /// <summary>What it asks for at a temperature.</summary>
    /// <param name="celsius">Forecast, °C.</param>
    public static GuideNeed Need(double celsius) =>
        celsius switch
        {
            < NotBelow or > NotAbove => GuideNeed.DoNotShip,
            >= DepotFrom => GuideNeed.DepotOnly,
            > ColdPackAbove => GuideNeed.ColdPack,
            < HeatPackBelow => GuideNeed.HeatPack,
            _ => GuideNeed.NoPack,
        };
}
