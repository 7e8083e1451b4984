using Litterfall.Domain.Schedule;
using Litterfall.Workshop.Scheduling.Chains;

namespace Litterfall.Workshop.Scheduling;

/// <summary>
/// Orders of the workshop as jobs by days from today on. Each stage is known by its last day; quarantine is
/// taken as late as it can be before planting, since an earlier one only takes more places.
/// </summary>
internal sealed class PlanModel
{
    /// <summary>Index of minutes of work.</summary>
    public const int Minutes = 0;

    /// <summary>Index of places in quarantine.</summary>
    public const int Quarantine = 1;

    /// <summary>Index of places on the bench.</summary>
    public const int Bench = 2;

    /// <summary>Index of places of the leak test.</summary>
    public const int LeakTest = 3;

    /// <summary>Minutes to fill tanks, or to put plants into quarantine. Own choice.</summary>
    public const int ShortTask = 15;

    private const long LateDay = 100;
    private const long EarlyDay = 3;
    private const long OpenDay = 2;
    private const long MovedStage = 12;
    private const long MovedEnd = 40;
    private const long MovedDay = 3;
    private const int DaysOfWeek = 7;
    private const int Never = int.MaxValue / 2;
    private readonly ShopCalendar calendar;
    private readonly DateOnly today;
    private readonly int horizon;
    private readonly Dictionary<(int Order, string Stage), StageSpan> spans = [];

    /// <summary>Prepares the days.</summary>
    /// <param name="calendar">Days of the workshop.</param>
    /// <param name="today">Day 0.</param>
    /// <param name="horizon">Days that are looked at.</param>
    public PlanModel(ShopCalendar calendar, DateOnly today, int horizon)
    {
        (this.calendar, this.today, this.horizon) = (calendar, today, horizon);
    }

    /// <summary>The problem of all orders.</summary>
    /// <param name="needs">The orders.</param>
    public JobProblem Create(IEnumerable<OrderNeed> needs)
    {
        int[] Each(int amount) => [.. Enumerable.Repeat(amount, horizon)];
        return new JobProblem(
            [.. needs.Select(Job)],
            [
                [.. Enumerable.Range(0, horizon).Select(d => (int)calendar.Minutes(Day(d)))],
                Each(calendar.QuarantinePlaces),
                Each(calendar.BenchPlaces),
                Each(calendar.LeakTestPlaces),
            ]
        );
    }

    /// <summary>The days of an order.</summary>
    /// <param name="need">The order.</param>
    /// <param name="ends">Last day of each of its open stages.</param>
    public OrderDays Days(OrderNeed need, int[] ends)
    {
        var open = need.Open().ToList();
        DateOnly? Of(string stage) =>
            open.IndexOf(stage) is >= 0 and var at ? Day(ends[at]) : need.Finished(stage);
        var plant = Of(StageKey.Plant);
        var pack = Of(StageKey.Pack)!.Value;
        var plantAt = open.IndexOf(StageKey.Plant);
        return new OrderDays
        {
            Order = need.Order,
            CulturesStart = Cultures(need, open.Contains(StageKey.Plant) ? plant : pack),
            PlantsIn =
                need.QuarantineDays == 0 ? null
                : need.Finished(StageKey.Plants) is { } came ? came
                : plantAt >= 0 ? Day(PlantsIn(need, First(need, StageKey.Plant, ends[plantAt])))
                : null,
            Cut = Of(StageKey.Cut),
            Background = Of(StageKey.Background),
            Plant = plant,
            GrownIn = need.Tanks > 0 ? plant?.AddDays(need.GrowInDays) : null,
            AnimalsFrom = need.AnimalDays is { } wait ? plant?.AddDays(wait) : null,
            Pack = pack,
            Ship = pack,
            Arrive = BackPlan.Arrives(need, calendar, pack),
        };
    }

    private DateOnly? Cultures(OrderNeed need, DateOnly? seeded) =>
        need.CultureDays > 0 && seeded is { } day
            ? PlanDays.UpTo(day.AddDays(-need.CultureDays), calendar.IsWork)
            : null;

