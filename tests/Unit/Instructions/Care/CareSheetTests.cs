using Litterfall.Domain.Catalog.Entries;
using Litterfall.Instructions.Care;
using Litterfall.Quantities.Stocking;
using Litterfall.UnitTests.Instructions.Building;
using Litterfall.UnitTests.Judging;
using Litterfall.UnitTests.Quantities.Measures;
using Litterfall.UnitTests.Quantities.Packs;
using Litterfall.UnitTests.Quantities.Sizing;

namespace Litterfall.UnitTests.Instructions.Care;

/// <summary>Care sheets, for every animal of the library.</summary>
public sealed class CareSheetTests
{
    [Fact]
    public void A_sheet_carries_what_a_seller_must_tell()
    {
        // Advice on care, life expectancy, accessories and where to find a vet, and the animal's origin,
        // species, age and sex: Animal Welfare (Licensing of Activities Involving Animals) (England)
        // Regulations 2018, schedule 3, paragraphs 2 and 3 (from memory).
        var sheet = Assert.Single(CareSheet.All(TankPlan.Of(Built.Foam)));
        string[] heads =
        [
            "Day",
            "Night",
            "Humidity",
            "Space",
            "Group",
            "Water",
            "Food",
            "Calcium with D3",
            "Equipment",
            "Hygiene",
            "New animals",
            "See a veterinarian",
            "Life expectancy",
            "Papers",
            "Never outdoors",
        ];
        Assert.All(heads, head => Assert.Contains(sheet.Lines, l => l.Head == head));
        string[] hand = ["Species", "Origin", "Hatched or age", "Sex", "Veterinarian, telephone"];
        Assert.All(hand, head => Assert.Contains(sheet.ByHand, l => l.Head == head));
        Assert.Equal("captive bred", sheet.ByHand.Single(l => l.Head == "Origin").Text);
        Assert.Null(sheet.ByHand.Single(l => l.Head == "Hatched or age").Text);
        Assert.Equal(2, sheet.Count);
    }

    [Fact]
    public void Space_uses_the_boxs_own_numbers()
    {
        // Inside 60 × 45 × 60 cm = 162 L, 81 L each; open floor 60 × (45 − 4) = 2460 cm², 1230 each.
        var space = CareSheet.All(TankPlan.Of(Built.Foam))[0].Lines.Single(l => l.Head == "Space").Text;
        Assert.Contains("162.0 L", space, StringComparison.Ordinal);
        Assert.Contains("2460 cm²", space, StringComparison.Ordinal);
        Assert.Contains("81.0 L and 1230 cm² for each of 2", space, StringComparison.Ordinal);
    }

    [Fact]
    public void A_maker_in_inches_reads_fahrenheit_too()
    {
        // 22 °C = 71.6 °F, 26 °C = 78.8 °F: °F = 1.8 °C + 32, exact by definition.
        var day = CareSheet.All(TankPlan.Of(Built.Inches))[0].Lines.Single(l => l.Head == "Day").Text;
        Assert.Equal("22 to 26 °C (72 to 79 °F)", day);
    }

    [Fact]
    public void Every_animal_of_the_library_gets_a_sheet_with_sources_and_no_drug()
    {
        var animals = Built.Foam.Design.Catalog.Of<AnimalEntry>().ToArray();
        Assert.NotEmpty(animals);
        var sources = Built.Foam.Design.Catalog.Sources;
        foreach (var entry in animals)
        {
            var animal = new BoxAnimal(Built.Foam.Design.Design.Animals[0], entry, "animals[0]", false);
            var sheet = CareSheet.Of(TankPlan.Of(Built.Foam), animal);
            Assert.All(sheet.Lines, line =>
            {
                Assert.NotEqual("", line.Text);
                Assert.True(line.Source is null || sources.ContainsKey(line.Source.Source), line.Head);
                Assert.DoesNotMatch("(?i)mg/kg|itraconazole|enrofloxacin|dose of", line.Text);
            });
            // What is left without a source says so or only repeats the design.
            string[] open = ["Life expectancy", "Supplements"];
            Assert.All(sheet.Lines.Where(l => l.Source is null), l => Assert.Contains(l.Head, open));
            Assert.Equal(
                animal.Class == AnimalClass.Amphibian,
                sheet.Lines.Any(l => l.Head == "Calcium with D3")
            );
        }
    }

    /// <summary>
    /// Own working: 24 h × 20.1 J/mL × 0.10 M^0.84 mL/h × 2.2^-0.1 × 1.5 ÷ 0.8 (recalled): 0.5 g 46.7 J,
    /// 4.1 g 273.5 J; a fly of 0.30 mg 7.35 J, others by their dry mass: 0.25, 0.70 and 2.2 mg.
    /// </summary>
    [Theory]
    [InlineData("ranitomeya-imitator", "about 6 small flies for each adult of 0.5 g (47 J")]
    [InlineData(
        "adelphobates-galactonotus",
        "about 37 small flies, or 45 pinhead crickets, or 16 large flies, or 5 bean weevils for each adult"
    )]
    public void Every_feeder_an_animal_can_take_is_counted(string key, string expected)
    {
        var entry = Built.Foam.Design.Catalog.Find<AnimalEntry>(key)!;
        var animal = new BoxAnimal(Built.Foam.Design.Design.Animals[0], entry, "animals[0]", false);
        var food = CareSheet.Of(TankPlan.Of(Built.Foam), animal).Lines.Single(l => l.Head == "Food a day").Text;
        Assert.StartsWith(expected, food, StringComparison.Ordinal);
    }

    [Fact]
    public void A_kit_that_is_rated_for_animals_says_so()
    {
        var numbers = Posed
            .Run(
                "{ inside: { length: 44 cm, depth: 44 cm, height: 44 cm } }",
                "{ soil: { recipe: ready-rainforest, depth: 5 cm } }",
                "ratedFor: [ { animal: ranitomeya-imitator, count: 2 } ]"
            )
            .Numbers;
        Assert.True(Assert.Single(CareSheet.All(TankPlan.Of(numbers))).IsRatedOnly);
        Assert.DoesNotContain(CareDates.Of(TankPlan.Of(numbers)).Dates, d =>
            d.Key.StartsWith("quarantine", StringComparison.Ordinal)
        );
    }
}
