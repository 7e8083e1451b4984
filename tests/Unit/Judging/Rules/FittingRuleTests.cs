using Litterfall.Domain.Findings;
using Xunit;

namespace Litterfall.UnitTests.Judging.Rules;

/// <summary>Rules of vents, passages, water and heating on both sides of their limits.</summary>
public sealed class FittingRuleTests
{
    private const string Mist =
        "misting: { nozzles: 2, each: 90 mL/min, times: [ { at: \"07:00\", for: 20 s } ] }\n";

    [Theory]
    // Common practice, no source: 0.6 mm for flies, 2 mm for froglets. Meshes of 1.19 and 0.5 mm.
    [InlineData("vents: [ { area: 60 cm2, mesh: plastic-fly-screen } ]\nFROGS", Severity.Caution)]
    [InlineData("vents: [ { area: 60 cm2, mesh: steel-gauze-0.5 } ]\nFROGS", null)]
    [InlineData("vents: [ { area: 60 cm2, mesh: plastic-fly-screen } ]", null)]
    [InlineData(
        "vents: [ { area: 60 cm2, mesh: plastic-fly-screen } ]\ncrew: [ { animal: folsomia-candida, "
            + "count: 9 } ]",
        Severity.Caution
    )]
    // Without mesh the narrower edge counts; of 60 cm² a square of 7.7 cm.
    [InlineData("vents: [ { length: 10 cm, width: 3 mm } ]\nFROGS", Severity.Stop)]
    [InlineData("vents: [ { length: 10 cm, width: 2 mm } ]\nFROGS", Severity.Caution)]
    [InlineData("vents: [ { length: 10 cm, width: 0.6 mm } ]\nFROGS", null)]
    [InlineData("vents: [ { area: 60 cm2 } ]\nFROGS", Severity.Stop)]
    [InlineData(
        "vents: [ { area: 60 cm2 } ]\ncrew: [ { animal: folsomia-candida, count: 9 } ]",
        Severity.Caution
    )]
    // A mesh lid counts as far as any of it is open.
    [InlineData("lid: { material: steel-gauze-1.0, share: 20 % }\nFROGS", Severity.Caution)]
    [InlineData("lid: { material: steel-gauze-1.0, share: 0 % }\nFROGS", null)]
    [InlineData("lid: { material: steel-gauze-0.5, share: 20 % }\nFROGS", null)]
    public void Vents_hold_flies_and_frogs(string more, Severity? severity) =>
        Assert.Equal(severity, RuleCheck.Pose(more).Finding("vent-lets-flies-out")?.Severity);

    [Fact]
    public void An_open_vent_of_sixty_square_centimeters_is_as_wide_as_its_square()
    {
        // √60 = 7.746 cm.
        var finding = RuleCheck.Trips(
            "vent-lets-flies-out",
            Severity.Stop,
            RuleCheck.Pose("vents: [ { area: 60 cm2 } ]\nFROGS")
        );
        Assert.Equal(77.46, finding.Measured!.Value, 0.01);
    }

    [Fact]
    public void Very_fine_gauze_is_noted() =>
        // Own choice: 0.3 mm. Gauze of 0.25 and of 0.5 mm.
        RuleCheck.Check(
            "vent-mesh-too-fine",
            Severity.Note,
            RuleCheck.Pose("vents: [ { area: 60 cm2, mesh: steel-gauze-0.25 } ]"),
            RuleCheck.Pose("vents: [ { area: 60 cm2, mesh: steel-gauze-0.5 } ]")
        );

    [Theory]
    // 8.1 − 6 = 2.1 mm, 8 − 6 = 2 mm, 6.7 − 6 = 0.7 mm, 6.6 − 6 = 0.6 mm.
    [InlineData("hole: 8.1 mm, through: 6 mm", RuleCheck.Frogs, Severity.Stop)]
    [InlineData("hole: 8.1 mm, through: 6 mm", "", Severity.Caution)]
    [InlineData("hole: 8 mm, through: 6 mm", RuleCheck.Frogs, Severity.Caution)]
    [InlineData("hole: 6.7 mm, through: 6 mm", "", Severity.Caution)]
    [InlineData("hole: 6.6 mm, through: 6 mm", RuleCheck.Frogs, null)]
    [InlineData("hole: 20 mm, through: 6 mm, sealed: true", RuleCheck.Frogs, null)]
    // No fly is fed below the barrier, but a froglet gets there.
    [InlineData("hole: 8 mm, through: 6 mm, in: barrier", RuleCheck.Frogs, null)]
    [InlineData("hole: 8.1 mm, through: 6 mm, in: barrier", RuleCheck.Frogs, Severity.Stop)]
    public void Gaps_of_passages(string passage, string more, Severity? severity) =>
        Assert.Equal(
            severity,
            RuleCheck
                .Pose($"passages: [ {{ for: mist hose, {passage} }} ]\n{more}")
                .Finding("passage-gap")
                ?.Severity
        );

