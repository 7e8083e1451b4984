using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Documents.Drawings;
using Litterfall.Documents.Layout;
using Litterfall.Documents.Papers;

namespace Litterfall.Documents.Shop.Cutting;

/// <summary>The cut sheets of a plan: totals first, then a page for each sheet.</summary>
public static class CutSheetPaper
{
    /// <summary>Room of the drawing, mm: less where many cuts are listed below it.</summary>
    private const double Tall = 150;
    private const double Tight = 118;
    private const int FewCuts = 12;

    /// <summary>Writes all pages.</summary>
    /// <param name="sheet">What the papers share.</param>
    /// <param name="totals">What the plan takes and gives.</param>
    /// <param name="sheets">Its sheets, in the order they are cut; at least one.</param>
    public static PaperFile Write(
        ShopSheet sheet,
        CutTotalsText totals,
        IReadOnlyList<CutSheetText> sheets
    ) =>
        sheet.Pdf(
            string.Create(CultureInfo.InvariantCulture, $"cut-sheets-{sheets[0].Plan}.pdf"),
            "Cut sheets",
            [.. Totals(sheet, totals, sheets[0]), .. sheets.SelectMany(s => Page(sheet, s))]
        );

    private static IReadOnlyList<Drawing> Totals(ShopSheet sheet, CutTotalsText totals, CutSheetText first) =>
        sheet.Coded(
            sheet.Head(
                string.Create(CultureInfo.InvariantCulture, $"Cutting plan {first.Plan}"),
                first.Material
            ),
            first.Code,
            [.. totals.Told.Select((t, i) => new Words(t) { Bold = i == 0 })],
            [
                .. Rows("Pull", ("sheet, roll or offcut", "size", "how many", "place"), totals.Pull),
                .. Rows("Buy first", ("sheet", "size", "how many", "from"), totals.Buy),
                .. Rows("Parts", ("part", "finished size", "pieces", "tank"), totals.Parts),
                .. Rows("Keep and label", ("offcut", "size", "from sheet", "store at"), totals.Store),
                .. first.Cautions.Count > 0 ? new Block[] { new Heading("Cautions") } : [],
                .. first.Cautions.Select(c => new Words(c) { Sign = Sign.Caution, Tone = Tone.Caution }),
                new Blank("Cut by, day, minutes"),
            ]
        );

    private static IEnumerable<Block> Rows(
        string title,
        (string Name, string Size, string Count, string Where) heads,
        IReadOnlyCollection<TotalsRow> rows
    )
    {
        if (rows.Count == 0)
        {
            return [];
        }

        var table = Table.Of(
            title,
            (0.05, "", false),
            (0.34, heads.Name, false),
            (0.22, heads.Size, true),
            (0.13, heads.Count, true),
            (0.02, "", false),
            (0.24, heads.Where, false)
        );
        foreach (var row in rows)
        {
            table.Tick("", "", row.Name, row.Size, row.Count, "", row.Where);
        }

        return table.Blocks;
    }

    private static IReadOnlyList<Drawing> Page(ShopSheet sheet, CutSheetText text)
    {
        var inside = PageFrame.Inside(sheet.Size);
        var drawing = CutSheetView.Draw(text, (inside.Width, text.Cuts.Count <= FewCuts ? Tall : Tight));
        var which = LotLabels.Which(text.Sheet, text.Sheets);
        var head = sheet.Head(
            string.Create(CultureInfo.InvariantCulture, $"Cut sheet {which}, plan {text.Plan}"),
            text.Material
        );
        var top = inside.Y + drawing.Height + 11;
        var below = inside with { Y = top, Height = inside.Y + inside.Height - top };
        return PageFrame.Sides(
            sheet.Size,
            head,
            (_, sketch) =>
            {
                sketch?.Add(
                    new TextMark(
                        new(inside.X, inside.Y + 4),
                        $"{text.Stock}, {CutSheetView.Scale(drawing)}",
                        11
                    )
                    {
                        Bold = true,
                        Layer = Layers.Label,
                    }
                );
                sketch?.Place(drawing, new(inside.X, inside.Y + 7));
                return Below(text);
            },
            _ => Flow.Columns(below, 2)
        );
    }

    private static ImmutableArray<Block> Below(CutSheetText text) =>
        [
            new Heading("Cuts, in this order"),
            new Words(
                "Measured from the left and the lower edge of the raw sheet: put the tape on once and "
                    + "leave it."
                    + (
                        text.Kerf > 0
                            ? string.Create(
                                CultureInfo.InvariantCulture,
                                $" The cut takes {text.Kerf:0.##} mm beyond the line."
                            )
                            : ""
                    )
            )
            {
                Tone = Tone.Quiet,
            },
            .. text.Cuts.Select(c => new Words(c.Words) { Sign = Sign.Tick, After = 0.3 }),
            .. text.Cuts.Count == 0
                ? new Block[] { new Words("Nothing is cut off: the sheet is the part.") }
                : [],
            new Air(1),
            new Words(text.Areas),
            .. text.Cautions.Select(c => new Words(c) { Sign = Sign.Caution, Tone = Tone.Caution }),
        ];
}
