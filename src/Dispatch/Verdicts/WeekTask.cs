using Litterfall.Dispatch.Regions;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Lists;
using Litterfall.Domain.Schedule;

namespace Litterfall.Dispatch.Verdicts;

/// <summary>How many of a carton or a pack are in stock.</summary>
/// <param name="Key">Key of the carton or pack.</param>
/// <param name="Count">How many; those that nobody counts are left out.</param>
public sealed record StockCount(string Key, int Count);

/// <summary>What is known of the animals behind a content of a parcel.</summary>
/// <param name="Key">Key of the species.</param>
/// <param name="From">Number of its tank or lot; empty for all of the species.</param>
public sealed record AnimalFact(string Key, string From)
{
    /// <summary>First day on which its quarantine is over; null where it is in none.</summary>
    public DateOnly? QuarantineEnds { get; init; }

    /// <summary>Day of the last unexplained death among its tank-mates; null for none.</summary>
    public DateOnly? UnexplainedDeath { get; init; }
}

/// <summary>A parcel to be judged over some days, with all that it is judged by.</summary>
public sealed record WeekTask
{
    /// <summary>The parcel.</summary>
    public required Parcel Parcel { get; init; }

    /// <summary>The library with the workshop's own entries.</summary>
    public required TradeCatalog Catalog { get; init; }

    /// <summary>The shop's rules, with cartons, packs, cups, carriers and regions.</summary>
    public required DispatchRules Rules { get; init; }

    /// <summary>The workshop's days.</summary>
    public ShopCalendar Calendar { get; init; } = new();

    /// <summary>Forecasts, the newest of each place counts.</summary>
    public Seq<PlaceForecast> Forecasts { get; init; } = [];

    /// <summary>Stock of cartons and packs.</summary>
    public Seq<StockCount> Stock { get; init; } = [];

    /// <summary>What is known of the animals.</summary>
    public Seq<AnimalFact> Facts { get; init; } = [];

    /// <summary>Time at which it is judged, UTC.</summary>
    public required DateTime Now { get; init; }

    /// <summary>First day that is judged.</summary>
    public required DateOnly From { get; init; }

    /// <summary>Days that are judged.</summary>
    public int Days { get; init; } = 7;

    /// <summary>How many of a carton or pack there are.</summary>
    /// <param name="key">Its key.</param>
    /// <param name="most">What counts as enough where nobody counts them.</param>
    internal int InStock(string key, int most) =>
        Stock.FirstOrDefault(s => s.Key == key) is { } counted ? Math.Clamp(counted.Count, 0, most) : most;

    /// <summary>Terms of its carrier; null where they are not entered.</summary>
    internal CarrierTerms? Carrier => Rules.Carriers.FirstOrDefault(c => c.Key == Parcel.Carrier);

    /// <summary>A region; null where it is not entered.</summary>
    /// <param name="key">Its key.</param>
    internal DeliveryRegion? Region(string key) => Rules.Regions.FirstOrDefault(r => r.Key == key);

    /// <summary>Rest days of a region over the days that may count.</summary>
    /// <param name="region">The region.</param>
    internal RestDays Rests(DeliveryRegion region) =>
        new(
            region,
            ShipDays.RestsFrom(Calendar),
            (From.Year, From.AddDays(Days + (2 * ShipDays.LookAhead)).Year)
        );
}
