using System.Globalization;
using System.Text;
using Litterfall.Documents.Drawings;
using Litterfall.Documents.Dxf;
using Litterfall.Documents.Layout;
using Litterfall.Documents.Svg;
using Litterfall.Documents.Views;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;
using Litterfall.Quantities.Cutting;
using Litterfall.Quantities.Measures;
using Litterfall.Quantities.Openings;

namespace Litterfall.Documents.Papers;

/// <summary>The cut list, the files at true size, and the drawing for the glass shop.</summary>
internal static class CutPapers
{
    private static readonly string[] Glasslike = ["float-glass", "toughened-glass"];

    public static IEnumerable<PaperFile> Write(PaperJob job)
    {
        var cuts = job.Numbers.Cuts;
        if (cuts.Length == 0)
        {
            yield break;
        }

        yield return List(job);
        for (var i = 0; i < cuts.Length; i++)
        {
            var drawing = CutView.TrueSize(cuts[i]);
            var name = FileName(cuts[i], i);
            yield return PaperJob.Text($"cut/{name}.dxf", DxfWriter.Write(drawing, withText: false));
            yield return new PaperFile(
                $"cut/{name}.svg",
                Encoding.UTF8.GetBytes(SvgWriter.Write(drawing, $"{cuts[i].Part}, millimeters, 1:1"))
            )
            {
                Title =
                    $"{NumberText.Capital(cuts[i].Part.Replace('-', ' '))}, "
                    + NumberText.Size(cuts[i].Length, cuts[i].Width),
                Scale = 1,
            };
        }

        var glass = cuts.Where(c => Glasslike.Contains(c.Material)).ToList();
        if (glass.Count > 0)
        {
            yield return Glass(job, glass);
        }
    }

