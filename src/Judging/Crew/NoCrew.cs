using System.Globalization;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Checking;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Faults;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;
using Litterfall.Quantities.Sizing;
using Litterfall.Quantities.Stocking;

namespace Litterfall.Judging.Crew;

/// <summary>Waste and dead leaves without anyone to eat them.</summary>
internal static class NoCrew
{
    public static readonly Rule Rule = new(
        "no-crew",
        Protects.Build,
        "there are animals, or soil under leaf litter, but no clean-up crew",
        Judge
    )
    {
        Needs = Stage.Shape,
        Fix = (_, design) => Seeded(design),
    };

    private static readonly PracticeNumber Springtails = PracticeNumber.One(
        2000,
        "for each square meter of floor",
        Citation.Habit("2000 springtails for each square meter of floor")
    );

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        var hasAnimals = !StockedSpecies.Of(n.Design).IsEmpty;
        var floor = n.Design.Design.Floor;
        if (Crews.Of(n).Any() || !(hasAnimals || floor is { Soil: not null, Litter: not null }))
        {
            yield break;
        }

        yield return Rule.Found(
            Severity.Caution,
            hasAnimals
                ? "The box has animals and no clean-up crew: droppings may mold."
                : "The floor has soil and leaf litter and no clean-up crew: leaves may mold instead of being "
                    + "eaten.",
            (null, null),
            string.Create(
                CultureInfo.InvariantCulture,
                $"Seed about {n.Box.GrossFloor.Si * Springtails.Least:0} springtails, and isopods if they "
                    + $"suit the "
                    + $"animals."
            ),
            "crew",
            Springtails.Origin
        );
    }

    /// <summary>As many of each as the library seeds on the floor of this box.</summary>
    private static DesignFix? Seeded(CheckedDesign design)
    {
        var floor = BoxGeometry.Of(design).OpenFloor.Si;
        var with = new Reading<DesignDocument>(design.Document, []);
        foreach (var key in new[] { "folsomia-candida", "trichorhina-tomentosa" })
        {
            if (with.Value is { } so && design.Catalog.Find<CrewEntry>(key)?.SeedDensity is { } density)
            {
                var count = Math.Max(1, Math.Round(density.Si * floor));
                with = DesignEdits.Add(
                    so,
                    "crew",
                    FormattableString.Invariant($"{{ animal: {key}, count: {count:0} }}")
                );
            }
        }

        return DesignFix.From("seed springtails and dwarf isopods", with);
    }
}
