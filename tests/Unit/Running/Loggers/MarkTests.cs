using System.Globalization;
using System.Text;
using Litterfall.Domain.Tanks;
using Litterfall.Running.Loggers;
using static Litterfall.UnitTests.Running.Loggers.LoggerFiles;

namespace Litterfall.UnitTests.Running.Loggers;

/// <summary>Marks of doubtful readings: own worked examples, written row by row.</summary>
public sealed class MarkTests
{
    private const int ADay = 144;

    [Fact]
    public void A_sensor_flat_for_days_while_the_other_moves_is_stuck()
    {
        var read = Series(4 * ADay, i => (Warm(i), i < 2 * ADay ? Damp(i) : 71.3));
        var flag = Assert.Single(read.Report.Flags);
        Assert.Equal((LogMarks.Stuck, "RH"), (flag.Kind, flag.Channel));
        Assert.Equal(Utc(2026, 2, 17), flag.From);
        Assert.Equal(read.Report.To, flag.To);
        Assert.Equal(4 * ADay, read.Report.Kept);
    }

    [Fact]
    public void A_coarse_thermometer_at_rest_is_not_stuck()
    {
        // Steps of half a degree over a swing of 0.6 K: runs of many hours are usual.
        var read = Series(6 * ADay, i =>
            (Math.Round(2.0 * (21.0 + (0.3 * Math.Sin(2.0 * Math.PI * i / ADay)))) / 2.0, Damp(i))
        );
        Assert.Empty(read.Report.Flags);
    }

    [Fact]
    public void Humidity_over_a_hundred_or_flat_at_the_top_for_hours_is_saturated()
    {
        var read = Series(2 * ADay, i => (
                Warm(i),
                i is >= 60 and < 90 ? 99.9
                : i is >= 200 and < 203 ? 102.5 + (0.1 * i % 1.0)
                : Damp(i)
            ));
        Assert.Equal(
            [
                (Utc(2026, 2, 15, 10), Utc(2026, 2, 15, 14, 50)),
                (Utc(2026, 2, 16, 9, 20), Utc(2026, 2, 16, 9, 40)),
            ],
            read.Report.Flags.Select(f => (f.From, f.To))
        );
        Assert.All(read.Report.Flags, f => Assert.Equal(LogMarks.Saturated, f.Kind));
    }

    [Fact]
    public void A_short_peak_after_misting_is_no_mark()
    {
        var read = Series(2 * ADay, i => (Warm(i), i % 48 is 0 or 1 or 2 ? 99.9 : Damp(i)));
        Assert.Empty(read.Report.Flags);
    }

    [Fact]
    public void Values_no_sensor_of_air_gives_are_out_of_range()
    {
        var read = Series(ADay, i => (i == 20 ? -127.0 : Warm(i), i == 30 ? 0.0 : Damp(i)));
        Assert.Equal(
            [("Temp", 200), ("RH", 300)],
            read.Report.Flags.Select(f => (f.Channel, (int)(f.From - read.Report.From).TotalMinutes))
        );
        Assert.All(read.Report.Flags, f => Assert.Equal(LogMarks.OutOfRange, f.Kind));
    }

    [Fact]
    public void A_humidity_sensor_that_wanders_off_for_weeks_drifts()
    {
        // Half a percent a day for thirty days, while the temperature stays: 15 % in all.
        var read = Series(30 * ADay, i => (Warm(i), Damp(i) - 10.0 + (0.5 * i / ADay)));
        var flag = Assert.Single(read.Report.Flags);
        Assert.Equal((LogMarks.Drift, "RH"), (flag.Kind, flag.Channel));
    }

    [Fact]
    public void A_thermometer_that_leaves_its_neighbors_drifts_and_they_do_not()
    {
        var text = new StringBuilder("Time,Temp 1,Temp 2,Temp 3,Temp 4\n");
        for (var i = 0; i < 30 * ADay; i++)
        {
            var (at, t) = (Utc(2026, 2, 15).AddMinutes(10 * i), Warm(i));
            text.Append(
                CultureInfo.InvariantCulture,
                $"{at:yyyy-MM-dd HH:mm},{t:0.00},{t + 0.3:0.00},{t - 0.1:0.00},{t + (0.1 * i / ADay):0.00}\n"
            );
        }

        var flag = Assert.Single(Read(text.ToString(), "UTC").Report.Flags);
        Assert.Equal((LogMarks.Drift, "Temp 4"), (flag.Kind, flag.Channel));
        // A tenth of a kelvin a day is one kelvin after ten days.
        Assert.InRange(flag.From, Utc(2026, 2, 24), Utc(2026, 2, 27));
    }

    [Fact]
    public void A_second_download_brings_only_what_is_new()
    {
        var known = new KnownReadings();
        var first = known.Without(Place("A3 one.csv", 0, 100));
        var second = known.Without(Place("A3 two.csv", 60, 160));
        var other = known.Without(Place("A4 one.csv", 0, 100));
        Assert.Equal((100, 0), (first.Report.Kept, first.Report.Duplicates));
        Assert.Equal((60, 40), (second.Report.Kept, second.Report.Duplicates));
        Assert.Equal((100, 0), (other.Report.Kept, other.Report.Duplicates));
        Assert.Equal(first.Report.To.AddMinutes(10).Ticks, second.Series[0].Ticks[0]);
    }

    private static LoggerReading Place(string name, int from, int to)
    {
        var rows = Enumerable
            .Range(from, to - from)
            .Select(i =>
                FormattableString.Invariant(
                    $"{Utc(2026, 2, 15).AddMinutes(10 * i):yyyy-MM-dd HH:mm},{Warm(i):0.00}"
                )
            );
        return Read("Time,Temp\n" + string.Join('\n', rows), "UTC", name);
    }

    private static double Warm(int i) =>
        22.0 + (1.7 * Math.Sin(2.0 * Math.PI * i / ADay)) + (0.05 * (i * 7 % 5));

    private static double Damp(int i) =>
        82.0 + (6.0 * Math.Sin(2.0 * Math.PI * i / 48.0)) + (0.3 * (i * 11 % 7));

    private static LoggerReading Series(int count, Func<int, (double Celsius, double Percent)> at)
    {
        var text = new StringBuilder("Time,Temp,RH\n");
        for (var i = 0; i < count; i++)
        {
            var (celsius, percent) = at(i);
            text.Append(
                CultureInfo.InvariantCulture,
                $"{Utc(2026, 2, 15).AddMinutes(10 * i):yyyy-MM-dd HH:mm},{celsius:0.00},{percent:0.0}\n"
            );
        }

        return Read(text.ToString(), "UTC");
    }
}