    /// <summary>
    /// "02-barrier-620x470mm": the unit stands in the name, because the format carries none.
    /// </summary>
    private static string FileName(CutPart cut, int index) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{index + 1:00}-{PaperJob.FileWord(cut.Part)}-"
                + $"{NumberText.Tape(cut.Length.Si)}x{NumberText.Tape(cut.Width.Si)}mm"
        );

    private static PaperFile List(PaperJob job)
    {
        var sides = PageFrame.Sides(job.Wish.Size, job.Head("Cut list"), style => Blocks(job, style));
        return job.Pdf("03-cut-list.pdf", "Cut list", sides);
    }

    private static List<Block> Blocks(PaperJob job, Style style)
    {
        var table = Table.Of(
            job.Boxes > 1
                ? string.Create(CultureInfo.InvariantCulture, $"Parts for all {job.Boxes} boxes")
                : "Parts",
            (0.05, "no.", false),
            (0.13, "part", false),
            (0.06, "pcs", true),
            (0.2, $"length × width{job.MillimetersAhead}", true),
            (0.1, "thickness", true),
            (0.02, "", false),
            (0.18, "material", false),
            (0.26, "fit and edge", false)
        );
        var cuts = job.Numbers.Cuts;
        for (var i = 0; i < cuts.Length; i++)
        {
            Row(job, table, cuts[i], i + 1);
        }

        var columns = cuts.Length <= 4 ? 2 : 3;
        var tall = (cuts.Length <= 6 ? 44 : 24) + 22 * style.Air;
        return
        [
            .. table.Blocks,
            .. Assumed(job),
            new Words(
                "Sizes are the finished part, clearance and upturn included; no kerf is added. "
                    + "Measure the box "
                    + "three times at each edge before cutting and take the smallest. The files in "
                    + "the folder "
                    + "cut/ are 1:1 in millimeters: check the 100 mm line on layer REF."
            )
            {
                Tone = Tone.Quiet,
            },
            .. Pictures.Grid(
                [
                    .. cuts.Select(
                        (c, i) => (Label(c, i), CutView.Dimensioned(c, (178.0 / columns - 3, tall)))
                    ),
                ],
                columns
            ),
        ];
    }

    private static void Row(PaperJob job, Table table, CutPart cut, int number) =>
        table.Row(
            cut.Key,
            NumberText.Integer(number),
            cut.Part.Replace('-', ' '),
            NumberText.Whole(cut.Count),
            $"{NumberText.Tape(cut.Length.Si, cut.Width.Si)}{job.MillimetersBehind}",
            cut.Thickness is { } t ? CutView.Exact(t.Si) : "",
            "",
            job.Numbers.Design.Catalog.Find(cut.Material)?.Name ?? cut.Material,
            $"{Tolerance(job, cut)}{cut.Note}{CutView.Holes(cut)}{Weighs(cut)}"
        );

    /// <summary>What the design leaves open, so that the reader can object before cutting.</summary>
    private static IEnumerable<Block> Assumed(PaperJob job)
    {
        var assumed = OpeningPlans.Assumed(job.Numbers.Design, job.Numbers.Box);
        if (assumed.Length > 0)
        {
            yield return new Words(
                $"Assumed, because the design leaves it open: {string.Join("; ", assumed)}."
            );
        }
    }

    private static string Weighs(CutPart cut) =>
        cut.Mass is { } mass ? $"; {NumberText.Kilograms(mass)} each" : "";

    private static string Label(CutPart cut, int index) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{index + 1} {cut.Part.Replace('-', ' ')}{(cut.SeenFrom.Length > 0 ? $", {cut.SeenFrom}" : "")}"
        );

    private static string Tolerance(PaperJob job, CutPart cut) =>
        job.Numbers.Design.Catalog.Find<PanelEntry>(cut.Material)?.CutTolerance is { } t
            ? $"±{CutView.Exact(t.Si)}; "
            : "";

    private static PaperFile Glass(PaperJob job, List<CutPart> glass)
    {
        var first = job.Numbers.Design.Catalog.Find<PanelEntry>(glass[0].Material);
        var sides = PageFrame.Sides(job.Wish.Size, job.Head("Drawing for the glass shop"), style =>
            GlassBlocks(job, glass, first, style)
        );
        return job.Pdf("04-glass-shop.pdf", "Drawing for the glass shop", sides);
    }

    private static List<Block> GlassBlocks(
        PaperJob job,
        List<CutPart> glass,
        PanelEntry? material,
        Style style
    )
    {
        var table = Table.Of(
            "Panes",
            (0.06, "no.", false),
            (0.2, "pane", false),
            (0.1, "pieces", true),
            (0.24, $"length × width{job.MillimetersAhead}", true),
            (0.12, "thickness", true),
            (0.02, "", false),
            (0.26, "edges", false)
        );
        for (var i = 0; i < glass.Count; i++)
        {
            table.Row(
                glass[i].Key,
                NumberText.Integer(i + 1),
                glass[i].Part.Replace('-', ' '),
                NumberText.Whole(glass[i].Count),
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{NumberText.Tape(glass[i].Length.Si, glass[i].Width.Si)}{job.MillimetersBehind}"
                ),
                glass[i].Thickness is { } t ? CutView.Exact(t.Si) : "tell us",
                "",
                $"{glass[i].Note}{CutView.Holes(glass[i])}{Weighs(glass[i])}"
            );
        }

        var tolerance = material?.CutTolerance;
        var (columns, tall) =
            glass.Count > 4 ? (2, 36 + 22 * style.Air) : (glass.Count > 1 ? 2 : 1, 60 + 20 * style.Air);
        return
        [
            .. table.Blocks,
            .. Notes(material, tolerance),
            .. Pictures.Grid(
                [
                    .. glass.Select(
                        (g, i) =>
                            (
                                Label(g, i),
                                CutView.Dimensioned(
                                    g,
                                    (PageFrame.Inside(job.Wish.Size).Width / columns - 6, tall)
                                )
                            )
                    ),
                ],
                columns
            ),
        ];
    }

    private static IEnumerable<Block> Notes(PanelEntry? material, Figure? tolerance)
    {
        var size = tolerance is null
            ? "tolerance as agreed"
            : $"cutting tolerance ±{CutView.Exact(tolerance.Si)} ({Spoken(tolerance)})";
        yield return new Words(
            $"{material?.Name ?? "glass"}, annealed unless we say otherwise; {size}. Outside sizes; "
                + $"nothing is to "
                + "be added. Holes are measured to their middle from the left and the lower edge of "
                + "the pane as "
                + "drawn. All edges seamed, edges that stay open to the touch polished."
        );
        yield return new Words(
            "Wear gloves and eye protection; carry panes upright. Sizes and thickness follow from "
                + "an estimate "
                + "that is no structural design: tell us if you would take a thicker pane or "
                + "another hole place."
        )
        {
            Sign = Sign.Caution,
            Tone = Tone.Caution,
        };
    }

    private static string Spoken(Figure figure) =>
        figure.Trust.IsWeak() ? $"{figure.Trust.Spoken()}; tell us yours" : figure.Trust.Spoken();
}
