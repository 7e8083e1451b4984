using Litterfall.Domain.Tanks;

namespace Litterfall.Running.Rooms;

/// <summary>
/// A channel reduced for drawing: for each column of the picture its first time, least, most and mean value,
/// apart for readings with and without a mark, so that nothing that was measured is hidden.
/// </summary>
public sealed class SeriesSketch
{
    private const double GapTimes = 1.6;
    private const int Places = 3;
    private readonly List<long> seconds = [];
    private readonly List<double> low = [];
    private readonly List<double> high = [];
    private readonly List<double> mean = [];
    private readonly List<int> marks = [];

    private SeriesSketch(long longest) => Break = longest;

    /// <summary>Times, seconds since 1970, UTC.</summary>
    public IReadOnlyList<long> Seconds => seconds;

    /// <summary>Least value of each.</summary>
    public IReadOnlyList<double> Low => low;

    /// <summary>Most of each.</summary>
    public IReadOnlyList<double> High => high;

    /// <summary>Mean of each.</summary>
    public IReadOnlyList<double> Mean => mean;

    /// <summary>Marks of each as numbers; 0 for none.</summary>
    public IReadOnlyList<int> Marks => marks;

    /// <summary>Seconds without readings after which the line is broken.</summary>
    public long Break { get; }

    /// <summary>Reduces a channel.</summary>
    /// <param name="series">Its readings.</param>
    /// <param name="from">Left edge, UTC ticks.</param>
    /// <param name="to">Right edge, UTC ticks.</param>
    /// <param name="columns">Columns of the picture.</param>
    public static SeriesSketch From(LogSeries series, long from, long to, int columns)
    {
        var width = Math.Max(TimeSpan.TicksPerSecond, (to - from) / Math.Max(1, columns));
        var longest = GapTimes * Math.Max(width, Usual(series)) / TimeSpan.TicksPerSecond;
        var sketch = new SeriesSketch((long)longest + 1);
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

            var into = series.Marks[i] == LogMarks.None ? plain : marked;
            into.Take(series.Ticks[i], series.Values[i], series.Marks[i]);
        }

        sketch.Add(plain, marked);
        return sketch;
    }

    private static long Usual(LogSeries series)
    {
        var steps = new long[Math.Max(0, series.Count - 1)];
        for (var i = 1; i < series.Count; i++)
        {
            steps[i - 1] = series.Ticks[i] - series.Ticks[i - 1];
        }

        Array.Sort(steps);
        return steps.Length == 0 ? 0 : steps[steps.Length / 2];
    }

    private void Add(Column a, Column b)
    {
        var isFirst = a.Count > 0 && (b.Count == 0 || a.First <= b.First);
        Add(isFirst ? a : b);
        Add(isFirst ? b : a);
    }

    private void Add(Column column)
    {
        if (column.Count == 0)
        {
            return;
        }

        seconds.Add((column.First - DateTime.UnixEpoch.Ticks) / TimeSpan.TicksPerSecond);
        low.Add(Math.Round(column.Low, Places));
        high.Add(Math.Round(column.High, Places));
        mean.Add(Math.Round(column.Sum / column.Count, Places));
        marks.Add((int)column.Marks);
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

        public void Take(long ticks, double value, LogMarks mark)
        {
            if (Count == 0)
            {
                (First, Low, High, Sum, Marks) = (ticks, value, value, 0.0, LogMarks.None);
            }

            Low = Math.Min(Low, value);
            High = Math.Max(High, value);
            Sum += value;
            Marks |= mark;
            Count++;
        }
    }
}
