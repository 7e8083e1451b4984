using System.Collections.Immutable;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Xunit;

namespace Litterfall.UnitTests.Judging.Rules;

/// <summary>Rules of layers, barrier, drain, litter, wood and stone on both sides of their limits.</summary>
public sealed class FloorRuleTests
{
    private const string Clay = "drainage: { material: expanded-clay-8-16, depth: 5 cm }";
    private const string Soil = "soil: { recipe: ready-rainforest, depth: 7 cm }";
    private const string Mesh = "barrier: { material: plastic-fly-screen, upturn: 15 mm }";
    private const string Mist =
        "misting: { nozzles: 2, each: 90 mL/min, times: [ { at: \"07:00\", for: 20 s } ] }";

    [Theory]
    // Common practice, no source: what comes in must be taken out.
    [InlineData("no-drain", Clay + ", " + Soil, "", Clay + ", " + Soil, "drain: { kind: siphon }")]
    [InlineData("no-drain", "drainage: { raised: 6 cm }, " + Soil, "", Soil, "")]
    // Common practice, no source: 1 cm below the barrier. 5 − 1 = 4 cm.
    [InlineData(
        "drain-above-barrier",
        Clay + ", " + Soil,
        "drain: { kind: standpipe, height: 41 mm }",
        Clay + ", " + Soil,
        "drain: { kind: standpipe, height: 4 cm }"
    )]
    [InlineData("no-barrier", Clay + ", " + Soil, "", Clay + ", " + Mesh + ", " + Soil, "")]
    [InlineData("no-barrier", Clay + ", " + Soil, "", Soil, "")]
    // Common practice, no source: 3 cm, and 4 cm under automatic misting.
    [InlineData(
        "drainage-too-thin",
        "drainage: { material: expanded-clay-8-16, depth: 29 mm }, " + Soil,
        "",
        "drainage: { material: expanded-clay-8-16, depth: 3 cm }, " + Soil,
        ""
    )]
    [InlineData(
        "drainage-too-thin",
        "drainage: { material: expanded-clay-8-16, depth: 39 mm }, " + Soil,
        Mist,
        "drainage: { material: expanded-clay-8-16, depth: 4 cm }, " + Soil,
        Mist
    )]
    public void Drainage(string slug, string trips, string tripsMore, string inside, string insideMore) =>
        RuleCheck.Check(slug, Severity.Caution, Pose(trips, tripsMore), Pose(inside, insideMore));

    [Theory]
    // Common practice, no source: 2.5 cm. The thinnest step decides.
    [InlineData(
        "soil-too-thin",
        "soil: { recipe: ready-rainforest, front: 24 mm, back: 7 cm }",
        "",
        "soil: { recipe: ready-rainforest, front: 25 mm, back: 7 cm }",
        ""
    )]
    [InlineData(
        "soil-too-thin",
        "soil: { recipe: ready-rainforest, zones: [ { share: 90 %, depth: 7 cm }, { share: 10 %, "
            + "depth: 2 cm } ] }",
        "",
        "soil: { recipe: ready-rainforest, zones: [ { share: 90 %, depth: 7 cm }, { share: 10 %, "
            + "depth: 3 cm } ] }",
        ""
    )]
    // Common practice, no source: 2 cm of loose leaves.
    [InlineData(
        "litter-too-thin",
        Soil + ", litter: { material: oak-leaves, depth: 19 mm }",
        "",
        Soil + ", litter: { material: oak-leaves, depth: 2 cm }",
        ""
    )]
    public void SoilAndLeaves(
        string slug,
        string trips,
        string tripsMore,
        string inside,
        string insideMore
    ) => RuleCheck.Check(slug, Severity.Caution, Pose(trips, tripsMore), Pose(inside, insideMore));

