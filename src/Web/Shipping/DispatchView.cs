using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Schedule;
using Litterfall.Store;
using Litterfall.Web.Library;
using Litterfall.Web.Shop.Stock;

namespace Litterfall.Web.Shipping;

/// <summary>What is known of dispatch at this bench.</summary>
/// <param name="Stock">Stock, orders and customers.</param>
/// <param name="Rules">The shop's own rules.</param>
/// <param name="Calendar">Days on which the workshop works and ships.</param>
/// <param name="Parcels">All parcels, the last first.</param>
/// <param name="Forecasts">Forecasts by place.</param>
/// <param name="Catalog">The library.</param>
public sealed record DispatchView(
    StockView Stock,
    DispatchRules Rules,
    ShopCalendar Calendar,
    IReadOnlyList<Kept<Parcel>> Parcels,
    IReadOnlyList<Kept<PlaceForecast>> Forecasts,
    TradeCatalog Catalog
)
{
    /// <summary>Today at the bench.</summary>
    public required DateOnly Today { get; init; }

    /// <summary>Now, UTC.</summary>
    public required DateTime Now { get; init; }

    /// <summary>Rises with every change that a verdict depends on.</summary>
    public required string Mark { get; init; }

    /// <summary>Region of the workshop; null where its key is not in the list.</summary>
    public DeliveryRegion? Home => Rules.Regions.FirstOrDefault(r => r.Key == Rules.HomeRegion);

    /// <summary>Parcels that have not left yet.</summary>
    public IEnumerable<Kept<Parcel>> Waiting =>
        Parcels.Where(p => p.Value.State is ParcelState.Planned or ParcelState.Cleared);

    /// <summary>Parcels that are on their way.</summary>
    public IEnumerable<Kept<Parcel>> Gone => Parcels.Where(p => p.Value.State == ParcelState.HandedOver);

    /// <summary>Parcels that arrived.</summary>
    public IEnumerable<Kept<Parcel>> Arrived => Parcels.Where(p => p.Value.State == ParcelState.Arrived);

    /// <summary>A parcel by its number; null where there is none.</summary>
    /// <param name="number">Its number.</param>
    public Kept<Parcel>? Find(int number) => Parcels.FirstOrDefault(p => p.Value.Number == number);

    /// <summary>The terms of a parcel's carrier; null where they are gone.</summary>
    /// <param name="parcel">The parcel.</param>
    public CarrierTerms? CarrierOf(Parcel parcel) =>
        Rules.Carriers.FirstOrDefault(c => c.Key == parcel.Carrier);

    /// <summary>The region of a parcel; null where it is gone.</summary>
    /// <param name="parcel">The parcel.</param>
    public DeliveryRegion? RegionOf(Parcel parcel) =>
        Rules.Regions.FirstOrDefault(r => r.Key == parcel.Region);

    /// <summary>The forecast of a place of the route; null where nobody took one.</summary>
    /// <param name="node">Which place of the route.</param>
    /// <param name="place">Name of the place.</param>
    public PlaceForecast? ForecastOf(RouteNode node, string place) =>
        Forecasts.FirstOrDefault(f => f.Key == DispatchDesk.KeyOf(node, place))?.Value;

    /// <summary>Places of waiting parcels without a forecast, in sentences.</summary>
    public ImmutableArray<string> MissingPlaces =>
        [
            .. Waiting
                .SelectMany(p => PlacesOf(p.Value))
                .Distinct()
                .Where(p => ForecastOf(p.Node, p.Place) is null)
                .Select(p =>
                    p.Place.Length == 0
                        ? $"A parcel names no place for its {ShipWords.Name(p.Node).ToLowerInvariant()}."
                        : $"There is no forecast for {p.Place} ({ShipWords.Name(p.Node).ToLowerInvariant()})."
                ),
        ];

    /// <summary>The places of a parcel's route.</summary>
    /// <param name="parcel">The parcel.</param>
    public IEnumerable<(RouteNode Node, string Place)> PlacesOf(Parcel parcel) =>
        [
            (RouteNode.Origin, Rules.HomePlace),
            (RouteNode.Hub, parcel.HubPlace),
            (RouteNode.Destination, parcel.DestinationPlace),
        ];

    /// <summary>Name of something alive, common name first.</summary>
    /// <param name="key">Its key.</param>
    public string NameOf(string key) =>
        Catalog.Find(key) is { } entry ? EntryWords.Common(entry) : key.Replace('-', ' ');

    /// <summary>What lives in a parcel, in a line.</summary>
    /// <param name="parcel">The parcel.</param>
    public string LivesIn(Parcel parcel) => string.Join(", ", parcel.Contents.Select(Told));

    /// <summary>"2 × green and black poison frog", "8 cups of white springtail".</summary>
    private string Told(LiveContent content)
    {
        var name = NameOf(content.Key).Split(" (")[0];
        return Catalog.Find(content.Key) is CrewEntry or FeederEntry
            ? $"{ShipWords.Count(content.Count, "cup", "cups")} of "
                + $"{char.ToLowerInvariant(name[0])}{name[1..]}"
            : string.Create(CultureInfo.InvariantCulture, $"{content.Count} × {name}");
    }
}
