using Litterfall.Domain.Stock;

namespace Litterfall.Workshop.Stock;

/// <summary>So much of a lot that went into another, or to an order.</summary>
/// <param name="From">The lot.</param>
/// <param name="Into">Lot it went into; for sales the order as its line names it.</param>
/// <param name="Amount">Amount in the unit of the good of the lot, lines taken back not counted.</param>
/// <param name="IsSale">True where it left to a customer.</param>
public sealed record LotEdge(string From, string Into, double Amount, bool IsSale);

/// <summary>Which lot went into which, read from the lines of the book.</summary>
public static class Genealogy
{
    /// <summary>Edges that leave a lot, one for each place it went to.</summary>
    /// <param name="lot">The lot.</param>
    public static IEnumerable<LotEdge> EdgesFrom(LotAccount lot) =>
        lot
            .Lines.Where(l =>
                l.Line.Into is not null && l.Line.Kind is MovementKind.Used or MovementKind.Sold
            )
            .GroupBy(l => (Into: l.Line.Into!, IsSale: l.Line.Kind == MovementKind.Sold))
            .Select(g => new LotEdge(lot.Lot.Id, g.Key.Into, -g.Sum(l => l.Line.Effect), g.Key.IsSale))
            .Where(e => e.Amount > lot.Rounding);

    /// <summary>Edges that enter a lot, one for each lot it came from.</summary>
    /// <param name="lot">The lot.</param>
    public static IEnumerable<LotEdge> EdgesInto(LotAccount lot) =>
        lot
            .Feeds.GroupBy(l => l.Line.Lot, StringComparer.Ordinal)
            .Select(g => new LotEdge(g.Key, lot.Lot.Id, -g.Sum(l => l.Line.Effect), false))
            .Where(e => e.Amount > 0);

    /// <summary>Numbers of all lots that something of a lot went into, near ones first.</summary>
    /// <param name="book">The book of stock.</param>
    /// <param name="lot">Number of the lot.</param>
    public static IReadOnlyList<string> Descendants(StockBook book, string lot) => Walk(book, lot, Into);

    /// <summary>Numbers of all lots that are in a lot, near ones first.</summary>
    /// <param name="book">The book of stock.</param>
    /// <param name="lot">Number of the lot.</param>
    public static IReadOnlyList<string> Ancestors(StockBook book, string lot) => Walk(book, lot, From);

    /// <summary>
    /// A line that takes another back calls for the sums; without one each line is an edge.
    /// </summary>
    private static IEnumerable<string> Into(LotAccount lot) =>
        lot.Lines.Any(l => l.Line.Reverses is not null)
            ? EdgesFrom(lot).Where(e => !e.IsSale).Select(e => e.Into)
            : lot
                .Lines.Where(l => l.Line is { Kind: MovementKind.Used, Into: not null, Amount: > 0 })
                .Select(l => l.Line.Into!);

    private static IEnumerable<string> From(LotAccount lot) =>
        lot.Feeds.Any(l => l.Line.Reverses is not null)
            ? EdgesInto(lot).Select(e => e.From)
            : lot.Feeds.Where(l => l.Line.Amount > 0).Select(l => l.Line.Lot);

    /// <summary>Breadth first with what was seen, so that long chains of cups end.</summary>
    private static List<string> Walk(StockBook book, string start, Func<LotAccount, IEnumerable<string>> next)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal) { start };
        var found = new List<string>();
        var queue = new Queue<string>([start]);
        while (queue.TryDequeue(out var id))
        {
            if (book.Find(id) is not { } lot)
            {
                continue;
            }

            foreach (var other in next(lot).Where(seen.Add))
            {
                found.Add(other);
                queue.Enqueue(other);
            }
        }

        return found;
    }
}
