using System.Globalization;
using Litterfall.Domain.Lists;
using Litterfall.Domain.Trade;

namespace Litterfall.Workshop.Orders;

/// <summary>What kind of thing keeps an order from going on.</summary>
public enum BlockKind
{
    /// <summary>Something that would harm an animal.</summary>
    Harm,

    /// <summary>Somebody wrote that it waits.</summary>
    Written,

    /// <summary>No quote was sent.</summary>
    NoQuote,

    /// <summary>The quote holds no longer.</summary>
    QuoteExpired,

    /// <summary>The agreed deposit did not come.</summary>
    Deposit,

    /// <summary>No day was promised.</summary>
    NoDay,

    /// <summary>The promised day is over.</summary>
    Late,

    /// <summary>Panes come too late or were not ordered.</summary>
    Glass,

    /// <summary>Goods are missing.</summary>
    Goods,
}

/// <summary>What keeps an order from going on.</summary>
/// <param name="Kind">What kind of thing.</param>
/// <param name="Words">In a sentence.</param>
public sealed record Blocker(BlockKind Kind, string Words);

/// <summary>What blocks orders, the worst first.</summary>
public static class OrderBlocks
{
    private const int MostGoods = 3;

    /// <summary>What blocks an order; empty where nothing does.</summary>
    /// <param name="order">The order.</param>
    /// <param name="lacking">Goods it lacks.</param>
    /// <param name="today">Today.</param>
    public static Seq<Blocker> Find(Order order, Seq<ShortGood> lacking, DateOnly today) =>
        order.State is OrderState.Closed or OrderState.Lost or OrderState.Delivered
            ? []
            : [.. All(order, lacking, today)];

    private static IEnumerable<Blocker> All(Order order, Seq<ShortGood> lacking, DateOnly today)
    {
        foreach (var item in order.Items.Where(i => !string.IsNullOrEmpty(i.Harm)))
        {
            yield return new(BlockKind.Harm, $"{item.Name} would harm its animals: {item.Harm}");
        }

        if (order.Blocked.Length > 0)
        {
            yield return new(BlockKind.Written, order.Blocked);
        }

        foreach (var blocker in OfQuote(order, today))
        {
            yield return blocker;
        }

        if (order.IsOpen && order.Deposit > order.Paid)
        {
            yield return new(
                BlockKind.Deposit,
                order.Paid > 0
                    ? $"{Money(order.Deposit - order.Paid)} of the deposit is not paid yet."
                    : $"The deposit of {Money(order.Deposit)} is not paid yet."
            );
        }

        if (OfDay(order, today) is { } day)
        {
            yield return day;
        }

        foreach (var blocker in OfGoods(order, lacking))
        {
            yield return blocker;
        }
    }

    private static IEnumerable<Blocker> OfQuote(Order order, DateOnly today)
    {
        if (order.State == OrderState.Enquiry)
        {
            yield return new(BlockKind.NoQuote, "No quote was sent yet.");
        }

        if (order is { State: OrderState.Quoted, QuotedUntil: { } last } && last < today)
        {
            yield return new(BlockKind.QuoteExpired, $"The quote was good until {Day(last)}.");
        }
    }

    private static Blocker? OfDay(Order order, DateOnly today) =>
        order.Promised is not { } day ? new(BlockKind.NoDay, "No day is promised.")
        : day < today
            ? new(
                BlockKind.Late,
                today.DayNumber - day.DayNumber is var late && late == 1
                    ? $"Promised for yesterday, {Day(day)}."
                    : string.Create(
                        CultureInfo.InvariantCulture,
                        $"Promised for {Day(day)}: {late} days ago."
                    )
            )
        : null;

    private static IEnumerable<Blocker> OfGoods(Order order, Seq<ShortGood> lacking)
    {
        foreach (var isSheet in new[] { true, false })
        {
            var goods = lacking.Where(g => g.IsSheet == isSheet).ToList();
            if (goods.Count > 0)
            {
                yield return new(
                    isSheet ? BlockKind.Glass : BlockKind.Goods,
                    $"{(isSheet ? "Glass and sheets missing" : "Missing")}: {Some(goods)}. "
                        + Comes(order, goods)
                );
            }
        }
    }

    private static string Some(List<ShortGood> goods)
    {
        var more = goods.Count - MostGoods;
        return string.Join(", ", goods.Take(MostGoods).Select(Told))
            + (more > 0 ? string.Create(CultureInfo.InvariantCulture, $" and {more} more") : "");
    }

    /// <summary>When they can be here: what nobody offers first, then the latest.</summary>
    private static string Comes(Order order, List<ShortGood> goods)
    {
        if (goods.FirstOrDefault(g => g.Arrives is null) is { } unknown)
        {
            return $"No supplier offers {unknown.Good.Name}.";
        }

        var last = goods.MaxBy(g => g.Arrives)!;
        return last.Arrives > order.Promised
            ? $"{last.Good.Name} comes on {Day(last.Arrives.Value)} at the earliest, after the promised day."
            : $"Ordered today they come by {Day(last.Arrives!.Value)}.";
    }

    private static string Told(ShortGood good) =>
        $"{OrderText.Amount(good.Missing, good.Good.Unit)} of {good.Good.Name}";

    private static string Money(decimal amount) => OrderText.Money(amount);

    private static string Day(DateOnly day) => OrderText.Day(day);
}
