using System.Collections.Immutable;
using System.Globalization;

namespace Litterfall.Workshop.Stock;

/// <summary>So much of a lot.</summary>
/// <param name="Lot">The lot.</param>
/// <param name="Amount">Amount, in the unit of the good.</param>
public sealed record Picked(LotAccount Lot, double Amount);

/// <summary>A lot that is not offered, and why.</summary>
/// <param name="Lot">The lot.</param>
/// <param name="Why">In words: "on hold".</param>
public sealed record PassedOver(LotAccount Lot, string Why);

/// <summary>From which lots an amount is taken.</summary>
/// <param name="Good">Key of the good.</param>
/// <param name="Amount">Amount wanted, in the unit of the good.</param>
/// <param name="Lots">Lots to take from, in order.</param>
/// <param name="Short">Amount that no lot has; 0 where all is there.</param>
/// <param name="PassedOver">Lots with something left that may not be used.</param>
public sealed record Picking(
    string Good,
    double Amount,
    ImmutableArray<Picked> Lots,
    double Short,
    ImmutableArray<PassedOver> PassedOver
)
{
    // Less than a millionth of a liter is nobody's shortage.
    private const double Least = 1e-6;

    /// <summary>True where something is missing.</summary>
    public bool IsShort => Short > Least;

    /// <summary>
    /// Proposes lots: what was made for the order, then what expires first, then the oldest. What is on
    /// hold, in quarantine or past its
    /// day is never offered.
    /// </summary>
    /// <param name="book">The book of stock.</param>
    /// <param name="good">Key of the good.</param>
    /// <param name="amount">Amount wanted, in the unit of the good.</param>
    /// <param name="day">Day it is used.</param>
    /// <param name="taken">What is spoken for of a lot already; null for nothing.</param>
    /// <param name="order">Order it is for: lots made for another one are left to that.</param>
    public static Picking Propose(
        StockBook book,
        string good,
        double amount,
        DateOnly day,
        IReadOnlyDictionary<string, double>? taken = null,
        int? order = null
    )
    {
        var picked = ImmutableArray.CreateBuilder<Picked>();
        var passed = ImmutableArray.CreateBuilder<PassedOver>();
        var left = amount;
        var lots = book.LotsOf(good)
            .Where(a => a.HasSome && a.Lot.Since <= day)
            .OrderBy(a => order is null || a.Lot.Order != order)
            .ThenBy(a => a.Lot.Expires ?? DateOnly.MaxValue);
        foreach (var lot in lots)
        {
            if ((lot.Bar(day) ?? ForAnother(lot.Lot.Order, order)) is { } why)
            {
                passed.Add(new(lot, why));
                continue;
            }

            var there = lot.OnHand - (taken?.GetValueOrDefault(lot.Lot.Id) ?? 0);
            if (left <= Least || there <= lot.Rounding)
            {
                continue;
            }

            var some = Math.Min(there, left);
            picked.Add(new(lot, some));
            left -= some;
        }

        return new(good, amount, picked.ToImmutable(), left > Least ? left : 0, passed.ToImmutable());
    }

    private static string? ForAnother(int? madeFor, int? order) =>
        madeFor is { } other && other != order
            ? string.Create(CultureInfo.InvariantCulture, $"made for order {other}")
            : null;
}
