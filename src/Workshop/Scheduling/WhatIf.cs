using Litterfall.Domain.Lists;
using Litterfall.Domain.Schedule;

namespace Litterfall.Workshop.Scheduling;

/// <summary>Another order whose day would move.</summary>
/// <param name="Need">The order.</param>
/// <param name="Was">Day it would have been there.</param>
/// <param name="Now">Day it would be there.</param>
public sealed record OtherMove(OrderNeed Need, DateOnly Was, DateOnly Now)
{
    /// <summary>True where it would come later than promised.</summary>
    public bool IsLate => Now > Need.Promised;
}

/// <summary>What would happen if an order were taken.</summary>
/// <param name="Order">Its days where nobody else is moved.</param>
/// <param name="Moved">Its days where others make room; null where that does not help.</param>
/// <param name="Others">Whose days would move then.</param>
public sealed record WhatIf(OrderPlan Order, OrderPlan? Moved, Seq<OtherMove> Others)
{
    /// <summary>Tries an order beside those that are planned.</summary>
    /// <param name="asked">The order.</param>
    /// <param name="others">Orders that are planned; those without kept days are planned anew.</param>
    /// <param name="setting">Calendar and today.</param>
    /// <param name="cancel">Ends the search.</param>
    public static WhatIf Try(
        OrderNeed asked,
        IReadOnlyCollection<OrderNeed> others,
        PlanSetting setting,
        CancellationToken cancel = default
    )
    {
        var still = ShopPlanner.Find([.. others.Select(Held), asked], setting, cancel);
        var alone = still.Orders.First(o => o.Need == asked);
        if (alone.Days is { } days && (asked.Promised is null || days.Arrive <= asked.Promised))
        {
            return new(alone, null, []);
        }

        var free = ShopPlanner.Find([.. others, asked], setting, cancel);
        var moved = free.Orders.First(o => o.Need == asked);
        if (moved.Days is null || (alone.Days is { } held && moved.Days.Arrive >= held.Arrive))
        {
            return new(alone, null, []);
        }

        return new(
            alone,
            moved,
            [
                .. free
                    .Orders.Where(o => o.Need != asked && o.Days is not null && o.Need.Kept is not null)
                    .Where(o => o.Days!.Arrive != o.Need.Kept!.Arrive)
                    .Select(o => new OtherMove(o.Need, o.Need.Kept!.Arrive, o.Days!.Arrive)),
            ]
        );
    }

    private static OrderNeed Held(OrderNeed need) => need with { IsFixed = need.Kept is not null };

    /// <summary>The answer in sentences.</summary>
    /// <param name="setting">Calendar and today.</param>
    public IEnumerable<string> Sentences(PlanSetting setting)
    {
        if (Order.Days is not { } days)
        {
            yield return Order.Blocker;
            yield break;
        }

        var promised = Order.Need.Promised;
        if (promised is null || days.Arrive <= promised)
        {
            yield return promised is null
                ? $"It can be there on {PlanWords.Day(days.Arrive)}; nobody else is moved."
                : $"{PlanWords.Day(promised.Value)} can be kept; nobody else is moved.";
            yield break;
        }

        yield return BackPlan.Refusal(Order.Need, setting.Calendar, promised.Value, setting.Today)
            ?? $"Other orders leave no room for {PlanWords.Day(promised.Value)}.";
        yield return $"Where nobody else is moved it is there on {PlanWords.Day(days.Arrive)}.";
        if (Moved?.Days is { } sooner)
        {
            yield return Others.Count == 0
                ? $"Where other tasks are moved it is there on {PlanWords.Day(sooner.Arrive)}; "
                    + "no customer's day changes."
                : $"Where others make room it is there on {PlanWords.Day(sooner.Arrive)}. "
                    + "Then these days change:";
            foreach (var other in Others)
            {
                yield return $"{other.Need.Name}: {PlanWords.Day(other.Was)} → {PlanWords.Day(other.Now)}"
                    + (other.IsLate ? ", later than promised" : "");
            }
        }
    }
}
