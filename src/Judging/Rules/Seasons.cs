using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Forecasting.Climate;
using Litterfall.Forecasting.Floor;

namespace Litterfall.Judging.Rules;

/// <summary>What the rules on the air of the box have in common: the season in which it is worst.</summary>
internal static class Seasons
{
    /// <summary>The season in which a number is largest; null where the climate is not computed.</summary>
    public static (ClimateSeason Season, double Value)? Worst(
        DesignNumbers n,
        Func<ClimateDays, double> of
    ) =>
        n.Climate?.Computed is { } climate
            ? climate.Seasons.Select(s => (s, of(s.Days))).MaxBy(pair => pair.Item2)
            : null;

    /// <summary>A number of a season as a figure.</summary>
    public static Figure Number(DesignNumbers n, ClimateSeason season, string name, double si, Unit unit) =>
        SimulatedFigure.From(
            $"{name} {season.Name}",
            si,
            unit,
            $"coupled run of air and floor {season.Name}, lamps included, its settled days",
            n.Climate!.AirMean.Value.Inputs
        );

    /// <summary>Hours a day as a figure.</summary>
    public static Figure Hours(DesignNumbers n, ClimateSeason season, string name, double hours) =>
        Number(n, season, name, Unit.Hour.ToSiValue(hours), Unit.Hour);
}
