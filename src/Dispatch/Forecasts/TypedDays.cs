using System.Collections.Immutable;
using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Lists;

namespace Litterfall.Dispatch.Forecasts;

/// <summary>
/// Makes hours of a forecast that was typed as the coldest and the warmest of each day. Air over land is
/// coldest about sunrise and warmest in the middle of the afternoon; between them half a cosine is our own
/// choice, as it meets both typed figures. No hour of a day lies outside what was typed for that day: where a
/// frosty day meets a mild one, the air changes within the hour at midnight.
/// </summary>
public static class TypedDays
{
    /// <summary>Hour on the wall at which a day is coldest.</summary>
    public const double ColdestHour = 6;

    /// <summary>Hour on the wall at which a day is warmest.</summary>
    public const double WarmestHour = 15;

    private const int HoursOfDay = 24;

    /// <summary>Hours of typed days; days that are left out stay gaps.</summary>
    /// <param name="days">The days.</param>
    /// <param name="clock">Clock of the place.</param>
    public static Seq<ForecastHour> Hours(IEnumerable<TypedForecastDay> days, PlaceClock clock)
    {
        ImmutableSortedDictionary<DateOnly, TypedForecastDay> all = days.GroupBy(d => d.Day)
            .ToImmutableSortedDictionary(g => g.Key, g => g.Last());
        var hours = new SortedDictionary<DateTime, double>();
        foreach (var (day, typed) in all)
        {
            var before = all.GetValueOrDefault(day.AddDays(-1))?.HighCelsius ?? typed.HighCelsius;
            var after = all.GetValueOrDefault(day.AddDays(1))?.LowCelsius ?? typed.LowCelsius;
            for (var hour = 0; hour <= HoursOfDay; hour++)
            {
                var air = Celsius(hour, typed, before, after);
                hours[clock.Utc(day, hour)] = Math.Max(typed.LowCelsius, Math.Min(air, typed.HighCelsius));
            }
        }

        return [.. hours.Select(h => new ForecastHour(h.Key, h.Value))];
    }

    private static double Celsius(double hour, TypedForecastDay day, double before, double after) =>
        hour < ColdestHour
            ? Between(
                before,
                day.LowCelsius,
                (hour + HoursOfDay - WarmestHour) / (HoursOfDay + ColdestHour - WarmestHour)
            )
        : hour <= WarmestHour
            ? Between(day.LowCelsius, day.HighCelsius, (hour - ColdestHour) / (WarmestHour - ColdestHour))
        : Between(day.HighCelsius, after, (hour - WarmestHour) / (HoursOfDay + ColdestHour - WarmestHour));

    private static double Between(double from, double to, double share) =>
        from + (0.5 * (to - from) * (1 - Math.Cos(Math.PI * share)));
}
