using Litterfall.Domain.Stock;
using Litterfall.Domain.Trade;
using Litterfall.Workshop.Orders;
using Litterfall.Workshop.Stock;

namespace Litterfall.UnitTests.Workshop.Orders;

/// <summary>Small orders and quotes of our own.</summary>
internal static class OrderExamples
{
    public static readonly DateOnly Today = new(2026, 9, 3);

    public static readonly ShopTerms Terms = new()
    {
        Name = "Example Workshop",
        Address = ["The barn", "Upper Sallow"],
        TaxPercent = 19,
        DepositPercent = 30,
        Wage = 24,
        RetailMargin = 38,
        WholesaleMargin = 20,
        Terms = ["The price holds until the day named above."],
    };

    public static readonly Customer Customer = new()
    {
        Key = "voss",
        Name = "Pernille Voss",
        Address = ["Flat 3", "Millrace Row"],
    };

    public static readonly OrderAct Act = new(
        new DateTime(2026, 9, 3, 8, 0, 0, DateTimeKind.Utc),
        "Ilse",
        "noted"
    );

    public static QuoteHead Head => new(Terms, Customer, Today);

    /// <summary>A book of lots and lines, numbered as they stand.</summary>
    public static StockPicture Stock(IEnumerable<Lot> lots, IEnumerable<Movement> lines, DateOnly today) =>
        StockPicture.Read(StockBook.Empty.With(lots, lines.Select((l, i) => l with { Id = i + 1 })), today);

    public static Order Enquiry(int number = 7, DateOnly? promised = null) =>
        new()
        {
            Number = number,
            Customer = Customer.Key,
            Promised = promised,
            Items =
            [
                new OrderItem
                {
                    Kind = OrderItemKind.Loose,
                    Name = "bark",
                    Good = "fine-bark",
                    Amount = 20,
                },
            ],
        };

    public static QuoteOption Option(string name, decimal net, params QuotedGood[] goods) =>
        new()
        {
            Name = name,
            Lines = [new QuoteLine(name, 1, net)],
            Net = net,
            Tax = Math.Round(net * 0.19m, 2, MidpointRounding.AwayFromZero),
            Gross = net + Math.Round(net * 0.19m, 2, MidpointRounding.AwayFromZero),
            Cost = new(net / 2, 0, 0, 0, 0, 0, 0, 0),
            Goods = [.. goods],
            Items = [.. Enquiry().Items],
        };

    public static QuotedGood Bark(double liters) =>
        new("fine-bark", "fine bark", StockUnit.Liters, liters, 0.4m * (decimal)liters);

    public static Order Accepted(int number, DateOnly promised, params QuotedGood[] goods) =>
        Enquiry(number, promised) with
        {
            State = OrderState.Accepted,
            AcceptedQuote = 1,
            Net = 100,
            Gross = 119,
            Goods = [.. goods],
        };
}
