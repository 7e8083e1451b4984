using System.Collections.Immutable;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Quantities.Measures;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Quantities.Packs;

/// <summary>Packs of one material for all boxes.</summary>
public sealed record PackNeed
{
    /// <summary>The material.</summary>
    public required CatalogEntry Material { get; init; }

    /// <summary>Liters to buy for all boxes.</summary>
    public required Figure Need { get; init; }

    /// <summary>Liters in the workshop's stock.</summary>
    public required Figure Stock { get; init; }

    /// <summary>Need less stock.</summary>
    public required Figure Net { get; init; }

    /// <summary>Chosen packs.</summary>
    public required ImmutableArray<PackBought> Packs { get; init; }

    /// <summary>Liters left over, stock included.</summary>
    public required Figure Left { get; init; }

    /// <summary>Price of the packs to buy; null when one has none.</summary>
    public Figure? Cost { get; init; }

    /// <summary>Value of the liters used, from stock or bought; null when no pack has a price.</summary>
    public Figure? UsedValue { get; init; }

    /// <summary>What the buyer should know.</summary>
    public required string Note { get; init; }
}

/// <summary>So many of one pack.</summary>
public sealed record PackBought(PackEntry Pack, Figure Count, Figure Liters, Figure? Price);

/// <summary>Chooses packs per material and adds up the cost of goods.</summary>
public static class GoodsCost
{
    private const double ProxyExponent = 0.75;
    private const double ProxyScale = 10_000;

    /// <summary>One row per bulk material, in the order of the floor.</summary>
    public static ImmutableArray<PackNeed> Packs(CheckedDesign design, ImmutableArray<FloorLayer> layers)
    {
        var boxes = design.Count("boxes", "number of boxes", design.Design.Boxes);
        var inches = Imperial.IsUsed(design.Design);
        var wanted = layers
            .Where(l => l.Material is not null)
            .SelectMany(layer =>
                layer.Components.Length > 0
                    ? layer.Components.Select(c => (c.Material, c.ToBuy))
                    : [(layer.Material!, layer.ToBuy)]
            );
        return
        [
            .. wanted
                .Where(w => w.ToBuy.Si > 0)
                .GroupBy(w => w.Item1.Key, StringComparer.Ordinal)
                .Select(group =>
                    Choose(
                        design.Catalog,
                        group.First().Item1,
                        (Figure.Total([.. group.Select(w => w.ToBuy)], Unit.Liter.Dimension) * boxes).As(
                            $"{group.First().Item1.Name} for all boxes",
                            Unit.Liter
                        ),
                        inches
                    )
                ),
        ];
    }

    /// <summary>Value of the goods that go into the boxes; null when any price is missing.</summary>
    public static Figure? Goods(ImmutableArray<PackNeed> packs) =>
        Sum("cost of goods", packs.Select(p => p.UsedValue));

    /// <summary>Price of the packs to buy now; null when any price is missing.</summary>
    public static Figure? Purchase(ImmutableArray<PackNeed> packs) =>
        Sum("price of the packs to buy", packs.Select(p => p.Cost));

    private static Figure? Sum(string name, IEnumerable<Figure?> costs)
    {
        var all = costs.ToArray();
        return all.All(c => c is not null)
            ? Figure.Total([.. all.Select(c => c!)], Unit.Money.Dimension).As(name, Unit.Money)
            : null;
    }

    private static PackNeed Choose(TradeCatalog catalog, CatalogEntry material, Figure need, bool inches)
    {
        var stock = Stock(catalog, material);
        var net = Figure.NotNegative(need - stock).As($"{material.Name} to order", Unit.Liter);
        var packs = Offered(catalog, material, inches);
        var priced = packs.Where(p => Price(catalog, p.Key) is not null).ToArray();
        var offers = (priced.Length > 0 ? priced : packs).ToDictionary(
            p => p.Key,
            p => Offer(catalog, p, priced.Length > 0),
            StringComparer.Ordinal
        );
        var set = PackChoice.Cheapest(net.Si * 1000, offers.Values);
        var bought = set is null
            ? []
            : set
                .Lines.Select(line => Bought(catalog, catalog.Find<PackEntry>(line.Offer.Name)!, line, net))
                .ToImmutableArray();
        var got = Figure.Total([.. bought.Select(b => b.Liters)], Unit.Liter.Dimension);
        return new PackNeed
        {
            Material = material,
            Need = need,
            Stock = stock,
            Net = net,
            Packs = bought,
            Left = Figure.NotNegative(stock + got - need).As($"{material.Name} left over", Unit.Liter),
            Cost = Cost(bought, net),
            UsedValue = UsedValue(catalog, priced, bought, need),
            Note = Note(packs.Length, priced.Length, net, bought),
        };
    }

