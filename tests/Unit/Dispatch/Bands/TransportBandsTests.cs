using Litterfall.Dispatch.Bands;
using Litterfall.Domain.Dispatch;
using Litterfall.UnitTests.Dispatch.Verdicts;

namespace Litterfall.UnitTests.Dispatch.Bands;

/// <summary>Classes of temperature, the guide for amphibians, and species that are stricter.</summary>
public sealed class TransportBandsTests
{
    /// <summary>
    /// Own table of classes, from critical maxima less 5 K and keeper practice: what is kept inside, from
    /// which forecast it is held, from which it never goes.
    /// </summary>
    public static TheoryData<string, double[], double[], double?[]> Table =>
        new()
        {
            { "A", [16, 24], [13, 25], [5, 29] },
            { "B", [17, 26], [13, 27], [3, 33] },
            { "C", [18, 29], [12, 30], [3, 35] },
            { "D", [10, 24], [7, 26], [null, 30] },
            { "E", [16, 28], [12, 30], [null, 32] },
            { "F", [15, 26], [10, 28], [null, 30] },
            { "G", [10, 28], [5, 32], [2, 38] },
        };

    [Theory]
    [MemberData(nameof(Table))]
    public void A_class_has_the_limits_of_the_table(
        string letter,
        double[] keep,
        double[] hold,
        double?[] stop
    )
    {
        var band = TransportBands.Find(letter)!;
        Assert.Equal((keep[0], keep[1]), (band.KeepLow, band.KeepHigh));
        Assert.Equal((hold[0], hold[1]), (band.HoldBelow, band.HoldAbove));
        Assert.Equal((stop[0], stop[1]!.Value), (band.StopBelow, band.StopAbove));
    }

    /// <summary>A species of each class held at the limit, and just beyond it.</summary>
    [Theory]
    [InlineData("phyllobates-terribilis", 13, 25, 5.0, 29)]
    [InlineData("dendrobates-tinctorius", 13, 27, 3.0, 33)]
    [InlineData("lepidodactylus-lugubris", 12, 30, 3.0, 35)]
    [InlineData("folsomia-candida", 7, 26, null, 30)]
    [InlineData("archispirostreptus-gigas", 12, 30, null, 32)]
    [InlineData("drosophila-melanogaster", 10, 28, null, 30)]
    [InlineData("ficus-pumila", 5, 32, 2.0, 38)]
    public void A_forecast_is_judged_at_the_very_limit(
        string species,
        double holdLow,
        double holdHigh,
        double? stopLow,
        double stopHigh
    )
    {
        Assert.Empty(Slugs(species, holdLow, holdHigh));
        Assert.Equal(["class-hold"], Slugs(species, holdLow - 0.1, holdHigh));
        Assert.Equal(["class-hold"], Slugs(species, holdLow, holdHigh + 0.1));
        Assert.Equal(["class-hold"], Slugs(species, holdLow, stopHigh));
        Assert.Equal(["class-stop"], Slugs(species, holdLow, stopHigh + 0.1));
        if (stopLow is { } stop)
        {
            Assert.Equal(["class-hold"], Slugs(species, stop, holdHigh));
            Assert.Equal(["class-stop"], Slugs(species, stop - 0.1, holdHigh));
        }
    }

    /// <summary>
    /// Rivera-Ordóñez et al. 2019: critical maximum 29.1 °C; a strawberry poison frog at 31 °C is a stop.
    /// </summary>
    [Fact]
    public void A_strawberry_poison_frog_is_stopped_at_31_degrees()
    {
        var day = Parcels.OnMonday(Parcels.Week("oophaga-pumilio", 20, 31));
        Assert.Equal(ShipVerdict.Never, day.Verdict);
        var stop = Assert.Single(day.Reasons, r => r is { Slug: "class-stop", Node: RouteNode.Hub });
        Assert.Equal((31.0, 29.0), (stop.Measured, stop.Limit));
        Assert.True(stop.IsProtective);
    }

    /// <summary>A measured limit makes a class stricter, a loose one never makes it looser.</summary>
    [Theory]
    [InlineData("oophaga-pumilio", "A", 24, 29)]
    [InlineData("dendrobates-auratus", "B", 26, 33)]
    [InlineData("ameerega-trivittata", "B", 26, 33)]
    public void Measured_limits_only_tighten(string species, string letter, double keep, double stop)
    {
        var band = LiveGood.Find(Parcels.Catalog, new(species, 1)).Band!;
        Assert.Equal((letter, keep, stop), (band.Letter, band.KeepHigh, band.StopAbove));
    }

    /// <summary>Brattstrom 1968: green and black poison frogs lose their footing at 9.5 °C.</summary>
    [Fact]
    public void Inside_the_parcel_the_measured_cold_limit_counts() =>
        Assert.Equal(9.5, LiveGood.Find(Parcels.Catalog, new("dendrobates-auratus", 1)).Band!.BearsLow, 6);

    /// <summary>The printed guide with its gaps 15 to 15.6 and 26 to 26.7, and its overlap.</summary>
    [Theory]
    [InlineData(3.2, GuideNeed.DoNotShip)]
    [InlineData(3.3, GuideNeed.HeatPack)]
    [InlineData(15.0, GuideNeed.HeatPack)]
    [InlineData(15.3, GuideNeed.HeatPack)]
    [InlineData(15.6, GuideNeed.NoPack)]
    [InlineData(26.0, GuideNeed.NoPack)]
    [InlineData(26.4, GuideNeed.ColdPack)]
    [InlineData(26.7, GuideNeed.ColdPack)]
    [InlineData(32.9, GuideNeed.ColdPack)]
    [InlineData(33.0, GuideNeed.DepotOnly)]
    [InlineData(35.0, GuideNeed.DepotOnly)]
    [InlineData(35.1, GuideNeed.DoNotShip)]
    [InlineData(38.0, GuideNeed.DoNotShip)]
    public void The_guide_has_no_holes(double celsius, GuideNeed need) =>
        Assert.Equal(need, AmphibianGuide.Need(celsius));

    [Fact]
    public void The_guide_asks_for_amphibians_alone()
    {
        var gecko = Parcels.OnMonday(Parcels.Week("lepidodactylus-lugubris", 14, 24));
        Assert.DoesNotContain(gecko.Reasons, r => r.Rule == ShipRule.PublishedGuide);
        var frog = Parcels.OnMonday(Parcels.Week("ranoidea-caerulea", 14, 24));
        Assert.Contains(frog.Reasons, r => r.Slug == "guide-heat-pack");
    }

    /// <summary>A forecast below which only one thing is asked: the class rule of its hub.</summary>
    private static string[] Slugs(string species, double low, double high)
    {
        var middle = 0.5 * (low + high);
        var task = Parcels.Week(
            [new LiveContent(species, 1)],
            [
                Parcels.Place(RouteNode.Origin, middle, middle),
                Parcels.Place(RouteNode.Hub, low, high),
                Parcels.Place(RouteNode.Destination, middle, middle),
            ]
        );
        // A late answer of the calendar keeps the search short: only the class rule is read.
        var bare = task.With(r => r with { Cartons = [], Journeys = 40 });
        return
        [
            .. Parcels
                .OnMonday(bare)
                .Reasons.Where(r => r.Rule == ShipRule.ClassBands && r.Slug != "species-stricter")
                .Select(r => r.Slug)
                .Distinct(),
        ];
    }
}
