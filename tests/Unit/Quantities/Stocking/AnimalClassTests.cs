using Litterfall.App.Files;
using Litterfall.Domain;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Quantities.Stocking;

namespace Litterfall.UnitTests.Quantities.Stocking;

/// <summary>Frogs, reptiles and the rest are told apart by what an entry says it is.</summary>
public sealed class AnimalClassTests
{
    /// <summary>Zoology: frogs and toads are amphibians, geckos reptiles, the others neither.</summary>
    [Theory]
    [InlineData("dendrobates-auratus", AnimalClass.Amphibian)]
    [InlineData("mantella-betsileo", AnimalClass.Amphibian)]
    [InlineData("bombina-orientalis", AnimalClass.Amphibian)]
    [InlineData("dendropsophus-ebraccatus", AnimalClass.Amphibian)]
    [InlineData("lepidodactylus-lugubris", AnimalClass.Reptile)]
    [InlineData("correlophus-ciliatus", AnimalClass.Reptile)]
    [InlineData("phelsuma-klemmeri", AnimalClass.Reptile)]
    [InlineData("lygodactylus-williamsi", AnimalClass.Reptile)]
    [InlineData("eurydactylodes-agricolae", AnimalClass.Reptile)]
    [InlineData("anadenobolus-monilicornis", AnimalClass.Invertebrate)]
    [InlineData("geosesarma", AnimalClass.Invertebrate)]
    public void An_animal_of_the_library_is_of_its_class(string key, AnimalClass expected) =>
        Assert.Equal(expected, Of(Shop.Embedded().Find<AnimalEntry>(key)!));

    [Theory]
    [InlineData("Gecko", AnimalClass.Reptile)]
    [InlineData("dwarf chameleon", AnimalClass.Reptile)]
    [InlineData("land snail", AnimalClass.Invertebrate)]
    [InlineData("reed frog", AnimalClass.Amphibian)]
    public void An_animal_of_the_maker_is_of_the_class_its_entry_says(string taxon, AnimalClass expected)
    {
        var text = $$"""
            [ { "key": "our-own", "kind": "animal", "name": "ours",
                "values": { "taxon": { "text": "{{taxon}}" } } } ]
            """;
        var workshop = WorkshopReader.Read("own", [new CatalogFile("own.json", text)]);
        Assert.Equal(expected, Of((AnimalEntry)workshop.Value!.Entries[0]));
    }

    private static AnimalClass Of(AnimalEntry entry) =>
        new BoxAnimal(new Resident { Kind = entry.Key, Count = 1 }, entry, "animals[0]", false).Class;
}
