using Litterfall.Domain.Stock;

namespace Litterfall.Workshop.Orders;

/// <summary>So much of a good that went into an order.</summary>
/// <param name="Amount">In the unit of the good.</param>
/// <param name="Cost">What its lots cost, net, not rounded.</param>
public readonly record struct UsedGood(double Amount, decimal Cost);

/// <summary>What the book of stock says of goods: what may be used today, and what went into each order.</summary>
public sealed class StockPicture
{
    private readonly Dictionary<string, double> onHand = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<UsedGood>> free = new(StringComparer.Ordinal);
    private readonly Dictionary<int, Dictionary<string, UsedGood>> used = [];

    private StockPicture() { }

    /// <summary>Reads the book.</summary>
    /// <param name="lots">All lots.</param>
    /// <param name="lines">All lines, in order.</param>
    /// <param name="today">Today: what is expired or in quarantine then does not count.</param>
    public static StockPicture Read(
        IReadOnlyCollection<Lot> lots,
        IEnumerable<Movement> lines,
        DateOnly today
    )
    {
        var picture = new StockPicture();
        var byId = lots.ToDictionary(l => l.Id, StringComparer.Ordinal);
        var states = new Dictionary<string, LotState>(byId.Count, StringComparer.Ordinal);
        foreach (var line in lines)
        {
            states[line.Lot] = states.GetValueOrDefault(line.Lot).After(line);
            if (
                line.Kind is MovementKind.Used or MovementKind.Sold
                && byId.TryGetValue(line.Lot, out var lot)
                && OrderOf(line, byId) is { } order
            )
            {
                picture.Use(order, lot, -line.Effect);
            }
        }

        foreach (var lot in lots.OrderBy(l => l.Since).ThenBy(l => l.Id, StringComparer.Ordinal))
        {
            if (states.TryGetValue(lot.Id, out var state) && IsFree(lot, state, today))
            {
                picture.Keep(lot, state.OnHand);
            }
        }

        return picture;
    }

    /// <summary>What may be used today, in the unit of the good; 0 for what there never was.</summary>
    /// <param name="good">Key of the good.</param>
    public double OnHand(string good) => onHand.GetValueOrDefault(good);

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

    private void Keep(Lot lot, double amount)
    {
        onHand[lot.Good] = onHand.GetValueOrDefault(lot.Good) + amount;
        if (!free.TryGetValue(lot.Good, out var lots))
        {
            free[lot.Good] = lots = [];
        }

        lots.Add(new(amount, lot.Amount > 0 ? lot.Cost * (decimal)(amount / lot.Amount) : 0));
    }

    /// <summary>A lot that was made for an order is no stock for another.</summary>
    private static bool IsFree(Lot lot, LotState state, DateOnly today) =>
        state is { OnHand: > 0, IsHeld: false }
        && lot.Order is null
        && !(lot.Expires < today)
        && !(lot.QuarantinedUntil > today);

    /// <summary>
    /// The order a line belongs to: its tank or kit is a lot of the order, or the order's number is named. A
    /// tank that is sold to its own order is counted by what went into it.
    /// </summary>
    private static int? OrderOf(Movement line, Dictionary<string, Lot> lots)
    {
        if (line.Into is not { } into)
        {
            return null;
        }

        if (lots.TryGetValue(into, out var tank))
        {
            return tank.Order;
        }

        return
            lots[line.Lot].Order is null
            && int.TryParse(
                into,
                System.Globalization.NumberStyles.None,
                System.Globalization.CultureInfo.InvariantCulture,
                out var number
            )
            ? number
            : null;
    }

    private void Use(int order, Lot lot, double amount)
    {
        var goods = used.TryGetValue(order, out var known)
            ? known
            : used[order] = new(StringComparer.Ordinal);
        var cost = lot.Amount > 0 ? lot.Cost * (decimal)(amount / lot.Amount) : 0;
        var before = goods.GetValueOrDefault(lot.Good);
        goods[lot.Good] = new(before.Amount + amount, before.Cost + cost);
    }
}
