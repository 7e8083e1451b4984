using Litterfall.Domain.Findings;
using Xunit;

namespace Litterfall.UnitTests.Judging.Rules;

/// <summary>Bands by day and night, heat margins, sexes, roots and space of plants.</summary>
public sealed class BandRuleTests
{
    private const string Floor =
        "{ drainage: { material: expanded-clay-8-16, depth: 4 cm }, barrier: { material: "
        + "glass-fibre-screen }, "
        + "soil: { recipe: ready-rainforest, depth: 7 cm } }";

    private const string Bare = "{ soil: { recipe: ready-rainforest, depth: 7 cm } }";

    /// <summary>
    /// Own worked example: a room of 16 °C is 4 K under 20 to 25 °C by day; one of 22 °C is not.
    /// </summary>
    [Fact]
    public void A_cool_room_is_off_the_day_band() =>
        Trips.Check(
            "day-off-band",
            Severity.Caution,
            Pose("16 C", "animals: [ { animal: epipedobates-anthonyi, count: 3 } ]\n"),
            Pose("22 C", "animals: [ { animal: epipedobates-anthonyi, count: 3 } ]\n")
        );

    /// <summary>
    /// Nights of 16 to 20 °C: a room of 24 °C is at least 4 K above them, one of 19 °C is not.
    /// </summary>
    [Fact]
    public void A_warm_room_is_off_the_night_band() =>
        Trips.Check(
            "night-off-band",
            Severity.Caution,
            Pose("24 C", "animals: [ { animal: epipedobates-anthonyi, count: 3 } ]\n"),
            Pose("19 C", "animals: [ { animal: epipedobates-anthonyi, count: 3 } ]\n")
        );

    /// <summary>
    /// The limit is 28 °C: a box that reaches a little less under a strong lamp is warned of; one at 20 °C is
    /// not.
    /// </summary>
    [Fact]
    public void A_box_just_under_the_limit_has_little_margin()
    {
        const string Lamp =
            "lamps: [ { lamp: led-panel-6500k, watts: 30, above: 3 cm, on: \"08:00\", off: \"20:00\" } ]\n"
            + "animals: [ { animal: dendrobates-leucomelas, count: 3 } ]\n";
        double warmest = Pose("20 C", Lamp).Numbers.Climate!.AirMax.Value.Value;
        double room = 20.0 + (27.8 - warmest);
        Trips.Check(
            "little-heat-margin",
            Severity.Caution,
            Pose(FormattableString.Invariant($"{room:0.00} C"), Lamp),
            Pose("18 C", Lamp)
        );
    }

    [Fact]
    public void Pairs_without_sexes_are_noted() =>
        Trips.Check(
            "sexes-unknown",
            Severity.Note,
            Pose("22 C", "animals: [ { animal: dendrobates-tinctorius, count: 2 } ]\n"),
            Pose("22 C", "animals: [ { animal: dendrobates-tinctorius, count: 2, males: 1, females: 1 } ]\n")
        );

    /// <summary>Six large frogs on one isopod; two small frogs on two hundred.</summary>
    [Fact]
    public void Droppings_need_isopods() =>
        Trips.Check(
            "droppings-stay",
            Severity.Note,
            Pose(
                "22 C",
                "animals: [ { animal: dendrobates-tinctorius, count: 6 } ]\n"
                    + "crew: [ { animal: trichorhina-tomentosa, count: 1 } ]\n"
            ),
            Pose(
                "22 C",
                "animals: [ { animal: ranitomeya-imitator, count: 2 } ]\n"
                    + "crew: [ { animal: trichorhina-tomentosa, count: 200 } ]\n"
            )
        );

    /// <summary>
    /// Grown width² × π/4: ten ferns of 40 cm cover 1.26 m² of a floor of a fifth of that; two of 15 cm do
    /// not.
    /// </summary>
    [Fact]
    public void Grown_plants_need_ground() =>
        Trips.Check(
            "plants-crowded",
            Severity.Caution,
            Pose("22 C", "plants: [ { plant: nephrolepis-cordifolia, count: 10 } ]\n"),
            Pose("22 C", "plants: [ { plant: cryptanthus-bivittatus, count: 2 } ]\n")
        );

    [Fact]
    public void Two_plants_in_one_place_are_told()
    {
        string Two(int x) =>
            "plants: [ { plant: cryptanthus-bivittatus, count: 1, at: { x: 10 cm, y: 20 cm } }, "
            + $"{{ plant: cryptanthus-bivittatus, count: 1, at: {{ x: {x} cm, y: 20 cm }} }} ]\n";
        Trips.Check("plants-crowded", Severity.Note, Pose("22 C", Two(12)), Pose("22 C", Two(30)));
    }

    /// <summary>
    /// Without a drain and with more mist than leaves the box the soil fills up; under open mesh without
    /// mist it dries.
    /// </summary>
    [Fact]
    public void Roots_are_judged_by_the_forecast_at_their_place()
    {
        const string Fern = "plants: [ { plant: adiantum-raddianum, count: 1 } ]\n";
        const string Dry = "habits: { handMist: 1 mL }\n";
        const string Wet = "habits: { handMist: 300 mL }\n";
        var wet = RuleCheck.Pose(
            Fern + Wet + Lid("float-glass, thickness: 4 mm, gap: 1 mm") + Room("22 C"),
            Bare
        );
        var dry = RuleCheck.Pose(Fern + Dry + Lid("steel-gauze-1.0") + Room("22 C"), Bare);
        RuleCheck.Trips("plant-with-wet-roots", Severity.Caution, wet);
        Assert.Null(dry.Finding("plant-with-wet-roots"));
        RuleCheck.Trips("plant-with-dry-roots", Severity.Caution, dry);
        Assert.Null(wet.Finding("plant-with-dry-roots"));
    }

    private static string Lid(string material) => $"lid: {{ material: {material} }}\n";

    private static string Room(string celsius) => $"room: {{ temperature: {celsius}, humidity: 50 % }}\n";

    private static PosedDesign Pose(string room, string more) =>
        RuleCheck.Pose(Lid("float-glass, thickness: 4 mm, gap: 2 mm") + Room(room) + more, Floor);
}
