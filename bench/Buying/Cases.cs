using Litterfall.Domain.Lists;
using Litterfall.Workshop.Buying;

namespace Litterfall.Bench.Buying;

/// <summary>
/// Made-up purchases: packs get cheaper by the liter with size, breaks, deliveries, minimum orders.
/// </summary>
internal static class Cases
{
    private static readonly double[] Sizes = [2, 2.5, 5, 10, 20, 25, 50, 70];
    private static readonly long[] Deliveries = [490, 690, 990, 1250];
    private static readonly long[] FreeFrom = [5000, 7500, 12_000];
    private static readonly long[] Minimum = [0, 2000, 2500, 4000];
    private static readonly int[] Thresholds = [3, 4, 5, 6, 10];

    /// <summary>One case.</summary>
    /// <param name="seed">Names the case.</param>
    /// <param name="goods">Products.</param>
    /// <param name="sellers">Suppliers.</param>
    /// <param name="scale">How far thresholds are raised.</param>
    public static PurchaseCase Draw(int seed, int goods, int sellers, double scale)
    {
        var random = new Random(seed);
        T One<T>(T[] from) => from[random.Next(from.Length)];
        Seq<PurchaseSupplier> suppliers =
        [
            .. Enumerable
                .Range(1, sellers)
                .Select(s => new PurchaseSupplier(
                    $"S{s}",
                    One(Deliveries),
                    (long)(scale * One(FreeFrom)),
                    (long)(scale * One(Minimum))
                )),
        ];
        var products = new List<PurchaseProduct>();
        var offers = new List<PurchaseOffer>();
        for (var p = 1; p <= goods; p++)
        {
            products.Add(new PurchaseProduct($"M{p}", random.Next(10, 160), random.Next(0, 14)));
            var perLiter = 20 + (60 * random.NextDouble());
            var given = random.Next(sellers);
            for (var s = 0; s < sellers; s++)
            {
                if (s != given && random.NextDouble() < 0.25)
                {
                    continue;
                }

                foreach (var size in Sizes.OrderBy(_ => random.Next()).Take(random.Next(1, 4)))
                {
                    var price = (long)(
                        perLiter * Math.Pow(size, 0.85) * (0.85 + (0.4 * random.NextDouble())) * 2
                    );
                    var breaks = new List<PriceBreak> { new(1, price) };
                    if (random.NextDouble() < 0.5)
                    {
                        breaks.Add(
                            new(One(Thresholds), (long)(price * (0.86 + (0.1 * random.NextDouble()))))
                        );
                    }

                    offers.Add(new PurchaseOffer($"S{s + 1}", $"M{p}", size, [.. breaks]));
                }
            }
        }

        return new PurchaseCase
        {
            Suppliers = suppliers,
            Products = [.. products],
            Offers = [.. offers],
        };
    }

    /// <summary>Four suppliers whose prices are nearly the same, so that the sums decide.</summary>
    /// <param name="seed">Names the case.</param>
    public static PurchaseCase DrawAlike(int seed)
    {
        var random = new Random(seed);
        double[] sizes = [5, 12.5, 40];
        var products = Enumerable
            .Range(0, 60)
            .Select(p => new PurchaseProduct($"M{p}", 10 + random.Next(90), 3))
            .ToList();
        return new PurchaseCase
        {
            Suppliers =
            [
                .. Enumerable.Range(1, 4).Select(s => new PurchaseSupplier($"S{s}", 690, 40_000, 15_000)),
            ],
            Products = [.. products],
            Offers =
            [
                .. from product in products
                from s in Enumerable.Range(1, 4)
                from size in sizes
                select new PurchaseOffer(
                    $"S{s}",
                    product.Name,
                    size,
                    [new(1, (long)(size * (40 + random.Next(20)))), new(6, (long)(size * 38))]
                ),
            ],
        };
    }

    /// <summary>
    /// What the rule of thumb pays: each product at the lowest price by the liter, whole packs of it; null
    /// where a minimum order is missed.
    /// </summary>
    public static long? PerLiter(PurchaseCase asked)
    {
        var goods = new Dictionary<string, long>(StringComparer.Ordinal);
        foreach (var product in asked.Products.Where(p => p.Net > 0))
        {
            var (offer, packs) = asked
                .Offers.Where(o => o.Product == product.Name)
                .Select(o => (Offer: o, Packs: (int)Math.Ceiling(product.Net / o.PackLiters)))
                .MinBy(o => o.Offer.Cents(o.Packs) / (o.Packs * o.Offer.PackLiters));
            goods[offer.Supplier] = goods.GetValueOrDefault(offer.Supplier) + offer.Cents(packs)!.Value;
        }

        var used = asked.Suppliers.Where(s => goods.ContainsKey(s.Name)).ToList();
        return used.Exists(s => goods[s.Name] < s.MinOrderCents)
            ? null
            : used.Sum(s => goods[s.Name] + (goods[s.Name] >= s.FreeFromCents ? 0 : s.DeliveryCents));
    }
}
