using System.Globalization;
using Litterfall.Domain.Stock;
using Litterfall.Workshop.Stock;

namespace Litterfall.Workshop.Orders;

/// <summary>So much of a good that went into an order, or could.</summary>
/// <param name="Amount">In the unit of the good.</param>
/// <param name="Cost">What its lots cost, net.</param>
public readonly record struct UsedGood(double Amount, decimal Cost);

/// <summary>
/// What the book of stock says to orders: what may be used today, and what went into each order.
/// </summary>
public sealed class StockPicture
{
    private readonly Dictionary<string, List<UsedGood>> free = new(StringComparer.Ordinal);
    private readonly Dictionary<int, Dictionary<string, UsedGood>> used = [];

    private StockPicture() { }

    /// <summary>Reads the book.</summary>
    /// <param name="book">The book.</param>
    /// <param name="today">Today: what is expired or in quarantine then does not count.</param>
    public static StockPicture Read(StockBook book, DateOnly today)
    {
        var picture = new StockPicture();
        foreach (var good in book.Goods)
        {
            picture.free[good] =
            [
                .. book.LotsOf(good)
                    .Where(a => a.HasSome && a.Lot.Order is null && a.Bar(today) is null)
                    .Select(a => new UsedGood(a.OnHand, a.Value)),
            ];
        }

        foreach (var account in book.Lots)
        {
            foreach (var (line, cost) in account.Lines)
            {
                if (
                    line.Kind is MovementKind.Used or MovementKind.Sold
                    && OrderOf(line, account.Lot, book) is { } order
                )
                {
                    picture.Use(order, account.Lot.Good, new(-line.Effect, cost));
                }
            }
        }

        return picture;
    }

    /// <summary>What may be used today, in the unit of the good; 0 for what there never was.</summary>
    /// <param name="good">Key of the good.</param>
    public double OnHand(string good) => (free.GetValueOrDefault(good) ?? []).Sum(l => l.Amount);

    /// <summary>What went into an order so far, by key of the good.</summary>
    /// <param name="order">Number of the order.</param>
    public IReadOnlyDictionary<string, UsedGood> UsedBy(int order) => used.GetValueOrDefault(order) ?? [];

    /// <summary>
    /// What the oldest lots give of an amount, and what that cost; less than the amount where stock ends.
    /// </summary>
    /// <param name="good">Key of the good.</param>
    /// <param name="amount">In the unit of the good.</param>
    public UsedGood FirstIn(string good, double amount)
    {
        var (taken, cost) = (0.0, 0m);
        foreach (var lot in free.GetValueOrDefault(good) ?? [])
        {
            var part = Math.Min(lot.Amount, amount - taken);
            if (part <= 0)
            {
                break;
            }

            taken += part;
            cost += lot.Cost * (decimal)(part / lot.Amount);
        }

        return new(taken, cost);
    }

    /// <summary>
    /// The order a line belongs to: its tank or kit is a lot of the order, or the order's number is named. A
    /// tank that is sold to its own order is counted by what went into it; parts that were cut for an order
    /// count when they are cut, not again when they go into its tank.
    /// </summary>
    private static int? OrderOf(Movement line, Lot lot, StockBook book) =>
        line.Into is not { } into ? null
        : line.Kind == MovementKind.Used && book.Find(into) is { } tank
            ? tank.Lot.Order == lot.Order ? null
                : tank.Lot.Order
        : lot.Order is null
        && int.TryParse(
            into.AsSpan(into.AsSpan().LastIndexOfAnyExceptInRange('0', '9') + 1),
            NumberStyles.None,
            CultureInfo.InvariantCulture,
            out var number
        )
            ? number
        : null;

    private void Use(int order, string good, UsedGood more)
    {
        if (!used.TryGetValue(order, out var goods))
        {
            used[order] = goods = new(StringComparer.Ordinal);
        }

        var before = goods.GetValueOrDefault(good);
        goods[good] = new(before.Amount + more.Amount, before.Cost + more.Cost);
    }
}
