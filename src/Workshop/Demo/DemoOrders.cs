using System.Collections.Immutable;
using Litterfall.Domain.Lists;
using Litterfall.Domain.Trade;
using Litterfall.Workshop.Orders;
using Litterfall.Workshop.Quoting;

namespace Litterfall.Workshop.Demo;

/// <summary>The five orders that are open in the scenario.</summary>
internal static class DemoOrders
{
    public static void Write(DemoBook book, DemoStock stock, DemoSupply supply)
    {
        var desk = new Desk(book, stock, supply);
        desk.InWork();
        desk.Quoted();
        desk.Museum();
        desk.Kits();
        desk.Attic();
    }

    private sealed class Desk(DemoBook book, DemoStock stock, DemoSupply supply)
    {
        /// <summary>A tenant's box, being built; promised for a Friday in October.</summary>
        public void InWork()
        {
            var order = Asked(
                201,
                "voss",
                (2026, 7, 20),
                "Wants frogs that are out by day. Flat is dry in winter."
            );
            order = Taken(order, Options(order), ((2026, 7, 23), new DateOnly(2026, 10, 16)), (2026, 7, 30));
            order = OrderSteps.Go(order, OrderState.InWork, Act((2026, 8, 24), "bench 1"));
            book.NewOrders.Add(
                order with
                {
                    Payments =
                    [
                        new Payment(
                            Day((2026, 8, 3)),
                            order.Deposit,
                            "deposit, transfer",
                            DemoShop.Bookkeeper
                        ),
                    ],
                    Worked =
                    [
                        new WorkedTime("plan", 40, Day((2026, 8, 24)), DemoShop.Builder),
                        new WorkedTime("cut", 62, Day((2026, 8, 25)), DemoShop.Bookkeeper),
                        new WorkedTime("background", 25, Day((2026, 8, 26)), DemoShop.Builder),
                    ],
                }
            );
        }

        /// <summary>A waiting room that has not answered yet.</summary>
        public void Quoted()
        {
            var order = Asked(
                202,
                "marl-street",
                (2026, 8, 24),
                "No fog on Monday morning, please. Inch sizes."
            );
            var head = Head(order, (2026, 8, 28), new DateOnly(2026, 10, 30));
            var quote = Quote(order, head, Options(order));
            book.NewOrders.Add(OrderQuotes.Sent(order, head, Act((2026, 8, 28), $"{quote.Name} sent")));
        }

        /// <summary>A museum's foyer, waiting for its glass.</summary>
        public void Museum()
        {
            var order = Asked(
                203,
                "quernmoor",
                (2026, 8, 3),
                "Drilled drain, stand on site, install on a Monday."
            );
            order = Taken(
                order,
                Options(order, 8),
                ((2026, 8, 10), new DateOnly(2026, 11, 6)),
                (2026, 8, 31)
            );
            book.NewOrders.Add(
                order with
                {
                    Blocked = "Glass is ordered; it needs 12 working days.",
                    Payments =
                    [
                        new Payment(
                            Day((2026, 9, 2)),
                            order.Deposit,
                            "deposit, transfer",
                            DemoShop.Bookkeeper
                        ),
                    ],
                }
            );
        }

        /// <summary>Eight equal kits for a shop, short of springtail cups since the mites.</summary>
        public void Kits()
        {
            var order = Asked(
                204,
                "pelloway",
                (2026, 8, 17),
                "Eight kits for one shelf; bags sized for one box each."
            );
            order = Taken(
                order,
                [Option(order, new OptionWish("kits") { Items = Items(order, OrderItemKind.Kit) })],
                ((2026, 8, 18), new DateOnly(2026, 9, 25)),
                (2026, 8, 21)
            );
            book.NewOrders.Add(
                order with
                {
                    Payments =
                    [
                        new Payment(Day((2026, 8, 25)), order.Deposit, "deposit", DemoShop.Bookkeeper),
                    ],
                }
            );
        }

        /// <summary>An attic that is too hot for animals.</summary>
        public void Attic()
        {
            var order = Asked(
                205,
                "underbank",
                (2026, 8, 31),
                "Attic reaches 31 °C. Advised: no animals until it is cooled; plants only."
            );
            var harm = "The room is too hot for these animals in summer.";
            book.NewOrders.Add(order with { Items = [order.Items[0] with { Harm = harm }] });
        }

        private Order Asked(int number, string customer, (int, int, int) day, string note)
        {
            var design = supply.Design(number);
            var order = new Order
            {
                Number = number,
                Customer = customer,
                Notes = note,
                Items =
                [
                    new OrderItem
                    {
                        Kind = number == 204 ? OrderItemKind.Kit : OrderItemKind.Build,
                        Name = design.Name,
                        Design = design.Id,
                        Version = design.Version,
                        Amount = design.Numbers.Design.Design.Boxes,
                    },
                ],
            };
            var act = Act(day, "asked by mail");
            return order with { History = [new OrderEvent(act.At, act.Who, OrderState.Enquiry, act.Note)] };
        }

        private Order Taken(
            Order order,
            ImmutableArray<QuoteOption> options,
            ((int, int, int) Sent, DateOnly Promised) quoted,
            (int, int, int) taken
        )
        {
            var head = Head(order, quoted.Sent, quoted.Promised);
            var quote = Quote(order, head, options);
            var sent = OrderQuotes.Sent(order, head, Act(quoted.Sent, $"{quote.Name} sent"));
            var option = Math.Min(1, options.Length - 1);
            var deposit = Math.Round(
                options[option].Gross * DemoShop.Terms.DepositPercent / 100,
                2,
                MidpointRounding.AwayFromZero
            );
            return OrderQuotes.Accepted(
                sent,
                quote,
                option,
                deposit,
                Act(taken, $"took {options[option].Name}")
            );
        }

        private Quote Quote(Order order, QuoteHead head, ImmutableArray<QuoteOption> options)
        {
            var quote = OrderQuotes.Make(book.NewQuotes.Count + 1, order, head, options);
            book.NewQuotes.Add(quote);
            return quote;
        }

        private QuoteHead Head(Order order, (int, int, int) day, DateOnly promised) =>
            new(DemoShop.Terms, DemoSupply.Customer(order.Customer), Day(day))
            {
                Promised = stock.Day(promised),
            };

        private ImmutableArray<QuoteOption> Options(Order order, int visits = 4) =>
            [
                Option(order, new OptionWish("kit") { Items = Items(order, OrderItemKind.Kit) }),
                Option(order, new OptionWish("planted") { Items = Items(order, OrderItemKind.Build) }),
                Option(
                    order,
                    new OptionWish("planted with visits")
                    {
                        Items = Items(order, OrderItemKind.Build),
                        Visits = visits,
                    }
                ),
            ];

        private QuoteOption Option(Order order, OptionWish wish) =>
            QuoteMaker.Price(supply.Basis(DemoSupply.Customer(order.Customer)), wish).Option;

        private ImmutableArray<PricedItem> Items(Order order, OrderItemKind kind) =>
            [
                .. order.Items.Select(i => new PricedItem(
                    i with
                    {
                        Kind = kind,
                    },
                    supply.Design(order.Number).Numbers
                )),
            ];

        private DateOnly Day((int Year, int Month, int Day) scene) =>
            stock.Day(new DateOnly(scene.Year, scene.Month, scene.Day));

        private OrderAct Act((int, int, int) day, string note) =>
            new(Day(day).ToDateTime(new TimeOnly(9, 0), DateTimeKind.Utc), DemoShop.Bookkeeper, note);
    }
}
