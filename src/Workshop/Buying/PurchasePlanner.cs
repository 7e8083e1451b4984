using Litterfall.Domain.Lists;

namespace Litterfall.Workshop.Buying;

/// <summary>
/// The cheapest purchase of all needs from several suppliers with price breaks, minimum orders and free
/// delivery. Each supplier is not used, paid for, or free; for each such state the products are independent
/// unless a sum must be reached, and most states are ruled out by their bound. What is left goes to a solver.
/// </summary>
public sealed class PurchasePlanner
{
    private readonly PurchaseCase asked;
    private readonly PackProduct[] products;
    private Basket? best;

    private PurchasePlanner(PurchaseCase asked)
    {
        this.asked = asked;
        products = PackProduct.All(asked);
    }

    private long Below => best?.Cents ?? Ceiling;

    private long Ceiling => asked.BudgetCents is { } budget ? budget + 1 : Unlimited;

    /// <summary>No purchase comes near it, and sums of it do not overflow.</summary>
    private const long Unlimited = 1L << 52;

    /// <summary>Finds the cheapest purchase; the same case gives the same purchase.</summary>
    /// <param name="asked">At most 20 suppliers; names that offers use are known; breaks rise.</param>
    /// <param name="cancel">Ends the search; the best purchase found by then is told.</param>
    /// <returns>The plan, or why there is none.</returns>
    /// <exception cref="OperationCanceledException">Ended before any purchase was found.</exception>
    public static (PurchasePlan? Plan, PurchaseRefusal? Refusal) Find(
        PurchaseCase asked,
        CancellationToken cancel = default
    )
    {
        var planner = new PurchasePlanner(asked);
        return planner.Uncovered() is { } refusal ? (null, refusal) : planner.Find(cancel);
    }

    private (PurchasePlan?, PurchaseRefusal?) Find(CancellationToken cancel)
    {
        var leaves = SupplierStates.List(asked.Suppliers, products, Unlimited, cancel);
        foreach (var leaf in leaves)
        {
            Take(leaf.Covers.SelectMany(c => c.Taken).ToArray());
            Take(ToppedUp(leaf));
        }

        long bound = Below;
        foreach (var leaf in leaves)
        {
            if (leaf.Bound >= Below)
            {
                break;
            }

            try
            {
                var result = Search(leaf, cancel);
                if (result.Basket is { } found)
                {
                    Take(found.Taken);
                }

                if (result.IsDone)
                {
                    continue;
                }

                bound = Math.Min(bound, result.Bound);
            }
            catch (OperationCanceledException) when (best is not null)
            {
                bound = Math.Min(bound, leaf.Bound);
            }

            break;
        }

        bound = Math.Min(bound, Below);
        return best is null ? (null, Impossible(cancel)) : (Told(best, bound), null);
    }

    private void Take((PackOffer Offer, int Packs)[] taken)
    {
        if (Basket.Sum(asked.Suppliers, taken) is { } basket && basket.Cents < Below)
        {
            best = basket;
        }
    }

    /// <summary>Where a sum is not reached, the packs that reach it for the least, one kind at each supplier.</summary>
    private (PackOffer, int)[] ToppedUp(StateLeaf leaf)
    {
        var taken = leaf.Covers.SelectMany(c => c.Taken).ToDictionary(t => t.Offer, t => t.Packs);
        var goods = Basket.Goods(asked.Suppliers.Count, taken.Select(t => (t.Key, t.Value)));
        for (var s = 0; s < leaf.Least.Length; s++)
        {
            if ((goods[s] ?? 0) >= leaf.Least[s])
            {
                continue;
            }

            var missing = leaf.Least[s] - (goods[s] ?? 0);
            var filler = products
                .SelectMany(p => p.Offers.Where(o => o.Supplier == s && p.Most == long.MaxValue))
                .Select(o => (Offer: o, Packs: Filling(o, taken.GetValueOrDefault(o), missing)))
                .Where(f => f.Packs > 0)
                .OrderBy(f => f.Offer.Offer.Cents(f.Packs) - f.Offer.Offer.Cents(taken.GetValueOrDefault(f.Offer)))
                .ThenBy(f => f.Offer.Index)
                .FirstOrDefault();
            if (filler.Offer is not null)
            {
                taken[filler.Offer] = filler.Packs;
            }
        }

        return [.. taken.Select(t => (t.Key, t.Value))];
    }

    /// <summary>Packs of an offer that bring so much more money than those taken; 0 for none.</summary>
    private static int Filling(PackOffer offer, int taken, long missing)
    {
        if (offer.LowestCents == 0)
        {
            return 0;
        }

        var wanted = missing + (offer.Offer.Cents(taken) ?? 0);
        foreach (var step in offer.Offer.Breaks.Reverse())
        {
            var packs = Math.Max(Math.Max(step.FromPacks, taken), (wanted + step.Cents - 1) / Math.Max(1, step.Cents));
            if (packs <= Math.Min(offer.Most, int.MaxValue) && offer.Offer.Cents((int)packs) >= wanted)
            {
                return (int)packs;
            }
        }

        return 0;
    }

