using System.Globalization;
using Litterfall.Documents.Drawings;
using Litterfall.Documents.Layout;
using Litterfall.Documents.Papers;
using Litterfall.Domain.Dispatch;

namespace Litterfall.Documents.Shop.Dispatch;

/// <summary>Labels of cups, 62 × 40 mm, many to a sheet to cut out: one for each animal, culture and pot.
/// </summary>
public static class CupLabels
{
    private const double Width = 62;
    private const double Height = 40;
    private const double Gap = 1;
    private const double Pad = 2;
    private const double Points = 9;
    private const double Line = 3.7;
    private const double Largest = 13;

    /// <summary>Writes them; null where no label may be printed.</summary>
    /// <param name="sheet">What the papers share.</param>
    /// <param name="cleared">The cleared parcel.</param>
    public static PaperFile? Write(ShopSheet sheet, ClearedParcel cleared)
    {
        if (cleared.LabelRefusal.Length > 0)
        {
            return null;
        }

        var all = cleared.Plan.Cups.Sum(c => c.Count);
        var inside = PageFrame.Inside(sheet.Size);
        var columns = (int)((inside.Width + Gap) / (Width + Gap));
        var rows = (int)((inside.Height + Gap) / (Height + Gap));
        var name = string.Create(CultureInfo.InvariantCulture, $"Cup labels, parcel {cleared.Parcel.Number}");
        return sheet.Pdf(
            "cup-labels.pdf",
            name,
            cleared
                .Plan.Cups.SelectMany(c => Enumerable.Repeat(c, c.Count))
                .Select((cup, i) => Draw(cleared, cup, i + 1, all))
                .Chunk(columns * rows)
                .Select(some =>
                {
                    var sketch = PageFrame.Framed(sheet.Size, sheet.Head($"{name}, to cut out", ""));
                    for (var i = 0; i < some.Length; i++)
                    {
                        var at = new Spot(
                            inside.X + (i % columns * (Width + Gap)),
                            inside.Y + (i / columns * (Height + Gap))
                        );
                        sketch.Rectangle(at, Width, Height, Pen.Fine);
                        sketch.Place(some[i], at);
                    }

                    return sketch.Done(sheet.Size.Width, sheet.Size.Height);
                })
        );
    }

    private static Drawing Draw(ClearedParcel cleared, PackedCup cup, int number, int of)
    {
        var sketch = new Sketch();
        const double room = Width - (2 * Pad);
        var name = Lettering.Clean(cup.Label[0]);
        var points = Enumerable
            .Range(0, 9)
            .Select(i => Largest - (0.5 * i))
            .FirstOrDefault(p => Lettering.Width(name, p, true) <= room, Points);
        var y = 6.2;
        foreach (var line in Lettering.Wrap(name, room, points, true))
        {
            sketch.Add(new TextMark(new(Pad, y), line, points) { Bold = true, Layer = Layers.Label });
            y += points * Lettering.Point * 1.15;
        }

        y = Math.Max(y, 10.2);
        var which = string.Create(
            CultureInfo.InvariantCulture,
            $"Parcel {cleared.Parcel.Number}, number {number} of {of}"
        );
        foreach (
            var line in cup
                .Label.Skip(1)
                .Append(which)
                .SelectMany(l => Lettering.Wrap(Lettering.Clean(l), room, Points))
                .Take((int)((Height - y) / Line) + 1)
        )
        {
            sketch.Text(new(Pad, y), line, Points);
            y += Line;
        }

        return sketch.Done(Width, Height);
    }
}
