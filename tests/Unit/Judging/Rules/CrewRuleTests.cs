using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting.Life;
using Litterfall.UnitTests.House;
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

    /// <summary>Young grown at 32 °C get no offspring (Manee et al. 2025, abstract).</summary>
    [Theory]
    [InlineData("32 C", Severity.Caution)]
    [InlineData("31.9 C", Severity.Note)]
    public void The_tropical_springtail_lays_fewer_and_then_none(string warm, Severity severity) =>
        Assert.Equal(
            severity,
            Trips
                .In($"{Crew("coecobrya-type", 400)}\nroom: {{ temperature: {warm} }}")
                .Finding("crew-too-warm")!
                .Severity
        );

    /// <summary>Isopods breed from 17.5 °C (McQueen and Carnio 1974, abstract, on another species).</summary>
    [Fact]
    public void TooCoolToBreed()
    {
        Trips.Check("crew-too-cool", Severity.Caution, Held("17.5 C"), Held("17.6 C"));
        Assert.Null(Held("17.5 C", "folsomia-candida").Finding("crew-too-cool"));
    }

    /// <summary>What a rule calls the end of breeding is where the model lets nothing grow up.</summary>
    [Fact]
    public void The_rules_and_the_model_end_breeding_at_the_same_warmth()
    {
        const double Inside = 0.05;
        var crew = SampleFiles.Catalog.Of<CrewEntry>().ToList();
        Assert.NotEmpty(crew);
        foreach (var entry in crew)
        {
            var species = CrewKinds.Of(entry)!;
            double ends = entry.BreedingEndsAt!.Value;
            Assert.Equal(0.0, species.At(ends).NetPerDay);
            Assert.Equal(0.0, species.At(ends + 3.0).NetPerDay);
            Assert.True(species.At(ends - Inside).NetPerDay > 0.0, entry.Key);
            if (entry.BreedsFrom is { } from)
            {
                Assert.Equal(0.0, species.At(from.Value).NetPerDay);
                Assert.Equal(0.0, species.At(from.Value - 3.0).NetPerDay);
                Assert.True(species.At(from.Value + Inside).NetPerDay > 0.0, entry.Key);
            }
        }
    }

    private static PosedDesign Held(string air, string animal = "trichorhina-tomentosa") =>
        Trips.In(
            $"{Crew(animal, 400)}\nheadspace: {{ hold: {{ air: {air}, humidity: 80 %, airChanges: 2 /h }} }}",
            Trips.Cube,
            Litter("3")
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
