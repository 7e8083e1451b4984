using Litterfall.Dispatch.Defaults;
using Litterfall.Dispatch.Verdicts;
using Litterfall.Domain.Dispatch;

namespace Litterfall.UnitTests.Dispatch.Verdicts;

/// <summary>Verdicts of days: own worked examples, the published guide and own limits side by side.</summary>
public sealed class WeekJudgeTests
{
    private const string Frog = "dendrobates-auratus";

    /// <summary>
    /// Own worked example: Tuesday, 27 °C at the workshop, 34 °C at the hub, 26 °C at the destination. The
    /// guide says cold pack and depot pick-up only (from 33 °C on); the class of most poison frogs never goes
    /// above 33 °C, so Tuesday is a stop. Wednesday is mild and needs neither.
    /// </summary>
    [Fact]
    public void A_hot_hub_on_Tuesday_is_a_stop_and_Wednesday_is_offered()
    {
        (double, double) mild = (17, 23);
        var tuesdayMorning = Parcels.Now.AddDays(1);
        var task = Parcels.Week(
            [new(Frog, 4)],
            [
                Parcels.Place(RouteNode.Origin, (18, 25), (18, 27), mild, mild, mild, mild),
                Parcels.Place(RouteNode.Hub, (18, 27), (20, 34), mild, mild, mild, mild),
                Parcels.Place(RouteNode.Destination, (18, 25), (18, 25), (18, 26), mild, mild, mild),
            ]
        );
        var week = Parcels.Judged(
            task with
            {
                From = Parcels.Monday.AddDays(1),
                Days = 5,
                Now = tuesdayMorning,
                Forecasts = [.. task.Forecasts.Select(f => f with { TakenAt = tuesdayMorning })],
            }
        );
        var tuesday = week.Days[0];
        var guide = Assert.Single(tuesday.Rules, r => r.Rule == ShipRule.PublishedGuide);
        Assert.Equal(("cold pack, depot pick-up only", ShipVerdict.DepotOnly), (guide.Words, guide.Verdict));
        Assert.Equal(ShipVerdict.Never, tuesday.Rules.Single(r => r.Rule == ShipRule.ClassBands).Verdict);
        Assert.Equal(ShipVerdict.Never, tuesday.Verdict);
        Assert.Equal(Parcels.Monday.AddDays(2), week.NextPlainDay);
        Assert.Equal(ShipVerdict.Ship, week.Days[1].Verdict);
        Assert.All(tuesday.Reasons.Where(r => r.Verdict >= ShipVerdict.Hold), r => Assert.NotEmpty(r.Cure));
        Assert.Contains(tuesday.Reasons, r => r.CureDay == Parcels.Monday.AddDays(2));
    }

    /// <summary>The guide's depot band, with an animal whose class bears it (never above 35 °C).</summary>
    [Fact]
    public void From_33_degrees_on_only_the_depot_is_left()
    {
        var task = Parcels.Week("ranoidea-caerulea", 22, 33);
        var day = Parcels.OnMonday(task);
        Assert.Contains(day.Reasons, r => r is { Slug: "guide-depot", Verdict: ShipVerdict.DepotOnly });
        Assert.True(day.Verdict >= ShipVerdict.DepotOnly);
        var none = task.With(r => r with { Carriers = [Parcels.Carrier with { HasDepot = false }] });
        Assert.Contains(Parcels.OnMonday(none).Reasons, r => r is { Slug: "guide-no-depot" });
    }

