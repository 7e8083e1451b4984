using System.Globalization;

namespace Litterfall.Tests.EndToEnd.Papers;

/// <summary>Designs with too much, too little, too large or too small of everything.</summary>
public sealed class StressTests
{
    private const string Box = """
        box:
          outside: { length: 60 cm, depth: 45 cm, height: 45 cm }
          glass: { walls: 5 mm, base: 5 mm }
          opening: top

        """;

    private const string Floor = """
        floor:
          drainage: { material: expanded-clay-8-16, depth: 4 cm }
          barrier: { material: plastic-fly-screen, upturn: 15 mm }
          soil: { recipe: standard-rainforest, front: 4 cm, back: 8 cm, settling: 15 % }
          moss: { material: long-fibre-sphagnum, depth: 1 cm, cover: 30 % }
          litter: { material: oak-leaves, depth: 3 cm }

        """;

    private const string Lid = "lid: { material: glass, thickness: 4 mm, gap: 2 mm }\n";

    private static Dictionary<string, string> Designs =>
        new()
        {
            ["20 plants"] = Box + Floor + Lid + Plants(20, "fittonia-albivenis"),
            ["20 mounted plants"] = Box + Floor + Lid + Plants(20, "neoregelia-small, mounted: true"),
            ["12 pieces"] = Box + Floor + Lid + Pieces(12),
            ["8 vents"] = Box + Floor + Lid + Vents(8),
            ["4 lamps"] = Box + Floor + Lid + Lamps(4),
            ["5 zones"] = Box + Zones(5) + Lid,
            ["everything"] =
                Box
                + Zones(5)
                + Lid
                + Plants(20, "fittonia-albivenis")
                + Pieces(12)
                + Vents(8)
                + Lamps(4)
                + Life,
            ["tiny"] = Sized("10 cm", "10 cm", "10 cm") + Shallow + Lid,
            ["huge"] = Sized("3 m", "1.2 m", "2 m") + Floor + Lid + Plants(20, "asplenium-nidus"),
            ["long and flat"] = Sized("3 m", "20 cm", "25 cm") + Floor + Lid,
            ["a tower"] = Sized("20 cm", "20 cm", "2 m") + Floor + Lid,
            ["1000 boxes"] = "boxes: 1000\n" + Box + Floor + Lid,
            ["1000 kits"] = "boxes: 1000\nform: kit\n" + Box + Floor + Lid + Life,
            ["inside only"] = "box:\n  inside: { length: 58 cm, depth: 43 cm, height: 44 cm }\n" + Floor,
            ["no soil"] = Box + "floor:\n  drainage: { material: expanded-clay-8-16, depth: 4 cm }\n" + Lid,
            ["only litter"] = Box + "floor:\n  litter: { material: oak-leaves, depth: 3 cm }\n" + Lid,
            ["no lid"] = Box + Floor + "lid: none\n",
            ["six kinds of animals"] = Box + Floor + Lid + Life + Animals,
            ["all panes cut"] =
                Box.Replace("opening: top", "opening: top\n  panes: cut", StringComparison.Ordinal)
                + Floor
                + Lid
                + "background: { material: cork-tile, thickness: 2 cm, sides: [back, left, right] }\n"
                + Vents(8),
        };

    private const string Shallow = """
        floor:
          drainage: { material: expanded-clay-8-16, depth: 1 cm }
          barrier: { material: plastic-fly-screen }
          soil: { recipe: standard-rainforest, depth: 2 cm }

        """;

    private const string Life = """
        misting: { nozzles: 12, each: 90 mL/min, times: [ { at: "07:30", for: 20 s } ] }
        drain: { kind: bulkhead, height: 3 cm, diameter: 22 mm, side: back, along: 12 cm }
        crew: [ { animal: folsomia-candida, count: 500 }, { animal: trichorhina-tomentosa, count: 40 } ]
        room: { temperature: 31 C, swing: 6 K, humidity: 20 % }

        """;

