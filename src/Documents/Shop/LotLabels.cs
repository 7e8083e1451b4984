using System.Globalization;
using Litterfall.Documents.Drawings;
using Litterfall.Documents.Labels;
using Litterfall.Documents.Layout;
using Litterfall.Documents.Papers;
using Litterfall.Domain.Lists;

namespace Litterfall.Documents.Shop;

/// <summary>What stands on a label of a lot, a batch, a bag or a tank.</summary>
/// <param name="Number">Number to read and type, with its check character.</param>
/// <param name="Code">What the code holds: capitals and digits, and $%*+-./: alone.</param>
/// <param name="Name">What is in it.</param>
/// <param name="Lines">Amount, day, lots in it, what lives in it; the first ones count most.</param>
public sealed record LabelText(string Number, string Code, string Name, Seq<string> Lines);

/// <summary>Labels of 62 × 29 mm: one to a page for a roll, or many on a sheet to cut out.</summary>
public static class LotLabels
{
    /// <summary>Width, mm.</summary>
    public const double Width = 62;

    /// <summary>Height, mm.</summary>
    public const double Height = 29;

    private const double Pad = 1.5;
    private const double Gap = 2;
    private const double Wet = 0.5;
    private const double Largest = 0.8;
    private const double Points = 9;
    private const double Line = 3.7;

    /// <summary>One label to a page.</summary>
    /// <param name="sheet">What the papers share.</param>
    /// <param name="labels">The labels.</param>
    public static PaperFile Roll(ShopSheet sheet, IEnumerable<LabelText> labels) =>
        sheet.Pdf("labels.pdf", "Labels", labels.Select(l => Draw(l)));

    /// <summary>Labels on sheets of paper, to cut out.</summary>
    /// <param name="sheet">What the papers share.</param>
    /// <param name="labels">The labels.</param>
    public static PaperFile Sheets(ShopSheet sheet, IEnumerable<LabelText> labels)
    {
        var inside = PageFrame.Inside(sheet.Size);
        var columns = (int)((inside.Width + Gap) / (Width + Gap));
        var rows = (int)((inside.Height + Gap) / (Height + Gap));
        return sheet.Pdf(
            "labels.pdf",
            "Labels",
            labels
                .Chunk(columns * rows)
                .Select(some =>
                {
                    var sketch = PageFrame.Framed(sheet.Size, sheet.Head("Labels, to cut out", ""));
                    for (var i = 0; i < some.Length; i++)
                    {
                        var at = new Spot(
                            inside.X + (i % columns) * (Width + Gap),
                            inside.Y + (i / columns) * (Height + Gap)
                        );
                        // The quiet zone of the code is painted: the frame goes over it.
                        sketch.Place(Draw(some[i]), at);
                        sketch.Rectangle(at, Width, Height, Pen.Fine);
                    }

                    return sketch.Done(sheet.Size.Width, sheet.Size.Height);
                })
        );
    }

    private static Drawing Draw(LabelText label)
    {
        var sketch = new Sketch();
        var code = Code(label.Code);
        sketch.Place(code, new(0, (Height - code.Height) / 2));
        var left = code.Width;
        var room = Width - left - Pad;
        var number = Lettering.Clean(label.Number);
        var points = Enumerable
            .Range(0, 9)
            .Select(i => 13 - (0.5 * i))
            .FirstOrDefault(p => Lettering.Width(number, p, true) <= room, Points);
        sketch.Add(new TextMark(new(left, 5.4), number, points) { Bold = true, Layer = Layers.Label });
        var most = (int)((Height - 7) / Line);
        IEnumerable<string> lines =
        [
            .. Lettering.Wrap(Lettering.Clean(label.Name), room, Points).Take(2),
            .. label.Lines.SelectMany(l => Lettering.Wrap(Lettering.Clean(l), room, Points)),
        ];
        var y = 9.6;
        foreach (var line in lines.Take(most))
        {
            sketch.Text(new(left, y), Lettering.Cut(line, room, Points), Points);
            y += Line;
        }

        return sketch.Done(Width, Height);
    }

    /// <summary>As large as the label takes; never finer than a wet bench reads.</summary>
    private static Drawing Code(string text)
    {
        var fine = QrMark.Draw(text, Wet);
        var module = Math.Min(Largest, Height / (fine.Height / Wet));
        // Dots of a printer of labels are an eighth of a millimeter.
        return QrMark.Draw(text, Math.Max(Wet, Math.Floor(module * 8) / 8));
    }

    /// <summary>"3 of 8".</summary>
    /// <param name="one">Which.</param>
    /// <param name="all">Of how many.</param>
    public static string Which(int one, int all) =>
        string.Create(CultureInfo.InvariantCulture, $"{one} of {all}");
}
