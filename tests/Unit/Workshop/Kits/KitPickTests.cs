using Litterfall.Domain.Checking;
using Litterfall.Domain.Stock;
using Litterfall.Domain.Trade;
using Litterfall.Forecasting;
using Litterfall.UnitTests.House;
using Litterfall.UnitTests.Workshop.Stock;
using Litterfall.Workshop.Kits;
using Litterfall.Workshop.Stock;

namespace Litterfall.UnitTests.Workshop.Kits;

/// <summary>Eight equal kits of the sample design, picked at once.</summary>
public sealed class KitPickTests
{
    private static readonly DesignNumbers Numbers = DesignNumbers.Shape(
        DesignChecker.Check(SampleFiles.Read("samples/ld-204-shop-kits.viv.yaml"), SampleFiles.Catalog).Value!
    );

    private static Good Bulk(string key, int walk) =>
        new()
        {
            Key = key,
            Name = key,
            Kind = GoodKind.Bulk,
            Unit = StockUnit.Liters,
            Place = "bay",
            Walk = walk,
        };

    private static readonly Dictionary<string, Good> Goods = new()
    {
        ["expanded-clay-8-16"] = Bulk("expanded-clay-8-16", 30),
        ["standard-rainforest"] = Bulk("standard-rainforest", 20),
        ["oak-leaves"] = Bulk("oak-leaves", 10),
    };

    private static Ledger Stocked() =>
        new Ledger()
            .Buy("CLAY-1", 10, 4m, l => l with { Good = "expanded-clay-8-16" })
            .Buy("CLAY-2", 40, 16m, l => l with { Good = "expanded-clay-8-16", Since = Ledger.Day.AddDays(0) })
            .Make("MIX-1", 60, l => l with { Good = "standard-rainforest", Cost = 30m })
            .Buy("OAK-1", 30, 21m, l => l with { Good = "oak-leaves" });

    /// <summary>
    /// The box is 300 × 300 mm outside with walls of 4 mm: 292 × 292 mm less 15 mm of cork at the back; clay 4 cm
    /// deep is 292 × 277 × 40 mm = 3.235 L in each kit.
    /// </summary>
    [Fact]
    public void Bags_hold_what_the_floor_takes()
    {
        var bags = KitItem.All(Numbers).Where(i => i.Letter.Length > 0).ToList();
        Assert.Equal(["A", "B", "C", "D"], bags.Select(b => b.Letter));
        Assert.Equal(0.292 * 0.277 * 0.04 * 1000, bags[0].Liters!.Value, 0.01);
        Assert.DoesNotContain(KitItem.All(Numbers), i => i.Key is "dust-mask" or "ficus-pumila");
        Assert.Equal(1, KitItem.All(Numbers).Single(i => i.Group == KitGroup.Living).Pieces);
    }

    [Fact]
    public void The_pick_walks_and_counts_all_kits()
    {
        var pick = KitPick.Plan(Numbers, 8, Goods, Stocked().Book, Ledger.Day, 204);
        Assert.Equal(
            ["oak-leaves", "standard-rainforest", "expanded-clay-8-16"],
            pick.Lines.Where(l => l.Good is not null).Select(l => l.Good!.Key)
        );
        var clay = pick.Lines.Single(l => l.Item.Letter == "A");
        Assert.Equal(8 * clay.Each, clay.Lots!.Lots.Sum(l => l.Amount), 1e-9);
        Assert.Equal(["CLAY-1", "CLAY-2"], clay.Lots.Lots.Select(l => l.Lot.Lot.Id));
        Assert.False(pick.IsShort);
    }

    /// <summary>Each kit gets its own liters to 1e-9, and the kits cost what left the lots, to the cent.</summary>
    [Fact]
    public void Kits_are_packed_with_lots_and_their_cost()
    {
        var ledger = Stocked();
        var before = ledger.Book;
        var pick = KitPick.Plan(Numbers, 8, Goods, before, Ledger.Day, 204);
        var good = Bulk("kit", 90) with { Kind = GoodKind.Tank, Unit = StockUnit.Pieces };
        var ids = Enumerable.Range(1, 8).Select(i => $"KIT-{i}").ToList();
        var step = pick.Pack(good, ids, 204, (Ledger.Day, "Tobin"));
        foreach (var line in step.Lines)
        {
            Assert.Null(Refused(ledger, step, line));
            ledger.Add(line);
        }

        var book = StockBook.Empty.With([.. ledger.Lots, .. step.Lots], ledger.Lines);
        var spent = before.Lots.Sum(l => l.Value) - ledger.Lots.Sum(l => book.Find(l.Id)!.Value);
        Assert.Equal(spent, ids.Sum(id => book.Find(id)!.Value));
        var each = pick.Lines.Where(l => l.Good is not null).Sum(l => l.Each);
        Assert.All(
            ids,
            id =>
            {
                Assert.Equal(each, -book.Find(id)!.Feeds.Sum(f => f.Line.Effect), 1e-9);
                Assert.Equal(204, book.Find(id)!.Lot.Order);
            }
        );
        // 3.235 L each: three kits and a part of the fourth come from the 10 L lot.
        Assert.Equal(4, Genealogy.Descendants(book, "CLAY-1").Count);
    }

    private static string? Refused(Ledger ledger, StockStep step, Movement line)
    {
        var lot = ledger.Lots.Concat(step.Lots).Single(l => l.Id == line.Lot);
        var state = ledger
            .Lines.Where(l => l.Lot == line.Lot)
            .Aggregate(default(LotState), (s, l) => s.After(l));
        return StockGate.Refusal(lot, state, line);
    }

    [Theory]
    [InlineData(3.24, 5, 1)]
    [InlineData(4.93, 8, 1)]
    [InlineData(0.3, 1, 1)]
    [InlineData(24, 30, 1)]
    [InlineData(24.1, 20, 2)]
    public void A_bag_closes_over_its_liters(double liters, double bag, int count) =>
        Assert.Equal(new BagSize(bag, count), BagSize.For(liters));

    [Fact]
    public void The_leaflet_warns_of_what_is_in_the_box()
    {
        var cautions = KitWords.Cautions(Numbers);
        Assert.Contains(cautions, c => c.Contains("N95", StringComparison.Ordinal));
        Assert.Contains(cautions, c => c.Contains("Sporothrix", StringComparison.Ordinal));
        Assert.DoesNotContain(cautions, c => c.Contains("electrician", StringComparison.Ordinal));
        var (low, high) = KitWords.Weight(10, 0.5);
        Assert.Equal((4.9, 5.1), (Math.Round(low, 9), Math.Round(high, 9)));
    }
}
