using System.Globalization;

namespace Litterfall.Domain.Stock;

/// <summary>What the book says of a lot before a line is added.</summary>
/// <param name="OnHand">Amount on hand, in the unit of the good.</param>
/// <param name="IsHeld">True while it may not be used.</param>
public readonly record struct LotState(double OnHand, bool IsHeld)
{
    /// <summary>The state with one more line.</summary>
    /// <param name="line">The line.</param>
    public LotState After(Movement line) =>
        new(
            OnHand + line.Effect,
            line.Kind switch
            {
                MovementKind.Held => line.Reverses is null,
                MovementKind.Released => line.Reverses is not null,
                _ => IsHeld,
            }
        );
}

/// <summary>Which lines the book of stock takes: one place, asked before anything is written.</summary>
public static class StockGate
{
    /// <summary>
    /// Amounts closer than this share of the lot are the same: liters are not counted finer.
    /// </summary>
    public const double Rounding = 1e-9;

    /// <summary>Why a line is not taken, in one sentence; null where it is.</summary>
    /// <param name="lot">The lot.</param>
    /// <param name="state">What the book says before.</param>
    /// <param name="line">The line.</param>
    /// <param name="mayGoBelow">True where somebody said that the book is wrong and takes it so.</param>
    public static string? Refusal(Lot lot, LotState state, Movement line, bool mayGoBelow = false)
    {
        if (!double.IsFinite(line.Amount) || (line.Amount < 0 && line.Kind != MovementKind.Counted))
        {
            return $"The amount of {lot.Id} must be a number of 0 or more.";
        }

        if (line.Day < lot.Since)
        {
            return $"{lot.Id} came on {Day(lot.Since)}; it cannot be used on {Day(line.Day)}.";
        }

        if (state.IsHeld && line.Reverses is null && line.Kind is MovementKind.Used or MovementKind.Sold)
        {
            return $"{lot.Id} is on hold. Release it first, or take another lot.";
        }

        if (IsUse(line) && lot.Expires is { } last && line.Day > last)
        {
            return $"{lot.Id} was good until {Day(last)}.";
        }

        if (IsUse(line) && lot.QuarantinedUntil is { } free && line.Day < free)
        {
            return $"{lot.Id} is in quarantine until {Day(free)}.";
        }

        var left = state.OnHand + line.Effect;
        return left < -Rounding * Math.Max(1, lot.Amount) && !mayGoBelow
            ? $"{lot.Id} has {Amount(state.OnHand)} left, and {Amount(-line.Effect)} were to go out. "
                + "Count it, or take the rest from another lot."
            : null;
    }

    /// <summary>
    /// Why a line that takes another back is not taken, in one sentence; null where it is, or takes none back.
    /// </summary>
    /// <param name="past">Lines of the lot so far.</param>
    /// <param name="line">The line.</param>
    public static string? RefusedReversal(IEnumerable<Movement> past, Movement line)
    {
        if (line.Reverses is not { } number)
        {
            return null;
        }

        var lines = past as IReadOnlyCollection<Movement> ?? [.. past];
        return lines.FirstOrDefault(l => l.Id == number) switch
        {
            null => string.Create(CultureInfo.InvariantCulture, $"{line.Lot} has no line {number}."),
            { Reverses: not null } => "This line takes another one back. Write the right line anew.",
            var was when was.Kind != line.Kind || was.Amount != line.Amount || was.Into != line.Into =>
                "A line is taken back as it was written. Write what differs anew.",
            _ => lines.Any(l => l.Reverses == number) ? "This line is taken back already." : null,
        };
    }

    private static bool IsUse(Movement line) =>
        line.Reverses is null && line.Kind is MovementKind.Used or MovementKind.Sold;

    private static string Amount(double amount) =>
        Math.Round(amount, 3).ToString("0.###", CultureInfo.InvariantCulture);

    private static string Day(DateOnly day) => day.ToString("d MMM yyyy", CultureInfo.InvariantCulture);
}
