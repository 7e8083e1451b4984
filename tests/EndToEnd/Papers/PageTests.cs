using System.Text;
using System.Text.RegularExpressions;
using Litterfall.Documents.Layout;
using UglyToad.PdfPig.Tokens;

namespace Litterfall.Tests.EndToEnd.Papers;

/// <summary>Every paper of every sample read back by PdfPig: sheets, margins, sizes, type.</summary>
public sealed partial class PageTests(PaperFolder papers)
{
    // What one side cannot hold: safety text is never cut, and no list leaves a line out.
    private static readonly string[] Long =
    [
        "01-build-sheet.pdf",
        "03-cut-list.pdf",
        "04-glass-shop.pdf",
        "05-shopping-list.pdf",
        "06-calendar.pdf",
        "08-cautions.pdf",
        "12-equipment.pdf",
    ];

    public static TheoryData<string> Samples => CheckTests.Samples;

    [Theory]
    [MemberData(nameof(Samples))]
    public void Every_paper_has_one_side_and_the_step_cards_one_for_each_group(string sample)
    {
        var written = papers.Of(sample);
        Assert.Contains("01-build-sheet.pdf", written.Files);
        foreach (var name in written.Pdfs)
        {
            var sides = written.Pdf(name).Sides;
            if (name != "02-step-cards.pdf")
            {
                // US units stand beside metric ones, so a care sheet may run on; each box has its passport.
                var most =
                    name == "09-tank-passport.pdf" ? Boxes(sample)
                    : Long.Contains(name) || name.StartsWith("07-", StringComparison.Ordinal) ? 2
                    : 1;
                Assert.True(sides.Count <= most, $"{name} has {sides.Count} sides");
                continue;
            }

            for (var i = 0; i < sides.Count; i++)
            {
                var card = Card().Match(sides[i].Running);
                Assert.True(card.Success, sides[i].Running);
                Assert.Equal($"{i + 1}", card.Groups["number"].Value);
                Assert.Equal($"{sides.Count}", card.Groups["all"].Value);
            }
        }
    }

    /// <summary>The samples of one box do not say so; LD-204 is an order of eight.</summary>
    private static int Boxes(string sample) => sample.Contains("ld-204", StringComparison.Ordinal) ? 8 : 1;