    private LeafResult Search(StateLeaf leaf, CancellationToken cancel)
    {
        var cheapest = leaf.Covers.SelectMany(c => c.Taken).ToArray();
        var goods = Basket.Goods(asked.Suppliers.Count, cheapest);
        if (Enumerable.Range(0, goods.Length).All(s => (goods[s] ?? 0) >= leaf.Least[s]))
        {
            return new LeafResult(Basket.Sum(asked.Suppliers, cheapest), leaf.Bound, true);
        }

        cancel.ThrowIfCancellationRequested();
        var room = Below - 1 - leaf.Bound;
        List<Column>?[] columns =
        [
            .. products.Select((p, i) => LeafColumns.Find(p, leaf, leaf.Covers[i].Cents + room)),
        ];
        if (columns.Any(c => c is { Count: 0 }))
        {
            return new LeafResult(null, Below, true);
        }

        if (columns.All(c => c is not null))
        {
            var (bound, narrowed) = LeafPrices.Narrow(
                columns!,
                [.. leaf.Least.Where(l => l > 0)],
                leaf.Fees,
                Below
            );
            if (bound > Below - 1)
            {
                return new LeafResult(null, Below, true);
            }

            columns = narrowed;
        }

        return LeafModel.Solve((asked.Suppliers, products), leaf, columns, Below, cancel);
    }

    /// <summary>A product that no offers cover.</summary>
    private PurchaseRefusal? Uncovered()
    {
        foreach (var product in products)
        {
            var name = product.Product.Name;
            if (product.Need > 0 && product.Offers.Length == 0)
            {
                return new PurchaseRefusal("products", $"no supplier offers {name}", $"an offer of {name}");
            }

            if (ProductCover.Find(product, -1) is null)
            {
                var limit = product.Product.MostLiters is { } most
                    ? FormattableString.Invariant($" and no more than {most:0.###} L")
                    : "";
                return new PurchaseRefusal(
                    "products",
                    FormattableString.Invariant($"no packs make {product.Product.Net:0.###} L of {name}{limit}"),
                    $"packs of {name} that fit the need"
                );
            }
        }

        return null;
    }

    /// <summary>Why no purchase does: it costs more than the budget, or minimum orders are out of reach.</summary>
    private PurchaseRefusal Impossible(CancellationToken cancel)
    {
        if (asked.BudgetCents is { } budget)
        {
            var (free, refusal) = Find(asked with { BudgetCents = null }, cancel);
            return refusal
                ?? new PurchaseRefusal(
                    "budgetCents",
                    FormattableString.Invariant($"the cheapest purchase costs {free!.TotalCents / 100m:0.00} and ")
                        + FormattableString.Invariant($"the budget is {budget / 100m:0.00}"),
                    "a budget that covers it, or less need"
                );
        }

        var far = asked.Suppliers.Where(s => s.MinOrderCents > 0 || s.IsRequired).Select(s => s.Name);
        return new PurchaseRefusal(
            "suppliers",
            $"what may be bought does not reach the minimum order of {string.Join(" or ", far)}, "
                + "and nobody else sells the rest",
            "a lower minimum order, more need, or another supplier"
        );
    }

    private PurchasePlan Told(Basket basket, long bound)
    {
        var taken = basket.Taken.OrderBy(t => t.Offer.Index).ToList();
        var goods = Basket.Goods(asked.Suppliers.Count, taken);
        var units = taken.ToLookup(t => t.Offer.Offer.Product, t => t.Packs * t.Offer.Offer.PackLiters);
        return new PurchasePlan(
            bound >= basket.Cents,
            Math.Min(bound, basket.Cents),
            [.. taken.Select(t => new PurchaseLine(t.Offer.Offer, t.Packs, t.Offer.Offer.Cents(t.Packs)!.Value))],
            [
                .. asked
                    .Suppliers.Select((s, i) => (Supplier: s, Goods: goods[i]))
                    .Where(s => s.Goods is not null)
                    .Select(s => new PurchaseDelivery(
                        s.Supplier,
                        s.Goods!.Value,
                        Basket.Delivery(s.Supplier, s.Goods.Value)
                    )),
            ],
            [
                .. asked.Products.Select(p =>
                {
                    var left = units[p.Name].Sum() + p.Stock - p.Reserved - p.Minimum
                        - (p.Need * (1.0 + (p.LossPercent / 100.0)));
                    return new PurchaseLeftover(p, Math.Max(0.0, Math.Round(left, 9)));
                }),
            ]
        );
    }
}
