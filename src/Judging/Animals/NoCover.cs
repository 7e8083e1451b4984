using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;
using Litterfall.Quantities.Stocking;

namespace Litterfall.Judging.Animals;

/// <summary>Animals that cannot hide.</summary>
internal static class NoCover
{
    public static readonly Rule Rule = new(
        "no-cover",
        Protects.Animal,
        "there are animals, but no plants, no wood or stone and no leaf litter",
        Judge
    )
    {
        Needs = Stage.Shape,
        Fix = (_, design) => FixEdit.CorkFlats(design.Document),
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        var design = n.Design.Design;
        var species = StockedSpecies.Of(n.Design);
        if (
            species.IsEmpty
            || design.Plants.Count > 0
            || design.Hardscape.Count > 0
            || design.Floor.Litter is not null
        )
        {
            yield break;
        }

        yield return Rule.Found(
            Severity.Caution,
            "The animals have nothing to hide in: no plants, no wood or stone, no leaf litter.",
            (null, null),
            $"Add {Practice.Leaves} of leaf litter, cork or plants.",
            new Control("floor.litter.depth", species[0].Item),
            Citation.Habit("animals need cover from the first day")
        );
    }
}
