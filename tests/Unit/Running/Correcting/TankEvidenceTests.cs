using Litterfall.Domain.Tanks;
using Litterfall.Running.Correcting;
using Xunit;

namespace Litterfall.UnitTests.Running.Correcting;

/// <summary>What the log of a tank and its loggers say, as readings.</summary>
public sealed class TankEvidenceTests
{
    private static readonly DateTime Noon = new(2026, 3, 1, 12, 0, 0, DateTimeKind.Utc);

    private static CareEntry Line(CareKind kind, double? amount, double? humidity = null) =>
        new()
        {
            Key = $"{kind}",
            Tank = "A3",
            At = Noon,
            Kind = kind,
            Amount = amount,
            HumidityPercent = humidity,
            Who = "Ilse",
        };

    private static DateTime AnHourLater(DateTime at) => at.AddHours(1);

    [Theory]
    [InlineData(CareKind.Level, ReadingKind.Level)]
    [InlineData(CareKind.Drained, ReadingKind.Drained)]
    [InlineData(CareKind.NozzleFlow, ReadingKind.Mist)]
    [InlineData(CareKind.Weighed, ReadingKind.Weight)]
    [InlineData(CareKind.Squeezed, ReadingKind.Squeeze)]
    [InlineData(CareKind.Air, ReadingKind.Air)]
    public void A_line_with_an_amount_is_a_reading_by_the_clock_of_the_room(CareKind line, ReadingKind kind)
    {
        var found = Assert.Single(TankEvidence.From([Line(line, 12)], [], AnHourLater).Readings);
        Assert.Equal((kind, 12.0, 13), (found.Kind, found.Amount, found.At.Hour));
    }

    [Fact]
    public void A_line_without_a_number_is_none()
    {
        var found = TankEvidence.From([Line(CareKind.Level, null), Line(CareKind.Fed, 10)], [], AnHourLater);
        Assert.Empty(found.Readings);
        Assert.Empty(found.Poured);
        Assert.Single(TankEvidence.From([Line(CareKind.Air, null, 91)], [], AnHourLater).Readings);
    }

    /// <summary>A liter poured in is a kilogram less than nothing drawn off.</summary>
    [Theory]
    [InlineData(CareKind.ToppedUp)]
    [InlineData(CareKind.Misted)]
    public void Water_by_hand_goes_in(CareKind kind)
    {
        var poured = Assert.Single(TankEvidence.From([Line(kind, 1000)], [], AnHourLater).Poured);
        Assert.Equal(-1.0, poured.Kilograms, 1e-12);
    }

    /// <summary>
    /// Six readings of ten minutes, of which one is marked: the mean of the other five, at the full hour; of
    /// an hour that is not one of four a day nothing.
    /// </summary>
    [Fact]
    public void A_logger_gives_the_mean_of_an_hour_four_times_a_day()
    {
        var from = new DateTime(2026, 3, 1, 10, 0, 0, DateTimeKind.Utc);
        var series = new LogSeries("A3", LogQuantity.Temperature, "C")
        {
            Ticks = [.. Enumerable.Range(0, 12).Select(i => from.AddMinutes(10 * i).Ticks)],
            Values = [20, 21, 22, 23, 24, 90, 30, 30, 30, 30, 30, 30],
            Marks = [.. Enumerable.Range(0, 12).Select(i => i == 5 ? LogMarks.OutOfRange : LogMarks.None)],
        };
        var found = Assert.Single(TankEvidence.From([], [series], AnHourLater).Readings);
        Assert.Equal(new DateTime(2026, 3, 1, 12, 0, 0), found.At);
        Assert.Equal(22.0, found.Amount!.Value, 1e-12);
    }
}
