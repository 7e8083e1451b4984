using System.Collections.Immutable;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Quantities;
using Litterfall.Planning.Buying;
using Litterfall.Planning.Sizing;

namespace Litterfall.Planning.Costing;

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

    /// <summary>Price of the packs; null when one has none.</summary>
    public Figure? Cost { get; init; }

    /// <summary>What the buyer should know.</summary>
    public required string Note { get; init; }
}

/// <summary>So many of one pack.</summary>
public sealed record PackBought(CatalogEntry Pack, Figure Count, Figure Litres, Figure? Price);

/// <summary>Chooses packs per material and adds up the cost of goods.</summary>
public static class GoodsCost
{
    private const double ProxyExponent = 0.75;
    private const double ProxyScale = 10_000;

    /// <summary>One row per bulk material, in the order of the floor.</summary>
    public static ImmutableArray<PackNeed> Packs(CheckedDesign design, ImmutableArray<FloorLayer> layers)
    {
        var boxes = design.Count("boxes", "number of boxes", design.Design.Boxes);
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
                        (Figure.Total([.. group.Select(w => w.ToBuy)], Units.Litre.Dimension) * boxes).As(
                            $"{group.First().Item1.Name} for all boxes",
                            Units.Litre
                        )
                    )
                ),
        ];
    }

    /// <summary>Sum of the packs' prices; null when any price is missing.</summary>
    public static Figure? Total(ImmutableArray<PackNeed> packs) =>
        packs.All(p => p.Cost is not null)
            ? Figure
                .Total([.. packs.Select(p => p.Cost!)], Units.Money.Dimension)
                .As("cost of goods", Units.Money)
            : null;

    private static PackNeed Choose(TradeCatalog catalog, CatalogEntry material, Figure need)
    {
        var stock = Stock(catalog, material);
        var net = Figure.NotNegative(need - stock).As($"{material.Name} to order", Units.Litre);
        var packs = catalog.PacksOf(material.Key).Where(p => p.Figure("litres") is { Si: > 0 }).ToArray();
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
                .Lines.Select(line => Bought(catalog, catalog.Find(line.Offer.Name)!, line, net))
                .ToImmutableArray();
        var got = Figure.Total([.. bought.Select(b => b.Litres)], Units.Litre.Dimension);
        return new PackNeed
        {
            Material = material,
            Need = need,
            Stock = stock,
            Net = net,
            Packs = bought,
            Left = Figure.NotNegative(stock + got - need).As($"{material.Name} left over", Units.Litre),
            Cost = Cost(bought, net),
            Note = Note(packs.Length, priced.Length, net, bought),
        };
    }

    private static Figure? Cost(ImmutableArray<PackBought> bought, Figure net) =>
        net.Si > 0 && bought.Length == 0 || bought.Any(b => b.Price is null)
            ? null
            : Figure
                .Total([.. bought.Select(b => b.Price!)], Units.Money.Dimension)
                .As("cost of the packs", Units.Money);

    private static string Note(int packs, int priced, Figure net, ImmutableArray<PackBought> bought) =>
        net.Si <= 0 ? "covered by stock"
        : packs == 0 ? "the library knows no pack of it; buy it loose"
        : priced == 0 ? "no price known: packs chosen as if price grew with size to the power 0.75"
        : bought.Any(b => b.Price is null) ? "a price is missing"
        : "cheapest set of packs";

    private static Figure Stock(TradeCatalog catalog, CatalogEntry material) =>
        catalog.Workshop?.StockLitres.TryGetValue(material.Key, out var litres) == true
            ? Figure.Given(
                $"{material.Name} in stock",
                litres / 1000,
                Units.Litre,
                new Citation("workshop", "stock", Provenance.Entered)
            )
            : Figure.Choice($"{material.Name} in stock", 0, Units.Litre, "no stock was entered");

    private static PackPrice? Price(TradeCatalog catalog, string pack) =>
        catalog.Workshop?.Prices.GetValueOrDefault(pack);

    private static PackOffer Offer(TradeCatalog catalog, CatalogEntry pack, bool priced)
    {
        var litres = pack.Figure("litres")!.Si * 1000;
        return priced
            ? new PackOffer(
                pack.Key,
                litres,
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
                litres,
                (long)Math.Round(Math.Pow(litres, ProxyExponent) * ProxyScale)
            );
    }

    private static PackBought Bought(TradeCatalog catalog, CatalogEntry pack, PackLine line, Figure net)
    {
        var litres = pack.Figure("litres")!;
        var count = Figure
            .Computed("cheapest set of packs that covers the need", line.Packs, Dimension.None, net, litres)
            .As($"packs of {pack.Name}", Units.One);
        var price = Price(catalog, pack.Key) is { } p
            ? (
                count
                * Figure.Given(
                    $"price of {pack.Name}",
                    line.Offer.Cents(line.Packs) / 100.0 / line.Packs,
                    Units.Money,
                    new Citation("workshop", p.Place, Provenance.Entered)
                )
            ).As($"price of all {pack.Name}", Units.Money)
            : null;
        return new PackBought(pack, count, (count * litres).As($"liters in {pack.Name}", Units.Litre), price);
    }
}
