using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;
using Litterfall.Quantities.Measures;

namespace Litterfall.Judging.Animals;

/// <summary>Animals that come out of quarantine too early.</summary>
internal static class QuarantineShort
{
    private static readonly Figure Least = Days("least quarantine", 30);

    private static readonly Figure Usual = Days("usual quarantine", 60);

    public static readonly Rule Rule = new(
        "quarantine-short",
        Protects.Animal,
        FormattableString.Invariant(
            $"animals were in quarantine for less than {Least.Value:0} d (stop), less than "
        ) + FormattableString.Invariant($"{Usual.Value:0} d, or nothing says how long"),
        Judge
    )
    {
        Needs = Stage.Shape,
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        foreach (var animal in Residents.Present(n))
        {
            var name = animal.Species.Name;
            var typed = animal.Entry.Quarantined;
            if (typed is null)
            {
                yield return Rule.Found(
                    Severity.Note,
                    $"No quarantine time is entered for {name}.",
                    (null, null),
                    $"Keep it apart for {Usual.Value:0} days and enter how long it was; a new arrival "
                        + $"starts the "
                        + "clock again.",
                    $"{animal.Path}.quarantined",
                    Usual.Origin
                );
                continue;
            }

            var time = n.Design.Figure(
                $"{animal.Path}.quarantined",
                $"quarantine of {name}",
                typed.Value,
                Unit.Day
            );
            if (time.Si >= Usual.Si - 1)
            {
                continue;
            }

            var isShort = time.Si < Least.Si - 1;
            var limit = isShort ? Least : Usual;
            yield return Rule.Found(
                isShort ? Severity.Stop : Severity.Caution,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{name} were in quarantine for {time.Value:0.#} days, less than {limit.Value:0}."
                ),
                (time, limit),
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"Keep them apart for {NumberText.Days((limit - time).As("missing time", Unit.Day))} "
                        + $"more, with droppings "
                        + $"checked three times and a swab at the end."
                ),
                $"{animal.Path}.quarantined"
            );
        }
    }

    private static Figure Days(string name, double days) =>
        Figure.Given(
            name,
            Unit.Day.ToSiValue(days),
            Unit.Day,
            new Citation(
                "keeper-practice",
                "recalled: at least 30 d, 60 d by default, 90 d for breeders and unknown origin",
                Provenance.Recalled
            )
        );
}
