namespace Litterfall.Workshop.Buying;

/// <summary>Packs chosen for all products, and what they cost with delivery.</summary>
/// <param name="Cents">Goods and deliveries.</param>
/// <param name="Taken">Offers and packs of each.</param>
internal sealed record Basket(long Cents, (PackOffer Offer, int Packs)[] Taken)
{
    /// <summary>
    /// Adds up packs; null when a supplier's minimum order is not reached, or nothing is bought where
    /// something must be.
    /// </summary>
    /// <param name="suppliers">All suppliers.</param>
    /// <param name="taken">Offers and packs of each.</param>
    public static Basket? Sum(IReadOnlyList<PurchaseSupplier> suppliers, (PackOffer Offer, int Packs)[] taken)
    {
        var goods = Goods(suppliers.Count, taken);
        var all = 0L;
        for (var s = 0; s < suppliers.Count; s++)
        {
            var supplier = suppliers[s];
            if (goods[s] is not { } cents)
            {
                if (supplier.IsRequired)
                {
                    return null;
                }

                continue;
            }

            if (cents < supplier.MinOrderCents)
            {
                return null;
            }

            all += cents + Delivery(supplier, cents);
        }

        return new Basket(all, taken);
    }

    /// <summary>Goods by supplier, cents; null where nothing is bought.</summary>
    public static long?[] Goods(int suppliers, IEnumerable<(PackOffer Offer, int Packs)> taken)
    {
        var goods = new long?[suppliers];
        foreach (var (offer, packs) in taken)
        {
            goods[offer.Supplier] = (goods[offer.Supplier] ?? 0) + offer.Offer.Cents(packs)!.Value;
        }

        return goods;
    }

    /// <summary>What a supplier asks for bringing goods.</summary>
    public static long Delivery(PurchaseSupplier supplier, long goods) =>
        supplier.FreeFromCents is { } free && goods >= free ? 0 : supplier.DeliveryCents;
}