    [Theory]
    // tan 25° = 0.4663; over 44 cm that is 20.52 cm: from 4 cm to 24.6 is steeper, to 24.5 is not.
    [InlineData(
        "soil-too-steep",
        "soil: { recipe: ready-rainforest, front: 4 cm, back: 24.6 cm }",
        "",
        "soil: { recipe: ready-rainforest, front: 4 cm, back: 24.5 cm }",
        ""
    )]
    [InlineData(
        "soil-too-steep",
        "soil: { recipe: ready-rainforest, front: 4 cm, back: 26 cm }",
        "",
        "soil: { recipe: ready-rainforest, front: 4 cm, back: 26 cm, retainer: true }",
        ""
    )]
    [InlineData(
        "soil-too-steep",
        "soil: { recipe: ready-rainforest, zones: [ { share: 50 %, depth: 7 cm }, "
            + "{ share: 50 %, front: 24.6 cm, back: 4 cm } ] }",
        "",
        "soil: { recipe: ready-rainforest, zones: [ { share: 50 %, depth: 7 cm }, "
            + "{ share: 50 %, front: 24.5 cm, back: 4 cm } ] }",
        ""
    )]
    // A background of 4 cm on the back leaves 40 cm, so 18.65 cm: 4 to 23 cm is steeper there.
    [InlineData(
        "soil-too-steep",
        "soil: { recipe: ready-rainforest, front: 4 cm, back: 23 cm }",
        "background: { material: cork-tile, thickness: 4 cm }",
        "soil: { recipe: ready-rainforest, front: 4 cm, back: 23 cm }",
        ""
    )]
    public void Slopes(string slug, string trips, string tripsMore, string inside, string insideMore) =>
        RuleCheck.Check(slug, Severity.Caution, Pose(trips, tripsMore), Pose(inside, insideMore));

    [Theory]
    [InlineData(
        "litter-covers-part",
        Soil + ", litter: { material: oak-leaves, depth: 3 cm, cover: 99 % }",
        "",
        Soil + ", litter: { material: oak-leaves, depth: 3 cm, cover: 100 % }",
        ""
    )]
    // Weed fabric of 0.15 mm under a misting system; a screen of 0.84 mm; the fabric misted by hand.
    [InlineData(
        "barrier-too-fine",
        Clay + ", " + Soil + ", barrier: { material: weed-fabric }",
        Mist,
        Clay + ", " + Soil + ", barrier: { material: plastic-fly-screen-fine }",
        Mist
    )]
    [InlineData(
        "barrier-too-fine",
        Clay + ", " + Soil + ", barrier: { material: weed-fabric }",
        Mist,
        Clay + ", " + Soil + ", barrier: { material: weed-fabric }",
        ""
    )]
    [InlineData(
        "limestone-in-soft-water",
        Soil,
        "hardscape: [ { material: limestone, mass: 0.5 kg, seat: base } ]",
        Soil,
        "hardscape: [ { material: slate, mass: 0.5 kg, seat: base } ]"
    )]
    public void Notes(string slug, string trips, string tripsMore, string inside, string insideMore) =>
        RuleCheck.Check(slug, Severity.Note, Pose(trips, tripsMore), Pose(inside, insideMore));

