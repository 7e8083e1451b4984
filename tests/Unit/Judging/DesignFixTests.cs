using Litterfall.Domain.Findings;
using Litterfall.Judging;
using Xunit;

namespace Litterfall.UnitTests.Judging;

/// <summary>What a finding offers to try does help: it is gone, or nearer to its limit.</summary>
public sealed class DesignFixTests
{
    private const string Cube =
        "{ outside: { length: 45 cm, depth: 45 cm, height: 45 cm }, glass: { walls: 5 mm, base: 5 mm }, "
        + "opening: front, sill: 8 cm }";

    [Theory]
    [InlineData("ld-201-flat.viv.yaml")]
    [InlineData("ld-205-attic.viv.yaml")]
    [InlineData("arid-no-drainage.viv.yaml")]
    [InlineData("t-17-old-show-tank.viv.yaml")]
    public void What_is_offered_for_a_sample_helps(string sample) =>
        Check(Posed.Sample($"samples/{sample}").Whole);

    /// <summary>Designs with faults of all kinds; each floor and fitting is wrong on purpose.</summary>
    [Theory]
    [InlineData(
        "{ drainage: { material: expanded-clay-8-16, depth: 2 cm }, soil: { recipe: ready-rainforest, "
            + "depth: 2 cm }, "
            + "litter: { material: oak-leaves, depth: 1 cm } }",
        "animals: [ { animal: dendrobates-auratus, count: 9 } ]\nwaterCups: 0\n"
            + "lamps: [ { lamp: led-bar-6500k, lumens: 1400, watts: 14, above: 3 cm, on: \"08:00\", off: "
            + "\"16:00\" } ]\n"
            + "plants: [ { plant: phalaenopsis-mini, mounted: true, at: { x: 20 cm, y: 20 cm, "
            + "z: 10 cm } } ]\n"
            + "lid: { material: glass, thickness: 4 mm, gap: 0 mm }",
        new[]
        {
            "no-barrier",
            "no-drain",
            "drainage-too-thin",
            "soil-too-thin",
            "litter-too-thin",
            "plant-too-dark",
            "lamp-hours",
            "no-fresh-air",
            "no-crew",
        }
    )]
    [InlineData(
        "{ drainage: { material: expanded-clay-8-16, depth: 5 cm }, barrier: { material: steel-gauze-0.5 }, "
            + "soil: { recipe: ready-rainforest, front: 7 cm, back: 9 cm } }",
        "drain: { kind: standpipe, height: 8 cm }\nhabits: { water: tap }\n"
            + "misting: { nozzles: 1, each: 90 mL/min, times: [ { at: \"08:00\", for: 5 s } ] }\n"
            + "vents: [ { length: 30 cm, width: 2 cm, height: 9 cm, mesh: steel-gauze-0.5, side: front } ]\n"
            + "plants: [ { plant: asplenium-nidus, at: { x: 20 cm, y: 20 cm } } ]\n"
            + "hardscape: [ { material: slate, mass: 4 kg } ]\n"
            + "crew: [ { animal: folsomia-candida, count: 20 } ]\nelectrics: { dripLoops: false }",
        new[]
        {
            "metal-under-soil",
            "soil-above-sill",
            "drain-above-barrier",
            "tap-water",
            "no-level-check",
            "layers-above-vent",
            "plant-in-wrong-place",
            "plant-outgrows-box",
            "stone-on-soil",
            "crew-too-few",
            "no-trip-device",
            "no-drip-loop",
        }
    )]
    public void What_is_offered_for_a_faulty_box_helps(string floor, string more, string[] slugs)
    {
        var offered = Check(Posed.Run(Cube, floor, more).Whole);
        Assert.Empty(slugs.Except(offered));
    }

    private static HashSet<string> Check(DesignResult result)
    {
        var offered = new HashSet<string>(StringComparer.Ordinal);
        foreach (var finding in result.Findings.DistinctBy(f => f.Slug))
        {
            var design = result.Numbers.Design;
            if (RuleBook.Fixes(finding, design).FirstOrDefault() is not { } fix)
            {
                continue;
            }

            offered.Add(finding.Slug);
            Assert.NotEmpty(fix.Words);
            var checkedFix = Litterfall
                .Domain.Checking.DesignChecker.Check(fix.Document, design.Catalog)
                .Value!;
            var after = DesignRun.Execute(checkedFix);
            Assert.True(Helps(finding, result, after), $"{finding.Slug} at {finding.Where}: {fix.Words}");
        }

        return offered;
    }

    private static bool Helps(Finding finding, DesignResult before, DesignResult after)
    {
        var left = after.Findings.Where(f => f.Slug == finding.Slug).ToList();
        return left.Count < before.Findings.Count(f => f.Slug == finding.Slug)
            || left.Any(f =>
                f.Where == finding.Where
                && f is { Measured: { } now, Limit: { } limit }
                && finding.Measured is { } was
                && Math.Abs(limit.Si - now.Si) < Math.Abs(limit.Si - was.Si)
            );
    }
}
