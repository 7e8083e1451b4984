using Litterfall.Dispatch.Verdicts;
using Litterfall.Domain.Dispatch;

namespace Litterfall.UnitTests.Dispatch.Verdicts;

/// <summary>Every hold has a reason of its own and names its cure.</summary>
public sealed class HoldReasonTests
{
    private const string Frog = "dendrobates-auratus";
    private static readonly WeekTask Good = Parcels.Week(Frog, 17, 21);

    private static ShipReason Only(WeekTask task, string slug)
    {
        var day = Parcels.OnMonday(task.With(r => r with { Journeys = 40 }));
        var reason = day.Reasons.First(r => r.Slug == slug);
        Assert.True(reason.Verdict >= ShipVerdict.Hold && day.Verdict >= reason.Verdict, slug);
        Assert.NotEmpty(reason.Cure);
        Assert.False(day.MayShip);
        return reason;
    }

    private static WeekTask WithCarrier(Func<CarrierTerms, CarrierTerms> change) =>
        Good.With(r => r with { Carriers = [change(Parcels.Carrier)] });

    [Fact]
    public void A_carrier_is_asked_and_read_again()
    {
        Only(WithCarrier(c => c with { TakesAnimals = null }), "carrier-not-asked");
        Assert.Equal(
            ShipVerdict.Never,
            Only(WithCarrier(c => c with { TakesAnimals = false }), "carrier-refuses").Verdict
        );
        Only(WithCarrier(c => c with { RulesReadOn = null }), "carrier-rules-unread");
        Only(WithCarrier(c => c with { RulesReadOn = Parcels.Monday.AddDays(1) }), "carrier-rules-unread");
        // 180 days are allowed: on the 181st the rules are old.
        var old = Only(
            WithCarrier(c => c with { RulesReadOn = Parcels.Monday.AddDays(-181) }),
            "carrier-rules-old"
        );
        Assert.Equal((181.0, 180.0), (old.Measured, old.Limit));
        var fresh = Parcels.OnMonday(WithCarrier(c => c with { RulesReadOn = Parcels.Monday.AddDays(-180) }));
        Assert.DoesNotContain(fresh.Reasons, r => r.Slug == "carrier-rules-old");
    }

    [Fact]
    public void Quarantine_and_unexplained_deaths_hold_until_their_day()
    {
        var ends = Parcels.Monday.AddDays(3);
        var quarantine = Only(Good with { Facts = [new(Frog, "") { QuarantineEnds = ends }] }, "quarantine");
        Assert.Equal(ends, quarantine.CureDay);
        // Thirty days from the death on.
        var death = Only(
            Good with
            {
                Facts = [new(Frog, "") { UnexplainedDeath = Parcels.Monday.AddDays(-29) }],
            },
            "unexplained-death"
        );
        Assert.Equal(Parcels.Monday.AddDays(1), death.CureDay);
        var over = Parcels.OnMonday(
            Good with
            {
                Facts = [new(Frog, "") { UnexplainedDeath = Parcels.Monday.AddDays(-30) }],
            }
        );
        Assert.True(over.MayShip);
        var other = Good with { Facts = [new(Frog, "B2") { QuarantineEnds = ends }] };
        Assert.True(Parcels.OnMonday(other).MayShip);
    }

    [Fact]
    public void Missing_papers_hold() =>
        Assert.Contains(
            "proof of captive breeding",
            Only(Good with { Parcel = Good.Parcel with { Papers = [] } }, "papers-missing").Text,
            StringComparison.Ordinal
        );

    /// <summary>
    /// Own worked example: Monday is too hot at the hub (34 °C, class B never above 33), Tuesday on is mild;
    /// the papers lie there still. The cure of Monday's heat is Tuesday, once they are ticked off, not the
    /// next forecast.
    /// </summary>
    [Fact]
    public void A_hold_of_the_weather_is_cured_by_the_day_that_only_papers_hold()
    {
        (double, double) mild = (17, 21);
        var task = Good with
        {
            Days = 5,
            Parcel = Good.Parcel with { Papers = [] },
            Forecasts =
            [
                Good.Forecasts[0],
                Parcels.Place(RouteNode.Hub, (20, 34), mild, mild, mild, mild, mild, mild, mild),
                Good.Forecasts[2],
            ],
        };
        var hot = task.With(r => r with { Journeys = 40 });
        var week = Parcels.Judged(hot);
        Assert.Null(week.NextDay);
        Assert.Equal(Parcels.Monday.AddDays(1), week.NextDayOnceDone);
        var stop = week.Days[0].Reasons.First(r => r.Slug == "class-stop");
        Assert.Equal(Parcels.Monday.AddDays(1), stop.CureDay);
        Assert.EndsWith("once its papers are ticked off.", stop.Cure, StringComparison.Ordinal);
        var friday = week.Days[4].Reasons.First(r => r.Rule == ShipRule.Calendar);
        Assert.NotEmpty(friday.Cure);
        var done = Parcels.Judged(hot with { Parcel = Good.Parcel });
        Assert.Equal((Parcels.Monday.AddDays(1), null), (done.NextDay!.Value, done.NextDayOnceDone));
    }

