using System.Globalization;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Forecasting.Climate;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Crew;

/// <summary>Eggs of the crew do not hatch at the warmest hour.</summary>
internal static class CrewTooWarm
{
    public static readonly Rule Rule = new(
        "crew-too-warm",
        Protects.Build,
        "the warmest hour of the room reaches the temperature at which a crew animal stops breeding",
        Judge
    )
    {
        Needs = Stage.Shape,
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (RoomHours.WarmestInside(n.Design) is not { } day)
        {
            yield break;
        }

        foreach (var crew in Crews.Of(n))
        {
            var limit = crew.Species.HatchStopsAt ?? crew.Species.GrowthZeroAt;
            if (limit is null || day.Warmest.Si < limit.Si - 1e-9)
            {
                continue;
            }

            yield return Rule.Found(
                Severity.Caution,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"The warmest hour {day.Name} reaches {day.Warmest.Value:0.#} °C; {crew.Species.Name} "
                        + $"stops breeding at {limit.Value:0.#} °C."
                ),
                (day.Warmest, limit),
                "Cool the room, or take a crew animal of warmer places (the tropical springtail breeds up to "
                    + "about 30 °C).",
                crew.Path
            );
        }
    }
}
