namespace Litterfall.Workshop.Orders;

/// <summary>The first day a thing can be handed over, and what it waits for.</summary>
/// <param name="Day">The first day.</param>
/// <param name="Waits">What takes the time, in words; empty where it can be today.</param>
public sealed record PromisedDay(DateOnly Day, string Waits)
{
    /// <summary>Why a day cannot be promised, in one sentence; null where it can.</summary>
    /// <param name="promised">The day.</param>
    /// <param name="today">Today.</param>
    /// <param name="earliest">The first day there can be; null where nobody computed it.</param>
    public static string? Refusal(DateOnly promised, DateOnly today, PromisedDay? earliest) =>
        promised < today
            ? $"{OrderText.Day(promised)} is over. The first day that can be promised is "
                + $"{OrderText.Day(earliest?.Day ?? today)}."
            : null;

    /// <summary>What speaks against a day that is to come; null where nothing does.</summary>
    /// <param name="promised">The day.</param>
    /// <param name="earliest">The first day there can be.</param>
    public static string? Caution(DateOnly promised, PromisedDay earliest) =>
        promised < earliest.Day
            ? $"{OrderText.Day(promised)} is sooner than this can be done: {earliest.Waits} take until "
                + $"{OrderText.Day(earliest.Day)}."
            : null;
}
