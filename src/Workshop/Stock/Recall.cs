using System.Collections.Immutable;
using Litterfall.Domain.Stock;

namespace Litterfall.Workshop.Stock;

/// <summary>What went to one order of everything a recalled lot is in.</summary>
/// <param name="Order">Order as the lines name it.</param>
/// <param name="Lots">Lots and amounts that were sold to it.</param>
public sealed record RecalledOrder(string Order, ImmutableArray<Picked> Lots);

/// <summary>Where a lot went: lots that contain it, orders that got some, and what is still here.</summary>
/// <param name="Lot">The lot.</param>
/// <param name="Into">Lots that contain it, near ones first.</param>
/// <param name="Orders">Orders that got it or something it is in.</param>
/// <param name="OnHand">Lots of it, itself too, of which something is on hand.</param>
public sealed record Recall(
    LotAccount Lot,
    ImmutableArray<LotAccount> Into,
    ImmutableArray<RecalledOrder> Orders,
    ImmutableArray<LotAccount> OnHand
)
{
    /// <summary>Traces a lot forward; null where the book does not have it.</summary>
    /// <param name="book">The book of stock.</param>
    /// <param name="lot">Number of the lot.</param>
    public static Recall? Trace(StockBook book, string lot)
    {
        if (book.Find(lot) is not { } start)
        {
            return null;
        }

        ImmutableArray<LotAccount> into =
        [
            .. Genealogy.Descendants(book, lot).Select(book.Find).OfType<LotAccount>(),
        ];
        var all = into.Prepend(start).ToList();
        var orders = all.Where(a => a.Sold > 0)
            .SelectMany(a =>
                Genealogy
                    .EdgesFrom(a)
                    .Where(e => e.IsSale)
                    .Select(e => (Order: e.Into, Lot: new Picked(a, e.Amount)))
            )
            .GroupBy(s => s.Order, s => s.Lot, StringComparer.Ordinal)
            .OrderBy(g => g.Key, StringComparer.Ordinal)
            .Select(g => new RecalledOrder(g.Key, [.. g]));
        return new(start, into, [.. orders], [.. all.Where(a => a.HasSome)]);
    }
}
