using Litterfall.Domain.Tanks;
using Litterfall.Running.Demo;
using Litterfall.Running.Loggers;
using Litterfall.Running.Rooms;

namespace Litterfall.UnitTests.Running.Rooms;

/// <summary>
/// The invented breeding room with its planted faults: own worked example. Day 1 is Sunday 15 February 2026
/// by
/// the clock of the room; it was planted with cold on days 8 and 9, a dead mist pump at rack B on days 37 to
/// 39, heat on days 61 to 64, a humidity sensor stuck in C5 from day 44, a file that overlaps itself by three
/// days, a file with decimal commas and one with a byte-order mark and local times. Nothing else is wrong.
/// </summary>
public sealed class RoomTests
{
    private static readonly Lazy<IReadOnlyList<LoggerReading>> Read = new(() =>
        [
            .. RoomLogs
                .Files()
                .Select(f =>
                    LoggerFile.Read(f.Name, f.Bytes, new LoggerWish { Zone = "Europe/Berlin" }).Value!
                ),
        ]
    );

    private static readonly WatchedPlace[] Places =
    [
        new("A3", "A", AirLimits.Frogs),
        new("A7", "A", AirLimits.Frogs),
        new("B2", "B", AirLimits.Frogs),
        new("B6", "B", AirLimits.Frogs),
        new("C1", "C", AirLimits.Frogs),
        new("C5", "C", AirLimits.Frogs),
        new("room", "", AirLimits.Room),
    ];

    [Fact]
    public void Seven_loggers_of_92_days_at_ten_minutes_are_read_whole()
    {
        Assert.Equal(7, Read.Value.Count);
        Assert.All(Read.Value, r => Assert.Equal(13_248, r.Report.Kept));
        Assert.Equal(["A3", "A7", "B2", "B6", "C1", "C5", "room"], Read.Value.Select(r => r.Series[0].Place));
        // Midnight of 15 February in the room is 23:00 UTC of the day before, whatever the file's style.
        Assert.All(Read.Value, r =>
            Assert.Equal(new DateTime(2026, 2, 14, 23, 0, 0, DateTimeKind.Utc), r.Report.From)
        );
        Assert.All(Read.Value, r => Assert.Equal(r.Report.From.AddMinutes(10 * 13_247), r.Report.To));
    }

    [Fact]
    public void No_gap_at_the_clock_change_and_nothing_doubled()
    {
        Assert.All(Read.Value, r => Assert.Empty(r.Report.Gaps));
        Assert.All(Read.Value, r => Assert.DoesNotContain(r.Report.Flags, f => f.Kind == LogMarks.ClockStep));
    }

    [Fact]
    public void One_overlapping_file_and_two_files_with_quirks()
    {
        var overlapping = Assert.Single(Read.Value, r => r.Report.Duplicates > 0);
        Assert.Equal("C1.txt", overlapping.Report.Name);
        // Three days of 144 rows.
        Assert.Equal(3 * 144, overlapping.Report.Duplicates);
        Assert.Equal(
            ["A7.csv", "B2.csv"],
            Read.Value.Where(r => r.Report.Quirks.Count > 0).Select(r => r.Report.Name)
        );
    }

    [Fact]
    public void One_stuck_sensor()
    {
        var flags = Read
            .Value.SelectMany(r => r.Report.Flags.Select(f => (r.Report.Name, f.Kind, f.From)))
            .ToList();
        // Day 44 is 30 March; midnight in summer time is 22:00 UTC of the day before.
        var from = new DateTime(2026, 3, 29, 22, 0, 0, DateTimeKind.Utc);
        Assert.Equal([("C5.csv", LogMarks.Stuck, from), ("C5.csv", LogMarks.Saturated, from)], flags);
    }

    [Fact]
    public void Three_events_cold_dry_and_hot()
    {
        var events = Excursions.Find(Read.Value.SelectMany(r => r.Series), Places);
        Assert.Equal([ExcursionKind.Cold, ExcursionKind.Dry, ExcursionKind.Hot], events.Select(e => e.Kind));
        Assert.Equal(["", "B", ""], events.Select(e => e.Zone));
        Assert.Equal(["B2", "B6"], events[1].Places);
        Assert.InRange(events[0].From, Day(8), Day(9));
        Assert.InRange(events[0].To, Day(9), Day(11));
        Assert.InRange(events[1].From, Day(37), Day(38));
        Assert.InRange(events[1].To, Day(39), Day(40));
        Assert.InRange(events[2].From, Day(61), Day(62));
        Assert.InRange(events[2].To, Day(64), Day(65));
        // The room fell to 15.2 °C, the lowest rack is 0.6 K colder; noise has a standard deviation of 0.1 K.
        Assert.InRange(events[0].Extreme, 14.0, 14.9);
        Assert.InRange(events[1].Extreme, 57.0, 60.0);
        // The top row reached 31.6 °C.
        Assert.InRange(events[2].Extreme, 31.3, 32.0);
        Assert.Contains(events[2].Worst, (string[])["C1", "C5"]);
    }

    [Fact]
    public void The_crash_of_the_springtails_is_traced_to_the_hot_spell()
    {
        // Lines A and B went down on days 75 to 80; no egg of Folsomia candida hatches above 28 °C (Fountain
        // and Hopkin 2005, Annual Review of Entomology 50:201); a generation takes 28 to 34 days at 20 °C.
        var room = Read.Value[^1].Series[0];
        CultureLoss[] losses = [new("A", new(2026, 4, 30)), new("B", new(2026, 5, 5))];
        var trace = Assert.Single(HatchTrace.Find(losses, room, 0.9, new(28.0, 31.0)));
        // Days 61 to 64 are 16 to 19 April.
        Assert.Equal((new DateOnly(2026, 4, 16), new DateOnly(2026, 4, 19)), (trace.From, trace.To));
        Assert.Equal(["A", "B"], trace.Lines);
        // The shelf is 0.9 K warmer than the room at 28.4 °C.
        Assert.InRange(trace.WarmestCelsius, 29.1, 29.8);
        Assert.Empty(HatchTrace.Find(losses, room, 0.9, new(28.0, 10.0)));
        Assert.Empty(HatchTrace.Find(losses, room, 0.9, new(31.0, 31.0)));
    }

    [Fact]
    public void A_room_in_which_nothing_goes_wrong_has_no_findings()
    {
        var read = RoomLogs
            .Files(new RoomAir(RoomLogs.Seed, 30 * 144, hasFaults: false))
            .Select(f => LoggerFile.Read(f.Name, f.Bytes, new LoggerWish { Zone = "Europe/Berlin" }).Value!)
            .ToList();
        Assert.All(read, r => Assert.Empty(r.Report.Flags));
        Assert.Empty(Excursions.Find(read.SelectMany(r => r.Series), Places));
    }

    /// <summary>Midnight of a day of the room, without the change to summer time.</summary>
    private static DateTime Day(int day) =>
        new DateTime(2026, 2, 14, 23, 0, 0, DateTimeKind.Utc).AddDays(day - 1);
}
