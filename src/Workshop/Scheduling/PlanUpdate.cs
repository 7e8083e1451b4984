using Litterfall.Domain.Lists;
using Litterfall.Domain.Schedule;

namespace Litterfall.Workshop.Scheduling;

/// <summary>A plan that takes the place of the one that is kept: what moved, and who must be told.</summary>
public static class PlanUpdate
{
    /// <summary>Days for which tasks that were taken back are still told to calendars.</summary>
    private const int DaysCancelled = 60;

    /// <summary>The plan as it is from now on.</summary>
    /// <param name="kept">The plan that is kept.</param>
    /// <param name="plans">New days.</param>
    /// <param name="setting">Calendar and today.</param>
    /// <param name="why">What made it necessary, in words.</param>
    public static ShopPlan Next(ShopPlan kept, OrderPlans plans, PlanSetting setting, string why)
    {
        var tasks = PlanTasks
            .Share(plans.Orders.SelectMany(p => PlanTasks.From(p, setting)), setting.Calendar)
            .ToLookup(t => t.Order);
        var planned = plans
            .Orders.Where(p => p.Days is not null)
            .Select(p => Planned(p, kept, [.. tasks[p.Need.Order]], setting.Today))
            .ToList();
        var gone = kept
            .Orders.Where(o => !planned.Exists(p => p.Days.Order == o.Days.Order))
            .Select(o => o with { Tasks = Cancelled(o, [], kept, setting.Today) })
            .Where(o => o.Tasks.Count > 0);
        return kept with
        {
            MadeOn = setting.Today,
            IsProved = plans.IsProved,
            Orders = [.. planned.Concat(gone)],
            Moves = Moves(kept, planned, setting.Today, why),
            Holds =
            [
                .. kept.Holds.Where(h =>
                    h.From >= setting.Today && plans.Orders.Any(p => p.Need.Order == h.Order)
                ),
            ],
        };
    }

    private static PlannedOrder Planned(OrderPlan plan, ShopPlan kept, List<DayTask> tasks, DateOnly today)
    {
        var need = plan.Need;
        var old = kept.Find(need.Order);
        var before = (old?.Tasks ?? []).ToDictionary(t => t.Task.Key, StringComparer.Ordinal);
        var now = tasks.Select(t =>
            before.TryGetValue(t.Key, out var was)
                ? new PlannedTask(t, was.Revision + (was.Task.Day != t.Day || was.IsCancelled ? 1 : 0))
                : new PlannedTask(t, 0)
        );
        return new PlannedOrder
        {
            Days = plan.Days!,
            Tasks =
            [
                .. now,
                .. old is null ? [] : Cancelled(old, [.. tasks.Select(t => t.Key)], kept, today),
            ],
            Blocker = plan.Blocker,
            Promised = need.Promised,
            BenchPlaces = need.Tanks,
            QuarantinePlaces = need.QuarantineDays > 0 ? need.Planted : 0,
        };
    }

    /// <summary>Tasks that are not wanted any more; those that were done are left out.</summary>
    private static Seq<PlannedTask> Cancelled(
        PlannedOrder old,
        HashSet<string> keys,
        ShopPlan kept,
        DateOnly today
    ) =>
        [
            .. old
                .Tasks.Where(t =>
                    !keys.Contains(t.Task.Key)
                    && t.Task.Day.AddDays(DaysCancelled) >= today
                    && !kept.Done.Any(d => d.Key == t.Task.Key)
                )
                .Select(t => t.IsCancelled ? t : t with { IsCancelled = true, Revision = t.Revision + 1 }),
        ];

    /// <summary>
    /// Customers' days that are no longer those they know: the promised day, or the one they were told last.
    /// </summary>
    private static Seq<PlanMove> Moves(ShopPlan kept, List<PlannedOrder> planned, DateOnly today, string why)
    {
        var told = kept.Moves.Where(m => m.IsTold).ToList();
        var open = kept.Moves.Where(m => !m.IsTold).ToDictionary(m => m.Order);
        foreach (var order in planned.Where(o => o.Promised is not null))
        {
            var number = order.Days.Order;
            var promised = order.Promised!.Value;
            var known = told.LastOrDefault(m => m.Order == number)?.Now ?? promised;
            var now = order.Days.Arrive > promised ? order.Days.Arrive : promised;
            if (now == known || (now == promised && known < promised))
            {
                open.Remove(number);
            }
            else if (!open.TryGetValue(number, out var move) || move.Now != now)
            {
                open[number] = new PlanMove(number, known, now, today, why);
            }
        }

        return [.. told, .. open.Values.OrderBy(m => m.Order)];
    }
}
