using Litterfall.Domain.Checking;
using Litterfall.Domain.Findings;
using Litterfall.UnitTests.House;
using Xunit;

namespace Litterfall.UnitTests.Judging.Rules;

/// <summary>What cannot be true is named, and numbers say what they are of.</summary>
public sealed class TruthRuleTests
{
    private const string Room = "headspace: { hold: { air: 24 C, humidity: 90 %, airChanges: 2 } }\n";

    private static readonly DateTime First = new(2026, 8, 14);

    private const string Mist =
        "misting: { nozzles: 1, each: 60 mL/min, times: [ { at: \"07:30\", for: 30 s } ] }\n";

    private static string Leaves(int centimeters) =>
        "{ soil: { recipe: standard-rainforest, depth: 7 cm }, "
        + FormattableString.Invariant($"litter: {{ material: oak-leaves, depth: {centimeters} cm }} }}");

    /// <summary>Held air cools no room: 35 and 70 °C are over any band.</summary>
    [Theory]
    [InlineData(35)]
    [InlineData(70)]
    public void Held_air_does_not_hide_a_hot_room(int celsius)
    {
        var hot = RuleCheck.Pose(
            FormattableString.Invariant($"FROGS\n{Room}room: {{ temperature: {celsius} C, humidity: 40 % }}")
        );
        RuleCheck.Trips("overheats", Severity.Stop, hot);
        var finding = RuleCheck.Trips("room-too-hot", Severity.Caution, hot);
        Assert.Equal(celsius, finding.Measured!.Value, 1e-9);
        Assert.Equal("room.temperature", finding.Where);
        var mild = RuleCheck.Pose($"FROGS\n{Room}room: {{ temperature: 22 C, humidity: 40 % }}");
        Assert.Null(mild.Finding("overheats"));
        Assert.Null(mild.Finding("room-too-hot"));
    }

    /// <summary>
    /// Own limit of 230 lm/W: the best diodes sold give 200 to 220 (from memory). 2000 lm from 2 W are 1000.
    /// The cube has 1936 cm² of floor and 2 · 88 · 44.5 = 7832 of wall: 390 plugs of 25 cm².
    /// </summary>
    [Theory]
    [InlineData("lamps: [ { lamp: led-bar-6500k, lumens: 2000, watts: 2 } ]", "lamps[0].lumens")]
    [InlineData("lid: { material: glass, thickness: 4 mm, gap: 2 mm, overlap: 5 mm }", "lid.overlap")]
    [InlineData("plants: [ { plant: ficus-pumila, count: 391 } ]", "plants[0].count")]
    [InlineData("FROGS2", "animals[0].count")]
    public void Entries_that_contradict_are_named(string more, string where)
    {
        var frogs = "animals: [ { animal: epipedobates-anthonyi, count: 3, males: 3, females: 3 } ]";
        var posed = RuleCheck.Pose(more.Replace("FROGS2", frogs, StringComparison.Ordinal));
        var finding = RuleCheck.Trips("entries-contradict", Severity.Caution, posed);
        Assert.Equal(where, finding.Where);
    }

    [Theory]
    [InlineData("lamps: [ { lamp: led-bar-6500k, lumens: 2000, watts: 18 } ]")]
    [InlineData("lid: { material: glass, thickness: 4 mm, overlap: 5 mm }")]
    [InlineData("plants: [ { plant: ficus-pumila, count: 390 } ]")]
    public void Entries_that_can_be_are_not(string more) =>
        Assert.Null(RuleCheck.Pose(more).Finding("entries-contradict"));

    /// <summary>A log of 0.46 means 46 %: as percent no room is so dry.</summary>
    [Fact]
    public void A_log_of_shares_is_named()
    {
        string Log(string humidity) =>
            "time,temperature C,humidity %\n"
            + string.Concat(
                Enumerable
                    .Range(0, 40)
                    .Select(h =>
                        FormattableString.Invariant(
                            $"{First.AddHours(h):yyyy-MM-dd HH:mm},2{h % 9}.1,{humidity}{h % 7}\n"
                        )
                    )
            );
        var shares = RoomLog.Read("room.csv", Log("0.4")).Value!;
        Assert.Contains(shares.Oddities(), o => o.Contains("shares of 1", StringComparison.Ordinal));
        var percent = RoomLog.Read("room.csv", Log("4")).Value!;
        Assert.DoesNotContain(percent.Oddities(), o => o.Contains("shares of 1", StringComparison.Ordinal));
    }

    /// <summary>Leaves laid at their least depth: one note, no 0 days, and leaves stay on.</summary>
    [Fact]
    public void Leaves_of_two_centimeters_make_sense()
    {
        var floor = Leaves(2);
        var posed = Posed.Run(RuleCheck.Cube, floor, Mist);
        Assert.Null(posed.Numbers.Life!.Masses.LitterLow);
        var finding = RuleCheck.Trips("litter-runs-low", Severity.Note, posed);
        Assert.DoesNotContain(" 0 days", finding.Text + finding.Fix, StringComparison.Ordinal);
        var first = posed.Numbers.Life.Days[0].LitterGrams;
        Assert.All(posed.Numbers.Life.Days, day => Assert.True(day.LitterGrams > 0.45 * first));
    }

