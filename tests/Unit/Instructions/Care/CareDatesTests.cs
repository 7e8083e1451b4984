using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Instructions.Care;
using Litterfall.Quantities.Stocking;
using Litterfall.UnitTests.Instructions.Building;
using Litterfall.UnitTests.Judging;
using Litterfall.UnitTests.Quantities.Measures;
using Litterfall.UnitTests.Quantities.Packs;
using Litterfall.UnitTests.Quantities.Sizing;

namespace Litterfall.UnitTests.Instructions.Care;

/// <summary>Dates before and after planting against a calendar counted by hand.</summary>
public sealed class CareDatesTests
{
    private static readonly Figure FourWeeks = Figure.Choice(
        "plant quarantine",
        28,
        Unit.Day,
        "posed: four weeks"
    );

    private static readonly CarePlan Foam = CareDates.Of(TankPlan.Of(Built.Foam), FourWeeks);

    // Own worked example. Planting Fri 14 Aug 2026; cure 7 days (foam), plants 4 weeks, cultures 8 weeks,
    // grow-in 6 weeks; no clear day between ready and next.
    [Theory]
    [InlineData("planting", 2026, 8, 14, DayOfWeek.Friday)]
    [InlineData("background-finished", 2026, 8, 7, DayOfWeek.Friday)]
    [InlineData("plants-in-quarantine", 2026, 7, 17, DayOfWeek.Friday)]
    [InlineData("cultures-started", 2026, 6, 19, DayOfWeek.Friday)]
    [InlineData("grow-in-over", 2026, 9, 25, DayOfWeek.Friday)]
    [InlineData("crew-seeded", 2026, 8, 14, DayOfWeek.Friday)]
    // 14 Aug + 28 d = 11 Sep; + 56 d = 9 Oct.
    [InlineData("animals-earliest", 2026, 9, 11, DayOfWeek.Friday)]
    [InlineData("animals-better", 2026, 10, 9, DayOfWeek.Friday)]
    [InlineData("settle-check", 2026, 10, 9, DayOfWeek.Friday)]
    // 60 days before 9 Oct 2026: 10 Aug.
    [InlineData("quarantine-start-dendrobates-auratus-1", 2026, 8, 10, DayOfWeek.Monday)]
    [InlineData("quarantine-release-dendrobates-auratus-1", 2026, 10, 9, DayOfWeek.Friday)]
    // 14 Aug 2026 + 728 d (2 × 364) = 11 Aug 2028, a Friday again.
    [InlineData("layer-review", 2028, 8, 11, DayOfWeek.Friday)]
    public void The_worked_example_falls_on_its_days(string key, int year, int month, int day, DayOfWeek week)
    {
        var date = Foam.Find(key);
        Assert.NotNull(date);
        Assert.Equal(new DateOnly(year, month, day), date.Day);
        Assert.Equal(week, date.Day.DayOfWeek);
    }

    [Fact]
    public void Plants_wait_thirty_days_unless_the_shop_says_otherwise()
    {
        // 30 days before 14 Aug 2026: 15 Jul (keeper practice, recalled).
        Assert.Equal(
            new DateOnly(2026, 7, 15),
            CareDates.Of(TankPlan.Of(Built.Foam)).Find("plants-in-quarantine")!.Day
        );
    }

    [Fact]
    public void The_callers_day_goes_before_the_designs_and_the_stand_in_is_said()
    {
        var moved = CareDates.Of(TankPlan.Of(Built.Foam, default, null, new DateOnly(2027, 3, 1)));
        Assert.Equal(new DateOnly(2027, 3, 1), moved.Find("planting")!.Day);
        Assert.Null(moved.Note);
        var numbers = Posed
            .Run(
                "{ inside: { length: 40 cm, depth: 40 cm, height: 40 cm } }",
                "{ soil: { recipe: ready-rainforest, depth: 5 cm } }"
            )
            .Numbers;
        var plan = CareDates.Of(TankPlan.Of(numbers));
        Assert.Equal(new DateOnly(2026, 1, 5), plan.Planting);
        Assert.Equal(DayOfWeek.Monday, plan.Planting.DayOfWeek);
        Assert.Contains("names no planting day", plan.Note, StringComparison.Ordinal);
        // Nothing to quarantine, cure, drain, light or trim.
        string[] absent =
        [
            "plants-in-quarantine",
            "cultures-started",
            "background-finished",
            "silicone-finished",
            "level-check",
            "lamp-check",
            "lid-cleaning",
            "trim",
            "litter-top-up",
            "animals-earliest",
        ];
        Assert.All(absent, key => Assert.Null(plan.Find(key)));
    }

    [Fact]
    public void Dates_are_sorted_and_keys_unique()
    {
        var days = Foam.Dates.Select(d => d.Day).ToArray();
        Assert.Equal(days.Order(), days);
        Assert.Equal(Foam.Dates.Length, Foam.Dates.Select(d => d.Key).Distinct().Count());
        Assert.All(Foam.Dates, d => Assert.Matches("^[a-z0-9]+(-[a-z0-9]+)*$", d.Key));
    }

