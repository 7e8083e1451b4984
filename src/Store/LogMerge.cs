using System.Collections.Immutable;
using Litterfall.Domain.Tanks;

namespace Litterfall.Store;

/// <summary>Puts readings of one channel together.</summary>
internal static class LogMerge
{
    /// <summary>Both in the order of time; what stands in both with the same value stands once.</summary>
    /// <param name="there">What is kept.</param>
    /// <param name="more">What comes.</param>
    /// <returns>All, and how many of those that came stood there.</returns>
    public static (LogSeries Merged, int Known) Join(LogSeries there, LogSeries more)
    {
        var ticks = ImmutableArray.CreateBuilder<long>(there.Count + more.Count);
        var values = ImmutableArray.CreateBuilder<double>(there.Count + more.Count);
        var marks = ImmutableArray.CreateBuilder<LogMarks>(there.Count + more.Count);
        var (a, b, known) = (0, 0, 0);
        while (a < there.Count || b < more.Count)
        {
            var isOld = b >= more.Count || (a < there.Count && there.Ticks[a] <= more.Ticks[b]);
            var (from, i) = isOld ? (there, a++) : (more, b++);
            if (!isOld && StandsIn(there, a, from.Ticks[i], from.Values[i]))
            {
                known++;
                continue;
            }

            ticks.Add(from.Ticks[i]);
            values.Add(from.Values[i]);
            marks.Add(from.Marks[i]);
        }

        return (
            more with
            {
                Ticks = ticks.DrainToImmutable(),
                Values = values.DrainToImmutable(),
                Marks = marks.DrainToImmutable(),
            },
            known
        );
    }

    /// <summary>Readings between two times, both included.</summary>
    public static LogSeries Cut(LogSeries series, long from, long to)
    {
        var first = 0;
        while (first < series.Count && series.Ticks[first] < from)
        {
            first++;
        }

        var last = series.Count;
        while (last > first && series.Ticks[last - 1] > to)
        {
            last--;
        }

        return first == 0 && last == series.Count
            ? series
            : series with
            {
                Ticks = series.Ticks[first..last],
                Values = series.Values[first..last],
                Marks = series.Marks[first..last],
            };
    }

    /// <summary>Without rows in which the channel had no value.</summary>
    public static LogSeries Present(LogSeries series)
    {
        if (!series.Values.Any(double.IsNaN))
        {
            return series;
        }

        var rows = Enumerable.Range(0, series.Count).Where(i => !double.IsNaN(series.Values[i])).ToList();
        return series with
        {
            Ticks = [.. rows.Select(i => series.Ticks[i])],
            Values = [.. rows.Select(i => series.Values[i])],
            Marks = [.. rows.Select(i => series.Marks[i])],
        };
    }

    /// <summary>Readings of the same time lie just before a place in the order.</summary>
    private static bool StandsIn(LogSeries there, int before, long ticks, double value)
    {
        for (var i = before - 1; i >= 0 && there.Ticks[i] == ticks; i--)
        {
            if (there.Values[i].Equals(value))
            {
                return true;
            }
        }

        return false;
    }
}
