using System.Globalization;
using Litterfall.Domain.Tanks;
using Litterfall.Running.Loggers;

namespace Litterfall.Dispatch.Evidence;

/// <summary>What the logger inside a parcel says of its journey.</summary>
public static class LoggerFinding
{
    private const LogMarks Doubtful = LogMarks.Stuck | LogMarks.OutOfRange;

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
        return band is { } keep ? $"{told}; {Outside(series, sound, keep)}." : $"{told}.";
    }

    private static string At(LogSeries series, int i) =>
        new DateTime(series.Ticks[i], DateTimeKind.Utc).ToString(
            "yyyy-MM-dd HH:mm",
            CultureInfo.InvariantCulture
        );

    /// <summary>Time outside the band: each reading counts until the next.</summary>
    private static string Outside(LogSeries series, List<int> sound, (double Low, double High) keep)
    {
        var ticks = 0L;
        for (var i = 0; i + 1 < sound.Count; i++)
        {
            var value = series.Values[sound[i]];
            if (value < keep.Low || value > keep.High)
            {
                ticks += series.Ticks[sound[i + 1]] - series.Ticks[sound[i]];
            }
        }

        var hours = TimeSpan.FromTicks(ticks).TotalHours;
        return hours <= 0
            ? string.Create(CultureInfo.InvariantCulture, $"always within {keep.Low:0.#}–{keep.High:0.#} °C")
            : string.Create(
                CultureInfo.InvariantCulture,
                $"{hours:0.0} hours outside {keep.Low:0.#}–{keep.High:0.#} °C"
            );
    }
}
