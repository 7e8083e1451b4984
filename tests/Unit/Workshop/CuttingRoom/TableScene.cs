using Litterfall.Domain.Cutting;
using Litterfall.Domain.Stock;
using Litterfall.Domain.Trade;
using Litterfall.UnitTests.House;
using Litterfall.UnitTests.Workshop.Stock;
using Litterfall.Workshop.CuttingRoom;
using Litterfall.Workshop.Orders;

namespace Litterfall.UnitTests.Workshop.CuttingRoom;

/// <summary>
/// A small table: acrylic of 3 mm in sheets of 1000 × 500 mm, two orders, a plan made by hand.
/// </summary>
internal static class TableScene
{
    public const string Key = "acrylic-sheet";
    public static readonly DateOnly Today = Ledger.Day.AddDays(2);

    public static readonly Good Acrylic = new()
    {
        Key = Key,
        Name = "acrylic sheet",
        Letters = "ACRY",
        Kind = GoodKind.Sheet,
        Unit = StockUnit.SquareMeters,
    };

    public static readonly CuttingRules Rules = new()
    {
        Good = Key,
        Tool = CutTool.Saw,
        Kerf = 3,
        Trim = 10,
        OffcutWorth = 0.4,
    };

    public static readonly Offer Sheet = new()
    {
        Key = "north-sheet",
        Supplier = "north",
        Good = Key,
        Pack = "sheet 1000 × 500 × 3 mm",
        Amount = 0.5,
        SheetMillimeters = 3,
        LengthMillimeters = 1000,
        WidthMillimeters = 500,
        Tiers = [new PriceTier(1, 20m)],
    };

    public static ShopSupply Supply(params Offer[] offers) =>
        new(
            [Acrylic],
            offers,
            [
                new Supplier
                {
                    Key = "north",
                    Name = "North",
                    Currency = "EUR",
                },
            ],
            []
        );

    /// <summary>Two sheets that cost 20 each.</summary>
    public static Ledger Stocked() =>
        new Ledger().Buy("ACRY-1", 1.0, 40m, l =>
            l with
            {
                Good = Key,
                Form = SheetForm.Sheets,
                LengthMillimeters = 1000,
                WidthMillimeters = 500,
                ThicknessMillimeters = 3,
            }
        );

    public static WantedPart Lid(int? order, int count, int day, double length = 441, double width = 300) =>
        new()
        {
            Order = order,
            For = order is null ? "for stock" : "tank",
            Day = Today.AddDays(day),
            Material = Key,
            Millimeters = 3,
            Part = "lid",
            Length = length,
            Width = width,
            Count = count,
        };

    public static TableFacts Facts(Ledger ledger, ShopSupply supply, params WantedPart[] wanted) =>
        new()
        {
            Wanted = [.. wanted],
            Book = ledger.Book,
            Supply = supply,
            Catalog = SampleFiles.Catalog,
            Rules = [Rules],
            Currency = "EUR",
            Today = Today,
        };

    /// <summary>
    /// One sheet, trimmed by 10 all around, kerf 3: two lids of 441 × 300 side by side, the strip of
    /// 980 × 177 above them is kept, 92 × 300 beside them is waste.
    /// </summary>
    public static CuttingPlan TwoLids(CuttingTask task) =>
        new()
        {
            IsProved = true,
            Value = 1,
            Bound = 1,
            Sheets =
            [
                new()
                {
                    Stock = task.Stock[0].Id,
                    Length = 1000,
                    Width = 500,
                    UsedLength = 1000,
                    Parts =
                    [
                        new(task.Parts[0].Id, 10, 10, 441, 300, false),
                        new(task.Parts[0].Id, 454, 10, 441, 300, false),
                    ],
                    Cuts =
                    [
                        new(0, true, 10, 0, 500),
                        new(0, false, 10, 10, 1000),
                        new(0, true, 990, 10, 500),
                        new(0, false, 490, 10, 990),
                        new(1, false, 310, 10, 990),
                        new(2, true, 451, 10, 310),
                        new(2, true, 895, 10, 310),
                    ],
                    Offcuts = [new(10, 313, 980, 177)],
                },
            ],
        };

    /// <summary>The plan of two lids for the orders 7 and 5, of which 5 is wanted first.</summary>
    public static CuttingJob Job(Ledger ledger)
    {
        var facts = Facts(ledger, Supply(), Lid(7, 1, 20), Lid(5, 1, 10));
        var material = Assert.Single(CutMaterial.LayAll(facts));
        var draft = TaskDraft.Make(material)!;
        return draft.Keep(12, material, TwoLids(draft.Task), (Today, "Tobin"));
    }
}
