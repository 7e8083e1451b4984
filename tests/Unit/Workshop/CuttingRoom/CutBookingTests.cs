using Litterfall.Domain.Cutting;
using Litterfall.Domain.Stock;
using Litterfall.UnitTests.Workshop.Stock;
using Litterfall.Workshop.CuttingRoom;
using Litterfall.Workshop.Orders;
using Litterfall.Workshop.Stock;

namespace Litterfall.UnitTests.Workshop.CuttingRoom;

/// <summary>
/// A plan written as cut: every square millimeter of the sheet goes somewhere, and comes back.
/// </summary>
public sealed class CutBookingTests
{
    private static readonly (DateOnly, string) When = (TableScene.Today, "Tobin");

    private static CutBooking Cut(Ledger ledger, CuttingJob job)
    {
        var (booking, fault) = CutBooking.Make(
            job,
            ledger.Book,
            TableScene.Acrylic,
            TableScene.Rules,
            When,
            30
        );
        Assert.Null(fault);
        return booking!;
    }

    private static StockBook After(Ledger ledger, StockStep step) =>
        ledger.Book.With(
            [.. ledger.Lots, .. step.Lots],
            step.Lines.Select((l, i) => l with { Id = ledger.Lines.Count + 1 + i })
        );

    /// <summary>
    /// Own worked example: parts 2 × 441 × 300 = 264 600; kept 980 × 177 = 173 460; trim 1000 × 500 −
    /// 980 × 480 = 29 600; cuts 980 × 3 + 2 × 300 × 3 = 4 740; the rest 92 × 300 = 27 600 mm².
    /// </summary>
    [Fact]
    public void Areas_of_a_sheet_are_the_sheet()
    {
        var job = TableScene.Job(TableScene.Stocked());
        var areas = JobTotals.Read(job).Areas[0];
        Assert.Equal(264_600, areas.Parts, 1e-6);
        Assert.Equal(173_460, areas.Offcuts, 1e-6);
        Assert.Equal(29_600, areas.Trim, 1e-6);
        Assert.Equal(4_740, areas.Kerf, 1e-6);
        Assert.Equal(27_600, areas.Waste, 1e-6);
        Assert.Equal(500_000, areas.Whole, 1e-6);
    }

    /// <summary>
    /// A second balance that knows no formula: each square millimeter of the sheet is looked at alone.
    /// </summary>
    [Fact]
    public void Counting_square_millimeters_gives_the_same()
    {
        var job = TableScene.Job(TableScene.Stocked());
        var sheet = job.Plan.Sheets[0];
        var counted = new int[5];
        for (var x = 0.5; x < 1000; x++)
        {
            for (var y = 0.5; y < 500; y++)
            {
                bool In(double left, double low, double length, double width) =>
                    x > left && x < left + length && y > low && y < low + width;
                var what =
                    sheet.Parts.Any(p => In(p.X, p.Y, p.Length, p.Width)) ? 0
                    : sheet.Offcuts.Any(o => In(o.X, o.Y, o.Length, o.Width)) ? 1
                    : !In(10, 10, 980, 480) ? 2
                    : sheet.Cuts.Any(c =>
                        c.Stage > 0
                        && (
                            c.IsUpright
                                ? In(c.At, c.From, 3, c.To - c.From)
                                : In(c.From, c.At, c.To - c.From, 3)
                        )
                    )
                        ? 3
                    : 4;
                counted[what]++;
            }
        }

        var areas = JobTotals.Read(job).Areas[0];
        Assert.Equal(
            [areas.Parts, areas.Offcuts, areas.Trim, areas.Kerf, areas.Waste],
            counted.Select(c => (double)c)
        );
    }

    /// <summary>
    /// The sheet of 0.5 m² leaves stock: 0.1323 m² into the parts of each order, 0.17346 m² onto the rack,
    /// 0.06194 m² thrown away. The offcut is worth 0.4 × 40 a square meter × 0.17346 = 2.78.
    /// </summary>
    [Fact]
    public void The_book_of_stock_takes_the_sheet_apart()
    {
        var ledger = TableScene.Stocked();
        var booking = Cut(ledger, TableScene.Job(ledger));
        var book = After(ledger, booking.Step);
        var sheet = book.Find("ACRY-1")!;
        Assert.Equal(0.5, sheet.OnHand, 1e-12);
        Assert.Equal(0.06194, sheet.Wasted, 1e-12);
        Assert.True(MassBalance.ForGood(book, TableScene.Acrylic).IsEven);
        var rack = book.Find(Assert.Single(booking.Job.Kept).Lot)!;
        Assert.Equal((0.17346, 2.78m), (Math.Round(rack.OnHand, 9), rack.Value));
        Assert.Equal(SheetForm.Offcut, rack.Lot.Form);
        Assert.Equal(["ACRY-1"], Genealogy.Ancestors(book, rack.Lot.Id));
        var picture = StockPicture.Read(book, TableScene.Today);
        Assert.Equal(0.1323, picture.UsedBy(5)[TableScene.Key].Amount, 1e-12);
        Assert.Equal(0.1323, picture.UsedBy(7)[TableScene.Key].Amount, 1e-12);
        Assert.Equal(
            [new CutMinutes(5, 15), new CutMinutes(7, 15)],
            booking.Job.Minutes.OrderBy(m => m.Order)
        );
        Assert.Empty(MassBalance.Unassigned(book));
    }

