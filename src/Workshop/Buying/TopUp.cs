namespace Litterfall.Workshop.Buying;

/// <summary>
/// Where a sum is not reached at a supplier, the packs that reach it for the least, one kind at each.
/// </summary>
internal static class TopUp
{
    /// <summary>The packs with those on top.</summary>
    /// <param name="asked">The suppliers and products.</param>
    /// <param name="leaf">The sums to be reached.</param>
    /// <param name="packs">Packs that cover the needs.</param>
    public static (PackOffer, int)[] Fill(
        (IReadOnlyList<PurchaseSupplier> Suppliers, PackProduct[] Products) asked,
        StateLeaf leaf,
        (PackOffer Offer, int Packs)[] packs
    )
    {
        var taken = packs.ToDictionary(t => t.Offer, t => t.Packs);
        var goods = Basket.Goods(asked.Suppliers.Count, packs);
        for (var s = 0; s < leaf.Least.Length; s++)
        {
            var missing = leaf.Least[s] - (goods[s] ?? 0);
            if (missing > 0 && Filler(asked.Products, s, taken, missing) is { } filler)
            {
                taken[filler.Offer] = filler.Packs;
            }
        }

        return [.. taken.Select(t => (t.Key, t.Value))];
    }

    private static (PackOffer Offer, int Packs)? Filler(
        PackProduct[] products,
        int supplier,
        Dictionary<PackOffer, int> taken,
        long missing
    )
    {
        (PackOffer, int)? best = null;
        var least = long.MaxValue;
        foreach (var offer in products.Where(p => p.Most == long.MaxValue).SelectMany(p => p.Offers))
        {
            var had = taken.GetValueOrDefault(offer);
            if (offer.Supplier == supplier && Filling(offer, had, missing) is > 0 and { } packs)
            {
                var cents = offer.Offer.Cents(packs)!.Value - offer.Offer.Cents(had)!.Value;
                if (cents < least)
                {
                    (best, least) = ((offer, packs), cents);
                }
            }
        }

        return best;
    }

    /// <summary>Packs of an offer that bring so much more money than those taken; 0 for none.</summary>
    private static int Filling(PackOffer offer, int taken, long missing)
    {
        var wanted = missing + offer.Offer.Cents(taken)!.Value;
        var most = 0;
        foreach (var step in offer.Offer.Breaks)
        {
            var packs = Math.Max(
                Math.Max(step.FromPacks, taken),
                (wanted + step.Cents - 1) / Math.Max(1, step.Cents)
            );
            if (packs <= offer.Most && offer.Offer.Cents((int)packs) >= wanted)
            {
                most =
                    most == 0 || offer.Offer.Cents((int)packs) < offer.Offer.Cents(most) ? (int)packs : most;
            }
        }

        return most;
    }
}
