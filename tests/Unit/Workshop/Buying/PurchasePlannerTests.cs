using Litterfall.Domain.Lists;
using Litterfall.Workshop.Buying;

namespace Litterfall.UnitTests.Workshop.Buying;

/// <summary>Purchases against worked examples and against trying everything.</summary>
public sealed class PurchasePlannerTests
{
    private static readonly PurchaseSupplier Free = new("S", 0, null, 0);

    /// <summary>
    /// Own worked example: 5 L at 4.20 (10 or more 3.78), 20 L at 13.50 (5 or more 12.60), 50 L at 29.00; 6 L
    /// in stock.
    /// </summary>
    [Theory]
    [InlineData(11, 1, 0, 0, 420, 0)]
    [InlineData(18, 3, 0, 0, 1260, 3)]
    [InlineData(47, 0, 0, 1, 2900, 9)]
    [InlineData(53, 0, 0, 1, 2900, 3)]
    [InlineData(88, 3, 1, 1, 5510, 3)]
    [InlineData(103, 0, 0, 2, 5800, 3)]
    public void Packs_of_one_product(
        double need,
        int fives,
        int twenties,
        int fifties,
        long cents,
        double left
    )
    {
        var plan = Plan(
            One(
                new PurchaseProduct("bark", need, 6),
                Offer("S", "bark", 5, (1, 420), (10, 378)),
                Offer("S", "bark", 20, (1, 1350), (5, 1260)),
                Offer("S", "bark", 50, (1, 2900))
            )
        );
        Assert.Equal(cents, plan.TotalCents);
        Assert.Equal(left, Assert.Single(plan.Leftovers).Liters, 9);
        Assert.Equal((fives, twenties, fifties), (Packs(plan, 5), Packs(plan, 20), Packs(plan, 50)));
    }

    /// <summary>Own worked example: 1.00 below 25 pieces, 0.85 from 25 on.</summary>
    [Theory]
    [InlineData(21, 21, 2100)]
    [InlineData(22, 25, 2125)]
    [InlineData(23, 25, 2125)]
    [InlineData(24, 25, 2125)]
    public void More_packs_can_cost_less(double need, int packs, long cents)
    {
        var asked = One(new PurchaseProduct("cup", need, 0), Offer("S", "cup", 1, (1, 100), (25, 85)));
        var plan = Plan(asked);
        Assert.Equal((packs, cents), (Packs(plan, 1), plan.TotalCents));
        if (need == 24)
        {
            Assert.Contains(PurchaseWords.Explain(asked, plan), s =>
                s.Contains("25 packs for 21.25 is cheaper than 24 for 24.00", StringComparison.Ordinal)
            );
        }
    }

    /// <summary>Own worked example: everything from the first supplier for 94.00, by enumeration.</summary>
    [Fact]
    public void Two_suppliers_and_four_products()
    {
        var plan = Plan(Two());
        Assert.Equal(9400, plan.TotalCents);
        Assert.True(plan.IsProved);
        Assert.Equal(
            [("bark", 20.0, 3), ("peat", 25.0, 2), ("clay", 10.0, 7), ("charcoal", 2.0, 4)],
            plan.Lines.Select(l => (l.Offer.Product, l.Offer.PackLiters, l.Packs))
        );
    }

    [Fact]
    public void What_a_little_more_would_bring_is_told()
    {
        var asked = One(new PurchaseProduct("bark", 10, 0), Offer("S", "bark", 10, (1, 4590))) with
        {
            Suppliers = [new PurchaseSupplier("S", 690, 5000, 0)],
        };
        var plan = Plan(asked);
        Assert.Equal(5280, plan.TotalCents);
        Assert.Contains(
            "S: 4.10 more reaches free delivery and saves 6.90",
            PurchaseWords.Explain(asked, plan)
        );
    }

