using Litterfall.Domain.Tanks;

namespace Litterfall.Running.Loggers.Marks;

/// <summary>
/// A sensor that wanders off over weeks: against the others of its kind in the same file, or, for humidity
/// alone, a steady slope of the daily middle that the temperature does not explain. Limits are our own.
/// </summary>
internal static class Drifts
{
    private const int LeastDays = 14;
    private const double LeastFit = 0.85;
    private const double OwnFit = 0.9;
    private const double Kelvin = 1.0;
    private const double Percent = 5.0;
    private const double OwnPercent = 8.0;
    private const double ExplainingKelvin = 2.0;

    /// <summary>A straight line through the middles of the days.</summary>
    private readonly record struct Trend(long FirstDay, double Start, double PerDay, double Fit, int Days)
    {
        public double Change => PerDay * (Days - 1);
    }

    public static void Find(IReadOnlyList<Channel> channels)
    {
        foreach (var group in channels.GroupBy(c => c.Quantity))
        {
            if (group.Key is not (LogQuantity.Temperature or LogQuantity.Humidity))
            {
                continue;
            }

            var members = group.ToList();
            var medians = members.ConvertAll(Medians);
            for (var i = 0; i < members.Count; i++)
            {
                if (members.Count >= 3)
                {
                    var others = medians.Where((_, k) => k != i).ToList();
                    Mark(members[i], Line(Against(medians[i], others)), LeastFit, Limit(group.Key));
                }
                else if (group.Key == LogQuantity.Humidity && !IsExplained(channels))
                {
                    Mark(members[i], Line(medians[i]), OwnFit, OwnPercent);
                }
            }
        }
    }

    private static double Limit(LogQuantity quantity) =>
        quantity == LogQuantity.Temperature ? Kelvin : Percent;

    private static bool IsExplained(IReadOnlyList<Channel> channels) =>
        channels
            .Where(c => c.Quantity == LogQuantity.Temperature)
            .Any(c => Line(Medians(c)) is { } warm && Math.Abs(warm.Change) >= ExplainingKelvin);

    private static SortedDictionary<long, double> Medians(Channel channel)
    {
        var medians = new SortedDictionary<long, double>();
        var day = new List<double>();
        for (var i = 0; i <= channel.Values.Length; i++)
        {
            var isEnd =
                i == channel.Values.Length
                || (
                    i > 0
                    && channel.Ticks[i] / TimeSpan.TicksPerDay != channel.Ticks[i - 1] / TimeSpan.TicksPerDay
                );
            if (isEnd && day.Count > 0)
            {
                day.Sort();
                medians[channel.Ticks[i - 1] / TimeSpan.TicksPerDay] = day[day.Count / 2];
                day.Clear();
            }

            if (
                i < channel.Values.Length
                && channel.Marks[i] == LogMarks.None
                && !double.IsNaN(channel.Values[i])
            )
            {
                day.Add(channel.Values[i]);
            }
        }

        return medians;
    }

    private static SortedDictionary<long, double> Against(
        SortedDictionary<long, double> own,
        List<SortedDictionary<long, double>> others
    )
    {
        var left = new SortedDictionary<long, double>();
        foreach (var (day, value) in own)
        {
            var beside = others.Where(o => o.ContainsKey(day)).Select(o => o[day]).Order().ToList();
            if (beside.Count > 0)
            {
                left[day] = value - beside[beside.Count / 2];
            }
        }

        return left;
    }

    private static Trend? Line(SortedDictionary<long, double> days)
    {
        if (days.Count < LeastDays)
        {
            return null;
        }

        var first = days.Keys.First();
        var x = days.Keys.Select(d => (double)(d - first)).ToArray();
        var y = days.Values.ToArray();
        var (meanX, meanY) = (x.Average(), y.Average());
        double xx = 0.0,
            xy = 0.0,
            yy = 0.0;
        for (var i = 0; i < x.Length; i++)
        {
            xx += (x[i] - meanX) * (x[i] - meanX);
            xy += (x[i] - meanX) * (y[i] - meanY);
            yy += (y[i] - meanY) * (y[i] - meanY);
        }

        var slope = xy / xx;
        return yy == 0.0
            ? null
            : new(first, meanY - (slope * meanX), slope, xy * xy / (xx * yy), (int)x[^1] + 1);
    }

    /// <summary>Marks from the day on which the line is further off than the limit.</summary>
    private static void Mark(Channel channel, Trend? trend, double fit, double limit)
    {
        if (trend is not { } line || line.Fit < fit || Math.Abs(line.Change) < limit)
        {
            return;
        }

        var day = line.FirstDay + (long)Math.Ceiling(limit / Math.Abs(line.PerDay));
        var from = Array.FindIndex(channel.Ticks, t => t / TimeSpan.TicksPerDay >= day);
        if (from >= 0)
        {
            channel.Mark(from, channel.Ticks.Length, LogMarks.Drift);
        }
    }
}