    [Fact]
    public void Rounds_come_back_in_weeks_or_days()
    {
        Assert.Equal(new CareRepeat(1, CareUnit.Week), Foam.Find("front-glass")!.Repeat);
        Assert.Equal(new CareRepeat(8, CareUnit.Week), Foam.Find("trim")!.Repeat);
        // Common practice where the crew lasts: every 6 to 12 months.
        Assert.Null(Built.Inches.Life!.EatenUp);
        Assert.Equal(
            new CareRepeat(39, CareUnit.Week),
            CareDates.Of(TankPlan.Of(Built.Inches)).Find("crew-reseed")!.Repeat
        );
        // The arid box waters by hand and has no reservoir, so there is no level to read.
        Assert.Null(CareDates.Of(TankPlan.Of(Built.Arid)).Find("level-check"));
        Assert.Equal(new CareRepeat(10, CareUnit.Day), CareRepeat.Days(10));
        Assert.Equal("every 2 weeks", CareRepeat.Days(14).Words);
        Assert.Equal("every day", CareRepeat.Days(1).Words);
    }

    [Fact]
    public void A_crew_without_leaves_is_seeded_again_as_often_as_it_takes()
    {
        // No leaves, so no food: two frogs of 2.3 g eat it up.
        var life = Built.Foam.Life!;
        var again = Foam.Find("crew-reseed")!;
        Assert.NotNull(life.EatenUp);
        Assert.InRange(again.Repeat!.Every, 4, 26);
        Assert.Equal(life.AnimalsFrom.AddDays(7 * again.Repeat.Every), again.Day);
        Assert.Contains("500 springtails", again.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Leaves_are_topped_up_when_they_cover_too_little()
    {
        // Own worked example: oak rots by 1.476 a year at 24 °C in damp, airy ground without crew (0.45 a
        // year
        // at 10 °C by RothC-26.3, recalled); from 3 to 2 cm in ln 1.5 ÷ 1.476 × 365 = 100.3 days: 14 weeks.
        var numbers = Posed
            .Run(
                "{ inside: { length: 40 cm, depth: 40 cm, height: 40 cm } }",
                "{ soil: { recipe: ready-rainforest, depth: 5 cm }, "
                    + "litter: { material: oak-leaves, depth: 3 cm } }",
                "planted: 2026-08-14\nheadspace: { hold: { air: 24 C, humidity: 90 %, airChanges: 1 } }"
            )
            .Numbers;
        var topUp = CareDates.Of(TankPlan.Of(numbers)).Find("litter-top-up")!;
        Assert.Equal(new CareRepeat(14, CareUnit.Week), topUp.Repeat);
        Assert.Equal(new DateOnly(2026, 8, 14).AddDays(98), topUp.Day);
    }

    [Fact]
    public void Quarantine_has_three_checks_and_a_swab()
    {
        // Begins 10 Aug; checks 10 and 24 Aug and 7 Sep; swab 14 days before 9 Oct (practice of zoos,
        // recalled).
        DateOnly Day(string key) => Foam.Find($"quarantine-{key}-dendrobates-auratus-1")!.Day;
        Assert.Equal(new DateOnly(2026, 8, 10), Day("droppings-1"));
        Assert.Equal(new DateOnly(2026, 8, 24), Day("droppings-2"));
        Assert.Equal(new DateOnly(2026, 9, 7), Day("droppings-3"));
        Assert.Equal(new DateOnly(2026, 9, 25), Day("swab"));
    }

    [Fact]
    public void Lamp_and_flies_have_their_days()
    {
        // 30,000 h to seven tenths, 12 h a day: four fifths at ln 0.8 / ln 0.7
        // = 0.62562 of them (the law of the light forecast), 18,768.6 ÷ 12 = 1564.05 days.
        var plan = CareDates.Of(TankPlan.Of(Built.Inches));
        Assert.Equal(plan.Planting.AddDays(1564), plan.Find("lamp-aged")!.Day);
        // 107.7 ÷ (24 − 12.34) = 9.24 d, and 3 to lay and harden: set up 13 days ahead, rounded up.
        var animals = TankPlan.Of(Built.Inches).Animals!.Earliest;
        var flies = plan.Find("fly-cultures")!;
        Assert.Equal(animals.AddDays(-13), flies.Day);
        Assert.Equal(new CareRepeat(1, CareUnit.Week), flies.Repeat);
        double cups = Math.Ceiling(Built.Inches.Life!.Masses.FliesPerWeek.Value / 595.0);
        Assert.Contains(
            FormattableString.Invariant($"Set up {cups} cup"),
            flies.Text,
            StringComparison.Ordinal
        );
        Assert.Equal(animals.AddDays(14), plan.Find("vitamins")!.Day);
    }

    [Fact]
    public void Animals_wait_for_foam_that_cures_longer_than_the_grow_in()
    {
        // Foam: 7 days to planting, 14 to animals, so 7 days after planting; the 28 days of grow-in are
        // longer.
        Assert.Equal(new DateOnly(2026, 9, 11), TankPlan.Of(Built.Foam).Animals!.Earliest);
    }
}
