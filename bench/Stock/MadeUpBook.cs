using System.Globalization;
using Litterfall.Domain.Stock;

namespace Litterfall.Bench.Stock;

/// <summary>
/// A made-up workshop of many years: bought lots go into mixes, mixes and bought lots into tanks, cultures
/// split in long chains, tanks leave to orders.
/// </summary>
internal static class MadeUpBook
{
    private static readonly DateOnly Day = new(2026, 1, 5);

    /// <summary>So many lots and lines; the same for the same seed.</summary>
    public static (List<Lot> Lots, List<Movement> Lines) Draw(int lots, int lines, int seed)
    {
        var dice = new Random(seed);
        var made = new List<Lot>(lots);
        var book = new List<Movement>(lines);
        var (bought, mixed, split) = (lots / 4, lots / 2, lots * 6 / 10);
        for (var i = 0; i < lots; i++)
        {
            var isBought = i < bought;
            made.Add(
                new()
                {
                    Id = Name(i),
                    Good =
                        i < bought ? $"good-{i % 60}"
                        : i < mixed ? "mix"
                        : i < split ? "culture"
                        : "tank",
                    Since = Day,
                    Supplier = isBought ? "farm" : null,
                    Cost = isBought ? dice.Next(100, 9000) / 100m : 0,
                    Amount = 1e6,
                }
            );
            Add(Name(i), isBought ? MovementKind.Received : MovementKind.Made, 1e6, null);
        }

        while (book.Count < lines - (lots - split))
        {
            var into = dice.Next(bought, lots);
            // A culture comes of the one before it, a mix of what was bought, a tank of anything earlier.
            var from =
                into < mixed ? dice.Next(0, bought)
                : into < split ? into - 1
                : dice.Next(0, split);
            Add(Name(from), MovementKind.Used, 1 + dice.NextDouble(), Name(into));
        }

        for (var i = split; i < lots; i++)
        {
            Add(Name(i), MovementKind.Sold, 1, (i / 3).ToString(CultureInfo.InvariantCulture));
        }

        return (made, book);

        void Add(string lot, MovementKind kind, double amount, string? into) =>
            book.Add(
                new()
                {
                    Id = book.Count + 1,
                    Lot = lot,
                    Kind = kind,
                    Amount = amount,
                    Into = into,
                    Day = Day,
                    Who = "somebody",
                }
            );
    }

    /// <summary>Everything a lot went into, by reading all lines until nothing new comes.</summary>
    public static HashSet<string> ByBruteForce(List<Movement> lines, string lot)
    {
        var found = new HashSet<string>(StringComparer.Ordinal) { lot };
        int before;
        do
        {
            before = found.Count;
            foreach (var line in lines)
            {
                if (line is { Kind: MovementKind.Used, Into: { } into } && found.Contains(line.Lot))
                {
                    found.Add(into);
                }
            }
        } while (found.Count > before);
        found.Remove(lot);
        return found;
    }

    public static string Name(int i) => string.Create(CultureInfo.InvariantCulture, $"LOT-{i}");
}
