using Litterfall.Domain.Findings;
using Xunit;

namespace Litterfall.UnitTests.Judging.Rules;

/// <summary>
/// Rules on the computed air of the box. Limits are those of the species entries (E. anthonyi: avoid above
/// 27 °C,
/// common practice) and of published envelopes: a slim vent keeps a box above 85 %, a mesh top of 45 cm
/// does not;
/// each kelvin of box over room costs a clear pane 3 % of humidity.
/// </summary>
public sealed class AirRuleTests
{
    private const string Clay =
        "{ drainage: { material: expanded-clay-8-16, depth: 5 cm }, "
        + "soil: { recipe: standard-rainforest, depth: 7 cm } }";

    private const string Lid = "lid: { material: glass, thickness: 4 mm, gap: 2 mm }\n";
    private const string Slim =
        "vents: [ { length: 30 cm, width: 2 cm, height: 10 cm, mesh: steel-gauze-0.5, side: front }, "
        + "{ length: 30 cm, width: 2 cm, height: 44 cm, mesh: steel-gauze-0.5, side: top } ]\n";

    private const string Mesh = "lid: { material: steel-gauze-0.5, share: 100 % }\n";
    private const string Room = "room: { temperature: 21 C, swing: 1 K, humidity: 45 % }\n";

    [Fact]
    public void Lamps_warm_a_box_above_what_its_frogs_should_have() =>
        RuleCheck.Check(
            "box-too-warm",
            Severity.Caution,
            Pose(Lid + Slim + Warm + Lamp(60) + RuleCheck.Frogs),
            Pose(Lid + Slim + Warm + Lamp(5) + RuleCheck.Frogs)
        );

    [Fact]
    public void Lamps_that_heat_a_box_beyond_the_limit_stop_it_in_a_room_that_would_not()
    {
        var hot = Pose(Lid + Slim + Warm + Lamp(150) + RuleCheck.Frogs);
        var finding = RuleCheck.Trips("overheats", Severity.Stop, hot);
        Assert.Contains("With its lamps", finding.Text, StringComparison.Ordinal);
        Assert.Null(Pose(Lid + Slim + Warm + RuleCheck.Frogs).Finding("overheats"));
    }

    /// <summary>A damp floor under a mesh cools itself below its room (wet bulb).</summary>
    [Fact]
    public void A_box_colder_than_its_room_is_told()
    {
        const string cool = "room: { temperature: 16.1 C, humidity: 20 % }\n";
        var frogs = "animals: [ { animal: dendrobates-auratus, count: 1 } ]\n";
        RuleCheck.Check(
            "box-too-cold",
            Severity.Caution,
            Pose(Mesh + cool.Replace("16.1", "18.1", StringComparison.Ordinal) + Mist(40) + frogs),
            Pose(Mesh + cool.Replace("16.1", "22", StringComparison.Ordinal) + Mist(40) + frogs)
        );
    }

    [Fact]
    public void A_box_below_twelve_degrees_stops() =>
        RuleCheck.Trips(
            "box-too-cold",
            Severity.Stop,
            Pose(Lid + Slim + "room: { temperature: 11 C, humidity: 50 % }\n" + Mist(20) + RuleCheck.Frogs)
        );

    [Fact]
    public void A_mesh_top_in_a_dry_room_dries_frogs_and_a_slim_vent_does_not() =>
        RuleCheck.Check(
            "air-too-dry",
            Severity.Stop,
            Pose(Mesh + "room: { temperature: 22 C, humidity: 30 % }\n" + Mist(5) + RuleCheck.Frogs),
            Pose(Lid + Slim + Room + Mist(20) + RuleCheck.Frogs)
        );

    [Fact]
    public void A_mesh_top_vents_more_than_a_short_mist_brings() =>
        RuleCheck.Check(
            "vented-more-than-misted",
            Severity.Caution,
            Pose(Mesh + Room + Mist(10)),
            Pose(Lid + Slim + Room + Mist(20))
        );

    [Fact]
    public void Long_mist_in_a_near_closed_box_without_drain_cannot_be_balanced() =>
        RuleCheck.Check(
            "mist-cannot-be-balanced",
            Severity.Caution,
            Pose(Lid + Slim + Room + Mist(120)),
            Pose(Lid + Slim + Room + Mist(120) + "drain: { kind: siphon }\n")
        );

