using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Xunit;

namespace Litterfall.UnitTests.Judging.Rules;

/// <summary>Designs that say little, or cannot be built, are judged without noise or failure.</summary>
public sealed class BareDesignTests
{
    private static readonly string[] Sparing =
    [
        "papers-missing",
        "quarantine-short",
        "stocking-rule-broken",
        "no-cover",
        "no-crew",
        "never-release",
    ];

    [Fact]
    public void ABoxWithNothingLeftInsideIsStillJudged()
    {
        const string life =
            "animals: [ { animal: dendrobates-auratus, count: 4 }, { animal: geosesarma, count: 1 } ]\n"
            + "plants: [ { plant: pilea-depressa, at: { x: 1 cm, y: 1 cm } }, { plant: ficus-pumila } ]\n"
            + "crew: [ { animal: folsomia-candida, count: 10 } ]\n"
            + "room: { visitors: [pets] }\nheadspace: { hold: { air: 40 C, humidity: 90 %, airChanges: 1 } }";
        const string floor =
            "{ drainage: { material: expanded-clay-8-16, depth: 4 cm }, "
            + "soil: { recipe: ready-rainforest, front: 2 cm, back: 6 cm } }";
        var result = Trips.In(
            life,
            "{ outside: { length: 8 cm, depth: 45 cm, height: 45 cm }, glass: { walls: 40 mm } }",
            floor
        );
        Assert.True(result.Stops);
        Assert.All(result.Report.Leaves(), leaf => Assert.True(IsFinite(leaf.Node), leaf.Path));
    }

    [Fact]
    public void AnimalsAloneRaiseOnlyWhatSafetyDemands()
    {
        var result = Trips.In(Trips.Animals("dendrobates-auratus", 2));
        Assert.All(
            result.Findings.Where(f =>
                f.Protects == Protects.Animal || f.Slug is "papers-missing" or "no-crew"
            ),
            f => Assert.Contains(f.Slug, Sparing)
        );
        Assert.Empty(Trips.In("").Numbers.Stocking);
    }

    private static bool IsFinite(ReportNode node) =>
        node is not ReportNumber number || double.IsFinite(number.Number);
}
