using System.Globalization;
using Litterfall.Domain.Tanks;
using Litterfall.Running.Loggers;

namespace Litterfall.Dispatch.Evidence;

/// <summary>What the logger inside a parcel says of its journey.</summary>
public static class LoggerFinding
{
    // A parcel rests at the melting point of its packs for hours: what looks stuck elsewhere counts here.
    private const LogMarks Doubtful = LogMarks.OutOfRange;

    /// <summary>In a sentence; a file that does not read is told, and kept all the same.</summary>
    /// <param name="name">Name of the file.</param>
    /// <param name="bytes">What is in it.</param>
    /// <param name="zone">Zone of the tz database for times that name none.</param>
    /// <param name="band">Band that was to be kept, °C; null where nobody knows it.</param>
    public static string Tell(
        string name,
        ReadOnlySpan<byte> bytes,
        string zone,
        (double Low, double High)? band
    )
    {
        var read = LoggerFile.Read(name, bytes, new() { Zone = zone });
        var series = read.Value?.Series.FirstOrDefault(s => s.Quantity == LogQuantity.Temperature);
        if (series is null)
        {
            var why =
                read.Value is null && read.Faults.Count > 0 ? read.Faults[0].Message : "no temperatures";
            return $"Logger file, not readable as one ({why}); its bytes are kept as they came.";
        }

        var sound = Enumerable
            .Range(0, series.Count)
            .Where(i =>
                double.IsFinite(series.Values[i])
                && (i >= series.Marks.Length || (series.Marks[i] & Doubtful) == LogMarks.None)
            )
            .ToList();
        if (sound.Count == 0)
        {
            return "Logger file without a single sound reading; its bytes are kept as they came.";
        }

        var values = sound.ConvertAll(i => series.Values[i]);
        var told = string.Create(
            CultureInfo.InvariantCulture,
            $"Logger inside: {values.Min():0.#} to {values.Max():0.#} °C in {sound.Count} readings from "
                + $"{At(series, sound[0])} to {At(series, sound[^1])} UTC"
        );
        var left = series.Count - sound.Count;
        var words = new[]
        {
            told,
            Others(read.Value!),
            band is { } keep ? Outside(series, sound, read.Value!.Report.Gaps, keep) : "",
            Unread(read.Value!.Report.Gaps),
            left == 1 ? "1 reading that no sensor gives is left out"
            : left > 1
                ? string.Create(
                    CultureInfo.InvariantCulture,
                    $"{left} readings that no sensor gives are left out"
                )
            : "",
        };
        return $"{string.Join("; ", words.Where(w => w.Length > 0))}.";
    }

    /// <summary>Which column of temperatures is told, where a file has several.</summary>
    private static string Others(LoggerReading read)
    {
        var names = read
            .Report.Channels.Where(c => c.Quantity == LogQuantity.Temperature)
            .Select(c => $"“{c.Name}”")
            .ToList();
        return names.Count < 2
            ? ""
            : $"that is column {names[0]}; not told: {string.Join(", ", names.Skip(1))}";
    }

    private static string At(LogSeries series, int i) =>
        new DateTime(series.Ticks[i], DateTimeKind.Utc).ToString(
            "yyyy-MM-dd HH:mm",
            CultureInfo.InvariantCulture
        );

    /// <summary>
    /// Readings outside the band, and the time outside by the straight line from each reading to the next;
    /// what was not read is not counted.
    /// </summary>
    private static string Outside(
        LogSeries series,
        List<int> sound,
        IReadOnlyList<LogGap> gaps,
        (double Low, double High) keep
    )
    {
        var span = string.Create(CultureInfo.InvariantCulture, $"{keep.Low:0.#}–{keep.High:0.#} °C");
        var outside = sound.Count(i => series.Values[i] < keep.Low || series.Values[i] > keep.High);
        if (outside == 0)
        {
            return sound.Count == 1 ? $"within {span}" : $"every reading within {span}";
        }

        var ticks = 0.0;
        for (var i = 0; i + 1 < sound.Count; i++)
        {
            var (from, to) = (series.Ticks[sound[i]], series.Ticks[sound[i + 1]]);
            if (!gaps.Any(g => g.From.Ticks >= from && g.To.Ticks <= to))
            {
                ticks +=
                    (to - from) * ShareOutside(series.Values[sound[i]], series.Values[sound[i + 1]], keep);
            }
        }

        var hours = TimeSpan.FromTicks((long)ticks).TotalHours;
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{outside} of {sound.Count} readings outside {span}, {hours:0.0} hours of what was read"
        );
    }

    /// <summary>Share of a straight line from one value to another that lies outside, 0 to 1.</summary>
    private static double ShareOutside(double from, double to, (double Low, double High) keep)
    {
        var (low, high) = (Math.Min(from, to), Math.Max(from, to));
        return high == low
            ? (low < keep.Low || low > keep.High ? 1 : 0)
            : (Math.Max(0, Math.Min(high, keep.Low) - low) + Math.Max(0, high - Math.Max(low, keep.High)))
                / (high - low);
    }

    private static string Unread(IReadOnlyList<LogGap> gaps)
    {
        var hours = gaps.Sum(g => (g.To - g.From).TotalHours);
        return hours > 0
            ? string.Create(CultureInfo.InvariantCulture, $"nothing was read for {hours:0.0} hours between")
            : "";
    }
}
