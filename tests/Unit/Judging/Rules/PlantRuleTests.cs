using Litterfall.Domain.Findings;
using Xunit;

namespace Litterfall.UnitTests.Judging.Rules;

/// <summary>Rules on plants; habits, sizes and sap from memory of extension charts and poison
/// lists.</summary>
public sealed class PlantRuleTests
{
    [Theory]
    [InlineData("neoregelia-small", "mounted: false", "mounted: true")]
    [InlineData("asplenium-nidus", "mounted: false", "mounted: true")]
    [InlineData("pilea-depressa", "mounted: true", "mounted: false")]
    [InlineData("taxiphyllum-barbieri", "mounted: true", "mounted: false")]
    public void RootsInTheWrongPlace(string plant, string trips, string inside) =>
        Trips.Check("plant-in-wrong-place", Severity.Caution, With(plant, trips), With(plant, inside));

    [Theory]
    [InlineData("ficus-pumila")]
    [InlineData("philodendron-hederaceum")]
    [InlineData("peperomia-prostrata")]
    public void ClimbersStandEitherWay(string plant)
    {
        Assert.Null(With(plant, "mounted: true").Finding("plant-in-wrong-place"));
        Assert.Null(With(plant, "mounted: false").Finding("plant-in-wrong-place"));
    }

    [Theory]
    // A wedge of 2 cm in front and 6 cm at the back over 44 cm: 2.9 cm at y = 10, 3 cm at y = 11.
    [InlineData("front: 2 cm, back: 6 cm", "10 cm", "11 cm")]
    // The same wedge as one step.
    [InlineData("zones: [ { share: 100 %, front: 2 cm, back: 6 cm } ]", "10 cm", "11 cm")]
    public void WetFeet(string soil, string trips, string inside)
    {
        var floor =
            "{ drainage: { material: expanded-clay-8-16, depth: 4 cm }, "
            + $"soil: {{ recipe: ready-rainforest, {soil} }} }}";
        Trips.Check(
            "plant-with-wet-roots",
            Severity.Caution,
            With("pilea-depressa", $"at: {{ x: 10 cm, y: {trips} }}", floor: floor),
            With("pilea-depressa", $"at: {{ x: 10 cm, y: {inside} }}", floor: floor)
        );
    }

    [Fact]
    public void StepsOfSoilLieFromLeftToRight()
    {
        // Half of 44 cm: x = 21 cm stands on the step of 2 cm, x = 23 cm on that of 4 cm.
        const string floor =
            "{ drainage: { material: expanded-clay-8-16, depth: 4 cm }, soil: { recipe: ready-rainforest, "
            + "zones: [ { share: 50 %, depth: 2 cm }, { share: 50 %, depth: 4 cm } ] } }";
        Trips.Check(
            "plant-with-wet-roots",
            Severity.Caution,
            With("pilea-depressa", "at: { x: 21 cm, y: 20 cm }", floor: floor),
            With("pilea-depressa", "at: { x: 23 cm, y: 20 cm }", floor: floor)
        );
    }

    [Theory]
    // Inside 440 × 440 × 445 mm.
    [InlineData("x: 44.1 cm, y: 1 cm", "x: 44 cm, y: 1 cm")]
    [InlineData("x: 1 cm, y: 44.1 cm", "x: 1 cm, y: 44 cm")]
    [InlineData("x: 1 cm, y: 1 cm, z: 44.6 cm", "x: 1 cm, y: 1 cm, z: 44.5 cm")]
    public void OutsideTheBox(string trips, string inside) =>
        Trips.Check(
            "plant-outside-box",
            Severity.Caution,
            With("pilea-depressa", $"at: {{ {trips} }}"),
            With("pilea-depressa", $"at: {{ {inside} }}")
        );

