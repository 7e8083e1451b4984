using Litterfall.Domain.Lists;
using Litterfall.Domain.Schedule;
using Litterfall.Workshop.Scheduling.Chains;

namespace Litterfall.Workshop.Scheduling;

/// <summary>What is planned, and when.</summary>
/// <param name="Calendar">Days of the workshop.</param>
/// <param name="Today">Today.</param>
public sealed record PlanSetting(ShopCalendar Calendar, DateOnly Today)
{
    /// <summary>False to do without the solver.</summary>
    public bool HasSolver { get; init; } = true;
}

/// <summary>Days of an order, or why it has none.</summary>
/// <param name="Need">The order.</param>
/// <param name="Days">Its days; null where there are none.</param>
/// <param name="Blocker">What limits it, in words; empty for nothing.</param>
public sealed record OrderPlan(OrderNeed Need, OrderDays? Days, string Blocker);

/// <summary>Days of all orders of the workshop.</summary>
/// <param name="Orders">One for each order.</param>
/// <param name="IsProved">True where no better plan exists.</param>
public sealed record OrderPlans(Seq<OrderPlan> Orders, bool IsProved);

/// <summary>
/// Plans all orders of the workshop together: late days first, then moves against the plan that is kept, then
/// days of places.
/// </summary>
public static class ShopPlanner
{
    private const int ShortestHorizon = 120;
    private const int LongestHorizon = 700;
    private const int Room = 60;
    private const int Tries = 1500;

    private static readonly string[] Limits =
    [
        "hours of work",
        "places in quarantine",
        "places on the shelf",
        "places for leak tests",
    ];

    /// <summary>Plans the orders; the same orders get the same days unless it is ended early.</summary>
    /// <param name="needs">The orders.</param>
    /// <param name="setting">Calendar and today.</param>
    /// <param name="cancel">Ends the search; the best days found by then are told.</param>
    public static OrderPlans Find(
        IReadOnlyCollection<OrderNeed> needs,
        PlanSetting setting,
        CancellationToken cancel = default
    )
    {
        var refused = needs.Select(n => (Need: n, Why: Refusal(n, setting))).ToList();
        var good = refused.Where(r => r.Why is null).Select(r => r.Need).ToList();
        var horizon = Horizon(good, setting);
        var found = Solve(good, setting, horizon, cancel);
        if (found is null && horizon < LongestHorizon && !cancel.IsCancellationRequested)
        {
            found = Solve(good, setting, LongestHorizon, cancel);
        }

        var plans = (found?.Plans ?? []).ToDictionary(p => p.Need.Order);
        return new(
            [
                .. refused.Select(r =>
                    plans.GetValueOrDefault(r.Need.Order)
                    ?? new OrderPlan(
                        r.Need,
                        null,
                        r.Why ?? $"{r.Need.Name} finds no days beside the other orders within two years."
                    )
                ),
            ],
            found?.IsProved == true
        );
    }

    private static (List<OrderPlan> Plans, bool IsProved)? Solve(
        List<OrderNeed> needs,
        PlanSetting setting,
        int horizon,
        CancellationToken cancel
    )
    {
        var model = new PlanModel(setting.Calendar, setting.Today, horizon);
        var problem = model.Create(needs);
        var wish = new SearchWish { HasSolver = setting.HasSolver, Tries = Tries };
        if (JobSolver.Find(problem, wish, cancel).Plan is not { } plan)
        {
            return null;
        }

        var limits = JobLimits.Find(problem, plan.Starts).ToList();
        return (
            [
                .. needs.Select(
                    (n, i) =>
                        model.Days(n, plan.Starts[i]) is var days
                            ? new OrderPlan(n, days, Blocker(n, days, limits[i], setting))
                            : null!
                ),
            ],
            plan.IsProved
        );
    }

    /// <summary>Why an order cannot be done even alone; null where it can.</summary>
    private static string? Refusal(OrderNeed need, PlanSetting setting)
    {
        var calendar = setting.Calendar;
        if (PlanDays.From(setting.Today, d => BackPlan.Leaves(need, calendar, d)) is null)
        {
            return $"{need.Name} can never leave: the calendar has no day for that within a year.";
        }

        if (
            need.Work.Sum(w => w.Minutes) > 0
            && PlanDays.From(setting.Today, d => calendar.Minutes(d) > 0) is null
        )
        {
            return $"{need.Name} needs work, and nobody has hours in the calendar.";
        }

        return Places(need.Tanks, calendar.BenchPlaces, "places on the shelf")
            ?? Places(
                need.QuarantineDays > 0 ? need.Planted : 0,
                calendar.QuarantinePlaces,
                "places in quarantine"
            )
            ?? Places(Math.Min(1, need.Tanks), calendar.LeakTestPlaces, "places for a leak test");

        string? Places(int needed, int there, string what) =>
            needed > there
                ? FormattableString.Invariant($"{need.Name} needs {needed} {what} at once, and there are ")
                    + FormattableString.Invariant($"{there}: split the order, or make room.")
                : null;
    }

    private static int Horizon(List<OrderNeed> needs, PlanSetting setting) =>
        Math.Clamp(
            needs
                .SelectMany(n =>
                    new[] { n.Promised, EarliestDays.Find(n, setting.Calendar, setting.Today).Days.Arrive }
                )
                .OfType<DateOnly>()
                .Select(d => d.DayNumber - setting.Today.DayNumber + Room)
                .DefaultIfEmpty()
                .Max(),
            ShortestHorizon,
            LongestHorizon
        );

    private static string Blocker(OrderNeed need, OrderDays days, int[] limits, PlanSetting setting)
    {
        if (need.Promised is not { } promised || days.Arrive <= promised)
        {
            return "";
        }

        if (BackPlan.Refusal(need, setting.Calendar, promised, setting.Today) is { } alone)
        {
            var honest = EarliestDays.Find(need, setting.Calendar, setting.Today).Days.Arrive;
            return days.Arrive == honest
                ? alone
                : $"{alone} Beside the other orders it is {PlanWords.Day(days.Arrive)}.";
        }

        var late = PlanWords.Days(days.Arrive.DayNumber - promised.DayNumber);
        var taken = limits.Length > 0 ? limits : [PlanModel.Minutes];
        var names = string.Join(" and ", taken.OrderDescending().Select(r => Limits[r]));
        return $"Other orders take the {names}: "
            + $"earliest honest date {PlanWords.Day(days.Arrive)}, {late} late.";
    }
}
