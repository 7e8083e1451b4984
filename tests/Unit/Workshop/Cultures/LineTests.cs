using Litterfall.Domain.Cultures;
using Litterfall.Domain.Stock;
using Litterfall.Workshop.Cultures;
using Litterfall.Workshop.Stock;

namespace Litterfall.UnitTests.Workshop.Cultures;

/// <summary>Lineage, odds, and steps of work that a recall can follow.</summary>
public sealed class LineTests
{
    private static readonly (DateOnly Day, string Who) Now = (new DateOnly(2026, 7, 1), "Ilse");

    private static Culture Cup(string number, string line = "A", string? mother = null) =>
        CultureModelTests.Cup(number, line, mother);

    /// <summary>
    /// One line of three: 0.1 + 0.9 · 0.15³ = 0.1030375 that none is left. With a second line of one, odds
    /// multiply: · (0.1 + 0.9 · 0.15) = 0.235, so 0.0242138. Fewer than one of two lines of one cup each:
    /// 0.235² = 0.055225; fewer than two: 1 − 0.765².
    /// </summary>
    [Fact]
    public void Odds_of_lines_are_exact()
    {
        Assert.Equal(0.1030375, CrashRisk.Find([3], 0.1, 0.15).None, 1e-9);
        Assert.Equal(0.1030375 * 0.235, CrashRisk.Find([3, 1], 0.1, 0.15).None, 1e-9);
        var two = CrashRisk.Find([1, 1], 0.1, 0.15);
        Assert.Equal(0.055225, two.Below(1), 1e-9);
        Assert.Equal(1 - (0.765 * 0.765), two.Below(2), 1e-9);
        Assert.Equal(1, two.Left.Sum(), 1e-12);
    }

    /// <summary>Lines that came from one mother are one, however they are named.</summary>
    [Fact]
    public void A_renamed_daughter_shares_the_fate_of_her_mother()
    {
        Culture[] all = [Cup("1"), Cup("2"), Cup("3", "B", "1"), Cup("4", "C")];
        Assert.Equal([3, 1], CrashRisk.Groups(all).Select(g => g.Length));
        Assert.Equal(
            ["1", "2", "3"],
            Lineage.OfLine(all, "folsomia-candida", "A").Select(c => c.Number).Order()
        );
        Assert.Equal([("1", 0), ("3", 1)], Lineage.Tree(all, "3").Select(r => (r.Culture.Number, r.Depth)));
    }

    private static StockBook Written(StockBook book, StockStep step)
    {
        var states = new Dictionary<string, LotState>(StringComparer.Ordinal);
        foreach (var lot in book.Lots)
        {
            states[lot.Lot.Id] = new LotState(lot.OnHand, lot.IsHeld);
        }

        var lots = book.Lots.Select(l => l.Lot).Concat(step.Lots).ToDictionary(l => l.Id);
        foreach (var line in step.Lines)
        {
            var state = states.GetValueOrDefault(line.Lot);
            Assert.Null(StockGate.Refusal(lots[line.Lot], state, line));
            states[line.Lot] = state.After(line);
        }

        return book.With(step.Lots, step.Lines.Select((l, i) => l with { Id = book.LastLine + 1 + i }));
    }

    /// <summary>
    /// A split writes both ways: the daughters hold one piece each, the mother is one piece again, and the
    /// recall of the mother names the daughters.
    /// </summary>
    [Fact]
    public void A_split_can_be_recalled()
    {
        var mother = Cup("SPR-1");
        var book = Written(
            StockBook.Empty,
            CultureSteps.Start(mother, null, 0, Now with { Day = mother.Since }).Stock
        );
        var (step, fault) = CultureSteps.Split(
            mother,
            1000,
            new(["SPR-2", "SPR-3"], 0.5, 0.24, [(1, 1), (1, 2)], "door"),
            Now
        );
        Assert.Null(fault);
        book = Written(book, step!.Stock);
        Assert.Equal([1.0, 1.0, 1.0], book.Lots.Select(l => Math.Round(l.OnHand, 9)));
        Assert.Equal(["SPR-2", "SPR-3"], Genealogy.Descendants(book, "SPR-1"));
        Assert.Equal([250.0, 250.0], step.Cultures.Skip(1).Select(c => c.StartedWith));
        Assert.All(step.Cultures.Skip(1), c => Assert.Equal("SPR-1", c.Mother));

        var held = CultureSteps.Hold(step.Cultures, "mites", book, Now);
        book = Written(book, held.Stock);
        Assert.All(book.Lots, l => Assert.True(l.IsHeld));
        Assert.All(held.Cultures, c => Assert.Equal("mites", c.Held));
        Assert.NotNull(
            CultureSteps.Split(held.Cultures[0], 1000, new(["X"], 0.5, 0.2, [(1, 1)], "door"), Now).Fault
        );
        var gone = CultureSteps.Discard(held.Cultures, (CultureEnd.Mites, ""), book, Now);
        book = Written(book, gone.Stock);
        Assert.All(book.Lots, l => Assert.False(l.HasSome));
        Assert.All(gone.Cultures, c => Assert.False(c.IsStanding));
    }

    /// <summary>A harvest into a tank's lot is a line too; into words it is only remembered.</summary>
    [Fact]
    public void A_harvest_into_a_lot_is_in_the_book()
    {
        var mother = Cup("SPR-1");
        var start = CultureSteps.Start(mother, null, 0, Now with { Day = mother.Since });
        var tank = CultureSteps.Start(Cup("LD-204"), null, 0, Now with { Day = mother.Since });
        var book = Written(Written(StockBook.Empty, start.Stock), tank.Stock);
        var (step, _) = CultureSteps.Harvest(mother, (1000, 250), "LD-204", book, Now);
        book = Written(book, step!.Stock);
        Assert.Equal(["LD-204"], Genealogy.Descendants(book, "SPR-1"));
        Assert.Equal(1, book.Find("SPR-1")!.OnHand, 1e-9);
        Assert.Empty(CultureSteps.Harvest(mother, (1000, 250), "old tank", book, Now).Step!.Stock.Lines);
        Assert.NotNull(CultureSteps.Harvest(mother, (1000, 0), "", book, Now).Fault);
    }
}
