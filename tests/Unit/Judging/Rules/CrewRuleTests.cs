using Litterfall.Domain.Findings;
using Xunit;

namespace Litterfall.UnitTests.Judging.Rules;

/// <summary>Rules on the clean-up crew; densities and litter depth are common practice, no source.</summary>
public sealed class CrewRuleTests
{
    private const string Leaves =
        "{ soil: { recipe: ready-rainforest, depth: 7 cm }, litter: { material: oak-leaves, depth: CM cm } }";

    private static string Litter(string centimeters) =>
        Leaves.Replace("CM", centimeters, StringComparison.Ordinal);

    [Fact]
    public void NobodyToCleanUp()
    {
        const string crew = "crew: [ { animal: folsomia-candida, count: 400 } ]";
        Trips.Check(
            "no-crew",
            Severity.Caution,
            Trips.In("", Trips.Cube, Litter("3")),
            Trips.In(crew, Trips.Cube, Litter("3"))
        );
        Trips.Check(
            "no-crew",
            Severity.Caution,
            Trips.In(
                $"{Trips.Animals("dendrobates-auratus", 1)}\ncrew: [ {{ animal: folsomia-candida, "
                    + "count: 0 } ]"
            ),
            Trips.In("")
        );
    }

    [Theory]
    // 0.1936 m²: half of 2000 springtails is 193.6, half of 150 dwarf isopods is 14.5.
    [InlineData("folsomia-candida", 193, 194)]
    [InlineData("trichorhina-tomentosa", 14, 15)]
    public void TooFewToStartWith(string animal, int trips, int inside) =>
        Trips.Check(
            "crew-too-few",
            Severity.Caution,
            Trips.In(Crew(animal, trips), Trips.Cube, Litter("3")),
            Trips.In(Crew(animal, inside), Trips.Cube, Litter("3"))
        );

    [Theory]
    // No egg of the white springtail hatches at 28 °C (Fountain and Hopkin 2005, second hand). Isopods breed
    // from 17.5 to 27.5 °C (McQueen and Carnio 1974, abstract, on another species). The tropical springtail
    // lays at 27, 30 and 32 °C, the fewer the warmer (Manee et al. 2025, abstract).
    [InlineData(
        "folsomia-candida",
        Severity.Caution,
        "{ temperature: 27 C, swing: 1 K }",
        "{ temperature: 26.9 C, swing: 1 K }"
    )]
    [InlineData(
        "trichorhina-tomentosa",
        Severity.Caution,
        "{ temperature: 27.5 C }",
        "{ temperature: 27.4 C }"
    )]
    [InlineData("coecobrya-type", Severity.Note, "{ temperature: 27 C }", "{ temperature: 26.9 C }")]
    public void TooWarmToBreed(string animal, Severity severity, string trips, string inside) =>
        Trips.Check(
            "crew-too-warm",
            severity,
            Trips.In($"{Crew(animal, 400)}\nroom: {trips}"),
            Trips.In($"{Crew(animal, 400)}\nroom: {inside}")
        );

    /// <summary>The tropical springtail is taken to stop at 33 °C (own working value).</summary>
    [Theory]
    [InlineData("33 C", Severity.Caution)]
    [InlineData("32.9 C", Severity.Note)]
    public void The_tropical_springtail_lays_fewer_and_then_none(string warm, Severity severity) =>
        Assert.Equal(
            severity,
            Trips
                .In($"{Crew("coecobrya-type", 400)}\nroom: {{ temperature: {warm} }}")
                .Finding("crew-too-warm")!
                .Severity
        );

    [Fact]
    public void NothingToEat()
    {
        Trips.Check(
            "crew-without-litter",
            Severity.Caution,
            Trips.In(Crew("folsomia-candida", 400), Trips.Cube, Litter("1.9")),
            Trips.In(Crew("folsomia-candida", 400), Trips.Cube, Litter("2"))
        );
        Assert.NotNull(Trips.In(Crew("folsomia-candida", 400), Trips.Cube).Finding("crew-without-litter"));
        Assert.Null(Trips.In("", Trips.Cube).Finding("crew-without-litter"));
    }

    [Fact]
    public void LargeIsopodsWithFrogs()
    {
        var frogs = Trips.Animals("dendrobates-auratus", 2);
        // Powdery isopods 10 mm, dwarf isopods 4 mm (from memory).
        Trips.Check(
            "nibbling-isopods",
            Severity.Note,
            Trips.In($"{frogs}\n{Crew("porcellionides-pruinosus", 100)}"),
            Trips.In($"{frogs}\n{Crew("trichorhina-tomentosa", 100)}")
        );
        Assert.Null(
            Trips
                .In($"{Trips.Animals("correlophus-ciliatus", 1)}\n{Crew("porcellionides-pruinosus", 100)}")
                .Finding("nibbling-isopods")
        );
    }

    private static string Crew(string animal, int count) =>
        FormattableString.Invariant($"crew: [ {{ animal: {animal}, count: {count} }} ]");
}
