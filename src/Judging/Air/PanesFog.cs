using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Forecasting.Climate;
using Litterfall.Judging.Rules;
using Litterfall.Physics.Air;

namespace Litterfall.Judging.Air;

/// <summary>A pane is white with dew for hours: which, when, and how often.</summary>
internal static class PanesFog
{
    private static readonly Figure Noticed = Figure.Choice(
        "longest time of dew a day",
        2,
        Unit.Hour,
        "a customer calls when the front is white longer than breakfast"
    );

    public static readonly Rule Rule = new(
        "panes-fog",
        Protects.Build,
        FormattableString.Invariant(
            $"dew of {1000 * HeadspaceState.VisibleKilogramsPerSquareMeter:0.##} g/m² or more stands on some "
        )
            + "pane "
            + FormattableString.Invariant(
                $"for more than {Noticed.Value:0} hours a day in some season or at "
            )
            + "weekends; a "
            + FormattableString.Invariant($"caution from {LongHours:0} hours on"),
        Judge
    )
    {
        Needs = Stage.WaterAndAir,
        Levers = LeverReach.Air,
    };

    private const double LongHours = 8;

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (Seasons.Worst(n, Most) is not { } worst || worst.Value <= Noticed.Value)
        {
            yield break;
        }

        var (season, hours) = worst;
        var days = season.Days;
        var pane = days.Fog.MaxBy(f => f.Hours).Pane;
        var isWeekly = Math.Abs(days.FogByDay.Weekend - days.FogByDay.Weekday) > 1;
        var when = isWeekly
            ? string.Create(
                CultureInfo.InvariantCulture,
                $"{days.FogByDay.Weekend:0.#} hours a day at weekends and "
                    + $"{days.FogByDay.Weekday:0.#} on weekdays"
            )
            : string.Create(CultureInfo.InvariantCulture, $"{hours:0.#} hours a day");
        yield return Rule.Found(
            hours >= LongHours ? Severity.Caution : Severity.Note,
            $"The {pane} pane fogs for {when} {season.Name}{Clock(days)}."
                + (
                    days.Fog.Count(f => f.Hours > 0.5 * hours) > 1
                        ? " Others fog as well: "
                            + string.Join(
                                ", ",
                                days.Fog.Where(f => f.Pane != pane && f.Hours > 0.5)
                                    .Select(f =>
                                        string.Create(
                                            CultureInfo.InvariantCulture,
                                            $"{f.Pane} {f.Hours:0.#} h"
                                        )
                                    )
                            )
                            + "."
                        : ""
                ),
            (Seasons.Hours(n, season, $"dew on the {pane} pane a day", hours), Noticed),
            "Let more air through low in front, mist earlier in the day, keep the room as warm at "
                + "night and at "
                + "weekends as by day, or set that pane away from the cold wall.",
            Controls.Vents(n.Design.Design)
        );
    }

    /// <summary>Hours of dew on the worst pane on the worse of weekdays and weekends.</summary>
    private static double Most(ClimateDays days) =>
        Math.Max(
            days.Fog.Select(f => f.Hours).DefaultIfEmpty(0).Max(),
            Math.Max(days.FogByDay.Weekend, days.FogByDay.Weekday)
        );

    /// <summary>From when to when, where it is not all day.</summary>
    private static string Clock(ClimateDays days)
    {
        var most = days.FogByHour.DefaultIfEmpty(0).Max();
        var isOn = days.FogByHour.Select(share => share > 0.5 * most).ToList();
        if (most <= 0 || isOn.All(on => on))
        {
            return "";
        }

        var first = Enumerable.Range(0, 24).First(h => isOn[h] && !isOn[(h + 23) % 24]);
        var last = Enumerable.Range(0, 24).Select(k => (first + k) % 24).TakeWhile(h => isOn[h]).Last();
        return string.Create(
            CultureInfo.InvariantCulture,
            $", mostly from {first:00}:00 to {(last + 1) % 24:00}:00"
        );
    }
}
