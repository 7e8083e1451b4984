using CsCheck;
using Litterfall.Domain.Stock;
using Litterfall.Workshop.Stock;

namespace Litterfall.UnitTests.Workshop.Stock;

/// <summary>The money in lots: what issues cost and what is left is what was paid, to the cent.</summary>
public sealed class StockCostTests
{
    /// <summary>
    /// Own worked example: 10.00 for 3 L; thirds are 3.33, 3.34 (6.67 less 3.33) and the rest, 3.33.
    /// </summary>
    [Fact]
    public void Three_issues_of_a_third_cost_what_was_paid()
    {
        var lot = new Ledger()
            .Buy("BARK-1", 3, 10.00m)
            .Use("BARK-1", 1, null)
            .Use("BARK-1", 1, null)
            .Use("BARK-1", 1, null)
            .Book.Find("BARK-1")!;
        Assert.Equal([10.00m, 3.33m, 3.34m, 3.33m], lot.Lines.Select(l => l.Cost));
        Assert.Equal(0, lot.Value);
        Assert.False(lot.HasSome);
    }

    /// <summary>
    /// Own worked example: 100 L for 50.00; 40 L go (20.00); a count finds 50 of 60 L, so 10 L (5.00) are
    /// lost; the rest of 25.00 leaves with the last 50 L.
    /// </summary>
    [Fact]
    public void A_count_that_finds_less_costs_what_is_missing()
    {
        var ledger = new Ledger().Buy("PEAT-1", 100, 50.00m).Use("PEAT-1", 40, null);
        var count = Corrections.Count(ledger.Book.Find("PEAT-1")!, 50, Ledger.Day, "Tobin", "torn bag")!;
        Assert.Equal((-10.0, "torn bag"), (count.Amount, count.Note));
        var lot = ledger.Add(count).Book.Find("PEAT-1")!;
        Assert.Equal((50.0, 25.00m, 5.00m), (lot.OnHand, lot.Value, lot.Lines[^1].Cost));
        Assert.Null(Corrections.Count(lot, 50, Ledger.Day, "Tobin", ""));
    }

    /// <summary>Own worked example: a line taken back brings amount and money back as they were.</summary>
    [Fact]
    public void A_line_taken_back_brings_its_money_back_once()
    {
        var ledger = new Ledger().Buy("CHAR-1", 7, 20.00m).Make("MIX-1", 10).Use("CHAR-1", 3, "MIX-1");
        var before = ledger.Book;
        Assert.Equal(8.57m, before.Find("MIX-1")!.Value);
        var (back, fault) = Corrections.TakeBack(before.Find("CHAR-1")!, 3, Ledger.Day, "Ilse", "wrong lot");
        Assert.Null(fault);
        var after = ledger.Add(back!).Book;
        Assert.Equal((7.0, 20.00m), (after.Find("CHAR-1")!.OnHand, after.Find("CHAR-1")!.Value));
        Assert.Equal(0, after.Find("MIX-1")!.Value);
        Assert.Equal(
            "This line is taken back already.",
            Corrections.TakeBack(after.Find("CHAR-1")!, 3, Ledger.Day, "Ilse", "").Refusal
        );
        Assert.StartsWith(
            "This line takes another one back.",
            Corrections.TakeBack(after.Find("CHAR-1")!, 4, Ledger.Day, "Ilse", "").Refusal,
            StringComparison.Ordinal
        );
    }

    /// <summary>
    /// Own worked example: 60 L of bark for 24.00 and 40 L of peat for 10.00 become a mix of 88 L; 44 L of
    /// it go into each of two kits: 17.00 each, and the order that gets one pays that.
    /// </summary>
    [Fact]
    public void The_cost_of_a_kit_is_that_of_the_lots_in_it()
    {
        var book = new Ledger()
            .Buy("BARK-1", 60, 24.00m)
            .Buy("PEAT-1", 40, 10.00m)
            .Make("MIX-1", 88)
            .Use("BARK-1", 60, "MIX-1")
            .Use("PEAT-1", 40, "MIX-1")
            .Make("KIT-1", 1)
            .Use("MIX-1", 44, "KIT-1")
            .Make("KIT-2", 1)
            .Use("MIX-1", 44, "KIT-2")
            .Sell("KIT-1", 1, "204")
            .Book;
        Assert.Equal(17.00m, book.Find("KIT-2")!.Value);
        Assert.Equal(17.00m, book.Find("KIT-1")!.Lines[^1].Cost);
        Assert.Equal(0, book.Value("mix"));
    }

    /// <summary>
    /// Own worked example: a mix written with the 5.00 its parts cost has 5.00, not 10.00; what is added on
    /// another day comes on top: 1.00 for 2 of 10 L at 5.00.
    /// </summary>
    [Fact]
    public void A_batch_that_carries_its_cost_is_not_charged_twice()
    {
        var ledger = new Ledger().Buy("PEAT-1", 20, 10.00m);
        Movement use = new()
        {
            Lot = "PEAT-1",
            Kind = MovementKind.Used,
            Amount = 10,
            Into = "MIX-1",
            Day = Ledger.Day,
            Who = "Ilse",
        };
        var cost = ledger.Book.CostOf([use]);
        Assert.Equal(5.00m, cost);
        ledger.Make("MIX-1", 9, l => l with { Cost = cost }).Add(use);
        Assert.Equal(5.00m, ledger.Book.Find("MIX-1")!.Value);
        ledger.Add(use with { Amount = 2, Day = Ledger.Day.AddDays(1) });
        Assert.Equal(6.00m, ledger.Book.Find("MIX-1")!.Value);
    }

