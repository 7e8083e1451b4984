using System.Globalization;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Forecasting.Coefficients;
using Litterfall.Judging.Rules;
using Litterfall.Quantities.Measures;

namespace Litterfall.Judging.Water;

/// <summary>Roots and crew drown where the pores of the soil stand full.</summary>
internal static class SoilWithoutAir
{
    public static readonly Rule Rule = new(
        "soil-without-air",
        Protects.Build,
        FormattableString.Invariant(
            $"in the forecast the soil at root depth holds less than {WaterPolicy.LeastAir.Value:0.#} % air "
        ) + "on some day of the first year",
        Judge
    )
    {
        Needs = Stage.WaterAndAir,
        Levers = LeverReach.Floor,
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (
            n.Water is not { LeastAir: { } least, AirlessDays: { Si: > 0 } days, Forecast: { } forecast }
            || least.Si >= WaterPolicy.LeastAir.Si
        )
        {
            yield break;
        }

        var from = forecast.Days.First(d => d.LeastAir < WaterPolicy.LeastAir.Si).Day;
        yield return Rule.Found(
            Severity.Caution,
            string.Create(
                CultureInfo.InvariantCulture,
                $"From day {from:0} the soil at root depth holds as little as {least.Value:0.#} % air, on "
                    + $"{NumberText.Count((int)Math.Round(days.Value), "day", "days")} of the "
                    + $"first year; roots want {WaterPolicy.LeastAir.Value:0} %."
            ),
            (least, WaterPolicy.LeastAir),
            n.Design.Design.Floor.Drainage is null
                ? "Mist less, let more air through, take a coarser mix, or lay a drainage layer with a drain."
                : "Drain earlier, mist less, let more air through, or take a coarser mix.",
            n.Design.Design.Misting is null
                ? "floor.soil.recipe"
                : new Control(Controls.Mist(n.Design.Design), "floor.soil")
        );
    }
}
