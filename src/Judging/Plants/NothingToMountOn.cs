using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Plants;

/// <summary>A plant is mounted, and nothing in the box carries it.</summary>
internal static class NothingToMountOn
{
    private static readonly Citation Habit = Citation.Habit(
        "mounted plants are pinned, tied or glued to a background or to wood until their roots hold"
    );

    public static readonly Rule Rule = new(
        "nothing-to-mount-on",
        Protects.Build,
        "a plant is mounted, and the box has neither a background nor wood",
        Judge
    )
    {
        Needs = Stage.Shape,
        Fix = (_, design) =>
            DesignFix.From(
                "a background of pressed cork",
                DesignEdits.SetPart(design.Document, "background", "{ material: cork-tile, thickness: 2 cm }")
            ),
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (n.Design.Design.Background is not null || Mounts.Wood(n.Design))
        {
            yield break;
        }

        foreach (var plant in Plantings.Of(n).Where(p => p.Entry.Mounted))
        {
            yield return Rule.Found(
                Severity.Caution,
                $"{plant.Species.Name} is mounted, and there is neither a background nor wood to mount it "
                    + "on.",
                (null, null),
                "Add a background or a piece of wood where it is to sit, or plant it if it stands soil.",
                $"{plant.Path}.mounted",
                Habit
            );
        }
    }
}
