using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Plants;

/// <summary>Moss that is often taken from the wild.</summary>
internal static class WildMoss
{
    public static readonly Rule Rule = new(
        "wild-moss",
        Protects.Person,
        "a plant is one for which rules on wild collection hold",
        Judge
    )
    {
        Needs = Stage.Shape,
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        foreach (var plant in Plantings.Of(n).Where(p => p.IsToxic("wild collection")))
        {
            yield return Rule.Found(
                Severity.Note,
                $"{plant.Species.Name} is often taken from the wild, which many places restrict.",
                (null, null),
                "Keep the supplier's proof of origin, or take cultivated moss.",
                $"{plant.Path}.plant",
                plant.Species.Toxicity!.Origin
            );
        }
    }
}
