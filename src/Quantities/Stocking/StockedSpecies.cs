using System.Collections.Immutable;
using Litterfall.Domain;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;

namespace Litterfall.Quantities.Stocking;

/// <summary>One species the box is for, with the entries of the design that name it summed.</summary>
public sealed record StockedSpecies
{
    private static readonly string[] FrogKinds = ["poison frog", "mantella", "tree frog", "toad"];

    /// <summary>Its catalog entry.</summary>
    public required AnimalEntry Species { get; init; }

    /// <summary>Animals asked for in one box.</summary>
    public required Figure Asked { get; init; }

    /// <summary>What the design says of them, entry by entry.</summary>
    public required ImmutableArray<Resident> Entries { get; init; }

    /// <summary>"animals", or "ratedFor" where the box is sold without them.</summary>
    public required string Where { get; init; }

    /// <summary>The first entry that names it: "animals[0]".</summary>
    public required string Item { get; init; }

    /// <summary>Upper adult length in meters; null when the library does not know it.</summary>
    public Figure? Body => Species.LongestAdult ?? Species.LongestOnRecord;

    /// <summary>Kind of animal, such as "poison frog"; empty when the library does not say.</summary>
    public string Taxon => Species.Taxon?.Text ?? "";

    /// <summary>True for frogs and toads.</summary>
    public bool IsFrog => FrogKinds.Contains(Taxon);

    /// <summary>True for animals that live above the ground.</summary>
    public bool IsClimber => Species.Habit?.Text == "climber";

    /// <summary>Known males; null where no entry gives them.</summary>
    public int? Males => Sum(r => r.Males);

    /// <summary>Known females; null where no entry gives them.</summary>
    public int? Females => Sum(r => r.Females);

    /// <summary>
    /// Species of the animals, or of those the box is rated for where it is sold without animals. Entries
    /// with a count of 0 ask for nothing.
    /// </summary>
    public static ImmutableArray<StockedSpecies> Of(CheckedDesign design)
    {
        var (where, residents) = design.Design.Animals.Any(r => r.Count > 0)
            ? ("animals", design.Design.Animals)
            : ("ratedFor", design.Design.RatedFor);
        return
        [
            .. Enumerable
                .Range(0, residents.Count)
                .Where(i => residents[i].Count > 0)
                .GroupBy(i => design.Entry($"{where}[{i}].animal").Key, StringComparer.Ordinal)
                .Select(group => Sum(design, where, [.. group])),
        ];

        StockedSpecies Sum(CheckedDesign checkedDesign, string list, int[] indexes)
        {
            var entry = checkedDesign.Entry<AnimalEntry>($"{list}[{indexes[0]}].animal");
            var counts = indexes
                .Select(i =>
                    checkedDesign.Count(
                        $"{list}[{i}].count",
                        $"{entry.Name} asked for{(indexes.Length > 1 ? $", entry {i + 1}" : "")}",
                        residents[i].Count
                    )
                )
                .ToArray();
            return new StockedSpecies
            {
                Species = entry,
                Asked =
                    counts.Length == 1
                        ? counts[0]
                        : Figure
                            .Total(counts, Dimension.None)
                            .As($"{entry.Name} asked for, all entries", Unit.One),
                Entries = [.. indexes.Select(i => residents[i])],
                Where = list,
                Item = $"{list}[{indexes[0]}]",
            };
        }
    }

    private int? Sum(Func<Resident, int?> count) =>
        Entries.Any(r => count(r) is not null) ? Entries.Sum(r => count(r) ?? 0) : null;
}
