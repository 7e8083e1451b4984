using System.Diagnostics;
using Litterfall.Workshop.Tracing;

namespace Litterfall.UnitTests.Workshop.Tracing;

/// <summary>Lots traced against a worked example and against following every movement.</summary>
public sealed class LotGraphTests
{
    /// <summary>Own worked example: two soil batches, springtail cups, four kits, three shipments.</summary>
    private static readonly LotGraph Shop = LotGraph.From([
        new("PEAT-31", "MIX-07", 40),
        new("PEAT-31", "MIX-08", 12),
        new("PEAT-32", "MIX-08", 28),
        new("BARK-12", "MIX-07", 55),
        new("BARK-12", "MIX-08", 20),
        new("BARK-13", "MIX-08", 35),
        new("CHAR-03", "MIX-07", 14),
        new("CHAR-03", "MIX-08", 13),
        new("MIX-07", "KIT-101", 24),
        new("MIX-07", "KIT-102", 24),
        new("MIX-07", "KIT-103", 24),
        new("MIX-08", "KIT-103", 6),
        new("MIX-08", "KIT-104", 30),
        new("SPR-A4", "SPR-A7", null),
        new("SPR-A4", "SPR-A8", null),
        new("SPR-A7", "KIT-101", null),
        new("SPR-A7", "KIT-104", null),
        new("SPR-A8", "KIT-102", null),
        new("SPR-B1", "KIT-103", null),
        new("KIT-101", "SHIP-1", null),
        new("KIT-102", "SHIP-2", null),
        new("KIT-103", "SHIP-2", null),
        new("KIT-104", "SHIP-3", null),
    ]);

    [Fact]
    public void A_cup_of_springtails_and_a_bag_of_bark_forward()
    {
        string[] cups = ["KIT-101", "KIT-102", "KIT-104", "SHIP-1", "SHIP-2", "SHIP-3", "SPR-A7", "SPR-A8"];
        Assert.Equal(cups, Shop.Forward("SPR-A4"));
        Assert.Equal(["KIT-103", "KIT-104", "MIX-08", "SHIP-2", "SHIP-3"], Shop.Forward("BARK-13"));
    }

    [Fact]
    public void A_kit_backward()
    {
        string[] lots = ["BARK-12", "BARK-13", "CHAR-03", "MIX-07", "MIX-08", "PEAT-31", "PEAT-32", "SPR-B1"];
        Assert.Equal(lots, Shop.Backward("KIT-103"));
    }

    [Fact]
    public void Balances_of_the_batches()
    {
        var first = Shop.Balance("MIX-07", 96);
        Assert.Equal((109.0, 72.0, 24.0), (first.In, first.Used, first.Left));
        Assert.Equal(11.93, first.ShrinkPercent!.Value, 2);
        var second = Shop.Balance("MIX-08", 95);
        Assert.Equal((108.0, 36.0, 59.0), (second.In, second.Used, second.Left));
        Assert.Equal(12.04, second.ShrinkPercent!.Value, 2);
        Assert.Null(Shop.Balance("SPR-A4", null).Used);
    }

    [Fact]
    public void A_ring_is_named_along_its_movements()
    {
        var ring = LotGraph
            .From([new("A", "B", 1), new("B", "C", 1), new("C", "B", 1), new("C", "D", 1)])
            .Cycle;
        Assert.Equal(3, ring.Count);
        Assert.Equal(ring[0], ring[2]);
        Assert.Equal(["B", "C"], ring.Distinct().Order(StringComparer.Ordinal));
        Assert.Equal(["A", "A"], LotGraph.From([new("A", "A", 1)]).Cycle);
        Assert.Empty(Shop.Cycle);
    }

    [Fact]
    public void Closures_are_those_of_following_every_movement()
    {
        for (var seed = 0; seed < 200; seed++)
        {
            var random = new Random(seed);
            var count = 2 + random.Next(25);
            var uses = Enumerable
                .Range(0, random.Next(1, 60))
                .Select(_ =>
                {
                    var from = random.Next(count - 1);
                    return new LotUse($"L{from}", $"L{random.Next(from + 1, count)}", 1);
                })
                .ToList();
            var graph = LotGraph.From(uses);
            Assert.Empty(graph.Cycle);
            foreach (var lot in graph.Lots)
            {
                Assert.Equal(Followed(uses, lot, true), graph.Forward(lot));
                Assert.Equal(Followed(uses, lot, false), graph.Backward(lot));
            }
        }
    }

    /// <summary>
    /// Every ring of a random graph is one, and none is told where sorting by depth finds none.
    /// </summary>
    [Fact]
    public void A_ring_is_told_where_and_only_where_there_is_one()
    {
        for (var seed = 0; seed < 200; seed++)
        {
            var random = new Random(seed);
            var uses = Enumerable
                .Range(0, 12)
                .Select(_ => new LotUse($"L{random.Next(9)}", $"L{random.Next(9)}", 1))
                .ToList();
            var isRing = uses.Exists(u => Followed(uses, u.To, true).Append(u.To).Contains(u.From));
            var ring = LotGraph.From(uses).Cycle;
            Assert.Equal(isRing, ring.Count > 0);
            for (var i = 0; i + 1 < ring.Count; i++)
            {
                Assert.Contains(uses, u => u.From == ring[i] && u.To == ring[i + 1]);
            }
        }
    }

    [Fact]
    public void A_hundred_thousand_movements_are_traced_at_once()
    {
        var random = new Random(3);
        var uses = new List<LotUse>();
        for (var i = 0; i < 100_000; i++)
        {
            var from = random.Next(9_999);
            uses.Add(new LotUse($"LOT-{from:00000}", $"LOT-{random.Next(from + 1, 10_000):00000}", 1));
        }

        var watch = Stopwatch.StartNew();
        var graph = LotGraph.From(uses);
        Assert.NotEmpty(graph.Forward(graph.Lots[0]));
        Assert.NotEmpty(graph.Backward("LOT-09999"));
        Assert.True(watch.ElapsedMilliseconds < 1000, $"{watch.ElapsedMilliseconds} ms");
    }

    private static IEnumerable<string> Followed(List<LotUse> uses, string lot, bool isForward)
    {
        var found = new SortedSet<string>(StringComparer.Ordinal);
        int before;
        do
        {
            before = found.Count;
            foreach (var (from, to, _) in uses)
            {
                var (near, far) = isForward ? (from, to) : (to, from);
                if (near == lot || found.Contains(near))
                {
                    found.Add(far);
                }
            }
        } while (found.Count > before);

        return found;
    }
}
