using Litterfall.Workshop.Buying;

namespace Litterfall.UnitTests.Workshop.Buying;

/// <summary>
/// The cheapest purchase by trying everything: all packs of each product, then all sums spent by supplier.
/// Written from the rules alone: whole packs, all-units breaks, delivery unless free, minimum orders.
/// </summary>
internal static class PurchaseOracle
{
    /// <summary>Cents; null where nothing is allowed.</summary>
    /// <param name="asked">The case.</param>
    /// <param name="extra">Packs tried beyond those that cover a need alone.</param>
    public static long? Cheapest(PurchaseCase asked, int extra)
    {
        var names = asked.Suppliers.Select(s => s.Name).ToList();
        var sums = new HashSet<string> { string.Join(',', names.Select(_ => "-1")) };
        foreach (var product in asked.Products)
        {
            var ways = Ways(asked, product, names, extra);
            var next = new HashSet<string>();
            foreach (var sum in sums)
            {
                var spent = sum.Split(',').Select(long.Parse).ToArray();
                foreach (var way in ways)
                {
                    next.Add(string.Join(',', spent.Zip(way, Add)));
                }
            }

            sums = next;
        }

        return sums.Select(s => Total(asked, [.. s.Split(',').Select(long.Parse)])).Min();
    }

    /// <summary>Nothing bought is −1, which is not the same as nothing paid.</summary>
    private static long Add(long a, long b) =>
        a < 0 ? b
        : b < 0 ? a
        : a + b;

    private static List<long[]> Ways(
        PurchaseCase asked,
        PurchaseProduct product,
        List<string> names,
        int extra
    )
    {
        var ways = new Dictionary<string, (long[] Spent, double Liters)>();
        void Keep(Dictionary<string, (long[], double)> into, long[] spent, double liters)
        {
            var key = string.Join(',', spent);
            if (!into.TryGetValue(key, out var known) || known.Item2 < liters)
            {
                into[key] = (spent, liters);
            }
        }

        Keep(ways, [.. names.Select(_ => -1L)], 0.0);
        foreach (var offer in asked.Offers.Where(o => o.Product == product.Name))
        {
            var next = new Dictionary<string, (long[], double)>();
            var most = (int)Math.Ceiling(product.Net / offer.PackLiters) + extra;
            foreach (var (spent, liters) in ways.Values)
            {
                for (var packs = 0; packs <= Math.Max(most, offer.Breaks[^1].FromPacks); packs++)
                {
                    var price = offer.Breaks.LastOrDefault(b => b.FromPacks <= packs);
                    if (packs > 0 && price is null)
                    {
                        continue;
                    }

                    long[] after = [.. spent];
                    var s = names.IndexOf(offer.Supplier);
                    after[s] = packs == 0 ? spent[s] : Math.Max(0, spent[s]) + (packs * price!.Cents);
                    Keep(next, after, liters + (packs * offer.PackLiters));
                }
            }

            ways = next;
        }

        return [.. ways.Values.Where(w => w.Liters >= product.Net - 1e-9).Select(w => w.Spent)];
    }

    private static long? Total(PurchaseCase asked, long[] spent)
    {
        var total = 0L;
        for (var s = 0; s < spent.Length; s++)
        {
            var supplier = asked.Suppliers[s];
            if (spent[s] < 0)
            {
                continue;
            }

            if (spent[s] < supplier.MinOrderCents)
            {
                return null;
            }

            total += spent[s];
            total += supplier.FreeFromCents is { } free && spent[s] >= free ? 0 : supplier.DeliveryCents;
        }

        return total;
    }
}
