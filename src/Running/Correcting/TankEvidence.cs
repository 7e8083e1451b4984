using System.Collections.Immutable;
using Litterfall.Domain.Tanks;
using Litterfall.Forecasting.Climate;
using Litterfall.Running.Service;

namespace Litterfall.Running.Correcting;

/// <summary>What the log of a tank and its loggers say, as readings and as water poured in.</summary>
/// <param name="Readings">Readings by the clock of the room, in the order of time.</param>
/// <param name="Poured">Water that was poured in.</param>
public sealed record TankEvidence(ImmutableArray<TankReading> Readings, ImmutableArray<HandDraw> Poured)
{
    private const int LoggerDays = 14;
    private const int EveryHours = 6;

    /// <summary>The readings of a tank.</summary>
    /// <param name="lines">Lines of its log that count.</param>
    /// <param name="loggers">What its loggers recorded; marked readings are no evidence.</param>
    /// <param name="local">A time, UTC, by the clock of its room.</param>
    public static TankEvidence From(
        IEnumerable<CareEntry> lines,
        IReadOnlyList<LogSeries> loggers,
        Func<DateTime, DateTime> local
    )
    {
        var all = lines.OrderBy(l => l.At).ToList();
        var readings = CareReadings.From(all, local);
        return new(
            [.. readings.Concat(Logged(loggers, local)).OrderBy(r => r.At)],
            [
                .. all.Where(l => l is { Kind: CareKind.ToppedUp or CareKind.Misted, Amount: > 0 })
                    .Select(l => new HandDraw(local(l.At), -l.Amount!.Value / 1000)),
            ]
        );
    }

    /// <summary>
    /// The means of an hour, four a day of the last two weeks: more of them say the same once more.
    /// </summary>
    private static IEnumerable<TankReading> Logged(
        IReadOnlyList<LogSeries> loggers,
        Func<DateTime, DateTime> local
    )
    {
        var hours = new SortedDictionary<DateTime, (double? Celsius, double? Humidity)>();
        foreach (var series in loggers)
        {
            if (series.Quantity is not (LogQuantity.Temperature or LogQuantity.Humidity))
            {
                continue;
            }

            foreach (var (at, mean) in Hours(series, local))
            {
                var known = hours.GetValueOrDefault(at);
                hours[at] =
                    series.Quantity == LogQuantity.Temperature
                        ? known with
                        {
                            Celsius = known.Celsius ?? mean,
                        }
                        : known with
                        {
                            Humidity = known.Humidity ?? mean,
                        };
            }
        }

        var from = hours.Count == 0 ? DateTime.MinValue : hours.Keys.Last().AddDays(-LoggerDays);
        return hours
            .Where(h => h.Key > from)
            .Select(h => new TankReading
            {
                At = h.Key,
                Kind = ReadingKind.Air,
                Amount = h.Value.Celsius,
                HumidityPercent = h.Value.Humidity,
            });
    }

    private static IEnumerable<(DateTime At, double Mean)> Hours(
        LogSeries series,
        Func<DateTime, DateTime> local
    )
    {
        var sums = new SortedDictionary<DateTime, (double Sum, int Count)>();
        for (var i = 0; i < series.Count; i++)
        {
            if (
                !double.IsFinite(series.Values[i])
                || (!series.Marks.IsDefaultOrEmpty && series.Marks[i] != LogMarks.None)
            )
            {
                continue;
            }

            var at = local(new DateTime(series.Ticks[i], DateTimeKind.Utc));
            var end = at.Date.AddHours(at.Hour + 1);
            if (end.Hour % EveryHours != 0)
            {
                continue;
            }

            var sum = sums.GetValueOrDefault(end);
            sums[end] = (sum.Sum + series.Values[i], sum.Count + 1);
        }

        return sums.Select(s => (s.Key, s.Value.Sum / s.Value.Count));
    }
}
