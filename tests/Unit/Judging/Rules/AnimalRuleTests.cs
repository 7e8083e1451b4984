using Litterfall.Domain.Findings;
using Xunit;

namespace Litterfall.UnitTests.Judging.Rules;

/// <summary>
/// Rules on animals; limits from memory of keeper and zoo practice unless another source stands beside.
/// </summary>
public sealed class AnimalRuleTests
{
    private static readonly string Auratus = Trips.Animals("dendrobates-auratus", 2);

    [Fact]
    public void SeveralSpecies()
    {
        const string two =
            "animals: [ { animal: dendrobates-auratus, count: 2 }, { animal: ranitomeya-imitator, count: "
            + "N } ]";
        Trips.Check(
            "mixed-species",
            Severity.Stop,
            Trips.In(two.Replace("N", "2", StringComparison.Ordinal)),
            Trips.In(two.Replace("N", "0", StringComparison.Ordinal))
        );
    }

    [Fact]
    public void SeveralLines()
    {
        const string two =
            "animals: [ { animal: dendrobates-auratus, count: 1, line: blue }, "
            + "{ animal: dendrobates-auratus, count: 1, line: LINE } ]";
        Trips.Check(
            "mixed-lines",
            Severity.Caution,
            Trips.In(two.Replace("LINE", "bronze", StringComparison.Ordinal)),
            Trips.In(two.Replace("LINE", "Blue", StringComparison.Ordinal))
        );
    }

    [Theory]
    // Practice avoids more than 27 °C: 26.6 + 1 against 26 + 1; a month counts as well as held air, and the
    // room beside held air. Up to half a kelvin is within the error, a note.
    [InlineData("room: { temperature: 26.6 C, swing: 1 K }", "room: { temperature: 26 C, swing: 1 K }")]
    [InlineData(
        "room: { temperature: 22 C, months: { jul: { temperature: 27.6 C } } }",
        "room: { temperature: 22 C, months: { jul: { temperature: 27 C } } }"
    )]
    [InlineData(
        "headspace: { hold: { air: 27.6 C, humidity: 90 %, airChanges: 1 } }",
        "room: { temperature: 27 C }\nheadspace: { hold: { air: 27 C, humidity: 90 %, airChanges: 1 } }"
    )]
    public void TooHot(string trips, string inside) =>
        Trips.Check(
            "room-too-hot",
            Severity.Caution,
            Trips.In($"{Auratus}\n{trips}"),
            Trips.In($"{Auratus}\n{inside}")
        );

    [Fact]
    public void HalfAnHourAboveTheHeatLimitStops()
    {
        // Above 28 °C for 30 min a day: arccos(x) = π/48, x = 0.99786, swing 1/x = 1.00215 K over 27 °C.
        Trips.Check(
            "overheats",
            Severity.Stop,
            Trips.In($"{Auratus}\nroom: {{ temperature: 27 C, swing: 1.003 K }}"),
            Trips.In($"{Auratus}\nroom: {{ temperature: 27 C, swing: 1.002 K }}")
        );
        // 27 ± 2 °C: 24/π × arccos(0.5) = 24/3 = 8.0 h.
        var eight = Trips.In($"{Auratus}\nroom: {{ temperature: 27 C, swing: 2 K }}").Finding("overheats")!;
        Assert.Equal(480, eight.Measured!.Value, 9);
        Assert.Equal(30, eight.Limit!.Value, 9);
    }

    [Fact]
    public void ALowCriticalMaximumLowersTheHeatLimit()
    {
        // Oophaga pumilio 29.1 °C (Rivera-Ordóñez et al. 2019 in Pottier et al. 2022) − 5 = 24.1 °C, which
        // lies below the top of its day band, 25 °C: that is the limit.
        var pumilio = Trips.Animals("oophaga-pumilio", 2);
        var finding = Trips.Check(
            "overheats",
            Severity.Stop,
            Trips.In($"{pumilio}\nroom: {{ temperature: 25.1 C }}"),
            Trips.In($"{pumilio}\nroom: {{ temperature: 25 C }}")
        );
        Assert.Contains("25 °C", finding.Text, StringComparison.Ordinal);
    }

    [Theory]
    // Practice avoids less than 18 °C for auratus; the mourning gecko's night starts at 20, less 2 K.
    [InlineData(
        "dendrobates-auratus",
        "{ temperature: 18.4 C, swing: 1 K }",
        "{ temperature: 19 C, swing: 1 K }"
    )]
    [InlineData("lepidodactylus-lugubris", "{ temperature: 17.4 C }", "{ temperature: 18 C }")]
    [InlineData(
        "dendrobates-auratus",
        "{ temperature: 22 C, weekend: { temperature: 17 C } }",
        "{ temperature: 22 C, weekend: { temperature: 18 C } }"
    )]
    public void TooCold(string animal, string trips, string inside) =>
        Trips.Check(
            "room-too-cold",
            Severity.Caution,
            Trips.In($"{Trips.Animals(animal, 1)}\nroom: {trips}"),
            Trips.In($"{Trips.Animals(animal, 1)}\nroom: {inside}")
        );

