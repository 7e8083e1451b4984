using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Forecasting.Light;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Light;

/// <summary>A plant with less light than it grows well in: it lives, and looks otherwise.</summary>
internal static class PlantTooDark
{
    public static readonly Rule Rule = new(
        "plant-too-dark",
        Protects.Build,
        "the light of a day at the leaves of a plant is below its good band: it should live, greener and "
            + "longer",
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

        foreach (
            var plant in light.Plants.Where(p =>
                p.Verdict is LightVerdict.TooDark or LightVerdict.PerhapsDark
            )
        )
        {
            yield return Rule.Found(
                Severity.Note,
                $"{PlantWords.Light(light, plant)}. {PlantWords.InTheDark(plant)}"
                    + ModelError.Words(plant.Verdict == LightVerdict.PerhapsDark),
                (plant.Daily.Value, plant.Band!.Value.Low),
                PlantWords.Brighter(n, light, plant),
                PlantWords.Control(n, plant)
            );
        }
    }
}
