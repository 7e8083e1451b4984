using System.Collections.Immutable;
using Litterfall.Domain.Figures;
using Litterfall.Forecasting.Climate;
using Litterfall.Forecasting.Coefficients;
using Litterfall.Forecasting.Water;
using Litterfall.Physics;
using Litterfall.Physics.Crew;

namespace Litterfall.Forecasting.Life;

/// <summary>
/// A year of the ground where the crew lives: warmth from the coupled run of air and floor, damp and air of
/// its pores from the forecast of the floor.
/// </summary>
internal static class FloorGround
{
    private const int Days = 365;
    private const double DaySeconds = 86400.0;
    private const int Readings = 8;

    /// <summary>The ground of a design, from planting on.</summary>
    /// <param name="n">The design.</param>
    /// <param name="planting">First day.</param>
    /// <param name="with">Coefficients.</param>
    public static ImmutableArray<GroundDay> Of(LifeInputs n, DateOnly planting, LifeCoefficients with)
    {
        double[] celsius = Celsius(n, planting, with);
        var floor = n.Water.Forecast;
        var days = ImmutableArray.CreateBuilder<GroundDay>(Days);
        for (int day = 0; day < Days; day++)
        {
            days.Add(
                floor is { Days.Length: > 0 }
                    ? Damp(floor, day, celsius[day], with)
                    : new GroundDay(
                        celsius[day],
                        with.GroundHead.Use(),
                        with.GroundFull.UseSi(),
                        with.GroundAir.UseSi()
                    )
            );
        }

        return days.MoveToImmutable();
    }

    /// <summary>What the warmth and damp rest on.</summary>
    /// <param name="n">The design.</param>
    public static IEnumerable<Figure?> Inputs(LifeInputs n) =>
        [n.Climate?.AirMean.Value, n.Water.MostSuction, n.Water.LeastAir];

    private static GroundDay Damp(WaterForecast floor, int day, double celsius, LifeCoefficients with)
    {
        var at = floor.Days[Math.Min(day, floor.Days.Length - 1)];
        double pores = floor.Floor.Soil.SaturatedWaterContent;
        return new GroundDay(
            celsius,
            Math.Min(0.0, at.CrewHeadMeters * (WaterPolicy.PascalsPerMeter / 1000.0)),
            pores > 0.0 ? Math.Clamp(1.0 - (at.CrewAir / pores), 0.0, 1.0) : with.GroundFull.UseSi(),
            at.CrewAir
        );
    }

    /// <summary>
    /// Mean temperature of every day, °C: as computed hour by hour for the weeks after planting; then the
    /// room of the date and how much warmer the ground is than its room in the season nearest.
    /// </summary>
    private static double[] Celsius(LifeInputs n, DateOnly planting, LifeCoefficients with)
    {
        var celsius = new double[Days];
        var seasons = n.Climate?.Computed?.Seasons ?? [];
        if (seasons.IsEmpty)
        {
            Array.Fill(
                celsius,
                n.Climate is { } held
                    ? held.AirMean.Value.Si - Constants.ZeroCelsiusKelvin
                    : with.GroundWarmth.Use()
            );
            return celsius;
        }

        var room = RoomClimate.Of(n.Design, planting, ClimateChange.None);
        var warmer = seasons
            .Select(s => (s.First, s.Days.Hours.Average(h => h.GroundCelsius - h.RoomCelsius)))
            .ToArray();
        for (int day = 0; day < Days; day++)
        {
            var date = planting.AddDays(day);
            double mean = 0.0;
            for (int i = 0; i < Readings; i++)
            {
                mean += room.At((day + ((i + 0.5) / Readings)) * DaySeconds).Celsius / Readings;
            }

            celsius[day] = mean + warmer.MinBy(s => Apart(s.First, date)).Item2;
        }

        foreach (var hours in seasons[0].Days.Hours.GroupBy(h => (int)((h.Hour - 0.5) / 24.0)))
        {
            celsius[hours.Key] = hours.Average(h => h.GroundCelsius);
        }

        return celsius;
    }

    /// <summary>Days between two dates around the year.</summary>
    private static int Apart(DateOnly a, DateOnly b)
    {
        int between = Math.Abs(a.DayOfYear - b.DayOfYear);
        return Math.Min(between, Days - between);
    }
}
