using Litterfall.Domain.Lists;

namespace Litterfall.Workshop.Buying;

/// <summary>Who sells, and what bringing it costs. Amounts in cents of one currency.</summary>
/// <param name="Name">Name.</param>
/// <param name="DeliveryCents">Charged when anything is bought here.</param>
/// <param name="FreeFromCents">Goods of so much are brought free; null for never.</param>
/// <param name="MinOrderCents">Goods of less are not sold.</param>
/// <param name="IsRequired">True when something must be bought here.</param>
public sealed record PurchaseSupplier(
    string Name,
    long DeliveryCents,
    long? FreeFromCents,
    long MinOrderCents,
    bool IsRequired = false
)
{
    /// <summary>As people call it; its name where nobody says otherwise.</summary>
    public string Title { get; init; } = Name;
}

/// <summary>What is needed of one product, liters.</summary>
/// <param name="Name">Name.</param>
/// <param name="Need">Needed by all orders.</param>
/// <param name="Stock">On the shelf.</param>
public sealed record PurchaseProduct(string Name, double Need, double Stock)
{
    /// <summary>As people call it; its name where nobody says otherwise.</summary>
    public string Title { get; init; } = Name;

    /// <summary>What it is counted in; liters where nobody says otherwise.</summary>
    public string Unit { get; init; } = "L";

    /// <summary>Lost in use, percent of the need.</summary>
    public double LossPercent { get; init; }

    /// <summary>Part of the stock that others have spoken for.</summary>
    public double Reserved { get; init; }

    /// <summary>What is to stay on the shelf.</summary>
    public double Minimum { get; init; }

    /// <summary>Most that is bought, so that it is used up before it spoils; null for no limit.</summary>
    public double? MostLiters { get; init; }

    /// <summary>Days it keeps; null where nobody knows.</summary>
    public int? ShelfLifeDays { get; init; }

    /// <summary>What must be bought.</summary>
    public double Net => Math.Max(0.0, (Need * (1.0 + (LossPercent / 100.0))) - Stock + Reserved + Minimum);
}

/// <summary>From so many packs on, each pack of the offer costs so much.</summary>
/// <param name="FromPacks">Packs.</param>
/// <param name="Cents">Price of one pack.</param>
public sealed record PriceBreak(int FromPacks, long Cents);

/// <summary>A pack of a product at a supplier.</summary>
/// <param name="Supplier">The supplier's name.</param>
/// <param name="Product">The product's name.</param>
/// <param name="PackLiters">Liters in a pack, as they are used.</param>
/// <param name="Breaks">Prices by packs, rising; the highest reached counts for all packs.</param>
public sealed record PurchaseOffer(string Supplier, string Product, double PackLiters, Seq<PriceBreak> Breaks)
{
    /// <summary>Packs that are in the basket already and stay there.</summary>
    public int InBasket { get; init; }

    /// <summary>Packs the supplier has; null for enough.</summary>
    public int? MostPacks { get; init; }

    /// <summary>What so many packs cost; null where so few are not sold.</summary>
    /// <param name="packs">Packs.</param>
    public long? Cents(int packs)
    {
        if (packs == 0)
        {
            return 0;
        }

        PriceBreak? reached = null;
        foreach (var step in Breaks)
        {
            reached = step.FromPacks <= packs ? step : reached;
        }

        return reached?.Cents * packs;
    }
}

/// <summary>What is needed, who sells it, and at what prices.</summary>
public sealed record PurchaseCase
{
    /// <summary>Suppliers, each name once.</summary>
    public required Seq<PurchaseSupplier> Suppliers { get; init; }

    /// <summary>Products, each name once.</summary>
    public required Seq<PurchaseProduct> Products { get; init; }

    /// <summary>Offers of known suppliers for known products.</summary>
    public required Seq<PurchaseOffer> Offers { get; init; }

    /// <summary>Most that is spent, cents, delivery included; null for no limit.</summary>
    public long? BudgetCents { get; init; }
}
