using System.Globalization;
using Litterfall.Domain;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Faults;
using Litterfall.Domain.Findings;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Animals;

/// <summary>
/// As many animals as a rule allows, where one kind lives in the box. Where sexes are entered they are part
/// of
/// the answer: two of five frogs are a pair only as one male and one female.
/// </summary>
internal static class FewerAnimals
{
    /// <summary>
    /// The fixes, most animals first and a balanced pair before others; none where it is the keeper's choice
    /// who goes.
    /// </summary>
    public static IEnumerable<DesignFix?> Fixes(Finding finding, DesignDocument document)
    {
        var (path, resident) = Only(document.Design);
        if (path is null || finding.Limit is not { } limit)
        {
            yield break;
        }

        // Where the strictest guide allows none, as many as another still allows.
        var most = limit.Si >= 1 ? (int)Math.Min(Math.Floor(limit.Si), resident!.Count) : resident!.Count - 1;
        for (var count = most; count >= 1; count--)
        {
            if (resident is { Males: null, Females: null })
            {
                yield return Fix(document, path, (count, null, null));
                continue;
            }

            foreach (var (males, females) in Groups(resident, count))
            {
                yield return Fix(
                    document,
                    path,
                    (count, resident.Males is null ? null : males, resident.Females is null ? null : females)
                );
            }
        }
    }

    /// <summary>
    /// The sexes of so many of the animals that are there: one male with females first, then fewer of them.
    /// </summary>
    private static IEnumerable<(int Males, int Females)> Groups(Resident all, int count)
    {
        var unknown = Math.Max(0, all.Count - (all.Males ?? 0) - (all.Females ?? 0));
        return Enumerable
            .Range(0, count + 1)
            .Where(males => males <= (all.Males ?? 0))
            .SelectMany(males =>
                Enumerable
                    .Range(0, count - males + 1)
                    .Where(females => females <= (all.Females ?? 0) && count - males - females <= unknown)
                    .Select(females => (males, females))
            )
            .OrderByDescending(g => g.males + g.females)
            .ThenBy(g => Math.Abs(g.males - 1));
    }

    private static (string? Path, Resident? Resident) Only(Design design) =>
        design.Animals.Count == 1 ? ("animals[0]", design.Animals[0])
        : design.Animals.Count == 0 && design.RatedFor.Count == 1 ? ("ratedFor[0]", design.RatedFor[0])
        : (null, null);

    private static DesignFix? Fix(
        DesignDocument document,
        string path,
        (int Count, int? Males, int? Females) to
    )
    {
        var with = new Reading<DesignDocument>(document, []);
        foreach (
            var (key, number) in new[] { ("count", to.Count), ("males", to.Males), ("females", to.Females) }
        )
        {
            if (number is { } n && with.Value is { } so)
            {
                with = DesignEdits.Set(so, $"{path}.{key}", n.ToString(CultureInfo.InvariantCulture));
            }
        }

        return DesignFix.From(Words(to.Count, to.Males, to.Females), with);
    }

    private static string Words(int count, int? males, int? females)
    {
        var all = Number(count, "animal", "animals");
        return males is null || females is null
            ? all
            : $"{all}: {Number(males.Value, "male", "males")} and "
                + $"{Number(females.Value, "female", "females")}";
    }

    private static string Number(int count, string one, string many) =>
        string.Create(CultureInfo.InvariantCulture, $"{count} {(count == 1 ? one : many)}");
}
