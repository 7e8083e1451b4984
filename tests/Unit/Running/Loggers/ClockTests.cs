using System.Globalization;
using System.Text;
using Litterfall.Domain.Tanks;
using static Litterfall.UnitTests.Running.Loggers.LoggerFiles;

namespace Litterfall.UnitTests.Running.Loggers;

/// <summary>
/// Wall clocks against the zones of the system (another reader of the tz database): what was written as local
/// time is read back as the same instants.
/// </summary>
public sealed class ClockTests
{
    private const int Days = 3;
    private const int Minutes = 10;

    public static TheoryData<string> Zones =>
        [
            "Europe/Berlin",
            "Europe/London",
            "America/New_York",
            "America/St_Johns",
            "America/Santiago",
            "Australia/Sydney",
            "Australia/Lord_Howe",
            "Pacific/Auckland",
            "Pacific/Chatham",
            "Africa/Cairo",
            "Asia/Kolkata",
            "America/Bogota",
        ];

    [Theory]
    [MemberData(nameof(Zones))]
    public void Local_time_comes_back_as_the_instants_it_was_written_at(string name)
    {
        var zone = TimeZoneInfo.FindSystemTimeZoneById(name);
        foreach (var change in Changes(zone))
        {
            var times = Times(change);
            var read = Read(Written(times, t => TimeZoneInfo.ConvertTimeFromUtc(t, zone)), name);
            Assert.Equal(times.Select(t => t.Ticks), read.Series[0].Ticks);
            Assert.Equal(Enumerable.Range(0, times.Length).Select(i => (double)i), read.Series[0].Values);
            Assert.Empty(read.Report.Gaps);
            Assert.Empty(read.Report.Flags);
            Assert.Equal(0, read.Report.Duplicates);
        }
    }

    [Theory]
    [InlineData("Europe/Berlin")]
    [InlineData("Australia/Lord_Howe")]
    public void A_clock_that_ignores_the_change_leaves_no_gap(string name)
    {
        var zone = TimeZoneInfo.FindSystemTimeZoneById(name);
        foreach (var change in Changes(zone))
        {
            var times = Times(change);
            var offset = zone.GetUtcOffset(times[0]);
            var read = Read(Written(times, t => t + offset), name);
            Assert.Equal(times.Select(t => t.Ticks), read.Series[0].Ticks);
            Assert.Empty(read.Report.Gaps);
            Assert.Contains(read.Report.Quirks, q => q.Contains("did not follow", StringComparison.Ordinal));
        }
    }

    [Fact]
    public void The_second_passing_of_the_hour_is_known_by_what_follows()
    {
        // Clocks in Berlin went back at 03:00 on 25 October 2026 (01:00 UTC). The logger was started in the
        // second passing: its first row at 02:30 is 01:30 UTC, so that 03:00 follows half an hour later.
        var read = Read(
            "Time,Temp\n2026-10-25 02:30,1\n2026-10-25 02:40,2\n2026-10-25 02:50,3\n"
                + "2026-10-25 03:00,4\n2026-10-25 03:10,5\n",
            "Europe/Berlin"
        );
        Assert.Equal(Utc(2026, 10, 25, 1, 30), read.Report.From);
        Assert.Empty(read.Report.Gaps);
    }

    [Fact]
    public void Hourly_rows_stand_twice_in_the_hour_that_comes_twice()
    {
        var read = Read(
            "Time,Temp\n2026-10-25 01:00,1\n2026-10-25 02:00,2\n2026-10-25 02:00,3\n"
                + "2026-10-25 03:00,4\n2026-10-25 04:00,5\n",
            "Europe/Berlin"
        );
        // 01:00 in summer time is 23:00 UTC of the day before.
        Assert.Equal(
            Enumerable.Range(0, 5).Select(h => Utc(2026, 10, 24, 23).AddHours(h).Ticks),
            read.Series[0].Ticks
        );
    }

    [Fact]
    public void Without_a_zone_the_change_itself_tells_it()
    {
        var zone = TimeZoneInfo.FindSystemTimeZoneById("Europe/Berlin");
        var times = Times(Utc(2026, 3, 29, 1));
        var read = Read(Written(times, t => TimeZoneInfo.ConvertTimeFromUtc(t, zone)));
        Assert.Equal("Europe/Berlin", read.Report.Zone);
        Assert.Equal(times.Select(t => t.Ticks), read.Series[0].Ticks);
    }

