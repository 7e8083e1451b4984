using Litterfall.Domain.Schedule;
using Litterfall.Workshop.Scheduling;

namespace Litterfall.UnitTests.Workshop.Scheduling;

/// <summary>
/// All orders together: rules, moves against the kept plan, whom to tell. Own worked examples.
/// </summary>
public sealed class ShopPlannerTests
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    private static readonly DateOnly Today = new(2026, 9, 3);

    private static readonly ShopCalendar Calendar = new()
    {
        Workers =
        [
            new Worker("Ilse") { Stages = ["plant"] },
            new Worker("Tobin") { Stages = ["cut", "pack"] },
        ],
        BenchPlaces = 3,
        QuarantinePlaces = 3,
        LeakTestPlaces = 1,
    };

    private static readonly PlanSetting Setting = new(Calendar, Today);

    private static OrderNeed Need(int order, DateOnly? promised, int tanks = 1) =>
        new()
        {
            Order = order,
            Name = $"LD-{order}",
            Promised = promised,
            Tanks = tanks,
            Planted = tanks,
            CureDays = 7,
            QuarantineDays = 30,
            GrowInDays = 42,
            AnimalDays = 28,
            Work =
            [
                new StageWork("cut", "cut", 60, StageKey.Cut),
                new StageWork("background", "background", 40, StageKey.Background),
                new StageWork("build", "build", 120, StageKey.Plant),
                new StageWork("plant", "plant", 90, StageKey.Plant),
                new StageWork("pack", "pack", 30, StageKey.Pack),
            ],
        };

    private static ShopPlan Kept(params OrderNeed[] needs) =>
        PlanUpdate.Next(new ShopPlan(), ShopPlanner.Find(needs, Setting, Stop), Setting, "first plan");

    private static OrderNeed Known(OrderNeed need, ShopPlan plan) =>
        need with
        {
            Kept = plan.Find(need.Order)!.Days,
        };

    /// <summary>Each rule is looked at on the days alone.</summary>
    internal static void Check(OrderPlans plans, ShopCalendar calendar)
    {
        var bench = new Dictionary<DateOnly, int>();
        var quarantine = new Dictionary<DateOnly, int>();
        foreach (var (need, days, _) in plans.Orders.Where(p => p.Days is not null))
        {
            Assert.True(days!.Cut < days.Background);
            Assert.True(days.Background!.Value.AddDays(need.CureDays) <= days.Plant);
            Assert.True(days.PlantsIn!.Value.AddDays(need.QuarantineDays) <= days.Plant);
            Assert.True(days.Plant!.Value.AddDays(need.GrowInDays) <= days.Pack);
            foreach (var day in new[] { days.Cut!.Value, days.Background.Value, days.Plant.Value, days.Pack })
            {
                Assert.True(day.DayOfWeek is not (DayOfWeek.Saturday or DayOfWeek.Sunday));
                Assert.DoesNotContain(calendar.Holidays, h => h.Day == day);
            }

            for (var d = days.Plant.Value; d <= days.Pack; d = d.AddDays(1))
            {
                bench[d] = bench.GetValueOrDefault(d) + need.Tanks;
            }

            for (var d = days.PlantsIn.Value; d < days.Plant; d = d.AddDays(1))
            {
                quarantine[d] = quarantine.GetValueOrDefault(d) + need.Planted;
            }
        }

        Assert.All(bench.Values, n => Assert.True(n <= calendar.BenchPlaces));
        Assert.All(quarantine.Values, n => Assert.True(n <= calendar.QuarantinePlaces));
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Orders_that_fit_are_on_their_promised_days(bool hasSolver)
    {
        var promised = new DateOnly(2026, 12, 4);
        OrderNeed[] needs = [Need(1, promised), Need(2, promised.AddDays(3)), Need(3, promised.AddDays(5))];
        var plans = ShopPlanner.Find(needs, Setting with { HasSolver = hasSolver }, Stop);
        Check(plans, Calendar);
        Assert.All(plans.Orders, p => Assert.Equal(p.Need.Promised, p.Days!.Arrive));
        Assert.All(plans.Orders, p => Assert.Equal("", p.Blocker));
    }

    [Fact]
    public void A_shelf_that_is_full_makes_one_late_and_says_so()
    {
        var promised = new DateOnly(2026, 11, 27);
        OrderNeed[] needs = [Need(1, promised, 2), Need(2, promised, 2)];
        var plans = ShopPlanner.Find(needs, Setting, Stop);
        Check(plans, Calendar);
        var late = Assert.Single(plans.Orders, p => p.Days!.Arrive > promised);
        // Six weeks of grow-in begin when the first two tanks have left, or the other way round.
        Assert.Contains("places", late.Blocker, StringComparison.Ordinal);
        Assert.Contains(PlanWords.Day(late.Days!.Arrive), late.Blocker, StringComparison.Ordinal);
    }

    [Fact]
    public void More_tanks_than_places_are_refused_with_what_would_do()
    {
        var plans = ShopPlanner.Find([Need(1, null, 5), Need(2, new DateOnly(2026, 12, 4))], Setting, Stop);
        Assert.Null(plans.Orders[0].Days);
        Assert.Contains("needs 5 places on the shelf", plans.Orders[0].Blocker, StringComparison.Ordinal);
        Assert.NotNull(plans.Orders[1].Days);
    }

    /// <summary>A slip of one order moves that one; the others keep each of their days.</summary>
    [Fact]
    public void Plants_that_die_move_their_order_alone_and_its_customer_is_told()
    {
        OrderNeed[] needs =
        [
            Need(1, new DateOnly(2026, 11, 27)),
            Need(2, new DateOnly(2026, 12, 4)),
            Need(3, new DateOnly(2026, 12, 11)),
        ];
        var kept = Kept(needs);
        var restart = new DateOnly(2026, 10, 12);
        var slipped = needs
            .Select(n => Known(n, kept))
            .Select(n =>
                n.Order == 1 ? n with { Waits = [new StageWait(StageKey.Plants, restart, "plants died")] } : n
            )
            .ToList();
        var plans = ShopPlanner.Find(slipped, Setting, Stop);
        var next = PlanUpdate.Next(kept, plans, Setting, "plants died");
        Check(plans, Calendar);
        Assert.Equal(kept.Find(2)!.Days, next.Find(2)!.Days);
        Assert.Equal(kept.Find(3)!.Days, next.Find(3)!.Days);
        // 12 October and 30 days are Wed 11 November; six weeks later it is Wed 23 December.
        var move = Assert.Single(next.Moves);
        Assert.Equal((1, new DateOnly(2026, 12, 23)), (move.Order, move.Now));
        Assert.Equal(new DateOnly(2026, 11, 27), move.Was);
        Assert.Contains("Plants must come by", next.Find(1)!.Blocker, StringComparison.Ordinal);
        var moved = next.Find(1)!.Tasks.Single(t => t.Task.Key == "order-1-pack");
        Assert.Equal(1, moved.Revision);
        Assert.All(next.Find(2)!.Tasks, t => Assert.Equal(0, t.Revision));
    }

    [Fact]
    public void What_is_done_stays_and_holds_its_place_from_today_on()
    {
        var planted = Need(1, new DateOnly(2026, 10, 9)) with
        {
            Done = [new StageDone(StageKey.Plant, new DateOnly(2026, 8, 25))],
        };
        var plans = ShopPlanner.Find([planted, Need(2, new DateOnly(2026, 11, 27), 3)], Setting, Stop);
        var days = plans.Orders[0].Days!;
        Assert.Equal(new DateOnly(2026, 8, 25), days.Plant);
        // Grown in on Tue 6 Oct; it is handed over on its day.
        Assert.Equal(new DateOnly(2026, 10, 9), days.Pack);
        // The other one needs the whole shelf: it is planted when the first has left.
        Assert.True(plans.Orders[1].Days!.Plant > days.Pack);
    }

    [Fact]
    public void Tasks_of_a_day_have_hours_and_somebody_who_does_them()
    {
        var kept = Kept(Need(1, new DateOnly(2026, 12, 4)));
        var tasks = kept.Find(1)!.Tasks.Select(t => t.Task).ToList();
        Assert.Equal(340, tasks.Where(t => t.Stage is not null).Sum(t => t.Minutes));
        Assert.Equal("Tobin", tasks.Single(t => t.Stage == "cut").Who);
        Assert.Equal("Ilse", tasks.Single(t => t.Stage == "plant").Who);
        Assert.Equal(tasks.Count, tasks.Select(t => t.Key).Distinct().Count());
        Assert.Contains(tasks, t => t.Key == "order-1-leak-test");
        Assert.Contains(tasks, t => t.Key == "order-1-plants-in");
    }

    [Fact]
    public void An_order_that_fits_moves_nobody_and_one_that_does_not_says_who_would()
    {
        OrderNeed[] needs = [Need(1, new DateOnly(2026, 12, 18), 2), Need(2, new DateOnly(2026, 12, 18))];
        var kept = Kept(needs);
        OrderNeed[] known = [.. needs.Select(n => Known(n, kept))];
        var late = WhatIf.Try(Need(9, new DateOnly(2026, 12, 18)), known, Setting, Stop);
        Assert.True(late.Order.Days!.Arrive > new DateOnly(2026, 12, 18));
        var sentences = late.Sentences(Setting).ToList();
        Assert.Contains("Where nobody else is moved", sentences[1], StringComparison.Ordinal);
        var free = WhatIf.Try(Need(9, new DateOnly(2027, 2, 12)), known, Setting, Stop);
        Assert.Equal(new DateOnly(2027, 2, 12), free.Order.Days!.Arrive);
        Assert.Contains(
            "nobody else is moved",
            Assert.Single(free.Sentences(Setting)),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Tasks_of_an_order_that_is_lost_are_taken_back()
    {
        var kept = Kept(Need(1, new DateOnly(2026, 12, 4)), Need(2, new DateOnly(2026, 12, 4)));
        var known = Known(Need(2, new DateOnly(2026, 12, 4)), kept);
        var next = PlanUpdate.Next(
            kept,
            ShopPlanner.Find([known], Setting, Stop),
            Setting,
            "order 1 is lost"
        );
        Assert.All(next.Find(1)!.Tasks, t => Assert.True(t.IsCancelled && t.Revision == 1));
        Assert.All(next.Find(2)!.Tasks, t => Assert.False(t.IsCancelled));
    }
}
