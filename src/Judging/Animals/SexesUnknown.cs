using System.Globalization;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;
using Litterfall.Quantities.Stocking;

namespace Litterfall.Judging.Animals;

/// <summary>Animals that live in pairs or trios, and nobody says of which sex they are.</summary>
internal static class SexesUnknown
{
    public static readonly Rule Rule = new(
        "sexes-unknown",
        Protects.Animal,
        "a species kept as a pair, a trio, or one male with females is in the box without its sexes entered",
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
                species.Species.GroupForm?.Text is not { } form
                || species.Asked.Si < 2.0
                || (species.Males ?? 0) + (species.Females ?? 0) >= species.Asked.Si
            )
            {
                continue;
            }

            string group = species.Species.Group?.Text ?? form;
            yield return Rule.Found(
                Severity.Note,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{species.Species.Name} is kept as {group}, and the sexes of "
                        + $"{species.Asked.Value:0} are not all entered: two of the wrong sex may fight."
                ),
                (species.Asked, null),
                "Enter how many males and females there are. Watch animals too young to tell daily, and part "
                    + "them when one hides or thins.",
                $"{species.Item}.males",
                species.Species.GroupForm!.Origin
            );
        }
    }
}
