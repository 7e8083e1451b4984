using System.Text;

namespace Litterfall.Tests.EndToEnd.Papers;

/// <summary>
/// Names and other free words that are no plain Latin text, or that mean something elsewhere.
/// </summary>
public sealed class HostileNameTests
{
    /// <summary>A design with every place that takes free words.</summary>
    private const string Design = """
        litterfall: 1
        name: NAME
        planted: 2026-03-02
        box:
          outside: { length: 60 cm, depth: 45 cm, height: 45 cm }
          glass: { walls: 5 mm, base: 5 mm }
          opening: front
          sill: 10 cm
        floor:
          drainage: { material: expanded-clay-8-16, depth: 4 cm }
          barrier: { material: plastic-fly-screen, upturn: 15 mm }
          soil: { recipe: standard-rainforest, front: 4 cm, back: 8 cm, settling: 15 % }
          litter: { material: oak-leaves, depth: 3 cm }
        lid: { material: glass, thickness: 4 mm, gap: 2 mm }
        vents: [ { length: 40 cm, width: 3 cm, height: 44 cm, mesh: steel-gauze-0.5, side: top } ]
        plants: [ { plant: fittonia-albivenis, at: { x: 20 cm, y: 20 cm } } ]
        crew: [ { animal: folsomia-candida, count: 500 } ]
        animals: [ { animal: epipedobates-anthonyi, count: 3, line: NAME } ]
        passages: [ { for: NAME, hole: 12 mm, through: 8 mm, in: lid } ]

        """;

    private static readonly (string What, string Text)[] Names =
    [
        ("quotes", "the \"green\" box, 'left' «side» `x`"),
        ("200 signs", string.Concat(Enumerable.Repeat("long name ", 20))[..199] + "x"),
        ("200 signs without a blank", new string('W', 200)),
        ("markup", "<script>alert(1)</script>"),
        ("closing markup", "</title></svg><svg onload=alert(1)>&amp;]]>"),
        ("formula", "=cmd|' /C calc'!A0"),
        ("emoji", "🐸🏽 👩🏽‍🔬👨‍👩‍👧‍👦 🌿 box 🏳️‍🌈"),
        ("only emoji", "🐸🐸🐸"),
        ("Arabic", "صندوق الضفادع ٤٥"),
        ("Hebrew", "תיבת צפרדעים"),
        ("Japanese", "ヤドクガエルの箱"),
        ("Thai", "กล่องกบพิษ"),
        ("Devanagari", "मेंढक का बक्सा"),
        ("combining marks", "Z̡̤̜̙͈̹͇͛ͭ̿͊̾͗a̸l̴g̷o̵ e\u0301\u0323\u0323\u0323"),
        ("direction overrides", "box \u202Egnp.fdp\u202C \u2066left\u2069\u200F"),
        ("format", "%s %n %d %%d {0} ${x} $(x)"),
        ("parent folder", "..\\..\\x"),
        ("folders", "../../a/b/C:con.txt"),
        ("no-break signs", "one\u00A0two\u202Fthree\uFEFF"),
        ("private and unassigned", "\uE000\uFFFD\uFDD0 \U000E0041\U0010FFFD"),
    ];

    public static TheoryData<string> Whats => [.. Names.Select(n => n.What)];

    [Theory]
    [MemberData(nameof(Whats))]
    public void Any_name_gives_whole_papers(string what)
    {
        using var scratch = new Scratch();
        var name = Names.Single(n => n.What == what).Text;
        var papers = PosedPapers.Of(scratch, Posed(name));
        papers.AreWell();
        Assert.Contains(papers.Files, f => f.Name == "01-build-sheet.pdf");
    }

    /// <summary>One run of ezdxf for all of them.</summary>
    [Fact]
    public void Any_name_gives_clean_exchange_files()
    {
        using var scratch = new Scratch();
        var paths = Names
            .SelectMany((n, i) => PosedPapers.Of(scratch, Posed(n.Text)).Keep(scratch.At($"{i}")))
            .ToList();
        foreach (var (path, file) in DxfFile.Read(paths))
        {
            file.IsClean(path);
            file.HasReference(path);
        }
    }

    /// <summary>
    /// What the type has is set as written; what it has not is a box, and the foot says so.
    /// </summary>
    [Theory]
    [InlineData("Grüße an die Fröschlein – ¿qué tal?", "Grüße an die Fröschlein – ¿qué tal?")]
    [InlineData("βάτραχος < 3 & more", "βάτραχος < 3 & more")]
    public void Names_of_our_type_are_set_as_written(string name, string printed)
    {
        using var scratch = new Scratch();
        var papers = PosedPapers.Of(scratch, Posed(name));
        var sheet = PdfPaper.Open(papers.Files[0].Bytes);
        Assert.Contains(printed, sheet.Sides[0].Running, StringComparison.Ordinal);
        Assert.Contains(printed, sheet.Title, StringComparison.Ordinal);
        Assert.DoesNotContain("□", sheet.Sides[0].Running, StringComparison.Ordinal);
        var svg = Encoding.UTF8.GetString(papers.Ending("plan.svg").Single().Bytes);
        var title = System.Xml.Linq.XDocument.Parse(svg).Root!.Elements().First().Value;
        Assert.Contains(name, title, StringComparison.Ordinal);
    }

    [Fact]
    public void Signs_the_type_does_not_have_are_boxes_and_the_foot_says_so()
    {
        using var scratch = new Scratch();
        var papers = PosedPapers.Of(scratch, Posed("🐸🏽 box"));
        var side = PdfPaper.Open(papers.Files[0].Bytes).Sides[0];
        Assert.Contains("□ box", side.Running, StringComparison.Ordinal);
        Assert.Contains("a character missing from the font", side.Running, StringComparison.Ordinal);
    }

    [Fact]
    public void A_name_of_300_signs_is_refused()
    {
        using var scratch = new Scratch();
        var file = scratch.Write("long.viv.yaml", Posed(new string('x', 300)));
        var ended = Cli.Refuses("papers", file, "--out", scratch.At("papers"));
        Assert.Contains("long.viv.yaml:2:7: ", ended.Error, StringComparison.Ordinal);
        Assert.Contains("200", ended.Error, StringComparison.Ordinal);
        Assert.False(Directory.Exists(scratch.At("papers")));
    }

    /// <summary>The whole command: nothing outside the folder, and a terminal is not written to.</summary>
    [Theory]
    [InlineData("folders")]
    [InlineData("direction overrides")]
    public void Nothing_is_written_outside_the_folder(string what)
    {
        using var scratch = new Scratch();
        var file = scratch.Write("posed.viv.yaml", Posed(Names.Single(n => n.What == what).Text));
        var written = PaperFolder.Write(file, scratch.At("papers"));
        Assert.NotEmpty(written.Files);
        Assert.Equal("", written.Ended.Error);
        Assert.DoesNotContain("\u001b", written.Ended.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("\u202E", written.Ended.Out, StringComparison.Ordinal);
        string[] expected = [scratch.At("papers"), file];
        Assert.Equal(
            expected.Order(StringComparer.Ordinal),
            Directory.EnumerateFileSystemEntries(scratch.Folder).Order(StringComparer.Ordinal)
        );
    }

    private static string Posed(string name) =>
        Design.Replace("NAME", PosedPapers.Quoted(name), StringComparison.Ordinal);
}
