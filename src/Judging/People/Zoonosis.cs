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
        "animals live in the box; a caution where children can reach it",
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
        if (!n.HasAnimals())
        {
            yield break;
        }

        var children = n.Design.Design.Room?.Visitors.Contains(Visitor.Children) == true;
        yield return Rule.Found(
            children ? Severity.Caution : Severity.Note,
            children
                ? "Amphibians and reptiles carry Salmonella, and children can reach this box."
                : "Amphibians and reptiles carry Salmonella: wash hands after every touch of box or animals.",
            (null, null),
            children
                ? "Lock the box and let hands be washed; ask a physician where children under 5, old "
                    + "or ill people live."
                : "Soap and water, no kitchen sink; ask a physician where children under 5, old or "
                    + "ill people live.",
            children ? "room.visitors" : "animals",
            Practice
        );
    }
}