    [Fact]
    public void A_reservoir_without_drain_says_when_it_is_full()
    {
        // 44 × 44 × 5 cm = 9.68 L of clay with 42 % voids hold 4.0656 L; 2 × 90 mL/min × 20 s = 60 mL a day:
        // 67.76 days.
        var finding = RuleCheck.Trips(
            "no-drain",
            Severity.Caution,
            Pose(Clay + ", " + Mesh + ", " + Soil, Mist)
        );
        Assert.Equal(67.76, finding.Measured!.Value, 1e-6);
        Assert.Contains("67.8 days", finding.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_slope_is_an_angle()
    {
        // From 4 to 26 cm over 44 cm: atan 0.5 = 26.565°.
        var finding = RuleCheck.Trips(
            "soil-too-steep",
            Severity.Caution,
            Pose("soil: { recipe: ready-rainforest, front: 4 cm, back: 26 cm }", "")
        );
        Assert.Equal(26.565, finding.Measured!.Value, 1e-3);
        Assert.Contains("20.5 cm", finding.Fix, StringComparison.Ordinal);
    }

    [Theory]
    // Common practice, no source: barriers under wet soil are not of metal.
    [InlineData("steel-gauze-1.0", RuleCheck.Frogs, Severity.Stop)]
    [InlineData("aluminium-screen-1.2", "", Severity.Caution)]
    [InlineData("glass-fibre-screen", RuleCheck.Frogs, null)]
    public void Metal_under_soil(string mesh, string more, Severity? severity) =>
        Assert.Equal(
            severity,
            Pose($"{Clay}, {Soil}, barrier: {{ material: {mesh} }}", more)
                .Finding("metal-under-soil")
                ?.Severity
        );

    [Theory]
    // Common practice, no source: 1.0 to 1.5 mm.
    [InlineData(1.6, true)]
    [InlineData(1.5, false)]
    public void Coarse_barriers(double millimeters, bool trips)
    {
        var design = WithMesh(millimeters, $"{{ {Clay}, {Soil}, barrier: {{ material: own-mesh }} }}");
        Assert.Equal(trips ? Severity.Caution : null, design.Finding("barrier-too-open")?.Severity);
    }

    [Theory]
    // Own choice: 1 kg of stone must stand on the base; wood may lie on the soil.
    [InlineData("slate, mass: 1.1 kg", RuleCheck.Frogs, Severity.Caution)]
    [InlineData("slate, mass: 1.1 kg, seat: soil", "", Severity.Note)]
    [InlineData("slate, mass: 1 kg", RuleCheck.Frogs, null)]
    [InlineData("slate, mass: 4 kg, seat: base", RuleCheck.Frogs, null)]
    // 0.5 L of granite at 2700 kg/m³ (recalled) is 1.35 kg.
    [InlineData("granite-stone, volume: 0.5 L", RuleCheck.Frogs, Severity.Caution)]
    [InlineData("hardwood-branch, mass: 4 kg", RuleCheck.Frogs, null)]
    public void Stones_on_soil(string piece, string more, Severity? severity) =>
        Assert.Equal(
            severity,
            Pose(Soil, $"hardscape: [ {{ material: {piece} }} ]\n{more}").Finding("stone-on-soil")?.Severity
        );

    [Theory]
    [InlineData("raw", Severity.Caution)]
    [InlineData("soaked", Severity.Caution)]
    [InlineData("none", Severity.Note)]
    [InlineData("boiled", null)]
    [InlineData("baked", null)]
    [InlineData("steamed", null)]
    public void Wood_and_leaves_are_heated(string prepared, Severity? severity)
    {
        var design = Pose(
            $"{Soil}, litter: {{ material: oak-leaves, depth: 3 cm, prepared: {prepared} }}",
            $"hardscape: [ {{ material: cork-bark, mass: 1 kg, prepared: {prepared} }} ]"
        );
        Assert.Equal(severity, design.Finding("raw-wood")?.Severity);
        Assert.Equal(severity, design.Finding("raw-leaves")?.Severity);
    }

    [Fact]
    public void Stone_needs_no_boiling() =>
        Assert.Null(
            Pose(Soil, "hardscape: [ { material: slate, mass: 1 kg, prepared: raw } ]").Finding("raw-wood")
        );

    [Theory]
    // Front: 5 + 4 = 9 cm; a vent of 3 cm with its middle at 10.4 begins at 8.9, at 10.5 it begins at 9.
    [InlineData("length: 40 cm, width: 3 cm, height: 10.4 cm, side: front", true)]
    [InlineData("length: 40 cm, width: 3 cm, height: 10.5 cm, side: front", false)]
    // Back: 5 + 9 = 14 cm; without a width the middle counts.
    [InlineData("area: 60 cm2, height: 13.9 cm, side: back", true)]
    [InlineData("area: 60 cm2, height: 14 cm, side: back", false)]
    // A side wall: the highest layers, 14 cm.
    [InlineData("length: 20 cm, width: 2 cm, height: 14.9 cm, side: left", true)]
    [InlineData("length: 20 cm, width: 2 cm, height: 1 cm, side: top", false)]
    public void Vents_above_the_layers(string vent, bool trips)
    {
        var design = Pose(
            Clay + ", soil: { recipe: ready-rainforest, front: 4 cm, back: 9 cm }",
            $"vents: [ {{ {vent} }} ]"
        );
        Assert.Equal(trips ? Severity.Caution : null, design.Finding("layers-above-vent")?.Severity);
    }

    private static PosedDesign Pose(string floor, string more) => RuleCheck.Pose(more, $"{{ {floor} }}");

    /// <summary>The cube with a mesh of one's own, since no mesh of the library is so coarse.</summary>
    private static PosedDesign WithMesh(double millimeters, string floor)
    {
        var mesh = new MeshEntry
        {
            Key = "own-mesh",
            Name = "own mesh",
            Values =
            [
                new CatalogValue
                {
                    Name = "aperture",
                    Number = millimeters,
                    Unit = Unit.Millimeter,
                    Origin = Citation.OwnDerivation,
                },
            ],
        };
        var own = new Litterfall.Domain.Catalog.Workshop { Name = "own", Entries = [mesh] };
        return RuleCheck.PoseFor(own, floor);
    }
}
