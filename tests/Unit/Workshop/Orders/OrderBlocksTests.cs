using Litterfall.Domain.Lists;
using Litterfall.Domain.Stock;
using Litterfall.Domain.Trade;
using Litterfall.Workshop.Orders;

namespace Litterfall.UnitTests.Workshop.Orders;

/// <summary>What blocks an order; own worked examples.</summary>
public sealed class OrderBlocksTests
{
    private static readonly DateOnly Today = OrderExamples.Today;

    private static readonly Supplier North = new()
    {
        Key = "north",
        Name = "North",
        Currency = "EUR",
        LeadDays = 3,
    };

    private static BlockKind[] Kinds(Order order, Seq<ShortGood>? lacking = null) =>
        [.. OrderBlocks.Find(order, lacking ?? [], Today).Select(b => b.Kind)];

    [Fact]
    public void Each_state_has_its_blockers()
    {
        var day = Today.AddDays(20);
        Assert.Equal([BlockKind.NoQuote, BlockKind.NoDay], Kinds(OrderExamples.Enquiry()));
        var quoted = OrderExamples.Enquiry(7, day) with
        {
            State = OrderState.Quoted,
            QuotedUntil = Today.AddDays(-1),
        };
        Assert.Equal([BlockKind.QuoteExpired], Kinds(quoted));
        Assert.Empty(Kinds(quoted with { QuotedUntil = Today }));
        var accepted = OrderExamples.Accepted(7, day) with { Deposit = 35.70m };
        Assert.Equal([BlockKind.Deposit], Kinds(accepted));
        var part = accepted with { Payments = [new Payment(Today, 20, "", "Tobin")] };
        Assert.Contains(
            "15.70 of the deposit",
            OrderBlocks.Find(part, [], Today)[0].Words,
            StringComparison.Ordinal
        );
        Assert.Empty(Kinds(accepted with { Payments = [new Payment(Today, 35.70m, "", "Tobin")] }));
        Assert.Equal([BlockKind.Late], Kinds(OrderExamples.Accepted(7, Today.AddDays(-1))));
        Assert.Equal([BlockKind.Written], Kinds(OrderExamples.Accepted(7, day) with { Blocked = "waits" }));
        Assert.Empty(Kinds(OrderExamples.Accepted(7, Today.AddDays(-9)) with { State = OrderState.Closed }));
    }

    /// <summary>
    /// 30 L in stock; the order promised first takes 20, the next lacks 10 of its 20. Three working days from
    /// Thursday 3 September are Tuesday 8 September.
    /// </summary>
    [Fact]
    public void Stock_goes_to_the_order_that_is_promised_first()
    {
        var stock = OrderExamples.Stock([Lot("BARK-1", 30, 12)], [Line("BARK-1", 30)], Today);
        Order[] orders =
        [
            OrderExamples.Accepted(1, Today.AddDays(30), OrderExamples.Bark(20)),
            OrderExamples.Accepted(2, Today.AddDays(10), OrderExamples.Bark(20)),
        ];
        var found = GoodShortage.Find(orders, stock, Supply(), Today);
        Assert.Equal([1], found.Keys);
        Assert.Equal(10, found[1][0].Missing, 1e-9);
        Assert.Equal(new DateOnly(2026, 9, 8), found[1][0].Arrives);
        Assert.Contains(
            "Missing: 10 L of fine bark. Ordered today they come by 8 Sep 2026.",
            OrderBlocks.Find(orders[0], found[1], Today)[0].Words,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void What_was_ordered_and_comes_in_time_is_not_short()
    {
        Order[] orders = [OrderExamples.Accepted(1, Today.AddDays(10), OrderExamples.Bark(15))];
        var stock = OrderExamples.Stock([], [], Today);
        var supply = Supply() with
        {
            Purchases =
            [
                new Purchase
                {
                    Number = 1,
                    Supplier = "north",
                    Lines = [new PurchaseLine("bag", 1, 9.80m, 0)],
                    State = PurchaseState.Ordered,
                    Day = Today,
                    Expected = Today.AddDays(4),
                },
            ],
        };
        Assert.Empty(GoodShortage.Find(orders, stock, supply, Today));
        var late = orders[0] with { Promised = Today.AddDays(2) };
        var found = GoodShortage.Find([late], stock, supply, Today);
        Assert.Contains(
            "after the promised day",
            OrderBlocks.Find(late, found[1], Today)[0].Words,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_day_in_the_past_is_refused_with_the_first_there_can_be()
    {
        var earliest = new PromisedDay(new DateOnly(2026, 10, 20), "42 days of grow-in");
        Assert.Contains(
            "2 Sep 2026 is over. The first day that can be promised is 20 Oct 2026.",
            PromisedDay.Refusal(Today.AddDays(-1), Today, earliest),
            StringComparison.Ordinal
        );
        Assert.Null(PromisedDay.Refusal(Today, Today, earliest));
        Assert.Contains("grow-in", PromisedDay.Caution(Today.AddDays(5), earliest), StringComparison.Ordinal);
        Assert.Null(PromisedDay.Caution(earliest.Day, earliest));
    }

    private static ShopSupply Supply() =>
        new(
            [],
            [
                new Offer
                {
                    Key = "bag",
                    Supplier = "north",
                    Good = "fine-bark",
                    Pack = "bag of 20 L",
                    Amount = 20,
                    Tiers = [new PriceTier(1, 9.80m)],
                },
            ],
            [North],
            []
        );

    private static Lot Lot(string id, double amount, decimal cost) =>
        new()
        {
            Id = id,
            Good = "fine-bark",
            Since = Today.AddDays(-30),
            Amount = amount,
            Cost = cost,
        };

    private static Movement Line(string lot, double amount) =>
        new()
        {
            Lot = lot,
            Kind = MovementKind.Received,
            Amount = amount,
            Day = Today.AddDays(-30),
            Who = "Tobin",
        };
}
