using Litterfall.Domain;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Floor;

/// <summary>Gathered leaves bring in slugs, centipedes and disease unless they were heated.</summary>
internal static class RawLeaves
{
    public static readonly Rule Rule = new(
        "raw-leaves",
        Protects.Animal,
        "leaf litter is not boiled, baked or steamed, or its cleaning is not entered",
        Judge
    )
    {
        Needs = Stage.Shape,
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (
            n.Design.Design.Floor.Litter is not { } litter
            || litter.Prepared is Preparation.Boiled or Preparation.Baked or Preparation.Steamed
        )
        {
            yield break;
        }

        var entry = n.Design.Entry<LitterEntry>("floor.litter.material");
        yield return Rule.Found(
            litter.Prepared is null ? Severity.Note : Severity.Caution,
            litter.Prepared is null
                ? $"Cleaning of the {entry.Name} not recorded; see the step on the build sheet."
                : $"The {entry.Name} go in without being boiled or baked, and may bring pests and disease.",
            (null, null),
            entry.Preparation?.Text ?? $"{Practice.CleanLeaves}, then enter how they were cleaned.",
            "floor.litter.prepared",
            entry.Preparation?.Origin ?? Practice.BoiledLeaves.Origin
        );
    }
}
