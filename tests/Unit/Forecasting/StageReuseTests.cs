using Litterfall.Domain.Figures;
using Litterfall.Forecasting;
using Litterfall.Judging;
using Litterfall.UnitTests.Judging;

namespace Litterfall.UnitTests.Forecasting;

/// <summary>What a changed design takes over from the one before is what it would compute itself.</summary>
public sealed class StageReuseTests
{
    private const string Box =
        "{ outside: { length: 45 cm, depth: 45 cm, height: 45 cm }, glass: { walls: 5 mm, base: 5 mm } }";

    private const string Floor =
        "{ drainage: { material: expanded-clay-8-16, depth: 4 cm }, "
        + "soil: { recipe: ready-rainforest, depth: 7 cm } }";

    private const string Lit =
        "lid: { material: glass, thickness: 4 mm, gap: 2 mm }\n"
        + "lamps: [ { lamp: led-bar-6500k, lumens: 1500, watts: 15, above: 3 cm, "
        + "on: \"08:00\", off: \"20:00\" } ]\n";

    [Theory]
    [InlineData("animals: [ { animal: epipedobates-anthonyi, count: 3 } ]\n")]
    [InlineData("crew: [ { animal: folsomia-candida, count: 400 } ]\n")]
    [InlineData("ratedFor: [ { animal: epipedobates-anthonyi, count: 2 } ]\nshelf: { rated: 80 kg }\n")]
    [InlineData("electrics: { trip: 30 mA, dripLoops: true }\nhygiene: { bleach: 5 % }\n")]
    [InlineData("room: { temperature: 26 C, humidity: 40 % }\nhabits: { levelCheck: 7 d }\n")]
    [InlineData("misting: { nozzles: 1, each: 90 mL/min, times: [ { at: \"08:00\", for: 20 s } ] }\n")]
    [InlineData("drain: { kind: siphon }\nheating: { watts: 5 }\nfan: { flow: 1 m3/h, use: stir }\n")]
    public void Stages_taken_over_are_those_computed_anew(string more)
    {
        var before = Posed.Run(Box, Floor, Lit).Whole;
        var design = Posed.Run(Box, Floor, Lit + more).Design;
        var taken = DesignRun.Execute(
            new DesignNumbers(new DesignStages(design, before.Numbers.Stages), Reach.Whole),
            TestContext.Current.CancellationToken
        );
        var anew = DesignRun.Execute(design, TestContext.Current.CancellationToken);
        Assert.Equal(anew.Findings.Select(f => f.Text), taken.Findings.Select(f => f.Text));
        Assert.Equal(Values(anew.Report), Values(taken.Report));
    }

    private static IEnumerable<string> Values(ReportObject report) =>
        report
            .Leaves()
            .Where(l => l.Node is ReportNumber)
            .Select(l => FormattableString.Invariant($"{l.Path} {((ReportNumber)l.Node).Number:R}"));
}
