using System.Globalization;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;

namespace Litterfall.Judging.Animals;

/// <summary>
/// How warm animals may be for longer than half an hour. Three numbers with three sources stand behind it:
/// the top of
/// the band they are kept in, the alarm of the trade, and the critical maximum of short trials.
/// </summary>
public static class HeatLimits
{
    private const double AlarmCelsius = 28;

    /// <summary>The alarm of the trade, for animals nothing more is known of.</summary>
    public static Figure Alarm { get; } =
        Figure.Given(
            FormattableString.Invariant($"general heat alarm of {AlarmCelsius:0.#} °C"),
            Unit.Celsius.ToSiValue(AlarmCelsius),
            Unit.Celsius,
            new Citation(
                "keeper-practice",
                "recalled: alarm at 28 C for more than 30 minutes",
                Provenance.Recalled
            )
        );

    /// <summary>How far under the critical maximum hours are borne.</summary>
    public static Figure Margin { get; } =
        Figure.Given(
            "margin below the critical maximum",
            5,
            Unit.Kelvin,
            new Citation(
                "keeper-practice",
                "recalled: sustained limit for hours is the critical maximum less 5 K",
                Provenance.Recalled
            )
        );

    /// <summary>
    /// Above it for more than half an hour is heat stress, K: the alarm, or the critical maximum less the
    /// margin if
    /// that is lower; never less than the top of the species' own day band.
    /// </summary>
    /// <param name="species">The species.</param>
    public static Figure Stress(AnimalEntry species)
    {
        var critical = species.CriticalMaximum;
        var alarm = critical is not null
            ? Figure
                .Min(Alarm, (critical - Margin).As("critical maximum less the margin", Unit.Celsius))
                .As($"heat limit of {species.Name}", Unit.Celsius)
            : Alarm;
        foreach (var floor in new[] { species.WarmestDay, Chosen(species) })
        {
            if (floor is not null)
            {
                alarm = Figure.Max(alarm, floor).As($"heat limit of {species.Name}", Unit.Celsius);
            }
        }

        return alarm;
    }

    /// <summary>The temperature it chooses, where somebody measured that; else null.</summary>
    private static Figure? Chosen(AnimalEntry species) => Measured(species.Preferred);

    private static Figure? Measured(Figure? figure) =>
        figure?.Origin.Provenance is Provenance.Entered or Provenance.Measured or Provenance.Read
            ? figure
            : null;

    /// <summary>The critical maximum where somebody measured this species, K; else null.</summary>
    /// <param name="species">The species.</param>
    public static Figure? Lethal(AnimalEntry species) => Measured(species.CriticalMaximum);

    /// <summary>One sentence on what the limit rests on.</summary>
    /// <param name="species">The species.</param>
    public static string Kind(AnimalEntry species)
    {
        var limit = Stress(species);
        var chosen = Chosen(species);
        if (chosen is not null && limit.Si <= chosen.Si)
        {
            return Said($"{limit.Value:0.#} °C is the temperature it chooses ({Word(chosen)}).");
        }

        var top = species.WarmestDay;
        if (top is not null && limit.Si <= top.Si)
        {
            return Said($"{limit.Value:0.#} °C is the top of its day band ({Word(top)}).");
        }

        var critical = species.CriticalMaximum;
        return critical is not null && limit.Si < Alarm.Si
            ? Said($"{limit.Value:0.#} °C is {Margin.Value:0.#} K under its critical maximum, ")
                + Said($"{critical.Value:0.#} °C")
                + $" ({Word(critical)}); the margin is keeping practice, from memory."
            : Said($"{limit.Value:0.#} °C is the general alarm of keepers, from memory.");
    }

    /// <summary>What kind of number it is, in the words of findings.</summary>
    private static string Word(Figure figure) =>
        figure.Origin.Provenance switch
        {
            Provenance.Entered or Provenance.Measured => "your own",
            Provenance.Read when figure.Origin.Source != "keeper-practice" => "measured",
            Provenance.Recalled when figure.Origin.Source == "own-working-value" =>
                "a working value, not measured",
            Provenance.CommonPractice => "keeping practice",
            _ => "keeping practice, from memory",
        };

    private static string Said(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