    private const string Animals = """
        animals:
          - { animal: dendrobates-auratus, count: 10 }
          - { animal: dendrobates-leucomelas, count: 10 }
          - { animal: epipedobates-anthonyi, count: 10 }
          - { animal: ranitomeya-imitator, count: 10 }
          - { animal: agalychnis-callidryas, count: 10 }

        """;

    public static TheoryData<string> Names => [.. Designs.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_paper_is_whole_and_short(string name)
    {
        using var scratch = new Scratch();
        PosedPapers.Of(scratch, Design(name)).AreWell();
    }

    /// <summary>
    /// One run of ezdxf for all of them; what a shop cuts has a size, and nothing lies twice.
    /// </summary>
    [Fact]
    public void Exchange_files_are_clean()
    {
        using var scratch = new Scratch();
        var paths = Designs
            .Keys.SelectMany((name, i) => PosedPapers.Of(scratch, Design(name)).Keep(scratch.At($"{i}")))
            .ToList();
        foreach (var (path, file) in DxfFile.Read(paths))
        {
            file.IsClean(path);
            file.HasReference(path);
            if (!path.Contains("/cut/", StringComparison.Ordinal))
            {
                continue;
            }

            var (width, height) = file.Size("CUT");
            Assert.True(width > 1 && height > 1, path);
            var edges = file.Entities.SelectMany(e => e.Edges()).ToList();
            Assert.Equal(edges.Count, edges.Distinct(StringComparer.Ordinal).Count());
        }
    }

    /// <summary>1000 boxes of one soil need 1000 times the litres, whatever packs they come in.</summary>
    [Fact]
    public void A_thousand_boxes_are_said_on_the_sheet()
    {
        using var scratch = new Scratch();
        var papers = PosedPapers.Of(scratch, Design("1000 boxes"));
        var sheet = PdfPaper.Open(papers.Files[0].Bytes).Sides[0];
        Assert.True(sheet.Says("Liters for one box"));
        Assert.True(sheet.Says("Packs for all 1000 boxes"));
    }

    private static string Design(string name) => $"litterfall: 1\nname: {name}\n{Designs[name]}";

    private static string Sized(string length, string depth, string height) =>
        $$"""
            box:
              outside: { length: {{length}}, depth: {{depth}}, height: {{height}} }
              glass: { walls: 6 mm, base: 6 mm }
              opening: top

            """;

    private static string Plants(int count, string plant) =>
        List("plants", count, i =>
            $"{{ plant: {plant}, at: {{ x: {3 + i * 2} cm, y: {5 + i * 7 % 30} cm }} }}"
        );

    private static string Pieces(int count) =>
        List("hardscape", count, i =>
            i % 2 == 0 ? "{ material: cork-bark, mass: 0.3 kg }" : "{ material: slate, mass: 1 kg }"
        );

    private static string Vents(int count) =>
        List("vents", count, i =>
            $"{{ length: {8 + i} cm, width: 2 cm, height: {20 + 2 * i} cm, mesh: steel-gauze-0.5, "
            + $"side: {Sides[i % 4]} }}"
        );

    private static string Lamps(int count) =>
        List("lamps", count, i => $"{{ lamp: led-bar-6500k, lumens: 2000, watts: 18, above: {3 + i} cm }}");

    private static string Zones(int count) =>
        "floor:\n  drainage: { material: expanded-clay-8-16, depth: 4 cm }\n"
        + "  barrier: { material: plastic-fly-screen, upturn: 15 mm }\n"
        + "  soil:\n    recipe: standard-rainforest\n    zones:\n"
        + string.Concat(
            Enumerable
                .Range(0, count)
                .Select(i => $"      - {{ share: {100 / count} %, depth: {4 + i} cm }}\n")
        )
        + "  litter: { material: oak-leaves, depth: 3 cm }\n";

    private static readonly string[] Sides = ["front", "top", "left", "right"];

    private static string List(string key, int count, Func<int, string> entry) =>
        key
        + ":\n"
        + string.Concat(
            Enumerable
                .Range(0, count)
                .Select(i => string.Create(CultureInfo.InvariantCulture, $"  - {entry(i)}\n"))
        );
}
