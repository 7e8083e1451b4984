using Litterfall.Domain.Checking;
using Litterfall.Domain.Cutting;
using Litterfall.Domain.Schedule;
using Litterfall.Domain.Stock;
using Litterfall.Domain.Trade;
using Litterfall.Forecasting;
using Litterfall.UnitTests.House;
using Litterfall.Workshop.CuttingRoom;
using Litterfall.Workshop.Orders;
using Litterfall.Workshop.Supplying;

namespace Litterfall.UnitTests.Workshop.CuttingRoom;

/// <summary>
/// What lies on the table: parts of orders, sheets, rules, what fits nowhere, what is late.
/// </summary>
public sealed class CutTableTests
{
    private static CutMaterial Material(TableFacts facts) => Assert.Single(CutMaterial.LayAll(facts));

    /// <summary>
    /// Eight kits of 300 × 300 mm outside with walls of 4 mm: the barrier is the inside 292 × 277 mm, less
    /// cork of 15 mm at the back, with an upturn of 10 mm on all sides: 312 × 297.
    /// </summary>
    [Fact]
    public void Eight_kits_want_eight_barriers()
    {
        var numbers = DesignNumbers.Shape(
            DesignChecker
                .Check(SampleFiles.Read("samples/ld-204-shop-kits.viv.yaml"), SampleFiles.Catalog)
                .Value!
        );
        var item = new OrderItem
        {
            Kind = OrderItemKind.Kit,
            Name = "kits",
            Amount = 8,
        };
        var order = new Order
        {
            Number = 204,
            Customer = "pelloway",
            Promised = TableScene.Today,
        };
        var barrier = Assert.Single(WantedPart.FromDesign(order, item, numbers, null), p =>
            p.Part == "barrier"
        );
        Assert.Equal((8, 312.0, 297.0), (barrier.Count, barrier.Length, barrier.Width));
        Assert.Equal(TableScene.Today, barrier.Day);
        Assert.Equal("plastic-fly-screen", barrier.Material);
    }

    /// <summary>
    /// Equal parts are one demand; of equal parts the one wanted first has the first number.
    /// </summary>
    [Fact]
    public void Orders_wanted_first_are_cut_first()
    {
        var job = TableScene.Job(TableScene.Stocked());
        Assert.Equal(2, Assert.Single(job.Task.Parts).Count);
        Assert.Equal(
            [(5, 10.0), (7, 454.0)],
            PlacedPiece.Read(job).Select(p => (p.Piece.Order!.Value, p.Place.X))
        );
        Assert.Equal(TableScene.Today.AddDays(10), job.Wanted);
    }

    /// <summary>
    /// Offcuts come first and count 0.4 of 40 a square meter: 0.3 × 0.5 m of it 2.40; a sheet in stock counts
    /// a hundredth less than the 20 that a new one costs.
    /// </summary>
    [Fact]
    public void Offcuts_then_stock_then_what_is_bought()
    {
        var ledger = TableScene
            .Stocked()
            .Make("ACRY-9", 0.15, l =>
                l with
                {
                    Good = TableScene.Key,
                    Form = SheetForm.Offcut,
                    LengthMillimeters = 500,
                    WidthMillimeters = 300,
                    ThicknessMillimeters = 3,
                }
            );
        var facts = TableScene.Facts(ledger, TableScene.Supply(TableScene.Sheet), TableScene.Lid(5, 1, 10));
        var supply = Material(facts).Supply;
        Assert.Equal(
            [CutSourceKind.Offcut, CutSourceKind.Sheet, CutSourceKind.Buy],
            supply.Select(s => s.Source.Kind)
        );
        Assert.Equal([2.40m, 19.80m, 20m], supply.Select(s => s.Sheet.Price!.Value));
        Assert.Equal([1, 2, null], supply.Select(s => s.Sheet.Count));
        // Another thickness is another material.
        var thick = facts with { Wanted = [TableScene.Lid(5, 1, 10) with { Millimeters = 5 }] };
        Assert.Empty(Material(thick).Supply);
    }

