namespace Litterfall.Workshop.Buying;

/// <summary>
/// For each supplier: not used, used and paid for, or used with goods enough for free delivery.
/// </summary>
/// <param name="Bound">No purchase in these states costs less, cents.</param>
/// <param name="Suppliers">One bit for each supplier that may be used.</param>
/// <param name="Fees">Deliveries paid.</param>
/// <param name="Least">Goods that must be reached at each supplier, cents; 0 for nothing.</param>
/// <param name="Covers">The cheapest packs of each product.</param>
internal sealed record StateLeaf(long Bound, int Suppliers, long Fees, long[] Least, Cover[] Covers);

/// <summary>Lists the states of all suppliers that may hold a purchase cheaper than one in hand.</summary>
internal sealed class SupplierStates
{
    private readonly IReadOnlyList<PurchaseSupplier> suppliers;
    private readonly PackProduct[] products;
    private readonly int[] sellers;
    private readonly int basket;
    private readonly Dictionary<(int Product, int Suppliers), Cover?> covers = [];
    private readonly Dictionary<int, long?> sums = [];
    private readonly List<StateLeaf> leaves = [];

    private SupplierStates(IReadOnlyList<PurchaseSupplier> suppliers, PackProduct[] products)
    {
        this.suppliers = suppliers;
        this.products = products;
        sellers = [.. products.Select(p => p.Offers.Aggregate(0, (mask, o) => mask | (1 << o.Supplier)))];
        basket = products
            .SelectMany(p => p.Offers)
            .Where(o => o.Least > 0)
            .Aggregate(0, (mask, o) => mask | (1 << o.Supplier));
    }

    /// <summary>The states, those of the lowest bound first.</summary>
    /// <param name="suppliers">All suppliers.</param>
    /// <param name="products">All products.</param>
    /// <param name="below">Cost of a purchase in hand; states that cannot beat it are left out.</param>
    /// <param name="cancel">Ends the search.</param>
    public static List<StateLeaf> List(
        IReadOnlyList<PurchaseSupplier> suppliers,
        PackProduct[] products,
        long below,
        CancellationToken cancel
    )
    {
        var states = new SupplierStates(suppliers, products);
        states.Branch(0, (1 << suppliers.Count) - 1, 0, new long[suppliers.Count], below, cancel);
        return [.. states.leaves.OrderBy(l => l.Bound)];
    }

    private void Branch(int at, int open, long fees, long[] least, long below, CancellationToken cancel)
    {
        cancel.ThrowIfCancellationRequested();
        if (Sum(open) is not { } goods || goods + fees >= below)
        {
            return;
        }

        if (at == suppliers.Count)
        {
            Cover[] all = [.. products.Select((_, p) => Cover(p, open)!)];
            leaves.Add(new StateLeaf(goods + fees, open, fees, [.. least], all));
            return;
        }

        var supplier = suppliers[at];
        var isFree = supplier.DeliveryCents == 0 || supplier.FreeFromCents <= 0;
        var needed = supplier.IsRequired ? 1 : 0;
        var minimum = Math.Max(supplier.MinOrderCents, needed);
        void Next(int suppliersOpen, long fee, long goodsFrom)
        {
            least[at] = goodsFrom;
            Branch(at + 1, suppliersOpen, fees + fee, least, below, cancel);
            least[at] = 0;
        }

        if (!supplier.IsRequired && (basket >> at & 1) == 0 && !(isFree && minimum <= 0))
        {
            Next(open & ~(1 << at), 0, 0);
        }

        if (isFree)
        {
            Next(open, 0, minimum);
            return;
        }

        Next(open, supplier.DeliveryCents, minimum);
        if (supplier.FreeFromCents is { } free)
        {
            Next(open, 0, Math.Max(minimum, free));
        }
    }

    private long? Sum(int open)
    {
        if (sums.TryGetValue(open, out var known))
        {
            return known;
        }

        long? sum = 0;
        for (var p = 0; p < products.Length && sum is not null; p++)
        {
            sum += Cover(p, open)?.Cents;
        }

        sums.Add(open, sum);
        return sum;
    }

    private Cover? Cover(int product, int open)
    {
        var key = (product, open & sellers[product]);
        if (!covers.TryGetValue(key, out var cover))
        {
            cover = ProductCover.Find(products[product], key.Item2);
            covers.Add(key, cover);
        }

        return cover;
    }
}
