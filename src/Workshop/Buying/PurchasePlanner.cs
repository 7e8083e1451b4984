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
    private readonly Incumbent incumbent;

    private PurchasePlanner(PurchaseCase asked)
    {
        this.asked = asked;
        products = PackProduct.All(asked);
        incumbent = new(asked.Suppliers, asked.BudgetCents is { } budget ? budget + 1 : Unlimited);
    }

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
            var cheapest = leaf.Covers.SelectMany(c => c.Taken).ToArray();
            incumbent.Take(cheapest);
            incumbent.Take(TopUp.Fill((asked.Suppliers, products), leaf, cheapest));
        }

        long bound = Unlimited;
        foreach (var leaf in leaves.TakeWhile(l => l.Bound < incumbent.Below))
        {
            if (!Search(leaf, cancel).IsDone)
            {
                // Leaves come by rising bounds, so that those after it are no cheaper than this one's.
                bound = leaf.Bound;
                break;
            }
        }

        return incumbent.Best is { } best
            ? (Told(best, Math.Min(bound, best.Cents)), null)
            : (null, Impossible(cancel));
    }

    private LeafResult Search(StateLeaf leaf, CancellationToken cancel)
    {
        var goods = Basket.Goods(asked.Suppliers.Count, leaf.Covers.SelectMany(c => c.Taken));
        if (Enumerable.Range(0, goods.Length).All(s => (goods[s] ?? 0) >= leaf.Least[s]))
        {
            // The cheapest packs are a purchase already, and no other in these states is cheaper.
            return new LeafResult(leaf.Bound, true);
        }

        try
        {
            return LeafSearch.Run((asked.Suppliers, products), leaf, incumbent, cancel);
        }
        catch (OperationCanceledException) when (incumbent.Best is not null)
        {
            return new LeafResult(leaf.Bound, false);
        }
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
                    FormattableString.Invariant(
                        $"no packs make {product.Product.Net:0.###} L of {name}{limit}"
                    ),
                    $"packs of {name} that fit the need"
                );
            }
        }

        return null;
    }

    /// <summary>
    /// Why no purchase does: it costs more than the budget, or minimum orders are out of reach.
    /// </summary>
    private PurchaseRefusal Impossible(CancellationToken cancel)
    {
        if (asked.BudgetCents is { } budget)
        {
            var (free, refusal) = Find(asked with { BudgetCents = null }, cancel);
            return refusal
                ?? new PurchaseRefusal(
                    "budgetCents",
                    FormattableString.Invariant(
                        $"the cheapest purchase costs {free!.TotalCents / 100m:0.00} and "
                    ) + FormattableString.Invariant($"the budget is {budget / 100m:0.00}"),
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
            [
                .. taken.Select(t => new PurchaseLine(
                    t.Offer.Offer,
                    t.Packs,
                    t.Offer.Offer.Cents(t.Packs)!.Value
                )),
            ],
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
                    var left =
                        units[p.Name].Sum()
                        + p.Stock
                        - p.Reserved
                        - p.Minimum
                        - (p.Need * (1.0 + (p.LossPercent / 100.0)));
                    return new PurchaseLeftover(p, Math.Max(0.0, Math.Round(left, 9)));
                }),
            ]
        );
    }
}
