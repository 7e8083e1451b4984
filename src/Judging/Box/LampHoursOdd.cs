using System.Globalization;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Box;

/// <summary>Day length outside what the trade uses.</summary>
internal static class LampHoursOdd
{
    private static readonly Figure Shortest = Figure.Given(
        "shortest day of the lamp",
        10 * 3600,
        Unit.Hour,
        Citation.Habit("lamps are on for 12 hours, 10 to 14")
    );

    private static readonly Figure Longest = Figure.Given(
        "longest day of the lamp",
        14 * 3600,
        Unit.Hour,
        Citation.Habit("lamps are on for 12 hours, 10 to 14")
    );

    public static readonly Rule Rule = new(
        "lamp-hours",
        Protects.Build,
        FormattableString.Invariant(
            $"a lamp is on for less than {Shortest.Value:0.##} or more than {Longest.Value:0.##} hours a day"
        ),
        Judge
    )
    {
        Needs = Stage.Shape,
        Fix = (finding, design) => TwelveHours(finding, design.Document),
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        for (var i = 0; i < n.Design.Design.Lamps.Count; i++)
        {
            if (n.Design.Design.Lamps[i] is not { On: { } on, Off: { } off })
            {
                continue;
            }

            // The difference of two times of day runs past midnight; the same time twice is never off.
            var span = on == off ? TimeSpan.FromHours(24) : off - on;
            var hours = Figure.Given(
                $"hours of lamp {i + 1}",
                span.TotalSeconds,
                Unit.Hour,
                new Citation("design", $"lamps[{i}].on and off", Provenance.Entered)
            );
            var limit = hours.Si < Shortest.Si ? Shortest : Longest;
            if (hours.Si >= Shortest.Si && hours.Si <= Longest.Si)
            {
                continue;
            }

            yield return Rule.Found(
                Severity.Note,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"Lamp {i + 1} is on for {hours.Value:0.#} hours a day; {Shortest.Value:0} to "
                        + $"{Longest.Value:0} are usual: less may starve the plants, more feed algae."
                ),
                (hours, limit),
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"Switch it off at {on.AddHours(UsualHours):HH:mm} for {UsualHours:0} hours."
                ),
                $"lamps[{i}].off"
            );
        }
    }

    private const double UsualHours = 12;

    private static DesignFix? TwelveHours(Finding finding, DesignDocument document)
    {
        if (FixEdit.Index(finding) is not { } lamp || document.Design.Lamps.Count <= lamp)
        {
            return null;
        }

        var on = document.Design.Lamps[lamp].On ?? new TimeOnly(8, 0);
        return DesignFix.From(
            FormattableString.Invariant($"{UsualHours:0} hours of light"),
            DesignEdits.Set(
                document,
                FormattableString.Invariant($"lamps[{lamp}].off"),
                FormattableString.Invariant($"{on.AddHours(UsualHours):HH:mm}")
            )
        );
    }
}
