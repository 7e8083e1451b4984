using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Box;

/// <summary>A strip that only lies in its place is pushed up by a frog.</summary>
internal static class LidStripOpen
{
    public static readonly Rule Rule = new(
        "lid-strip-open",
        Protects.Animal,
        "the lift-out strip for hoses and cables is neither taped nor latched",
        Judge
    )
    {
        Needs = Stage.Shape,
        Fix = (finding, design) =>
            DesignFix.From(
                "the strip taped or latched",
                DesignEdits.Set(design.Document, finding.Where, "true")
            ),
    };

    private static readonly Citation Habit = Citation.Habit(
        "a lift-out back strip of 20 to 40 mm is taped or latched, else frogs leave by it"
    );

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (n.Design.Design.Lid is { Strip.Si: > 0, Latched: false })
        {
            yield return Rule.Found(
                n.WithAnimals(Severity.Caution, Severity.Note),
                "The strip at the back of the lid is neither taped nor latched: frogs can leave by it.",
                (null, null),
                "Tape or latch the strip, then enter that it is.",
                "lid.latched",
                Habit
            );
        }
    }
}