    [Fact]
    public void Without_eaters_the_crew_is_not_said_to_be_eaten()
    {
        var floor = Leaves(4);
        const string crew = "crew: [ { animal: folsomia-candida, count: 400 } ]\n" + Mist;
        var alone = Posed.Run(RuleCheck.Cube, floor, crew).Numbers.Life!;
        Assert.DoesNotContain(alone.Because, r => r.Words.Contains("take", StringComparison.Ordinal));
        Assert.NotNull(alone.SpringtailsThen.Low);
        Assert.InRange(
            alone.SpringtailsThen.Value.Si,
            alone.SpringtailsThen.Low!.Si,
            alone.SpringtailsThen.High!.Si
        );
        var eaten = Posed.Run(RuleCheck.Cube, floor, crew + RuleCheck.Frogs).Numbers.Life!;
        Assert.Contains(eaten.Because, r =>
            r.Words.Contains("animals take", StringComparison.Ordinal)
            || r.Words.Contains("animals would take", StringComparison.Ordinal)
        );
    }

    /// <summary>
    /// One finding for one fault: 2 mm of acrylic over 58 cm sag under their own weight, 12 mm do not, and
    /// there only damp bows the lid.
    /// </summary>
    [Theory]
    [InlineData(2, "lid-sags", "acrylic-lid-sags")]
    [InlineData(12, "acrylic-lid-sags", "lid-sags")]
    public void A_plastic_lid_has_one_finding(int millimeters, string there, string not)
    {
        const string box =
            "{ outside: { length: 60 cm, depth: 45 cm, height: 45 cm }, glass: { walls: 5 mm, base: 5 mm } }";
        var posed = RuleCheck.Pose(
            FormattableString.Invariant($"lid: {{ material: acrylic-sheet, thickness: {millimeters} mm }}"),
            box: box
        );
        Assert.NotNull(posed.Finding(there));
        Assert.Null(posed.Finding(not));
    }

    /// <summary>
    /// EN 572-2, from memory: 0.2 mm for float glass of 3 to 6 mm, 0.3 mm for 8 to 12 mm.
    /// </summary>
    [Theory]
    [InlineData("5 mm", 4.8)]
    [InlineData("6 mm", 5.8)]
    [InlineData("8 mm", 7.7)]
    [InlineData("10 mm", 9.7)]
    public void Thick_glass_may_be_thinner_by_more(string walls, double least)
    {
        var posed = RuleCheck.Pose(
            "",
            box: "{ inside: { length: 60 cm, depth: 45 cm, height: 45 cm }, glass: { walls: "
                + $"{walls} }} }}"
        );
        var wall = posed.Numbers.Panes[0].Stress.Inputs.Single(i => i.Name == "least wall thickness");
        Assert.Equal(least, wall.Value, 1e-9);
    }

    /// <summary>
    /// Inside 590 × 440 mm, a gap of 2 mm, a vent of 200 × 40 mm in a strip of acrylic 40 + 2 · 15 mm deep: a
    /// pane of 586 × 366 mm and a strip of 586 × 70 mm less the vent, all 4 mm thick.
    /// </summary>
    [Fact]
    public void The_lid_weighs_what_is_cut()
    {
        const string box =
            "{ outside: { length: 60 cm, depth: 45 cm, height: 45 cm }, glass: { walls: 5 mm, base: 5 mm } }";
        var posed = RuleCheck.Pose(
            "lid: { material: glass, thickness: 4 mm, gap: 2 mm }\nvents: [ { length: 20 cm, width: 4 cm, "
                + "height: 44 cm, side: top } ]",
            box: box
        );
        double glass = 0.586 * 0.366 * 0.004 * 2500;
        double acrylic = ((0.586 * 0.07) - 0.008) * 0.004 * 1190;
        Assert.Equal(glass + acrylic, posed.Numbers.Weights.Lid!.Si, 1e-9);
        var (low, high) = posed.Numbers.Weights.WetBand;
        Assert.InRange(posed.Numbers.Weights.Wet.Si, low.Si, high.Si);
    }

    /// <summary>Nearer to a lamp as wide as the box it is brighter: on the leaves more.</summary>
    [Fact]
    public void Light_is_told_on_the_leaves_and_at_the_soil()
    {
        var floor = Leaves(5);
        var light = Posed
            .Run(
                RuleCheck.Cube,
                floor,
                "lamps: [ { lamp: led-bar-6500k, lumens: 2000, watts: 18, above: 3 cm } ]"
            )
            .Numbers.Light!;
        Assert.InRange(light.LitterMean!.Value.Si / light.GroundMean.Value.Si, 1.02, 1.4);
        Assert.InRange(light.GroundLux.Value.Si, light.GroundLux.Low!.Si, light.GroundLux.High!.Si);
        Assert.Null(RuleCheck.Pose("lamps: [ { lamp: led-bar-6500k } ]").Numbers.Light!.LitterMean);
    }
}
