using System.Globalization;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Trade;
using Litterfall.Workshop.Orders;

namespace Litterfall.Workshop.Quoting;

/// <summary>
/// What goods cost the workshop: the cheapest offer for one unit among those that fit, the used share of a
/// pack at the price of the pack. A good without a price is named, never counted as 0.
/// </summary>
public sealed class PriceBook
{
    private const double ThicknessMillimeters = 0.11;

    private readonly Dictionary<string, Good> goods;
    private readonly ILookup<string, Offer> byGood;
    private readonly ILookup<string, Offer> byPack;
    private readonly Dictionary<string, Supplier> suppliers;
    private readonly TradeCatalog catalog;
    private readonly string currency;

    /// <summary>Reads the shop's own prices.</summary>
    /// <param name="supply">Goods, offers and suppliers.</param>
    /// <param name="catalog">The library: sizes of its packs.</param>
    /// <param name="currency">Currency of the workshop; offers in another are not taken.</param>
    public PriceBook(ShopSupply supply, TradeCatalog catalog, string currency)
    {
        goods = supply.Goods.ToDictionary(g => g.Key, StringComparer.Ordinal);
        byGood = supply.Offers.ToLookup(o => o.Good, StringComparer.Ordinal);
        byPack = supply
            .Offers.Where(o => o.LibraryPack is not null)
            .ToLookup(o => o.LibraryPack!, StringComparer.Ordinal);
        suppliers = supply.Suppliers.ToDictionary(s => s.Key, StringComparer.Ordinal);
        (this.catalog, this.currency) = (catalog, currency);
    }

    /// <summary>Stock whose cost, first in first out, goes before the offers; null to price by offers alone.
    /// </summary>
    public StockPicture? Stock { get; init; }

    /// <summary>The shop's own good of a key; null where it keeps none.</summary>
    public Good? Find(string key) => goods.GetValueOrDefault(key);

    /// <summary>A good counted and priced.</summary>
    /// <param name="need">What is needed.</param>
    public QuotedGood Price(GoodNeed need)
    {
        var good = need.Other.Prepend(need.Key).Select(Find).FirstOrDefault(g => g is not null);
        var offers = Offers(need, good);
        var unit = good?.Unit ?? Unit(need);
        var foreign = offers.Where(o => !IsOurs(o)).ToList();
        var ranked = offers
            .Where(IsOurs)
            .Select(o => (Offer: o, Amount: Amount(need, unit, o)))
            .Where(o => o.Amount is not null && o.Offer.Amount > 0)
            .Select(o => (o.Offer, Amount: o.Amount!.Value, Each: Each(o.Offer, o.Amount.Value)))
            .OrderBy(o => o.Each * (decimal)o.Amount)
            .ThenBy(o => o.Offer.Key, StringComparer.Ordinal)
            .ToList();
        var priced = new QuotedGood(good?.Key ?? need.Key, good?.Name ?? need.Name, unit, 0, null)
        {
            IsLive = need.IsLive || good?.IsLive == true,
        };
        if (ranked.Count == 0)
        {
            var amount = Amount(need, unit, null);
            return Stocked(priced with { Amount = amount ?? need.Pieces ?? need.SquareMeters ?? 0 }, null)
                ?? priced with
                {
                    Amount = amount ?? need.Pieces ?? need.SquareMeters ?? 0,
                    Unit = amount is null ? Unit(need) : unit,
                    Note = Missing(offers, foreign),
                };
        }

        var (offer, used, each) = ranked[0];
        return Stocked(priced with { Amount = used }, each)
            ?? priced with
            {
                Amount = used,
                Cost = (decimal)used * each,
                Note = Told(offer, unit, each, ranked.Count),
            };
    }

    /// <summary>What is in stock at the cost of its lots, the rest at the price of today.</summary>
    private QuotedGood? Stocked(QuotedGood good, decimal? each)
    {
        if (Stock?.FirstIn(good.Good, good.Amount) is not { Amount: > 0 } first)
        {
            return null;
        }

        var rest = good.Amount - first.Amount;
        return rest > 1e-9 * good.Amount && each is null
            ? good with
            {
                Note = "there is not enough in stock, and no offer for the rest",
            }
            : good with
            {
                Cost = first.Cost + (rest > 1e-9 * good.Amount ? (decimal)rest * each!.Value : 0),
                Note = rest > 1e-9 * good.Amount ? "from stock, the rest bought" : "from stock, as paid",
            };
    }

