using System.Globalization;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;
using Litterfall.Quantities.Measures;

namespace Litterfall.Judging.Floor;

/// <summary>Water that comes in must be taken out again.</summary>
internal static class NoDrain
{
    public static readonly Rule Rule = new(
        "no-drain",
        Protects.Build,
        "a drainage layer or raised floor has no drain",
        Judge
    )
    {
        Needs = Stage.Quantities,
        Fix = (_, design) =>
            DesignFix.From(
                "a dip tube to siphon from",
                DesignEdits.SetPart(design.Document, "drain", "{ kind: siphon, diameter: 20 mm }")
            ),
    };

    private static readonly Citation Habit = Citation.Habit(
        "a drainage layer is emptied by siphon, bulkhead or standpipe, every 2 to 6 weeks under a "
            + "misting system"
    );

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (n.Design.Design.Floor.Drainage is null || n.Design.Design.Drain is not null)
        {
            yield break;
        }

        var days = DaysToFill(n);
        yield return Rule.Found(
            Severity.Caution,
            days is null
                ? "Nothing takes the water out of the drainage layer: no drain is entered."
                : string.Create(
                    CultureInfo.InvariantCulture,
                    $"Nothing takes the water out of the drainage layer while the misting system fills it: "
                        + $"it is full after {days.Value:0.#} days if none dries off."
                ),
            (days, null),
            "Choose a drain: a siphon hose, a drilled bulkhead or a standpipe.",
            "drain.kind",
            Habit
        );
    }

    /// <summary>Days in which the misting alone fills the reservoir; null without misting.</summary>
    private static Figure? DaysToFill(DesignNumbers n)
    {
        if (MistingDay.Misted(n.Design) is not { Si: > 0 } daily)
        {
            return null;
        }

        return (
            n.Weights.ReservoirWater
            / daily
            * Figure.Given("one day", Unit.Day.ToSi, Unit.Day, Citation.OwnDerivation)
        ).As("days until the reservoir is full", Unit.Day);
    }
}
