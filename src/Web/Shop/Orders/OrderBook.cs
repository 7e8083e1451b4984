using System.Globalization;
using Litterfall.Domain.Stock;
using Litterfall.Domain.Trade;
using Litterfall.Store;
using Litterfall.Workshop.Orders;

namespace Litterfall.Web.Shop.Orders;

/// <summary>What pages of orders read from the store, and how what they do is written.</summary>
public static class OrderBook
{
    private const string WhoChoice = "shop.who";
    private const string Nobody = "workshop";

    /// <summary>Figures of the workshop before anybody entered them.</summary>
    private static readonly ShopTerms Blank = new() { Name = "Workshop" };

    /// <summary>The terms of the workshop, and whether somebody entered them.</summary>
    public static async Task<(ShopTerms Terms, bool IsEntered)> TermsAsync(
        BenchStore store,
        CancellationToken cancel = default
    ) =>
        await store.RecordAsync<ShopTerms>(ShopTerms.Key, cancel) is { } kept
            ? (kept.Value, true)
            : (Blank, false);

    /// <summary>Goods, offers, suppliers and purchases.</summary>
    public static async Task<ShopSupply> SupplyAsync(BenchStore store, CancellationToken cancel = default) =>
        new(
            await AllAsync<Good>(store, cancel),
            await AllAsync<Offer>(store, cancel),
            await AllAsync<Supplier>(store, cancel),
            await AllAsync<Purchase>(store, cancel)
        );

    /// <summary>The book of stock as it stands.</summary>
    public static async Task<StockPicture> StockAsync(
        BenchStore store,
        DateOnly today,
        CancellationToken cancel = default
    ) => StockPicture.Read(await store.LotsAsync(cancel), await store.MovementsAsync(0, cancel), today);

    /// <summary>The board of all orders that a filter lets pass.</summary>
    /// <param name="store">The store.</param>
    /// <param name="today">Today.</param>
    /// <param name="isShown">The filter.</param>
    /// <param name="cancel">Who asked has left.</param>
    public static async Task<OrderBoard> BoardAsync(
        BenchStore store,
        DateOnly today,
        Func<Order, bool> isShown,
        CancellationToken cancel = default
    )
    {
        var orders = await AllAsync<Order>(store, cancel);
        var lacking = GoodShortage.Find(
            orders,
            await StockAsync(store, today, cancel),
            await SupplyAsync(store, cancel),
            today
        );
        return OrderBoard.Lay(orders.Where(isShown), await AllAsync<Customer>(store, cancel), lacking, today);
    }

    /// <summary>All records of a kind.</summary>
    public static async Task<List<T>> AllAsync<T>(BenchStore store, CancellationToken cancel = default) =>
        [.. (await store.RecordsAsync<T>(cancel)).Select(k => k.Value)];

    /// <summary>Who writes: the name chosen at the bench.</summary>
    public static async Task<string> WhoAsync(BenchStore store) =>
        (await store.ChoicesAsync()).GetValueOrDefault(WhoChoice) is { Length: > 0 } who ? who : Nobody;

    /// <summary>Key of an order's record.</summary>
    public static string Key(int order) => order.ToString(CultureInfo.InvariantCulture);
}
