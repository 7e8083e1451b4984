using System.Globalization;
using System.Text;
using System.Xml.Linq;
using Litterfall.Documents.Drawings;
using Litterfall.Documents.Layout;
using Litterfall.Documents.Papers;
using Litterfall.Documents.Shop;
using Litterfall.Documents.Shop.Cutting;
using UglyToad.PdfPig;

namespace Litterfall.UnitTests.Documents.Shop.Cutting;

/// <summary>Cut sheets and files, read back by other code: PdfPig, ezdxf, the XML reader.</summary>
public sealed class CutSheetPaperTests
{
    private const string Reader = """
        import sys, json, io, ezdxf
        doc = ezdxf.read(io.StringIO(sys.stdin.buffer.read().decode("ascii").replace("\r\n", "\n")))
        out = {"version": doc.dxfversion, "errors": len(doc.audit().errors)}
        out.update({"shapes": [], "lines": [], "texts": []})
        for e in doc.modelspace():
            if e.dxftype() == "POLYLINE":
                out["shapes"].append({"layer": e.dxf.layer, "closed": e.is_closed,
                    "points": [[v.dxf.location.x, v.dxf.location.y] for v in e.vertices]})
            elif e.dxftype() == "LINE":
                out["lines"].append([e.dxf.layer, e.dxf.start.x, e.dxf.start.y, e.dxf.end.x, e.dxf.end.y])
            else:
                out["texts"].append([e.dxf.layer, e.dxf.text])
        print(json.dumps(out))
        """;

    /// <summary>A sheet of 1000 × 500 mm with two parts that touch where the cut takes no width.</summary>
    private static CutSheetText Sheet(double kerf = 3) =>
        new()
        {
            Plan = 12,
            Sheet = 1,
            Sheets = 2,
            Material = "acrylic sheet, 3 mm",
            Stock = "sheet ACRY-1: 1000 × 500 mm",
            Length = 1000,
            Width = 500,
            Kerf = kerf,
            TrimAcross = 10,
            TrimAlong = 10,
            HasGrain = true,
            IsScored = kerf == 0,
            Code = "HTTP://192.168.178.120:5080/TABLE/12",
            Parts =
            [
                new("12-1", "lid 441 × 300 mm", "LD-204 kits for a shop", 10, 10, 441, 300, false),
                new("12-2", "lid 441 × 300 mm", "LD-203 foyer", 451 + kerf, 10, 441, 300, false),
            ],
            Cuts =
            [
                new(1, true, 10, 0, 500, "cut 1: trim across at 10 mm from the left edge"),
                new(2, false, 310, 10, 990, "cut 2: along at 310 mm from the lower edge"),
                new(3, true, 451, 10, 310, "cut 3: across at 451 mm from the left edge"),
                new(4, true, 892 + kerf, 10, 310, "cut 4: across at 895 mm from the left edge"),
            ],
            Offcuts = [new("12-1A", 10, 310 + kerf, 980, 180 - kerf)],
            Areas = "Parts 52.9 %, offcuts 34.7 %, cuts 0.9 %, trim 5.9 %, waste 5.5 % of the sheet.",
            Cautions = ["Saw: eye and hearing protection, dust mask, push stick."],
        };

    private static CutTotalsText Totals() =>
        new()
        {
            Told = ["2 parts from 1 sheet, 19 % waste.", "Proved: no plan takes less material."],
            Pull = [new("sheet ACRY-1", "1000 × 500 mm", "1 sheet", "sheet rack")],
            Buy = [],
            Parts = [new("lid", "441 × 300 mm", "2", "LD-204 kits for a shop")],
            Store = [new("12-1A", "980 × 177 mm", "1", "offcut rack")],
        };

    private static PaperFile Paper(PaperSize size) =>
        CutSheetPaper.Write(
            new ShopSheet(size, "Lantern Ditch Workshop", new(2026, 9, 3), "1.0"),
            Totals(),
            [Sheet(), Sheet() with { Sheet = 2 }]
        );

    [Theory]
    [InlineData("A4")]
    [InlineData("Letter")]
    public void Totals_and_a_page_for_each_sheet(string size)
    {
        var paper = Paper(size == "A4" ? PaperSize.A4 : PaperSize.Letter);
        Assert.Equal(3, paper.Pages.Length);
        Assert.Empty(paper.Pages.SelectMany(p => PageFaults.Of(p)));
        using var pdf = PdfDocument.Open(paper.Bytes);
        var text = string.Join(" ", pdf.GetPages().Select(p => p.Text));
        foreach (
            var word in new[]
            {
                "cut 3: across at 451 mm",
                "scale 1 : 6",
                "print at 100 %",
                "12-2",
                "LD-203 foyer",
                "keep 12-1A",
                "grain",
                "Proved",
                "Saw:",
            }
        )
        {
            Assert.Contains(word, text, StringComparison.Ordinal);
        }
    }

