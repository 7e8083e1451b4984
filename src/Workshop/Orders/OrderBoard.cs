using Litterfall.Domain.Lists;
using Litterfall.Domain.Trade;

namespace Litterfall.Workshop.Orders;

/// <summary>An order on the board.</summary>
/// <param name="Order">The order.</param>
/// <param name="Customer">Name of the customer.</param>
/// <param name="Blockers">What blocks it, the worst first.</param>
public sealed record BoardCard(Order Order, string Customer, Seq<Blocker> Blockers);

/// <summary>Orders promised for one week.</summary>
/// <param name="Monday">First day of the week; null for orders without a day.</param>
/// <param name="Cards">Its orders, by day and number.</param>
public sealed record BoardWeek(DateOnly? Monday, Seq<BoardCard> Cards);

/// <summary>All orders by the week they are promised for, with what blocks each.</summary>
/// <param name="Weeks">Weeks in order; orders without a day stand first, since somebody waits.</param>
public sealed record OrderBoard(Seq<BoardWeek> Weeks)
{
    /// <summary>Lays the orders out.</summary>
    /// <param name="orders">The orders.</param>
    /// <param name="customers">Customers.</param>
    /// <param name="lacking">Short goods by number of the order.</param>
    /// <param name="today">Today.</param>
    public static OrderBoard Lay(
        IEnumerable<Order> orders,
        IEnumerable<Customer> customers,
        IReadOnlyDictionary<int, Seq<ShortGood>> lacking,
        DateOnly today
    )
    {
        var names = customers.ToDictionary(c => c.Key, c => c.Name, StringComparer.Ordinal);
        var cards = orders.Select(o => new BoardCard(
            o,
            names.GetValueOrDefault(o.Customer) ?? o.Customer,
            OrderBlocks.Find(o, lacking.GetValueOrDefault(o.Number) ?? [], today)
        ));
        return new([
            .. cards
                .GroupBy(c => c.Order.Promised is { } day ? WorkDays.Monday(day) : (DateOnly?)null)
                .OrderBy(g => g.Key ?? DateOnly.MinValue)
                .Select(g => new BoardWeek(
                    g.Key,
                    [.. g.OrderBy(c => c.Order.Promised).ThenBy(c => c.Order.Number)]
                )),
        ]);
    }
}