    [Theory]
    // A hose of 6 mm in a hole of 5.9 and of 6 mm.
    [InlineData(
        "passage-too-small",
        Severity.Caution,
        "passages: [ { for: mist hose, hole: 5.9 mm, through: 6 mm } ]",
        "passages: [ { for: mist hose, hole: 6 mm, through: 6 mm } ]"
    )]
    // Inside 44.5 cm: the upper third begins at 29.67 cm.
    [InlineData(
        "top-vents-only",
        Severity.Note,
        "vents: [ { area: 60 cm2, side: top }, { area: 60 cm2, height: 29.7 cm } ]",
        "vents: [ { area: 60 cm2, side: top }, { area: 60 cm2, height: 29.6 cm } ]"
    )]
    // A vent without a place may be low.
    [InlineData(
        "top-vents-only",
        Severity.Note,
        "vents: [ { area: 60 cm2, side: top } ]",
        "vents: [ { area: 60 cm2 } ]"
    )]
    [InlineData(
        "tap-water",
        Severity.Caution,
        "habits: { water: tap }\nFROGS",
        "habits: { water: rain }\nFROGS"
    )]
    [InlineData("tap-water", Severity.Note, "habits: { water: tap }", "habits: { water: purified }")]
    [InlineData("no-level-check", Severity.Note, Mist, Mist + "habits: { levelCheck: 7 d }")]
    [InlineData("no-level-check", Severity.Note, Mist + "habits: { water: rain }", "habits: { water: rain }")]
    // A keeping magazine: half the floor at most.
    [InlineData(
        "heat-mat-covers-too-much",
        Severity.Caution,
        "heating: { watts: 5, cover: 51 %, thermostat: true }\nFROGS",
        "heating: { watts: 5, cover: 50 %, thermostat: true }\nFROGS"
    )]
    [InlineData(
        "heat-without-thermostat",
        Severity.Caution,
        "heating: { watts: 5 }\nFROGS",
        "heating: { watts: 5, thermostat: true }\nFROGS"
    )]
    public void Fittings(string slug, Severity severity, string trips, string inside) =>
        RuleCheck.Check(slug, severity, RuleCheck.Pose(trips), RuleCheck.Pose(inside));

    [Theory]
    // EN 12150-1, from memory: toughened glass is drilled before it is toughened, never after.
    [InlineData("material: toughened-glass", "bulkhead", true)]
    [InlineData("material: toughened-glass, panes: cut", "bulkhead", false)]
    [InlineData("material: toughened-glass", "siphon", false)]
    [InlineData("material: float-glass", "bulkhead", false)]
    public void Toughened_glass_is_not_drilled(string glass, string drain, bool trips) =>
        Assert.Equal(
            trips ? Severity.Stop : null,
            RuleCheck
                .Pose(
                    $"drain: {{ kind: {drain}, height: 3 cm }}",
                    box: RuleCheck.Cube.Insert(RuleCheck.Cube.Length - 1, $", {glass} ")
                )
                .Finding("toughened-drilled")
                ?.Severity
        );

    [Theory]
    // A keeping magazine of 2014: 27 W for 60 × 45 cm = 0.27 m², 100 W/m²; half of it carries 200 W/m².
    [InlineData("27.1", "50 %", "its own area", 200.74)]
    // Under a fifth: 27 × 0.4 = 10.8 W are 10.8 ÷ 0.054 = 200 W/m² of mat, 40 of the floor.
    [InlineData("10.9", "20 %", "its own area", 201.85)]
    // Under four fifths: 28 ÷ 0.216 = 130 W/m² of mat, but 28 ÷ 0.27 = 103.7 of the floor.
    [InlineData("28", "80 %", "the whole floor", 103.70)]
    public void Power_of_the_heat_mat(string watts, string cover, string of, double wattsPerSquareMeter)
    {
        var finding = RuleCheck.Trips("heat-mat-too-strong", Severity.Caution, Mat(watts, cover));
        Assert.Equal(wattsPerSquareMeter, finding.Measured!.Value, 0.01);
        Assert.Contains(of, finding.Text, StringComparison.Ordinal);
        // 27 W, or 200 × 0.054 = 10.8 W, rounded down to whole watts.
        Assert.Contains(
            cover == "20 %" ? "mat of 10 W" : "mat of 27 W",
            finding.Fix,
            StringComparison.Ordinal
        );
    }

    /// <summary>Both stand just at 200 W/m² of their own area.</summary>
    [Theory]
    [InlineData("27", "50 %")]
    [InlineData("10.8", "20 %")]
    public void A_heat_mat_of_the_power_that_is_allowed(string watts, string cover) =>
        Assert.Null(Mat(watts, cover).Finding("heat-mat-too-strong"));

    private static PosedDesign Mat(string watts, string cover) =>
        RuleCheck.Pose(
            $"heating: {{ watts: {watts}, cover: {cover}, thermostat: true }}\nFROGS",
            box: "{ outside: { length: 60 cm, depth: 45 cm, height: 45 cm }, glass: { walls: 5 mm } }"
        );
}
