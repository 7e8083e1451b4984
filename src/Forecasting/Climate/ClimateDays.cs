using System.Collections.Immutable;
using Litterfall.Physics.Coupling;

namespace Litterfall.Forecasting.Climate;

/// <summary>Water of basins in a day, kg; all 0 without.</summary>
/// <param name="Evaporated">Given to the air.</param>
/// <param name="Caught">Mist that falls on it.</param>
/// <param name="ToppedUp">Filled up by hand.</param>
/// <param name="Overflow">Run over to the ground.</param>
public readonly record struct BasinDay(double Evaporated, double Caught, double ToppedUp, double Overflow);

/// <summary>
/// What a run of a box shows over its settled days, in SI but for °C; hours are a day's mean.
/// </summary>
public sealed record ClimateDays
{
    private const double HotRefugeHours = 24;

    /// <summary>Least, mean and most of the air's temperature, °C.</summary>
    public required (double Least, double Mean, double Most) Celsius { get; init; }

    /// <summary>Least, mean and most relative humidity, 0 to 1.</summary>
    public required (double Least, double Mean, double Most) Humidity { get; init; }

    /// <summary>Largest and mean vapor pressure deficit at full hours, Pa.</summary>
    public required (double Mean, double Most) Deficit { get; init; }

    /// <summary>Mean air changes an hour.</summary>
    public required double AirChanges { get; init; }

    /// <summary>Misted a day, kg.</summary>
    public required double Misted { get; init; }

    /// <summary>Vented a day, kg.</summary>
    public required double Vented { get; init; }

    /// <summary>Evaporated a day by ground and leaves, kg.</summary>
    public required double Evaporated { get; init; }

    /// <summary>What basins give and take a day, kg.</summary>
    public required BasinDay Basins { get; init; }

    /// <summary>Hours of dew a day on each pane.</summary>
    public required ImmutableArray<(string Pane, double Hours)> Fog { get; init; }

    /// <summary>Hours a day with a film, dew or mist, on each pane.</summary>
    public required ImmutableArray<(string Pane, double Hours)> Wet { get; init; }

    /// <summary>Hours of dew a day on the worst pane at weekends and on weekdays.</summary>
    public required (double Weekend, double Weekday) FogByDay { get; init; }

    /// <summary>Dew on the worst pane by hour of the day, share of that hour.</summary>
    public required ImmutableArray<double> FogByHour { get; init; }

    /// <summary>Hours a day in which leaves are wet.</summary>
    public required double LeafWet { get; init; }

    /// <summary>Smallest distance of a pane to the dew point, K; negative while it fogs.</summary>
    public required double DewMargin { get; init; }

    /// <summary>Means of the hours of the day, °C and humidity, from 00:00.</summary>
    public required ImmutableArray<(double Celsius, double Humidity)> ByHour { get; init; }

    /// <summary>The hours themselves.</summary>
    public required ImmutableArray<SimulationHour> Hours { get; init; }

    /// <summary>All hours of the run, opening with its start and its settling days.</summary>
    public required ImmutableArray<SimulationHour> Course { get; init; }

    /// <summary>Drains and other things that happened.</summary>
    public required ImmutableArray<SimulationEvent> Events { get; init; }

    /// <summary>Hours a day with the air above a temperature, °C.</summary>
    public double HoursAbove(double celsius) =>
        Math.Min(HotRefugeHours, 24.0 * Hours.Count(h => h.AirMean > celsius) / Hours.Length);

    /// <summary>Hours a day with the air below a temperature, °C.</summary>
    public double HoursBelow(double celsius) => 24.0 * Hours.Count(h => h.AirMean < celsius) / Hours.Length;

    /// <summary>Hours a day with the air drier than a relative humidity.</summary>
    public double HoursDrier(double humidity) =>
        24.0 * Hours.Count(h => h.HumidityMean < humidity) / Hours.Length;

