using Litterfall.Domain.Trade;
using Litterfall.Store;
using Litterfall.Workshop.Orders;

namespace Litterfall.Web.Shop.Orders;

/// <summary>
/// The list of designs with the order each is in: the last that was not lost. A design in no order keeps what
/// was noted beside it.
/// </summary>
public static class OrderedDesigns
{
    /// <summary>Reads the list.</summary>
    /// <param name="store">The store.</param>
    /// <param name="isArchived">True for the archive.</param>
    /// <param name="cancel">Who asked has left.</param>
    public static async Task<IReadOnlyList<ListedDesign>> ReadAsync(
        BenchStore store,
        bool isArchived,
        CancellationToken cancel
    )
    {
        var designs = await store.DesignsAsync(isArchived, cancel);
        var orders = await OrderBook.AllAsync<Order>(store, cancel);
        if (orders.Count == 0)
        {
            return designs;
        }

        var names = (await OrderBook.AllAsync<Customer>(store, cancel)).ToDictionary(
            c => c.Key,
            c => c.Name,
            StringComparer.Ordinal
        );
        var last = orders
            .Where(o => o.State != OrderState.Lost)
            .SelectMany(o =>
                o.Items.Where(i => i.Design is not null).Select(i => (i.Design!.Value, Order: o))
            )
            .GroupBy(o => o.Value)
            .ToDictionary(g => g.Key, g => g.MaxBy(o => o.Order.Number).Order);
        return
        [
            .. designs.Select(d =>
                last.TryGetValue(d.Id, out var order)
                    ? d with
                    {
                        OrderNumber = order.Number,
                        Order = new(
                            OrderSteps.Name(order.State),
                            names.GetValueOrDefault(order.Customer) ?? order.Customer,
                            order.State == OrderState.Closed ? null : order.Promised
                        ),
                    }
                    : d
            ),
        ];
    }
}
