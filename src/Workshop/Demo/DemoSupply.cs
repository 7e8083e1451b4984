using System.Collections.Immutable;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Trade;
using Litterfall.Workshop.Orders;
using Litterfall.Workshop.Quoting;

namespace Litterfall.Workshop.Demo;

/// <summary>What the demo is made from.</summary>
/// <param name="Catalog">The library.</param>
/// <param name="Designs">Designs of the five orders.</param>
public sealed record DemoSupply(TradeCatalog Catalog, ImmutableArray<DemoDesign> Designs)
{
    /// <summary>Designs of tanks that run.</summary>
    public DemoTankDesigns Tanks { get; init; } = new(null, null);

    internal QuoteBasis Basis(Customer customer) =>
        new(
            DemoShop.Terms,
            customer,
            new PriceBook(
                new ShopSupply(
                    [.. DemoGoods.All(Catalog)],
                    [.. DemoGoods.Offers(Catalog)],
                    [.. DemoShop.Suppliers],
                    []
                ),
                Catalog,
                DemoShop.Terms.Currency
            )
        );

    internal DemoDesign Design(int order) => Designs.First(d => d.Order == order);

    internal static Customer Customer(string key) => DemoShop.Customers.First(c => c.Key == key);
}
