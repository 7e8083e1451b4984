using Litterfall.Domain;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Animals;

/// <summary>A box on public show that anybody can open.</summary>
internal static class PublicBoxOpens
{
    public static readonly Rule Rule = new(
        "public-box-opens",
        Protects.Animal,
        "animals are in a box on public show, and its lid or doors are not locked",
        Judge
    )
    {
        Needs = Stage.Shape,
        Fix = (_, design) =>
            DesignFix.From("a locked box", DesignEdits.Set(design.Document, "box.locked", "true")),
    };

    private static readonly Citation Habit = Citation.Habit(
        "displays for visitors are locked or screwed shut"
    );

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (
            n.HasAnimals()
            && n.Design.Design.Room?.Visitors.Contains(Visitor.Public) == true
            && !n.Design.Design.Box.Locked
        )
        {
            yield return Rule.Found(
                Severity.Caution,
                "The box is on public show and can be opened: animals can get out, be taken or handled.",
                (null, null),
                "Lock or screw shut lid, doors and service openings, and keep the key with the keeper.",
                "box.locked",
                Habit
            );
        }
    }
}