    /// <summary>Purchases of a block: trying everything takes its time.</summary>
    private static readonly int Cases = LongRun.Cases(6, 60);

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void Small_purchases_are_those_of_trying_everything(int block)
    {
        for (var seed = 60 * block; seed < 60 * block + Cases; seed++)
        {
            var asked = Drawn(new Random(seed));
            var (plan, _) = PurchasePlanner.Find(asked, TestContext.Current.CancellationToken);
            var cheapest = PurchaseOracle.Cheapest(asked, 8);
            Assert.True(cheapest == plan?.TotalCents, $"seed {seed}: {cheapest} {plan?.TotalCents}");
            Assert.True(plan!.IsProved);
            Checked(asked, plan);
        }
    }

    [Fact]
    public void Sixty_goods_of_four_suppliers_are_proved_and_the_same_each_time()
    {
        var random = new Random(7);
        var suppliers = Enumerable
            .Range(1, 4)
            .Select(s => new PurchaseSupplier($"S{s}", 690, 40_000, 15_000));
        var asked = new PurchaseCase
        {
            Suppliers = [.. suppliers],
            Products =
            [
                .. Enumerable.Range(0, 60).Select(p => new PurchaseProduct($"M{p}", 10 + random.Next(90), 3)),
            ],
            Offers =
            [
                .. Enumerable
                    .Range(0, 60)
                    .SelectMany(p =>
                        Enumerable
                            .Range(1, 4)
                            .SelectMany(s =>
                                new[] { 5.0, 12.5, 40.0 }.Select(size =>
                                    Offer(
                                        $"S{s}",
                                        $"M{p}",
                                        size,
                                        (1, (long)(size * (40 + random.Next(20)))),
                                        (6, (long)(size * 38))
                                    )
                                )
                            )
                    ),
            ],
        };
        var plan = Plan(asked);
        Assert.True(plan.IsProved);
        Checked(asked, plan);
        Assert.Equal(plan.Lines, Plan(asked).Lines);
    }

