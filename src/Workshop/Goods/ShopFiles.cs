using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Trade;

namespace Litterfall.Workshop.Goods;

/// <summary>
/// The shop's prices in the form that designs are priced with: the same reader takes them as takes a
/// workshop's folder, so that one design costs the same wherever it is checked. Stock is left out: goods on
/// the shelf are counted once over all orders, not once for each design.
/// </summary>
public static class ShopFiles
{
    /// <summary>Prices, packs that the library does not have, and the currency.</summary>
    /// <param name="terms">Terms of the workshop.</param>
    /// <param name="goods">Its goods.</param>
    /// <param name="offers">Its offers.</param>
    /// <param name="catalog">The library.</param>
    public static ImmutableArray<CatalogFile> Write(
        ShopTerms terms,
        IReadOnlyCollection<Good> goods,
        IReadOnlyCollection<Offer> offers,
        TradeCatalog catalog
    )
    {
        var priced = offers
            .Select(o => (Offer: o, Pack: o.LibraryPack ?? OwnPack(o, goods, catalog)))
            .Where(o => o.Pack is not null && catalog.Find(o.Offer.LibraryPack ?? o.Offer.Good) is not null)
            .GroupBy(o => o.Pack!, StringComparer.Ordinal)
            .Select(g => (Pack: g.Key, g.OrderBy(o => o.Offer.PriceOf(1)).First().Offer))
            .OrderBy(o => o.Pack, StringComparer.Ordinal)
            .ToList();
        return
        [
            new CatalogFile(
                "workshop.json",
                Json(json =>
                {
                    json.WriteStartObject();
                    json.WriteString("name", terms.Name);
                    json.WriteString("currency", terms.Currency);
                    json.WriteEndObject();
                })
            ),
            new CatalogFile("prices.json", Json(json => WritePrices(json, priced))),
            new CatalogFile("shop-packs.json", Json(json => WritePacks(json, priced))),
        ];
    }

    /// <summary>Key of a pack of bulk goods that the library does not have; null for other goods.</summary>
    private static string? OwnPack(Offer offer, IEnumerable<Good> goods, TradeCatalog catalog) =>
        goods.FirstOrDefault(g => g.Key == offer.Good)
            is { Unit: StockUnit.Liters, Kind: GoodKind.Bulk or GoodKind.Mix }
        && catalog.Find(offer.Good) is not null
            ? $"pack-shop-{offer.Key}"
            : null;

    private static void WritePrices(Utf8JsonWriter json, List<(string Pack, Offer Offer)> priced)
    {
        json.WriteStartArray();
        foreach (var (pack, offer) in priced)
        {
            json.WriteStartObject();
            json.WriteString("pack", pack);
            json.WriteNumber("price", offer.PriceOf(1));
            if (offer.Tiers.Count > 1)
            {
                json.WriteStartArray("breaks");
                foreach (var tier in offer.Tiers.Skip(1))
                {
                    json.WriteStartObject();
                    json.WriteNumber("from", tier.FromPacks);
                    json.WriteNumber("price", tier.Price);
                    json.WriteEndObject();
                }

                json.WriteEndArray();
            }

            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WritePacks(Utf8JsonWriter json, List<(string Pack, Offer Offer)> priced)
    {
        json.WriteStartArray();
        foreach (var (pack, offer) in priced.Where(p => p.Offer.LibraryPack is null))
        {
            json.WriteStartObject();
            json.WriteString("key", pack);
            json.WriteString("kind", "pack");
            json.WriteString("name", $"{offer.Good.Replace('-', ' ')}, {offer.Pack}");
            json.WriteString("material", offer.Good);
            json.WriteStartObject("values");
            json.WriteStartObject("litres");
            json.WriteNumber("value", offer.Amount);
            json.WriteString("unit", "L");
            json.WriteString("provenance", "measured");
            json.WriteEndObject();
            json.WriteEndObject();
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static string Json(Action<Utf8JsonWriter> write)
    {
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes))
        {
            write(json);
        }

        return Encoding.UTF8.GetString(bytes.ToArray());
    }
}