    [Theory]
    // Pilea to 25 cm in 44.5 cm: its foot at 20.6 cm leaves 23.9, at 20.5 cm 24: a centimeter is within the
    // error of what a plant grows to, a note. Hoya trails to 60 cm: a note. Marcgravia,
    // 50 cm, without a place on 7 cm of soil has 44.5 − 7 = 37.5 cm.
    [InlineData(
        Severity.Caution,
        "{ plant: pilea-depressa, at: { x: 1 cm, y: 1 cm, z: 20.6 cm } }",
        "{ plant: pilea-depressa, at: { x: 1 cm, y: 1 cm, z: 19.5 cm } }"
    )]
    [InlineData(
        Severity.Note,
        "{ plant: pilea-depressa, at: { x: 1 cm, y: 1 cm, z: 20.4 cm } }",
        "{ plant: pilea-depressa, at: { x: 1 cm, y: 1 cm, z: 19.5 cm } }"
    )]
    [InlineData(
        Severity.Note,
        "{ plant: hoya-curtisii, at: { x: 1 cm, y: 1 cm, z: 30 cm }, mounted: true }",
        "{ plant: hoya-curtisii, mounted: true }"
    )]
    [InlineData(Severity.Note, "{ plant: marcgravia }", "{ plant: pilea-depressa }")]
    public void TallerThanTheBox(Severity severity, string trips, string inside) =>
        Trips.Check(
            "plant-outgrows-box",
            severity,
            Trips.In($"plants: [ {trips} ]", Trips.Cube),
            Trips.In($"plants: [ {inside} ]", Trips.Cube)
        );

    [Fact]
    public void SpinesAndAnimals() =>
        Trips.Check(
            "spiny-plant",
            Severity.Caution,
            With("cryptanthus-bivittatus", more: Trips.Animals("dendrobates-auratus", 2)),
            With("cryptanthus-bivittatus")
        );

    [Theory]
    [InlineData("begonia-small", "visitors: [children]", "visitors: [adults]")]
    [InlineData("ficus-pumila", "visitors: [adults, pets]", "humidity: 50 %")]
    [InlineData("callisia-repens", "visitors: [pets]", "visitors: [adults]")]
    public void ToxicPlantsInReach(string plant, string trips, string inside)
    {
        var finding = Trips.Check(
            "toxic-plant-in-reach",
            Severity.Caution,
            With(plant, more: $"room: {{ {trips} }}"),
            With(plant, more: $"room: {{ {inside} }}")
        );
        Assert.Equal(Protects.Person, finding.Protects);
        Assert.Null(With("fittonia-albivenis", more: $"room: {{ {trips} }}").Finding("toxic-plant-in-reach"));
    }

    [Fact]
    public void ToxicPlantsWithLeafEaters() =>
        Trips.Check(
            "toxic-plant-for-animals",
            Severity.Caution,
            With("epipremnum-aureum", more: Trips.Animals("lepidodactylus-lugubris", 2)),
            With("epipremnum-aureum", more: Trips.Animals("dendrobates-auratus", 2))
        );

    [Fact]
    public void PlantsOutOfQuarantineTooEarly()
    {
        Trips.Check(
            "plant-quarantine-short",
            Severity.Caution,
            With("pilea-depressa", "quarantined: 29 d"),
            With("pilea-depressa", "quarantined: 30 d")
        );
        Assert.Null(With("pilea-depressa").Finding("plant-quarantine-short"));
    }

    [Fact]
    public void SoftLeavesAndBleach()
    {
        const string bleach = "hygiene: { bleach: 6 % }";
        Trips.Check(
            "dip-burns-plant",
            Severity.Note,
            With("fittonia-albivenis", more: bleach),
            With("ficus-pumila", more: bleach)
        );
        Assert.Null(With("fittonia-albivenis").Finding("dip-burns-plant"));
    }

    [Fact]
    public void MossFromTheWild() =>
        Trips.Check("wild-moss", Severity.Note, With("hypnum"), With("leucobryum"));

    private static PosedDesign With(
        string plant,
        string entry = "count: 1",
        string more = "",
        string floor = Trips.Soil
    ) => Trips.In($"plants: [ {{ plant: {plant}, {entry} }} ]\n{more}", Trips.Cube, floor);
}
