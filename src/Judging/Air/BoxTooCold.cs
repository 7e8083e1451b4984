using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Forecasting.Climate;
using Litterfall.Judging.Animals;
using Litterfall.Judging.Rules;
using Litterfall.Physics;
using Litterfall.Quantities.Stocking;

namespace Litterfall.Judging.Air;

/// <summary>
/// The box is colder than the species should have it, in a room that is not, or dangerously so.
/// </summary>
internal static class BoxTooCold
{
    private static readonly Figure Longest = Figure.Choice(
        "longest time below it",
        1,
        Unit.Hour,
        "an hour below its band is a nuisance, not yet a danger"
    );

    private static readonly Figure Torpor = Figure.Choice(
        FormattableString.Invariant($"longest time below {TorporCelsius:0.#} °C"),
        0.5,
        Unit.Hour,
        "from memory: frogs that grow torpid in the cold no longer feed; no measured bound was found"
    );

    public static readonly Rule Rule = new(
        "box-too-cold",
        Protects.Animal,
        FormattableString.Invariant(
            $"more than {Longest.Value:0.#} h a day the air of the box is below what the species should "
        )
            + FormattableString.Invariant(
                $"avoid in a room that is not, or more than {Torpor.Value:0.#} h below {TorporCelsius:0.#} °C"
            ),
        Judge
    )
    {
        Needs = Stage.WaterAndAir,
    };

    private const double TorporCelsius = 12;

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        foreach (var species in StockedSpecies.Of(n.Design))
        {
            if (Seasons.Worst(n, d => d.HoursBelow(TorporCelsius)) is { } cold && cold.Value > Torpor.Value)
            {
                yield return Found(n, species, (TorporCelsius, cold.Season, cold.Value), true);
                continue;
            }

            if (
                RoomTooCold.Limit(species) is not { } limit
                || RoomHours.CoolestOf(n.Design) is { } room && room.Coolest.Si < limit.Si - 1e-9
                || Seasons.Worst(n, d => d.HoursBelow(limit.Si - Constants.ZeroCelsiusKelvin))
                    is not { } worst
                || worst.Value <= Longest.Value
            )
            {
                continue;
            }

            yield return Found(n, species, (limit.Value, worst.Season, worst.Value), false);
        }
    }

    private static Finding Found(
        DesignNumbers n,
        StockedSpecies species,
        (double Celsius, ClimateSeason Season, double Hours) cold,
        bool isTorpor
    )
    {
        bool isNear = !isTorpor && ModelError.IsWarmthNear(cold.Celsius - cold.Season.Days.Celsius.Least);
        return Rule.Found(
            isTorpor ? Severity.Stop
                : isNear ? Severity.Note
                : Severity.Caution,
            string.Create(
                CultureInfo.InvariantCulture,
                $"The air of the box is below {cold.Celsius:0.#} °C for {cold.Hours:0.#} hours a day "
                    + $"{cold.Season.Name} and falls to {cold.Season.Days.Celsius.Least:0.#} °C; "
                    + $"{species.Species.Name} {(isTorpor ? "may grow torpid" : "should avoid that")}."
            ) + ModelError.Words(isNear),
            (
                Seasons.Hours(
                    n,
                    cold.Season,
                    string.Create(CultureInfo.InvariantCulture, $"time a day below {cold.Celsius:0.#} °C"),
                    cold.Hours
                ),
                isTorpor ? Torpor : Longest
            ),
            string.Create(
                CultureInfo.InvariantCulture,
                $"Heat the room or, by a thermostat, the box: "
                    + $"{cold.Celsius - cold.Season.Days.Celsius.Least:0.#} K "
                    + $"at its coolest."
            ),
            Controls.Room(n.Design.Design, cold.Season.Name)
        );
    }
}
