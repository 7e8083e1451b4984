using Litterfall.Domain.Lists;
using Litterfall.Domain.Trade;
using Litterfall.Workshop.CuttingRoom;
using Litterfall.Workshop.Orders;

namespace Litterfall.Workshop.Supplying;

/// <summary>What all open orders need of one good, against what is there and what is coming.</summary>
/// <param name="Good">The good.</param>
/// <param name="Needed">Still to go into open orders, in its unit.</param>
/// <param name="OnHand">May be used today.</param>
/// <param name="Coming">Ordered from suppliers and not here yet.</param>
/// <param name="Orders">Numbers of the orders that need it.</param>
public sealed record NetNeed(Good Good, double Needed, double OnHand, double Coming, Seq<int> Orders)
{
    private const double Rounding = 1e-9;

    /// <summary>Offers that a cutting plan buys by; empty where any will do.</summary>
    public Seq<string> Offers { get; init; } = [];

    /// <summary>
    /// What must be bought so that every order is served and the minimum stays on the shelf.
    /// </summary>
    public double ToBuy
    {
        get
        {
            var net = Needed + Good.ReorderAt - OnHand - Coming;
            return net > Rounding * Math.Max(1, Needed) ? net : 0;
        }
    }

    /// <summary>
    /// Needs of all accepted orders, and goods that are below their minimum without any order, by name.
    /// </summary>
    /// <param name="orders">All orders.</param>
    /// <param name="stock">The book of stock.</param>
    /// <param name="supply">What is bought from whom.</param>
    /// <param name="planned">Sheets of cutting plans, which go before the area of their parts.</param>
    public static Seq<NetNeed> Read(
        IEnumerable<Order> orders,
        StockPicture stock,
        ShopSupply supply,
        Seq<PlannedNeed> planned
    )
    {
        var goods = supply.Goods.ToDictionary(g => g.Key, StringComparer.Ordinal);
        var coming = OnTheWay(supply);
        var plans = planned.ToDictionary(p => p.Good, StringComparer.Ordinal);
        var needs = orders
            .Where(o => o.State is OrderState.Accepted or OrderState.InWork)
            .SelectMany(o => Missing(o, stock))
            .Select(n => Unplanned(n, plans))
            .ToLookup(n => n.Good.Good, StringComparer.Ordinal);
        var named = needs.Select(n => Known(goods, n.First().Good));
        return
        [
            .. named
                .Concat(goods.Values.Where(g => g.ReorderAt > 0))
                .DistinctBy(g => g.Key)
                .OrderBy(g => g.Name, StringComparer.OrdinalIgnoreCase)
                .Select(g => new NetNeed(
                    g,
                    needs[g.Key].Sum(n => n.Amount) + (plans.GetValueOrDefault(g.Key)?.Amount ?? 0),
                    stock.OnHand(g.Key),
                    coming.GetValueOrDefault(g.Key),
                    [.. needs[g.Key].Select(n => n.Order).Distinct().Order()]
                )
                {
                    Offers = plans.GetValueOrDefault(g.Key)?.Offers ?? [],
                }),
        ];
    }

    /// <summary>What is in a plan comes out of its sheets.</summary>
    private static (int Order, QuotedGood Good, double Amount) Unplanned(
        (int Order, QuotedGood Good, double Amount) need,
        Dictionary<string, PlannedNeed> plans
    ) =>
        plans.GetValueOrDefault(need.Good.Good)?.Parts.GetValueOrDefault(need.Order) is > 0 and var parts
            ? need with
            {
                Amount = Math.Max(0, need.Amount - parts),
            }
            : need;

    private static Good Known(Dictionary<string, Good> goods, QuotedGood good) =>
        goods.GetValueOrDefault(good.Good)
        ?? new Good
        {
            Key = good.Good,
            Name = good.Name,
            Kind = GoodKind.Equipment,
            Unit = good.Unit,
        };

    private static IEnumerable<(int Order, QuotedGood Good, double Amount)> Missing(
        Order order,
        StockPicture stock
    )
    {
        var used = stock.UsedBy(order.Number);
        return order
            .Goods.GroupBy(g => g.Good, StringComparer.Ordinal)
            .Select(g =>
                (
                    order.Number,
                    g.First(),
                    Math.Max(0, g.Sum(one => one.Amount) - used.GetValueOrDefault(g.Key).Amount)
                )
            )
            .Where(n => n.Item3 > Rounding);
    }

    private static Dictionary<string, double> OnTheWay(ShopSupply supply)
    {
        var offers = supply.Offers.ToDictionary(o => o.Key, StringComparer.Ordinal);
        return supply
            .Purchases.Where(p => p.State is PurchaseState.Planned or PurchaseState.Ordered)
            .SelectMany(p => p.Lines)
            .Where(l => offers.ContainsKey(l.Offer) && l.Packs > l.Came)
            .GroupBy(l => offers[l.Offer].Good, StringComparer.Ordinal)
            .ToDictionary(
                g => g.Key,
                g => g.Sum(l => (l.Packs - l.Came) * offers[l.Offer].Amount),
                StringComparer.Ordinal
            );
    }
}
