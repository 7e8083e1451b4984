using Litterfall.Domain;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;

namespace Litterfall.Judging.Rules;

/// <summary>Who lives in the box, or is meant to.</summary>
internal static class Inhabited
{
    /// <summary>True when the design names animals, or animals it is rated for.</summary>
    public static bool HasAnimals(this DesignNumbers n) =>
        n.Design.Design.Animals.Concat(n.Design.Design.RatedFor).Any(resident => resident.Count > 0);

    /// <summary>True when animals or crew live in it.</summary>
    public static bool HasLife(this DesignNumbers n) =>
        n.HasAnimals() || n.Design.Design.Crew.Any(inhabitant => inhabitant.Count > 0);

    /// <summary>Names and entries of the animals, whether they live in it or it is rated for them.</summary>
    public static IEnumerable<AnimalEntry> AnimalEntries(this DesignNumbers n) =>
        Entries(n, n.Design.Design.Animals, "animals")
            .Concat(Entries(n, n.Design.Design.RatedFor, "ratedFor"));

    /// <summary>A severity where animals live in the box; a lower one where none are named.</summary>
    public static Severity WithAnimals(this DesignNumbers n, Severity with, Severity without) =>
        n.HasAnimals() ? with : without;

    private static IEnumerable<AnimalEntry> Entries(
        DesignNumbers n,
        IReadOnlyList<Resident> residents,
        string key
    ) =>
        Enumerable
            .Range(0, residents.Count)
            .Where(i => residents[i].Count > 0)
            .Select(i => n.Design.Entry<AnimalEntry>($"{key}[{i}].animal"));
}
