using System.Globalization;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Forecasting.Light;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Light;

/// <summary>A plant with so little light that it starves.</summary>
internal static class PlantBelowCompensation
{
    public static readonly Rule Rule = new(
        "plant-below-compensation",
        Protects.Build,
        "the light at the leaves of a plant is below what its kind needs to live at all",
        Judge
    )
    {
        Needs = Stage.Light,
        Fix = (finding, design) => LampFix.Brighter(finding, design.Document),
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (n.Light is not { } light)
        {
            yield break;
        }

        foreach (var plant in light.Plants.Where(p => p.Verdict == LightVerdict.BelowCompensation))
        {
            yield return Rule.Found(
                Severity.Caution,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{PlantWords.Light(light, plant)}, and below {plant.Compensation.Micromoles():0.#} "
                        + $"µmol/m²/s its "
                        + $"kind starves."
                ),
                (plant.Photons.Value, plant.Compensation),
                PlantWords.Brighter(n, light, plant),
                plant.Spot.Key
            );
        }
    }
}
