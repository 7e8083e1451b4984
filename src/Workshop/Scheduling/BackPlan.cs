using Litterfall.Domain.Schedule;

namespace Litterfall.Workshop.Scheduling;

/// <summary>
/// The days of one order where it has the workshop for itself (critical path; Kelley and Walker 1959,
/// recalled): the latest ones before a day, and the earliest ones from today on.
/// </summary>
public static class BackPlan
{
    /// <summary>The latest days on which everything can be begun; null where there are none.</summary>
    /// <param name="need">What the order needs.</param>
    /// <param name="calendar">Days of the workshop.</param>
    /// <param name="due">Day on which it is to be in hand.</param>
    public static OrderDays? Latest(OrderNeed need, ShopCalendar calendar, DateOnly due)
    {
        if (
            PlanDays.UpTo(due, d => Leaves(need, calendar, d) && Arrives(need, calendar, d) <= due)
            is not { } ship
        )
        {
            return null;
        }

        var clear = calendar.ClearDays;
        DateOnly? Before(DateOnly? next, int days, bool isKept) =>
            next is { } day && isKept ? PlanDays.UpTo(day.AddDays(-days - clear), calendar.IsWork) : null;
        var plant = Before(ship, need.GrowInDays, need.Tanks > 0);
        var background = Before(plant ?? ship, need.CureDays, need.Minutes(StageKey.Background) > 0);
        var seeded = plant ?? ship;
        return new OrderDays
        {
            Order = need.Order,
            CulturesStart =
                need.CultureDays > 0
                    ? PlanDays.UpTo(seeded.AddDays(-need.CultureDays), calendar.IsWork)
                    : null,
            PlantsIn = Before(plant, need.QuarantineDays, need.QuarantineDays > 0),
            Cut =
                need.Minutes(StageKey.Cut) > 0
                    ? PlanDays.UpTo((background ?? plant ?? ship).AddDays(-1), calendar.IsWork)
                    : null,
            Background = background,
            Plant = plant,
            GrownIn = plant?.AddDays(need.GrowInDays),
            AnimalsFrom = need.AnimalDays is { } days ? plant?.AddDays(days) : null,
            Pack = ship,
            Ship = ship,
            Arrive = Arrives(need, calendar, ship),
        };
    }

    /// <summary>
    /// Why a day cannot be kept: what should have begun before today, and the earliest honest day. Null where
    /// it can be kept, as far as the order alone is looked at.
    /// </summary>
    /// <param name="need">What the order needs.</param>
    /// <param name="calendar">Days of the workshop.</param>
    /// <param name="due">The day.</param>
    /// <param name="today">Today.</param>
    public static string? Refusal(OrderNeed need, ShopCalendar calendar, DateOnly due, DateOnly today)
    {
        var earliest = EarliestDays.Find(need, calendar, today);
        if (earliest.Days.Arrive <= due)
        {
            return null;
        }

        var honest = $"earliest honest date {PlanWords.Day(earliest.Days.Arrive)}";
        return
            Latest(need, calendar, due) is { } latest
            && Item(latest, earliest.Critical) is ({ } what, { } day)
            && day < earliest.Begins
            ? $"{what} by {PlanWords.Day(day)} and {Fact(earliest, today)}: {honest}."
            : $"{PlanWords.Day(due)} is too soon ({earliest.Why}): {honest}.";
    }

    /// <summary>What decides, and the latest day for it.</summary>
    private static (string What, DateOnly? Day) Item(OrderDays latest, string critical) =>
        critical switch
        {
            StageKey.Plants => ("Plants must come", latest.PlantsIn),
            StageKey.Background => ("The background must be finished", latest.Background),
            StageKey.Plant => ("Planting must be done", latest.Plant),
            StageKey.Cut => ("Cutting must begin", latest.Cut),
            EarliestDays.Cultures => ("Cultures must be started", latest.CulturesStart),
            _ => ("It must leave", latest.Ship),
        };

    private static string Fact(EarliestDays earliest, DateOnly today) =>
        earliest.Begins.DayNumber - today.DayNumber <= 1
            ? $"it's {PlanWords.Day(today)}"
            : $"the first day for that is {PlanWords.Day(earliest.Begins)}";

    internal static bool Leaves(OrderNeed need, ShopCalendar calendar, DateOnly day) =>
        need.IsShipped ? calendar.IsShip(day) : calendar.IsWork(day);

    internal static DateOnly Arrives(OrderNeed need, ShopCalendar calendar, DateOnly ship) =>
        need.IsShipped ? calendar.Arrival(ship) : ship;
}
