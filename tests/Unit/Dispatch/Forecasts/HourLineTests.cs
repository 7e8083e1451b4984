using Litterfall.Dispatch.Forecasts;
using Litterfall.Domain.Dispatch;

namespace Litterfall.UnitTests.Dispatch.Forecasts;

/// <summary>Hours of typed days, gaps, ranges; expected values by hand from the curve's definition.</summary>
public sealed class HourLineTests
{
    private static readonly DateOnly Day = new(2026, 7, 14);
    private static readonly PlaceClock Utc = PlaceClock.Find("Etc/UTC")!;

    private static PlaceForecast Forecast(params (double Hour, double Celsius)[] hours) =>
        new()
        {
            Node = RouteNode.Hub,
            Place = "hub",
            TakenAt = Utc.Utc(Day, 0),
            Hours = [.. hours.Select(h => new ForecastHour(Utc.Utc(Day, h.Hour), h.Celsius))],
        };

    /// <summary>
    /// 10 at 06:00, 20 at 15:00, then 6 at 06:00: half a cosine has its middle half way, so 15 at 10:30 and
    /// 13 at 22:30 (between 22:00 and 23:00 the line is straight, an hour of a cosine of 15 h bends by 0.01).
    /// </summary>
    [Fact]
    public void Typed_days_meet_both_figures()
    {
        var hours = TypedDays.Hours([new(Day, 10, 20), new(Day.AddDays(1), 6, 18)], Utc);
        var line = new HourLine(Forecast() with { Hours = hours });
        Assert.Equal(10, line.At(Utc.Utc(Day, 6)), 9);
        Assert.Equal(20, line.At(Utc.Utc(Day, 15)), 9);
        Assert.Equal(6, line.At(Utc.Utc(Day, 30)), 9);
        Assert.Equal(15, line.At(Utc.Utc(Day, 10.5)), 1);
        Assert.Equal(13, line.At(Utc.Utc(Day, 22.5)), 2);
        Assert.Equal((6.0, 20.0), line.Range(Utc.Utc(Day, 0), Utc.Utc(Day, 48)));
    }

    /// <summary>
    /// A mild day after a frosty one and before a hot one is as it was typed, from its midnight to the next.
    /// </summary>
    [Fact]
    public void No_hour_lies_outside_its_day()
    {
        TypedForecastDay[] days = [new(Day, -6, 1), new(Day.AddDays(1), 3.5, 6), new(Day.AddDays(2), 20, 31)];
        var line = new HourLine(Forecast() with { Hours = TypedDays.Hours(days, Utc) });
        Assert.All(days.Index(), d =>
            Assert.Equal(
                (d.Item.LowCelsius, d.Item.HighCelsius),
                line.Before(Utc.Utc(Day, 24 * d.Index), Utc.Utc(Day, (24 * d.Index) + 24))
            )
        );
    }

    [Fact]
    public void A_day_left_out_is_a_gap()
    {
        var hours = TypedDays.Hours([new(Day, 10, 20), new(Day.AddDays(2), 6, 18)], Utc);
        var gap = new HourLine(Forecast() with { Hours = hours }).Gap(Utc.Utc(Day, 20), Utc.Utc(Day, 30));
        Assert.Equal((Utc.Utc(Day, 24), Utc.Utc(Day, 48)), gap);
    }

    [Fact]
    public void Three_hours_are_bridged_and_more_are_a_gap()
    {
        var line = new HourLine(Forecast((0, 10), (3, 13), (6.5, 20), (8, 21)));
        Assert.Equal(11, line.At(Utc.Utc(Day, 1)), 9);
        Assert.Null(line.Gap(Utc.Utc(Day, 0), Utc.Utc(Day, 3)));
        Assert.Equal((Utc.Utc(Day, 3), Utc.Utc(Day, 6.5)), line.Gap(Utc.Utc(Day, 1), Utc.Utc(Day, 5)));
        Assert.Null(line.Gap(Utc.Utc(Day, 6.5), Utc.Utc(Day, 8)));
        Assert.Equal((Utc.Utc(Day, 8), DateTime.MaxValue), line.Gap(Utc.Utc(Day, 7), Utc.Utc(Day, 9)));
        Assert.NotNull(new HourLine(Forecast()).Gap(Utc.Utc(Day, 0), Utc.Utc(Day, 1)));
    }

    [Fact]
    public void What_is_no_weather_is_found()
    {
        var line = new HourLine(Forecast((0, 10), (3, 77), (6, 20), (9, double.NaN)));
        Assert.Equal(77, line.Unlikely(Utc.Utc(Day, 0), Utc.Utc(Day, 3))!.Celsius);
        Assert.NotNull(line.Unlikely(Utc.Utc(Day, 8), Utc.Utc(Day, 9)));
        Assert.Null(new HourLine(Forecast((0, -89), (3, 56))).Unlikely(Utc.Utc(Day, 0), Utc.Utc(Day, 3)));
    }

    /// <summary>On 29 March 2026 clocks in Berlin go from 02:00 to 03:00 (tz database).</summary>
    [Fact]
    public void The_hour_left_out_in_spring_is_the_one_after()
    {
        var berlin = PlaceClock.Find("Europe/Berlin")!;
        var day = new DateOnly(2026, 3, 29);
        Assert.Equal(new DateTime(2026, 3, 29, 0, 0, 0, DateTimeKind.Utc), berlin.Utc(day, 1));
        Assert.Equal(new DateTime(2026, 3, 29, 1, 30, 0, DateTimeKind.Utc), berlin.Utc(day, 2.5));
        Assert.Equal(new DateTime(2026, 3, 29, 15, 0, 0, DateTimeKind.Utc), berlin.Utc(day, 17));
        Assert.Equal(17, berlin.Hour(berlin.Utc(day, 17)), 9);
        Assert.Equal(day, berlin.Day(berlin.Utc(day, 23.5)));
    }
}
