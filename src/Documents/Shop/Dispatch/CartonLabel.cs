using System.Globalization;
using Litterfall.Documents.Drawings;
using Litterfall.Documents.Layout;
using Litterfall.Documents.Papers;
using Litterfall.Domain.Dispatch;
using Litterfall.Quantities.Measures;

namespace Litterfall.Documents.Shop.Dispatch;

/// <summary>The label of the carton, a whole sheet to be read across a hub.</summary>
public static class CartonLabel
{
    private const double Margin = 16;
    private const double Giant = 34;
    private const double Large = 22;
    private const double Middle = 16;
    private const double AddressLine = 6.5;

    /// <summary>A line shrinks to so much of its size before it is broken.</summary>
    private const double Least = 0.85;
    private const double ArrowWidth = 34;
    private const double ArrowHeight = 46;

    /// <summary>Writes it; null where no label may be printed.</summary>
    /// <param name="sheet">What the papers share.</param>
    /// <param name="cleared">The cleared parcel.</param>
    public static PaperFile? Write(ShopSheet sheet, ClearedParcel cleared)
    {
        if (cleared.LabelRefusal.Length > 0)
        {
            return null;
        }

        var name = string.Create(
            CultureInfo.InvariantCulture,
            $"Carton label, parcel {cleared.Parcel.Number}"
        );
        return sheet.Pdf("carton-label.pdf", name, [Draw(sheet, cleared)]);
    }

    private static Drawing Draw(ShopSheet sheet, ClearedParcel cleared)
    {
        var size = sheet.Size;
        var foot = size.Height - 42 - (To(cleared, size.Width - (2 * Margin)).Length * AddressLine);
        // As large as the lines leave room for.
        var factor = Enumerable
            .Range(0, 13)
            .Select(i => 1.2 - (0.05 * i))
            .FirstOrDefault(f => Upper(new(), sheet, cleared, f) <= foot, 0.6);
        var sketch = new Sketch();
        sketch.Rectangle(new(8, 8), size.Width - 16, size.Height - 16, new Pen(Tone.Ink, 1.6));
        Upper(sketch, sheet, cleared, factor);
        Address(sketch, sheet, cleared, size.Width - (2 * Margin));
        return sketch.Done(size.Width, size.Height);
    }

    /// <summary>All above the address; returns where it ends.</summary>
    private static double Upper(Sketch sketch, ShopSheet sheet, ClearedParcel cleared, double factor)
    {
        var size = sheet.Size;
        var room = size.Width - (2 * Margin);
        var lines = cleared.Plan.CartonLabel;
        var y = 28.0;
        foreach (var line in lines.Take(1).Concat(Pickup(cleared)))
        {
            y = Big(sketch, line, y, room, Giant);
        }

        Arrow(sketch, new(Margin, y - 6));
        Arrow(sketch, new(size.Width - Margin - ArrowWidth, y - 6));
        foreach (var line in lines.Skip(1).Take(1))
        {
            Centered(sketch, line, y + (ArrowHeight / 2) - 4, room - (2 * ArrowWidth) - 8, Large, size);
        }

        y += ArrowHeight + 8;
        foreach (var line in lines.Skip(2).Take(1))
        {
            y = Big(sketch, Units(sheet, line), y, room, Large);
        }

        foreach (var line in lines.Skip(3))
        {
            y = Big(sketch, Units(sheet, line), y, room, Middle * factor);
        }

        return y;
    }

    private static string[] Pickup(ClearedParcel cleared) =>
        cleared.Parcel.IsDepotPickUp ? ["KEEP AT THE DEPOT FOR PICK-UP"] : [];

    private static string Units(ShopSheet sheet, string line) => sheet.IsUs ? UsUnits.Of(line) : line;

    /// <summary>A line as large as the room allows, over two lines where it must.</summary>
    private static double Big(Sketch sketch, string text, double y, double room, double points)
    {
        var clean = Lettering.Clean(text);
        var size = Math.Max(
            Least * points,
            Math.Min(points, points * room / Lettering.Width(clean, points, true))
        );
        foreach (var line in Lettering.Wrap(clean, room + 0.01, size, true))
        {
            sketch.Add(new TextMark(new(Margin, y), line, size) { Bold = true, Layer = Layers.Label });
            y += size * Lettering.Point * 1.25;
        }

        return y + (points * Lettering.Point * 0.3);
    }

    private static void Centered(
        Sketch sketch,
        string text,
        double y,
        double room,
        double points,
        PaperSize size
    )
    {
        var fit = Math.Min(points, points * room / Lettering.Width(text, points, true));
        sketch.Add(
            new TextMark(new(size.Width / 2, y), text, fit)
            {
                Bold = true,
                Align = Align.Middle,
                Layer = Layers.Label,
            }
        );
    }

    /// <summary>An arrow that points up, on a bar.</summary>
    private static void Arrow(Sketch sketch, Spot at)
    {
        const double half = ArrowWidth / 2;
        const double shaft = 6;
        const double head = 18;
        const double foot = ArrowHeight - 6;
        sketch.Area(
            [
                at.Moved(half, 0),
                at.Moved(ArrowWidth, head),
                at.Moved(half + shaft, head),
                at.Moved(half + shaft, foot),
                at.Moved(half - shaft, foot),
                at.Moved(half - shaft, head),
                at.Moved(0, head),
            ],
            null,
            Tone.Ink
        );
        sketch.Rectangle(at.Moved(0, ArrowHeight - 3), ArrowWidth, 3, null, Tone.Ink);
    }

    /// <summary>Who gets it, long lines broken: a name is never cut.</summary>
    private static string[] To(ClearedParcel cleared, double room) =>
        [
            .. cleared
                .Address.Prepend(cleared.Parcel.Recipient)
                .SelectMany(line => Lettering.Wrap(line, room, Middle)),
        ];

    private static void Address(Sketch sketch, ShopSheet sheet, ClearedParcel cleared, double room)
    {
        var size = sheet.Size;
        var to = To(cleared, room);
        var y = size.Height - 26 - (to.Length * AddressLine);
        sketch.Line(new(Margin, y - 8), new(size.Width - Margin, y - 8), new Pen(Tone.Ink, 0.5));
        foreach (var line in to)
        {
            sketch.Text(new(Margin, y), Lettering.Cut(line, room, Middle), Middle);
            y += AddressLine;
        }

        var arrives = cleared.Day.Arrives is { } day ? $", to arrive {NumberText.Day(day)}" : "";
        var leaves = NumberText.Day(cleared.Day.Day);
        sketch.Text(
            new(Margin, size.Height - 14),
            Lettering.Cut(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"From {sheet.Workshop}. Parcel {cleared.Parcel.Number}, {leaves}{arrives}"
                ),
                room,
                10
            ),
            10,
            Align.Start,
            Tone.Quiet
        );
    }
}
