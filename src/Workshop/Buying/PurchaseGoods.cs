namespace Litterfall.Workshop.Buying;

/// <summary>An offer in whole numbers.</summary>
/// <param name="Index">Its place in the case.</param>
/// <param name="Supplier">Number of its supplier.</param>
/// <param name="Size">Size of a pack in units of its product.</param>
/// <param name="Offer">The offer.</param>
internal sealed record PackOffer(int Index, int Supplier, long Size, PurchaseOffer Offer)
{
    private const int MostPacks = 1_000_000;

    /// <summary>Fewest packs: those in the basket.</summary>
    public int Least => Offer.InBasket;

    /// <summary>Most packs.</summary>
    public int Most => Offer.MostPacks ?? MostPacks;

    /// <summary>Lowest price of a pack, cents.</summary>
    public long LowestCents { get; } = Offer.Breaks.Min(b => b.Cents);

    /// <summary>Lowest price of a unit, cents.</summary>
    public double CentsPerUnit => (double)LowestCents / Size;

    /// <summary>
    /// Packs worth taking toward an amount that is missing: up to what covers it, and the next price breaks.
    /// </summary>
    /// <param name="missing">Units missing.</param>
    public IEnumerable<int> Choices(long missing)
    {
        var covers = (int)Math.Clamp((missing + Size - 1) / Size, Least, Most);
        for (var packs = Least; packs <= covers; packs++)
        {
            yield return packs;
        }

        foreach (var step in Offer.Breaks)
        {
            if (step.FromPacks > covers && step.FromPacks <= Most)
            {
                yield return step.FromPacks;
            }
        }
    }
}

/// <summary>A product in whole numbers: every pack size is a whole number of its units.</summary>
/// <param name="Need">Units that must be bought.</param>
/// <param name="Most">Units that may be bought.</param>
/// <param name="Offers">Its offers, lowest price of a unit first.</param>
/// <param name="Product">The product.</param>
internal sealed record PackProduct(long Need, long Most, PackOffer[] Offers, PurchaseProduct Product)
{
    /// <summary>Microliters are the finest step that is told apart.</summary>
    private const double MicrolitersPerLiter = 1e6;

    /// <summary>All products of a case.</summary>
    public static PackProduct[] All(PurchaseCase asked)
    {
        var suppliers = asked.Suppliers.Select(s => s.Name).ToList();
        var offers = asked
            .Offers.Select((offer, i) => (offer, i))
            .ToLookup(o => o.offer.Product, StringComparer.Ordinal);
        return
        [
            .. asked.Products.Select(product =>
            {
                var own = offers[product.Name].ToList();
                var unit = own.Aggregate(0L, (all, o) => Divisor(all, Micro(o.offer.PackLiters)));
                unit = Math.Max(unit, 1);
                return new PackProduct(
                    (Micro(product.Net) + unit - 1) / unit,
                    product.MostLiters is { } most ? Micro(most) / unit : long.MaxValue,
                    [
                        .. own.Select(o => new PackOffer(
                                o.i,
                                suppliers.IndexOf(o.offer.Supplier),
                                Micro(o.offer.PackLiters) / unit,
                                o.offer
                            ))
                            .OrderBy(o => o.CentsPerUnit)
                            .ThenBy(o => o.Index),
                    ],
                    product
                );
            }),
        ];
    }

    private static long Micro(double liters) => (long)Math.Round(liters * MicrolitersPerLiter);

    private static long Divisor(long a, long b)
    {
        while (b != 0)
        {
            (a, b) = (b, a % b);
        }

        return a;
    }
}
