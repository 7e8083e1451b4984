using System.Globalization;
using Litterfall.Domain.Stock;

namespace Litterfall.Workshop.Stock;

/// <summary>Lines that put the book right: counts, and lines that take another one back.</summary>
public static class Corrections
{
    /// <summary>The line of a count; null where the book is right already.</summary>
    /// <param name="lot">The lot.</param>
    /// <param name="found">What was found, in the unit of the good.</param>
    /// <param name="day">Day of the count.</param>
    /// <param name="who">Who counted.</param>
    /// <param name="reason">Why it differs, as far as somebody knows.</param>
    public static Movement? Count(LotAccount lot, double found, DateOnly day, string who, string reason)
    {
        var difference = found - lot.OnHand;
        return Math.Abs(difference) <= lot.Rounding
            ? null
            : new Movement
            {
                Lot = lot.Lot.Id,
                Kind = MovementKind.Counted,
                Amount = difference,
                Day = day,
                Who = who,
                Note = reason,
            };
    }

    /// <summary>The line that takes another back, or why there is none.</summary>
    /// <param name="lot">The lot.</param>
    /// <param name="line">Number of the line.</param>
    /// <param name="day">Day it is taken back.</param>
    /// <param name="who">Who takes it back.</param>
    /// <param name="reason">Why.</param>
    public static (Movement? Line, string? Refusal) TakeBack(
        LotAccount lot,
        int line,
        DateOnly day,
        string who,
        string reason
    )
    {
        if (lot.Lines.FirstOrDefault(l => l.Line.Id == line) is not { Line: var was })
        {
            return (null, $"{lot.Lot.Id} has no line {line.ToString(CultureInfo.InvariantCulture)}.");
        }

        var back = was with
        {
            Id = 0,
            Day = day < was.Day ? was.Day : day,
            Who = who,
            Note = reason,
            Reverses = line,
            Place = was.Kind == MovementKind.Moved ? PlaceBefore(lot, line) : was.Place,
        };
        return StockGate.RefusedReversal(lot.Lines.Select(l => l.Line), back) is { } refusal
            ? (null, refusal)
            : (back, null);
    }

    private static string PlaceBefore(LotAccount lot, int line) =>
        lot.Standing.LastOrDefault(l => l.Line.Kind == MovementKind.Moved && l.Line.Id < line)?.Line.Place
        ?? "";
}
