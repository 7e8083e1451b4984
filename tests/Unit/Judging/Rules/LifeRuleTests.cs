using Litterfall.Domain.Findings;
using Xunit;

namespace Litterfall.UnitTests.Judging.Rules;

/// <summary>Rules on the life of the floor, on rates that are mostly recalled.</summary>
public sealed class LifeRuleTests
{
    private const string Leafy =
        "{ soil: { recipe: ready-rainforest, depth: 7 cm }, litter: { material: oak-leaves, depth: LITTER "
        + "} }";

    private const string Rest =
        "lid: { material: glass, thickness: 4 mm, gap: 2 mm }\nroom: { temperature: 22 C, humidity: 50 % }\n"
        + "crew: [ { animal: folsomia-candida, count: 400 } ]\n";

    private const string Bare = "{ soil: { recipe: ready-rainforest, depth: 7 cm } }";

    [Fact]
    public void A_crew_without_food_is_eaten_up() =>
        Trips.Check("crew-eaten-up", Severity.Caution, Pose(Frogs(12), "0.3 cm"), Pose(Frogs(2), "4 cm"));

    [Fact]
    public void Leaves_that_rot_are_told_with_their_day()
    {
        var finding = RuleCheck.Trips("litter-runs-low", Severity.Note, Pose("", "3 cm"));
        Assert.InRange(finding.Measured!.Value, 30.0, 400.0);
        Assert.Null(RuleCheck.Pose(Rest, Bare).Finding("litter-runs-low"));
    }

    [Fact]
    public void Food_for_too_many_brings_too_much_nitrogen() =>
        Trips.Check(
            "nitrogen-load",
            Severity.Caution,
            Pose("animals: [ { animal: dendrobates-tinctorius, count: 12 } ]\n", "4 cm"),
            Pose(Frogs(2), "4 cm")
        );

    /// <summary>Oldest habit: not before 28 days; the crew may hold them back longer.</summary>
    [Fact]
    public void Animals_wait_for_the_box_and_for_the_crew()
    {
        var life = Pose(Frogs(3) + "planted: 2026-03-01\n", "4 cm").Numbers.Life!;
        Assert.True(life.AnimalsFrom >= new DateOnly(2026, 3, 29));
        Assert.Equal(2, life.Because.Length);
        Assert.Equal(life.AnimalsFrom, life.Because[0].Day);
        Assert.True(life.Masses.LedgerError.Si < 1e-12);
        Assert.Equal(Litterfall.Domain.Figures.Provenance.Recalled, life.SpringtailsThen.Value.Trust);
    }

    private static string Frogs(int count) =>
        $"animals: [ " + $"{{ animal: epipedobates-anthonyi, count: {count} }} ]\n";

    private static PosedDesign Pose(string more, string litter) =>
        RuleCheck.Pose(Rest + more, Leafy.Replace("LITTER", litter, StringComparison.Ordinal));
}
