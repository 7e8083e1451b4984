using System.Diagnostics;
using Litterfall.Domain.Stock;
using Litterfall.Workshop.Stock;

namespace Litterfall.UnitTests.Workshop.Stock;

/// <summary>A recall over many years of a workshop: right, and at once.</summary>
[Collection("timed")]
public sealed class RecallSpeedTests
{
    private const int Lots = 10_000;
    private const int Lines = 100_000;
    private static readonly DateOnly Day = new(2026, 1, 5);

    [Fact]
    public void Ten_thousand_lots_are_traced_both_ways_within_a_second()
    {
        var (lots, lines) = Draw();
        var book = StockBook.Empty.With(lots, lines);
        // The first lot is in the most; the last one holds the most.
        var watch = Stopwatch.StartNew();
        var forward = Recall.Trace(book, Name(0))!;
        var backward = Genealogy.Ancestors(book, Name(Lots - 1));
        Assert.True(watch.Elapsed < TimeSpan.FromSeconds(1), $"{watch.Elapsed}");
        Assert.Equal(Closure(lines, Name(0), isForward: true), [.. forward.Into.Select(a => a.Lot.Id)]);
        Assert.Equal(Closure(lines, Name(Lots - 1), isForward: false), [.. backward]);
        Assert.True(forward.Into.Length > 100 && backward.Count > 100);
    }

    /// <summary>Reads all lines again and again until nothing new comes.</summary>
    private static HashSet<string> Closure(List<Movement> lines, string lot, bool isForward)
    {
        var found = new HashSet<string> { lot };
        for (var before = 0; before < found.Count;)
        {
            before = found.Count;
            foreach (var line in lines.Where(l => l.Kind == MovementKind.Used))
            {
                var (from, to) = isForward ? (line.Lot, line.Into!) : (line.Into!, line.Lot);
                if (found.Contains(from))
                {
                    found.Add(to);
                }
            }
        }

        found.Remove(lot);
        return found;
    }

    /// <summary>Each lot but the first takes from some of the thousand before it.</summary>
    private static (List<Lot> Lots, List<Movement> Lines) Draw()
    {
        var dice = new Random(5);
        var lots = Enumerable
            .Range(0, Lots)
            .Select(i => new Lot
            {
                Id = Name(i),
                Good = $"good-{i % 40}",
                Since = Day,
                Amount = 1e6,
            })
            .ToList();
        var lines = new List<Movement>(Lines);
        void Add(string lot, MovementKind kind, double amount, string? into) =>
            lines.Add(
                new()
                {
                    Id = lines.Count + 1,
                    Lot = lot,
                    Kind = kind,
                    Amount = amount,
                    Into = into,
                    Day = Day,
                    Who = "somebody",
                }
            );
        lots.ForEach(l => Add(l.Id, MovementKind.Made, 1e6, null));
        while (lines.Count < Lines)
        {
            var into = dice.Next(1, Lots);
            Add(Name(dice.Next(Math.Max(0, into - 1000), into)), MovementKind.Used, 1, Name(into));
        }

        return (lots, lines);
    }

    private static string Name(int i) => FormattableString.Invariant($"LOT-{i}");
}
