using System.Globalization;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Forecasting.Light;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Light;

/// <summary>A plant with so little light that it may slowly die.</summary>
internal static class PlantBelowCompensation
{
    public static readonly Rule Rule = new(
        "plant-below-compensation",
        Protects.Build,
        "the light of a day at the leaves of a plant is below what its kind needs to live",
        Judge
    )
    {
        Needs = Stage.Light,
        Fix = (finding, design) => LampFix.Brighter(UpToGood(finding, design), design.Document),
    };

    /// <summary>Asks for the good band at once: a plant that only just lives is no fix.</summary>
    private static Finding UpToGood(Finding finding, CheckedDesign design) =>
        FixEdit.Index(finding) is { } i
        && design.Find<PlantEntry>(FormattableString.Invariant($"plants[{i}].plant"))?.LeastDailyLight
            is { } good
            ? finding with
            {
                Limit = good,
            }
            : finding;

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (n.Light is not { } light)
        {
            yield break;
        }

        foreach (var plant in light.Plants.Where(p => p.Verdict == LightVerdict.BelowSurvival))
        {
            yield return Rule.Found(
                Severity.Caution,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{PlantWords.Light(light, plant)}. Below {plant.Survival.Value:0.0#} mol/m²/d plants "
                        + $"of its kind may lose leaves and not last a year."
                ),
                (plant.Daily.Value, plant.Survival),
                PlantWords.Brighter(n, light, plant),
                PlantWords.Control(n, plant)
            );
        }
    }
}
