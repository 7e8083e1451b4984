using Litterfall.Physics.Parcel;
using Xunit;

namespace Litterfall.UnitTests.Physics.Parcel;

/// <summary>Curves of straight lines with steps, read off by hand.</summary>
public sealed class TimeCurveTests
{
    [Fact]
    public void A_sum_keeps_the_steps_of_each()
    {
        var sum = TimeCurve.Sum(
            TimeCurve.Block(2.0, 10.0, 30.0),
            new TimeCurve([0.0, 40.0], [0.0, 4.0]),
            TimeCurve.Zero
        );
        (double At, double Value)[] points =
        [
            (-5.0, 0.0),
            (0.0, 0.0),
            (5.0, 0.5),
            (10.0, 3.0),
            (20.0, 4.0),
            (30.0, 3.0),
            (35.0, 3.5),
            (50.0, 4.0),
        ];
        Assert.All(points, p => Assert.Equal(p.Value, sum.From(p.At), 1e-12));
    }

    /// <summary>Before a step the value before it holds: 2 until 10 s, 6 from then on.</summary>
    [Fact]
    public void A_step_is_taken_from_its_time_on()
    {
        var step = TimeCurve.Sum(new TimeCurve([10.0, 10.0], [2.0, 6.0]), new TimeCurve([0.0], [1.0]));
        Assert.Equal(3.0, step.From(Math.BitDecrement(10.0)), 1e-12);
        Assert.Equal(7.0, step.From(10.0), 1e-12);
    }

    [Fact]
    public void Nothing_sums_to_nothing()
    {
        Assert.Equal(0.0, TimeCurve.Sum().From(3.0));
        Assert.Empty(TimeCurve.Sum(TimeCurve.Zero, TimeCurve.Zero).Seconds);
    }
}
