using Litterfall.Domain.Lists;
using Litterfall.Domain.Trade;

namespace Litterfall.Workshop.Orders;

/// <summary>A good that is missing for an order.</summary>
/// <param name="Good">What was quoted.</param>
/// <param name="Missing">How much, in its unit, beyond what is in stock and was ordered.</param>
/// <param name="IsSheet">True for panes and sheets.</param>
/// <param name="Arrives">First day it can be here; null where no supplier has it.</param>
public sealed record ShortGood(QuotedGood Good, double Missing, bool IsSheet, DateOnly? Arrives)
{
    /// <summary>True where it is ordered from a supplier.</summary>
    public bool IsOrdered { get; init; }

    /// <summary>Day the order is promised for; null where nothing is.</summary>
    public DateOnly? Promised { get; init; }
}

/// <summary>What the workshop buys from, for the question what is short.</summary>
/// <param name="Goods">Its goods.</param>
/// <param name="Offers">What is on offer.</param>
/// <param name="Suppliers">Who offers it.</param>
/// <param name="Purchases">What was bought.</param>
public sealed record ShopSupply(
    IReadOnlyCollection<Good> Goods,
    IReadOnlyCollection<Offer> Offers,
    IReadOnlyCollection<Supplier> Suppliers,
    IReadOnlyCollection<Purchase> Purchases
);

/// <summary>
/// Which open orders lack which goods. Stock goes to the order that is promised first; what was ordered from
/// suppliers and has not come is taken when it covers the rest, with the day it is expected.
/// </summary>
public static class GoodShortage
{
    private const double Rounding = 1e-9;

    /// <summary>Short goods by number of the order; orders that lack nothing are left out.</summary>
    /// <param name="orders">All orders.</param>
    /// <param name="stock">The book of stock.</param>
    /// <param name="supply">What is bought from whom.</param>
    /// <param name="today">Today.</param>
    public static IReadOnlyDictionary<int, Seq<ShortGood>> Find(
        IEnumerable<Order> orders,
        StockPicture stock,
        ShopSupply supply,
        DateOnly today
    ) =>
        Awaited(orders, stock, supply, today)
            .Select(a => (a.Key, Short: a.Value.Where(g => !g.IsOrdered || g.Arrives > g.Promised).ToList()))
            .Where(a => a.Short.Count > 0)
            .ToDictionary(a => a.Key, a => (Seq<ShortGood>)[.. a.Short]);

    /// <summary>Goods that are not here yet, ordered or not, by number of the order.</summary>
    /// <param name="orders">All orders.</param>
    /// <param name="stock">The book of stock.</param>
    /// <param name="supply">What is bought from whom.</param>
    /// <param name="today">Today.</param>
    public static IReadOnlyDictionary<int, Seq<ShortGood>> Awaited(
        IEnumerable<Order> orders,
        StockPicture stock,
        ShopSupply supply,
        DateOnly today
    )
    {
        var leads = Leads(supply);
        var sheets = supply.Goods.Where(g => g.Kind == GoodKind.Sheet).Select(g => g.Key).ToHashSet();
        var coming = Coming(supply);
        var free = new Dictionary<string, double>(StringComparer.Ordinal);
        var found = new Dictionary<int, Seq<ShortGood>>();
        var open = orders
            .Where(o => o.State is OrderState.Accepted or OrderState.InWork)
            .OrderBy(o => o.Promised ?? DateOnly.MaxValue)
            .ThenBy(o => o.Number);
        foreach (var order in open)
        {
            var used = stock.UsedBy(order.Number);
            var lacking = new List<ShortGood>();
            foreach (var good in order.Goods)
            {
                var need = good.Amount - used.GetValueOrDefault(good.Good).Amount;
                var here = free.TryGetValue(good.Good, out var left) ? left : stock.OnHand(good.Good);
                free[good.Good] = Math.Max(0, here - Math.Max(0, need));
                var missing = need - here;
                if (missing <= Rounding * Math.Max(1, good.Amount))
                {
                    continue;
                }

                var (bought, expected) = Taken(coming, good.Good, missing);
                DateOnly? arrives =
                    bought ? expected
                    : leads.TryGetValue(good.Good, out var days) ? WorkDays.After(today, days)
                    : null;
                lacking.Add(
                    new(good, missing, sheets.Contains(good.Good), arrives)
                    {
                        IsOrdered = bought,
                        Promised = order.Promised,
                    }
                );
            }

            if (lacking.Count > 0)
            {
                found[order.Number] = [.. lacking];
            }
        }

        return found;
    }

    /// <summary>Fewest working days until a good is here.</summary>
    private static Dictionary<string, int> Leads(ShopSupply supply)
    {
        var days = supply.Suppliers.ToDictionary(s => s.Key, s => s.LeadDays, StringComparer.Ordinal);
        return supply
            .Offers.Where(o => days.ContainsKey(o.Supplier))
            .GroupBy(o => o.Good, StringComparer.Ordinal)
            .ToDictionary(
                g => g.Key,
                g => g.Min(o => o.LeadDays ?? days[o.Supplier]),
                StringComparer.Ordinal
            );
    }

    private static Dictionary<string, (double Amount, DateOnly? Expected)> Coming(ShopSupply supply)
    {
        var offers = supply.Offers.ToDictionary(o => o.Key, StringComparer.Ordinal);
        return supply
            .Purchases.Where(p => p.State == PurchaseState.Ordered)
            .SelectMany(p => p.Lines.Select(l => (Line: l, p.Expected)))
            .Where(l => offers.ContainsKey(l.Line.Offer) && l.Line.Packs > l.Line.Came)
            .GroupBy(l => offers[l.Line.Offer].Good, StringComparer.Ordinal)
            .ToDictionary(
                g => g.Key,
                g =>
                    (
                        g.Sum(l => (l.Line.Packs - l.Line.Came) * offers[l.Line.Offer].Amount),
                        g.Max(l => l.Expected)
                    ),
                StringComparer.Ordinal
            );
    }

    private static (bool IsBought, DateOnly? Expected) Taken(
        Dictionary<string, (double Amount, DateOnly? Expected)> coming,
        string good,
        double missing
    )
    {
        if (!coming.TryGetValue(good, out var on) || on.Amount < missing * (1 - Rounding))
        {
            return (false, null);
        }

        coming[good] = (on.Amount - missing, on.Expected);
        return (true, on.Expected);
    }
}
