using Litterfall.Domain;
using Litterfall.Domain.Trade;
using Litterfall.Forecasting;
using Litterfall.Instructions.Care;

namespace Litterfall.Workshop.Orders;

/// <summary>
/// The first day a thing can be handed over, and what it waits for: longest lead of missing goods or plants
/// in quarantine, then cure, then the work, then grow-in of what is planted here. Places on the shelf and
/// other orders are not looked at: a schedule may move it later, never earlier.
/// </summary>
/// <param name="Day">The first day.</param>
/// <param name="Waits">What takes the time, in words; empty where it can be today.</param>
public sealed record PromisedDay(DateOnly Day, string Waits)
{
    private const double HoursOfDay = 6;

    /// <summary>The first day for a kit or a tank of a design.</summary>
    /// <param name="numbers">The design.</param>
    /// <param name="kind">How it is ordered.</param>
    /// <param name="minutes">Working minutes.</param>
    /// <param name="arrives">Day the last missing good can be here; null where all is here.</param>
    /// <param name="today">Today.</param>
    public static PromisedDay Earliest(
        DesignNumbers numbers,
        OrderItemKind kind,
        double minutes,
        DateOnly? arrives,
        DateOnly today
    )
    {
        var day = today;
        var waits = new List<string>();
        var isBuilt = kind == OrderItemKind.Build;
        var plants = isBuilt && numbers.Design.Design.Plants.Count > 0;
        if (arrives > day)
        {
            day = arrives.Value;
            waits.Add($"goods until {OrderText.Day(day)}");
        }

        if (isBuilt && numbers.Sealants.CureBeforePlanting is { } cure)
        {
            day = day.AddDays(Days(cure));
            waits.Add($"{Told(cure)} of cure");
        }

        if (plants && today.AddDays(Days(CareIntervals.PlantQuarantine)) is var free && free > day)
        {
            day = free;
            waits.Add($"{Told(CareIntervals.PlantQuarantine)} of plant quarantine");
        }

        var work = (int)Math.Ceiling(minutes / 60 / HoursOfDay);
        if (work > 0)
        {
            day = WorkDays.After(day, work);
            waits.Add(work == 1 ? "1 day of work" : FormattableString.Invariant($"{work} days of work"));
        }

        if (plants)
        {
            day = day.AddDays(Days(CareIntervals.GrowIn));
            waits.Add($"{Told(CareIntervals.GrowIn)} of grow-in");
        }

        return new(day, string.Join(", ", waits));
    }

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

    private static int Days(Domain.Figures.Figure time) => (int)Math.Ceiling(time.Value - 1e-9);

    private static string Told(Domain.Figures.Figure time) =>
        Days(time) is var days && days == 1 ? "1 day" : FormattableString.Invariant($"{days} days");
}