    [Fact]
    public void What_a_plan_holds_is_neither_wanted_nor_free()
    {
        var ledger = TableScene.Stocked();
        var job = TableScene.Job(ledger);
        var facts = TableScene.Facts(
            ledger,
            TableScene.Supply(),
            TableScene.Lid(7, 1, 20),
            TableScene.Lid(5, 3, 10)
        ) with
        {
            Jobs = [job],
        };
        var material = Material(facts);
        Assert.Equal((2, 2), (material.Count, material.Planned));
        Assert.Equal(1, Assert.Single(material.Supply).Sheet.Count);
        var dropped = facts with { Jobs = [job with { State = CuttingJobState.Dropped }] };
        Assert.Equal((4, 2), (Material(dropped).Count, Material(dropped).Supply[0].Sheet.Count));
    }

    /// <summary>Glass of 6 mm: twice its thickness is less than the 15 mm of the shop; of 10 mm it is more.
    /// </summary>
    [Theory]
    [InlineData(6.0, 15)]
    [InlineData(10.0, 20)]
    public void Strips_are_never_narrower_than_glass_breaks(double thickness, double strip)
    {
        var usual = UsualRules.For("float-glass", SampleFiles.Catalog.Find("float-glass"));
        Assert.False(usual.IsCutHere);
        Assert.Equal((0.0, 15.0), (usual.Kerf, usual.Trim));
        Assert.Contains("source not checked", usual.Source, StringComparison.Ordinal);
        Assert.Equal(strip, usual.StripOf(thickness));
    }

    [Theory]
    [InlineData(1100, 300, true, "split its length into 2 pieces with a joint")]
    [InlineData(400, 700, false, "It fits when it is turned by a quarter")]
    [InlineData(5000, 5000, true, "order it cut to size")]
    public void A_part_that_fits_nowhere_is_named_with_the_nearest_way(
        double length,
        double width,
        bool mayTurn,
        string way
    )
    {
        var facts = TableScene.Facts(
            TableScene.Stocked(),
            TableScene.Supply(),
            TableScene.Lid(5, 1, 10, length, width),
            TableScene.Lid(5, 1, 10)
        ) with
        {
            Rules = [TableScene.Rules with { MayTurn = mayTurn }],
        };
        var material = Material(facts);
        var large = Assert.Single(material.Oversize);
        Assert.StartsWith("The lid of tank (", large.Words, StringComparison.Ordinal);
        Assert.Contains("980 × 480 mm inside its trim", large.Words, StringComparison.Ordinal);
        Assert.Contains(way, large.Words, StringComparison.Ordinal);
        // The others are cut all the same.
        Assert.Single(TaskDraft.Make(material)!.Pieces);
    }

    [Fact]
    public void A_changed_order_makes_its_plan_stale()
    {
        var ledger = TableScene.Stocked();
        var job = TableScene.Job(ledger);
        var facts = TableScene.Facts(
            ledger,
            TableScene.Supply(),
            TableScene.Lid(7, 1, 20),
            TableScene.Lid(5, 1, 10)
        ) with
        {
            Jobs = [job],
        };
        string? Stale(TableFacts now) => StaleJob.Find(job, now, n => $"LD-{n}");
        Assert.Null(Stale(facts));
        var smaller = facts with { Wanted = [TableScene.Lid(7, 1, 20), TableScene.Lid(5, 1, 10, 430)] };
        Assert.Equal(
            "LD-5 has changed since this was planned: the lid 441 × 300 mm of tank is no longer wanted so. "
                + "Plan again.",
            Stale(smaller)
        );
        ledger.Write("ACRY-1", MovementKind.Scrapped, 1.0);
        Assert.Equal(
            "Sheet ACRY-1 is no longer there. Plan again.",
            Stale(facts with { Book = ledger.Book })
        );
    }

