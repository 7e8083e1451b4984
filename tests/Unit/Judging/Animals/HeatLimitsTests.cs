using Litterfall.App.Files;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;
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

    private static AnimalEntry With(params (string Name, double Celsius, Citation Origin)[] values)
    {
        string[] limits = ["ctMax", "dayHigh", "preferred"];
        var animal = Animal("dendrobates-tinctorius");
        return animal with
        {
            Values =
            [
                .. animal.Values.Where(v => !limits.Contains(v.Name)),
                .. values.Select(v => new CatalogValue
                {
                    Name = v.Name,
                    Number = v.Celsius,
                    Unit = Unit.Celsius,
                    Origin = v.Origin,
                }),
            ],
        };
    }

    private static Citation From(Provenance provenance, string source = "posed") =>
        new(source, "", provenance);

    /// <summary>
    /// A critical maximum alone: 31 − 5 = 26 °C lies under the alarm of 28 °C, 34 − 5 = 29 over it. What the
    /// reader entered or measured is a limit at which a finding may say that an animal dies, like what was
    /// read; what is recalled is not.
    /// </summary>
    [Theory]
    [InlineData(Provenance.Entered, 31.0, 26.0, "26 °C is 5 K under its critical maximum, 31 °C (your own);")]
    [InlineData(
        Provenance.Measured,
        31.0,
        26.0,
        "26 °C is 5 K under its critical maximum, 31 °C (your own);"
    )]
    [InlineData(Provenance.Read, 31.0, 26.0, "26 °C is 5 K under its critical maximum, 31 °C (measured);")]
    [InlineData(
        Provenance.CommonPractice,
        31.0,
        26.0,
        "26 °C is 5 K under its critical maximum, 31 °C (keeping practice);"
    )]
    [InlineData(Provenance.Read, 34.0, 28.0, "28 °C is the general alarm of keepers, from memory.")]
    public void A_critical_maximum_alone_sets_the_limit_where_it_is_lower(
        Provenance provenance,
        double most,
        double celsius,
        string words
    )
    {
        var animal = With(("ctMax", most, From(provenance)));
        Assert.Equal(Unit.Celsius.ToSiValue(celsius), HeatLimits.Stress(animal).Si, 1e-9);
        Assert.StartsWith(words, HeatLimits.Kind(animal), StringComparison.Ordinal);
        bool isMeasured = provenance is Provenance.Entered or Provenance.Measured or Provenance.Read;
        Assert.Equal(isMeasured, HeatLimits.Lethal(animal) is not null);
    }

    /// <summary>It chooses 29.5 °C, over the alarm: counted where somebody measured it, else not.</summary>
    [Theory]
    [InlineData(Provenance.Entered, 29.5, "29.5 °C is the temperature it chooses (your own).")]
    [InlineData(Provenance.Measured, 29.5, "29.5 °C is the temperature it chooses (your own).")]
    [InlineData(Provenance.Recalled, 28.0, "28 °C is the general alarm of keepers, from memory.")]
    public void A_temperature_it_chooses_counts_where_it_was_measured(
        Provenance provenance,
        double celsius,
        string words
    )
    {
        var animal = With(("preferred", 29.5, From(provenance)));
        Assert.Equal(Unit.Celsius.ToSiValue(celsius), HeatLimits.Stress(animal).Si, 1e-9);
        Assert.Equal(words, HeatLimits.Kind(animal));
    }

    /// <summary>A band that reaches 30 °C is over the alarm of 28 °C and says what it is.</summary>
    [Theory]
    [InlineData("own-working-value", "30 °C is the top of its day band (a working value, not measured).")]
    [InlineData("keeper-practice", "30 °C is the top of its day band (keeping practice, from memory).")]
    public void A_band_over_the_alarm_is_the_limit(string source, string words)
    {
        var animal = With(("dayHigh", 30.0, From(Provenance.Recalled, source)));
        Assert.Equal(Unit.Celsius.ToSiValue(30.0), HeatLimits.Stress(animal).Si, 1e-9);
        Assert.Equal(words, HeatLimits.Kind(animal));
    }
}
