using Litterfall.Dispatch.Losses;
using Litterfall.Domain.Dispatch;
using Litterfall.UnitTests.Dispatch.Packing;

namespace Litterfall.UnitTests.Dispatch.Losses;

/// <summary>Grouping, seasons and priors; the interval itself is tested where it is made.</summary>
public sealed class LossStatisticsTests
{
    private static readonly DateOnly May = new(2026, 5, 4);

    private static List<ArrivalCount> Many(
        int parcels,
        int lost,
        string carrier = "overnight",
        int from = 1
    ) =>
        [
            .. Enumerable
                .Range(0, parcels)
                .Select(i => new ArrivalCount(
                    from + i,
                    carrier,
                    May,
                    "dendrobates-auratus",
                    2,
                    i < lost ? 1 : 0
                )),
        ];

    [Theory]
    [InlineData("2026-12-01", "December to February")]
    [InlineData("2027-02-28", "December to February")]
    [InlineData("2026-03-01", "March to May")]
    [InlineData("2026-06-30", "June to August")]
    [InlineData("2026-11-30", "September to November")]
    public void Seasons_are_told_by_their_months(string day, string season) =>
        Assert.Equal(
            season,
            LossStatistics.Season(DateOnly.Parse(day, System.Globalization.CultureInfo.InvariantCulture))
        );

    [Fact]
    public void A_parcel_with_two_species_counts_once_and_its_animals_each()
    {
        ArrivalCount[] counts =
        [
            new(1, "overnight", May, "dendrobates-auratus", 3, 1),
            new(1, "overnight", May, "begonia-rex", 2, 0),
            new(2, "overnight", May, "dendrobates-auratus", 4, 0),
        ];
        var all = LossStatistics.All(counts, 5)!;
        Assert.Equal((2, 1, 9, 1), (all.Parcels, all.ParcelsLost, all.Sent, all.Dead));
        var species = LossStatistics.Group(counts, LossBy.Species, PackingExamples.Catalog, 5);
        Assert.Equal("green and black poison frog (Dendrobates auratus)", species[0].Name);
        Assert.Equal(
            (2, 1, 7, 1),
            (species[0].Parcels, species[0].ParcelsLost, species[0].Sent, species[0].Dead)
        );
        Assert.Equal((1, 0), (species[1].Parcels, species[1].ParcelsLost));
        var classes = LossStatistics.Group(counts, LossBy.Class, PackingExamples.Catalog, 5);
        Assert.Equal(["B", "G"], classes.Select(c => c.Name));
        Assert.Single(LossStatistics.Group(counts, LossBy.Season, PackingExamples.Catalog, 5));
        Assert.True(all.IsFew);
        Assert.Contains("too few", all.Words, StringComparison.Ordinal);
    }

    /// <summary>
    /// No loss in n parcels: the upper end is 1 − 0.025^(1/n) in closed form (Clopper and Pearson 1934).
    /// </summary>
    [Fact]
    public void A_group_without_a_loss_still_has_an_upper_end()
    {
        var all = LossStatistics.All(Many(30, 0), 5)!;
        Assert.Equal(0, all.OfParcels.Low);
        Assert.Equal(1 - Math.Pow(0.025, 1.0 / 30), all.OfParcels.High, 9);
    }

    [Fact]
    public void The_price_goes_by_the_shops_figure_until_enough_parcels_arrived()
    {
        var (percent, why) = LossStatistics.LossPercentFor(Many(19, 8), 5);
        Assert.Equal(5, percent);
        Assert.Contains("19 of 20", why, StringComparison.Ordinal);
        Assert.Equal(5, LossStatistics.LossPercentFor([], 5).Percent);
    }

    /// <summary>
    /// 3 losses in 58 parcels after 1 in 20 believed before: (1 + 3) / (20 + 58) = 5.13 % (own example).
    /// </summary>
    [Fact]
    public void Then_it_goes_by_history()
    {
        Assert.Equal(5.13m, LossStatistics.LossPercentFor(Many(58, 3), 5).Percent);
        // 10 % believed: (2 + 3) / 78.
        Assert.Equal(6.41m, LossStatistics.LossPercentFor(Many(58, 3), 10).Percent);
    }

    /// <summary>
    /// The belief of one carrier is what the others say: 10 of 80 with 1 in 20 before is 11/100; its own 2 of
    /// 20 with 20 parcels of that belief is (2.2 + 2) / 40 = 10.5 % (own worked example).
    /// </summary>
    [Fact]
    public void A_carrier_is_believed_to_be_like_the_others()
    {
        List<ArrivalCount> all = [.. Many(80, 10, "other"), .. Many(20, 2, "overnight", 101)];
        Assert.Equal(10.5m, LossStatistics.LossPercentFor(all, 5, "overnight").Percent);
        var groups = LossStatistics.Group(all, LossBy.Carrier, PackingExamples.Catalog, 5);
        Assert.Equal(["other", "overnight"], groups.Select(g => g.Name));
        Assert.Equal(0.105, groups[1].OfParcels.Mean, 9);
    }

    /// <summary>
    /// 4 of 50 late after 3 % believed as 30 parcels: (0.9 + 4) / 80 = 6.125 % (own worked example).
    /// </summary>
    [Fact]
    public void Late_days_move_the_carriers_own_figure()
    {
        var terms = PackingExamples.Carrier with { DayLateChance = 0.03 };
        List<ArrivalCount> counts =
        [
            .. Many(50, 0).Select((c, i) => c with { IsLate = i < 4 }),
            .. Many(9, 0, "other", 80).Select(c => c with { IsLate = true }),
            // Another species of a late parcel: the parcel is late once.
            new(1, "overnight", May, "begonia-rex", 1, 0) { IsLate = true },
        ];
        var late = DelayStatistics.LateChanceFor(terms, counts);
        Assert.Equal((4, 50), (late.Late, late.Parcels));
        Assert.Equal(0.06125, late.Chance, 12);
        Assert.Equal(0.03, DelayStatistics.LateChanceFor(terms, []).Chance);
    }
}
