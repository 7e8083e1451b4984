using System.Collections.Immutable;
using Litterfall.Domain.Dispatch;

namespace Litterfall.Dispatch.Forecasts;

/// <summary>The hours of a forecast, joined by straight lines where they are close enough.</summary>
public sealed class HourLine
{
    /// <summary>Longest time between two hours that may be bridged.</summary>
    public static readonly TimeSpan LongestGap = TimeSpan.FromHours(3);

    /// <summary>Air outside this range is no weather, °C: both world records lie within.</summary>
    public const double Likely = 60;

    /// <summary>Coldest that is taken, °C.</summary>
    public const double Coldest = -90;

    private readonly ImmutableArray<ForecastHour> hours;

    /// <summary>Makes one.</summary>
    /// <param name="forecast">The forecast; its hours need not be in order.</param>
    public HourLine(PlaceForecast forecast) =>
        hours = [.. forecast.Hours.GroupBy(h => h.At).Select(g => g.Last()).OrderBy(h => h.At)];

    /// <summary>First hour; null for none.</summary>
    public DateTime? From => hours.IsEmpty ? null : hours[0].At;

    /// <summary>Last hour; null for none.</summary>
    public DateTime? To => hours.IsEmpty ? null : hours[^1].At;

    /// <summary>An hour that is no weather; null where all are.</summary>
    /// <param name="from">Start of the span, UTC.</param>
    /// <param name="to">Its end, UTC.</param>
    public ForecastHour? Unlikely(DateTime from, DateTime to) =>
        hours.FirstOrDefault(h =>
            h.At >= from - LongestGap
            && h.At <= to + LongestGap
            && h.Celsius is not (>= Coldest and <= Likely)
        );

    /// <summary>The first time without a forecast in a span; null where all of it is known.</summary>
    /// <param name="from">Start of the span, UTC.</param>
    /// <param name="to">Its end, UTC.</param>
    public (DateTime From, DateTime To)? Gap(DateTime from, DateTime to)
    {
        var known = DateTime.MinValue;
        foreach (var hour in hours)
        {
            if (hour.At > from && hour.At - known > LongestGap)
            {
                return known >= to ? null : (known < from ? from : known, hour.At);
            }

            known = hour.At;
        }

        return known >= to ? null : (known < from ? from : known, DateTime.MaxValue);
    }

    /// <summary>Air at a time within the forecast, °C.</summary>
    /// <param name="at">The time, UTC.</param>
    public double At(DateTime at)
    {
        var next = Next(at);
        if (next == 0 || next == hours.Length)
        {
            return hours[next == 0 ? 0 : next - 1].Celsius;
        }

        var (a, b) = (hours[next - 1], hours[next]);
        return a.Celsius + ((b.Celsius - a.Celsius) * ((at - a.At) / (b.At - a.At)));
    }

    /// <summary>Coldest and warmest of a span, °C.</summary>
    /// <param name="from">Start of the span, UTC.</param>
    /// <param name="to">Its end, UTC.</param>
    public (double Low, double High) Range(DateTime from, DateTime to)
    {
        var (low, high) = Before(from, to);
        return (Math.Min(low, At(to)), Math.Max(high, At(to)));
    }

    /// <summary>Coldest and warmest of the hours from a time on and before another, °C.</summary>
    /// <param name="from">Start of the span, UTC.</param>
    /// <param name="end">Where the next begins, UTC.</param>
    public (double Low, double High) Before(DateTime from, DateTime end)
    {
        var (low, high) = (At(from), At(from));
        for (var i = Next(from); i < hours.Length && hours[i].At < end; i++)
        {
            low = Math.Min(low, hours[i].Celsius);
            high = Math.Max(high, hours[i].Celsius);
        }

        return (low, high);
    }

    /// <summary>Number of the first hour after a time.</summary>
    private int Next(DateTime at)
    {
        var (low, high) = (0, hours.Length);
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = hours[middle].At <= at ? (middle + 1, high) : (low, middle);
        }

        return low;
    }
}
