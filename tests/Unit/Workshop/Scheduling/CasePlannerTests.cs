using Litterfall.Domain.Lists;
using Litterfall.Workshop.Scheduling.Cases;
using Litterfall.Workshop.Scheduling.Chains;

namespace Litterfall.UnitTests.Workshop.Scheduling;

/// <summary>
/// Plans of cases against a second program that knows only the rules, and against each other.
/// </summary>
public sealed class CasePlannerTests
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    private static readonly SearchWish Quick = new() { Tries = 2000 };

    public static TheoryData<int, bool> Tiny
    {
        get
        {
            var data = new TheoryData<int, bool>();
            foreach (var seed in Enumerable.Range(1, 8))
            {
                data.Add(seed, true);
                data.Add(seed, false);
            }

            return data;
        }
    }

    /// <summary>Every plan of two orders in three weeks is tried by the checker.</summary>
    [Theory]
    [MemberData(nameof(Tiny))]
    public void Nothing_is_cheaper_than_the_plan_of_a_tiny_case(int seed, bool hasSolver)
    {
        var asked = Draw(seed, 2) with { HorizonDays = 18, BenchPlaces = 2, StaffHours = 4, Holidays = [9] };
        asked = asked with
        {
            Orders =
            [
                .. asked.Orders.Select(o =>
                    o with
                    {
                        QuarantineDays = 1 + (o.QuarantineDays / 10),
                        GrowInDays = 1 + (o.GrowInDays / 14),
                        Due = 8 + (o.Due % 6),
                        Release = o.Release % 3,
                        PlantHours = Math.Min(4, o.PlantHours),
                    }
                ),
            ],
        };
        var (plan, _) = CasePlanner.Find(asked, Quick with { HasSolver = hasSolver }, Stop);
        var cheapest = CaseChecker.Cheapest(asked);
        Assert.Equal(cheapest, plan?.Objective);
        Assert.True(plan is null || (plan.IsProved && plan.Bound == plan.Objective));
    }

    /// <summary>
    /// Own worked example: 5 orders, 8 places on the bench, 6 in quarantine; its optimum of 336 was proved by
    /// a model of another program.
    /// </summary>
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Five_orders_of_the_worked_example_are_planned_at_their_optimum(bool hasSolver)
    {
        var (plan, _) = CasePlanner.Find(Example, Quick with { HasSolver = hasSolver }, Stop);
        Assert.Equal(336, plan!.Objective);
        Assert.True(plan.IsProved);
        Assert.Equal(336, CaseChecker.Cost(Example, Days(plan)));
    }

    [Theory]
    [InlineData(11, 5, true)]
    [InlineData(12, 7, true)]
    [InlineData(13, 9, false)]
    [InlineData(14, 14, false)]
    public void A_plan_keeps_the_rules_and_its_bound_is_honest(int seed, int orders, bool hasSolver)
    {
        var asked = Draw(seed, orders);
        using var end = new CancellationTokenSource(TimeSpan.FromSeconds(0.4));
        var (plan, _) = CasePlanner.Find(asked, Quick with { HasSolver = hasSolver }, end.Token);
        Assert.Equal(plan!.Objective, CaseChecker.Cost(asked, Days(plan)));
        Assert.True(plan.Bound <= plan.Objective);
        Assert.Equal(plan.IsProved, plan.Bound == plan.Objective);
    }

    /// <summary>What is done with more is never worse, and what is added costs at least itself.</summary>
    [Theory]
    [InlineData(21)]
    [InlineData(22)]
    public void More_room_is_never_worse_and_fewer_orders_cost_no_more(int seed)
    {
        var asked = Draw(seed, 4) with { BenchPlaces = 4 };
        long Objective(ShopCase shop)
        {
            var (plan, _) = CasePlanner.Find(shop, Quick, Stop);
            Assert.True(plan!.IsProved);
            return plan.Objective;
        }

        var whole = Objective(asked);
        Assert.True(Objective(asked with { BenchPlaces = 6 }) <= whole);
        Assert.True(Objective(asked with { StaffHours = 12 }) <= whole);
        Assert.True(Objective(asked with { Orders = [.. asked.Orders.Take(3)] }) <= whole);
    }

    [Fact]
    public void A_week_later_everything_is_a_week_later()
    {
        var asked = Draw(31, 4);
        var later = asked with
        {
            HorizonDays = asked.HorizonDays + 7,
            Holidays = [.. asked.Holidays.Select(d => d + 7)],
            Orders = [.. asked.Orders.Select(o => o with { Release = o.Release + 7, Due = o.Due + 7 })],
        };
        var now = CasePlanner.Find(asked, Quick, Stop).Plan!;
        var then = CasePlanner.Find(later, Quick, Stop).Plan!;
        Assert.True(now.IsProved && then.IsProved);
        Assert.Equal(now.Objective, then.Objective);
        // The earlier plan, moved, is a plan of the later case.
        Assert.Equal(
            then.Objective,
            CaseChecker.Cost(later, [.. Days(now).Select(d => (d.Q + 7, d.P + 7, d.S + 7))])
        );
    }

    [Fact]
    public void The_same_case_gives_the_same_days()
    {
        var asked = Draw(41, 6);
        var first = CasePlanner.Find(asked, Quick, Stop).Plan!;
        Assert.Equal(Days(first), Days(CasePlanner.Find(asked, Quick, Stop).Plan!));
    }

    [Fact]
    public void What_cannot_be_done_is_refused_with_its_cause_and_what_would_do()
    {
        var asked = Example;
        CaseRefusal Refused(ShopCase shop) => CasePlanner.Find(shop, Quick, Stop).Refusal!;
        ShopCase With(Func<CaseOrder, CaseOrder> change) =>
            asked with
            {
                Orders = [.. asked.Orders.Select((o, i) => i == 2 ? change(o) : o)],
            };

        var hours = Refused(With(o => o with { PlantHours = 9 }));
        Assert.Equal("order 3 needs 9 h on one day, staff has 7", hours.Message);
        Assert.Equal((2, "plantHours"), (hours.Order, hours.Key));
        Assert.Contains(
            "needs 9 bench places, the shop has 8",
            Refused(With(o => o with { BenchPlaces = 9 })).Message,
            StringComparison.Ordinal
        );
        // Quarantine from day 6 to day 20, grown in on day 41; day 42 is a Monday.
        var late = Refused(
            With(o => o with { Release = 6 }) with
            {
                HorizonDays = 42,
                Orders = [asked.Orders[2]],
            }
        );
        Assert.Equal(
            "order 3 can leave on day 42 at the earliest, and the horizon ends with day 41",
            late.Message
        );
        Assert.Equal("horizonDays of 43 or more", late.Expected);
        var crowd = Refused(asked with { BenchPlaces = 2, HorizonDays = 64 });
        Assert.Contains("together do not fit into 64 days", crowd.Message, StringComparison.Ordinal);
        Assert.Contains("with which there is a plan", crowd.Expected, StringComparison.Ordinal);
    }

    [Fact]
    public void Due_before_its_own_time_is_over_is_late_and_told_with_the_earliest_date()
    {
        var asked = Example with { Orders = [Example.Orders[2] with { Due = 10 }] };
        var plan = CasePlanner.Find(asked, Quick, Stop).Plan!;
        // Plants on day 7 (day 6 is a Sunday), planted on 21, grown in on 42, two working days on the way.
        Assert.Equal(
            (7, 21, 42, 44),
            (plan.Orders[0].QuarantineStart, plan.Orders[0].Plant, plan.Orders[0].Ship, plan.Orders[0].Arrive)
        );
        Assert.Contains(
            "the earliest honest date is day 44",
            Assert.Single(plan.Blocking),
            StringComparison.Ordinal
        );
    }

    internal static IReadOnlyList<(int Q, int P, int S)> Days(CasePlan plan) =>
        [.. plan.Orders.Select(o => (o.QuarantineStart, o.Plant, o.Ship))];

    private static readonly ShopCase Example = new()
    {
        HorizonDays = 140,
        Holidays = [56],
        TransitWorkDays = 2,
        StaffHours = 7,
        BenchPlaces = 8,
        QuarantinePlaces = 6,
        Orders =
        [
            Order((1, 1, 60), (21, 14), (3, 1), (1, 1, 2)),
            Order((2, 0, 64), (28, 28), (5, 1), (2, 1, 2)),
            Order((3, 6, 53), (14, 21), (4, 2), (1, 2, 2)),
            Order((4, 3, 61), (21, 14), (5, 2), (2, 1, 3)),
            Order((5, 0, 56), (21, 28), (3, 2), (2, 2, 1)),
        ],
    };

    private static CaseOrder Order(
        (int Id, int Release, int Due) order,
        (int Quarantine, int GrowIn) days,
        (double Plant, double Pack) hours,
        (int Quarantine, int Bench, int Weight) places
    ) =>
        new()
        {
            Id = order.Id,
            Release = order.Release,
            Due = order.Due,
            QuarantineDays = days.Quarantine,
            GrowInDays = days.GrowIn,
            PlantHours = hours.Plant,
            PackHours = hours.Pack,
            QuarantinePlaces = places.Quarantine,
            BenchPlaces = places.Bench,
            Weight = places.Weight,
        };

    /// <summary>A made-up case.</summary>
    private static ShopCase Draw(int seed, int orders)
    {
        var random = new Random(seed);
        int One(params int[] from) => from[random.Next(from.Length)];
        return Example with
        {
            StaffHours = One(6, 7, 8),
            BenchPlaces = One(6, 8),
            QuarantinePlaces = One(5, 6, 7),
            Holidays = [random.Next(20, 60)],
            Orders =
            [
                .. Enumerable
                    .Range(1, orders)
                    .Select(i =>
                        Order(
                            (i, random.Next(0, 10), random.Next(45, 75)),
                            (One(14, 21), One(14, 21, 28)),
                            (random.Next(2, 6), random.Next(1, 3)),
                            (random.Next(1, 3), random.Next(1, 3), random.Next(1, 4))
                        )
                    ),
            ],
        };
    }
}
