using System.Collections.Immutable;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Stock;
using Litterfall.Domain.Trade;

namespace Litterfall.Workshop.Goods;

/// <summary>A workshop's folder as records of the bench.</summary>
/// <param name="Terms">Name and currency over the terms that were there.</param>
/// <param name="Supplier">Whom its prices are put down to.</param>
/// <param name="Goods">Goods that its prices and stock name.</param>
/// <param name="Offers">Its prices.</param>
/// <param name="Lots">Its stock, one lot for each good.</param>
public sealed record FolderRecords(
    ShopTerms Terms,
    Supplier Supplier,
    ImmutableArray<Good> Goods,
    ImmutableArray<Offer> Offers,
    ImmutableArray<Lot> Lots
)
{
    /// <summary>Key of the supplier of prices that say none.</summary>
    public const string UnnamedSupplier = "usual";

    /// <summary>Records of a folder that was read with its catalog.</summary>
    /// <param name="catalog">The library with the folder on top.</param>
    /// <param name="terms">Terms that were there.</param>
    /// <param name="day">Day it is taken over.</param>
    /// <exception cref="InvalidOperationException">The catalog has no folder on top.</exception>
    public static FolderRecords Read(TradeCatalog catalog, ShopTerms terms, DateOnly day)
    {
        var shop = catalog.Workshop
            ?? throw new InvalidOperationException("There is no folder on top of the library.");
        var offers = shop
            .Prices.Values.OrderBy(p => p.Pack, StringComparer.Ordinal)
            .Select(price => Offer(catalog, price, day))
            .OfType<Offer>()
            .ToImmutableArray();
        var goods = offers
            .Select(o => o.Good)
            .Concat(shop.StockLiters.Keys)
            .Distinct(StringComparer.Ordinal)
            .Select(key => catalog.Find(key) is { } entry ? LibraryGoods.From(entry) : null)
            .OfType<Good>()
            .OrderBy(g => g.Key, StringComparer.Ordinal);
        return new FolderRecords(
            terms with
            {
                Name = shop.Name,
                Currency = shop.Currency ?? terms.Currency,
            },
            new Supplier
            {
                Key = UnnamedSupplier,
                Name = "Usual supplier",
                Currency = shop.Currency ?? terms.Currency,
                Notes = "Prices taken over from a folder that names no supplier.",
            },
            [.. goods],
            offers,
            [
                .. shop
                    .StockLiters.Where(s => s.Value > 0)
                    .OrderBy(s => s.Key, StringComparer.Ordinal)
                    .Select(s => new Lot
                    {
                        Id = $"{s.Key.ToUpperInvariant()}-0",
                        Good = s.Key,
                        Since = day,
                        Amount = s.Value,
                        Note = "stock taken over",
                    }),
            ]
        );
    }

    private static Offer? Offer(TradeCatalog catalog, PackPrice price, DateOnly day)
    {
        var (good, amount, name) = catalog.Find(price.Pack) switch
        {
            PackEntry { Material: { } material, LooseVolume: { } liters } pack => (
                material,
                liters.Si * 1000,
                pack.Name
            ),
            PackEntry { Material: { } material, Pieces: { } pieces } pack => (material, pieces.Si, pack.Name),
            EquipmentEntry equipment => (equipment.Key, 1, equipment.Name),
            _ => ("", 0, ""),
        };
        return good.Length == 0
            ? null
            : new Offer
            {
                Key = $"{UnnamedSupplier}-{price.Pack}",
                Supplier = UnnamedSupplier,
                Good = good,
                Pack = name,
                LibraryPack = price.Pack,
                Amount = amount,
                Tiers = [.. price.Breaks.Select(b => new PriceTier(b.FromPacks, b.Price))],
                Dated = day,
            };
    }
}
