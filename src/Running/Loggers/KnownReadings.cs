using System.Collections.Immutable;
using Litterfall.Domain.Tanks;

namespace Litterfall.Running.Loggers;

/// <summary>
/// Readings that were taken in before, by place and quantity: a second download of the same logger repeats
/// many of them, and what stands there with the same time and value is dropped and counted.
/// </summary>
public sealed class KnownReadings
{
    private readonly Dictionary<(string Place, LogQuantity Quantity), HashSet<(long, double)>> known = [];

    /// <summary>The file without the rows that were there; what is left is known from now on.</summary>
    public LoggerReading Without(LoggerReading read)
    {
        if (read.Series.Any(s => s.Place.Length == 0) || Doubled(read.Series))
        {
            // Nothing says that it is the same logger.
            return read;
        }

        var sets = read.Series.Select(s => Set(s.Place, s.Quantity)).ToArray();
        var kept = new List<int>();
        for (var i = 0; i < read.Series[0].Count; i++)
        {
            var isKnown = true;
            for (var c = 0; c < sets.Length && isKnown; c++)
            {
                isKnown = sets[c].Contains((read.Series[c].Ticks[i], read.Series[c].Values[i]));
            }

            if (!isKnown)
            {
                kept.Add(i);
            }
        }

        for (var c = 0; c < sets.Length; c++)
        {
            foreach (var i in kept)
            {
                sets[c].Add((read.Series[c].Ticks[i], read.Series[c].Values[i]));
            }
        }

        return kept.Count == read.Series[0].Count ? read : Shortened(read, kept);
    }

    private static bool Doubled(ImmutableArray<LogSeries> series) =>
        series.DistinctBy(s => (s.Place, s.Quantity)).Count() < series.Length;

    private HashSet<(long, double)> Set(string place, LogQuantity quantity)
    {
        if (!known.TryGetValue((place, quantity), out var set))
        {
            set = known[(place, quantity)] = [];
        }

        return set;
    }

    private static LoggerReading Shortened(LoggerReading read, List<int> kept)
    {
        var dropped = read.Series[0].Count - kept.Count;
        return read with
        {
            Series =
            [
                .. read.Series.Select(s =>
                    s with
                    {
                        Ticks = [.. kept.Select(i => s.Ticks[i])],
                        Values = [.. kept.Select(i => s.Values[i])],
                        Marks = [.. kept.Select(i => s.Marks[i])],
                    }
                ),
            ],
            Report = read.Report with { Kept = kept.Count, Duplicates = read.Report.Duplicates + dropped },
        };
    }
}
