using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;
using Litterfall.Quantities.Measures;

namespace Litterfall.Judging.Plants;

/// <summary>Plants that may still carry pesticide, snails or eggs.</summary>
internal static class PlantQuarantineShort
{
    private static readonly Figure Least = Figure.Given(
        "least plant quarantine",
        Unit.Day.ToSiValue(Practice.PlantsApart.Least),
        Unit.Day,
        Practice.PlantsApart.Origin
    );

    public static readonly Rule Rule = new(
        "plant-quarantine-short",
        Protects.Animal,
        FormattableString.Invariant($"a plant was in plant quarantine for less than {Least.Value:0} d"),
        Judge
    )
    {
        Needs = Stage.Shape,
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        foreach (var plant in Plantings.Of(n))
        {
            if (plant.Entry.Quarantined is not { } typed || typed.Si >= Least.Si - 1)
            {
                continue;
            }

            var time = n.Design.Figure(
                $"{plant.Path}.quarantined",
                $"quarantine of {plant.Species.Name}",
                typed,
                Unit.Day
            );
            yield return Rule.Found(
                Severity.Caution,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{plant.Species.Name} was in quarantine for {time.Value:0.#} days, less than "
                        + $"{Least.Value:0}: pesticide from the nursery can harm springtails and frogs, and "
                        + $"snails can come along."
                ),
                (time, Least),
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"Keep it apart for {NumberText.Days((Least - time).As("missing time", Unit.Day))} more."
                ),
                $"{plant.Path}.quarantined"
            );
        }
    }
}
