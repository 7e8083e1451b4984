using System.Globalization;
using Litterfall.Domain.Trade;
using Litterfall.Store;

namespace Litterfall.Web.Shop.Terms;

/// <summary>A pack with its price as the list shows it.</summary>
public sealed class PriceRow
{
    private PriceRow(Kept<Offer> offer, Good? good, string supplier) =>
        (Offer, Good, Supplier) = (offer, good, supplier);

    /// <summary>The offer.</summary>
    public Kept<Offer> Offer { get; }

    /// <summary>Its good; null where it is gone.</summary>
    public Good? Good { get; }

    /// <summary>Name of the supplier.</summary>
    public string Supplier { get; }

    /// <summary>Name of the good.</summary>
    public string Name => Good?.Name ?? Offer.Value.Good.Replace('-', ' ');

    /// <summary>The pack and what it holds.</summary>
    public string Pack =>
        Good is { Unit: not StockUnit.Pieces } good
            ? string.Create(
                CultureInfo.InvariantCulture,
                $"{Offer.Value.Pack} ({Offer.Value.Amount:0.##} {Sign(good.Unit)})"
            )
            : Offer.Value.Pack;

    /// <summary>Prices, a line each.</summary>
    public IEnumerable<string> Prices => Offer.Value.Tiers.Select(Step);

    /// <summary>Day of the price.</summary>
    public string Dated => Offer.Value.Dated?.ToString("d MMM yyyy", CultureInfo.InvariantCulture) ?? "";

    /// <summary>True where the row says what somebody looks for.</summary>
    /// <param name="find">What is typed.</param>
    public bool Says(string find) =>
        find.Split(' ', StringSplitOptions.RemoveEmptyEntries)
            .All(word => $"{Name} {Pack} {Supplier}".Contains(word, StringComparison.OrdinalIgnoreCase));

    /// <summary>All rows, by good.</summary>
    /// <param name="offers">Offers.</param>
    /// <param name="goods">Goods.</param>
    /// <param name="suppliers">Suppliers.</param>
    public static List<PriceRow> All(
        IEnumerable<Kept<Offer>> offers,
        IEnumerable<Kept<Good>> goods,
        IEnumerable<Supplier> suppliers
    )
    {
        var byKey = goods.ToDictionary(g => g.Key, g => g.Value, StringComparer.Ordinal);
        var names = suppliers.ToDictionary(s => s.Key, s => s.Name, StringComparer.Ordinal);
        return
        [
            .. offers
                .Select(o => new PriceRow(
                    o,
                    byKey.GetValueOrDefault(o.Value.Good),
                    names.GetValueOrDefault(o.Value.Supplier, o.Value.Supplier)
                ))
                .OrderBy(r => r.Name, StringComparer.OrdinalIgnoreCase)
                .ThenBy(r => r.Offer.Value.Amount),
        ];
    }

    /// <summary>A price, and from how many packs it counts.</summary>
    /// <param name="tier">The price.</param>
    public static string Step(PriceTier tier)
    {
        var price = tier.Price.ToString("0.00##", CultureInfo.InvariantCulture);
        return tier.FromPacks == 1 ? price : $"from {tier.FromPacks}: {price}";
    }

    /// <summary>Unit in a word.</summary>
    /// <param name="unit">The unit.</param>
    public static string Units(StockUnit unit) =>
        unit switch
        {
            StockUnit.Liters => "liters",
            StockUnit.Kilograms => "kilograms",
            StockUnit.Meters => "meters",
            StockUnit.SquareMeters => "square meters",
            _ => "pieces",
        };

    private static string Sign(StockUnit unit) =>
        unit switch
        {
            StockUnit.Liters => "L",
            StockUnit.Kilograms => "kg",
            StockUnit.Meters => "m",
            _ => "m²",
        };
}
