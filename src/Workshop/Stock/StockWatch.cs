using System.Collections.Immutable;
using Litterfall.Domain.Trade;

namespace Litterfall.Workshop.Stock;

/// <summary>A good of which there is less than is wanted.</summary>
/// <param name="Good">The good.</param>
/// <param name="Usable">Amount that may be used, in its unit.</param>
public sealed record LowGood(Good Good, double Usable);

/// <summary>What needs to be looked at: goods that run out, lots that spoil.</summary>
public static class StockWatch
{
    /// <summary>Goods below their re-order point, counting what may be used.</summary>
    /// <param name="book">The book of stock.</param>
    /// <param name="goods">All goods.</param>
    /// <param name="day">Today.</param>
    public static ImmutableArray<LowGood> Below(StockBook book, IEnumerable<Good> goods, DateOnly day) =>
        [
            .. goods
                .Where(g => g.ReorderAt > 0)
                .Select(g => new LowGood(g, book.Usable(g.Key, day)))
                .Where(low => low.Usable < low.Good.ReorderAt)
                .OrderBy(low => low.Usable / low.Good.ReorderAt),
        ];

    /// <summary>Lots with something left whose last day is near or past, the first first.</summary>
    /// <param name="book">The book of stock.</param>
    /// <param name="day">Today.</param>
    /// <param name="days">How far to look, days.</param>
    public static ImmutableArray<LotAccount> Expiring(StockBook book, DateOnly day, int days) =>
        [
            .. book
                .Lots.Where(a => a.HasSome && a.Lot.Expires is { } last && last <= day.AddDays(days))
                .OrderBy(a => a.Lot.Expires)
                .ThenBy(a => a.Lot.Id, StringComparer.Ordinal),
        ];
}
