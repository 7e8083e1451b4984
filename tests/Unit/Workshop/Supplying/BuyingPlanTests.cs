using Litterfall.Domain.Stock;
using Litterfall.Domain.Trade;
using Litterfall.Workshop.Orders;
using Litterfall.Workshop.Stock;
using Litterfall.Workshop.Supplying;

namespace Litterfall.UnitTests.Workshop.Supplying;

/// <summary>
/// Needs of all orders, their purchase and its delivery; own worked examples counted by hand.
/// </summary>
public sealed class BuyingPlanTests
{
    private static readonly DateOnly Today = new(2026, 9, 3);

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    private static readonly Good Bark = new()
    {
        Key = "fine-bark",
        Name = "bark",
        Letters = "BARK",
        Kind = GoodKind.Bulk,
        Unit = StockUnit.Liters,
        ReorderAt = 10,
    };

    private static readonly Supplier North = new()
    {
        Key = "north",
        Name = "North",
        Currency = "EUR",
        Delivery = 6.90m,
        FreeFrom = 75,
        LeadDays = 3,
    };

    private static readonly Offer Sack = new()
    {
        Key = "north-bark-20",
        Supplier = "north",
        Good = "fine-bark",
        Pack = "bag of 20 L",
        Amount = 20,
        Tiers = [new PriceTier(1, 9.80m), new PriceTier(4, 8.90m)],
    };

    private static Order Accepted(int number, double liters) =>
        new()
        {
            Number = number,
            Customer = "x",
            State = OrderState.Accepted,
            Goods = [new QuotedGood("fine-bark", "bark", StockUnit.Liters, liters, 1m)],
        };

    private static StockPicture Stock(double liters, double usedForFirst = 0)
    {
        Lot bag = new()
        {
            Id = "BARK-1",
            Good = "fine-bark",
            Since = Today,
            Amount = liters + usedForFirst,
        };
        Lot tank = new()
        {
            Id = "T-1",
            Good = "tank",
            Since = Today,
            Amount = 1,
            Order = 1,
        };
        Movement Line(string lot, MovementKind kind, double amount, string? into = null) =>
            new()
            {
                Lot = lot,
                Kind = kind,
                Amount = amount,
                Into = into,
                Day = Today,
                Who = "x",
            };
        Movement[] lines =
        [
            Line("BARK-1", MovementKind.Received, bag.Amount),
            Line("T-1", MovementKind.Made, 1),
            Line("BARK-1", MovementKind.Used, usedForFirst, "T-1"),
        ];
        return StockPicture.Read(
            StockBook.Empty.With([bag, tank], lines.Select((line, i) => line with { Id = i + 1 })),
            Today
        );
    }

    private static ShopSupply Supply(params Purchase[] purchases) => new([Bark], [Sack], [North], purchases);

    [Fact]
    public void Needs_of_all_orders_less_what_is_here_used_and_coming()
    {
        // 40 + 25 needed, 15 of the first in its tank already, 12 here, 20 coming, 10 to stay: 28 to buy.
        var coming = new Purchase
        {
            Number = 1,
            Supplier = "north",
            Day = Today,
            State = PurchaseState.Ordered,
            Lines = [new PurchaseLine("north-bark-20", 2, 9.80m, 1)],
        };
        var need = Assert.Single(
            NetNeed.Read([Accepted(1, 40), Accepted(2, 25)], Stock(12, 15), Supply(coming), [])
        );
        Assert.Equal(50, need.Needed, 1e-9);
        Assert.Equal((12.0, 20.0, 28.0), (need.OnHand, need.Coming, need.ToBuy));
        Assert.Equal([1, 2], need.Orders);
    }

