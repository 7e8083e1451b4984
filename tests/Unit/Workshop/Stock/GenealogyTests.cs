using CsCheck;
using Litterfall.Domain.Stock;
using Litterfall.Domain.Trade;
using Litterfall.Workshop.Stock;

namespace Litterfall.UnitTests.Workshop.Stock;

/// <summary>Where lots went and what is in them. The small workshop is an own worked example.</summary>
public sealed class GenealogyTests
{
    /// <summary>
    /// Two peats, two barks and a charcoal in two mixes; springtails split twice; four kits.
    /// </summary>
    private static Ledger Workshop() =>
        new Ledger()
            .Buy("PEAT-31", 100, 30m)
            .Buy("PEAT-32", 100, 30m)
            .Buy("BARK-12", 100, 30m)
            .Buy("BARK-13", 100, 30m)
            .Buy("CHAR-03", 100, 30m)
            .Make("MIX-07", 96)
            .Use("PEAT-31", 40, "MIX-07")
            .Use("BARK-12", 55, "MIX-07")
            .Use("CHAR-03", 14, "MIX-07")
            .Make("MIX-08", 95)
            .Use("PEAT-31", 12, "MIX-08")
            .Use("PEAT-32", 28, "MIX-08")
            .Use("BARK-12", 20, "MIX-08")
            .Use("BARK-13", 35, "MIX-08")
            .Use("CHAR-03", 13, "MIX-08")
            .Make("SPR-A4", 3)
            .Make("SPR-A7", 2)
            .Make("SPR-A8", 1)
            .Make("SPR-B1", 1)
            .Use("SPR-A4", 1, "SPR-A7")
            .Use("SPR-A4", 1, "SPR-A8")
            .Make("KIT-101", 1)
            .Make("KIT-102", 1)
            .Make("KIT-103", 1)
            .Make("KIT-104", 1)
            .Use("MIX-07", 24, "KIT-101")
            .Use("MIX-07", 24, "KIT-102")
            .Use("MIX-07", 24, "KIT-103")
            .Use("MIX-08", 6, "KIT-103")
            .Use("MIX-08", 30, "KIT-104")
            .Use("SPR-A7", 1, "KIT-101")
            .Use("SPR-A7", 1, "KIT-104")
            .Use("SPR-A8", 1, "KIT-102")
            .Use("SPR-B1", 1, "KIT-103")
            .Sell("KIT-101", 1, "1")
            .Sell("KIT-102", 1, "2")
            .Sell("KIT-103", 1, "2")
            .Sell("KIT-104", 1, "3");

    [Theory]
    [InlineData("SPR-A4", "KIT-101 KIT-102 KIT-104", "1 2 3")]
    [InlineData("BARK-13", "KIT-103 KIT-104", "2 3")]
    public void Forward_goes_to_kits_and_orders(string lot, string kits, string orders)
    {
        var recall = Recall.Trace(Workshop().Book, lot)!;
        Assert.Equal(
            kits.Split(' '),
            recall
                .Into.Select(a => a.Lot.Id)
                .Where(id => id.StartsWith("KIT", StringComparison.Ordinal))
                .Order(StringComparer.Ordinal)
        );
        Assert.Equal(orders.Split(' '), recall.Orders.Select(o => o.Order));
    }

    [Fact]
    public void Backward_ends_at_what_was_bought_and_bred()
    {
        var book = Workshop().Book;
        var roots = Genealogy
            .Ancestors(book, "KIT-103")
            .Where(id => book.Find(id)!.Feeds.IsEmpty)
            .Order(StringComparer.Ordinal);
        Assert.Equal(["BARK-12", "BARK-13", "CHAR-03", "PEAT-31", "PEAT-32", "SPR-B1"], roots);
    }

    /// <summary>109 L of parts gave 96 L: 11.93 %; 108 L gave 95 L: 12.04 %.</summary>
    [Theory]
    [InlineData("MIX-07", 96, 72, 24, 11.93)]
    [InlineData("MIX-08", 95, 36, 59, 12.04)]
    public void A_batch_adds_up_and_tells_what_mixing_took(
        string lot,
        double made,
        double used,
        double left,
        double shrink
    )
    {
        var account = Workshop().Book.Find(lot)!;
        var balance = MassBalance.ForLot(account, StockUnit.Liters);
        Assert.Equal((made, used, left), (balance.In, balance.Used, balance.OnHand));
        Assert.True(balance.IsEven);
        Assert.Equal(shrink, 100 * MassBalance.Shrinkage(account)!.Value, 0.005);
    }

    /// <summary>2 % of 100 L may be missing and no more; of what is counted in pieces nothing.</summary>
    [Fact]
    public void What_is_missing_is_told_beyond_what_jugs_can_read()
    {
        Ledger Counted(double found)
        {
            var ledger = new Ledger().Buy("PEAT-1", 100, 10m).Use("PEAT-1", 30, "nowhere");
            return ledger.Add(Corrections.Count(ledger.Book.Find("PEAT-1")!, found, Ledger.Day, "Ilse", "")!);
        }

        var close = Counted(68.1).Book;
        Assert.True(MassBalance.ForLot(close.Find("PEAT-1")!, StockUnit.Liters).IsEven);
        Assert.False(MassBalance.ForLot(close.Find("PEAT-1")!, StockUnit.Pieces).IsEven);
        var far = MassBalance.ForLot(Counted(67.9).Book.Find("PEAT-1")!, StockUnit.Liters);
        Assert.Equal(2.1, far.Missing, 1e-9);
        Assert.False(far.IsEven);
        Assert.Equal("nowhere", Assert.Single(MassBalance.Unassigned(close)).Line.Into);
    }

