using System.Globalization;
using Litterfall.Domain.Trade;
using Litterfall.Store;
using Litterfall.Web.Shop.Stock;
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

    /// <summary>The board of all orders that a filter lets pass.</summary>
    /// <param name="store">The store.</param>
    /// <param name="shelf">The book of stock.</param>
    /// <param name="isShown">The filter.</param>
    /// <param name="cancel">Who asked has left.</param>
    public static async Task<OrderBoard> BoardAsync(
        BenchStore store,
        StockShelf shelf,
        Func<Order, bool> isShown,
        CancellationToken cancel = default
    )
    {
        var today = shelf.Today;
        var orders = await AllAsync<Order>(store, cancel);
        var lacking = GoodShortage.Find(
            orders,
            StockPicture.Read(await shelf.BookAsync(cancel), today),
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