    /// <summary>
    /// Packs with a price; without any, the packs of one measure only, so that dry and liquid quarts are not
    /// mixed: no liquid quarts for a box typed in inches, no US packs otherwise.
    /// </summary>
    private static PackEntry[] Offered(TradeCatalog catalog, CatalogEntry material, bool inches)
    {
        var all = catalog.PacksOf(material.Key).Where(p => p.LooseVolume is { Si: > 0 }).ToArray();
        var wanted = all.Where(p => Price(catalog, p.Key) is not null).ToArray();
        if (wanted.Length == 0)
        {
            wanted = [.. all.Where(p => IsUsual(p, inches))];
        }

        return wanted.Length > 0 ? wanted : all;
    }

    private static bool IsUsual(PackEntry pack, bool inches) =>
        pack.Volume?.Unit?.Symbol is var unit
        && (inches ? unit is not "liquid qt" : unit is null or "L" or "mL");

    /// <summary>
    /// Liters used at the price paid for the packs bought now; at the lowest price per liter of a single
    /// priced
    /// pack when all comes from stock.
    /// </summary>
    private static Figure? UsedValue(
        TradeCatalog catalog,
        PackEntry[] priced,
        ImmutableArray<PackBought> bought,
        Figure need
    )
    {
        if (bought.Length > 0)
        {
            return Cost(bought, need) is { } paid
                ? (need * (paid / Figure.Total([.. bought.Select(b => b.Liters)], Unit.Liter.Dimension))).As(
                    "value of the liters used",
                    Unit.Money
                )
                : null;
        }

        var best = priced.MinBy(p => (double)Price(catalog, p.Key)!.Breaks[0].Price / p.LooseVolume!.Si);
        if (best is null)
        {
            return null;
        }

        var price = Price(catalog, best.Key)!;
        var pack = Figure.Given(
            $"price of {best.Name}",
            (double)price.Breaks[0].Price,
            Unit.Money,
            new Citation("workshop", price.Place, Provenance.Entered)
        );
        return (need * (pack / best.LooseVolume!)).As("value of the liters used", Unit.Money);
    }

    private static Figure? Cost(ImmutableArray<PackBought> bought, Figure net) =>
        net.Si > 0 && bought.Length == 0 || bought.Any(b => b.Price is null)
            ? null
            : Figure
                .Total([.. bought.Select(b => b.Price!)], Unit.Money.Dimension)
                .As("cost of the packs", Unit.Money);

    private static string Note(int packs, int priced, Figure net, ImmutableArray<PackBought> bought) =>
        net.Si <= 0 ? "covered by stock"
        : packs == 0 ? "the library knows no pack of it; buy it loose"
        : priced == 0 ? "no price known; chosen by size"
        : bought.Any(b => b.Price is null) ? "a price is missing"
        : "cheapest set of packs";

    private static Figure Stock(TradeCatalog catalog, CatalogEntry material) =>
        catalog.Workshop?.StockLiters.TryGetValue(material.Key, out var liters) == true
            ? Figure.Given(
                $"{material.Name} in stock",
                liters / 1000,
                Unit.Liter,
                new Citation("workshop", "stock", Provenance.Entered)
            )
            : Figure.Choice($"{material.Name} in stock", 0, Unit.Liter, "no stock was entered");

    private static PackPrice? Price(TradeCatalog catalog, string pack) =>
        catalog.Workshop?.Prices.GetValueOrDefault(pack);

    private static PackOffer Offer(TradeCatalog catalog, PackEntry pack, bool priced)
    {
        var liters = pack.LooseVolume!.Si * 1000;
        return priced
            ? new PackOffer(
                pack.Key,
                liters,
                [
                    .. Price(catalog, pack.Key)!
                        .Breaks.Select(b => new PackTier(
                            b.FromPacks,
                            (long)Math.Round(b.Price * 100, MidpointRounding.AwayFromZero)
                        )),
                ]
            )
            : PackOffer.Flat(
                pack.Key,
                liters,
                (long)Math.Round(Math.Pow(liters, ProxyExponent) * ProxyScale)
            );
    }

    private static PackBought Bought(TradeCatalog catalog, PackEntry pack, PackLine line, Figure net)
    {
        var liters = pack.LooseVolume!;
        var count = Figure
            .Computed("cheapest set of packs that covers the need", line.Packs, Dimension.None, net, liters)
            .As($"packs of {pack.Name}", Unit.One);
        var price = Price(catalog, pack.Key) is { } p
            ? (
                count
                * Figure.Given(
                    $"price of {pack.Name}",
                    line.Offer.Cents(line.Packs) / 100.0 / line.Packs,
                    Unit.Money,
                    new Citation("workshop", p.Place, Provenance.Entered)
                )
            ).As($"price of all {pack.Name}", Unit.Money)
            : null;
        return new PackBought(pack, count, (count * liters).As($"liters in {pack.Name}", Unit.Liter), price);
    }
}
