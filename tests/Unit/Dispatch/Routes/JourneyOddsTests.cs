using System.Collections.Immutable;
using Litterfall.Dispatch.Bands;
using Litterfall.Dispatch.Defaults;
using Litterfall.Dispatch.Forecasts;
using Litterfall.Dispatch.Regions;
using Litterfall.Dispatch.Routes;
using Litterfall.Domain.Dispatch;
using Litterfall.UnitTests.Dispatch.Verdicts;

namespace Litterfall.UnitTests.Dispatch.Routes;

/// <summary>Odds of journeys against a second sampler, and their order.</summary>
public sealed class JourneyOddsTests
{
    private const double LateChance = 0.2;
    private static readonly DispatchRules Rules = new() { Seed = 7 };

    private static readonly Carton Box = DispatchDefaults.Cartons[1];

    /// <summary>A inside and outside of 36 × 28 × 24 cm with 30 mm of foam, by hand.</summary>
    private static double Conductance
    {
        get
        {
            static double Area(double a, double b, double c) => 2 * ((a * b) + (b * c) + (c * a));
            var area = Math.Sqrt(Area(0.36, 0.28, 0.24) * Area(0.42, 0.34, 0.30));
            return area / ((0.030 / 0.036) + 0.15);
        }
    }

    private static RouteTimes Times() =>
        RouteTimes.Create(
            new(Parcels.Monday, Parcels.Monday.AddDays(1), Parcels.Monday.AddDays(2)),
            DispatchDefaults.Carrier,
            (Parcels.Clock, Parcels.Clock),
            (17, Rules.DoorstepHours, false)
        );

    private static ImmutableArray<Journey> Draw(
        int count,
        (double Origin, double Hub, double Away) air,
        int seed = 7
    ) =>
        JourneySet.Draw(
            Times(),
            Rules with
            {
                Seed = seed,
            },
            LateChance,
            new Dictionary<RouteNode, PlaceForecast>
            {
                [RouteNode.Origin] = Flat(RouteNode.Origin, air.Origin),
                [RouteNode.Hub] = Flat(RouteNode.Hub, air.Hub),
                [RouteNode.Destination] = Flat(RouteNode.Destination, air.Away),
            },
            count
        );

    private static PlaceForecast Flat(RouteNode node, double celsius) =>
        Parcels.Place(node, celsius, celsius);

    private static double Allowed(double share, int mine, int theirs) =>
        4 * Math.Sqrt(Math.Max(share * (1 - share), 1e-3) * ((1.0 / mine) + (1.0 / theirs)));

    /// <summary>Bands are chosen so that a good part of the journeys leaves them.</summary>
    [Theory]
    [InlineData(new double[] { 16, 13, 18 }, 1.5, 0, 0, new double[] { 11, 24 })]
    [InlineData(new double[] { 26, 22, 27 }, 1.0, 0, 0, new double[] { 10, 30 })]
    [InlineData(new double[] { 12, 9, 13 }, 1.2, 1.5, 1, new double[] { 17, 26 })]
    [InlineData(new double[] { 28, 25, 29 }, 1.2, 1.0, 0, new double[] { 17, 26 })]
    public void Odds_agree_with_brute_force(
        double[] air,
        double water,
        double wax,
        double liquid,
        double[] keep
    )
    {
        var (origin, hub, away) = (air[0], air[1], air[2]);
        var (low, high) = (keep[0], keep[1]);
        var (mine, theirs) = (2000, LongRun.Cases(20_000, 400_000));
        var pack = DispatchDefaults.Packs[1] with { Kilograms = wax };
        var parcel = new PackedParcel(Box, water, wax > 0 ? [(pack, 1, liquid)] : []);
        Assert.Equal(Conductance, parcel.Conductance, 9);
        var limits = TransportBands.Find("B")! with { KeepLow = low, KeepHigh = high };
        var odds = JourneyOdds.Count(parcel, Draw(mine, (origin, hub, away)), limits).Out;
        var brute = new BruteForceJourneys(11, Rules, LateChance)
        {
            Air = (origin, hub, away),
            Box = (Conductance, (4186 * water) + (2000 * wax)),
            Wax = (190_000 * wax, 21, liquid),
        }.Out(theirs, low, high);
        Assert.InRange(brute, 0.02, 0.98);
        Assert.InRange(odds, brute - Allowed(brute, mine, theirs), brute + Allowed(brute, mine, theirs));
    }

    [Fact]
    public void The_same_seed_gives_the_same_journeys()
    {
        var (one, two) = (Draw(50, (16, 13, 18)), Draw(50, (16, 13, 18)));
        Assert.All(one.Zip(two), p => Assert.Equal(p.First.Celsius, p.Second.Celsius));
        Assert.NotEqual(one[0].Celsius, Draw(50, (16, 13, 18), seed: 8)[0].Celsius);
    }

    /// <summary>Strata: of 50 journeys with a chance of 0.2 exactly ten are late.</summary>
    [Fact]
    public void Delay_is_dealt_by_strata()
    {
        var late = Draw(50, (16, 13, 18)).Count(j => j.EndSeconds > 24 * 3600);
        Assert.Equal(10, late);
    }

    [Fact]
    public void Hours_rise_from_hand_over_and_the_share_outside_never_falls()
    {
        var limits = TransportBands.Find("B")!;
        var hours = JourneyOdds.Hourly(new(Box, 1, []), Draw(300, (16, 13, 18)), limits);
        Assert.Equal(0, hours[0].Hour);
        Assert.All(hours, h => Assert.True(h.Low <= h.Middle && h.Middle <= h.High));
        Assert.All(hours.Zip(hours.Skip(1)), p => Assert.True(p.First.OutShare <= p.Second.OutShare));
        var all = JourneyOdds.Count(new(Box, 1, []), Draw(300, (16, 13, 18)), limits);
        Assert.True(hours[^1].OutShare <= all.Out + 1e-12);
    }

    /// <summary>Less heat passes a thicker wall, so the band is missed by less.</summary>
    [Fact]
    public void A_thicker_wall_helps_against_cold()
    {
        var journeys = Draw(300, (8, 5, 9));
        var limits = TransportBands.Find("B")!;
        var thin = JourneyOdds.Count(new(Box with { WallMeters = 0.02 }, 1, []), journeys, limits);
        var thick = JourneyOdds.Count(new(Box with { WallMeters = 0.08 }, 1, []), journeys, limits);
        Assert.True(thick.MeanMissKelvin < thin.MeanMissKelvin);
    }
}
