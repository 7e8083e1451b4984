using System.Globalization;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Forecasting.Coefficients;
using Litterfall.Judging.Crew;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Water;

/// <summary>Springtails stop breeding where the soil below the leaves dries.</summary>
internal static class SoilTooDryForCrew
{
    public static readonly Rule Rule = new(
        "soil-too-dry-for-crew",
        Protects.Build,
        "springtails are seeded, and in the forecast the soil a centimeter down dries past "
            + FormattableString.Invariant($"{WaterPolicy.MostSuction.Value:0.#} kPa of suction"),
        Judge
    )
    {
        Needs = Stage.WaterAndAir,
        Levers = LeverReach.Floor,
        Fix = (_, design) => FixEdit.MistingPump(design.Document),
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (
            n.Water is not { MostSuction: { } suction, Forecast: { } forecast }
            || suction.Si <= WaterPolicy.MostSuction.Si
            || !Crews.Of(n).Any(c => c.Species.Taxon?.Text == "springtail")
        )
        {
            yield break;
        }

        var limit = -WaterPolicy.MostSuction.Si / WaterPolicy.PascalsPerMeter;
        var from = forecast.Days.First(d => d.CrewHeadMeters < limit).Day;
        var balance = n.Water.Balance;
        yield return Rule.Found(
            Severity.Caution,
            string.Create(
                CultureInfo.InvariantCulture,
                $"From day {from:0} the soil under the leaves dries past "
                    + $"{WaterPolicy.MostSuction.Value:0} kPa "
                    + $"of suction, and springtails stop breeding: ventilation removes "
                    + $"{balance.Vented.Value:0} mL a day, misting adds {balance.Misted!.Value:0} mL."
            ),
            (suction, WaterPolicy.MostSuction),
            string.Create(
                CultureInfo.InvariantCulture,
                $"Mist {balance.Vented.Value:0} mL a day, or let less air through."
            ),
            Controls.Mist(n.Design.Design)
        );
    }
}