    /// <summary>What a run shows after its settling days; whole days only.</summary>
    /// <param name="run">The box.</param>
    /// <param name="result">Its run.</param>
    /// <param name="settle">Days left out at the start.</param>
    public static ClimateDays? Of(BoxRun run, SimulationResult result, int settle)
    {
        var hours = result.Hours.Skip(1 + (24 * settle)).ToImmutableArray();
        if (hours.Length < 24)
        {
            return null;
        }

        var days = hours.Length / 24.0;
        var panes = run.Surfaces.Panes;
        double Day(Func<SimulationHour, double> of) => hours.Sum(of) / days;
        var fog = panes.Select(p => (p.Name, Day(h => h.Fogged[p.Place]))).ToImmutableArray();
        var worst = panes.IsEmpty ? -1 : panes[IndexOfLargest(fog)].Place;
        return new ClimateDays
        {
            Celsius = (
                hours.Min(h => h.AirRange.Least),
                hours.Average(h => h.AirMean),
                hours.Max(h => h.AirRange.Most)
            ),
            Humidity = (
                hours.Min(h => h.HumidityRange.Least),
                hours.Average(h => h.HumidityMean),
                hours.Max(h => h.HumidityRange.Most)
            ),
            Deficit = (hours.Average(h => h.DeficitPascals), hours.Max(h => h.DeficitPascals)),
            AirChanges = hours.Average(h => h.AirChanges),
            Misted = Day(h => h.MistedKilograms),
            Vented = Day(h => h.VentedKilograms),
            Evaporated = Day(h => h.EvaporatedKilograms),
            Basins = new(
                Day(h => h.OpenWaterKilograms),
                Day(h => h.CaughtKilograms),
                Day(h => h.ToppedUpKilograms),
                Day(h => h.OverflowKilograms)
            ),
            Fog = fog,
            Wet = [.. panes.Select(p => (p.Name, Day(h => h.Wet[p.Place])))],
            FogByDay = (FogOn(run, hours, worst, true), FogOn(run, hours, worst, false)),
            FogByHour = [.. ByClock(hours, h => worst < 0 ? 0 : h.Fogged[worst])],
            LeafWet = run.Surfaces.Leaves is { } leaf ? Day(h => h.Wet[leaf]) : 0,
            DewMargin = panes.IsEmpty ? 0 : hours.Min(h => panes.Min(p => h.DewMarginKelvin[p.Place])),
            ByHour = [.. ByClock(hours, h => h.AirMean).Zip(ByClock(hours, h => h.HumidityMean))],
            Hours = hours,
            Course = result.Hours,
            Events = result.Events,
        };
    }

    /// <summary>Hours of dew a day on a pane, at weekends or on weekdays.</summary>
    private static double FogOn(BoxRun run, ImmutableArray<SimulationHour> hours, int pane, bool weekend)
    {
        bool IsWeekend(SimulationHour h) =>
            run.First.AddDays((int)((h.Hour - 0.5) / 24)).DayOfWeek is DayOfWeek.Saturday or DayOfWeek.Sunday;
        var some = hours.Where(h => IsWeekend(h) == weekend).ToList();
        return pane < 0 || some.Count == 0 ? 0 : 24 * some.Average(h => h.Fogged[pane]);
    }

    /// <summary>Mean of each hour of the day, from the one that begins at 00:00.</summary>
    private static IEnumerable<double> ByClock(
        ImmutableArray<SimulationHour> hours,
        Func<SimulationHour, double> of
    ) =>
        Enumerable
            .Range(0, 24)
            .Select(c => hours.Where(h => ((int)Math.Round(h.Hour) - 1) % 24 == c).Average(of));

    private static int IndexOfLargest(ImmutableArray<(string, double Hours)> fog)
    {
        var at = 0;
        for (var i = 1; i < fog.Length; i++)
        {
            at = fog[i].Hours > fog[at].Hours ? i : at;
        }

        return at;
    }
}