    [Fact]
    public void A_hold_is_passed_only_by_packs_whose_journey_keeps_the_band()
    {
        var task = Parcels.Week(Frog, 9, 12);
        var day = Parcels.OnMonday(task);
        Assert.Equal(ShipVerdict.ShipWithPacks, day.Verdict);
        var hold = day.Reasons.First(r => r.Slug == "class-hold");
        Assert.Equal(ShipVerdict.ShipWithPacks, hold.Verdict);
        Assert.Contains("Passed by packing", hold.Text, StringComparison.Ordinal);
        Assert.True(day.Choice!.OutShare <= 0.02 && day.Choice.Packs.Count > 0);
        var bare = Parcels.OnMonday(task.With(r => r with { Packs = [] }) with { Stock = [] });
        Assert.Equal(ShipVerdict.Hold, bare.Verdict);
        Assert.Contains(
            "Have ready",
            bare.Reasons.First(r => r.Slug == "no-pack").Cure,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void An_absolute_limit_is_never_passed_by_packs()
    {
        var day = Parcels.OnMonday(Parcels.Week(Frog, 2.9, 12));
        Assert.Equal(ShipVerdict.Never, day.Verdict);
        Assert.Null(day.Choice);
    }

    [Fact]
    public void A_heat_pack_has_no_place_on_a_mild_day()
    {
        var day = Parcels.OnMonday(Parcels.Week(Frog, 16, 22));
        Assert.DoesNotContain(day.Choice!.Packs, p => p.Pack.StartsWith("heat", StringComparison.Ordinal));
        var only = Parcels
            .Week(Frog, 16, 20)
            .With(r => r with { Packs = [.. DispatchDefaults.Packs.Where(p => p.Kind == PackKind.Heat)] });
        Assert.Empty(Parcels.OnMonday(only).Choice?.Packs ?? []);
    }

    /// <summary>Dealers' practice: never in cartons under 30 × 23 × 15 cm, however they stand.</summary>
    [Theory]
    [InlineData(0.30, 0.23, 0.15, true)]
    [InlineData(0.15, 0.30, 0.23, true)]
    [InlineData(0.29, 0.23, 0.15, false)]
    [InlineData(0.40, 0.22, 0.30, true)]
    [InlineData(0.40, 0.40, 0.14, false)]
    public void A_heat_pack_needs_a_large_carton(double a, double b, double c, bool isRight)
    {
        var carton = DispatchDefaults.Cartons[0] with { LengthMeters = a, WidthMeters = b, HeightMeters = c };
        var pack = DispatchDefaults.Packs.First(p => p.Kind == PackKind.Heat);
        Assert.Equal(isRight, PackLimits.HeatRefusal(carton, pack, 5, 24).Length == 0);
        Assert.Contains(
            "warms for 40 hours",
            Long(carton with { LengthMeters = 0.5, WidthMeters = 0.5 }, pack)
        );
        Assert.NotEmpty(PackLimits.HeatRefusal(carton, pack, 15.6, 24));

        static string Long(Carton large, TransportPack pack) =>
            PackLimits.HeatRefusal(large with { HeightMeters = 0.5 }, pack, 5, 41);
    }

    [Fact]
    public void Never_two_heat_packs_and_no_ice_beside_animals()
    {
        foreach (var (low, high) in new[] { (5.0, 8.0), (9.0, 12.0), (20.0, 30.0) })
        {
            var packs = Parcels.OnMonday(Parcels.Week(Frog, low, high)).Choice?.Packs ?? [];
            Assert.True(
                packs.Where(p => p.Pack.StartsWith("heat", StringComparison.Ordinal)).Sum(p => p.Count) <= 1
            );
            Assert.DoesNotContain(packs, p => p.Pack.StartsWith("ice", StringComparison.Ordinal));
        }
    }

    /// <summary>No day from Friday to Sunday may ship, whatever weather, carrier and rules.</summary>
    [Fact]
    public void Nothing_leaves_from_Friday_to_Sunday()
    {
        var task = Parcels.Week("ficus-pumila", 20, 22) with
        {
            Days = 14,
            Calendar = new()
            {
                WorkDays = [.. Enum.GetValues<DayOfWeek>()],
                ShipDays = [.. Enum.GetValues<DayOfWeek>()],
            },
        };
        var any = task.With(r =>
            r with
            {
                Carriers =
                [
                    Parcels.Carrier with
                    {
                        ArrivalDays = [.. Enum.GetValues<DayOfWeek>()],
                        DayLateChance = 0,
                    },
                ],
            }
        );
        foreach (var day in Parcels.Judged(any).Days)
        {
            var isEnd = day.Day.DayOfWeek is DayOfWeek.Friday or DayOfWeek.Saturday or DayOfWeek.Sunday;
            Assert.True(!isEnd || day.Verdict == ShipVerdict.Never, day.ToString());
        }
    }

    [Fact]
    public void The_same_task_gives_the_same_verdict()
    {
        var task = Parcels.Week(Frog, 9, 13) with { Days = 2 };
        var (one, two) = (Parcels.Judged(task), Parcels.Judged(task));
        Assert.Equal(one, two);
        Assert.Equal(one, WeekJudge.Judge([task, task], TestContext.Current.CancellationToken)[1]);
    }

    [Fact]
    public void A_cancelled_search_stops() =>
        Assert.ThrowsAny<OperationCanceledException>(() =>
            WeekJudge.Judge(Parcels.Week(Frog, 9, 13), new CancellationToken(canceled: true))
        );

    [Fact]
    public void The_strictest_of_a_mixed_parcel_is_named()
    {
        var week = Parcels.Judged(
            Parcels.Week([new(Frog, 1), new("folsomia-candida", 1)], [.. Parcels.Everywhere(18, 22)]) with
            {
                Days = 1,
            }
        );
        Assert.Equal(("folsomia-candida", "D"), (week.Strictest, week.Class));
        Assert.Equal((17.0, 24.0), (week.BandLowCelsius, week.BandHighCelsius));
    }
}
