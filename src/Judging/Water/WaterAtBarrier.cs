using System.Globalization;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;
using Litterfall.Quantities.Measures;

namespace Litterfall.Judging.Water;

/// <summary>Rising water that nobody takes out stands in the soil.</summary>
internal static class WaterAtBarrier
{
    public static readonly Rule Rule = new(
        "water-at-barrier",
        Protects.Animal,
        "the forecast level reaches the barrier, and there is no drain, or it gets there between two looks "
            + "at the level",
        Judge
    )
    {
        Needs = Stage.WaterAndAir,
        Levers = LeverReach.Floor,
        Fix = (finding, design) => Sooner(finding, design.Document),
    };

    private static readonly Figure NoLook = Figure.Choice(
        "time between two looks at the level",
        7,
        Unit.Day,
        "none is entered; a week is the habit under a misting system"
    );

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (n.Water is not { BarrierReached: { } barrier, FirstDrain: { } first })
        {
            yield break;
        }

        var drain = n.Design.Design.Drain;
        if (drain is null)
        {
            yield return Rule.Found(
                Severity.Caution,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"Water reaches the barrier on day {barrier.Value:0} after planting and rises into the "
                        + $"soil: no drain is entered."
                ),
                (barrier, null),
                "Choose a drain, or mist less than ventilation removes.",
                "drain.kind"
            );
            yield break;
        }

        var look = n.Design.Design.Habits?.LevelCheck is { } typed
            ? n.Design.Figure("habits.levelCheck", "time between two looks at the level", typed, Unit.Day)
            : NoLook;
        var left = (barrier - first).As("time from the highest level to the barrier", Unit.Day);
        if (left.Si < look.Si)
        {
            yield return Rule.Found(
                Severity.Caution,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"From {DrainMark.BelowBarrier.Value:0.#} cm below the barrier the water needs "
                        + $"{NumberText.Days(left)} to reach "
                        + $"it; the level "
                        + $"is checked {Every(look)}, so it can stand in the soil unseen."
                ),
                (left, look),
                $"Check the level {Every(left)}, or mist less.",
                "habits.levelCheck"
            );
        }
    }

    private static DesignFix? Sooner(Finding finding, DesignDocument document)
    {
        double days = Math.Floor((finding.Measured?.Si ?? 0) / Unit.Day.ToSi);
        return finding.Where == "habits.levelCheck" && days >= 1
            ? DesignFix.From(
                days < 1.5
                    ? "read the level daily"
                    : FormattableString.Invariant($"read the level every {days:0} days"),
                DesignEdits.Set(document, "habits.levelCheck", FormattableString.Invariant($"{days:0} d"))
            )
            : null;
    }

    /// <summary>"daily"; "every 3 days".</summary>
    private static string Every(Figure time) =>
        Math.Floor(time.Value + 1e-9) is > 1 and var days
            ? string.Create(CultureInfo.InvariantCulture, $"every {days:0} days")
            : "daily";
}
