using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;
using Litterfall.Quantities.Stocking;

namespace Litterfall.Judging.Plants;

/// <summary>Spines and soft skin.</summary>
internal static class SpinyPlant
{
    public static readonly Rule Rule = new(
        "spiny-plant",
        Protects.Animal,
        "a plant has spines, and there are animals",
        Judge
    )
    {
        Needs = Stage.Shape,
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (StockedSpecies.Of(n.Design).IsEmpty)
        {
            yield break;
        }

        foreach (var plant in Plantings.Of(n).Where(p => p.IsToxic("spiny")))
        {
            yield return Rule.Found(
                Severity.Caution,
                $"{plant.Species.Name} has spiny edges that can cut an animal's skin.",
                (null, null),
                "Take a kind without spines, or trim the spines and keep it away from jumping places.",
                $"{plant.Path}.plant",
                plant.Species.Toxicity!.Origin
            );
        }
    }
}
