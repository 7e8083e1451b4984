using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Forecasting.Climate;
using Litterfall.Judging.Rules;
using Litterfall.Physics;
using Litterfall.Quantities.Stocking;

namespace Litterfall.Judging.Air;

/// <summary>The room is cool enough, but its lamps warm the box above what the species should have.</summary>
internal static class BoxTooWarm
{
    private static readonly Figure Longest = Figure.Choice(
        "longest time above it",
        1,
        Unit.Hour,
        "an hour over its band is a nuisance, not yet a danger"
    );

    public static readonly Rule Rule = new(
        "box-too-warm",
        Protects.Animal,
        FormattableString.Invariant(
            $"more than {Longest.Value:0.#} h a day the air of the box, lamps included, is above what the "
        ) + "species should avoid, in a room that is not",
        Judge
    )
    {
        Needs = Stage.WaterAndAir,
        Levers = LeverReach.Air,
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        foreach (var species in StockedSpecies.Of(n.Design))
        {
            var avoid = species.Species.AvoidAbove ?? species.Species.WarmestDay;
            if (
                avoid is null
                || RoomHours.WarmestOf(n.Design) is { } room && room.Warmest.Si > avoid.Si + 1e-9
                || Seasons.Worst(n, d => d.HoursAbove(avoid.Si - Constants.ZeroCelsiusKelvin))
                    is not { } worst
                || worst.Value <= Longest.Value
            )
            {
                continue;
            }

            var (season, hours) = worst;
            bool isNear = ModelError.IsWarmthNear(season.Days.Celsius.Most - avoid.Value);
            yield return Rule.Found(
                isNear ? Severity.Note : Severity.Caution,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"With its lamps the box is above {avoid.Value:0.#} °C for {hours:0.#} hours a day "
                        + $"{season.Name} and reaches {season.Days.Celsius.Most:0.#} °C; "
                        + $"{species.Species.Name} should avoid that."
                ) + ModelError.Words(isNear),
                (Seasons.Hours(n, season, $"time a day above {avoid.Name}", hours), Longest),
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"Take {season.Days.Celsius.Most - (avoid.Value):0.#} K away at the warmest "
                        + $"hour: fewer lamp "
                        + $"hours or watts, lamps higher over the lid, or a cooler room."
                ),
                Controls.LampHeat(n.Design.Design, season.Name)
            );
        }
    }
}
