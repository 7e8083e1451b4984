using System.Globalization;
using System.Text;
using Litterfall.Documents.Drawings;
using Litterfall.Documents.Dxf;
using Litterfall.Documents.Papers;
using Litterfall.Documents.Svg;

namespace Litterfall.Documents.Shop.Cutting;

/// <summary>
/// A sheet as files at true size in millimeters: the bench's own plan with its text, and what a shop with a
/// machine takes: the parts as closed outlines, or each cut once.
/// </summary>
public static class CutFiles
{
    /// <summary>Room between two parts in a file of parts, so that no edge lies on another.</summary>
    private const double Apart = 10;

    private const double Bar = 100;
    private const double BarRoom = 15;
    private static readonly Pen Line = new(Tone.Ink, 0.1);

    /// <summary>The bench's plan of a sheet as DXF: outline of the sheet, each cut once, labels.</summary>
    /// <param name="sheet">The sheet.</param>
    public static PaperFile BenchDxf(CutSheetText sheet) =>
        Text($"{Name(sheet)}.dxf", DxfWriter.Write(Bench(sheet), withText: true));

    /// <summary>The bench's plan as SVG.</summary>
    /// <param name="sheet">The sheet.</param>
    public static PaperFile BenchSvg(CutSheetText sheet) =>
        Text($"{Name(sheet)}.svg", SvgWriter.Write(Bench(sheet), $"{sheet.Material}, millimeters, 1:1"));

    /// <summary>
    /// Parts for a shop: closed outlines without text. Where cuts take no width the edges of neighbors would
    /// lie on each other, so parts are moved apart.
    /// </summary>
    /// <param name="sheet">The sheet.</param>
    public static PaperFile PartsDxf(CutSheetText sheet)
    {
        var lefts = sheet.Parts.Select(p => p.X).Distinct().Order().ToList();
        var feet = sheet.Parts.Select(p => p.Y).Distinct().Order().ToList();
        var moved = sheet
            .Parts.Select(p =>
                p with
                {
                    X = p.X + (Apart * lefts.IndexOf(p.X)),
                    Y = p.Y + (Apart * feet.IndexOf(p.Y)),
                }
            )
            .ToList();
        var size = (
            Length: moved.Select(p => p.X + p.Length).DefaultIfEmpty(Bar).Max(),
            Width: moved.Select(p => p.Y + p.Width).DefaultIfEmpty(0).Max()
        );
        var sketch = new Sketch();
        foreach (var part in moved)
        {
            Closed(sketch, (part.X, part.Y, part.Length, part.Width), size.Width, Layers.Cut);
        }

        return Text($"{Name(sheet)}-parts-mm.dxf", Written(sketch, size));
    }

    /// <summary>Each cut once for a shop, without text.</summary>
    /// <param name="sheet">The sheet.</param>
    public static PaperFile LinesDxf(CutSheetText sheet)
    {
        var sketch = new Sketch();
        Cuts(sketch, sheet, Layers.Cut);
        return Text($"{Name(sheet)}-cut-lines-mm.dxf", Written(sketch, (sheet.Length, sheet.Width)));
    }

    private static string Written(Sketch sketch, (double Length, double Width) size)
    {
        Reference(sketch, size.Width);
        return DxfWriter.Write(
            sketch.Done(Math.Max(size.Length, Bar), size.Width + BarRoom),
            withText: false
        );
    }

    private static Drawing Bench(CutSheetText sheet)
    {
        var sketch = new Sketch();
        Closed(sketch, (0, 0, sheet.Length, sheet.Width), sheet.Width, Layers.Stock);
        Cuts(sketch, sheet, sheet.IsScored ? Layers.Score : Layers.Cut);
        foreach (var part in sheet.Parts)
        {
            Label(sketch, sheet, (part.X, part.Y), [part.Number, part.Name, part.For]);
        }

        foreach (var offcut in sheet.Offcuts)
        {
            Label(sketch, sheet, (offcut.X, offcut.Y), [$"keep {offcut.Number}"]);
        }

        Reference(sketch, sheet.Width);
        return sketch.Done(Math.Max(sheet.Length, Bar), sheet.Width + BarRoom);
    }

    /// <summary>Cuts of a tree never lie on each other; a cut told twice is drawn once.</summary>
    private static void Cuts(Sketch sketch, CutSheetText sheet, string layer)
    {
        foreach (
            var (isUpright, at, from, to) in sheet
                .Cuts.Select(c => (c.IsUpright, c.At, c.From, c.To))
                .Distinct()
        )
        {
            var (one, other) = isUpright
                ? (At(at, from, sheet.Width), At(at, to, sheet.Width))
                : (At(from, at, sheet.Width), At(to, at, sheet.Width));
            sketch.Line(one, other, Line, layer);
        }
    }

    private static void Label(
        Sketch sketch,
        CutSheetText sheet,
        (double X, double Y) corner,
        IEnumerable<string> lines
    )
    {
        // Letters of 8 mm are read at arm's length on a sheet of a meter.
        const double points = 32;
        const double pitch = 12;
        var all = lines.Where(l => l.Length > 0).ToList();
        for (var i = 0; i < all.Count; i++)
        {
            sketch.Text(
                At(corner.X + 5, corner.Y + 5 + (pitch * (all.Count - 1 - i)), sheet.Width),
                all[i],
                points
            );
        }
    }

    private static void Closed(
        Sketch sketch,
        (double X, double Y, double Length, double Width) on,
        double height,
        string layer
    ) =>
        sketch.Add(
            new PathMark(
                [new Contour(Sketch.Corners(At(on.X, on.Y + on.Width, height), on.Length, on.Width), true)],
                []
            )
            {
                Pen = Line,
                Layer = layer,
            }
        );

    private static void Reference(Sketch sketch, double height) =>
        sketch.Line(new(0, height + 10), new(Bar, height + 10), Line, Layers.Reference);

    private static Spot At(double x, double y, double height) => new(x, height - y);

    private static string Name(CutSheetText sheet) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"plan-{sheet.Plan}-sheet-{sheet.Sheet}-{sheet.Length:0.#}x{sheet.Width:0.#}mm"
        );

    private static PaperFile Text(string name, string text) => new(name, Encoding.UTF8.GetBytes(text));
}