    [Theory]
    [InlineData("papers-missing", Severity.Stop, "papers: missing", "papers: held")]
    [InlineData("papers-missing", Severity.Caution, "males: 1", "papers: held")]
    [InlineData("quarantine-short", Severity.Stop, "quarantined: 29 d", "quarantined: 60 d")]
    [InlineData("quarantine-short", Severity.Caution, "quarantined: 30 d", "quarantined: 60 d")]
    [InlineData("quarantine-short", Severity.Caution, "quarantined: 59 d", "quarantined: 61 d")]
    [InlineData("quarantine-short", Severity.Note, "males: 1", "quarantined: 9 weeks")]
    [InlineData("pathogen-positive", Severity.Stop, "swab: positive", "swab: clear")]
    [InlineData("pathogen-positive", Severity.Caution, "swab: pending", "males: 1")]
    [InlineData("wild-caught", Severity.Caution, "origin: wild-caught", "origin: captive-bred")]
    public void WhatTheRecordsSay(string slug, Severity severity, string trips, string inside) =>
        Trips.Check(
            slug,
            severity,
            Trips.In(Trips.Animals("dendrobates-auratus", 2, trips)),
            Trips.In(Trips.Animals("dendrobates-auratus", 2, inside))
        );

    [Theory]
    // Four weeks at least, eight better (common practice): 1 January + 27, 28, 55 and 56 d.
    [InlineData(Severity.Stop, "2026-01-28")]
    [InlineData(Severity.Note, "2026-01-29")]
    [InlineData(Severity.Note, "2026-02-25")]
    public void AnimalsBeforeTheBoxHasGrownIn(Severity severity, string day) =>
        Trips.Check(
            "animals-too-early",
            severity,
            Trips.In($"planted: 2026-01-01\nanimalsIn: {day}\n{Auratus}"),
            Trips.In($"planted: 2026-01-01\nanimalsIn: 2026-02-26\n{Auratus}")
        );

    [Theory]
    // Three for each pair of egg feeders; a tank bromeliad counts as one.
    [InlineData("ranitomeya-imitator", 2, "waterCups: 2", "waterCups: 3")]
    [InlineData("oophaga-pumilio", 3, "waterCups: 5", "waterCups: 6")]
    [InlineData(
        "ranitomeya-imitator",
        2,
        "plants: [ { plant: neoregelia-small, count: 2, mounted: true } ]",
        "plants: [ { plant: neoregelia-small, count: 2, mounted: true } ]\nwaterCups: 1"
    )]
    public void EggFeedersNeedWaterCups(string animal, int count, string trips, string inside) =>
        Trips.Check(
            "too-few-water-cups",
            Severity.Caution,
            Trips.In($"{Trips.Animals(animal, count)}\n{trips}"),
            Trips.In($"{Trips.Animals(animal, count)}\n{inside}")
        );

    [Theory]
    [InlineData("needs-water-area", "bombina-orientalis", "waterArea: 49 %", "waterArea: 50 %")]
    [InlineData("needs-water-area", "geosesarma", "", "waterArea: 25 %")]
    [InlineData("left-unattended", "dendrobates-auratus", "habits: { away: 8 d }", "habits: { away: 7 d }")]
    [InlineData(
        "no-cover",
        "dendrobates-auratus",
        "",
        "hardscape: [ { material: cork-bark, mass: 0.5 kg } ]"
    )]
    public void WhatTheBoxLacks(string slug, string animal, string trips, string inside) =>
        Trips.Check(
            slug,
            Severity.Caution,
            Trips.In($"{Trips.Animals(animal, 1)}\n{trips}"),
            Trips.In($"{Trips.Animals(animal, 1)}\n{inside}")
        );

    [Fact]
    public void AMillipedeNeedsSoilOfHalfItsLength()
    {
        // Half of 280 mm is 14 cm.
        const string floor = "{ soil: { recipe: ready-rainforest, depth: CM cm } }";
        var millipede = Trips.Animals("archispirostreptus-gigas", 1);
        Trips.Check(
            "soil-too-shallow-to-burrow",
            Severity.Caution,
            Trips.In(millipede, floor: floor.Replace("CM", "13.9", StringComparison.Ordinal)),
            Trips.In(millipede, floor: floor.Replace("CM", "14", StringComparison.Ordinal))
        );
    }

    [Fact]
    public void ToxicAnimalsAreNoted()
    {
        var finding = Trips.Check(
            "toxic-animal",
            Severity.Note,
            Trips.In(Trips.Animals("phyllobates-terribilis", 2)),
            Trips.In(Auratus)
        );
        Assert.Equal(Protects.Person, finding.Protects);
    }
}
