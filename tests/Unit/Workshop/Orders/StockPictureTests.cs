using Litterfall.Domain.Stock;
using Litterfall.Workshop.Orders;

namespace Litterfall.UnitTests.Workshop.Orders;

/// <summary>What the book says of goods; own worked examples.</summary>
public sealed class StockPictureTests
{
    private static readonly DateOnly Day = new(2026, 9, 1);

    /// <summary>
    /// 10 L at 4.00 and 20 L at 10.00, 4 L of the first used into tank T-1 of order 5: 6 L at 0.40 and 20 L
    /// at
    /// 0.50 are left. The next 16 L cost 6 × 0.40 + 10 × 0.50 = 7.40; the order took 4 × 0.40 = 1.60.
    /// </summary>
    [Fact]
    public void First_in_goes_out_first_at_what_was_paid()
    {
        var stock = OrderExamples.Stock(
            [
                Lot("NEW", 20, 10, Day.AddDays(2)),
                Lot("OLD", 10, 4, Day),
                Lot("T-1", 1, 0, Day) with
                {
                    Good = "tank",
                    Order = 5,
                },
            ],
            [In("OLD", 10), In("NEW", 20), In("T-1", 1), Out("OLD", 4, "T-1")],
            Day.AddDays(3)
        );
        Assert.Equal(26, stock.OnHand("bark"), 1e-9);
        var first = stock.FirstIn("bark", 16);
        Assert.Equal((16.0, 7.40m), (first.Amount, first.Cost));
        Assert.Equal(26, stock.FirstIn("bark", 100).Amount, 1e-9);
        Assert.Equal(new UsedGood(4, 1.60m), stock.UsedBy(5)["bark"]);
        Assert.Equal(0, stock.OnHand("tank"));
        Assert.Empty(stock.UsedBy(6));
    }

    [Fact]
    public void What_is_held_expired_or_in_quarantine_is_no_stock()
    {
        var stock = OrderExamples.Stock(
            [
                Lot("HELD", 5, 1, Day),
                Lot("OLD", 5, 1, Day) with
                {
                    Expires = Day.AddDays(1),
                },
                Lot("NEW", 5, 1, Day) with
                {
                    QuarantinedUntil = Day.AddDays(30),
                },
            ],
            [
                In("HELD", 5),
                In("OLD", 5),
                In("NEW", 5),
                new Movement
                {
                    Lot = "HELD",
                    Kind = MovementKind.Held,
                    Amount = 0,
                    Day = Day,
                    Who = "Ilse",
                },
            ],
            Day.AddDays(2)
        );
        Assert.Equal(0, stock.OnHand("bark"));
    }

    [Fact]
    public void A_line_taken_back_gives_the_order_its_cost_back()
    {
        var stock = OrderExamples.Stock(
            [Lot("OLD", 10, 4, Day)],
            [In("OLD", 10), Out("OLD", 4, "12"), Out("OLD", 4, "12") with { Reverses = 2 }],
            Day
        );
        Assert.Equal(new UsedGood(0, 0), stock.UsedBy(12)["bark"]);
        Assert.Equal(10, stock.OnHand("bark"), 1e-9);
    }

    private static Lot Lot(string id, double amount, decimal cost, DateOnly since) =>
        new()
        {
            Id = id,
            Good = "bark",
            Since = since,
            Amount = amount,
            Cost = cost,
        };

    private static Movement In(string lot, double amount) =>
        new()
        {
            Lot = lot,
            Kind = MovementKind.Received,
            Amount = amount,
            Day = Day,
            Who = "Tobin",
        };

    private static Movement Out(string lot, double amount, string into) =>
        new()
        {
            Lot = lot,
            Kind = MovementKind.Used,
            Amount = amount,
            Into = into,
            Day = Day,
            Who = "Ilse",
        };
}
