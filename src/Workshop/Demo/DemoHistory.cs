using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain.Stock;
using Litterfall.Domain.Trade;
using Litterfall.Workshop.Orders;
using Litterfall.Workshop.Quoting;

namespace Litterfall.Workshop.Demo;

/// <summary>Forty orders that are done, with what went into each tank and how long it really took.</summary>
internal static class DemoHistory
{
    /// <summary>Number of the first order.</summary>
    public const int First = 161;

    /// <summary>How many there are.</summary>
    public const int Count = 40;

    private const uint Seed = 4021;
    private const int TogetherMixed = 5;
    private const string Recipe = "standard-rainforest";

    // Which customer orders which design, and whether as a kit.
    private static readonly (string Customer, int Design, OrderItemKind Kind)[] Usual =
    [
        ("fair", 201, OrderItemKind.Build),
        ("pelloway", 204, OrderItemKind.Kit),
        ("voss", 201, OrderItemKind.Kit),
        ("marl-street", 202, OrderItemKind.Build),
        ("fair", 204, OrderItemKind.Kit),
    ];

    // Stages that take longer than the table says, as new workshops find out.
    private static readonly Dictionary<string, double> Really = new(StringComparer.Ordinal)
    {
        ["plant"] = 1.35,
        ["build"] = 1.15,
        ["mix"] = 0.85,
    };

    public static void Write(DemoBook book, DemoStock stock, DemoSupply supply)
    {
        var dice = new DemoDice(Seed);
        var year = Enumerable.Range(0, Count).Select(i => One(i, stock, supply, dice)).ToList();
        foreach (var together in year.Chunk(TogetherMixed))
        {
            Fill(book, stock, supply, (together, dice));
        }

        foreach (var (order, quote, _) in year)
        {
            var done = Done(order, quote, dice);
            book.NewOrders.Add(done);
            book.NewQuotes.Add(quote);
            Papers(book, done, quote);
        }
    }

    private static (Order Order, Quote Quote, DateOnly Day) One(
        int i,
        DemoStock stock,
        DemoSupply supply,
        DemoDice dice
    )
    {
        var (key, number, kind) = Usual[dice.Below(Usual.Length)];
        var day = stock.Day(WorkDay(DemoShop.Scene.AddDays(-330 + i * 8)));
        var design = supply.Design(number);
        var customer = DemoSupply.Customer(key);
        var item = new OrderItem
        {
            Kind = kind,
            Name = design.Name,
            Design = design.Id,
            Version = design.Version,
            Amount = kind == OrderItemKind.Kit && customer.IsWholesale ? 4 : 1,
            Harm = "",
        };
        var option = QuoteMaker
            .Price(
                supply.Basis(customer),
                new OptionWish(kind == OrderItemKind.Kit ? "kit" : "planted")
                {
                    Items = [new PricedItem(item, design.Numbers)],
                }
            )
            .Option;
        var order = new Order
        {
            Number = First + i,
            Customer = key,
            Items = [item],
        };
        var head = new QuoteHead(DemoShop.Terms, customer, day.AddDays(-72)) { Promised = day };
        var act = Act(day.AddDays(-75), "asked at the fair");
        order = order with { History = [new OrderEvent(act.At, act.Who, OrderState.Enquiry, act.Note)] };
        var quote = OrderQuotes.Make(i + 1, order, head, [option]);
        order = OrderQuotes.Sent(order, head, Act(day.AddDays(-72), $"{quote.Name} sent"));
        var deposit = Math.Round(option.Gross * 0.3m, 2, MidpointRounding.AwayFromZero);
        order = OrderQuotes.Accepted(order, quote, 0, deposit, Act(day.AddDays(-68), "agreed by telephone"));
        return (order, quote, day);
    }

    /// <summary>Goods of a few orders: one delivery of each good, one batch of mix, then each tank.</summary>
    private static void Fill(
        DemoBook book,
        DemoStock stock,
        DemoSupply supply,
        ((Order Order, Quote Quote, DateOnly Day)[] Orders, DemoDice Dice) few
    )
    {
        var parts = supply.Catalog.Find(Recipe)!.Parts.Select(p => p.Material).ToImmutableHashSet();
        var begun = few.Orders[0].Day.AddDays(-30);
        var used = few
            .Orders.SelectMany(o =>
                o.Quote.Options[0]
                    .Goods.Where(g => g.Cost is > 0 && g.Amount > 0 && stock.Find(g.Good) is not null)
                    .Select(g => (o.Order.Number, Good: g, Amount: Used(g, few.Dice)))
            )
            .ToList();
        var lots = used.GroupBy(u => u.Good.Good, StringComparer.Ordinal)
            .ToDictionary(
                g => g.Key,
                g =>
                    stock.Receive(
                        g.Key,
                        g.Sum(u => u.Amount),
                        g.First().Good.Cost!.Value
                            / (decimal)g.First().Good.Amount
                            * (decimal)few.Dice.Between(0.94, 1.07),
                        begun.AddDays(-few.Dice.Below(20))
                    ),
                StringComparer.Ordinal
            );
        foreach (var (order, _, day) in few.Orders)
        {
            stock.Make(Tank(order, day));
        }

        var mixed = used.Where(u => parts.Contains(u.Good.Good)).ToList();
        if (mixed.Count > 0)
        {
            Mix(
                book,
                stock,
                [.. mixed.Select(u => (u.Number, u.Good.Good, u.Amount))],
                (lots, begun, few.Dice)
            );
        }

        Build(stock, few.Orders, [.. used.Where(u => !parts.Contains(u.Good.Good))], (lots, begun));
    }

