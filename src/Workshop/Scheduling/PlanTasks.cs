using Litterfall.Domain.Lists;
using Litterfall.Domain.Schedule;

namespace Litterfall.Workshop.Scheduling;

/// <summary>What is done on which day for an order, and by whom.</summary>
public static class PlanTasks
{
    private const double Rounding = 0.5;

    /// <summary>The tasks of an order that are still to be done, by days.</summary>
    /// <param name="plan">The order with its days.</param>
    /// <param name="setting">Calendar and today.</param>
    public static IEnumerable<DayTask> From(OrderPlan plan, PlanSetting setting)
    {
        if (plan.Days is not { } days)
        {
            yield break;
        }

        var need = plan.Need;
        foreach (var stage in need.Open())
        {
            if (stage == StageKey.Plant && Plants(need, days) is { } plants)
            {
                yield return plants;
            }

            foreach (var task in Of(need, days, stage, setting.Calendar))
            {
                yield return task;
            }
        }

        yield return Leave(need, days);
    }

    /// <summary>Gives each task to somebody who does such work and has most time left on its day.</summary>
    /// <param name="tasks">Tasks of all orders.</param>
    /// <param name="calendar">Who works here.</param>
    public static IEnumerable<DayTask> Share(IEnumerable<DayTask> tasks, ShopCalendar calendar)
    {
        foreach (var day in tasks.GroupBy(t => t.Day).OrderBy(g => g.Key))
        {
            var left = calendar.Workers.ToDictionary(w => w.Name, w => calendar.Minutes(w, day.Key));
            foreach (
                var task in day.OrderByDescending(t => t.Minutes).ThenBy(t => t.Key, StringComparer.Ordinal)
            )
            {
                var who = calendar
                    .Workers.Where(w => calendar.Minutes(w, day.Key) > 0)
                    .OrderByDescending(w =>
                        task.Stage is { } stage && w.Stages.Contains(stage) && left[w.Name] >= task.Minutes
                    )
                    .ThenByDescending(w => left[w.Name])
                    .FirstOrDefault();
                if (who is null)
                {
                    yield return task;
                    continue;
                }

                left[who.Name] -= task.Minutes;
                yield return task with
                {
                    Who = who.Name,
                };
            }
        }
    }

    /// <summary>Key of a task of an order.</summary>
    private static string Key(OrderNeed need, string what) =>
        FormattableString.Invariant($"order-{need.Order}-{what}");

    private static DayTask Task(OrderNeed need, string what, DateOnly day, string title) =>
        new()
        {
            Key = Key(need, what),
            Day = day,
            Kind = TaskKind.Order,
            Title = title,
            Order = need.Order,
            Page = FormattableString.Invariant($"/orders/{need.Order}"),
        };

    private static DayTask? Plants(OrderNeed need, OrderDays days) =>
        days.PlantsIn is { } day && need.Finished(StageKey.Plants) is null
            ? Task(need, StageKey.Plants, day, $"Put the plants of {need.Name} into quarantine") with
            {
                Detail =
                    $"for {PlanWords.Days(need.QuarantineDays)}, until "
                    + PlanWords.Short(day.AddDays(need.QuarantineDays)),
                Minutes = PlanModel.ShortTask,
                IsFirm = true,
            }
            : null;

    private static DayTask Leave(OrderNeed need, OrderDays days) =>
        Task(
            need,
            "leave",
            days.Ship,
            need.IsShipped ? $"Parcel of {need.Name} leaves" : $"Hand over {need.Name}"
        ) with
        {
            Detail = need.IsShipped ? $"arrives {PlanWords.Short(days.Arrive)}" : "",
            IsFirm = true,
        };

    private static IEnumerable<DayTask> Of(
        OrderNeed need,
        OrderDays days,
        string stage,
        ShopCalendar calendar
    )
    {
        if (stage == StageKey.Leak)
        {
            yield return Task(
                need,
                stage,
                Leak(need, days, calendar),
                $"Fill the {Tanks(need)} of {need.Name}"
            ) with
            {
                Detail = "leak test; look at every seam the next morning",
                Minutes = PlanModel.ShortTask,
            };
            yield break;
        }

        var last = stage switch
        {
            StageKey.Cut => days.Cut,
            StageKey.Background => days.Background,
            StageKey.Plant => days.Plant,
            _ => days.Pack,
        };
        var span = StageSpan.From(calendar, need.Minutes(stage));
        var each = last is { } day ? new Queue<DateOnly>(span.Each(calendar, day)) : [];
        var free = (double)span.Minutes;
        foreach (var work in need.Work.Where(w => w.Stage == stage && w.Minutes > 0))
        {
            var part = 1;
            for (var left = work.Minutes; left > Rounding && each.Count > 0;)
            {
                var now = each.Count == 1 ? left : Math.Min(left, free);
                var key = part == 1 ? work.Key : FormattableString.Invariant($"{work.Key}-{part}");
                yield return Task(need, key, each.Peek(), $"{Capital(work.Name)}: {need.Name}") with
                {
                    Minutes = Math.Round(now, MidpointRounding.AwayFromZero),
                    Stage = work.Key,
                    Detail = part > 1 ? "the rest" : "",
                    IsFirm = stage == StageKey.Pack,
                };
                (left, free, part) = (left - now, free - now, part + 1);
                if (free <= Rounding && each.Count > 1)
                {
                    each.Dequeue();
                    free = span.Minutes;
                }
            }
        }
    }

    /// <summary>The day on which the tanks are filled: before what comes next.</summary>
    private static DateOnly Leak(OrderNeed need, OrderDays days, ShopCalendar calendar)
    {
        var next =
            days.Background is { } made && need.Open().Contains(StageKey.Background)
                ? First(need, StageKey.Background, made, calendar)
                : First(need, StageKey.Plant, days.Plant ?? days.Pack, calendar);
        return PlanDays.UpTo(next.AddDays(-EarliestDays.LeakDays(need, calendar)), calendar.IsWork) ?? next;
    }

    private static DateOnly First(OrderNeed need, string stage, DateOnly last, ShopCalendar calendar) =>
        StageSpan.From(calendar, need.Minutes(stage)).First(calendar, last) ?? last;

    private static string Tanks(OrderNeed need) =>
        need.Tanks == 1 ? "tank" : FormattableString.Invariant($"{need.Tanks} tanks");

    private static string Capital(string name) =>
        name.Length == 0 ? "Work" : char.ToUpperInvariant(name[0]) + name[1..];
}
