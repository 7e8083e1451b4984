using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;
using Litterfall.Quantities.Stocking;

namespace Litterfall.Judging.Animals;

/// <summary>Animals that nobody looks after for longer than a week.</summary>
internal static class LeftUnattended
{
    private static readonly Figure Longest = Figure.Choice(
        "longest time alone",
        7,
        Unit.Day,
        "adults are fed five to six days a week; a week without is the most we plan for"
    );

    public static readonly Rule Rule = new(
        "left-unattended",
        Protects.Animal,
        FormattableString.Invariant($"nobody is there for more than {Longest.Value:0} d at a stretch"),
        Judge
    )
    {
        Needs = Stage.Shape,
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        var species = StockedSpecies.Of(n.Design);
        if (n.Design.Design.Habits?.Away is not { } typed || species.IsEmpty)
        {
            yield break;
        }

        var away = n.Design.Figure("habits.away", "longest time nobody is there", typed, Unit.Day);
        if (away.Si <= Longest.Si + 1)
        {
            yield break;
        }

        yield return Rule.Found(
            Severity.Caution,
            string.Create(
                CultureInfo.InvariantCulture,
                $"Nobody is there for {away.Value:0.#} days, more than {Longest.Value:0}: animals go "
                    + $"unfed and nobody sees a failed pump or lamp."
            ),
            (away, Longest),
            "Agree on someone who feeds, looks at the water level and has the veterinarian's number.",
            "habits.away"
        );
    }
}
