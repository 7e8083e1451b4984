using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Forecasting.Climate;
using Xunit;

namespace Litterfall.UnitTests.Judging.Rules;

/// <summary>A sine about its mean is above a limit for 24/π × arccos((limit − mean)/swing) hours a
/// day.</summary>
public sealed class RoomHoursTests
{
    [Theory]
    // arccos 0.5 = π/3: 8 h; arccos 0 = π/2: 12 h; arccos −0.5 = 2π/3: 16 h; at and beyond the ends 0 and 24.
    [InlineData(27, 2, 28, 8)]
    [InlineData(28, 2, 28, 12)]
    [InlineData(29, 2, 28, 16)]
    [InlineData(26, 2, 28, 0)]
    [InlineData(20, 2, 28, 0)]
    [InlineData(30, 2, 28, 24)]
    [InlineData(31, 2, 28, 24)]
    [InlineData(28, 0, 28, 0)]
    [InlineData(28.01, 0, 28, 24)]
    public void HoursAbove(double mean, double swing, double limit, double hours)
    {
        var day = new RoomHours(
            "in July",
            Figure.Choice("mean", mean, Unit.Celsius, "test"),
            Figure.Choice("swing", swing, Unit.Kelvin, "test"),
            false
        );
        var time = day.HoursAbove(Figure.Choice("limit", limit, Unit.Celsius, "test"));
        Assert.Equal(hours * 60, time.Value, 6);
        Assert.Equal(mean + swing, day.Warmest.Value, 9);
        Assert.Equal(mean - swing, day.Coolest.Value, 9);
    }

    [Fact]
    public void AMonthTakesFromTheYearWhatItLeavesOut()
    {
        var days = RoomHours.Of(
            Trips
                .In(
                    "room: { temperature: 20 C, swing: 1 K, weekend: { swing: 3 K }, "
                        + "months: { feb: { humidity: 40 % }, jul: { temperature: 28 C } } }"
                )
                .Numbers.Design
        );
        Assert.Equal(
            [("over the year", 21.0), ("on weekends", 23), ("in February", 21), ("in July", 29)],
            days.Select(d => (d.Name, Math.Round(d.Warmest.Value, 9)))
        );
    }
}
