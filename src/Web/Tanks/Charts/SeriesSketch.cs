using Litterfall.Domain.Tanks;

namespace Litterfall.Web.Tanks.Charts;

/// <summary>
/// A channel reduced for drawing: for each column of the picture its first time, least, most and mean value,
/// apart for readings with and without a mark, so that nothing that was measured is hidden.
/// </summary>
/// <param name="Seconds">Times, seconds since 1970, UTC.</param>
/// <param name="Low">Least value of each.</param>
/// <param name="High">Most.</param>
/// <param name="Mean">Mean.</param>
/// <param name="Marks">Marks of each as numbers; 0 for none.</param>
/// <param name="Break">Seconds without readings after which the line is broken.</param>
public sealed record SeriesSketch(
    List<long> Seconds,
    List<double> Low,
    List<double> High,
    List<double> Mean,
    List<int> Marks,
    long Break
)
{
    private const double GapTimes = 1.6;

    /// <summary>Reduces a channel.</summary>
    /// <param name="series">Its readings.</param>
    /// <param name="from">Left edge, UTC ticks.</param>
    /// <param name="to">Right edge, UTC ticks.</param>
    /// <param name="columns">Columns of the picture.</param>
    public static SeriesSketch From(LogSeries series, long from, long to, int columns)
    {
        var width = Math.Max(TimeSpan.TicksPerSecond, (to - from) / Math.Max(1, columns));
        var usual = Usual(series);
        var sketch = new SeriesSketch(
            [],
            [],
            [],
            [],
            [],
            (long)(GapTimes * Math.Max(width, usual) / TimeSpan.TicksPerSecond) + 1
        );
        var (plain, marked) = (new Column(), new Column());
        var column = long.MinValue;
        for (var i = 0; i < series.Count; i++)
        {
            var at = (series.Ticks[i] - from) / width;
            if (at != column)
            {
                sketch.Add(plain, marked);
                column = at;
            }

            (series.Marks[i] == LogMarks.None ? plain : marked).Take(
                series.Ticks[i],
                series.Values[i],
                series.Marks[i]
            );
        }

        sketch.Add(plain, marked);
        return sketch;
    }

    private static long Usual(LogSeries series)
    {
        var steps = new List<long>();
        for (var i = 1; i < series.Count; i++)
        {
            steps.Add(series.Ticks[i] - series.Ticks[i - 1]);
        }

        steps.Sort();
        return steps.Count == 0 ? 0 : steps[steps.Count / 2];
    }

    private void Add(Column a, Column b)
    {
        var (first, second) = a.Count > 0 && (b.Count == 0 || a.First <= b.First) ? (a, b) : (b, a);
        Add(first);
        Add(second);
    }

    private void Add(Column column)
    {
        if (column.Count == 0)
        {
            return;
        }

        Seconds.Add((column.First - DateTime.UnixEpoch.Ticks) / TimeSpan.TicksPerSecond);
        Low.Add(Math.Round(column.Low, 3));
        High.Add(Math.Round(column.High, 3));
        Mean.Add(Math.Round(column.Sum / column.Count, 3));
        Marks.Add((int)column.Marks);
        column.Count = 0;
    }

    private sealed class Column
    {
        public int Count { get; set; }

        public long First { get; private set; }

        public double Low { get; private set; }

        public double High { get; private set; }

        public double Sum { get; private set; }

        public LogMarks Marks { get; private set; }

        public void Take(long ticks, double value, LogMarks marks)
        {
            if (Count == 0)
            {
                (First, Low, High, Sum, Marks) = (ticks, value, value, 0.0, LogMarks.None);
            }

            Low = Math.Min(Low, value);
            High = Math.Max(High, value);
            Sum += value;
            Marks |= marks;
            Count++;
        }
    }
}
