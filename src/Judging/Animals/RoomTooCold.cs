using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Forecasting.Climate;
using Litterfall.Judging.Rules;
using Litterfall.Quantities.Stocking;

namespace Litterfall.Judging.Animals;

/// <summary>The coolest hour is colder than the species should have it.</summary>
internal static class RoomTooCold
{
    private static readonly Figure Margin = Figure.Choice(
        "margin below the night band",
        2,
        Unit.Kelvin,
        "a night band is what the animal likes, not what it bears"
    );

    public static readonly Rule Rule = new(
        "room-too-cold",
        Protects.Animal,
        "the coolest hour of the room is below what the species should avoid, else "
            + FormattableString.Invariant($"{Margin.Value:0.#} K below its night band"),
        Judge
    )
    {
        Needs = Stage.Shape,
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        var day = RoomHours.CoolestOf(n.Design);
        if (day is null)
        {
            yield break;
        }

        foreach (var species in StockedSpecies.Of(n.Design))
        {
            var limit = Limit(species);
            if (limit is null || day.Coolest.Si >= limit.Si - 1e-9)
            {
                continue;
            }

            bool isNear = ModelError.IsWarmthNear(limit.Si - day.Coolest.Si);
            yield return Rule.Found(
                isNear ? Severity.Note : Severity.Caution,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"The coolest hour {day.Name} falls to {day.Coolest.Value:0.#} °C; "
                        + $"{species.Species.Name} should not have less than {limit.Value:0.#} °C."
                ) + ModelError.Words(isNear),
                (day.Coolest, limit),
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"Heat the room by {limit.Si - day.Coolest.Si:0.#} K at its coolest, or heat the box "
                        + $"with a thermostat."
                ),
                HeatWords.Where(day, n.Design)
            );
        }
    }

    /// <summary>Coldest that the species should have.</summary>
    internal static Figure? Limit(StockedSpecies species)
    {
        var night = species.Species.CoolestNight;
        return species.Species.AvoidBelow
            ?? (
                night is null
                    ? null
                    : (night - Margin).As($"coolest night of {species.Species.Name}", Unit.Celsius)
            );
    }
}