    [Fact]
    public void Panes_fog_at_weekends_where_the_heating_goes_off()
    {
        const string weekend =
            "room: { temperature: 22 C, humidity: 45 %, weekend: { temperature: 14 C } }\n";
        var fogs = RuleCheck.Trips("panes-fog", Severity.Note, Pose(Lid + Gap + weekend + Mist(20)));
        Assert.Contains("at weekends", fogs.Text, StringComparison.Ordinal);
        Assert.Null(Pose(Mesh + Room + Mist(20)).Finding("panes-fog"));
    }

    /// <summary>
    /// No opening but a thin gap, long mist, a lamp from below, a cold window behind every pane.
    /// </summary>
    [Fact]
    public void Air_stands_where_nothing_lets_it_out() =>
        RuleCheck.Check(
            "stale-air",
            Severity.Caution,
            Pose(
                "lid: { material: glass, thickness: 4 mm, gap: 0.6 mm }\n"
                    + "room: { temperature: 20 C, humidity: 45 %, faces: { front: window, back: "
                    + "window, left: "
                    + "window, right: window } }\n"
                    + "heating: { watts: 15, thermostat: false }\n"
                    + Mist(60)
                    + RuleCheck.Frogs
            ),
            Pose(Mesh + Room + Mist(20) + RuleCheck.Frogs)
        );

    [Fact]
    public void Plants_that_must_dry_get_no_leaf_that_is_always_wet() =>
        RuleCheck.Check(
            "leaves-never-dry",
            Severity.Caution,
            Pose(Lid + Gap + Room + Mist(60) + Hoya),
            Pose(Mesh + Room + Mist(2) + Hoya)
        );

    [Fact]
    public void A_near_closed_lid_under_a_misting_system_lets_no_fresh_air_in() =>
        RuleCheck.Check(
            "no-fresh-air",
            Severity.Caution,
            Pose(
                Lid.Replace("2 mm", "0.5 mm", StringComparison.Ordinal)
                    + Tiny
                    + Room
                    + Mist(20)
                    + RuleCheck.Frogs
            ),
            Pose(
                Lid
                    + Slim
                    + Slim.Replace("vents", "#", StringComparison.Ordinal)
                    + Room
                    + Mist(20)
                    + RuleCheck.Frogs
            )
        );

    /// <summary>Nobody entered a misting: that is unknown, not none.</summary>
    [Fact]
    public void Without_misting_a_dry_box_is_only_noted()
    {
        var dry = Pose(Mesh + "room: { temperature: 22 C, humidity: 30 % }\n" + RuleCheck.Frogs);
        RuleCheck.Trips("air-too-dry", Severity.Note, dry);
        Assert.Null(dry.Finding("vented-more-than-misted"));
    }

    private const string Warm = "room: { temperature: 25 C, humidity: 50 % }\n";
    private const string Gap =
        "vents: [ { length: 30 cm, width: 1 cm, height: 44 cm, mesh: steel-gauze-0.5 } ]\n";
    private const string Tiny = "vents: [ { area: 0.5 cm2, height: 44 cm, mesh: steel-gauze-0.5 } ]\n";
    private const string Hoya = "plants: [ { plant: hoya-curtisii, at: { x: 20 cm, y: 20 cm } } ]\n";

    private static string Lamp(int watts) =>
        FormattableString.Invariant(
            $"lamps: [ {{ lamp: led-bar-6500k, watts: {watts}, on: \"08:00\", off: \"20:00\" }} ]\n"
        );

    /// <summary>Two nozzles of 90 mL/min, twice a day.</summary>
    private static string Mist(int seconds) =>
        FormattableString.Invariant(
            $"misting: {{ nozzles: 2, each: 90 mL/min, times: [ {{ at: \"08:00\", for: {seconds} s }}, "
        ) + FormattableString.Invariant($"{{ at: \"18:00\", for: {seconds} s }} ] }}\n");

    private static PosedDesign Pose(string more) => Posed.Run(RuleCheck.Cube, Clay, more);
}
