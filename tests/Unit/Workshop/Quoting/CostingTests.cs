using System.Diagnostics;
using CsCheck;
using Litterfall.App.Files;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Checking;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Trade;
using Litterfall.Forecasting;
using Litterfall.UnitTests.House;
using Litterfall.UnitTests.Workshop.Orders;
using Litterfall.Workshop.Demo;
using Litterfall.Workshop.Orders;
using Litterfall.Workshop.Quoting;

namespace Litterfall.UnitTests.Workshop.Quoting;

/// <summary>
/// Cost and price of options against a second computation in decimal, written from the definitions: cost is
/// goods with waste, hours times wage, overhead, live goods, packaging, shipping and the reserve p/(1 − p)
/// times what a replacement costs; the price before tax is (cost + fixed fee)/(1 − margin − fee with tax).
/// </summary>
[Collection("timed")]
public sealed class CostingTests
{
    private static readonly TradeCatalog Catalog = Shop.Embedded();

    private static readonly ShopSupply Demo = new(
        DemoGoods.All(Catalog),
        DemoGoods.Offers(Catalog),
        DemoShop.Suppliers,
        []
    );

    private static QuoteBasis Basis(ShopTerms terms, ShopSupply? supply = null, bool isWholesale = false) =>
        new(
            terms,
            OrderExamples.Customer with
            {
                IsWholesale = isWholesale,
            },
            new PriceBook(supply ?? Demo, Catalog, terms.Currency)
        );

    private static ShopSupply One(decimal price) =>
        new(
            [
                new Good
                {
                    Key = "set",
                    Name = "set of parts",
                    Kind = GoodKind.Equipment,
                    Unit = StockUnit.Pieces,
                },
            ],
            [
                new Offer
                {
                    Key = "o",
                    Supplier = "s",
                    Good = "set",
                    Pack = "each",
                    Amount = 1,
                    Tiers = [new PriceTier(1, price)],
                },
            ],
            [],
            []
        );

    private static readonly OptionWish OneSet = new("As ordered")
    {
        Items =
        [
            new PricedItem(
                new OrderItem
                {
                    Kind = OrderItemKind.Loose,
                    Name = "set of parts",
                    Good = "set",
                    Amount = 1,
                },
                null
            ),
        ],
    };

    private static readonly ShopTerms Plain = new()
    {
        Name = "Example",
        Wage = 22,
        OverheadPercent = 15,
        RetailMargin = 35,
        ShowsTaxIncluded = false,
        Labor = [new LaborStage("work", "work", LaborPer.Order, 390)],
    };

    /// <summary>
    /// Own worked example: (118.00 + 6.5 × 22.00) × 1.15 = 300.15; 300.15 / 0.65 = 461.77. Cost × 1.35 is
    /// 405.20, and (405.20 − 300.15) / 405.20 = 25.9 %.
    /// </summary>
    [Fact]
    public void A_mark_up_of_35_percent_is_no_margin_of_35()
    {
        var basis = Basis(Plain, One(118));
        var priced = QuoteMaker.Price(basis, OneSet);
        Assert.Equal(300.15m, priced.Sheet.Cost.Total);
        Assert.Equal(461.77m, priced.Option.Net);
        Assert.Equal(35.0m, Math.Round(priced.Sheet.MarginPercent!.Value, 1));
        var slip = QuoteMaker.Price(basis, OneSet with { Price = 405.20m });
        Assert.Equal(405.20m, slip.Option.Net);
        Assert.Equal(25.9m, Math.Round(slip.Sheet.MarginPercent!.Value, 1));
        Assert.Equal(35.0m, Math.Round(slip.Sheet.MarkUpPercent!.Value, 1));
    }

