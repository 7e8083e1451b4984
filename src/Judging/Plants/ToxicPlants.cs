using Litterfall.Domain;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;
using Litterfall.Quantities.Stocking;

namespace Litterfall.Judging.Plants;

/// <summary>Words for what a plant's sap does.</summary>
internal static class PlantPoisons
{
    private static readonly string[] Words = ["latex", "raphides", "oxalates", "sap "];

    public static IEnumerable<PlacedPlant> In(DesignNumbers n) =>
        Plantings.Of(n).Where(plant => Words.Any(word => plant.IsToxic(word)));
}

/// <summary>A plant whose sap hurts, within reach of children or pets.</summary>
internal static class ToxicPlantInReach
{
    public static readonly Rule Rule = new(
        "toxic-plant-in-reach",
        Protects.Person,
        "a plant with latex, raphides, oxalates or irritant sap stands where children or pets can reach",
        Judge
    )
    {
        Needs = Stage.Shape,
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (n.Design.Design.Room?.Visitors.Any(v => v is Visitor.Children or Visitor.Pets) is not true)
        {
            yield break;
        }

        foreach (var plant in PlantPoisons.In(n))
        {
            yield return Rule.Found(
                Severity.Caution,
                $"{plant.Species.Name} ({plant.Species.Toxicity?.Text}) stands where children or pets can "
                    + "reach the box.",
                (null, null),
                "Lock the lid or doors, or take a plant without it; gloves when trimming.",
                $"{plant.Path}.plant",
                plant.Species.Toxicity!.Origin
            );
        }
    }
}

/// <summary>A plant whose sap hurts, with animals that bite or gnaw leaves.</summary>
internal static class ToxicPlantForAnimals
{
    private static readonly string[] LeafEaters = ["gecko", "crab", "millipede"];

    public static readonly Rule Rule = new(
        "toxic-plant-for-animals",
        Protects.Animal,
        "a plant with latex, raphides, oxalates or irritant sap grows with geckos, crabs or millipedes",
        Judge
    )
    {
        Needs = Stage.Shape,
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        var eaters = StockedSpecies.Of(n.Design).Where(s => LeafEaters.Contains(s.Taxon)).ToArray();
        if (eaters.Length == 0)
        {
            yield break;
        }

        foreach (var plant in PlantPoisons.In(n))
        {
            yield return Rule.Found(
                Severity.Caution,
                $"{plant.Species.Name} ({plant.Species.Toxicity?.Text}) grows with "
                    + $"{eaters[0].Species.Name}, which may bite or gnaw it.",
                (null, null),
                "Take a plant without it; insect-eating frogs do not eat leaves.",
                $"{plant.Path}.plant",
                plant.Species.Toxicity!.Origin
            );
        }
    }
}
