using Litterfall.Dispatch.Regions;
using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Schedule;

namespace Litterfall.UnitTests.Dispatch.Regions;

/// <summary>Days on which live goods leave, and holidays of regions.</summary>
public sealed class ShipDaysTests
{
    private static readonly DateOnly Monday = new(2026, 7, 13);

    private static DeliveryRegion Region(string country = "", params RestDay[] days) =>
        new()
        {
            Key = "r",
            Name = "there",
            Country = country,
            Days = [.. days],
        };

    private static RestDays Rests(DeliveryRegion region) => new(region, [], (2026, 2027));

    private static ShipDays Days(
        CarrierTerms? carrier = null,
        ShopCalendar? calendar = null,
        DeliveryRegion? away = null
    ) =>
        new(
            carrier ?? new CarrierTerms { Key = "c", Name = "c" },
            calendar ?? new ShopCalendar(),
            Rests(Region()),
            Rests(away ?? Region())
        );

    private static string[] Slugs(ShipDays days, DateOnly day) => [.. days.Reasons(day).Select(r => r.Slug)];

    /// <summary>
    /// Common practice: live goods leave Monday to Wednesday, and Thursday only where Friday is certain.
    /// </summary>
    [Theory]
    [InlineData(0, "")]
    [InlineData(1, "")]
    [InlineData(2, "")]
    [InlineData(3, "not-a-ship-day,thursday-uncertain")]
    [InlineData(4, "never-on-this-weekday")]
    [InlineData(5, "never-on-this-weekday")]
    [InlineData(6, "never-on-this-weekday")]
    public void Live_goods_leave_early_in_the_week(int offset, string slugs) =>
        Assert.Equal(slugs, string.Join(',', Slugs(Days(), Monday.AddDays(offset))));

    [Fact]
    public void Thursday_goes_where_Friday_is_certain_and_Friday_never()
    {
        var carrier = new CarrierTerms
        {
            Key = "c",
            Name = "c",
            DayLateChance = 0,
        };
        var calendar = new ShopCalendar { ShipDays = [.. Enum.GetValues<DayOfWeek>()] };
        var days = Days(carrier, calendar);
        Assert.Empty(days.Reasons(Monday.AddDays(3)));
        Assert.All(days.Reasons(Monday.AddDays(4)), r => Assert.Equal(ShipVerdict.Never, r.Verdict));
        Assert.NotEmpty(days.Reasons(Monday.AddDays(4)));
    }

    [Fact]
    public void Thursday_before_a_Friday_holiday_never_goes()
    {
        var carrier = new CarrierTerms
        {
            Key = "c",
            Name = "c",
            DayLateChance = 0,
        };
        var calendar = new ShopCalendar { ShipDays = [DayOfWeek.Thursday] };
        var days = Days(carrier, calendar, Region("", new RestDay(Monday.AddDays(4), "the fair")));
        var reason = Assert.Single(days.Reasons(Monday.AddDays(3)));
        Assert.Equal(("before-a-holiday", ShipVerdict.Never), (reason.Slug, reason.Verdict));
        Assert.True(reason.IsProtective);
        Assert.Equal(Monday.AddDays(10), reason.CureDay);
    }

    /// <summary>Own worked example: a holiday on Thu 26 Nov 2026 that begins on Wednesday at noon.</summary>
    [Fact]
    public void A_Thursday_holiday_bars_the_Wednesday_and_a_late_Tuesday()
    {
        var holiday = new DateOnly(2026, 11, 26);
        var calendar = new ShopCalendar { Holidays = [new(holiday, "the feast") { CarrierEndsEveAt = 12 }] };
        var rests = ShipDays.RestsFrom(calendar).ToArray();
        var home = new RestDays(Region(), rests, (2026, 2027));
        var days = new ShipDays(new() { Key = "c", Name = "c" }, calendar, home, home);
        Assert.Empty(days.Reasons(holiday.AddDays(-3)));
        var late = Assert.Single(days.Reasons(holiday.AddDays(-2)));
        Assert.Equal(("late-over-rest", ShipVerdict.Hold), (late.Slug, late.Verdict));
        Assert.Equal(["before-a-holiday", "eve-of-a-holiday"], Slugs(days, holiday.AddDays(-1)));
        Assert.Equal(["holiday"], Slugs(days, holiday));
    }

    [Fact]
    public void Two_days_of_travel_reach_Friday_only_from_Wednesday()
    {
        var days = Days(
            new()
            {
                Key = "c",
                Name = "c",
                TransitDays = 2,
                DayLateChance = 0,
            },
            new ShopCalendar { ShipDays = [.. Enum.GetValues<DayOfWeek>()] }
        );
        Assert.Equal(Monday.AddDays(4), days.Days(Monday.AddDays(2))!.Arrives);
        Assert.Empty(days.Reasons(Monday.AddDays(2)));
        Assert.Equal(["over-the-weekend"], Slugs(days, Monday.AddDays(3)));
    }

    /// <summary>
    /// United States: the fourth Thursday of November (5 U.S.C. 6103). Germany: 3 October; Corpus Christi,
    /// sixty days after Easter (5 April 2026), in Baden-Württemberg but not in Berlin.
    /// </summary>
    [Theory]
    [InlineData("US", "", "2026-11-26", true)]
    [InlineData("US", "", "2026-11-25", false)]
    [InlineData("DE", "", "2026-10-03", true)]
    [InlineData("DE", "BW", "2026-06-04", true)]
    [InlineData("DE", "BE", "2026-06-04", false)]
    [InlineData("GB", "", "2026-12-25", true)]
    [InlineData("", "", "2026-12-25", false)]
    public void Holidays_of_countries_are_those_of_their_law(
        string country,
        string part,
        string day,
        bool isRest
    )
    {
        Assert.Equal("", HolidayLibrary.Refusal(country, part));
        var rests = Rests(Region(country) with { Part = part });
        Assert.Equal(isRest, rests.On(DateOnly.Parse(day, null)) is not null);
    }

    [Fact]
    public void An_unknown_country_or_part_is_refused_by_name()
    {
        Assert.Contains("“XX”", HolidayLibrary.Refusal("XX", ""), StringComparison.Ordinal);
        Assert.Contains("“ZZ”", HolidayLibrary.Refusal("DE", "ZZ"), StringComparison.Ordinal);
        Assert.Contains("“7”", HolidayLibrary.Refusal("DE", "7"), StringComparison.Ordinal);
        Assert.All(HolidayLibrary.Known, c => Assert.NotEmpty(HolidayLibrary.Year(c, "", 2026)));
    }

    [Fact]
    public void Days_worked_all_the_same_are_no_rest()
    {
        var day = new DateOnly(2026, 10, 3);
        Assert.Null(Rests(Region("DE") with { Worked = [day] }).On(day));
        Assert.Equal("ours", Rests(Region("DE", new RestDay(day, "ours"))).On(day)!.Name);
    }
}
