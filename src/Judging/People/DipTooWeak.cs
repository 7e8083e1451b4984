using System.Globalization;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;
using Litterfall.Quantities.Hygiene;

namespace Litterfall.Judging.People;

/// <summary>A dip below the published dose may leave the disease alive.</summary>
internal static class DipTooWeak
{
    public static readonly Rule Rule = new(
        "dip-too-weak",
        Protects.Animal,
        "the plant dip is weaker than the dose that killed the frog chytrid in "
            + FormattableString.Invariant($"{PlantDip.ChytridSeconds:0} s in trials"),
        Judge
    )
    {
        Needs = Stage.Quantities,
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (n.Dip is { } dip && dip.Strength.Si < PlantDip.ChytridDose.Si - 1e-9)
        {
            var milliliters = PlantDip.ChytridDose.Si / dip.Label.Si * dip.Bath.Si * 1e6;
            yield return Rule.Found(
                Severity.Caution,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"The dip holds {dip.Strength.Value:0.###} % of sodium hypochlorite; in "
                        + $"trials {PlantDip.ChytridDose.Value:0.##} % killed the frog chytrid in "
                        + $"{PlantDip.ChytridSeconds:0} s."
                ),
                (dip.Strength, PlantDip.ChytridDose),
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"Take a fresh bleach of "
                        + $"{PlantDip.ChytridDose.Si / dip.Strength.Si * dip.Label.Value:0.#} % or "
                        + $"more; this one would need {milliliters:0} mL in {dip.Bath.Value:0.#} L."
                ),
                "hygiene.bleach"
            );
        }
    }
}
