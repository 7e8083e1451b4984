using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;
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
                ? "The box has animals and no clean-up crew: waste molds."
                : "The floor has soil and leaf litter and no clean-up crew: leaves mold instead of being "
                    + "eaten.",
            (null, null),
            string.Create(
                CultureInfo.InvariantCulture,
                $"Seed about {n.Box.GrossFloor.Si * 2000:0} springtails, and isopods if they suit the "
                    + $"animals."
            ),
            "crew",
            Citation.Habit("2000 springtails for each square meter of floor")
        );
    }
}
