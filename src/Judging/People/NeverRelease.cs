using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.People;

/// <summary>Released animals, soil and drain water carry disease and foreign species outdoors.</summary>
internal static class NeverRelease
{
    public static readonly Rule Rule = new(
        "never-release",
        Protects.Animal,
        "animals, crew or drain water are handled",
        Judge
    )
    {
        Needs = Stage.Shape,
    };

    private static readonly Citation Practice = new(
        "keeper-practice",
        "recalled: chytrid, ranavirus and foreign crew, plants and geckos spread by releases and waste",
        Provenance.Recalled
    );

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (n.HasLife() || n.Design.Design.Drain is not null)
        {
            yield return Rule.Found(
                Severity.Note,
                "Never release animals, crew, feeders, plants, soil or drain water outdoors: they "
                    + "carry disease.",
                (null, null),
                "Bag soil and leaves and heat them or send them to landfill; disinfect drain water, then "
                    + "neutralize it.",
                Where(n),
                Practice
            );
        }
    }

    private static string Where(DesignNumbers n) =>
        n.Design.Design switch
        {
            { Animals.Count: > 0 } => "animals",
            { RatedFor.Count: > 0 } => "ratedFor",
            { Crew.Count: > 0 } => "crew",
            { Plants.Count: > 0 } => "plants",
            _ => "drain",
        };
}