    /// <summary>Other goods go into their tanks, and the tanks to their customers.</summary>
    private static void Build(
        DemoStock stock,
        (Order Order, Quote Quote, DateOnly Day)[] orders,
        ImmutableArray<(int Order, QuotedGood Good, double Amount)> used,
        (Dictionary<string, string> Lots, DateOnly Day) at
    )
    {
        foreach (var (number, good, amount) in used)
        {
            stock.Line(at.Lots[good.Good], MovementKind.Used, amount, at.Day, TankOf(number));
        }

        foreach (var (order, _, day) in orders)
        {
            stock.Line(
                TankOf(order.Number),
                MovementKind.Sold,
                order.Items[0].Amount,
                day,
                order.Number.ToString(CultureInfo.InvariantCulture)
            );
        }
    }

    private static void Mix(
        DemoBook book,
        DemoStock stock,
        ImmutableArray<(int Order, string Good, double Liters)> mixed,
        (Dictionary<string, string> Lots, DateOnly Day, DemoDice Dice) at
    )
    {
        var loose = mixed.Sum(m => m.Liters);
        var came = Math.Round(loose * at.Dice.Between(0.855, 0.905), 1);
        var lot = stock.Make(
            new Lot
            {
                Id = "",
                Good = Recipe,
                Since = at.Day,
                Amount = came,
            }
        );
        foreach (var part in mixed.GroupBy(m => m.Good, StringComparer.Ordinal))
        {
            stock.Line(at.Lots[part.Key], MovementKind.Used, part.Sum(m => m.Liters), at.Day, lot);
        }

        foreach (var share in mixed.GroupBy(m => m.Order))
        {
            var liters = came * share.Sum(m => m.Liters) / loose;
            stock.Line(lot, MovementKind.Used, liters, at.Day, TankOf(share.Key));
        }

        book.NewBatches.Add(
            new SoilBatch
            {
                Lot = lot,
                Recipe = Recipe,
                Day = at.Day,
                Parts =
                [
                    .. mixed
                        .GroupBy(m => m.Good, StringComparer.Ordinal)
                        .Select(g => new BatchPart(g.Key, at.Lots[g.Key], g.Sum(m => m.Liters), 0)),
                ],
                WaterLiters = Math.Round(came * 0.1, 1),
                OutLiters = came,
                OutKilograms = Math.Round(came * at.Dice.Between(0.40, 0.46), 1),
                DryShare = Math.Round(at.Dice.Between(0.43, 0.48), 3),
                Orders = [.. mixed.Select(m => m.Order).Distinct()],
                Who = DemoShop.Builder,
            }
        );
    }

    /// <summary>Worked, paid, handed over and closed.</summary>
    private static Order Done(Order order, Quote quote, DemoDice dice)
    {
        var day = quote.Promised!.Value;
        var option = quote.Options[0];
        var done = OrderSteps.Go(order, OrderState.InWork, Act(day.AddDays(-50), "bench free"));
        done = done with
        {
            Payments =
            [
                new Payment(day.AddDays(-66), order.Deposit, "deposit", DemoShop.Bookkeeper),
                new Payment(day.AddDays(10), option.Gross - order.Deposit, "transfer", DemoShop.Bookkeeper),
            ],
            Worked =
            [
                .. option.Minutes.Select(m => new WorkedTime(
                    m.Stage,
                    Math.Round(m.Minutes * Really.GetValueOrDefault(m.Stage, 1) * dice.Between(0.85, 1.2)),
                    day.AddDays(-45),
                    m.Stage == "cut" ? DemoShop.Bookkeeper : DemoShop.Builder
                )),
            ],
        };
        done = OrderSteps.Go(done, OrderState.Ready, Act(day.AddDays(-2), "grown in, looked over"));
        done = OrderSteps.Go(done, OrderState.Delivered, Act(day, "handed over"));
        return OrderSteps.Go(done, OrderState.Closed, Act(day.AddDays(12), "paid"));
    }

    private static void Papers(DemoBook book, Order order, Quote quote)
    {
        var number = order.Number - First + 1;
        var head = new QuoteHead(DemoShop.Terms, quote.Customer, quote.Promised!.Value);
        var then = order with { Payments = [.. order.Payments.Where(p => p.Day <= head.Day)] };
        book.NewPapers.Add(OrderInvoices.Delivery(number, then, quote, head));
        book.NewPapers.Add(OrderInvoices.Bill(number, then, quote, head));
    }

    private static Lot Tank(Order order, DateOnly day) =>
        new()
        {
            Id = TankOf(order.Number),
            Good = DemoStock.TankGood,
            Since = day.AddDays(-45),
            Amount = order.Items[0].Amount,
            Order = order.Number,
            Note = order.Items[0].Name,
        };

    internal static string TankOf(int order) =>
        string.Create(CultureInfo.InvariantCulture, $"{DemoShop.Terms.OrderPrefix}{order}");

    /// <summary>Pieces are used as counted; bulk goods a little more or less.</summary>
    private static double Used(QuotedGood good, DemoDice dice) =>
        good.Unit == StockUnit.Pieces ? good.Amount : Math.Round(good.Amount * dice.Between(0.95, 1.1), 3);

    private static OrderAct Act(DateOnly day, string note) =>
        new(day.ToDateTime(new TimeOnly(9, 0), DateTimeKind.Utc), DemoShop.Bookkeeper, note);

    private static DateOnly WorkDay(DateOnly day) =>
        day.DayOfWeek switch
        {
            DayOfWeek.Saturday => day.AddDays(-1),
            DayOfWeek.Sunday => day.AddDays(1),
            _ => day,
        };
}