    /// <summary>
    /// At 1 : 6 the sheet of 1000 mm is 166.67 mm long on paper; PDF counts in points of 25.4 / 72 mm.
    /// </summary>
    [Fact]
    public void The_drawing_is_to_the_scale_it_states()
    {
        var drawing = CutSheetView.Draw(Sheet(), (190, 118));
        Assert.Equal("scale 1 : 6", CutSheetView.Scale(drawing));
        using var pdf = PdfDocument.Open(Paper(PaperSize.A4).Bytes);
        var page = pdf.GetPage(2);
        var boxes = page
            .Paths.Select(p => p.GetBoundingRectangle())
            .Where(b => b is not null)
            .Select(b => (Width: b!.Value.Width * 25.4 / 72, Height: b.Value.Height * 25.4 / 72))
            .ToList();
        Assert.Contains(boxes, b => Near(b.Width, 1000 / 6.0) && Near(b.Height, 500 / 6.0));
        Assert.Contains(boxes, b => Near(b.Width, 441 / 6.0) && Near(b.Height, 300 / 6.0));
        Assert.Contains(boxes, b => Near(b.Width, 100) && b.Height < 0.5);
    }

    private static bool Near(double one, double other) => Math.Abs(one - other) < 0.05;

    [Fact]
    public void The_bench_plan_has_every_cut_once()
    {
        var file = CutFiles.BenchDxf(Sheet(0));
        Assert.Equal("plan-12-sheet-1-1000x500mm.dxf", file.Name);
        var read = Python.Read("ezdxf", Reader, file.Bytes);
        Assert.Equal(("AC1009", 0), ((string)read["version"]!, (int)read["errors"]!));
        var stock = Assert.Single(read["shapes"]!.AsArray());
        Assert.Equal(("STOCK", true), ((string)stock!["layer"]!, (bool)stock["closed"]!));
        var lines = read["lines"]!.AsArray().Select(l => l!.AsArray()).ToList();
        Assert.Equal(4, lines.Count(l => (string)l[0]! == "SCORE"));
        var bar = Assert.Single(lines, l => (string)l[0]! == "REF");
        Assert.Equal(100, Math.Abs((double)bar[3]! - (double)bar[1]!), 1e-6);
        Assert.Contains(lines, l => (double)l[1]! == 451 && (double)l[3]! == 451);
        Assert.Contains(read["texts"]!.AsArray(), t => (string)t![1]! == "12-2" && (string)t[0]! == "LABEL");
    }

    /// <summary>
    /// Where cuts take no width two parts would share an edge: the outlines of the file are closed, have
    /// their
    /// true size and lie apart.
    /// </summary>
    [Theory]
    [InlineData(0)]
    [InlineData(3)]
    public void Parts_for_a_shop_are_closed_and_share_no_edge(double kerf)
    {
        var file = CutFiles.PartsDxf(Sheet(kerf));
        Assert.EndsWith("-mm.dxf", file.Name, StringComparison.Ordinal);
        var read = Python.Read("ezdxf", Reader, file.Bytes);
        Assert.Empty(read["texts"]!.AsArray());
        var boxes = new List<(double Left, double Right, double Low, double High)>();
        foreach (var shape in read["shapes"]!.AsArray())
        {
            Assert.True((bool)shape!["closed"]!);
            Assert.Equal("CUT", (string)shape["layer"]!);
            var points = shape["points"]!
                .AsArray()
                .Select(p => (X: (double)p![0]!, Y: (double)p[1]!))
                .ToList();
            boxes.Add(
                (points.Min(p => p.X), points.Max(p => p.X), points.Min(p => p.Y), points.Max(p => p.Y))
            );
        }

        Assert.Equal(2, boxes.Count);
        Assert.All(boxes, b =>
            Assert.Equal((441.0, 300.0), (Math.Round(b.Right - b.Left, 6), Math.Round(b.High - b.Low, 6)))
        );
        Assert.True(boxes.Max(b => b.Left) - boxes.Min(b => b.Right) >= 10 - 1e-6);
        Assert.Equal(["REF"], read["lines"]!.AsArray().Select(l => (string)l![0]!));
    }

    [Fact]
    public void Cut_lines_for_a_shop_are_not_doubled()
    {
        var twice = Sheet() with { Cuts = [.. Sheet().Cuts, Sheet().Cuts[2] with { Number = 5 }] };
        var read = Python.Read("ezdxf", Reader, CutFiles.LinesDxf(twice).Bytes);
        var cuts = read["lines"]!
            .AsArray()
            .Where(l => (string)l![0]! == "CUT")
            .Select(l => l!.ToJsonString());
        Assert.Equal(4, cuts.Count());
        Assert.Empty(read["shapes"]!.AsArray());
    }

    [Fact]
    public void The_svg_is_in_millimeters()
    {
        var root = XDocument.Parse(Encoding.UTF8.GetString(CutFiles.BenchSvg(Sheet()).Bytes)).Root!;
        Assert.Equal(("1000mm", "515mm"), (root.Attribute("width")!.Value, root.Attribute("height")!.Value));
        var cuts = root.Descendants()
            .Where(e => e.Attribute("data-layer")?.Value == "CUT")
            .Select(e => e.Attribute("d")!.Value);
        Assert.Contains("M451 490L451 190", cuts);
        Assert.Equal(
            1000,
            double.Parse(root.Attribute("viewBox")!.Value.Split(' ')[2], CultureInfo.InvariantCulture)
        );
        Assert.Contains(root.Descendants(), e => e.Attribute("data-layer")?.Value == Layers.Stock);
    }
}
