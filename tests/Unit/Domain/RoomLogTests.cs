using Litterfall.Domain.Checking;
using Xunit;

namespace Litterfall.UnitTests.Domain;

/// <summary>Logger files as they come: points, commas, semicolons, tabs, marks, wrong lines.</summary>
public sealed class RoomLogTests
{
    [Theory]
    [InlineData("time,temperature,humidity\n2026-02-15 00:00,21.5,45\n2026-02-15 00:10,21.7,46\n")]
    [InlineData("\uFEFFTime;Temp (°C);RH (%)\r\n15.02.2026 00:00;21,5;45\r\n15.02.2026 00:10;21,7;46\r\n")]
    [InlineData("\"Date\"\t\"Temp °F\"\t\"RH\"\n2026-02-15T00:10\t71.06\t46\n2026-02-15T00:00\t70.7\t45\n")]
    public void Styles_read_alike(string text)
    {
        var log = RoomLog.Read("room.csv", text).Value!;
        Assert.Equal(2, log.Readings.Length);
        Assert.Equal(new DateTime(2026, 2, 15, 0, 0, 0, DateTimeKind.Unspecified), log.Readings[0].Time);
        Assert.Equal(21.5, log.Readings[0].Celsius, 1e-9);
        Assert.Equal(0.45, log.Readings[0].Humidity, 1e-12);
        Assert.Equal(21.7, log.Readings[1].Celsius, 1e-9);
    }

    private const string Wide = "time,temperature,humidity\n";
    private static readonly DateTime First = new(2026, 2, 1, 0, 0, 0, DateTimeKind.Unspecified);

    /// <summary>Files as loggers and spreadsheets write them; all hold 21.5 °C, 45 % at midnight.</summary>
    [Theory]
    // lines before the head
    [InlineData(
        "Logger 4711\nOwner: shop\n\nTime;Temp (°C);RH (%)\n"
            + "15.02.2026 00:00;21,5;45\n15.02.2026 00:10;21,7;46\n"
    )]
    // no head, units in the cells
    [InlineData("2026-02-15 00:00,21.5 °C,45 %\n2026-02-15 00:10,21.7 °C,46 %\n")]
    // no head and no units: more than 40 can only be the humidity
    [InlineData("2026-02-15 00:00,21.5,45\n2026-02-15 00:10,21.7,46\n")]
    // the day first, told by a 15
    [InlineData("time,temp,rh\n15/02/2026 00:00,21.5,45\n15/02/2026 00:10,21.7,46\n")]
    // the month first with AM and PM
    [InlineData("time,temp,rh\n02/15/2026 12:00:00 AM,21.5,45\n02/15/2026 12:10:00 AM,21.7,46\n")]
    [InlineData("time,temp,rh\n2/15/26 12:00 a.m.,21.5,45\n2/15/26 12:10 a.m.,21.7,46\n")]
    // date and time of day in columns of their own
    [InlineData("Date,Time,Temp °C,RH %\n2026-02-15,00:00,21.5,45\n2026-02-15,00:10,21.7,46\n")]
    // an offset from the world's clock
    [InlineData("time,temp,rh\n2026-02-15T00:00:00+02:00,21.5,45\n2026-02-15T00:10:00+02:00,21.7,46\n")]
    // cells in quotes with a decimal comma, and one without a value
    [InlineData(
        "time,temp,rh\n2026-02-15 00:00,\"21,5\",45\n2026-02-15 00:05,,\n2026-02-15 00:10,\"21,7\",46\n"
    )]
    [InlineData(
        "time,temp,rh\n2026-02-15 00:00,21.5,45\n2026-02-15 00:05,NaN,45\n2026-02-15 00:10,21.7,46\n"
    )]
    // °F in the cell
    [InlineData("time,temp,rh\n2026-02-15 00:00,70.7 °F,45\n2026-02-15 00:10,71.06 °F,46\n")]
    public void Files_as_they_come_are_read(string text)
    {
        var reading = RoomLog.Read("room.csv", text);
        Assert.True(reading.IsGood, string.Join("; ", reading.Faults));
        var log = reading.Value!;
        Assert.Equal(2, log.Readings.Length);
        Assert.Equal(new DateTime(2026, 2, 15, 0, 0, 0, DateTimeKind.Unspecified), log.Readings[0].Time);
        Assert.Equal(21.5, log.Readings[0].Celsius, 1e-9);
        Assert.Equal(0.45, log.Readings[0].Humidity, 1e-12);
        Assert.Equal(TimeSpan.FromMinutes(10), log.Readings[1].Time - log.Readings[0].Time);
    }

