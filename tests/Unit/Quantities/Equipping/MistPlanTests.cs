using Litterfall.Domain.Checking;
using Litterfall.Quantities.Equipping;
using Litterfall.UnitTests.House;
using Litterfall.UnitTests.Judging;

namespace Litterfall.UnitTests.Quantities.Equipping;

/// <summary>Tube, pump, fittings and feet by hand.</summary>
public sealed class MistPlanTests
{
    private const string Box =
        "{ outside: { length: 60 cm, depth: 45 cm, height: 45 cm }, glass: { walls: 5 mm } }";

    private const string Floor = "{ soil: { recipe: ready-rainforest, depth: 6 cm } }";

    public static TheoryData<string> Samples =>
        [.. SampleFiles.Paths.Where(p => p.StartsWith("samples/", StringComparison.Ordinal))];

    private static MistPlan Plan(string more)
    {
        var numbers = Posed.Run(Box, Floor, more).Numbers;
        return MistPlan.Of(numbers.Design, numbers.Box)!;
    }

    /// <summary>
    /// Own ways 0.5 m and 1.5 m, 0.45 m up, 0.59 m along and 0.4 × 0.44 m forward: 3.216 m; a tenth more is
    /// 3.538 m, up to the next decimeter 3.6 m.
    /// </summary>
    [Fact]
    public void Tube_of_one_box() =>
        Assert.Equal(3.6, Plan("misting: { nozzles: 2, each: 90 mL/min }").Tubing.Si, 1e-9);

    /// <summary>A hose of 2.4 m as entered, 0.5 m to the tank: 2.9 m, a tenth more 3.19, so 3.2 m.</summary>
    [Fact]
    public void A_hose_that_is_entered_is_bought()
    {
        var plan = Plan("misting: { nozzles: 2, each: 90 mL/min, hose: { length: 2.4 m, bore: 4 mm } }");
        Assert.Equal(3.2, plan.Tubing.Si, 1e-9);
        Assert.True(plan.IsEntered);
    }

    /// <summary>
    /// Two boxes on a bench: 0.766 m more in the second and 0.60 + 0.10 m to reach it, 4.682 m; a tenth more
    /// is 5.150 m, up to 5.2 m. A T for each of four nozzles and one for the branch, two elbows each.
    /// </summary>
    [Fact]
    public void Two_boxes_on_a_bench_share_a_pump()
    {
        var plan = Plan("misting: { nozzles: 2, each: 90 mL/min }\nboxes: 2");
        Assert.Equal((2, 1), (plan.Sharing.Si, plan.Systems.Si));
        Assert.Equal(5.2, plan.Tubing.Si, 1e-9);
        Assert.Equal((5, 4), (plan.Tees.Si, plan.Elbows.Si));
    }

    [Fact]
    public void Each_kit_has_a_pump_of_its_own()
    {
        var plan = Plan("misting: { nozzles: 2, each: 90 mL/min }\nboxes: 3\nform: kit");
        Assert.Equal((1, 3, 6), (plan.Sharing.Si, plan.Systems.Si, plan.Tees.Si));
        Assert.Equal(3.6, plan.Tubing.Si, 1e-9);
    }

    /// <summary>The pumps of a system give at least what its nozzles take, however many there are.</summary>
    [Theory]
    [InlineData(1, "40 mL/min", 1)]
    [InlineData(8, "90 mL/min", 1)]
    [InlineData(30, "100 mL/min", 3)]
    [InlineData(100, "1 L/min", 4)]
    public void The_pump_feeds_its_nozzles(int nozzles, string each, int boxes)
    {
        var plan = Plan(
            FormattableString.Invariant($"misting: {{ nozzles: {nozzles}, each: {each} }}\nboxes: {boxes}")
        );
        var liters =
            double.Parse(each.Split(' ')[0]) * (each.Contains(" L/", StringComparison.Ordinal) ? 1 : 1e-3);
        var nozzlesAsk = plan.Sharing.Si * nozzles * liters * 1e-3 / 60;
        Assert.True(plan.Pump!.Flow!.Si * plan.PumpsEach.Si >= nozzlesAsk);
        Assert.True(plan.Sharing.Si * plan.Systems.Si >= boxes);
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void The_pump_of_a_sample_feeds_its_nozzles(string sample)
    {
        var numbers = Posed.Sample(sample).Numbers;
        if (MistPlan.Of(numbers.Design, numbers.Box) is { } plan)
        {
            Assert.True(plan.Pump!.Flow!.Si * plan.PumpsEach.Si >= plan.NozzleFlow.Si);
            Assert.True(plan.Tank!.Volume!.Si >= plan.TankNeed!.Si);
        }
        else
        {
            Assert.Null(numbers.Design.Design.Misting);
        }
    }

    /// <summary>
    /// 438 mm inside less 40 mm of foam at the back and the right: 398 × 398 mm. A foot every 15 cm at most
    /// (common practice) makes 3 spans and 4 feet each way: 16, each 60 mm high.
    /// </summary>
    [Fact]
    public void Feet_of_the_tall_box()
    {
        var numbers = Posed.Sample("samples/tall-raised-floor.viv.yaml").Numbers;
        var feet = RaisedFeet.Of(numbers.Design, numbers.Box)!;
        Assert.Equal(16, feet.Count.Si);
        Assert.Equal(0.06, feet.Height.Si, 1e-9);
    }

    /// <summary>A fitting is never larger than its hole, and at most 3 mm smaller (own choice).</summary>
    [Theory]
    [InlineData("22 mm", "bulkhead-22")]
    [InlineData("24 mm", "bulkhead-22")]
    [InlineData("25 mm", "bulkhead-25")]
    [InlineData("12 mm", null)]
    [InlineData("60 mm", null)]
    public void A_fitting_goes_through_its_hole(string hole, string? key)
    {
        var numbers = Posed
            .Run(Box, Floor, $"drain: {{ kind: bulkhead, height: 3 cm, diameter: {hole} }}")
            .Numbers;
        Assert.Equal(key, DrainPlan.Of(numbers.Design, numbers.Box)!.Fitting?.Key);
    }
}
