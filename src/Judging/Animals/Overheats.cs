using System.Globalization;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Forecasting.Climate;
using Litterfall.Judging.Rules;
using Litterfall.Physics;
using Litterfall.Quantities.Stocking;

namespace Litterfall.Judging.Animals;

/// <summary>Too long above the temperature animals bear for hours (<see cref="HeatLimits"/>).</summary>
public static class Overheats
{
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
            $"more than {Longest.Value:0} minutes a day above {HeatLimits.Alarm.Value:0.#} °C, or above the "
        )
            + FormattableString.Invariant(
                $"species' critical maximum less {HeatLimits.Margin.Value:0.#} K if "
            )
            + "lower, but never inside its own day band; in the room or, lamps included, in the box",
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
            var limit = HeatLimits.Stress(species.Species);
            var day = days.MaxBy(d => d.HoursAbove(limit).Si);
            var minutes = day?.HoursAbove(limit);
            var box = Seasons.Worst(n, d => d.HoursAbove(limit.Si - Constants.ZeroCelsiusKelvin));
            if (
                box is not null
                && Unit.Hour.ToSiValue(box.Value.Value) > Math.Max(minutes?.Si ?? 0, Longest.Si)
            )
            {
                yield return InBox(n, species, limit, box.Value.Season, box.Value.Value);
            }
            else if (day is not null && minutes is not null && minutes.Si > Longest.Si + 1e-6)
            {
                yield return Found(n.Design, species, limit, (day, minutes));
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
                $"With its lamps the box is above {limit.Value:0.#} °C for {Long(60 * hours)} a day "
                    + $"{season.Name}, more than {Longest.Value:0} minutes, and reaches "
                    + $"{season.Days.Celsius.Most:0.#} °C: heat stress for {species.Species.Name}. "
            )
                + HeatLimits.Kind(species.Species)
                + Lethal(species, Unit.Celsius.ToSiValue(season.Days.Celsius.Most)),
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
            Controls.Room(n.Design.Design, season.Name)
        );

    /// <summary>"40 minutes"; past two hours "about 20 hours".</summary>
    private static string Long(double minutes) =>
        minutes < 2 * MinutesPerHour
            ? string.Create(CultureInfo.InvariantCulture, $"{minutes:0} minutes")
            : string.Create(CultureInfo.InvariantCulture, $"about {minutes / MinutesPerHour:0} hours");

    private const double MinutesPerHour = 60;

    /// <summary>Said only where a measured limit is reached.</summary>
    private static string Lethal(StockedSpecies species, double kelvin)
    {
        var most = HeatLimits.Lethal(species.Species);
        return most is null || kelvin < most.Si
            ? ""
            : string.Create(
                CultureInfo.InvariantCulture,
                $" Its measured critical maximum of {most.Value:0.#} °C is reached, at "
                    + $"which animals in short trials no longer controlled their movements: it may die."
            );
    }

    private static Finding Found(
        CheckedDesign design,
        StockedSpecies species,
        Figure limit,
        (RoomHours Day, Figure Time) of
    )
    {
        var (day, time) = of;
        return Rule.Found(
            Severity.Stop,
            string.Create(
                CultureInfo.InvariantCulture,
                $"It is above {limit.Value:0.#} °C for {Long(time.Value)} a day {day.Name}, more than "
                    + $"{Longest.Value:0} minutes: heat stress for {species.Species.Name}. "
            )
                + HeatLimits.Kind(species.Species)
                + Lethal(species, day.Warmest.Si)
                + HeatWords.Lamps(day, design),
            (time, Longest),
            string.Create(
                CultureInfo.InvariantCulture,
                $"Keep it at {limit.Value:0.#} °C or cooler: {day.Warmest.Si - limit.Si:0.#} K less at its "
                    + $"warmest, and more for the lamps. No animals until then."
            ),
            HeatWords.Where(day, design)
        );
    }
}