    [Theory]
    [MemberData(nameof(Samples))]
    public void Sheets_are_A4_with_type_of_at_least_9_points_inside_the_margins(string sample)
    {
        foreach (var (name, side) in Sides(papers.Of(sample)))
        {
            Sheet.IsWell(name, side, Sheet.A4);
        }
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void No_paper_of_a_sample_leaves_anything_out(string sample)
    {
        foreach (var (name, side) in Sides(papers.Of(sample)))
        {
            Assert.False(side.Running.Contains('…', StringComparison.Ordinal), $"{name}: {side.Running}");
        }
    }

    /// <summary>Every stop and caution stands whole, with its fix, on the sheet of cautions.</summary>
    [Theory]
    [MemberData(nameof(Samples))]
    public void Stops_and_cautions_stand_whole(string sample)
    {
        var said = Bare(string.Concat(papers.Of(sample).Pdf("08-cautions.pdf").Sides.Select(s => s.Running)));
        foreach (var finding in papers.Check(sample)["findings"]!.AsArray())
        {
            if (finding!["severity"]!.GetValue<string>() != "note")
            {
                // A maker of inches reads the same sentence in US units.
                foreach (var key in new[] { "text", "fix" })
                {
                    var words = finding[key]!.GetValue<string>();
                    string[] ways =
                    [
                        words,
                        UsUnits.Degrees(words),
                        UsUnits.Of(words),
                        UsUnits.Degrees(UsUnits.Of(words)),
                    ];
                    Assert.Contains(ways, w => said.Contains(Bare(w), StringComparison.Ordinal));
                }
            }
        }
    }

    private static string Bare(string text) => string.Concat(text.Where(c => !char.IsWhiteSpace(c)));

    [Theory]
    [MemberData(nameof(Samples))]
    public void Letter_sheets_hold_the_same_papers(string sample)
    {
        var files = InProcess.OfSample(sample, InProcess.Letter).ToList();
        Assert.Equal(papers.Of(sample).Files, files.Select(f => f.Name).Order(StringComparer.Ordinal));
        foreach (var file in files.Where(f => f.Name.EndsWith(".pdf", StringComparison.Ordinal)))
        {
            var paper = PdfPaper.Open(file.Bytes);
            // Letter is a little shorter.
            Assert.InRange(paper.Sides.Count - papers.Of(sample).Pdf(file.Name).Sides.Count, 0, 1);
            foreach (var side in paper.Sides)
            {
                Sheet.IsWell(file.Name, side, Sheet.Letter);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void Inter_and_nothing_else_is_embedded(string sample)
    {
        var written = papers.Of(sample);
        foreach (var name in written.Pdfs)
        {
            var paper = written.Pdf(name);
            Assert.All(paper.Sides.SelectMany(s => s.Signs), s =>
                Assert.Contains("Inter", s.Letter.FontName, StringComparison.Ordinal)
            );
            Assert.NotEmpty(paper.Fonts);
            foreach (var font in paper.Fonts)
            {
                Assert.Contains("Inter", Name(font, NameToken.BaseFont), StringComparison.Ordinal);
                Assert.NotEqual("Type3", Name(font, NameToken.Subtype));
            }

            Assert.NotEmpty(paper.Programs);
            Assert.All(paper.Programs, program => Assert.True(program is { Length: > 1000 }, name));
        }
    }

    /// <summary>Words are found from the places of the letters alone: no gap within, a gap between.</summary>
    [Theory]
    [MemberData(nameof(Samples))]
    public void Words_can_be_selected_whole(string sample)
    {
        var written = papers.Of(sample);
        var sheet = written.Pdf("01-build-sheet.pdf").Sides[0];
        Assert.True(
            sheet.Says("Settled depth at the corners, cm") || sheet.Says("Settled depth at the corners, in")
        );
        foreach (var word in new[] { "Settled", "depth", "corners,", "Liters", "Section," })
        {
            Assert.Contains(word, sheet.Words);
        }

        foreach (var (name, side) in Sides(written))
        {
            var found = side.Words.ToHashSet(StringComparer.Ordinal);
            var set = side.Running.Split(' ').Where(w => w.Length > 3 && w.All(char.IsAsciiLetter)).ToList();
            var lost = set.Where(w => !found.Contains(w)).Distinct().ToList();
            Assert.True(lost.Count * 50 <= set.Count, $"{name}: {string.Join(", ", lost)}");
        }
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void Files_have_a_title_with_the_name_of_the_build(string sample)
    {
        var written = papers.Of(sample);
        var name = papers.Check(sample)["design"]!["name"]!.GetValue<string>();
        var titles = written.Pdfs.Select(p => written.Pdf(p).Title).ToList();
        Assert.All(titles, t => Assert.EndsWith(name, t, StringComparison.Ordinal));
        Assert.Equal(titles.Count, titles.Distinct(StringComparer.Ordinal).Count());
        Assert.Contains($"Build sheet - {name}", titles);
    }

    /// <summary>Nothing is photographed: papers are lines and type, and so sharp in print.</summary>
    [Theory]
    [MemberData(nameof(Samples))]
    public void Papers_hold_no_picture_of_dots(string sample)
    {
        var written = papers.Of(sample);
        foreach (var name in written.Pdfs)
        {
            var raw = Encoding.Latin1.GetString(File.ReadAllBytes(written.At(name)));
            Assert.DoesNotContain("/Subtype /Image", raw, StringComparison.Ordinal);
        }
    }

    private static string Name(DictionaryToken font, NameToken key) =>
        font.TryGet(key, out NameToken name) ? name.Data : "";

    internal static IEnumerable<(string Name, PdfSide Side)> Sides(WrittenPapers written) =>
        written.Pdfs.SelectMany(p => written.Pdf(p).Sides.Select((s, i) => ($"{p}, side {i + 1}", s)));

    [GeneratedRegex("Step card (?<number>[0-9]+) of (?<all>[0-9]+) · ", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Card();
}
