using System.Collections.Immutable;
using Litterfall.Domain.Tanks;

namespace Litterfall.Running.Diagnosis.Trials;

/// <summary>
/// What a logger and readings by hand say of the air, over the last days; marked readings say nothing.
/// </summary>
public sealed record AirSeen
{
    private const int Days = 3;
    private const int FewReadings = 12;
    private const double FlatHumidity = 99.5;

    /// <summary>Readings by hand within the last days, in order.</summary>
    public ImmutableArray<TankReading> ByHand { get; init; } = [];

    /// <summary>Mean temperature of a logger, °C; null where it has no sound reading.</summary>
    public double? MeanCelsius { get; init; }

    /// <summary>Highest temperature that lasted, °C: the 98th percentile.</summary>
    public double? HighCelsius { get; init; }

    /// <summary>Lowest temperature that lasted, °C: the 2nd percentile.</summary>
    public double? LowCelsius { get; init; }

    /// <summary>Mean humidity, %; null where the sensor has no sound reading.</summary>
    public double? MeanHumidity { get; init; }

    /// <summary>Rise of humidity at each misting that the sensor could have seen, points.</summary>
    public ImmutableArray<double> MistRises { get; init; } = [];

    /// <summary>What was left out, and why.</summary>
    public ImmutableArray<string> Ignored { get; init; } = [];

    /// <summary>Reads a case.</summary>
    /// <param name="of">The case.</param>
    /// <param name="mistings">Times of the day at which it mists.</param>
    public static AirSeen From(FaultCase of, IEnumerable<TimeOnly> mistings)
    {
        var ignored = ImmutableArray.CreateBuilder<string>();
        var warmth = Sound(of, LogQuantity.Temperature, ignored);
        var damp = Sound(of, LogQuantity.Humidity, ignored);
        var byHand = of.Readings.Where(r => r.Kind == ReadingKind.Air).TakeLast(8);
        var kept = ImmutableArray.CreateBuilder<TankReading>();
        foreach (var reading in byHand)
        {
            if (reading.HumidityPercent >= FlatHumidity)
            {
                ignored.Add(
                    $"Humidity of {reading.HumidityPercent:0.#} %: a wet sensor shows that whatever "
                        + $"the air is."
                );
                kept.Add(reading with { HumidityPercent = null });
            }
            else
            {
                kept.Add(reading);
            }
        }

        return new AirSeen
        {
            ByHand = [.. kept.Where(r => r.Amount is not null || r.HumidityPercent is not null)],
            MeanCelsius = warmth.Length < FewReadings ? null : warmth.Average(w => w.Value),
            HighCelsius = warmth.Length < FewReadings ? null : Percentile(warmth, 0.98),
            LowCelsius = warmth.Length < FewReadings ? null : Percentile(warmth, 0.02),
            MeanHumidity = damp.Length < FewReadings ? null : damp.Average(w => w.Value),
            MistRises = Rises(damp, mistings),
            Ignored = [.. ignored.Distinct()],
        };
    }

    private static (long Ticks, double Value)[] Sound(
        FaultCase of,
        LogQuantity quantity,
        ImmutableArray<string>.Builder ignored
    )
    {
        var all = new List<(long Ticks, double Value)>();
        foreach (var series in of.Series.Where(s => s.Quantity == quantity))
        {
            var last = series.Count == 0 ? 0 : series.Ticks[^1];
            var bad = 0;
            for (var i = 0; i < series.Count; i++)
            {
                if (last - series.Ticks[i] > Days * TimeSpan.TicksPerDay || double.IsNaN(series.Values[i]))
                {
                    continue;
                }

                if (series.Marks[i] != LogMarks.None)
                {
                    bad++;
                    continue;
                }

                all.Add((series.Ticks[i], series.Values[i]));
            }

            if (bad > 0)
            {
                ignored.Add(Words(series, bad));
            }
        }

        return [.. all];
    }

    private static string Words(LogSeries series, int bad)
    {
        var marks = series.Marks.Where(m => m != LogMarks.None).Aggregate(LogMarks.None, (all, m) => all | m);
        var what = series.Quantity == LogQuantity.Humidity ? "humidity" : "temperature";
        var why =
            marks.HasFlag(LogMarks.Saturated) ? "the sensor is wet and shows its limit, whatever the air is"
            : marks.HasFlag(LogMarks.Stuck) ? "the sensor is stuck"
            : marks.HasFlag(LogMarks.OutOfRange) ? "no such sensor can measure that"
            : marks.HasFlag(LogMarks.Drift) ? "the sensor drifts"
            : "the clock was set";
        return $"{bad} readings of {what} of the logger: {why}. They are no evidence for good or bad.";
    }

    private static double Percentile((long Ticks, double Value)[] all, double share)
    {
        var sorted = all.Select(a => a.Value).Order().ToArray();
        return sorted[(int)(share * (sorted.Length - 1))];
    }

    /// <summary>Humidity within forty minutes after a misting, less that of the half hour before.</summary>
    private static ImmutableArray<double> Rises(
        (long Ticks, double Value)[] damp,
        IEnumerable<TimeOnly> mistings
    )
    {
        const long Minute = TimeSpan.TicksPerMinute;
        const double CannotRise = 95.0;
        var rises = ImmutableArray.CreateBuilder<double>();
        if (damp.Length < FewReadings)
        {
            return [];
        }

        foreach (var day in damp.Select(d => d.Ticks / TimeSpan.TicksPerDay).Distinct())
        {
            foreach (var at in mistings.Select(m => (day * TimeSpan.TicksPerDay) + m.Ticks))
            {
                var before = damp.Where(d => d.Ticks > at - (31 * Minute) && d.Ticks <= at).ToArray();
                var after = damp.Where(d => d.Ticks > at && d.Ticks <= at + (41 * Minute)).ToArray();
                if (before.Length > 0 && after.Length > 0 && before[^1].Value < CannotRise)
                {
                    rises.Add(after.Max(d => d.Value) - before[^1].Value);
                }
            }
        }

        return rises.ToImmutable();
    }
}