    /// <summary>Where a pack of the library is asked for and offered, no other size fits.</summary>
    private List<Offer> Offers(GoodNeed need, Good? good)
    {
        var all = Known(need, good);
        var same = all.Where(o => o.LibraryPack == need.Key && need.Pieces is not null).ToList();
        return same.Count > 0 ? same : all;
    }

    private List<Offer> Known(GoodNeed need, Good? good) =>
        [
            .. (good is null ? [] : byGood[good.Key])
                .Concat(byGood[need.Key])
                .Concat(need.Other.SelectMany(k => byGood[k]))
                .Concat(byPack[need.Key])
                .DistinctBy(o => o.Key)
                .Where(o => Fits(need, o)),
        ];

    private bool IsOurs(Offer offer) =>
        suppliers.GetValueOrDefault(offer.Supplier)?.Currency is not { } its || its == currency;

    /// <summary>A sheet of another thickness does not fit.</summary>
    private bool Fits(GoodNeed need, Offer offer) =>
        offer.Tiers.Count > 0
        && (
            need.Millimeters is not { } wanted
            || (offer.SheetMillimeters ?? Pack(offer)?.Thickness?.Si * 1000) is not { } has
            || Math.Abs(has - wanted) < ThicknessMillimeters
        );

    private PackEntry? Pack(Offer offer) =>
        offer.LibraryPack is { } key ? catalog.Find<PackEntry>(key) : null;

    /// <summary>How much is needed in the unit of the good; null where the two cannot be compared.</summary>
    private double? Amount(GoodNeed need, StockUnit unit, Offer? offer) =>
        (unit, need) switch
        {
            (StockUnit.Liters, { Liters: { } liters }) => liters,
            (StockUnit.Kilograms, { Kilograms: { } kilograms }) => kilograms,
            (StockUnit.SquareMeters, { SquareMeters: { } area }) => area,
            (StockUnit.Meters, { Meters: { } meters }) => meters,
            (StockUnit.Pieces, { SquareMeters: null, Pieces: { } pieces }) => pieces,
            (StockUnit.Pieces or StockUnit.Meters, { SquareMeters: { } area }) when offer is not null => area
                / Area(offer)
                * offer.Amount,
            _ => null,
        };

    private double? Area(Offer offer) =>
        offer.SheetArea
        ?? (Pack(offer) is { Width: { } width, Length: { } length } ? width.Si * length.Si : null);

    private static decimal Each(Offer offer, double amount)
    {
        var packs = (int)Math.Clamp(Math.Ceiling(amount / offer.Amount - 1e-9), 1, int.MaxValue);
        return offer.PriceOf(packs) / (decimal)offer.Amount;
    }

    private static StockUnit Unit(GoodNeed need) =>
        need switch
        {
            { SquareMeters: not null } => StockUnit.SquareMeters,
            { Pieces: not null } => StockUnit.Pieces,
            { Liters: not null } => StockUnit.Liters,
            { Kilograms: not null } => StockUnit.Kilograms,
            _ => StockUnit.Meters,
        };

    private string Missing(List<Offer> offers, List<Offer> foreign) =>
        foreign.Count > 0 && foreign.Count == offers.Count
            ? $"offered in {suppliers[foreign[0].Supplier].Currency} only; enter a price in {currency}"
        : offers.Count > 0 ? "its offers do not say how much one pack gives"
        : "no price is entered";

    private static string Told(Offer offer, StockUnit unit, decimal each, int offers)
    {
        var price = each.ToString(each < 1 ? "0.000" : "0.00", CultureInfo.InvariantCulture);
        var of = unit switch
        {
            StockUnit.Liters => "a liter",
            StockUnit.Kilograms => "a kilogram",
            StockUnit.Meters => "a meter",
            StockUnit.SquareMeters => "a square meter",
            _ => "each",
        };
        return offers > 1 ? $"{offer.Pack}, {price} {of}, the cheapest" : $"{offer.Pack}, {price} {of}";
    }
}