    [Fact]
    public void A_hold_goes_down_the_line_and_picking_leaves_it_out()
    {
        var ledger = Workshop();
        foreach (var line in Holds.WithDescendants(ledger.Book, "PEAT-32", Ledger.Day, "Ilse", "gnat eggs"))
        {
            ledger.Add(line);
        }

        var book = ledger.Book;
        Assert.True(book.Find("PEAT-32")!.IsHeld && book.Find("MIX-08")!.IsHeld);
        Assert.False(book.Find("MIX-07")!.IsHeld || book.Find("KIT-104")!.IsHeld);
        Assert.Equal("from PEAT-32: gnat eggs", book.Find("MIX-08")!.Lines[^1].Line.Note);
        var picking = Picking.Propose(book, "mix", 40, Ledger.Day);
        Assert.Equal((24.0, 16.0), (picking.Lots.Sum(l => l.Amount), picking.Short));
        Assert.Equal(("MIX-08", "on hold"), (picking.PassedOver[0].Lot.Lot.Id, picking.PassedOver[0].Why));
        Assert.Empty(Holds.WithDescendants(book, "MIX-08", Ledger.Day, "Ilse", "again"));
    }

    /// <summary>
    /// First the lot that spoils first, then the oldest; held, expired and quarantined never.
    /// </summary>
    [Fact]
    public void Picking_takes_what_spoils_first()
    {
        var book = new Ledger()
            .Buy("SPR-1", 4, 8m)
            .Buy("SPR-2", 4, 8m, l => l with { Expires = Ledger.Day.AddDays(9) })
            .Buy("SPR-3", 4, 8m, l => l with { Expires = Ledger.Day.AddDays(5) })
            .Buy("SPR-4", 4, 8m, l => l with { Expires = Ledger.Day.AddDays(-1) })
            .Buy("SPR-5", 4, 8m, l => l with { QuarantinedUntil = Ledger.Day.AddDays(3) })
            .Book;
        var picking = Picking.Propose(book, "spr", 10, Ledger.Day);
        Assert.Equal([("SPR-3", 4.0), ("SPR-2", 4), ("SPR-1", 2)], picking.Lots.Select(Told));
        Assert.False(picking.IsShort);
        Assert.Equal(["SPR-4", "SPR-5"], picking.PassedOver.Select(p => p.Lot.Lot.Id));
        Assert.Equal(2, Picking.Propose(book, "spr", 14, Ledger.Day).Short, 1e-9);
        Assert.Equal(["SPR-4", "SPR-3"], StockWatch.Expiring(book, Ledger.Day, 6).Select(a => a.Lot.Id));
        Assert.Equal(4, Picking.Propose(book, "spr", 14, Ledger.Day.AddDays(3)).PassedOver.Length + 3);
    }

    private static (string Lot, double Amount) Told(Picked picked) => (picked.Lot.Lot.Id, picked.Amount);

    /// <summary>On random graphs the walk finds what repeated joining of edges finds.</summary>
    [Fact]
    public void The_walk_is_the_closure_of_the_edges()
    {
        Gen.Int[0, 400]
            .Array[0, 40]
            .Sample(
                picks =>
                {
                    const int n = 12;
                    var ledger = new Ledger();
                    for (var i = 0; i < n; i++)
                    {
                        ledger.Make(Name(i), 1000);
                    }

                    var edges = picks
                        .Select(p => (From: p % n, Into: p / n % n))
                        .Where(e => e.From < e.Into)
                        .ToList();
                    edges.ForEach(e => ledger.Use(Name(e.From), 1, Name(e.Into)));
                    var book = ledger.Book;
                    var reach = new bool[n, n];
                    edges.ForEach(e => reach[e.From, e.Into] = true);
                    for (var k = 0; k < n; k++)
                        for (var i = 0; i < n; i++)
                            for (var j = 0; j < n; j++)
                            {
                                reach[i, j] |= reach[i, k] && reach[k, j];
                            }

                    return Enumerable
                        .Range(0, n)
                        .All(i =>
                            Genealogy
                                .Descendants(book, Name(i))
                                .ToHashSet()
                                .SetEquals(Enumerable.Range(0, n).Where(j => reach[i, j]).Select(Name))
                            && Genealogy
                                .Ancestors(book, Name(i))
                                .ToHashSet()
                                .SetEquals(Enumerable.Range(0, n).Where(j => reach[j, i]).Select(Name))
                        );
                },
                iter: 300,
                seed: "0000KRKhdEj0"
            );
    }

    /// <summary>An edge that was taken back is none.</summary>
    [Fact]
    public void A_use_taken_back_leads_nowhere()
    {
        var ledger = new Ledger().Buy("PEAT-1", 10, 1m).Make("MIX-1", 5).Use("PEAT-1", 4, "MIX-1");
        ledger.Add(Corrections.TakeBack(ledger.Book.Find("PEAT-1")!, 3, Ledger.Day, "Ilse", "slip").Line!);
        Assert.Empty(Genealogy.EdgesFrom(ledger.Book.Find("PEAT-1")!));
        Assert.Empty(Genealogy.Ancestors(ledger.Book, "MIX-1"));
        Assert.Null(Recall.Trace(ledger.Book, "PEAT-9"));
    }

    private static string Name(int i) => FormattableString.Invariant($"LOT-{i}");
}
