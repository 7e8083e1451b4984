using Litterfall.Domain.Lists;

namespace Litterfall.Workshop.Buying;

/// <summary>Packs of one offer that are bought.</summary>
/// <param name="Offer">The offer.</param>
/// <param name="Packs">Packs.</param>
/// <param name="Cents">What they cost together.</param>
public sealed record PurchaseLine(PurchaseOffer Offer, int Packs, long Cents);

/// <summary>An order at one supplier.</summary>
/// <param name="Supplier">The supplier.</param>
/// <param name="GoodsCents">The goods.</param>
/// <param name="Cents">Delivery.</param>
public sealed record PurchaseDelivery(PurchaseSupplier Supplier, long GoodsCents, long Cents);

/// <summary>What is bought beyond the need.</summary>
/// <param name="Product">The product.</param>
/// <param name="Liters">Liters left over.</param>
public sealed record PurchaseLeftover(PurchaseProduct Product, double Liters);

/// <summary>What to buy.</summary>
/// <param name="IsProved">True when no cheaper purchase exists.</param>
/// <param name="BoundCents">No purchase costs less than this.</param>
/// <param name="Lines">The packs, in the order of the offers.</param>
/// <param name="Deliveries">The suppliers bought from.</param>
/// <param name="Leftovers">One for each product.</param>
public sealed record PurchasePlan(
    bool IsProved,
    long BoundCents,
    Seq<PurchaseLine> Lines,
    Seq<PurchaseDelivery> Deliveries,
    Seq<PurchaseLeftover> Leftovers
)
{
    /// <summary>Goods and deliveries.</summary>
    public long TotalCents => Lines.Sum(l => l.Cents) + Deliveries.Sum(d => d.Cents);
}

/// <summary>Why nothing can be bought as asked.</summary>
/// <param name="Key">Entry of the case at fault: suppliers, products, offers or budgetCents.</param>
/// <param name="Message">What is wrong.</param>
/// <param name="Expected">What would do.</param>
public sealed record PurchaseRefusal(string Key, string Message, string Expected);
