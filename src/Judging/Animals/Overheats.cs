using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Forecasting.Climate;
using Litterfall.Judging.Rules;
using Litterfall.Physics;
using Litterfall.Quantities.Stocking;

namespace Litterfall.Judging.Animals;

/// <summary>
/// Too long above the temperature animals bear for hours: 28 °C, or the critical maximum less 5 K if that is
/// lower.
/// </summary>
public static class Overheats
{
    private const double GeneralCelsius = 28;

    private static readonly Figure General = Figure.Given(
        FormattableString.Invariant($"general heat limit of {GeneralCelsius:0.#} °C"),
        Unit.Celsius.ToSiValue(GeneralCelsius),
        Unit.Celsius,
        new Citation(
            "keeper-practice",
            "recalled: alarm at 28 C for more than 30 minutes",
            Provenance.Recalled
        )
    );

    private static readonly Figure Margin = Figure.Given(
        "margin below the critical maximum",
        5,
        Unit.Kelvin,
        new Citation(
            "keeper-practice",
            "recalled: sustained limit for hours is the critical maximum less 5 K",
            Provenance.Recalled
        )
    );

    private static readonly Figure Longest = Figure.Given(
        "longest time above it",
        Unit.Minute.ToSiValue(30),
        Unit.Minute,
        new Citation(
            "keeper-practice",
            "recalled: alarm at 28 C for more than 30 minutes",
            Provenance.Recalled
        )
    );

    /// <summary>The rule.</summary>
    public static readonly Rule Rule = new(
        "overheats",
        Protects.Animal,
        FormattableString.Invariant(
            $"more than {Longest.Value:0} minutes a day above {General.Value:0.#} °C, or above the species' "
        )
            + FormattableString.Invariant($"critical maximum less {Margin.Value:0.#} K if lower, in ")
            + "the room or, lamps included, in the box",
        Judge
    )
    {
        Needs = Stage.WaterAndAir,
        Levers = LeverReach.Air,
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        var days = RoomHours.Of(n.Design);
        foreach (var species in StockedSpecies.Of(n.Design))
        {
            var limit = Limit(species);
            var day = days.MaxBy(d => d.HoursAbove(limit).Si);
            var minutes = day?.HoursAbove(limit);
            var box = Seasons.Worst(n, d => d.HoursAbove(limit.Si - Constants.ZeroCelsiusKelvin));
            if (box is { } found && Unit.Hour.ToSiValue(found.Value) > Math.Max(minutes?.Si ?? 0, Longest.Si))
            {
                yield return InBox(n, species, limit, found.Season, found.Value);
            }
            else if (day is not null && minutes is not null && minutes.Si > Longest.Si + 1e-6)
            {
                yield return Found(species, limit, day, minutes);
            }
        }
    }

    private static Finding InBox(
        DesignNumbers n,
        StockedSpecies species,
        Figure limit,
        ClimateSeason season,
        double hours
    ) =>
        Rule.Found(
            Severity.Stop,
            string.Create(
                CultureInfo.InvariantCulture,
                $"With its lamps the box is above {limit.Value:0.#} °C for {60 * hours:0} minutes a day "
                    + $"{season.Name}, more than 30, and reaches {season.Days.Celsius.Most:0.#} °C: "
                    + $"{species.Species.Name} would die of heat.{Band(species, limit)}"
            ),
            (
                Seasons
                    .Hours(n, season, $"time a day above {limit.Name}", hours)
                    .As("time a day above it", Unit.Minute),
                Longest
            ),
            string.Create(
                CultureInfo.InvariantCulture,
                $"Keep the box at {limit.Value:0.#} °C or cooler: "
                    + $"{season.Days.Celsius.Most - limit.Value:0.#} K less at "
                    + $"its warmest, by a cooler room or less lamp. No animals until then."
            ),
            HeatWords.Room
        );

    private static string Band(StockedSpecies species, Figure limit) =>
        species.Species.WarmestDay is { } top && limit.Si < top.Si
            ? string.Create(
                CultureInfo.InvariantCulture,
                $" That is below the top of the species' own day band, {top.Value:0.#} °C: the measured "
                    + $"heat limit is stricter than practice."
            )
            : "";

    private static Finding Found(StockedSpecies species, Figure limit, RoomHours day, Figure time)
    {
        return Rule.Found(
            Severity.Stop,
            string.Create(
                CultureInfo.InvariantCulture,
                $"It is above {limit.Value:0.#} °C for {time.Value:0} minutes a day {day.Name}, more than "
                    + $"30: {species.Species.Name} would die of "
                    + $"heat.{Band(species, limit)}{HeatWords.Lamps(day)}"
            ),
            (time, Longest),
            string.Create(
                CultureInfo.InvariantCulture,
                $"Keep it at {limit.Value:0.#} °C or cooler: {day.Warmest.Si - limit.Si:0.#} K less at its "
                    + $"warmest, and more for the lamps. No animals until then."
            ),
            HeatWords.Where(day)
        );
    }

    /// <summary>Temperature animals bear for hours: 28 °C, or the critical maximum less 5 K.</summary>
    public static Figure Limit(StockedSpecies species) =>
        species.Species.CriticalMaximum is { } critical
            ? Limit(critical).As($"heat limit of {species.Species.Name}", Unit.Celsius)
            : General;

    /// <summary>The same from a critical maximum.</summary>
    public static Figure Limit(Figure critical) =>
        Figure.Min(General, (critical - Margin).As("sustained heat limit", Unit.Celsius));
}