    /// <summary>
    /// Parts of 0.2646 m² in a plan of one sheet of 0.5 m² that is bought, 0.1 m² of the same order in none:
    /// 0.6 m² are needed, and only that sheet serves.
    /// </summary>
    [Fact]
    public void Sheets_of_a_plan_are_bought_instead_of_area()
    {
        var job = TableScene.Job(TableScene.Stocked());
        job = job with
        {
            Sources = [job.Sources[0] with { Kind = CutSourceKind.Buy, Lot = null, Offer = "north-sheet" }],
        };
        var order = new Order
        {
            Number = 5,
            Customer = "voss",
            State = OrderState.Accepted,
            Goods = [new QuotedGood(TableScene.Key, "acrylic sheet", StockUnit.SquareMeters, 0.2323, 9m)],
        };
        var supply = TableScene.Supply(
            TableScene.Sheet,
            TableScene.Sheet with
            {
                Key = "north-cut",
                Pack = "a square meter, cut to size",
                Amount = 1,
                LengthMillimeters = null,
                WidthMillimeters = null,
                Tiers = [new PriceTier(1, 1m)],
            }
        );
        var need = Assert.Single(
            NetNeed.Read(
                [order],
                StockPicture.Read(Litterfall.Workshop.Stock.StockBook.Empty, TableScene.Today),
                supply,
                PlannedNeed.Read([job])
            )
        );
        Assert.Equal(0.6, need.ToBuy, 1e-9);
        var plan = BuyingPlan.Find(
            [need],
            supply,
            new BuyingWish("EUR", TableScene.Today),
            Xunit.TestContext.Current.CancellationToken
        );
        var line = Assert.Single(Assert.Single(plan.Purchases).Lines);
        Assert.Equal(("north-sheet", 2), (line.Offer, line.Packs));
    }

    [Fact]
    public void A_plan_is_a_task_of_its_day()
    {
        var job = TableScene.Job(TableScene.Stocked());
        var span = (TableScene.Today, TableScene.Today.AddDays(6));
        DayTask Task(IReadOnlyDictionary<int, OrderDays> days) =>
            Assert.Single(CuttingTasks.Find([job], [], span, days, 7));
        // A week before the first promised day is in 3 days.
        var task = Task(new Dictionary<int, OrderDays>());
        Assert.Equal(TableScene.Today.AddDays(3), task.Day);
        Assert.Equal(("cutting-12", "/table/12", 14.0), (task.Key, task.Page, task.Minutes));
        Assert.Equal("Cut 2 parts of acrylic sheet, 3 mm (plan 12)", task.Title);
        Assert.Equal("1 sheet: sheet ACRY-1", task.Detail);
        var day = new OrderDays
        {
            Order = 5,
            Cut = TableScene.Today.AddDays(1),
            Pack = TableScene.Today.AddDays(9),
            Ship = TableScene.Today.AddDays(9),
            Arrive = TableScene.Today.AddDays(10),
        };
        Assert.Equal(day.Cut, Task(new Dictionary<int, OrderDays> { [5] = day }).Day);
    }

    [Fact]
    public void Cuts_are_told_from_the_corner_of_the_sheet()
    {
        var job = TableScene.Job(TableScene.Stocked());
        var words = CutStep.Read(job.Plan.Sheets[0], job.Task, false).Select(s => s.Words).ToList();
        Assert.Equal("cut 1: trim across at 10 mm from the left edge", words[0]);
        Assert.Equal("cut 5: along at 310 mm from the lower edge; the piece is 300 mm", words[4]);
        Assert.Equal(
            "cut 6: across at 451 mm from the left edge, from 10 to 310 mm of the lower edge; "
                + "the piece is 441 mm",
            words[5]
        );
        Assert.EndsWith("the piece is 441 mm", words[6], StringComparison.Ordinal);
    }
}