    private Job Job(OrderNeed need)
    {
        var stages = new List<JobStage>();
        string? later = null;
        foreach (var key in need.Open().Reverse())
        {
            var stage = Stage(need, key);
            if (later is not null)
            {
                var firsts = stages[0].Days.Select(d => First(need, later, d)).ToArray();
                var wait = 1 + Wait(need, key);
                stage = stage with
                {
                    Ready =
                    [
                        .. stage.Days.Select(d =>
                            Array.FindIndex(firsts, f => f >= d + wait) is >= 0 and var at
                                ? stages[0].Days[at]
                                : Never
                        ),
                    ],
                    Holds = key == StageKey.Plant && need.Tanks > 0 ? [new DayHold(Bench, need.Tanks)] : [],
                };
            }

            stages.Insert(0, stage);
            later = key;
        }

        return new Job(
            need.Name,
            [.. stages.Select((s, i) => s with { Next = i + 1 < stages.Count ? i + 1 : -1 })]
        );
    }

    /// <summary>
    /// Days that must lie between the last day of a stage and the first of the next, less one.
    /// </summary>
    private int Wait(OrderNeed need, string stage) =>
        stage switch
        {
            StageKey.Background when need.CureDays > 0 => need.CureDays + calendar.ClearDays - 1,
            StageKey.Plant when need.GrowInDays > 0 => need.GrowInDays + calendar.ClearDays - 1,
            _ => 0,
        };

    private JobStage Stage(OrderNeed need, string key)
    {
        var from = Earliest(need, key);
        int[] days = [.. Enumerable.Range(0, horizon).Where(d => Does(need, key, d, from))];
        return new JobStage
        {
            Key = key,
            Days = days,
            Costs = [.. days.Select(d => Cost(need, key, d))],
            Ready = days,
            Uses = [.. days.Select(d => Uses(need, key, d).ToArray())],
        };
    }

    /// <summary>
    /// First day on which a stage can begin, by what it waits for and what was done before.
    /// </summary>
    private int Earliest(OrderNeed need, string key)
    {
        var day = need.Wait(key) is { } wait ? At(wait.Day) : 0;
        void After(string stage, int days)
        {
            if (need.Finished(stage) is { } done)
            {
                day = Math.Max(day, At(done.AddDays(days + calendar.ClearDays)));
            }
        }

        if (key == StageKey.Plant)
        {
            After(StageKey.Background, need.CureDays);
            After(StageKey.Plants, need.QuarantineDays);
        }

        if (key == StageKey.Pack)
        {
            After(StageKey.Plant, need.GrowInDays);
        }

        var isSeeding = key == (need.Tanks > 0 ? StageKey.Plant : StageKey.Pack);
        if (isSeeding && need.CultureDays > 0)
        {
            var start = PlanDays.From(today, calendar.IsWork) ?? today;
            day = Math.Max(day, At(start.AddDays(need.CultureDays)));
        }

        return Math.Max(0, day);
    }

    private bool Does(OrderNeed need, string key, int day, int from)
    {
        var on = Day(day);
        if (need.IsFixed && Kept(need, key) is { } kept && kept != on)
        {
            return false;
        }

        var span = Span(need, key);
        var isOpen =
            key == StageKey.Leak ? calendar.IsWork(on)
            : key == StageKey.Pack ? BackPlan.Leaves(need, calendar, on) && span.Does(calendar, on)
            : span.Does(calendar, on);
        if (!isOpen || First(need, key, day) is not (>= 0 and var first) || first < from)
        {
            return false;
        }

        return key != StageKey.Plant
            || need.QuarantineDays == 0
            || need.Finished(StageKey.Plants) is not null
            || PlantsIn(need, first) >= Math.Max(1, need.Wait(StageKey.Plants) is { } w ? At(w.Day) : 0);
    }

    /// <summary>First day of a stage that ends on a day; below 0 where it began before today.</summary>
    private int First(OrderNeed need, string key, int last) =>
        key == StageKey.Leak ? last - EarliestDays.LeakDays(need, calendar) + 1
        : Span(need, key).First(calendar, Day(last)) is { } first ? At(first)
        : -1;