    /// <summary>Parts that go on into a tank are the order's once, not twice.</summary>
    [Fact]
    public void Parts_that_go_into_their_tank_are_not_counted_again()
    {
        var ledger = TableScene.Stocked();
        var booking = Cut(ledger, TableScene.Job(ledger));
        var parts = booking.Step.Lots.First(l => l.Order == 5);
        var tank = parts with { Id = "LD-1", Good = "tank", Form = null, Amount = 1 };
        var book = After(
            ledger,
            new StockStep(
                [.. booking.Step.Lots, tank],
                [
                    .. booking.Step.Lines,
                    new Movement
                    {
                        Lot = parts.Id,
                        Kind = MovementKind.Used,
                        Amount = parts.Amount,
                        Into = "LD-1",
                        Day = TableScene.Today,
                        Who = "Ilse",
                    },
                ]
            )
        );
        Assert.Equal(
            0.1323,
            StockPicture.Read(book, TableScene.Today).UsedBy(5)[TableScene.Key].Amount,
            1e-12
        );
    }

    [Fact]
    public void Taken_back_all_is_as_before()
    {
        var ledger = TableScene.Stocked();
        var booking = Cut(ledger, TableScene.Job(ledger));
        var cut = After(ledger, booking.Step);
        var (back, fault) = CutBooking.TakeBack(booking.Job, cut, When);
        Assert.Null(fault);
        Assert.Equal(CuttingJobState.Planned, back!.Job.State);
        var book = cut.With([], back.Step.Lines.Select((l, i) => l with { Id = cut.LastLine + 1 + i }));
        Assert.Equal((1.0, 40m), (book.Find("ACRY-1")!.OnHand, book.Find("ACRY-1")!.Value));
        Assert.All(booking.Step.Lots, l => Assert.False(book.Find(l.Id)!.HasSome));
    }

    [Fact]
    public void What_was_used_since_is_named()
    {
        var ledger = TableScene.Stocked();
        var booking = Cut(ledger, TableScene.Job(ledger));
        var cut = After(ledger, booking.Step);
        var offcut = booking.Job.Kept[0].Lot;
        var used = cut.With(
            [],
            [
                new Movement
                {
                    Id = cut.LastLine + 1,
                    Lot = offcut,
                    Kind = MovementKind.Scrapped,
                    Amount = 0.1,
                    Day = TableScene.Today,
                    Who = "Ilse",
                },
            ]
        );
        var (_, fault) = CutBooking.TakeBack(booking.Job, used, When);
        Assert.Equal($"{offcut} of this plan has been used since. Take that back first.", fault);
    }

    [Fact]
    public void A_sheet_that_is_gone_or_not_here_yet_is_named()
    {
        var ledger = TableScene.Stocked();
        var job = TableScene.Job(ledger);
        ledger.Write("ACRY-1", MovementKind.Scrapped, 0.8);
        var (_, gone) = CutBooking.Make(job, ledger.Book, TableScene.Acrylic, TableScene.Rules, When, 5);
        Assert.Equal("sheet ACRY-1 does not have enough left. Plan again, or count it.", gone);
        var bought = job with
        {
            Sources = [job.Sources[0] with { Kind = CutSourceKind.Buy, Lot = null, Offer = "north-sheet" }],
        };
        var (_, late) = CutBooking.Make(bought, ledger.Book, TableScene.Acrylic, TableScene.Rules, When, 5);
        Assert.Equal(
            "A sheet of acrylic sheet, 3 mm, 1000 × 500 mm, is not here yet. Receive it first.",
            late
        );
        ledger.Buy("ACRY-2", 0.5, 20m, l =>
            l with
            {
                Good = TableScene.Key,
                Form = SheetForm.Sheets,
                LengthMillimeters = 1000,
                WidthMillimeters = 500,
                ThicknessMillimeters = 3,
            }
        );
        Assert.Contains(Cut(ledger, bought).Step.Lines, l => l.Lot == "ACRY-2");
    }
}
