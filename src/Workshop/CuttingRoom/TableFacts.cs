using System.Collections.Immutable;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Cutting;
using Litterfall.Domain.Trade;
using Litterfall.Workshop.Orders;
using Litterfall.Workshop.Stock;

namespace Litterfall.Workshop.CuttingRoom;

/// <summary>Everything the cutting table looks at.</summary>
public sealed record TableFacts
{
    /// <summary>Parts of all accepted orders, those that are cut already too, and loose panels.</summary>
    public required ImmutableArray<WantedPart> Wanted { get; init; }

    /// <summary>The book of stock.</summary>
    public required StockBook Book { get; init; }

    /// <summary>Goods, offers and suppliers.</summary>
    public required ShopSupply Supply { get; init; }

    /// <summary>The library.</summary>
    public required TradeCatalog Catalog { get; init; }

    /// <summary>The shop's own rules.</summary>
    public ImmutableArray<CuttingRules> Rules { get; init; } = [];

    /// <summary>All plans.</summary>
    public ImmutableArray<CuttingJob> Jobs { get; init; } = [];

    /// <summary>Currency of the workshop.</summary>
    public required string Currency { get; init; }

    /// <summary>Today.</summary>
    public required DateOnly Today { get; init; }

    /// <summary>The rules of a good: the shop's own, else the usual ones.</summary>
    /// <param name="good">Key of the good.</param>
    public CuttingRules RulesOf(string good) =>
        Rules.FirstOrDefault(r => r.Good == good) ?? UsualRules.For(good, Catalog.Find(good));

    /// <summary>Name of a supplier.</summary>
    /// <param name="key">Its key.</param>
    public string SupplierName(string key) => Supply.Suppliers.FirstOrDefault(s => s.Key == key)?.Name ?? key;
}
