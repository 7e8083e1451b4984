using Litterfall.Domain.Catalog.Entries;

namespace Litterfall.Documents.Shapes;

/// <summary>Outline of an animal.</summary>
internal enum AnimalShape
{
    /// <summary>Sits on bent legs.</summary>
    Frog,

    /// <summary>Four legs and a tail.</summary>
    Gecko,

    /// <summary>Many rings.</summary>
    Millipede,

    /// <summary>A shell, claws and legs at the sides.</summary>
    Crab,
}

/// <summary>What an animal looks like, and how long it is.</summary>
internal static class AnimalShapes
{
    private const double UsualLength = 0.035;

    /// <summary>Its outline, by its kind.</summary>
    public static AnimalShape Of(AnimalEntry entry) =>
        (entry.Taxon?.Text ?? "frog") switch
        {
            "gecko" => AnimalShape.Gecko,
            "millipede" => AnimalShape.Millipede,
            "crab" => AnimalShape.Crab,
            _ => AnimalShape.Frog,
        };

    /// <summary>
    /// Body length of an adult, m: of the longest adults, else 9 of 10 parts of the longest on record. Geckos
    /// have a tail besides; a crab is measured across its shell.
    /// </summary>
    public static double Length(AnimalEntry entry) =>
        entry.LongestAdult?.Si ?? (0.9 * entry.LongestOnRecord?.Si) ?? UsualLength;
}
