using Litterfall.App.Files;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;
using Xunit;

namespace Litterfall.UnitTests.Judging.Rules;

/// <summary>The three lights of each plant of the library.</summary>
public sealed class PlantBandsTests
{
    public static TheoryData<string> Plants =>
        [.. Shop.Embedded().Entries.OfType<PlantEntry>().Select(p => p.Key)];

    private static PlantEntry Plant(string key) =>
        Shop.Embedded().Entries.OfType<PlantEntry>().Single(p => p.Key == key);

    /// <summary>Life, good growth, color and bleaching come in this order.</summary>
    [Theory]
    [MemberData(nameof(Plants))]
    public void Survival_lies_below_good_below_color(string key)
    {
        var plant = Plant(key);
        double[] bounds =
        [
            plant.SurvivalDailyLight!.Si,
            plant.LeastDailyLight!.Si,
            plant.LargestDailyLight!.Si,
            plant.LeastColorLight!.Si,
            plant.LargestColorLight!.Si,
        ];
        Assert.Equal(bounds.Order(), bounds);
        Assert.True(bounds[0] < bounds[1] && bounds[1] < bounds[2] && bounds[3] < bounds[4]);
    }

    /// <summary>The light while lamps burn is the sum of a day over 12 hours, rounded to 1 or 5.</summary>
    [Theory]
    [MemberData(nameof(Plants))]
    public void Photons_are_the_sum_of_a_day_over_twelve_hours(string key)
    {
        var plant = Plant(key);
        Assert.InRange(plant.LeastLight!.Si * 43200 / (plant.LeastDailyLight!.Si * 86400), 0.85, 1.15);
        Assert.InRange(plant.LargestLight!.Si * 43200 / (plant.LargestColorLight!.Si * 86400), 0.85, 1.15);
    }

    /// <summary>
    /// University of Illinois (read): low, medium and bright light 75, 150 and 300 foot-candles. 1 fc is
    /// 10.764 lx; white LED 0.0144 µmol/lx; 12 h are 43 200 s.
    /// </summary>
    [Theory]
    [InlineData("fittonia-albivenis", 75)]
    [InlineData("peperomia-prostrata", 150)]
    [InlineData("neoregelia-small", 300)]
    public void Good_light_begins_at_the_foot_candles_of_the_sheet(string key, double footCandles) =>
        Assert.Equal(footCandles * 10.764 * 0.0144 * 43200e-6, Plant(key).LeastDailyLight!.Value, 0.011);

    /// <summary>
    /// Guo, Lin and Lee 2012 (abstract): Phalaenopsis gains below 5 µmol, leaves grew under 30, take 125 at
    /// most when grown dark, and are inhibited above 325; over 12 hours.
    /// </summary>
    [Fact]
    public void Phalaenopsis_follows_its_paper()
    {
        var plant = Plant("phalaenopsis-mini");
        Assert.Equal(5 * 0.0432, plant.SurvivalDailyLight!.Value, 0.005);
        Assert.Equal(30 * 0.0432, plant.LeastDailyLight!.Value, 0.01);
        Assert.Equal(125 * 0.0432, plant.LeastColorLight!.Value, 0.01);
        Assert.Equal(325 * 0.0432, plant.LargestColorLight!.Value, 0.05);
        Assert.Equal(Provenance.Recomputed, plant.LeastDailyLight.Origin.Provenance);
    }
}