    private int PlantsIn(OrderNeed need, int plant) =>
        PlanDays.UpTo(Day(plant - need.QuarantineDays - calendar.ClearDays), calendar.IsWork) is { } day
            ? At(day)
            : -1;

    private IEnumerable<DayUse> Uses(OrderNeed need, string key, int last)
    {
        var first = First(need, key, last);
        if (key == StageKey.Leak)
        {
            var places = Math.Min(need.Tanks, calendar.LeakTestPlaces);
            yield return new DayUse(LeakTest, first, places, last - first + 1);
            yield return new DayUse(Minutes, Work(first), ShortTask);
            yield break;
        }

        var span = Span(need, key);
        foreach (var day in span.Each(calendar, Day(last)))
        {
            yield return new DayUse(Minutes, At(day), span.Minutes);
        }

        if (key == StageKey.Plant)
        {
            if (need.QuarantineDays > 0 && need.Planted > 0)
            {
                var came = need.Finished(StageKey.Plants) is not null;
                var start = came ? 0 : PlantsIn(need, first);
                yield return new DayUse(Quarantine, start, need.Planted, first - start);
            }

            if (need.Tanks > 0 && first < last)
            {
                yield return new DayUse(Bench, first, need.Tanks, last - first);
            }
        }

        if (key == StageKey.Pack && need.Tanks > 0)
        {
            // Planted before: it stands there from today on.
            var start = need.Open().Contains(StageKey.Plant) ? last : 0;
            yield return new DayUse(Bench, start, need.Tanks, last - start + 1);
        }
    }

    /// <summary>The day itself, or the last working day before it.</summary>
    private int Work(int day) =>
        Math.Max(0, PlanDays.UpTo(Day(day), calendar.IsWork) is { } work ? At(work) : 0);

    private long Cost(OrderNeed need, string key, int last)
    {
        var cost = Moved(need, key, Day(last));
        if (key is StageKey.Cut or StageKey.Leak or StageKey.Background)
        {
            // What takes no place is done early: it may slip.
            cost += last / DaysOfWeek;
        }

        if (key == StageKey.Plant)
        {
            var first = First(need, key, last);
            var isComing = need.QuarantineDays > 0 && need.Finished(StageKey.Plants) is null;
            cost +=
                (isComing ? (long)need.Planted * (first - PlantsIn(need, first)) : 0)
                - ((long)need.Tanks * last);
        }

        if (key == StageKey.Pack)
        {
            var arrives = BackPlan.Arrives(need, calendar, Day(last));
            var late = need.Promised is { } day ? arrives.DayNumber - day.DayNumber : 0;
            cost +=
                ((long)need.Tanks * (last + 1))
                + (need.Promised is null ? OpenDay * last : 0)
                + (LateDay * Math.Max(0, late))
                + (EarlyDay * Math.Max(0, -late));
        }

        return cost;
    }

    /// <summary>What it costs that a stage is moved against the plan that is kept.</summary>
    private static long Moved(OrderNeed need, string key, DateOnly day) =>
        Kept(need, key) is { } was && was != day
            ? (key == StageKey.Pack ? MovedEnd : MovedStage)
                + (MovedDay * Math.Abs(was.DayNumber - day.DayNumber))
            : 0;

    private static DateOnly? Kept(OrderNeed need, string key) =>
        key switch
        {
            StageKey.Cut => need.Kept?.Cut,
            StageKey.Background => need.Kept?.Background,
            StageKey.Plant => need.Kept?.Plant,
            StageKey.Pack => need.Kept?.Pack,
            _ => null,
        };

    private StageSpan Span(OrderNeed need, string key)
    {
        if (!spans.TryGetValue((need.Order, key), out var span))
        {
            spans[(need.Order, key)] = span = StageSpan.From(calendar, need.Minutes(key));
        }

        return span;
    }

    private DateOnly Day(int index) => today.AddDays(index);

    private int At(DateOnly day) => day.DayNumber - today.DayNumber;
}
