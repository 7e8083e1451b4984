using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Lists;
using static System.FormattableString;

namespace Litterfall.Dispatch.Packing;

/// <summary>
/// Papers that what lives in a parcel needs or may need. It lists what is usual and decides nothing: the
/// authority does.
/// </summary>
public static class AnimalPapers
{
    /// <summary>Said beside every list.</summary>
    public const string Caution =
        "The authority decides which papers are needed. Appendices and rules change: check the current list, "
        + "and refuse the parcel if a paper is missing.";

    /// <summary>States in which live plants travel with a plant passport (EU 2016/2031; Swiss and British law
    /// of their own).</summary>
    private const string PassportStates =
        "AT BE BG CH CY CZ DE DK EE ES FI FR GB GR HR HU IE IT LT LU LV MT NL PL PT RO SE SI SK";

    /// <summary>The list, first what must be there.</summary>
    /// <param name="parcel">The parcel with the papers that were looked at.</param>
    /// <param name="catalog">The library.</param>
    /// <param name="rules">The shop's regions and carriers.</param>
    /// <param name="today">Day on which it is asked.</param>
    public static Seq<AnimalPaper> List(
        Parcel parcel,
        TradeCatalog catalog,
        DispatchRules rules,
        DateOnly today
    )
    {
        var (travelers, _) = Traveler.Read(parcel, catalog);
        var from = Country(rules, rules.HomeRegion);
        var to = Country(rules, parcel.Region);
        bool? crosses = from.Length == 0 || to.Length == 0 ? null : from != to;
        var papers = new List<AnimalPaper>();
        foreach (var traveler in travelers.DistinctBy(t => t.Content.Key))
        {
            papers.AddRange(
                traveler.Kind switch
                {
                    TravelerKind.Animal => Animal(traveler, crosses),
                    TravelerKind.Plant => Plant(traveler, from, crosses),
                    _ => Invertebrate(traveler, crosses),
                }
            );
        }

        papers.Add(Carrier(parcel, rules, today));
        return
        [
            .. papers
                .Select(p => p with { IsThere = p.IsThere || parcel.Papers.Contains(p.Key) })
                .OrderByDescending(p => p.IsNeeded),
        ];
    }

    /// <summary>What must be there and is not.</summary>
    /// <param name="papers">The list.</param>
    public static Seq<AnimalPaper> Missing(Seq<AnimalPaper> papers) =>
        [.. papers.Where(p => p is { IsNeeded: true, IsThere: false })];

    private static IEnumerable<AnimalPaper> Animal(Traveler animal, bool? crosses)
    {
        yield return Paper(
            animal,
            "origin",
            "Proof of origin: breeder, birth or hatching, parents, and the number of its tank or lot.",
            true
        );
        if (animal.Cites is "I" or "II")
        {
            yield return Paper(
                animal,
                "captive-bred",
                Invariant($"CITES Appendix {animal.Cites}: proof of captive breeding or legal import, ")
                    + "with the numbers that stand on it.",
                true
            );
        }

        if (animal.Cites == "I")
        {
            yield return Paper(
                animal,
                "certificate",
                "CITES Appendix I: certificate for trade with the animal, valid for this seller.",
                true
            );
        }

        if (animal.Cites.Length > 0 && crosses != false)
        {
            yield return Paper(
                animal,
                "cites-permit",
                "CITES permits of export and, where asked for, of import, stamped on the way.",
                crosses == true
            );
        }

        if (crosses != false)
        {
            yield return Paper(
                animal,
                "border",
                "Health certificate and permit of entry: ask the veterinary authorities of both states.",
                false
            );
        }

        yield return Paper(
            animal,
            "keeping",
            "Permit or notice of keeping at the customer's: ask the authority there.",
            false
        );
    }

    private static IEnumerable<AnimalPaper> Plant(Traveler plant, string from, bool? crosses)
    {
        if (plant.Cites.Length > 0)
        {
            yield return Paper(
                plant,
                "propagated",
                Invariant($"CITES Appendix {plant.Cites}: proof of artificial propagation."),
                true
            );
        }

        var hasPassport = from.Length > 0 && PassportStates.Split(' ').Contains(from);
        yield return Paper(
            plant,
            "plant-passport",
            hasPassport
                ? "Plant passport on each trade unit, from a registered grower."
                : "Plant health papers of the state or region it goes to: ask the plant health agency.",
            hasPassport && crosses == false
        );
        if (crosses == true)
        {
            yield return Paper(
                plant,
                "phytosanitary",
                "Phytosanitary certificate, and soil or moss may be refused: ask both plant health agencies.",
                false
            );
        }
    }

    private static IEnumerable<AnimalPaper> Invertebrate(Traveler culture, bool? crosses)
    {
        var note = (culture.Entry as CrewEntry)?.LegalNote?.Text;
        yield return Paper(
            culture,
            "movement",
            note
                ?? "Moving live insects across state lines or borders can need a permit; ask the plant "
                    + "health agency first.",
            false
        );
        if (crosses == true)
        {
            yield return Paper(
                culture,
                "invertebrate-entry",
                "Permit of entry for live invertebrates: ask the agency of the state it goes to.",
                false
            );
        }
    }

    private static AnimalPaper Carrier(Parcel parcel, DispatchRules rules, DateOnly today)
    {
        var terms = rules.Carriers.FirstOrDefault(c => c.Key == parcel.Carrier);
        var isThere =
            terms is { TakesAnimals: true, RulesReadOn: { } read }
            && read <= today
            && read.AddDays(rules.CarrierRulesDays) >= today;
        var since = terms?.RulesReadOn is { } day
            ? Invariant($", last read on {day:d MMM yyyy}")
            : ", never read so far";
        return new(
            "carrier-consent",
            Invariant($"The carrier's consent to take these animals, dated, not older than ")
                + Invariant($"{rules.CarrierRulesDays} days{since}."),
            true
        )
        {
            IsThere = isThere,
        };
    }

    private static AnimalPaper Paper(Traveler traveler, string key, string text, bool isNeeded) =>
        new($"{key}/{traveler.Content.Key}", text, isNeeded) { Species = traveler.Name };

    private static string Country(DispatchRules rules, string region) =>
        rules.Regions.FirstOrDefault(r => r.Key == region)?.Country ?? "";
}