    [Fact]
    public void Margin_and_fee_of_all_the_price_are_refused_with_the_reason()
    {
        var basis = Basis(Plain with { RetailMargin = 97, FeePercent = 3 }, One(118));
        Assert.Contains("100 %", QuoteMaker.Refusal(basis, OneSet), StringComparison.Ordinal);
        Assert.NotNull(QuoteMaker.Refusal(basis, OneSet with { Items = [] }));
        Assert.Null(QuoteMaker.Refusal(Basis(Plain, One(118)), OneSet));
    }

    [Theory]
    [InlineData("ld-201-flat", false)]
    [InlineData("ld-203-museum-foyer", false)]
    [InlineData("ld-204-shop-kits", true)]
    public void Options_of_a_design_cost_what_the_definitions_say(string sample, bool isWholesale)
    {
        var item = Sample(sample);
        var basis = Basis(DemoShop.Terms, isWholesale: isWholesale);
        foreach (var wish in Options(item))
        {
            var priced = QuoteMaker.Price(basis, wish);
            var expected = Second(DemoShop.Terms, basis.Margin, priced.Option);
            Assert.Equal(0, (double)(expected.Cost - priced.Sheet.Cost.Total), 1e-9);
            Assert.Equal(0, (double)(expected.Net - priced.Sheet.Net), 1e-9);
            AddsUp(priced, DemoShop.Terms);
        }
    }

    /// <summary>The second computation, from goods and minutes to the price before tax.</summary>
    private static (decimal Cost, decimal Net) Second(ShopTerms terms, decimal margin, QuoteOption option)
    {
        var poured = 0m;
        var counted = 0m;
        var live = 0m;
        foreach (var good in option.Goods)
        {
            var cost = good.Cost ?? 0m;
            if (good.IsLive)
            {
                live += cost;
            }
            else if (good.Unit is StockUnit.Pieces or StockUnit.Meters)
            {
                counted += cost;
            }
            else
            {
                poured += cost;
            }
        }

        var materials = counted + poured * (1 + terms.WastePercent / 100);
        var hours = option.Minutes.Sum(m => (decimal)m.Minutes) / 60;
        var labor = hours * terms.Wage;
        var overhead = hours * terms.OverheadPerHour + (materials + labor) * terms.OverheadPercent / 100;
        var chance = terms.LossPercent / 100;
        var replaced = live + terms.Packaging + terms.Shipping;
        var reserve = live == 0 ? 0 : chance / (1 - chance) * replaced;
        var total = materials + labor + overhead + live + terms.Packaging + terms.Shipping + reserve;
        var fee = terms.FeePercent / 100 * (1 + terms.TaxPercent / 100);
        return (total, (total + terms.FeeFixed) / (1 - margin / 100 - fee));
    }

    /// <summary>To the cent, in every rounding: lines, parts of the cost, tax.</summary>
    private static void AddsUp(PricedOption priced, ShopTerms terms)
    {
        var (option, cost) = (priced.Option, priced.Option.Cost);
        Assert.Equal(option.Net, option.Lines.Sum(l => l.Net));
        Assert.Equal(option.Gross, option.Net + option.Tax);
        var profit = option.Net - cost.Total - cost.Fee;
        Assert.Equal(0, (double)(profit - priced.Sheet.Profit), 0.05);
        var step = terms.Rounding switch
        {
            SumRounding.Whole => 1m,
            SumRounding.FiveCents => 0.05m,
            _ => 0.01m,
        };
        var shown = terms.ShowsTaxIncluded ? option.Gross : option.Net;
        Assert.Equal(0, shown % step);
        foreach (var amount in new[] { option.Net, option.Tax, cost.Materials, cost.Reserve, cost.Fee })
        {
            Assert.Equal(amount, Math.Round(amount, 2));
        }
    }

