using System.Globalization;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Forecasting.Life;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Crew;

/// <summary>The floor never gets warm enough for the crew to breed.</summary>
internal static class CrewTooCool
{
    public static readonly Rule Rule = new(
        "crew-too-cool",
        Protects.Build,
        "the floor's warmest day of the year, as a mean of its hours, stays below the temperature from which "
            + "a crew animal breeds",
        Judge
    )
    {
        Needs = Stage.Life,
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (n.Life is not { } life)
        {
            yield break;
        }

        foreach (var crew in Crews.Of(n))
        {
            if (crew.Species.BreedsFrom is not { } from || life.WarmestGround.Si > from.Si)
            {
                continue;
            }

            yield return Rule.Found(
                Severity.Caution,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"The floor gets no warmer than {life.WarmestGround.Value:0.#} °C as the mean of a day; "
                        + $"{crew.Species.Name} breeds from {from.Value:0.#} °C."
                ),
                (life.WarmestGround, from),
                "Warm the room, or take a crew animal of cooler places.",
                $"{crew.Path}.animal",
                LifeFigures.Engine
            );
        }
    }
}
