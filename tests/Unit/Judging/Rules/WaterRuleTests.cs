using Litterfall.Domain.Findings;
using Xunit;

namespace Litterfall.UnitTests.Judging.Rules;

/// <summary>Rules on the water forecast, posed with a held headspace so that the gain is known.</summary>
public sealed class WaterRuleTests
{
    private const string Clay =
        "{ drainage: { material: expanded-clay-8-16, depth: 5 cm }, "
        + "soil: { recipe: standard-rainforest, depth: 7 cm } }";

    private const string Leaves =
        "{ drainage: { material: expanded-clay-8-16, depth: 5 cm }, "
        + "soil: { recipe: standard-rainforest, depth: 7 cm }, litter: { material: oak-leaves, "
        + "depth: 3 cm } }";

    private const string Springtails = "crew: [ { animal: folsomia-candida, count: 400 } ]\n";

    [Fact]
    public void Without_a_drain_water_reaches_the_barrier_unless_the_air_takes_it() =>
        RuleCheck.Check("water-at-barrier", Severity.Caution, Pose(Clay, 60, 2), Pose(Clay, 1, 2));

    [Fact]
    public void A_reservoir_that_fills_in_days_is_too_much_work() =>
        RuleCheck.Check(
            "drain-interval-short",
            Severity.Caution,
            Pose(Clay, 200, 2, "drain: { kind: siphon }\n"),
            Pose(Clay, 30, 2, "drain: { kind: siphon }\n")
        );

    [Fact]
    public void Without_drainage_the_soil_fills_and_loses_its_air() =>
        RuleCheck.Check(
            "soil-without-air",
            Severity.Caution,
            Pose("{ soil: { recipe: standard-rainforest, depth: 7 cm } }", 60, 1),
            Pose("{ soil: { recipe: standard-rainforest, depth: 7 cm } }", 1, 1)
        );

    [Fact]
    public void Springtails_stop_breeding_where_more_is_vented_than_misted() =>
        RuleCheck.Check(
            "soil-too-dry-for-crew",
            Severity.Caution,
            Pose(Clay, 5, 15, Springtails),
            Pose(Clay, 60, 2, Springtails)
        );

    [Fact]
    public void Leaves_dry_crisp_between_two_mistings_in_a_draft() =>
        RuleCheck.Check("litter-crust", Severity.Note, Pose(Leaves, 20, 15), Pose(Leaves, 60, 1));

    [Fact]
    public void The_ledger_of_a_forecast_closes() =>
        Assert.Null(Pose(Leaves, 60, 2).Finding("water-ledger-open"));

    /// <summary>Two nozzles of 90 mL/min, three times a day, so 9 mL a day per second.</summary>
    private static PosedDesign Pose(string floor, int seconds, int airChanges, string more = "") =>
        Posed.Run(RuleCheck.Cube, floor, more + Misting(seconds / 3.0) + Held(airChanges));

    private static string Misting(double seconds)
    {
        var times = new[] { "07:00", "13:00", "19:00" }.Select(at =>
            FormattableString.Invariant($"{{ at: \"{at}\", for: {seconds:0.##} s }}")
        );
        return "misting: { nozzles: 2, each: 90 mL/min, times: [ " + string.Join(", ", times) + " ] }\n";
    }

    private static string Held(int airChanges) =>
        "room: { temperature: 21 C, humidity: 50 % }\n"
        + FormattableString.Invariant(
            $"headspace: {{ hold: {{ air: 24 C, humidity: 92 %, airChanges: {airChanges} }} }}\n"
        );
}
