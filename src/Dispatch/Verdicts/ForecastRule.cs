using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Dispatch.Defaults;
using Litterfall.Dispatch.Forecasts;
using Litterfall.Dispatch.Regions;
using Litterfall.Dispatch.Routes;
using Litterfall.Domain.Dispatch;

namespace Litterfall.Dispatch.Verdicts;

/// <summary>Whether the forecasts tell enough of a journey; nothing is drawn on beyond them.</summary>
internal static class ForecastRule
{
    private static readonly ImmutableArray<RouteNode> Nodes =
    [
        RouteNode.Origin,
        RouteNode.Hub,
        RouteNode.Destination,
    ];

    /// <summary>The newest forecast of each place.</summary>
    public static ImmutableDictionary<RouteNode, PlaceForecast> Newest(WeekTask task) =>
        task
            .Forecasts.GroupBy(f => f.Node)
            .ToImmutableDictionary(g => g.Key, g => g.OrderBy(f => f.TakenAt).Last());

    /// <summary>What is missing or cannot be; none where all is known.</summary>
    public static IEnumerable<ShipReason> Reasons(
        WeekTask task,
        RouteTimes times,
        IReadOnlyDictionary<RouteNode, PlaceForecast> forecasts,
        double lateChance
    )
    {
        foreach (var node in Nodes)
        {
            if (!forecasts.TryGetValue(node, out var forecast))
            {
                yield return Hold(
                    "no-forecast",
                    node,
                    $"There is no forecast for {VerdictWords.Place(node)}.",
                    $"Type or import the forecast for {VerdictWords.Place(node)}."
                );
            }
            else if (One(task, times, forecast, lateChance) is { } reason)
            {
                yield return reason;
            }
        }
    }

    /// <summary>Coldest and warmest of each place on the days on which the parcel is there.</summary>
    public static ImmutableArray<NodeRange> Ranges(
        RouteTimes times,
        IReadOnlyDictionary<RouteNode, PlaceForecast> forecasts
    ) => [.. Nodes.Select(n => Range(times, forecasts[n]))];

    private static NodeRange Range(RouteTimes times, PlaceForecast forecast)
    {
        var clock = PlaceClock.Find(forecast.Zone)!;
        var (from, to) = times.At(forecast.Node);
        // The guide and the bands count the forecast of the day, not of the hour.
        var (first, last) = forecast.Node switch
        {
            RouteNode.Origin => (times.Days.Leaves, times.Days.Leaves),
            RouteNode.Hub => (clock.Day(from), clock.Day(to)),
            _ => (times.Days.Arrives, times.Days.Arrives),
        };
        var line = new HourLine(forecast);
        var day = line.Before(Later(clock.Utc(first, 0), line.From!.Value), clock.Utc(last, 24));
        var stay = line.Range(from, to);
        return new(
            forecast.Node,
            forecast.Place,
            Math.Round(Math.Min(day.Low, stay.Low), 2),
            Math.Round(Math.Max(day.High, stay.High), 2)
        );
    }

    private static DateTime Later(DateTime a, DateTime b) => a > b ? a : b;

    private static ShipReason? One(WeekTask task, RouteTimes times, PlaceForecast forecast, double lateChance)
    {
        if (PlaceClock.Find(forecast.Zone) is null)
        {
            return Hold(
                "forecast-zone",
                forecast.Node,
                $"The forecast of {Named(forecast)} names the unknown time zone “{forecast.Zone}”.",
                "Choose the time zone of the place."
            );
        }

        if (Age(task, forecast) is { } old)
        {
            return old;
        }

        var (from, to) = times.At(forecast.Node);
        to = forecast.Node == RouteNode.Origin || lateChance <= 0 ? to : to.AddHours(times.LateHours);
        var line = new HourLine(forecast);
        if (line.Unlikely(from, to) is { } unlikely)
        {
            return Hold(
                "forecast-out-of-range",
                forecast.Node,
                $"The forecast of {Named(forecast)} says {VerdictWords.Celsius(unlikely.Celsius)} at "
                    + $"{Told(forecast, unlikely.At)}: that is no weather.",
                "Look at the unit and the column of the forecast, and import it again."
            ) with
            {
                Measured = unlikely.Celsius,
                Limit = unlikely.Celsius > 0 ? HourLine.Likely : HourLine.Coldest,
            };
        }

        return line.Gap(from, to) is { } gap ? Missing(forecast, gap, line, to) : null;
    }

    private static ShipReason? Age(WeekTask task, PlaceForecast forecast)
    {
        var hours = (task.Now - forecast.TakenAt).TotalHours;
        if (hours < -1)
        {
            return Hold(
                "forecast-from-the-future",
                forecast.Node,
                $"The forecast of {Named(forecast)} is dated after now.",
                "Take the forecast again, or set the clock right."
            );
        }

        var most = DispatchDefaults.LongestForecastAgeHours;
        return hours <= most
            ? null
            : Hold(
                "forecast-too-old",
                forecast.Node,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"The forecast of {Named(forecast)} is {hours:0} hours old; {most:0} is the most."
                ),
                "Take the forecast again."
            ) with
            {
                Measured = Math.Round(hours, 1),
                Limit = most,
            };
    }

    private static ShipReason Missing(
        PlaceForecast forecast,
        (DateTime From, DateTime To) gap,
        HourLine line,
        DateTime needed
    )
    {
        if (line.From is null)
        {
            return Hold(
                "no-forecast",
                forecast.Node,
                $"The forecast of {Named(forecast)} has no hours.",
                $"Type or import the forecast for {VerdictWords.Place(forecast.Node)}."
            );
        }

        return gap.To == DateTime.MaxValue
            ? Hold(
                "forecast-too-short",
                forecast.Node,
                $"The forecast of {Named(forecast)} ends at {Told(forecast, line.To!.Value)}; the parcel can "
                    + $"be on its way until {Told(forecast, needed)}, one day of delay included.",
                "Take a forecast that reaches further, or judge again when it does."
            )
            : Hold(
                "forecast-gap",
                forecast.Node,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"The forecast of {Named(forecast)} has nothing from {Told(forecast, gap.From)} to "
                ) + $"{Told(forecast, gap.To)}, while the parcel is there.",
                "Import the forecast again, or type these days."
            );
    }

    private static string Named(PlaceForecast forecast) =>
        forecast.Place.Length > 0 ? forecast.Place : VerdictWords.Place(forecast.Node);

    private static string Told(PlaceForecast forecast, DateTime utc)
    {
        var clock = PlaceClock.Find(forecast.Zone)!;
        return $"{CalendarWords.Day(clock.Day(utc))} {CalendarWords.Hour(clock.Hour(utc))}";
    }

    private static ShipReason Hold(string slug, RouteNode node, string text, string cure) =>
        new()
        {
            Slug = slug,
            Rule = ShipRule.Knowledge,
            Verdict = ShipVerdict.Hold,
            Text = text,
            Cure = cure,
            Node = node,
            IsProtective = true,
        };
}
