using System.Collections.Immutable;
using Litterfall.Domain.Tanks;
using Litterfall.Workshop.Stock;

namespace Litterfall.Workshop.Tracing;

/// <summary>A lot that is in a tank, directly or further back.</summary>
/// <param name="Lot">Its number.</param>
/// <param name="IsDirect">True where it went into the tank itself.</param>
public sealed record TracedLot(string Lot, bool IsDirect);

/// <summary>Another tank that shares lots.</summary>
/// <param name="Tank">Its number.</param>
/// <param name="Lots">Lots that are in both.</param>
public sealed record SharingTank(string Tank, ImmutableArray<string> Lots);

/// <summary>From a tank to its lots, what they were made from, and every other tank that shares one.</summary>
/// <param name="Lots">Lots of the tank, near ones first.</param>
/// <param name="Sharing">Other tanks, those that share most first.</param>
public sealed record TankTrace(ImmutableArray<TracedLot> Lots, ImmutableArray<SharingTank> Sharing)
{
    /// <summary>Traces a tank.</summary>
    /// <param name="tank">The tank; it is a node of the graph of lots.</param>
    /// <param name="tanks">All tanks.</param>
    /// <param name="book">The book of stock.</param>
    public static TankTrace Find(Tank tank, IEnumerable<Tank> tanks, StockBook book)
    {
        var own = Of(tank, book);
        var all = own.Select(l => l.Lot).ToHashSet(StringComparer.Ordinal);
        return new(
            [.. own],
            [
                .. tanks
                    .Where(t => t.Code != tank.Code)
                    .Select(t => new SharingTank(
                        t.Code,
                        [.. Of(t, book).Select(l => l.Lot).Where(all.Contains).Order(StringComparer.Ordinal)]
                    ))
                    .Where(s => s.Lots.Length > 0)
                    .OrderByDescending(s => s.Lots.Length)
                    .ThenBy(s => s.Tank, StringComparer.Ordinal),
            ]
        );
    }

    /// <summary>Lots that were written down with the tank, and those that the book let into it.</summary>
    private static List<TracedLot> Of(Tank tank, StockBook book)
    {
        var direct = tank.Lots.ToHashSet(StringComparer.Ordinal);
        if (book.Find(tank.Code) is { } node)
        {
            direct.UnionWith(Genealogy.EdgesInto(node).Select(e => e.From));
        }

        var seen = new HashSet<string>(direct, StringComparer.Ordinal) { tank.Code };
        var found = direct.Order(StringComparer.Ordinal).Select(l => new TracedLot(l, true)).ToList();
        foreach (var lot in direct.Order(StringComparer.Ordinal))
        {
            found.AddRange(
                Genealogy.Ancestors(book, lot).Where(seen.Add).Select(l => new TracedLot(l, false))
            );
        }

        return found;
    }
}