    [Fact]
    public void The_purchase_is_the_cheapest_and_says_what_it_is_for()
    {
        // 55 + 10 - 0 = 65 L: 4 bags at 8.90 are 35.60, and 6.90 to bring them.
        var needs = NetNeed.Read([Accepted(7, 55)], Stock(0), Supply(), []);
        var plan = BuyingPlan.Find(needs, Supply(), new BuyingWish("EUR", Today), Stop);
        Assert.Equal(42.50m, plan.Total);
        Assert.True(plan.Plan!.IsProved);
        var purchase = Assert.Single(plan.Purchases);
        Assert.Equal([new PurchaseLine("north-bark-20", 4, 8.90m, 0)], purchase.Lines);
        Assert.Equal([7], purchase.Orders);
        // 80 L came for 65 L, told by the name of the good and in its unit.
        Assert.Contains("bark: 15 L left over", plan.Reasons);
        Assert.Equal(6.90m, purchase.Delivery);
        // Three working days after a Thursday.
        Assert.Equal(new DateOnly(2026, 9, 8), purchase.Expected);
    }

    [Fact]
    public void What_nobody_offers_and_what_is_too_dear_is_named()
    {
        var needs = NetNeed.Read([Accepted(7, 55)], Stock(0), Supply(), []);
        var foreign = BuyingPlan.Find(needs, Supply(), new BuyingWish("USD", Today), Stop);
        Assert.Equal("fine-bark", Assert.Single(foreign.Without).Good.Key);
        Assert.Null(foreign.Plan);
        var poor = BuyingPlan.Find(needs, Supply(), new BuyingWish("EUR", Today) { Budget = 20 }, Stop);
        Assert.NotEqual("", poor.Trouble);
        var later = BuyingPlan.Find(
            needs,
            Supply(),
            new BuyingWish("EUR", Today) { NotNow = ["fine-bark"] },
            Stop
        );
        Assert.Null(later.Plan);
        Assert.Empty(later.Without);
    }

    [Fact]
    public void A_delivery_becomes_lots_and_new_prices()
    {
        var purchase = new Purchase
        {
            Number = 3,
            Supplier = "north",
            Day = Today,
            State = PurchaseState.Ordered,
            Lines = [new PurchaseLine("north-bark-20", 4, 8.90m, 0)],
        };
        var offers = new Dictionary<string, Offer>(StringComparer.Ordinal) { [Sack.Key] = Sack };
        var goods = new Dictionary<string, Good>(StringComparer.Ordinal) { [Bark.Key] = Bark };
        CameLine[] came = [new(0, 3, 9.20m, "L-88")];
        Assert.Null(Receipt.Refusal(purchase, came));
        var receipt = Receipt.Read(purchase, came, (offers, goods), ["BARK-7"], ("Tobin", Today));
        var lot = Assert.Single(receipt.Lots);
        Assert.Equal(("BARK-8", 60.0, 27.60m, "L-88"), (lot.Id, lot.Amount, lot.Cost, lot.SupplierLot));
        Assert.Equal(60, Assert.Single(receipt.Lines).Effect);
        Assert.Equal(PurchaseState.Ordered, receipt.Purchase.State);
        Assert.Equal(3, receipt.Purchase.Lines[0].Came);
        // Three bags are of the first step of the list: that price is new, the other stays.
        Assert.Equal([new PriceTier(1, 9.20m), new PriceTier(4, 8.90m)], Assert.Single(receipt.Offers).Tiers);
        var rest = Receipt.Read(
            receipt.Purchase,
            [new(0, 1, 9.20m, "")],
            (offers, goods),
            ["BARK-8"],
            ("Tobin", Today)
        );
        Assert.Equal(PurchaseState.Received, rest.Purchase.State);
    }

    [Theory]
    [InlineData(5, 8.90, "Line 1 has 4 packs open; 5 were entered.")]
    [InlineData(0, 8.90, "Enter how many packs came.")]
    [InlineData(2, -1, "A price must be 0 or more.")]
    public void A_delivery_that_cannot_be_is_refused(int packs, double price, string refusal)
    {
        var purchase = new Purchase
        {
            Number = 3,
            Supplier = "north",
            Day = Today,
            State = PurchaseState.Ordered,
            Lines = [new PurchaseLine("north-bark-20", 4, 8.90m, 0)],
        };
        Assert.Equal(refusal, Receipt.Refusal(purchase, [new(0, packs, (decimal)price, "")]));
    }
}
