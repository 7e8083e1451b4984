using Litterfall.Domain.Findings;
using Litterfall.Quantities.Measures;
using Xunit;

namespace Litterfall.UnitTests.Judging.Rules;

/// <summary>
/// A hose that drains back between mistings is filled before the nozzles spray. By hand: 2 m of 4 mm bore
/// hold π ÷ 4 × 0.4² × 200 = 25.13 mL; two nozzles of 90 mL/min give 3 mL a second, so 8.38 s to fill.
/// </summary>
public sealed class MistHoseTests
{
    private const string Hose = "hose: { length: 2 m, bore: 4 mm";

    [Fact]
    public void The_volume_of_the_hose_and_the_flow_give_the_time_to_fill_it()
    {
        Assert.Equal(8.378, MistingDay.Fill(Pose(20, Hose + " }").Design)!.Value, 0.001);
        // A pump that gives 600 mL/min, 10 mL/s, into the open hose: 2.513 s.
        Assert.Equal(2.513, MistingDay.Fill(Pose(20, Hose + ", fill: 600 mL/min }").Design)!.Value, 0.001);
        Assert.Null(MistingDay.Fill(Pose(20, Hose + ", checkValve: true }").Design));
        Assert.Null(MistingDay.Fill(Pose(20, "").Design));
    }

    [Theory]
    // 2 × (20 − 8.378) s × 3 mL/s = 69.7 mL; full: 2 × 20 × 3 = 120 mL; 8 s never spray.
    [InlineData(20, " }", 69.73)]
    [InlineData(20, ", checkValve: true }", 120)]
    [InlineData(8, " }", 0)]
    public void Only_what_leaves_the_nozzles_counts(int seconds, string more, double milliliters) =>
        Assert.Equal(milliliters, MistingDay.Misted(Pose(seconds, Hose + more).Design)!.Value, 0.01);

    [Fact]
    public void The_forecast_mists_as_much()
    {
        const string room = "room: { temperature: 21 C, humidity: 50 % }\n";
        var days = Pose(20, Hose + " }", room).Numbers.Climate!.Computed!.Days;
        Assert.Equal(0.06973, days.Misted, 0.0003);
        Assert.Equal(0, Pose(8, Hose + " }", room).Numbers.Climate!.Computed!.Days.Misted, 1e-9);
    }

    [Fact]
    public void A_misting_shorter_than_that_is_found()
    {
        RuleCheck.Check("hose-not-filled", Severity.Caution, Pose(8, Hose + " }"), Pose(9, Hose + " }"));
        Assert.Null(Pose(8, Hose + ", checkValve: true }").Finding("hose-not-filled"));
        // 200 cm × 8 ÷ 8.378 = 190.98 cm would just be full.
        Assert.Contains(
            "190 cm",
            Pose(8, Hose + " }").Finding("hose-not-filled")!.Fix,
            StringComparison.Ordinal
        );
    }

    private static PosedDesign Pose(int seconds, string hose, string more = "") =>
        RuleCheck.Pose(
            FormattableString.Invariant(
                $"misting: {{ nozzles: 2, each: 90 mL/min, times: [ {{ at: \"07:00\", for: {seconds} s }}, "
            )
                + FormattableString.Invariant($"{{ at: \"18:00\", for: {seconds} s }} ]")
                + (hose.Length > 0 ? $", {hose}" : "")
                + " }\n"
                + more
        );
}
