using Litterfall.Domain.Catalog.Entries;
using Litterfall.Instructions.Care;
using Litterfall.Judging.Animals;
using Litterfall.UnitTests.House;
using Litterfall.UnitTests.Judging;

namespace Litterfall.UnitTests.Instructions.Care;

/// <summary>A care sheet says what the animal's own row of the library says.</summary>
public sealed class SpeciesRowTests
{
    private static readonly string[] Flies = ["small flies", "fly-cultures", "Set up fly cultures"];

    public static TheoryData<string> Species =>
        [.. SampleFiles.Catalog.Entries.OfType<AnimalEntry>().Select(e => e.Key)];

    /// <summary>No bound of heat lies under the top of the band the animal is kept in.</summary>
    [Theory]
    [MemberData(nameof(Species))]
    public void No_heat_limit_lies_inside_the_day_band(string species)
    {
        var entry = SampleFiles.Catalog.Find<AnimalEntry>(species)!;
        if (entry.WarmestDay is not { } top)
        {
            return;
        }

        Assert.True(HeatLimits.Stress(entry).Si >= top.Si - 1e-9);
        Assert.True(entry.AvoidAbove is not { } avoid || avoid.Si >= top.Si - 1e-9);
        Assert.True(entry.CriticalMaximum is not { } most || most.Si > top.Si);
    }

    [Fact]
    public void A_tree_frog_is_not_fed_on_small_flies()
    {
        // Its row: crickets, flies.
        var text = Told("agalychnis-callidryas");
        Assert.All(Flies, word => Assert.DoesNotContain(word, text, StringComparison.Ordinal));
        Assert.Contains("crickets", text, StringComparison.Ordinal);
        Assert.Contains("small flies", Told("epipedobates-anthonyi"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_shed_skin_is_no_emergency()
    {
        foreach (var species in new[] { "lepidodactylus-lugubris", "correlophus-ciliatus" })
        {
            var text = Told(species);
            Assert.DoesNotContain(
                "frog",
                text.Replace("plan for frogs only", "", StringComparison.Ordinal),
                StringComparison.OrdinalIgnoreCase
            );
            Assert.DoesNotContain("skin coming off", text, StringComparison.Ordinal);
            Assert.Contains("normal shed", text, StringComparison.Ordinal);
        }

        Assert.Contains(
            "Shed skin, which they mostly eat, is normal",
            Told("epipedobates-anthonyi"),
            StringComparison.Ordinal
        );
    }

    private static string Told(string species)
    {
        var numbers = Posed
            .Run(
                "{ inside: { length: 60 cm, depth: 45 cm, height: 60 cm }, glass: { walls: 5 mm } }",
                "{ soil: { recipe: ready-rainforest, depth: 7 cm } }",
                "planted: 2026-08-14\nheadspace: { hold: { air: 24 C, humidity: 80 %, airChanges: 2 } }\n"
                    + "animals: [ { animal: "
                    + species
                    + ", count: 2 } ]"
            )
            .Numbers;
        var tank = TankPlan.Of(numbers);
        return string.Join(
            '\n',
            CareSheet
                .All(tank)
                .SelectMany(s => s.Lines.Select(l => $"{l.Head}: {l.Text}"))
                .Concat(CareDates.Of(tank).Dates.Select(d => $"{d.Key} {d.Title} {d.Text}"))
                .Concat(Cautions.Of(numbers).Where(c => c.Key == "vet").Select(c => c.Text))
        );
    }
}
