using Litterfall.Domain;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.People;

/// <summary>Amphibians and reptiles carry Salmonella.</summary>
internal static class Zoonosis
{
    public static readonly Rule Rule = new(
        "zoonosis",
        Protects.Person,
        "animals live in the box, and children can reach it",
        Judge
    )
    {
        Needs = Stage.Shape,
    };

    private static readonly Citation Practice = new(
        "keeper-practice",
        "recalled: public-health advice on Salmonella from reptiles and amphibians, children under 5 "
            + "above all",
        Provenance.Recalled
    );

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (!n.HasAnimals() || n.Design.Design.Room?.Visitors.Contains(Visitor.Children) != true)
        {
            yield break;
        }

        yield return Rule.Found(
            Severity.Caution,
            "Amphibians and reptiles can carry Salmonella, and children can reach this box.",
            (null, null),
            "Lock the box and have hands washed after every touch; ask a physician where children under "
                + "five, "
                + "old or ill people live.",
            "room.visitors",
            Practice
        );
    }
}