    /// <summary>
    /// Whatever happens to lots, money neither comes nor goes: paid = left + gone for good. The sums are made
    /// here from the lines alone.
    /// </summary>
    [Fact]
    public void Money_is_kept_to_the_cent_in_every_order_of_lines()
    {
        var steps = Gen.Select(Gen.Int[0, 7], Gen.Int[0, 2], Gen.Double[0.001, 12], Gen.Int[0, 1]);
        Gen.Select(Gen.Int[1, 500000].Array[3], steps.Array[0, 60])
            .Sample(
                (cents, story) =>
                {
                    var ledger = Told([.. cents.Select(c => c / 100m)], story);
                    var whole = ledger.Book;
                    var gone = whole
                        .Lots.SelectMany(a => a.Lines)
                        .Where(l => IsGone(l.Line) && !(l.Line.Into is { } into && whole.Find(into) != null))
                        .Sum(l => l.Cost);
                    // A lot whose arrival was taken back was never paid.
                    var paid = ledger
                        .Lots.Where(l =>
                            whole.Find(l.Id)!.Standing.Any(s => s.Line.Kind == MovementKind.Received)
                        )
                        .Sum(l => l.Cost);
                    return paid == whole.Lots.Sum(a => a.Value) + gone
                        && whole.Lots.All(a => a.OnHand >= 0 && (a.HasSome || a.Value == 0));
                },
                iter: 2000,
                seed: "0000KRKhdEj0"
            );
    }

    /// <summary>A book read line by line is the book read at once.</summary>
    [Fact]
    public void A_book_that_grows_is_the_book_read_at_once()
    {
        var steps = Gen.Select(Gen.Int[0, 7], Gen.Int[0, 2], Gen.Double[0.001, 12], Gen.Int[0, 1]);
        Gen.Select(steps.Array[0, 60], Gen.Int[1, 20])
            .Sample(
                (story, chunk) =>
                {
                    var ledger = Told([12.34m, 0.07m, 99.99m], story);
                    var grown = ledger
                        .Lines.Chunk(chunk)
                        .Aggregate(StockBook.Empty, (book, part) => book.With(ledger.Lots, part));
                    var whole = ledger.Book;
                    return grown.LastLine == whole.LastLine
                        && whole.Lots.All(a =>
                            grown.Find(a.Lot.Id) is { } b
                            && (a.OnHand, a.Value, a.IsHeld) == (b.OnHand, b.Value, b.IsHeld)
                            && a.Lines.SequenceEqual(b.Lines)
                            && a.Feeds.SequenceEqual(b.Feeds)
                        );
                },
                iter: 500,
                seed: "0000KRKhdEj0"
            );
    }

    private static bool IsGone(Movement line) =>
        line.Kind
            is MovementKind.Used
                or MovementKind.Sold
                or MovementKind.Died
                or MovementKind.Scrapped
                or MovementKind.Counted;

    /// <summary>Three bought lots, a mix, and what the steps say as far as the gate lets it in.</summary>
    private static Ledger Told(decimal[] prices, (int Kind, int Lot, double Amount, int Way)[] story)
    {
        var ledger = new Ledger()
            .Buy("AA-1", 30, prices[0])
            .Buy("BB-1", 7.5, prices[1])
            .Buy("CC-1", 100, prices[2])
            .Make("MIX-1", 1000);
        foreach (var (kind, which, amount, way) in story)
        {
            var book = ledger.Book;
            var lot = book.Find(new[] { "AA-1", "BB-1", "CC-1" }[which])!;
            var line = kind switch
            {
                0 or 1 => Line(lot, MovementKind.Used, amount, way == 0 ? "MIX-1" : "somewhere"),
                2 => Line(lot, MovementKind.Sold, amount, "201"),
                3 => Line(lot, MovementKind.Scrapped, amount, null),
                4 => Line(lot, MovementKind.Died, lot.OnHand, null),
                5 => Corrections.Count(lot, amount * 3, Ledger.Day, "Ilse", "count"),
                6 when lot.Standing.LastOrDefault() is { } last => Corrections
                    .TakeBack(lot, last.Line.Id, Ledger.Day, "Ilse", "wrong")
                    .Line,
                _ => Line(lot, way == 0 ? MovementKind.Held : MovementKind.Released, 0, null),
            };
            if (line is not null && StockGate.Refusal(lot.Lot, new(lot.OnHand, lot.IsHeld), line) is null)
            {
                ledger.Add(line);
            }
        }

        return ledger;
    }

    private static Movement Line(LotAccount lot, MovementKind kind, double amount, string? into) =>
        new()
        {
            Lot = lot.Lot.Id,
            Kind = kind,
            Amount = amount,
            Into = into,
            Day = Ledger.Day,
            Who = "Ilse",
        };
}
