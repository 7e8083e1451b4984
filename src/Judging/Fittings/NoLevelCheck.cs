using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Fittings;

/// <summary>A misting system fills the reservoir unseen.</summary>
internal static class NoLevelCheck
{
    private static readonly PracticeNumber Weekly = PracticeNumber.One(
        7,
        "d",
        Citation.Habit(
            "under a misting system the level is read by a dip tube; drains are due every 2 to 6 weeks"
        )
    );

    public static readonly Rule Rule = new(
        "no-level-check",
        Protects.Build,
        "a misting system runs and no look at the water level is entered",
        Judge
    )
    {
        Needs = Stage.Shape,
        Fix = (_, design) =>
            DesignFix.From(
                "read the level every week",
                DesignEdits.Set(design.Document, "habits.levelCheck", Weekly.ToString())
            ),
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (n.Design.Design is { Misting: not null, Habits: null or { LevelCheck: null } })
        {
            yield return Rule.Found(
                Severity.Note,
                "A misting system runs, and nothing says how often somebody looks at the water level.",
                (null, null),
                "Enter how often the level is read; once a week is usual.",
                "habits.levelCheck",
                Weekly.Origin
            );
        }
    }
}