    [Fact]
    public void Offsets_in_the_file_go_before_the_zone_given()
    {
        var rows = Read(
            "Time,Temp\n2026-02-15T00:00:00+05:30,1\n2026-02-15T00:10:00+05:30,2\n",
            "Europe/Berlin"
        );
        Assert.Equal(Utc(2026, 2, 14, 18, 30), rows.Report.From);
        var head = Read(
            "\"Date Time, GMT-05:00\",\"Temp, °C\"\n2026-02-15 00:00,1\n2026-02-15 00:10,2\n",
            "Europe/Berlin"
        );
        Assert.Equal(Utc(2026, 2, 15, 5), head.Report.From);
        Assert.Equal("UTC-05:00", head.Report.Zone);
    }

    [Fact]
    public void Overlaps_are_dropped_a_pause_is_a_gap_and_the_end_is_none()
    {
        var first = Enumerable.Range(0, 100).Select(i => (Utc(2026, 2, 15).AddMinutes(10 * i), i));
        var again = Enumerable.Range(60, 80).Select(i => (Utc(2026, 2, 15).AddMinutes(10 * i), i));
        var later = Enumerable.Range(200, 20).Select(i => (Utc(2026, 2, 15).AddMinutes(10 * i), i));
        var read = Read(
            "Time,Light (lux)\n"
                + string.Join(
                    '\n',
                    first
                        .Concat(again)
                        .Concat(later)
                        .Select(r => FormattableString.Invariant($"{r.Item1:yyyy-MM-dd HH:mm},{r.i}"))
                ),
            "UTC"
        );
        Assert.Equal((200, 160, 40), (read.Report.Rows, read.Report.Kept, read.Report.Duplicates));
        var gap = Assert.Single(read.Report.Gaps);
        Assert.Equal(
            (Utc(2026, 2, 15).AddMinutes(1390), Utc(2026, 2, 15).AddMinutes(2000)),
            (gap.From, gap.To)
        );
        var overlap = Assert.Single(read.Report.Overlaps);
        Assert.Equal((Utc(2026, 2, 15, 10), Utc(2026, 2, 15, 16, 30)), (overlap.From, overlap.To));
        Assert.Empty(read.Report.Flags);
    }

    [Fact]
    public void A_clock_that_was_set_is_marked()
    {
        var rows = Enumerable
            .Range(0, 200)
            .Select(i =>
                (At: Utc(2026, 2, 15).AddMinutes((10 * i) + (i >= 100 ? 7 : 0) - (i >= 150 ? 13 : 0)), i)
            );
        var read = Read(
            "Time,Temp\n"
                + string.Join(
                    '\n',
                    rows.Select(r => FormattableString.Invariant($"{r.At:yyyy-MM-dd HH:mm},{r.i}"))
                ),
            "UTC"
        );
        Assert.Equal(200, read.Report.Kept);
        Assert.Equal(
            [Utc(2026, 2, 15).AddMinutes(1007), Utc(2026, 2, 15).AddMinutes(1494)],
            read.Report.Flags.Where(f => f.Kind == LogMarks.ClockStep).Select(f => f.From)
        );
    }

    /// <summary>Changes of 2026; the middle of January where there is none.</summary>
    private static IEnumerable<DateTime> Changes(TimeZoneInfo zone)
    {
        var isFound = false;
        for (var at = Utc(2026, 1, 1); at.Year == 2026; at = at.AddMinutes(30))
        {
            if (zone.GetUtcOffset(at) != zone.GetUtcOffset(at.AddMinutes(-30)))
            {
                isFound = true;
                yield return at;
            }
        }

        if (!isFound)
        {
            yield return Utc(2026, 1, 15);
        }
    }

    private static DateTime[] Times(DateTime middle) =>
        [
            .. Enumerable
                .Range(0, 2 * Days * 24 * 60 / Minutes)
                .Select(i => middle.AddDays(-Days).AddMinutes(Minutes * i)),
        ];

    private static byte[] Written(DateTime[] times, Func<DateTime, DateTime> wall)
    {
        var text = new StringBuilder("Time,Light (lux)\n");
        for (var i = 0; i < times.Length; i++)
        {
            text.Append(CultureInfo.InvariantCulture, $"{wall(times[i]):yyyy-MM-dd HH:mm:ss},{i}\n");
        }

        return Encoding.UTF8.GetBytes(text.ToString());
    }
}
