using System.Globalization;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Animals;

/// <summary>Animals before the plants and the clean-up crew have settled.</summary>
internal static class AnimalsTooEarly
{
    private static readonly Figure Least = Days("least grow-in", 28);

    private static readonly Figure Better = Days("better grow-in", 56);

    public static readonly Rule Rule = new(
        "animals-too-early",
        Protects.Animal,
        FormattableString.Invariant(
            $"animals move in less than {Least.Value:0} d after planting (stop), or less than "
        ) + FormattableString.Invariant($"{Better.Value:0} d"),
        Judge
    )
    {
        Needs = Stage.Shape,
        Fix = (_, design) =>
            design.Document.Design.Planted is { } planted
                ? DesignFix.From(
                    FormattableString.Invariant($"animals {Better.Value:0} days after planting"),
                    DesignEdits.Set(
                        design.Document,
                        "animalsIn",
                        FormattableString.Invariant($"{planted.AddDays((int)Better.Value):yyyy-MM-dd}")
                    )
                )
                : null,
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        var design = n.Design.Design;
        if (design is not { Planted: { } planted, AnimalsIn: { } animalsIn })
        {
            yield break;
        }

        var days = Figure.Given(
            "days from planting to animals",
            Unit.Day.ToSiValue(animalsIn.DayNumber - planted.DayNumber),
            Unit.Day,
            new Citation("design", "planted and animalsIn", Provenance.Entered)
        );
        if (days.Si >= Better.Si)
        {
            yield break;
        }

        var early = days.Si < Least.Si;
        var limit = early ? Least : Better;
        yield return Rule.Found(
            early ? Severity.Stop : Severity.Note,
            string.Create(
                CultureInfo.InvariantCulture,
                $"Animals move in {days.Value:0} days after planting; practice waits at least "
                    + $"{Least.Value:0} days, better {Better.Value:0}, until plants "
                    + $"have rooted and the clean-up crew breeds."
            ),
            (days, limit),
            $"Let them move in on {Day(planted.AddDays((int)limit.Value))} or later.",
            "animalsIn"
        );
    }

    private static string Day(DateOnly day) => day.ToString("O", CultureInfo.InvariantCulture);

    private static Figure Days(string name, double days) =>
        Figure.Given(
            name,
            Unit.Day.ToSiValue(days),
            Unit.Day,
            new Citation("grow-in-page", "at least 4 weeks, 8 better", Provenance.CommonPractice)
        );
}
