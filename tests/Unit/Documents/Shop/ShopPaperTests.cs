using Litterfall.Documents.Drawings;
using Litterfall.Documents.Layout;
using Litterfall.Documents.Papers;
using Litterfall.Documents.Shop;
using UglyToad.PdfPig;

namespace Litterfall.UnitTests.Documents.Shop;

/// <summary>Papers of the store room on both sheets: all of it there, on one side, nothing over another.</summary>
public sealed class ShopPaperTests
{
    public static TheoryData<string, bool> Sheets => new() { { "A4", false }, { "Letter", true } };

    private static ShopSheet Sheet(string name, bool isUs) =>
        new(
            name == "A4" ? PaperSize.A4 : PaperSize.Letter,
            "Lantern Ditch Workshop",
            new(2026, 9, 3),
            "1.0"
        )
        {
            IsUs = isUs,
        };

    private static string Text(PaperFile paper)
    {
        using var pdf = PdfDocument.Open(paper.Bytes);
        return string.Join(" ", pdf.GetPages().Select(p => p.Text));
    }

    private static void Clean(PaperFile paper, int pages)
    {
        Assert.Equal(pages, paper.Pages.Length);
        Assert.Empty(paper.Pages.SelectMany(p => PageFaults.Of(p)));
    }

    [Theory]
    [MemberData(nameof(Sheets))]
    public void A_batch_card_says_lots_buckets_and_water(string size, bool isUs)
    {
        var card = new BatchCardText
        {
            Recipe = "standard rainforest mix",
            Which = "1 of 2",
            Code = "STANDARD-RAINFOREST",
            MixedLiters = 30,
            LooseLiters = 34.1,
            TubLiters = 60,
            JugLiters = 0.5,
            WaterLiters = 8.2,
            Kilograms = 15.3,
            Parts =
            [
                new("tree-fern fiber", "FERN-07", 9.5, 19, 1.5),
                new("fine bark", "BARK-12, BARK-13", 9.5, 19, 2.3),
                new("charcoal", "CHAR-03", 5, 10, 1.1),
                new("peat", "PEAT-31, PEAT-32", 5, 10, null),
                new("chopped sphagnum", "SPH-02", 5, 10, 0.2),
            ],
            Orders = ["LD-201 planted tank, 18.2 L", "LD-203 foyer, 11.8 L"],
            Cautions = ["Dust can harm the lungs: wet it first and wear an FFP2 or N95 mask."],
        };
        var paper = BatchCard.Write(Sheet(size, isUs), [card, card with { Which = "2 of 2" }]);
        Clean(paper, 2);
        var text = Text(paper);
        foreach (var word in new[] { "PEAT-31", "BARK-13", "LD-203", "N95", "2 of 2", "initials" })
        {
            Assert.Contains(word, text, StringComparison.Ordinal);
        }

        // 8.2 L are 2.17 gallons of 231 cubic inches.
        Assert.Contains(isUs ? "gal" : "8.2 L", text, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Sheets))]
    public void Labels_keep_to_their_size_and_stand_side_by_side(string size, bool isUs)
    {
        LabelText Label(string number) =>
            new(
                number,
                $"HTTP://192.168.178.120:5080/L/{number}",
                "standard rainforest mix, mixed and moist",
                ["60 L, 3 Sep 2026", "order LD-204", "of FERN-07, BARK-12, CHAR-03, PEAT-31, SPH-02"]
            );
        var labels = Enumerable.Range(1, 20).Select(i => Label($"MIX-{i}-K")).ToList();
        var roll = LotLabels.Roll(Sheet(size, isUs), labels);
        Clean(roll, 20);
        Assert.All(roll.Pages, p => Assert.Equal((62.0, 29.0), (p.Width, p.Height)));
        var cut = LotLabels.Sheets(Sheet(size, isUs), labels);
        Clean(cut, 1);
        Assert.Contains("MIX-20-K", Text(cut), StringComparison.Ordinal);
    }

    /// <summary>ISO/IEC 18004 for wet benches: modules of half a millimeter, four of them clear around.</summary>
    [Fact]
    public void A_code_is_coarse_enough_and_has_its_quiet_zone()
    {
        var page = LotLabels
            .Roll(
                Sheet("A4", false),
                [new("PEAT-31-X", "HTTP://192.168.178.120:65535/L/PEAT-31-X", "peat", ["52 L"])]
            )
            .Pages[0];
        var code = page.Marks.OfType<PathMark>().Single(m => m.Fill == Tone.Ink);
        var spots = code.Contours.SelectMany(c => c.Spots).ToList();
        var module = code.Contours.Min(c => c.Spots.Max(s => s.X) - c.Spots.Min(s => s.X));
        Assert.True(module >= 0.5 - 1e-9);
        Assert.True(spots.Min(s => s.X) >= (4 * module) - 1e-9);
        Assert.True(page.Marks.OfType<TextMark>().All(t => t.At.X >= spots.Max(s => s.X) + (4 * module) - 1e-9));
    }

    [Theory]
    [MemberData(nameof(Sheets))]
    public void Lists_are_on_one_side(string size, bool isUs)
    {
        var sheet = Sheet(size, isUs);
        Clean(
            StockLists.Count(
                sheet,
                [
                    .. Enumerable
                        .Range(1, 30)
                        .Select(i => new CountLine(i < 15 ? "bulk bay" : "drawers", $"PEAT-{i}", "peat", "40 L")),
                ]
            ),
            1
        );
        Clean(StockLists.Count(sheet, []), 1);
        Clean(
            StockLists.Pick(
                sheet,
                "LD-204, Pelloway Pet Supplies",
                [new("bulk bay", "clay", "25.9 L", "CLAY-5 25.9 L", "3.24 L each"), new("", "box", "8", "", "")]
            ),
            1
        );
        var recall = StockLists.Recall(
            sheet,
            new(
                "PEAT-31",
                "peat, from Hollow Reed Bulk Goods, since 5 Jul 2026, 52 L: on hold.",
                [
                    new("Pernille Voss", "0151 0000, 3 Tanner's Row", "LD-201", "1 piece of TANK-9"),
                    new("Marl Street Dental", "", "LD-202", "5 L of MIX-7"),
                ],
                ["PEAT-31, 12 L, bulk bay"],
                ["MIX-7", "TANK-9"],
                []
            )
        );
        Clean(recall, 1);
        Assert.Contains("Marl Street Dental", Text(recall), StringComparison.Ordinal);
        Assert.Contains("2 orders got it", Text(recall), StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Sheets))]
    public void Kit_papers_tell_lots_weights_and_cautions(string size, bool isUs)
    {
        var sheet = Sheet(size, isUs);
        var packing = KitPapers.Packing(
            sheet,
            Enumerable
                .Range(1, 8)
                .Select(i => new PackingText(
                    $"KIT-{i}-A",
                    LotLabels.Which(i, 8),
                    $"KIT-{i}-A",
                    "small kit, LD-204",
                    [
                        new("Bags", "bag A: expanded clay", "3.24 L", "1.11–1.16 kg", "CLAY-5"),
                        new("Flat parts", "plastic fly screen, barrier", "1", "312 × 297 mm", "MESH-2"),
                    ]
                ))
        );
        Clean(packing, 8);
        Assert.Contains("CLAY-5", Text(packing), StringComparison.Ordinal);
        var leaflet = KitPapers.Leaflet(
            sheet,
            new("small kit", ["Tick the list."], ["A: expanded clay, 3.24 L"], ["Glass edges cut."], "Questions: us")
        );
        Clean(leaflet, 1);
        Assert.Contains("Glass edges cut.", Text(leaflet), StringComparison.Ordinal);
    }
}
