using System.Globalization;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Forecasting.Climate;
using Litterfall.Judging.Rules;
using Litterfall.Quantities.Stocking;

namespace Litterfall.Judging.Animals;

/// <summary>The warmest hour is warmer than the species should have it.</summary>
internal static class RoomTooHot
{
    public static readonly Rule Rule = new(
        "room-too-hot",
        Protects.Animal,
        "the warmest hour of the room is above what the species should avoid",
        Judge
    )
    {
        Needs = Stage.Shape,
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        var day = RoomHours.WarmestOf(n.Design);
        if (day is null)
        {
            yield break;
        }

        foreach (var species in StockedSpecies.Of(n.Design))
        {
            var avoid = species.Species.AvoidAbove ?? species.Species.WarmestDay;
            if (avoid is null || day.Warmest.Si <= avoid.Si + 1e-9)
            {
                continue;
            }

            bool isNear = ModelError.IsWarmthNear(day.Warmest.Si - avoid.Si);
            yield return Rule.Found(
                isNear ? Severity.Note : Severity.Caution,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"The warmest hour {day.Name} reaches {day.Warmest.Value:0.#} °C; {species.Species.Name} "
                        + $"should not have more than {avoid.Value:0.#} °C.{HeatWords.Lamps(day, n.Design)}"
                ) + ModelError.Words(isNear),
                (day.Warmest, avoid),
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"Cool the room by {day.Warmest.Si - avoid.Si:0.#} K at its warmest, and more for the "
                        + $"lamps; or take a species that tolerates it."
                ),
                HeatWords.Where(day, n.Design)
            );
        }
    }
}