    [Fact]
    public void Money_adds_up_to_the_cent_in_every_rounding_rule()
    {
        var item = Sample("ld-201-flat");
        var loose = OneSet.Items[0];
        Gen.Select(
                Gen.Int[0, 2],
                Gen.Bool,
                Gen.Int[0, 2500],
                Gen.Int[1, 60],
                Gen.Int[1, 90_000],
                Gen.Int[1, 5]
            )
            .Sample(
                (rounding, isIncluded, tax, margin, cents, amount) =>
                {
                    var terms = DemoShop.Terms with
                    {
                        Rounding = (SumRounding)rounding,
                        ShowsTaxIncluded = isIncluded,
                        TaxPercent = tax / 100m,
                        RetailMargin = margin,
                    };
                    var supply = Demo with
                    {
                        Goods = [.. Demo.Goods, .. One(0).Goods],
                        Offers = [.. Demo.Offers, .. One(cents / 100m).Offers],
                    };
                    var sets = loose with { Item = loose.Item with { Amount = amount } };
                    AddsUp(
                        QuoteMaker.Price(
                            Basis(terms, supply),
                            new OptionWish("Planted") { Items = [item, sets] }
                        ),
                        terms
                    );
                },
                iter: 60,
                threads: 1
            );
    }

    /// <summary>10.00 each of the price list stays 10.00 each, whatever the margin says.</summary>
    [Fact]
    public void Goods_of_the_price_list_keep_their_price()
    {
        var supply = One(4);
        supply = supply with { Goods = [.. supply.Goods.Select(g => g with { SellsFor = 10 })] };
        var sets = OneSet.Items[0] with { Item = OneSet.Items[0].Item with { Amount = 3 } };
        var priced = QuoteMaker.Price(
            Basis(Plain with { Labor = [] }, supply),
            OneSet with
            {
                Items = [sets],
            }
        );
        Assert.Equal(30m, priced.Option.Net);
    }

    [Fact]
    public void Three_options_are_priced_within_half_a_second()
    {
        var item = Sample("ld-203-museum-foyer");
        var basis = Basis(DemoShop.Terms);
        foreach (var wish in Options(item))
        {
            QuoteMaker.Price(basis, wish);
        }

        var start = Stopwatch.GetTimestamp();
        foreach (var wish in Options(item))
        {
            QuoteMaker.Price(basis, wish);
        }

        var took = Stopwatch.GetElapsedTime(start);
        TestContext.Current.TestOutputHelper?.WriteLine($"{took.TotalMilliseconds:0.0} ms");
        Assert.True(took < TimeSpan.FromMilliseconds(500), $"{took.TotalMilliseconds} ms");
    }

    [Fact]
    public void Goods_without_a_price_are_named_and_a_visit_is_never_free()
    {
        var item = Sample("ld-201-flat");
        var options = Options(item).Select(w => QuoteMaker.Price(Basis(DemoShop.Terms), w)).ToArray();
        Assert.Contains(options[1].Missing, g => g is { Good: "epipedobates-anthonyi", Cost: null });
        Assert.True(options[2].Option.Net > options[1].Option.Net);
        Assert.Equal(240, options[2].Option.Minutes.Single(m => m.Stage == LaborPlan.Visit).Minutes);
        Assert.Equal(3, options[1].Moves.Count);
    }

    internal static PricedItem Sample(string name)
    {
        var text = File.ReadAllText(Path.Combine(SourceTree.Root, "samples", $"{name}.viv.yaml"))
            .Replace("workshop: lantern-ditch", "", StringComparison.Ordinal);
        var design = DesignChecker.Check(DesignReader.Read(name, text).Value!, Catalog).Value!;
        return new(
            new OrderItem
            {
                Kind = OrderItemKind.Build,
                Name = design.Design.Name,
                Design = Guid.Empty,
                Version = 1,
                Amount = design.Design.Boxes,
            },
            DesignNumbers.Shape(design)
        );
    }

    private static OptionWish[] Options(PricedItem item) =>
        [
            new("Kit") { Items = [item with { Item = item.Item with { Kind = OrderItemKind.Kit } }] },
            new("Planted") { Items = [item], HasAnimals = true },
            new("Planted, with visits")
            {
                Items = [item],
                HasAnimals = true,
                Visits = 4,
            },
        ];
}
