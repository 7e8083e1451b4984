using System.Collections.Immutable;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Tanks;
using Litterfall.Running.Service;
using Litterfall.Store;
using Litterfall.Web.Library;
using Litterfall.Web.Shop.Stock;

namespace Litterfall.Web.Tanks;

/// <summary>The tanks that run, their rooms and their logs.</summary>
/// <param name="Stock">Stock, orders and customers.</param>
/// <param name="Tanks">All tanks, those that were given up too.</param>
/// <param name="Rooms">Rooms by name.</param>
/// <param name="Catalog">The library.</param>
/// <param name="Today">Today.</param>
public sealed record TankView(
    StockView Stock,
    IReadOnlyList<Kept<Tank>> Tanks,
    IReadOnlyList<Kept<TankRoom>> Rooms,
    TradeCatalog Catalog,
    DateOnly Today
)
{
    /// <summary>Lines that count, by the tank's number, in the order of time.</summary>
    public required ILookup<string, CareEntry> Care { get; init; }

    /// <summary>Rooms without their versions.</summary>
    public ImmutableArray<TankRoom> Places => [.. Rooms.Select(r => r.Value)];

    /// <summary>Running tanks in walking order.</summary>
    public ImmutableArray<Tank> Running => TankOrder.Walk(Tanks.Select(t => t.Value), Places);

    /// <summary>A tank by its number or label; null where there is none.</summary>
    /// <param name="code">As it was typed or scanned.</param>
    public Kept<Tank>? Find(string code) =>
        TankOrder.Find(Tanks.Select(t => t.Value), code) is { } found
            ? Tanks.First(t => ReferenceEquals(t.Value, found))
            : null;

    /// <summary>Room of a tank; null where it stands in none.</summary>
    /// <param name="tank">The tank.</param>
    public TankRoom? RoomOf(Tank tank) => Places.FirstOrDefault(r => r.Key == tank.Place.Room);

    /// <summary>Where a tank stands, in words.</summary>
    /// <param name="tank">The tank.</param>
    public string PlaceOf(Tank tank)
    {
        var place = TankOrder.Tell(tank.Place, RoomOf(tank));
        var customer = Stock.Customers.GetValueOrDefault(tank.Customer)?.Name ?? tank.Customer;
        return place.Length > 0 ? place
            : customer.Length > 0 ? $"at {customer}"
            : "no place entered";
    }

    /// <summary>Name of a species.</summary>
    /// <param name="key">Its key.</param>
    public string NameOf(string key) =>
        Catalog.Find(key) is { } entry ? EntryWords.Common(entry) : key.Replace('-', ' ');
}
