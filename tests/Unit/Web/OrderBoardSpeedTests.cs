using System.Diagnostics;
using Litterfall.App.Files;
using Litterfall.Domain.Stock;
using Litterfall.Domain.Trade;
using Litterfall.Store;
using Litterfall.Web;
using Litterfall.Web.Library;
using Litterfall.Web.Shop.Orders;
using Litterfall.Web.Shop.Stock;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.DependencyInjection;

namespace Litterfall.UnitTests.Web;

/// <summary>
/// The board of a busy workshop, read from its file; the bound is what a reader does not wait for.
/// </summary>
[Collection("timed")]
public sealed class OrderBoardSpeedTests : IAsyncDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("litterfall-board").FullName;

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Two_hundred_orders_are_read_and_laid_out_within_a_tenth_of_a_second()
    {
        var services = new ServiceCollection();
        BenchHost.AddStore(
            services,
            new BenchOptions(Shop.Embedded(), [], "1.0"),
            StoreFile.Contexts(Path.Combine(folder, "bench.db"))
        );
        await using var all = services.BuildServiceProvider();
        var store = all.GetRequiredService<BenchStore>();
        await store.OpenAsync(Stop);
        await store.WriteAsync(Busy(), Stop);
        var shelf = all.GetRequiredService<StockShelf>();
        var best = TimeSpan.MaxValue;
        for (var i = 0; i < 5; i++)
        {
            var start = Stopwatch.GetTimestamp();
            var board = await OrderBook.BoardAsync(store, shelf, _ => true, Stop);
            Assert.Equal(200, board.Weeks.Sum(w => w.Cards.Count));
            var took = Stopwatch.GetElapsedTime(start);
            best = took < best ? took : best;
        }

        TestContext.Current.TestOutputHelper?.WriteLine($"{best.TotalMilliseconds:0.0} ms");
        Assert.True(best < TimeSpan.FromMilliseconds(100), $"{best.TotalMilliseconds} ms");
    }

    /// <summary>200 open orders of 45 goods each, 2,000 lots.</summary>
    private static ShopChange Busy()
    {
        var today = DateOnly.FromDateTime(DateTime.Now);
        var change = new ShopChange("Ilse");
        var goods = Enumerable
            .Range(0, 45)
            .Select(g => new QuotedGood($"good-{g}", $"good {g}", StockUnit.Liters, 1 + g, 12.3456m)
            {
                Note = "bag of 20 L, 0.49 a liter, the cheapest",
            })
            .ToArray();
        for (var i = 0; i < 200; i++)
        {
            var day = today.AddDays(i % 70);
            change.KeepNumbered<Order>(
                n => new Order
                {
                    Number = n,
                    Customer = "voss",
                    State = OrderState.Accepted,
                    Promised = day,
                    Gross = 100,
                    Goods = [.. goods],
                },
                "new"
            );
        }

        for (var i = 0; i < 2000; i++)
        {
            var lot = new Lot
            {
                Id = $"LOT-{i}",
                Good = $"good-{i % 60}",
                Since = today,
                Amount = 5,
                Cost = 10,
            };
            change.Add(lot);
            change.Add(
                new Movement
                {
                    Lot = lot.Id,
                    Kind = MovementKind.Received,
                    Amount = 5,
                    Day = today,
                    Who = "Tobin",
                }
            );
        }

        return change;
    }

    /// <inheritdoc/>
    public ValueTask DisposeAsync()
    {
        SqliteConnection.ClearAllPools();
        Directory.Delete(folder, recursive: true);
        return default;
    }
}
