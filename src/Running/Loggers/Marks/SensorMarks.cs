using Litterfall.Domain.Tanks;

namespace Litterfall.Running.Loggers.Marks;

/// <summary>
/// Finds readings that are no evidence: outside the sensor's range, flat at its upper end, the same value
/// for longer than air can stand still, or wandering off from what hangs beside it. Nothing is deleted.
/// The limits are our own, from common practice; no source.
/// </summary>
public static class SensorMarks
{
    private const double WetPercent = 99.9;
    private const double FullPercent = 100.0;
    private const double MostPercent = 104.5;
    private const double ColdestCelsius = -40.0;
    private const double WarmestCelsius = 85.0;
    private const double LeastPressure = 300.0;
    private const double MostPressure = 1100.0;
    private const double MovedKelvin = 1.5;
    private const double MovedPercent = 8.0;
    private const int TypicalTimes = 5;
    private const int LeastRun = 12;
    private static readonly long WetTicks = TimeSpan.FromHours(2).Ticks;
    private static readonly long LongRun = TimeSpan.FromHours(6).Ticks;
    private static readonly long Day = TimeSpan.TicksPerDay;

    /// <summary>A run of one value: first reading, one after the last.</summary>
    private readonly record struct Run(int From, int To)
    {
        public int Count => To - From;
    }

    /// <summary>Marks the channels of one logger.</summary>
    public static void Find(IReadOnlyList<Channel> channels)
    {
        foreach (var channel in channels)
        {
            MarkRange(channel);
            MarkWet(channel);
        }

        foreach (var channel in channels)
        {
            MarkStuck(channel, channels);
        }

        Drifts.Find(channels);
    }

    private static void MarkRange(Channel channel)
    {
        var (least, most) = channel.Quantity switch
        {
            LogQuantity.Temperature or LogQuantity.DewPoint => (ColdestCelsius, WarmestCelsius),
            LogQuantity.Humidity => (double.Epsilon, MostPercent),
            LogQuantity.Pressure => (LeastPressure, MostPressure),
            LogQuantity.Light => (0.0, double.MaxValue),
            _ => (double.MinValue, double.MaxValue),
        };
        for (var i = 0; i < channel.Values.Length; i++)
        {
            if (channel.Values[i] < least || channel.Values[i] > most)
            {
                channel.Marks[i] |= LogMarks.OutOfRange;
            }
        }
    }

    /// <summary>A humidity sensor reads over 100 % only when it is wet, and stands at its end for
    /// hours.</summary>
    private static void MarkWet(Channel channel)
    {
        if (channel.Quantity != LogQuantity.Humidity)
        {
            return;
        }

        var start = -1;
        for (var i = 0; i <= channel.Values.Length; i++)
        {
            var isWet =
                i < channel.Values.Length
                && channel.Values[i] >= WetPercent
                && (channel.Marks[i] & LogMarks.OutOfRange) == LogMarks.None;
            if (isWet)
            {
                start = start < 0 ? i : start;
                channel.Marks[i] |= channel.Values[i] > FullPercent ? LogMarks.Saturated : LogMarks.None;
            }
            else if (start >= 0)
            {
                if (channel.Ticks[i - 1] - channel.Ticks[start] >= WetTicks)
                {
                    channel.Mark(start, i, LogMarks.Saturated);
                }

                start = -1;
            }
        }
    }

    private static void MarkStuck(Channel channel, IReadOnlyList<Channel> all)
    {
        if (channel.Quantity is LogQuantity.Light or LogQuantity.Other)
        {
            // Dark stays dark, and a battery may keep its voltage.
            return;
        }

        var runs = Runs(channel);
        var counts = runs.Where(r => Length(channel, r) < LongRun).Select(r => r.Count).Order().ToList();
        var typical = counts.Count == 0 ? 1 : counts[(counts.Count - 1) * 95 / 100];
        foreach (var run in runs)
        {
            var length = Length(channel, run);
            if (run.Count < LeastRun || length < LongRun || run.Count < TypicalTimes * typical)
            {
                continue;
            }

            var isWet =
                channel.Quantity == LogQuantity.Humidity && channel.Values[run.From] >= WetPercent - 0.4;
            var isMoving =
                !isWet
                && all.Any(c => c != channel && c.Values.Length == channel.Values.Length && Moves(c, run));
            if (length >= Day || isMoving)
            {
                channel.Mark(run.From, run.To, LogMarks.Stuck);
            }
        }
    }

    private static long Length(Channel channel, Run run) =>
        channel.Ticks[run.To - 1] - channel.Ticks[run.From];

    private static List<Run> Runs(Channel channel)
    {
        var runs = new List<Run>();
        var from = 0;
        for (var i = 1; i <= channel.Values.Length; i++)
        {
            if (i < channel.Values.Length && channel.Values[i].Equals(channel.Values[from]))
            {
                continue;
            }

            if (!double.IsNaN(channel.Values[from]))
            {
                runs.Add(new(from, i));
            }

            from = i;
        }

        return runs;
    }

    private static bool Moves(Channel other, Run run)
    {
        var (least, most) = (double.MaxValue, double.MinValue);
        for (var i = run.From; i < run.To; i++)
        {
            if (other.Marks[i] == LogMarks.None && !double.IsNaN(other.Values[i]))
            {
                least = Math.Min(least, other.Values[i]);
                most = Math.Max(most, other.Values[i]);
            }
        }

        return most - least
            >= other.Quantity switch
            {
                LogQuantity.Temperature => MovedKelvin,
                LogQuantity.Humidity => MovedPercent,
                _ => double.MaxValue,
            };
    }
}
