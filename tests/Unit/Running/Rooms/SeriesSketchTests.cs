using Litterfall.Domain.Tanks;
using Litterfall.Running.Rooms;

namespace Litterfall.UnitTests.Running.Rooms;

/// <summary>A picture keeps every extreme and every doubtful reading: own worked example.</summary>
public sealed class SeriesSketchTests
{
    [Fact]
    public void Each_column_keeps_its_least_its_most_and_its_doubtful_readings()
    {
        var start = new DateTime(2026, 1, 1, 0, 0, 0, DateTimeKind.Utc);
        // Twelve readings, ten minutes apart, in two columns of an hour; the fifth and the ninth are marked.
        double[] values = [20, 25, 19, 21, 99, 22, 30, 31, 0, 29, 28, 33];
        var series = new LogSeries("A3", LogQuantity.Temperature, "°C")
        {
            Ticks = [.. values.Select((_, i) => start.AddMinutes(10 * i).Ticks)],
            Values = [.. values],
            Marks = [.. values.Select((_, i) => i is 4 or 8 ? LogMarks.Stuck : LogMarks.None)],
        };
        var sketch = SeriesSketch.From(series, start.Ticks, start.AddHours(2).Ticks, 2);
        Assert.Equal([19.0, 99.0, 28.0, 0.0], sketch.Low);
        Assert.Equal([25.0, 99.0, 33.0, 0.0], sketch.High);
        // (20 + 25 + 19 + 21 + 22) / 5 and (30 + 31 + 29 + 28 + 33) / 5.
        Assert.Equal([21.4, 99.0, 30.2, 0.0], sketch.Mean);
        Assert.Equal([0, 1, 0, 1], sketch.Marks);
        Assert.Equal(
            [0L, 2400L, 3600L, 4800L],
            sketch.Seconds.Select(s => s - new DateTimeOffset(start).ToUnixTimeSeconds())
        );
    }
}
