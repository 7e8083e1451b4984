using System.Globalization;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Forecasting.Light;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Light;

/// <summary>A plant with more light than it bears.</summary>
internal static class PlantTooBright
{
    public static readonly Rule Rule = new(
        "plant-too-bright",
        Protects.Build,
        "the light of a day at the leaves of a plant is above its color band; a caution where the "
            + "uncertainty does not reach it",
        Judge
    )
    {
        Needs = Stage.Light,
        Fix = (finding, design) => LampFix.Dimmer(finding, design.Document),
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (n.Light is not { } light)
        {
            yield break;
        }

        foreach (
            var plant in light.Plants.Where(p =>
                p.Verdict is LightVerdict.TooBright or LightVerdict.PerhapsBright
            )
        )
        {
            var most = plant.Most!;
            yield return Rule.Found(
                plant.Verdict == LightVerdict.TooBright ? Severity.Caution : Severity.Note,
                PlantWords.Light(light, plant)
                    + ". Leaves may bleach or burn."
                    + ModelError.Words(plant.Verdict == LightVerdict.PerhapsBright),
                (plant.Daily.Value, most),
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"Set it lower or into shade, dim the lamps to "
                        + $"{Math.Floor(100.0 * most.Si / plant.Daily.Value.Si):0} %, or take "
                        + $"a plant that tolerates more."
                ),
                PlantWords.Control(n, plant)
            );
        }
    }
}
