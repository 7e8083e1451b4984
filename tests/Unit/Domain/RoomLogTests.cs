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