    [Fact]
    public void A_free_day_of_the_calendar_that_only_papers_hold_is_a_cure()
    {
        var week = Parcels.Judged(
            Good.With(r => r with { Journeys = 40 }) with
            {
                From = Parcels.Monday.AddDays(3),
                Parcel = Good.Parcel with { Papers = [] },
                Now = Parcels.Now.AddDays(3),
                Forecasts = [.. Good.Forecasts.Select(f => f with { TakenAt = Parcels.Now.AddDays(3) })],
            }
        );
        var friday = week.Days[1].Reasons.First(r => r.Rule == ShipRule.Calendar);
        Assert.Equal(Parcels.Monday.AddDays(7), friday.CureDay);
        Assert.Contains("once its papers are ticked off", friday.Cure, StringComparison.Ordinal);
    }

    [Fact]
    public void Forecasts_that_tell_too_little_hold()
    {
        PlaceForecast[] all = [.. Good.Forecasts];
        WeekTask With(PlaceForecast hub) => Good with { Forecasts = [all[0], hub, all[2]] };

        Only(Good with { Forecasts = [all[0], all[2]] }, "no-forecast");
        Only(With(all[1] with { Hours = [] }), "no-forecast");
        Only(With(Parcels.Place(RouteNode.Hub, 17, 21, days: 1)), "forecast-too-short");
        var night = all[1]
            .Hours.Where(h =>
                h.At < Parcels.Clock.Utc(Parcels.Monday, 22.5) || h.At > Parcels.Clock.Utc(Parcels.Monday, 26)
            );
        Only(With(all[1] with { Hours = [.. night] }), "forecast-gap");
        Only(
            With(all[1] with { Hours = [.. all[1].Hours.Select(h => h with { Celsius = 294 })] }),
            "forecast-out-of-range"
        );
        Only(With(all[1] with { TakenAt = Parcels.Now.AddHours(-37) }), "forecast-too-old");
        Only(With(all[1] with { TakenAt = Parcels.Now.AddHours(2) }), "forecast-from-the-future");
        Only(With(all[1] with { Zone = "Nowhere/City" }), "forecast-zone");
    }

    [Fact]
    public void The_late_day_must_be_in_the_forecast_too()
    {
        // Monday, arrival on Tuesday, one day late on Wednesday: two days are one too few.
        WeekTask With(int days) =>
            Good with
            {
                Forecasts = [.. Enum.GetValues<RouteNode>().Select(n => Parcels.Place(n, 17, 21, days))],
            };
        Only(With(2), "forecast-too-short");
        Assert.True(Parcels.OnMonday(With(3)).MayShip);
    }

    [Fact]
    public void A_carton_too_small_holds_and_names_one_that_would_do()
    {
        var tiny = Good.Rules.Cartons[0] with { LengthMeters = 0.1, WidthMeters = 0.1, HeightMeters = 0.05 };
        Only(Good.With(r => r with { Cartons = [tiny] }), "no-carton");
        Only(
            Good with
            {
                Stock = [.. Good.Rules.Cartons.Select(c => new StockCount(c.Key, 0))],
            },
            "no-carton"
        );
    }

    /// <summary>Five working days on the way: no pack in stock holds so long at 6 °C.</summary>
    [Fact]
    public void A_route_longer_than_the_packs_last_holds_and_says_so()
    {
        var task = Parcels
            .Week(Frog, 6, 9)
            .With(r =>
                r with
                {
                    Packs = [.. r.Packs.Where(p => p.Key is "heat-40" or "phase-change-250")],
                    Carriers = [Parcels.Carrier with { TransitDays = 3 }],
                }
            );
        var reason = Only(task with { Stock = [new("phase-change-250", 2)] }, "journey-odds");
        Assert.Contains("the route can take", reason.Text, StringComparison.Ordinal);
        var day = Parcels.OnMonday(task with { Stock = [new("phase-change-250", 2)] });
        Assert.Contains(day.Reasons, r => r.Text.Contains("warms for 40 hours", StringComparison.Ordinal));
    }

    [Fact]
    public void Unknown_places_hold()
    {
        Only(Good with { Parcel = Good.Parcel with { Carrier = "nobody" } }, "no-carrier");
        Only(Good with { Parcel = Good.Parcel with { Region = "nowhere" } }, "no-region");
        Only(Good.With(r => r with { Regions = [r.Regions[0] with { Country = "XX" }] }), "region-country");
        Only(Good.With(r => r with { Regions = [r.Regions[0] with { Zone = "X/Y" }] }), "region-zone");
        Only(Good with { Parcel = Good.Parcel with { Contents = [] } }, "empty");
        Only(Good with { Now = Parcels.Now.AddHours(12) }, "too-late");
    }
}
