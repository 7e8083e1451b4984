using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Floor;

/// <summary>Light aggregate under thin soil floats when the reservoir fills.</summary>
internal static class FloatingAggregate
{
    public static readonly Rule Rule = new(
        "aggregate-floats",
        Protects.Build,
        "rising water lifts the aggregate with the soil on it before the layer is full",
        Judge
    )
    {
        Needs = Stage.WaterAndAir,
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (n.Float is not { Lifts: true } f)
        {
            yield break;
        }

        yield return Rule.Found(
            Severity.Caution,
            string.Create(
                CultureInfo.InvariantCulture,
                $"Water {f.LiftHeight.Value:0.#} cm deep lifts the drainage aggregate and the soil on "
                    + $"it; the layer is {f.Depth.Value:0.#} cm deep{When(n, f.LiftHeight)}."
            ),
            (f.LiftHeight, f.Depth),
            "Put more soil on it, take a heavier aggregate, or drain below that level.",
            new Control(Controls.Soil(n.Design.Design), "floor.drainage")
        );
    }

    /// <summary>The day the forecast level gets there; nothing where it does not or there is none.</summary>
    private static string When(DesignNumbers n, Figure lift)
    {
        foreach (var day in n.Water.Forecast?.Days ?? [])
        {
            if (day.LevelMeters >= lift.Si)
            {
                return string.Create(
                    CultureInfo.InvariantCulture,
                    $", and the water gets there on day {day.Day:0}"
                );
            }
        }

        return "";
    }
}
