using Litterfall.App.Files;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Trade;
using Litterfall.UnitTests.Workshop.Orders;
using Litterfall.Workshop.Orders;
using Litterfall.Workshop.Quoting;

namespace Litterfall.UnitTests.Workshop.Quoting;

/// <summary>Prices of goods; own worked examples.</summary>
public sealed class PriceBookTests
{
    private static readonly TradeCatalog Catalog = Shop.Embedded();

    private static readonly Good Bark = new()
    {
        Key = "fine-bark",
        Name = "fine bark",
        Kind = GoodKind.Bulk,
        Unit = StockUnit.Liters,
    };

    private static Offer Offer(string key, double amount, params (int From, decimal Price)[] tiers) =>
        new()
        {
            Key = key,
            Supplier = "north",
            Good = "fine-bark",
            Pack = key,
            Amount = amount,
            Tiers = [.. tiers.Select(t => new PriceTier(t.From, t.Price))],
        };

    private static PriceBook Book(IEnumerable<Good> goods, params Offer[] offers) =>
        new(
            new ShopSupply(
                [.. goods],
                offers,
                [
                    new Supplier
                    {
                        Key = "north",
                        Name = "North",
                        Currency = "EUR",
                    },
                    new Supplier
                    {
                        Key = "abroad",
                        Name = "Abroad",
                        Currency = "USD",
                    },
                ],
                []
            ),
            Catalog,
            "EUR"
        );

    /// <summary>
    /// 12 L: of the bag of 20 L at 9.80 they cost 12 × 0.49 = 5.88, of that of 70 L at 26.60 12 × 0.38 =
    /// 4.56.
    /// </summary>
    [Fact]
    public void The_used_share_of_the_cheapest_pack_counts()
    {
        var book = Book([Bark], Offer("bag", 20, (1, 9.80m)), Offer("bale", 70, (1, 26.60m)));
        var priced = book.Price(new GoodNeed("fine-bark", "bark") { Liters = 12 });
        Assert.Equal(4.56m, priced.Cost);
        Assert.Equal((12.0, StockUnit.Liters), (priced.Amount, priced.Unit));
    }

    /// <summary>90 L take five bags of 20 L: from four on each costs 8.00, 0.40 a liter, 36.00.</summary>
    [Fact]
    public void Many_packs_reach_their_price_break()
    {
        var book = Book([Bark], Offer("bag", 20, (1, 9.80m), (4, 8m)));
        Assert.Equal(36m, book.Price(new GoodNeed("fine-bark", "bark") { Liters = 90 }).Cost);
    }

    [Fact]
    public void What_has_no_price_is_named_and_never_free()
    {
        var none = Book([Bark]).Price(new GoodNeed("fine-bark", "bark") { Liters = 12 });
        Assert.Null(none.Cost);
        Assert.Equal("no price is entered", none.Note);
        var abroad = Book([Bark], Offer("bag", 20, (1, 9.80m)) with { Supplier = "abroad" });
        var foreign = abroad.Price(new GoodNeed("fine-bark", "bark") { Liters = 12 });
        Assert.Null(foreign.Cost);
        Assert.Contains("USD only", foreign.Note, StringComparison.Ordinal);
        var odd = Book([Bark], Offer("bag", 20, (1, 9.80m)));
        var heavy = odd.Price(new GoodNeed("fine-bark", "bark") { Kilograms = 3 });
        Assert.Null(heavy.Cost);
    }

    /// <summary>
    /// 0.18 m² of 5 mm glass: a sheet of 1200 × 600 mm has 0.72 m², so a quarter of it; at 16.00 that is
    /// 4.00.
    /// The thinner sheet is cheaper and does not fit.
    /// </summary>
    [Fact]
    public void A_sheet_counts_by_its_area_and_fits_by_its_thickness()
    {
        var glass = new Good
        {
            Key = "float-glass",
            Name = "float glass",
            Kind = GoodKind.Sheet,
            Unit = StockUnit.Pieces,
        };
        Offer Sheet(int mm, decimal price) =>
            new()
            {
                Key = $"sheet-{mm}",
                Supplier = "north",
                Good = "float-glass",
                Pack = "sheet",
                LibraryPack = $"pack-float-glass-1200x600x{mm}",
                Amount = 1,
                Tiers = [new PriceTier(1, price)],
            };
        var book = Book([glass], Sheet(4, 12), Sheet(5, 16));
        var priced = book.Price(
            new GoodNeed("float-glass", "glass") { SquareMeters = 0.18, Millimeters = 5 }
        );
        Assert.Equal(0.25, priced.Amount, 1e-9);
        Assert.Equal(4.00m, Math.Round(priced.Cost!.Value, 6));
    }

    /// <summary>5 L in stock that cost 1.00, 7 L more at 0.49: 1.00 + 3.43 = 4.43.</summary>
    [Fact]
    public void Stock_counts_at_what_it_cost_where_that_is_asked()
    {
        var lot = new Litterfall.Domain.Stock.Lot
        {
            Id = "BARK-1",
            Good = "fine-bark",
            Since = new DateOnly(2026, 9, 1),
            Amount = 5,
            Cost = 1,
        };
        var line = new Litterfall.Domain.Stock.Movement
        {
            Lot = "BARK-1",
            Kind = Litterfall.Domain.Stock.MovementKind.Received,
            Amount = 5,
            Day = lot.Since,
            Who = "Tobin",
        };
        var book = new PriceBook(
            new ShopSupply([Bark], [Offer("bag", 20, (1, 9.80m))], [], []),
            Catalog,
            "EUR"
        )
        {
            Stock = OrderExamples.Stock([lot], [line], lot.Since),
        };
        Assert.Equal(
            4.43m,
            Math.Round(book.Price(new GoodNeed("fine-bark", "bark") { Liters = 12 }).Cost!.Value, 9)
        );
    }
}
