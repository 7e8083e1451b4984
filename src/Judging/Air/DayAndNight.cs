using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Forecasting.Climate;
using Litterfall.Forecasting.Coefficients;
using Litterfall.Judging.Rules;
using Litterfall.Physics;
using Litterfall.Quantities.Stocking;

namespace Litterfall.Judging.Air;

/// <summary>The mean of the lit or of the dark hours lies outside the band of the species.</summary>
internal static class DayAndNight
{
    public static readonly Rule ByDay = new(
        "day-off-band",
        Protects.Animal,
        FormattableString.Invariant($"the mean of the lit hours lies more than {ModelError.Kelvins:0.#} K ")
            + "outside the day band of the species; "
            + FormattableString.Invariant($"more than {Far:0.#} K is a caution"),
        n => Judge(n, true)
    )
    {
        Needs = Stage.WaterAndAir,
    };

    public static readonly Rule ByNight = new(
        "night-off-band",
        Protects.Animal,
        FormattableString.Invariant($"the mean of the dark hours lies more than {ModelError.Kelvins:0.#} K ")
            + "outside the night band of the species; "
            + FormattableString.Invariant($"more than {Far:0.#} K is a caution"),
        n => Judge(n, false)
    )
    {
        Needs = Stage.WaterAndAir,
    };

    /// <summary>Off by more than the band is wide for most species' half: own choice.</summary>
    private const double Far = 2.0;

    private static IEnumerable<Finding> Judge(DesignNumbers n, bool isDay)
    {
        // A room that nobody entered is a stand-in: nothing is judged by it so closely.
        if (n.Climate?.Computed is not { } climate || n.Design.Design.Room is null)
        {
            yield break;
        }

        var rule = isDay ? ByDay : ByNight;
        foreach (var species in StockedSpecies.Of(n.Design))
        {
            if (
                (isDay ? species.Species.CoolestDay : species.Species.CoolestNight) is not { } low
                || (isDay ? species.Species.WarmestDay : species.Species.WarmestNight) is not { } high
            )
            {
                continue;
            }

            var worst = climate
                .Seasons.Select(s => (Season: s, Mean: Mean(n, s, isDay)))
                .Where(s => s.Mean is not null)
                .Select(s => (s.Season, Mean: s.Mean!.Value, Off: Off(s.Mean!.Value, low, high)))
                .OrderByDescending(s => Math.Abs(s.Off))
                .FirstOrDefault();
            if (!ModelError.IsWarmthNear(worst.Off))
            {
                yield return Found(n, rule, (species, low, high), worst);
            }
        }
    }

    private static Finding Found(
        DesignNumbers n,
        Rule rule,
        (StockedSpecies Species, Figure Low, Figure High) band,
        (ClimateSeason Season, double Mean, double Off) worst
    )
    {
        string part = rule == ByDay ? "day" : "night";
        var limit = worst.Off > 0.0 ? band.High : band.Low;
        return rule.Found(
            Math.Abs(worst.Off) > Far ? Severity.Caution : Severity.Note,
            string.Create(
                CultureInfo.InvariantCulture,
                $"{Materials.Sentence(worst.Season.Name)} the box averages {worst.Mean:0.#} °C by {part}; "
                    + $"{band.Species.Species.Name} should have {band.Low.Value:0.#} to "
                    + $"{band.High.Value:0.#} °C."
            ),
            (
                Seasons.Number(
                    n,
                    worst.Season,
                    $"mean of the {(rule == ByDay ? "lit" : "dark")} hours",
                    worst.Mean + Constants.ZeroCelsiusKelvin,
                    Unit.Celsius
                ),
                limit
            ),
            Fix(n, rule == ByDay, worst.Off),
            worst.Off > 0.0 && rule == ByDay
                ? Controls.LampHeat(n.Design.Design, worst.Season.Name)
                : Controls.Room(n.Design.Design, worst.Season.Name)
        );
    }

    private static string Fix(DesignNumbers n, bool isDay, double off) =>
        off < 0.0 ? FormattableString.Invariant($"Warm the room by {-off:0.#} K, or the box by a thermostat.")
        : isDay && n.Design.Design.Lamps.Count > 0
            ? FormattableString.Invariant(
                $"Take {off:0.#} K away: fewer lamp watts, lamps higher over the lid, or a cooler room."
            )
        : isDay ? FormattableString.Invariant($"Cool the room by {off:0.#} K.")
        : FormattableString.Invariant($"Cool the room by {off:0.#} K at night: heating down, a window.");

    /// <summary>Distance outside a band, K: above it positive, below it negative, inside 0.</summary>
    private static double Off(double celsius, Figure low, Figure high) =>
        celsius > high.Value ? celsius - high.Value
        : celsius < low.Value ? celsius - low.Value
        : 0.0;

    private static double? Mean(DesignNumbers n, ClimateSeason season, bool isDay)
    {
        double[] hours =
        [
            .. season
                .Days.ByHour.Select((h, clock) => (h.Celsius, IsLit: IsLit(n, clock + 0.5)))
                .Where(h => h.IsLit == isDay)
                .Select(h => h.Celsius),
        ];
        return hours.Length == 0 ? null : hours.Average();
    }

    /// <summary>True while any lamp burns; without lamps in the hours these usually burn.</summary>
    private static bool IsLit(DesignNumbers n, double clock)
    {
        var lamps = n.Design.Design.Lamps;
        var with = ModelCoefficients.Of(n.Design).Headspace;
        var usual = (On: with.LampOn.UseSi(), Off: with.LampOff.UseSi());
        return lamps.Count == 0
            ? Within(usual.On, usual.Off)
            : lamps.Any(l =>
                Within(
                    l.On?.ToTimeSpan().TotalSeconds ?? usual.On,
                    l.Off?.ToTimeSpan().TotalSeconds ?? usual.Off
                )
            );

        bool Within(double on, double off)
        {
            double at = clock * 3600.0;
            return off > on ? at >= on && at < off : at >= on || at < off;
        }
    }
}
