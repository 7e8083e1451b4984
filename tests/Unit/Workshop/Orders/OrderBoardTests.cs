using System.Diagnostics;
using Litterfall.Domain.Stock;
using Litterfall.Domain.Trade;
using Litterfall.Workshop.Orders;
using Litterfall.Workshop.Stock;

namespace Litterfall.UnitTests.Workshop.Orders;

/// <summary>All orders by week.</summary>
[Collection("timed")]
public sealed class OrderBoardTests
{
    private static readonly DateOnly Today = OrderExamples.Today;

    [Fact]
    public void Orders_stand_in_the_week_they_are_promised_for()
    {
        Order[] orders =
        [
            OrderExamples.Accepted(1, new DateOnly(2026, 9, 13)),
            OrderExamples.Accepted(2, new DateOnly(2026, 9, 7)),
            OrderExamples.Accepted(3, new DateOnly(2026, 9, 14)),
            OrderExamples.Enquiry(4),
        ];
        var board = OrderBoard.Lay(
            orders,
            [OrderExamples.Customer],
            new Dictionary<int, Litterfall.Domain.Lists.Seq<ShortGood>>(),
            Today
        );
        Assert.Equal(
            [null, new DateOnly(2026, 9, 7), new DateOnly(2026, 9, 14)],
            board.Weeks.Select(w => w.Monday)
        );
        Assert.Equal([2, 1], board.Weeks[1].Cards.Select(c => c.Order.Number));
        Assert.Equal("Pernille Voss", board.Weeks[0].Cards[0].Customer);
    }

    /// <summary>
    /// 200 orders of 60 goods each over 2,000 lots; the bound is what a reader does not wait for.
    /// </summary>
    [Fact]
    public void Two_hundred_orders_are_laid_out_within_a_tenth_of_a_second()
    {
        var goods = Enumerable
            .Range(0, 60)
            .Select(g => new QuotedGood($"good-{g}", $"good {g}", StockUnit.Liters, 1 + g, 1))
            .ToArray();
        var orders = Enumerable
            .Range(1, 200)
            .Select(n => OrderExamples.Accepted(n, Today.AddDays(n % 70), goods))
            .ToArray();
        var lots = Enumerable
            .Range(0, 2000)
            .Select(i => new Lot
            {
                Id = $"L-{i}",
                Good = $"good-{i % 60}",
                Since = Today,
                Amount = 5,
            })
            .ToArray();
        var lines = lots.Select(l => new Movement
        {
            Lot = l.Id,
            Kind = MovementKind.Received,
            Amount = 5,
            Day = Today,
            Who = "Tobin",
        })
            .ToArray();
        var supply = new ShopSupply([], [], [], []);
        var stock = StockBook.Empty.With(lots, lines.Select((l, i) => l with { Id = i + 1 }));
        var best = TimeSpan.MaxValue;
        for (var i = 0; i < 5; i++)
        {
            var start = Stopwatch.GetTimestamp();
            var lacking = GoodShortage.Find(orders, StockPicture.Read(stock, Today), supply, Today);
            var board = OrderBoard.Lay(orders, [OrderExamples.Customer], lacking, Today);
            Assert.Equal(200, board.Weeks.Sum(w => w.Cards.Count));
            var took = Stopwatch.GetElapsedTime(start);
            best = took < best ? took : best;
        }

        TestContext.Current.TestOutputHelper?.WriteLine($"{best.TotalMilliseconds:0.0} ms");
        Assert.True(best < TimeSpan.FromMilliseconds(100), $"{best.TotalMilliseconds} ms");
    }
}
