using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Air;

/// <summary>Air that stands: above 98 % all day and panes white for more than 20 hours.</summary>
internal static class StaleAir
{
    private static readonly Figure Longest = Figure.Given(
        "longest time of dew a day",
        Unit.Hour.ToSiValue(20),
        Unit.Hour,
        new Citation(
            "keeper-practice",
            "recalled: above 98 % with panes white for more than 20 hours a day the air stands",
            Provenance.Recalled
        )
    );

    public static readonly Rule Rule = new(
        "stale-air",
        Protects.Animal,
        FormattableString.Invariant(
            $"mean humidity above {100 * Wet:0} % and dew on some pane for more than {Longest.Value:0} hours "
        ) + "a day in some season",
        Judge
    )
    {
        Needs = Stage.WaterAndAir,
        Levers = LeverReach.Air,
    };

    private const double Wet = 0.98;

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (
            Seasons.Worst(n, d =>
                d.Humidity.Mean > Wet ? d.Fog.Select(f => f.Hours).DefaultIfEmpty(0).Max() : 0
            )
                is not { } worst
            || worst.Value <= Longest.Value
        )
        {
            yield break;
        }

        yield return Rule.Found(
            n.WithAnimals(Severity.Caution, Severity.Note),
            string.Create(
                CultureInfo.InvariantCulture,
                $"The air stands at {100 * worst.Season.Days.Humidity.Mean:0.#} % "
                    + $"{worst.Season.Name} and a pane is "
                    + $"white for {worst.Value:0.#} hours a day: little dries, and keepers tell of "
                    + $"sour soil and ailing animals."
            ),
            (Seasons.Hours(n, worst.Season, "dew on the worst pane a day", worst.Value), Longest),
            "Open a low vent and a high one, and mist less.",
            Controls.Vents(n.Design.Design)
        );
    }
}
