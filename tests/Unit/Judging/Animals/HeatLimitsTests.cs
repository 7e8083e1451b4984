using Litterfall.App.Files;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Units;
using Litterfall.Judging.Animals;
using Xunit;

namespace Litterfall.UnitTests.Judging.Animals;

/// <summary>What a stop for heat may say of each animal of the library.</summary>
public sealed class HeatLimitsTests
{
    public static TheoryData<string> Animals =>
        [.. Shop.Embedded().Entries.OfType<AnimalEntry>().Select(a => a.Key)];

    private static AnimalEntry Animal(string key) =>
        Shop.Embedded().Entries.OfType<AnimalEntry>().Single(a => a.Key == key);

    /// <summary>Own claim: nobody is stopped for keeping an animal as its band says.</summary>
    [Theory]
    [MemberData(nameof(Animals))]
    public void No_stop_lies_inside_the_band_of_the_day(string key)
    {
        var animal = Animal(key);
        Assert.True(animal.WarmestDay is null || HeatLimits.Stress(animal).Si >= animal.WarmestDay.Si);
    }

    /// <summary>Own claim: a measured limit is never passed in silence.</summary>
    [Theory]
    [MemberData(nameof(Animals))]
    public void No_stop_is_silent_above_a_measured_limit(string key)
    {
        var animal = Animal(key);
        Assert.True(HeatLimits.Lethal(animal) is not { } most || HeatLimits.Stress(animal).Si < most.Si);
    }

    /// <summary>"Measured" stands only before what was read in a publication.</summary>
    [Theory]
    [MemberData(nameof(Animals))]
    public void Nothing_recalled_is_called_measured(string key)
    {
        var animal = Animal(key);
        if (HeatLimits.Kind(animal).Contains("(measured)", StringComparison.Ordinal))
        {
            Assert.NotNull(HeatLimits.Lethal(animal));
        }
    }

    /// <summary>Adults are no longer than the longest on record (Oliveira et al. 2017).</summary>
    [Theory]
    [MemberData(nameof(Animals))]
    public void Adults_are_no_longer_than_the_longest_on_record(string key)
    {
        var animal = Animal(key);
        Assert.True(
            animal.LongestOnRecord is not { } most
                || animal.LongestAdult is not { } adult
                || adult.Si <= most.Si
        );
    }

    /// <summary>
    /// Strawberry frog: critical maximum 29.1 °C (Pottier et al. 2022) less 5 K lies under the top of its
    /// own band, 25 °C.
    /// Own working: max(25, min(28, 24.1)) = 25. Dyeing frog: 34 less 5 is over the alarm of 28 °C.
    /// </summary>
    [Theory]
    [InlineData("oophaga-pumilio", 25.0)]
    [InlineData("dendrobates-tinctorius", 28.0)]
    // Preferred temperature 29.3 °C (Tracy and Christian 2005 in Pottier et al. 2022), over its band.
    [InlineData("ranoidea-caerulea", 29.3)]
    public void The_limit_is_the_lower_of_alarm_and_margin_but_not_under_the_band(
        string key,
        double celsius
    ) => Assert.Equal(Unit.Celsius.ToSiValue(celsius), HeatLimits.Stress(Animal(key)).Si, 1e-9);
}
