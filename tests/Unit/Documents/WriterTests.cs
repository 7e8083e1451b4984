using System.Globalization;
using System.Xml.Linq;
using Litterfall.Documents.Drawings;
using Litterfall.Documents.Dxf;
using Litterfall.Documents.Pdf;
using Litterfall.Documents.Svg;
using UglyToad.PdfPig;

namespace Litterfall.UnitTests.Documents;

/// <summary>One small drawing through each writer, read back by other code: PdfPig, the XML reader.</summary>
public sealed class WriterTests
{
    private const double Point = 25.4 / 72;

    /// <summary>A line of 30 mm, a square of 10 mm, a circle of 4 mm and a word, on 60 × 40 mm.</summary>
    private static Drawing Small(double scale = 1)
    {
        var sketch = new Sketch { Key = "box" };
        sketch.Line(new Spot(5, 10), new Spot(35, 10), Pen.Thin, Layers.Cut);
        sketch.Rectangle(new Spot(40, 20), 10, 10, null, Tone.Water);
        sketch.Rings([new Ring(new Spot(20, 30), 4)], Pen.Fine, layer: Layers.Drill);
        sketch.Text(new Spot(5, 38), "a < b & ü", 10);
        return sketch.Done(60, 40, scale);
    }

    [Fact]
    public void Svg_is_xml_in_millimeters_with_keys_and_layers()
    {
        var root = XDocument.Parse(SvgWriter.Write(Small(), "<title> & co")).Root!;
        Assert.Equal(("60mm", "40mm"), (Word(root, "width"), Word(root, "height")));
        Assert.Equal("0 0 60 40", Word(root, "viewBox"));
        Assert.Equal("<title> & co", Named(root, "title").Single().Value);
        var paths = Named(root, "path").ToList();
        Assert.Equal(["CUT", "OUTLINE", "DRILL"], paths.Select(p => Word(p, "data-layer")));
        Assert.Equal("M5 10L35 10", Word(paths[0], "d"));
        Assert.Equal("M40 20L50 20L50 30L40 30Z", Word(paths[1], "d"));
        Assert.All(paths, path => Assert.Equal("box", Word(path, "data-key")));
        var text = Named(root, "text").Single();
        Assert.Equal("a < b & ü", text.Value);
        Assert.Equal(10 * Point, double.Parse(Word(text, "font-size"), CultureInfo.InvariantCulture), 1e-3);
    }

    [Theory]
    [InlineData("a\u0000b\u001Fc", "a b c")]
    [InlineData("🐸", "🐸")]
    [InlineData("\"'<>&", "&quot;&#39;&lt;&gt;&amp;")]
    public void Svg_holds_only_what_xml_allows(string text, string escaped) =>
        Assert.Equal(escaped, SvgWriter.Escaped(text));

    /// <summary>Half of a pair stands for no sign.</summary>
    [Fact]
    public void Half_a_sign_is_replaced() => Assert.Equal("\uFFFDa", SvgWriter.Escaped("\uD83Da"));

    /// <summary>PDF counts in points from the lower left corner.</summary>
    [Fact]
    public void Pdf_has_sheets_lines_and_letters_where_they_were_drawn()
    {
        var bytes = PdfWriter.Write("Small", new DateOnly(2026, 3, 2), [Small(), Small()]);
        using var document = PdfDocument.Open(bytes);
        Assert.Equal(2, document.NumberOfPages);
        Assert.Equal("Small", document.Information.Title);
        var page = document.GetPage(1);
        Assert.Equal(60, page.Width * Point, 0.5 * Point);
        Assert.Equal(40, page.Height * Point, 0.5 * Point);
        Assert.Equal("a<b&ü", string.Concat(page.Letters.Select(l => l.Value.Trim())));
        var first = page.Letters[0].StartBaseLine;
        Assert.Equal(5, first.X * Point, 0.05);
        Assert.Equal(2, first.Y * Point, 0.2);
        var line = page.Paths.First(path => path.IsStroked).GetBoundingRectangle()!.Value;
        Assert.Equal((5, 35), (Math.Round(line.Left * Point, 2), Math.Round(line.Right * Point, 2)));
        Assert.Contains(page.Paths, path => path.IsFilled);
        Assert.Equal(bytes, PdfWriter.Write("Small", new DateOnly(2026, 3, 2), [Small(), Small()]));
    }

    /// <summary>At 1 : 10 all is ten times as large, and y runs upward; fillings are not cut.</summary>
    [Fact]
    public void Dxf_is_the_thing_at_its_true_size()
    {
        var pairs = Pairs(DxfWriter.Write(Small(0.1), withText: true));
        Assert.Equal(("AC1009", "4"), (After(pairs, "$ACADVER"), After(pairs, "$INSUNITS")));
        Assert.Equal(("600.0", "400.0"), Corner(pairs, "$EXTMAX"));
        string[] kinds = ["LINE", "POLYLINE", "CIRCLE", "TEXT"];
        Assert.Equal(
            ["LINE", "CIRCLE", "TEXT"],
            pairs.Where(p => p.Code == 0 && kinds.Contains(p.Value)).Select(p => p.Value)
        );
        Assert.Equal(["50.0", "300.0", "0.0", "350.0", "300.0", "0.0"], Numbers(pairs, "LINE", 6));
        Assert.Equal(["200.0", "100.0", "0.0", "40.0"], Numbers(pairs, "CIRCLE", 4));
        Assert.Contains(pairs, p => p is (1, "a < b & \\U+00FC"));
        Assert.DoesNotContain("TEXT", DxfWriter.Write(Small(0.1), withText: false), StringComparison.Ordinal);
        Assert.Equal((0, "EOF"), pairs[^1]);
    }

    private static IEnumerable<XElement> Named(XElement root, string name) =>
        root.Descendants().Where(e => e.Name.LocalName == name);

    private static string Word(XElement element, string name) => element.Attribute(name)!.Value;

    private static List<(int Code, string Value)> Pairs(string dxf)
    {
        var lines = dxf.Split("\r\n");
        return
        [
            .. Enumerable
                .Range(0, lines.Length / 2)
                .Select(i => (int.Parse(lines[2 * i], CultureInfo.InvariantCulture), lines[(2 * i) + 1])),
        ];
    }

    private static string After(List<(int Code, string Value)> pairs, string name) =>
        pairs[pairs.FindIndex(p => p.Value == name) + 1].Value;

    private static (string X, string Y) Corner(List<(int Code, string Value)> pairs, string name)
    {
        var at = pairs.FindIndex(p => p.Value == name);
        return (pairs[at + 1].Value, pairs[at + 2].Value);
    }

    /// <summary>What follows the layer of the first entity of a kind.</summary>
    private static IEnumerable<string> Numbers(
        List<(int Code, string Value)> pairs,
        string kind,
        int count
    ) =>
        pairs.Skip(pairs.FindIndex(p => p is (0, _) && p.Value == kind) + 2).Take(count).Select(p => p.Value);
}