    [Fact]
    public void A_purchase_that_cannot_be_names_the_cause()
    {
        var asked = Two();
        Assert.Contains(
            "no supplier offers moss",
            Refused(asked with { Products = [.. asked.Products, new PurchaseProduct("moss", 1, 0)] }).Message,
            StringComparison.Ordinal
        );
        var budget = Refused(asked with { BudgetCents = 9399 });
        Assert.Equal("budgetCents", budget.Key);
        Assert.Contains("94.00", budget.Message, StringComparison.Ordinal);
        var keeps = One(
            new PurchaseProduct("bark", 10, 0) { MostLiters = 20 },
            Offer("S", "bark", 10, (1, 500))
        ) with
        {
            Suppliers = [new PurchaseSupplier("S", 0, null, 2000)],
        };
        Assert.Contains("minimum order of S", Refused(keeps).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void What_must_be_bought_here_and_what_is_in_the_basket_stays()
    {
        var asked = Two();
        Seq<PurchaseSupplier> must = [asked.Suppliers[0], asked.Suppliers[1] with { IsRequired = true }];
        var plan = Plan(asked with { Suppliers = must });
        Assert.Contains(plan.Deliveries, d => d.Supplier.Name == "S2");
        Seq<PurchaseOffer> basket = [.. asked.Offers.Select((o, i) => i == 4 ? o with { InBasket = 1 } : o)];
        Assert.Contains(Plan(asked with { Offers = basket }).Lines, l =>
            l.Offer.InBasket == 1 && l.Packs >= 1
        );
    }

    /// <summary>A stopped search tells the best so far and what is still possible.</summary>
    [Fact]
    public void A_bound_is_never_above_the_purchase()
    {
        var plan = Plan(Two());
        Assert.True(plan.BoundCents <= plan.TotalCents);
    }

    private static PurchaseRefusal Refused(PurchaseCase asked)
    {
        var (plan, refusal) = PurchasePlanner.Find(asked, TestContext.Current.CancellationToken);
        Assert.Null(plan);
        return refusal!;
    }

    private static PurchasePlan Plan(PurchaseCase asked)
    {
        var (plan, refusal) = PurchasePlanner.Find(asked, TestContext.Current.CancellationToken);
        Assert.True(plan is not null, refusal?.Message);
        return plan;
    }

    private static int Packs(PurchasePlan plan, double liters) =>
        plan.Lines.Where(l => l.Offer.PackLiters == liters).Sum(l => l.Packs);

    private static PurchaseOffer Offer(
        string supplier,
        string product,
        double liters,
        params (int From, long Cents)[] breaks
    ) => new(supplier, product, liters, [.. breaks.Select(b => new PriceBreak(b.From, b.Cents))]);

    private static PurchaseCase One(PurchaseProduct product, params PurchaseOffer[] offers) =>
        new()
        {
            Suppliers = [Free],
            Products = [product],
            Offers = [.. offers],
        };

    private static PurchaseCase Two() =>
        new()
        {
            Suppliers = [new("S1", 690, 7500, 2500), new("S2", 1250, 12_000, 4000)],
            Products = [new("bark", 60, 0), new("peat", 41, 0), new("charcoal", 6.5, 0), new("clay", 65, 0)],
            Offers =
            [
                Offer("S1", "bark", 20, (1, 980), (4, 890)),
                Offer("S1", "peat", 25, (1, 840)),
                Offer("S1", "clay", 10, (1, 520), (6, 460)),
                Offer("S1", "charcoal", 2, (1, 390)),
                Offer("S2", "bark", 60, (1, 2450)),
                Offer("S2", "peat", 70, (1, 1990)),
                Offer("S2", "charcoal", 5, (1, 790), (3, 690)),
                Offer("S2", "clay", 50, (1, 1780)),
            ],
        };

    /// <summary>Every rule, counted anew from what is told.</summary>
    private static void Checked(PurchaseCase asked, PurchasePlan plan)
    {
        foreach (var product in asked.Products)
        {
            var liters = plan
                .Lines.Where(l => l.Offer.Product == product.Name)
                .Sum(l => l.Packs * l.Offer.PackLiters);
            Assert.True(product.Stock + liters >= product.Need - 1e-9, product.Name);
        }

        foreach (var line in plan.Lines)
        {
            Assert.Equal(
                line.Packs * line.Offer.Breaks.Last(b => b.FromPacks <= line.Packs).Cents,
                line.Cents
            );
        }

        foreach (var order in plan.Deliveries)
        {
            var goods = plan.Lines.Where(l => l.Offer.Supplier == order.Supplier.Name).Sum(l => l.Cents);
            Assert.True(goods >= order.Supplier.MinOrderCents);
            Assert.Equal(
                goods >= order.Supplier.FreeFromCents ? 0 : order.Supplier.DeliveryCents,
                order.Cents
            );
        }
    }

    private static PurchaseCase Drawn(Random random)
    {
        var suppliers = 1 + random.Next(3);
        var products = 1 + random.Next(suppliers == 3 ? 2 : 3);
        double[] sizes = [1, 2.5, 5, 10];
        var offers = new List<PurchaseOffer>();
        for (var p = 0; p < products; p++)
        {
            for (var s = 0; s < suppliers; s++)
            {
                if (s > 0 && random.Next(3) == 0)
                {
                    continue;
                }

                var size = sizes[random.Next(sizes.Length)];
                var price = 300 + (50 * random.Next(10));
                offers.Add(
                    random.Next(2) == 0
                        ? Offer($"S{s}", $"M{p}", size, (1, price))
                        : Offer($"S{s}", $"M{p}", size, (1, price), (2 + random.Next(3), price - 50))
                );
            }
        }

        return new PurchaseCase
        {
            Suppliers =
            [
                .. Enumerable
                    .Range(0, suppliers)
                    .Select(s => new PurchaseSupplier(
                        $"S{s}",
                        100 * random.Next(8),
                        random.Next(4) == 0 ? null : 500 * random.Next(5),
                        random.Next(2) * 250 * random.Next(7)
                    )),
            ],
            Products =
            [
                .. Enumerable
                    .Range(0, products)
                    .Select(p => new PurchaseProduct($"M{p}", random.Next(14), random.Next(3))),
            ],
            Offers = [.. offers],
        };
    }
}
