using Litterfall.Domain;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Checking;
using Litterfall.Quantities.Measures;

namespace Litterfall.Quantities.Stocking;

/// <summary>Class of an animal, as far as hygiene and papers care.</summary>
public enum AnimalClass
{
    /// <summary>Frogs and toads.</summary>
    Amphibian,

    /// <summary>Geckos, other lizards and snakes.</summary>
    Reptile,

    /// <summary>Millipedes, crabs and the like.</summary>
    Invertebrate,
}

/// <summary>An animal of the design, living in the box or what a kit is rated for.</summary>
/// <param name="Resident">As entered.</param>
/// <param name="Entry">Its catalog entry.</param>
/// <param name="Path">Key of the design.</param>
/// <param name="IsRatedOnly">True when the box is only rated for it.</param>
public sealed record BoxAnimal(Resident Resident, AnimalEntry Entry, string Path, bool IsRatedOnly)
{
    private static readonly string[] Reptiles = ["gecko", "lizard", "anole", "skink", "chameleon", "snake"];

    private static readonly string[] Invertebrates = ["millipede", "crab", "snail", "spider", "insect"];

    /// <summary>
    /// Its class, from what the library or the maker's own entry says it is; an amphibian where that says
    /// nothing else.
    /// </summary>
    public AnimalClass Class =>
        Says(Reptiles) ? AnimalClass.Reptile
        : Says(Invertebrates) ? AnimalClass.Invertebrate
        : AnimalClass.Amphibian;

    private bool Says(string[] words) =>
        words.Any(word => Entry.Taxon?.Text.Contains(word, StringComparison.OrdinalIgnoreCase) is true);

    /// <summary>All animals of a design, residents first.</summary>
    public static IEnumerable<BoxAnimal> Of(CheckedDesign design)
    {
        for (var i = 0; i < design.Design.Animals.Count; i++)
        {
            var path = $"animals[{NumberText.Integer(i)}]";
            yield return new(
                design.Design.Animals[i],
                design.Entry<AnimalEntry>($"{path}.animal"),
                path,
                false
            );
        }

        for (var i = 0; i < design.Design.RatedFor.Count; i++)
        {
            var path = $"ratedFor[{NumberText.Integer(i)}]";
            yield return new(
                design.Design.RatedFor[i],
                design.Entry<AnimalEntry>($"{path}.animal"),
                path,
                true
            );
        }
    }
}