    /// <summary>Both orders are days, but only one makes a log that goes on day by day.</summary>
    [Fact]
    public void The_order_of_day_and_month_follows_from_the_steps()
    {
        const string days =
            "time,temp,rh\n03/04/2026 08:00,21,45\n04/04/2026 08:00,21,46\n05/04/2026 08:00,21,47\n";
        var log = RoomLog.Read("room.csv", days).Value!;
        Assert.Equal(new DateTime(2026, 4, 3, 8, 0, 0, DateTimeKind.Unspecified), log.Readings[0].Time);
        Assert.Equal(2, log.WholeDays);
    }

    [Fact]
    public void A_date_of_two_readings_is_refused_with_its_line()
    {
        const string once = "time,temp,rh\n03/04/2026 08:00,21,45\n03/04/2026 09:00,21,46\n";
        var fault = Assert.Single(RoomLog.Read("room.csv", once).Faults);
        Assert.Equal(2, fault.Line);
        Assert.Contains("03/04/2026", fault.Message, StringComparison.Ordinal);
    }

    /// <summary>A cell that cannot be read is named with its field.</summary>
    [Theory]
    [InlineData("warm", "45", "temperature 'warm'")]
    [InlineData("21", "damp", "humidity 'damp'")]
    [InlineData("21", "145", "humidity '145'")]
    public void A_cell_that_cannot_be_read_is_named(string warm, string damp, string named)
    {
        var text = $"{Wide}2026-02-15 00:00,21,45\n2026-02-15 00:10,{warm},{damp}\n";
        var fault = Assert.Single(RoomLog.Read("room.csv", text).Faults);
        Assert.Equal(3, fault.Line);
        Assert.Contains(named, fault.Message, StringComparison.Ordinal);
    }

    /// <summary>Each fault of a log, made by hand, is told; a log without them is silent.</summary>
    [Fact]
    public void Gaps_short_logs_stuck_values_and_overlaps_are_told()
    {
        static string Hours(int from, int to, Func<int, double> humidity) =>
            string.Concat(
                Enumerable
                    .Range(from, to - from)
                    .Select(h =>
                        FormattableString.Invariant(
                            $"{First.AddHours(h):yyyy-MM-dd HH:mm},{20 + (h % 5)},{humidity(h)}\n"
                        )
                    )
            );
        static string Said(string rows) =>
            string.Join("; ", RoomLog.Read("room.csv", Wide + rows).Value!.Oddities());
        static double Moving(int h) => 40 + (h % 7);
        Assert.Equal("", Said(Hours(0, 72, Moving)));
        Assert.Contains(
            "60 hours",
            Said(Hours(0, 30, Moving) + Hours(89, 120, Moving)),
            StringComparison.Ordinal
        );
        Assert.Contains("5 hours only", Said(Hours(0, 6, Moving)), StringComparison.Ordinal);
        Assert.Contains("stands at 99.9", Said(Hours(0, 72, _ => 99.9)), StringComparison.Ordinal);
        Assert.Contains(
            "10 lines repeat",
            Said(Hours(0, 40, Moving) + Hours(30, 72, Moving)),
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData("", 1, "empty")]
    [InlineData("time,temperature\n2026-02-15 00:00,21\n", 1, "lacks a column")]
    [InlineData("time,temp,rh\n2026-02-15 00:00,21,45\nyesterday,21,45\n", 3, "cannot be read")]
    [InlineData("time,temp,rh\n2026-02-15 00:00,21,45\n2026-02-15 00:10,99,45\n", 3, "cannot be read")]
    [InlineData("time,temp,rh\n2026-02-15 00:00,21,45\n2026-02-15 00:10,21\n", 3, "cannot be read")]
    [InlineData("time,temp,rh\n2026-02-15 00:00,21,45\n", 1, "too few")]
    public void What_cannot_be_read_is_told_with_its_line(string text, int line, string words)
    {
        var fault = Assert.Single(RoomLog.Read("room.csv", text).Faults);
        Assert.Equal(line, fault.Line);
        Assert.Contains(words, fault.Message, StringComparison.Ordinal);
    }

    /// <summary>Chips read 100 to 106 % when they are wet: that is saturated, not a fault.</summary>
    [Fact]
    public void A_wet_chip_is_saturated()
    {
        const string wet = "time,temp,rh\n2026-02-15 00:00,21,104\n2026-02-15 00:10,21,99\n";
        Assert.Equal(1.0, RoomLog.Read("room.csv", wet).Value!.Readings[0].Humidity);
    }
}
