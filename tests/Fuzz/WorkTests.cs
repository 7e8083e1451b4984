using Litterfall.App.Files;
using Litterfall.Domain.Checking;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Keys;
using Litterfall.Judging;
using Litterfall.UnitTests;
using Litterfall.UnitTests.House;

namespace Litterfall.FuzzTests;

/// <summary>
/// The largest of what is taken costs at most twelve checks of a usual box in the same process, and 500 MB: a
/// count that neither a slow machine nor its other work changes much. Seconds are told by bench/large-
/// time.sh.
/// </summary>
public sealed class WorkTests
{
    private const double MostUsuals = 12;
    private const long MostBytes = 500_000_000;

    public static TheoryData<string> Designs =>
        LongRun.IsAsked ? ["lamps", "plants", "pieces", "both", "mistings", "vents"] : ["plants", "both"];

    [Theory]
    [MemberData(nameof(Designs))]
    public void The_largest_box_with_the_most_of_a_kind_costs_some_usual_boxes(string what)
    {
        var large = Checked(what, Text(what));
        var usual = Shop.Design(SourceTree.Path("samples/ld-201-flat.viv.yaml"), null).Value!;
        Seconds(usual);
        var one = Enumerable.Range(0, 5).Select(_ => Seconds(usual)).Order().ElementAt(2);
        var seconds = Seconds(large);
        TestContext.Current.TestOutputHelper?.WriteLine($"{what}: {seconds:0.00} s, usual {one:0.000} s");
        Assert.InRange(seconds / one, 0, MostUsuals);
        Assert.InRange(Environment.WorkingSet, 0, MostBytes);
    }

    private static CheckedDesign Checked(string name, string text)
    {
        var reading = DesignReader.Read(name, text);
        Assert.True(reading.IsGood, string.Join('\n', reading.Faults));
        var design = DesignChecker.Check(reading.Value!, Shop.Embedded());
        Assert.True(design.IsGood, string.Join('\n', design.Faults));
        return design.Value!;
    }

    /// <summary>Processor time of one check.</summary>
    private static double Seconds(CheckedDesign design)
    {
        var before = Environment.CpuUsage.TotalTime;
        Assert.NotEmpty(DesignRun.Execute(design, TestContext.Current.CancellationToken).Report.Members);
        return (Environment.CpuUsage.TotalTime - before).TotalSeconds;
    }

    private static string Text(string what)
    {
        var many = what == "both";
        var lines = PlausibleCounts.LampsTimesPlants / PlausibleCounts.Lamps;
        return "litterfall: 1\nname: large\n"
            + "box: { outside: { length: 3 m, depth: 2 m, height: 3 m },\n"
            + "  glass: { walls: 12 mm, base: 12 mm }, opening: top }\n"
            + "background: { material: cork-tile, thickness: 2 cm, sides: [back, left, right] }\n"
            + "floor: { drainage: { material: expanded-clay-8-16, depth: 6 cm },\n"
            + "  soil: { recipe: standard-rainforest, front: 4 cm, back: 19 cm } }\n"
            + "lid: { material: glass, thickness: 8 mm, gap: 2 mm }\n"
            + "room: { temperature: 22 C, swing: 2 K, humidity: 50 % }\n"
            + Of("lamps", many || what == "lamps" ? PlausibleCounts.Lamps : 1, Lamp)
            + Of(
                "plants",
                what == "plants" ? PlausibleCounts.PlantLines
                    : many ? lines
                    : 1,
                Plant
            )
            + Of("hardscape", many || what == "pieces" ? PlausibleCounts.Pieces : 1, Piece)
            + Of("vents", many || what == "vents" ? PlausibleCounts.Vents : 2, Vent)
            + "misting: { nozzles: 4, each: 30 mL/min, "
            + Of("times", many || what == "mistings" ? PlausibleCounts.Mistings : 2, Mist).TrimEnd()
            + " }\n";
    }

    private static string Of(string key, int count, Func<int, FormattableString> one)
    {
        var all = Enumerable.Range(0, count).Select(i => FormattableString.Invariant(one(i)));
        return $"{key}: [ {string.Join(", ", all)} ]\n";
    }

    private static FormattableString Lamp(int i) =>
        $"{{ lamp: led-bar-6500k, lumens: 2000, watts: 18, at: {Place(20 + (17 * i), 100)} }}";

    private static FormattableString Plant(int i) =>
        $"{{ plant: fittonia-albivenis, at: {Place(10 + (14 * (i % 20)), 10 + (28 * (i / 20)))} }}";

    private static FormattableString Piece(int i) =>
        $"{{ material: slate, mass: 300 g, at: {Place(15 + (27 * (i % 10)), 15 + (27 * (i / 10)))} }}";

    private static string Place(int x, int y) => FormattableString.Invariant($"{{ x: {x} cm, y: {y} cm }}");

    private static FormattableString Vent(int i) =>
        $"{{ length: 5 cm, width: 2 cm, height: {30 + (5 * i)} cm, mesh: steel-gauze-0.5, side: front }}";

    private static FormattableString Mist(int i) => $"{{ at: \"{i / 4:00}:{15 * (i % 4):00}\", for: 5 s }}";
}
