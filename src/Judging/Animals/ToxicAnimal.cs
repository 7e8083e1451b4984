using System.Globalization;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;
using Litterfall.Quantities.Stocking;

namespace Litterfall.Judging.Animals;

/// <summary>Animals whose skin or secretion hurts the keeper.</summary>
internal static class ToxicAnimal
{
    public static readonly Rule Rule = new(
        "toxic-animal",
        Protects.Person,
        "the species' secretion must not get from bare hands to the eyes",
        Judge
    )
    {
        Needs = Stage.Shape,
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        foreach (var species in StockedSpecies.Of(n.Design))
        {
            if (
                species.Species.Toxin is not { Text: { } text } note
                || !text.Contains("no bare hands", StringComparison.OrdinalIgnoreCase)
            )
            {
                continue;
            }

            yield return Rule.Found(
                Severity.Note,
                $"{species.Species.Name}: {text}",
                (null, null),
                "Rinsed powder-free gloves, wash hands after; say so on the care sheet and to whoever "
                    + "feeds them.",
                $"{species.Item}.animal",
                note.Origin
            );
        }
    }
}
