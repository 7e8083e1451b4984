using CsCheck;
using Litterfall.Forecasting;
using Litterfall.Instructions.Building;
using Litterfall.Instructions.Care;
using Litterfall.UnitTests.Domain;
using Litterfall.UnitTests.House;
using Litterfall.UnitTests.Judging;

namespace Litterfall.UnitTests.Instructions.Building;

/// <summary>
/// The steps come in an order in which each can be done. The order below is that of a bench, by hand (common
/// practice, no source): nothing heavy before the stand is level, nothing over a leak that nobody
/// looked for.
/// </summary>
public sealed class StepOrderTests
{
    /// <summary>First and then, as "group" or "group/key"; only what a design has counts.</summary>
    private static readonly (string First, string Then)[] Bench =
    [
        ("glue", "stand/box"),
        ("stand/shelf", "stand/heating"),
        ("stand/heating", "stand/box"),
        ("stand", "box"),
        ("box", "drainage"),
        ("box", "soil"),
        ("clean", "drainage"),
        ("drainage/hardscape", "drainage/floor.drainage"),
        ("drainage/floor.drainage", "drainage/floor.barrier"),
        ("drainage", "soil"),
        ("soil/floor.soil", "soil/hardscape"),
        ("soil", "plants"),
        ("plants/plants", "plants/floor.moss"),
        ("plants/floor.moss", "plants/floor.litter"),
        ("plants", "fittings/lid"),
        ("fittings/lid", "fittings/lamps"),
        ("fittings/lamps", "fittings/crew"),
        ("fittings/misting", "fittings/crew"),
        ("fittings", "weeks"),
    ];

    [Fact]
    public void The_samples_are_built_in_order() =>
        Assert.All(SampleFiles.Paths, path => IsInOrder(Posed.Sample(path).Numbers));

    [Fact]
    public void Random_designs_are_built_in_order() =>
        RandomFittings.Quick.Sample(
            design => IsInOrder(new DesignNumbers(design)),
            iter: LongRun.Cases(40, 600)
        );

    [Fact]
    public void A_box_that_two_cannot_carry_is_never_moved_planted()
    {
        // 25 kg a person (common practice): 90 × 60 × 60 cm planted weigh about 90 kg.
        var heavy = Text(Posed.Sample("samples/ld-203-museum-foyer.viv.yaml").Numbers);
        Assert.Contains("Never move it planted", heavy, StringComparison.Ordinal);
        Assert.DoesNotContain("If it must be moved", heavy, StringComparison.Ordinal);
        Assert.Contains("If it must be moved", Text(Built.Inches), StringComparison.Ordinal);
    }

    [Fact]
    public void Living_moss_is_pressed_on_and_dried_moss_lies_loose()
    {
        static string Moss(string kind) =>
            Text(
                Posed
                    .Run(
                        "{ inside: { length: 40 cm, depth: 40 cm, height: 40 cm } }",
                        "{ soil: { recipe: ready-rainforest, depth: 5 cm }, moss: { material: "
                            + kind
                            + ", depth: 2 cm }, litter: { material: oak-leaves, depth: 3 cm } }"
                    )
                    .Numbers
            );
        var living = Moss("sheet-moss");
        Assert.Contains("Press on", living, StringComparison.Ordinal);
        Assert.Contains("free of leaves", living, StringComparison.Ordinal);
        var dried = Moss("long-fibre-sphagnum");
        Assert.Contains("Loose, not pressed", dried, StringComparison.Ordinal);
        Assert.DoesNotContain("free of leaves", dried, StringComparison.Ordinal);
    }

    private static string Text(DesignNumbers numbers) =>
        string.Join('\n', BuildSteps.Of(TankPlan.Of(numbers)).SelectMany(g => g.Steps).Select(s => s.Text));

    private static void IsInOrder(DesignNumbers numbers)
    {
        var groups = BuildSteps.Of(TankPlan.Of(numbers));
        var places = groups
            .SelectMany(g => g.Steps.Select(s => (Group: g.Key, Place: $"{g.Key}/{Part(s.Key)}", Step: s)))
            .ToList();
        foreach (var (first, then) in Bench)
        {
            var last = places.FindLastIndex(p => Is(p.Group, p.Place, first));
            var begin = places.FindIndex(p => Is(p.Group, p.Place, then));
            Assert.True(last < 0 || begin < 0 || last < begin, $"{first} must come before {then}");
        }

        for (var i = 0; i < places.Count; i++)
        {
            foreach (var need in places[i].Step.Needs)
            {
                var last = places.FindLastIndex(p => Is(p.Group, p.Place, need));
                Assert.True(last < i, $"{places[i].Place} needs {need}: {places[i].Step.Text}");
            }
        }
    }

    private static bool Is(string group, string place, string asked) => asked == group || asked == place;

    private static string Part(string key) =>
        key.StartsWith("floor.soil", StringComparison.Ordinal) ? "floor.soil"
        : key.StartsWith("floor.", StringComparison.Ordinal) || key.IndexOfAny(['[', '.']) < 0 ? key
        : key[..key.IndexOfAny(['[', '.'])];
}
