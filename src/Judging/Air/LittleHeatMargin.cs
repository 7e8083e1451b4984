using System.Globalization;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Animals;
using Litterfall.Judging.Rules;
using Litterfall.Quantities.Stocking;

namespace Litterfall.Judging.Air;

/// <summary>The warmest hour stays below heat stress, but by less than what nobody has measured.</summary>
internal static class LittleHeatMargin
{
    public static readonly Rule Rule = new(
        "little-heat-margin",
        Protects.Animal,
        "the warmest hour of the box is below the species' limit for hours, and its upper bound, of what "
            + "nobody measures, is above it",
        Judge
    )
    {
        Needs = Stage.WaterAndAir,
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (n.Climate is not { Computed: { } computed, AirMax: { High: { } high, Value: { } value } })
        {
            yield break;
        }

        // The bound is told for the weeks after planting; other seasons are as uncertain.
        double most = computed.Seasons.Max(s => s.Days.Celsius.Most);
        double beyond = Math.Max(0.0, high.Value - value.Value);
        foreach (var species in StockedSpecies.Of(n.Design))
        {
            var limit = HeatLimits.Stress(species.Species);
            if (most > limit.Value || most + beyond <= limit.Value)
            {
                continue;
            }

            var season = computed.Seasons.MaxBy(s => s.Days.Celsius.Most)!;
            var warmest = Seasons.Number(
                n,
                season,
                "upper bound of the warmest hour",
                Unit.Celsius.ToSiValue(most + beyond),
                Unit.Celsius
            );
            yield return Rule.Found(
                Severity.Caution,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"The box reaches {most:0.#} °C {season.Name}, and {most + beyond:0.#} °C where the lamp "
                        + $"heats more and less air passes than thought; hours above {limit.Value:0.#} °C "
                        + $"are taken as heat stress for {species.Species.Name}."
                ),
                (warmest, limit),
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"Log the box for two warm days before animals go in, or take "
                        + $"{most + beyond - limit.Value:0.#} K away."
                ),
                Controls.LampHeat(n.Design.Design, season.Name)
            );
        }
    }
}
