using Litterfall.Domain.Schedule;
using Litterfall.Workshop.Scheduling;

namespace Litterfall.UnitTests.Workshop.Scheduling;

/// <summary>
/// Days of one order, counted back from its promise and on from today. Own worked examples.
/// </summary>
public sealed class BackPlanTests
{
    private static readonly DateOnly Promise = new(2026, 9, 25);

    /// <summary>
    /// Grow-in of six weeks, a week of cure, four weeks of quarantine, cultures eight weeks before.
    /// </summary>
    private static readonly OrderNeed Tank = new()
    {
        Order = 1,
        Name = "LD-1",
        Promised = Promise,
        Tanks = 1,
        Planted = 1,
        CureDays = 7,
        QuarantineDays = 28,
        GrowInDays = 42,
        CultureDays = 56,
        Work =
        [
            new StageWork("background", "background", 30, StageKey.Background),
            new StageWork("plant", "plant", 60, StageKey.Plant),
        ],
    };

    private static readonly ShopCalendar Week = new() { Workers = [new Worker("Ilse")] };

    [Fact]
    public void Days_of_the_promise_of_a_Friday_in_September()
    {
        var days = BackPlan.Latest(Tank, Week, Promise)!;
        Assert.Equal(Promise, days.Arrive);
        Assert.Equal(new DateOnly(2026, 8, 14), days.Plant);
        Assert.Equal(new DateOnly(2026, 8, 7), days.Background);
        Assert.Equal(new DateOnly(2026, 7, 17), days.PlantsIn);
        Assert.Equal(new DateOnly(2026, 6, 19), days.CulturesStart);
    }

    /// <summary>
    /// On Mon 20 Jul plants can come on Tue 21 Jul: planted on Tue 18 Aug, grown in on Tue 29 Sep.
    /// </summary>
    [Fact]
    public void What_should_have_come_names_itself_and_the_earliest_honest_date()
    {
        var need = Tank with { CultureDays = 0 };
        Assert.Null(BackPlan.Refusal(need, Week, Promise, new DateOnly(2026, 7, 16)));
        Assert.Equal(
            "Plants must come by Fri 17 Jul 2026 and it's Mon 20 Jul 2026: "
                + "earliest honest date Tue 29 Sep 2026.",
            BackPlan.Refusal(need, Week, Promise, new DateOnly(2026, 7, 20))
        );
    }

    /// <summary>From Mon 20 Jul eight weeks are Mon 14 Sep; six weeks of grow-in end on Mon 26 Oct.</summary>
    [Fact]
    public void Cultures_that_were_not_started_decide()
    {
        var words = BackPlan.Refusal(Tank, Week, Promise, new DateOnly(2026, 7, 20));
        Assert.StartsWith("Cultures must be started by Fri 19 Jun 2026", words, StringComparison.Ordinal);
        Assert.EndsWith("earliest honest date Mon 26 Oct 2026.", words, StringComparison.Ordinal);
    }

    /// <summary>
    /// Ship days Monday to Wednesday, two working days on the way, one clear day before planting and before
    /// packing; 6 April is a holiday, so that plants come on Thu 2 April.
    /// </summary>
    [Fact]
    public void Days_before_a_Friday_in_May_with_a_clear_day()
    {
        var calendar = May(1);
        var need = Tank with
        {
            IsShipped = true,
            CureDays = 0,
            QuarantineDays = 21,
            GrowInDays = 28,
            CultureDays = 0,
            Work = [],
        };
        var days = BackPlan.Latest(need, calendar, new DateOnly(2026, 5, 29))!;
        Assert.Equal(new DateOnly(2026, 5, 27), days.Ship);
        Assert.Equal(new DateOnly(2026, 5, 29), days.Arrive);
        Assert.Equal(new DateOnly(2026, 4, 28), days.Plant);
        Assert.Equal(new DateOnly(2026, 5, 26), days.GrownIn);
        Assert.Equal(new DateOnly(2026, 4, 2), days.PlantsIn);
        Assert.Equal(
            new DateOnly(2026, 5, 20),
            BackPlan.Latest(need, calendar, new DateOnly(2026, 5, 27))!.Ship
        );
    }

    /// <summary>
    /// A holiday on Thursday with carriers that stop on Wednesday at noon leaves Monday and Tuesday.
    /// </summary>
    [Fact]
    public void Nothing_leaves_on_the_eve_of_a_holiday_on_which_carriers_stop_early()
    {
        var thursday = new DateOnly(2026, 11, 26);
        var calendar = Week with { Holidays = [new Holiday(thursday, "holiday") { CarrierEndsEveAt = 12 }] };
        Assert.False(calendar.IsShip(thursday.AddDays(-1)));
        Assert.True(calendar.IsShip(thursday.AddDays(-2)));
        Assert.True(calendar.IsWork(thursday.AddDays(-1)));
        // One working day from Wednesday on: Thursday does not count.
        Assert.Equal(thursday.AddDays(1), calendar.Arrival(thursday.AddDays(-1)));
    }

    private static ShopCalendar May(int clear) =>
        new()
        {
            ClearDays = clear,
            TransitDays = 2,
            Workers = [new Worker("Ilse")],
            Holidays =
            [
                new Holiday(new(2026, 4, 3), "a"),
                new Holiday(new(2026, 4, 6), "b"),
                new Holiday(new(2026, 5, 1), "c"),
                new Holiday(new(2026, 5, 25), "d"),
            ],
        };
}
