using System.Globalization;
using System.Text;
using Litterfall.Documents.Drawings;

namespace Litterfall.Documents.Dxf;

/// <summary>
/// A drawing as a release 12 exchange file in millimeters of the thing itself: the scale of the paper is
/// taken out, y runs up, closed outlines are closed polylines, and a 100 mm line lies on its own layer,
/// because this release has no unit of its own.
/// </summary>
public static class DxfWriter
{
    private static readonly (string Name, int Color, string LineType)[] Known =
    [
        (Layers.Cut, 1, "CONTINUOUS"),
        (Layers.Score, 6, "CONTINUOUS"),
        (Layers.Stock, 8, "CONTINUOUS"),
        (Layers.Drill, 5, "CONTINUOUS"),
        (Layers.Engrave, 3, "CONTINUOUS"),
        (Layers.Reference, 8, "CONTINUOUS"),
        (Layers.Outline, 7, "CONTINUOUS"),
        (Layers.Hatch, 9, "CONTINUOUS"),
        (Layers.Dimension, 8, "CONTINUOUS"),
        (Layers.Label, 7, "CONTINUOUS"),
    ];

    /// <summary>Writes a drawing.</summary>
    /// <param name="drawing">The drawing.</param>
    /// <param name="withText">False for files to a shop, which carry no text.</param>
    public static string Write(Drawing drawing, bool withText)
    {
        var file = new Groups();
        var size = new Spot(drawing.Width / drawing.Scale, drawing.Height / drawing.Scale);
        Header(file, size);
        Tables(file);
        file.Add(0, "SECTION").Add(2, "ENTITIES");
        foreach (var mark in drawing.Marks)
        {
            Mark(file, mark, drawing, withText);
        }

        file.Add(0, "ENDSEC").Add(0, "EOF");
        return file.ToString();
    }

    private static void Header(Groups file, Spot size)
    {
        file.Add(999, "millimeters; the line on layer REF is 100 mm long");
        file.Add(0, "SECTION").Add(2, "HEADER").Add(9, "$ACADVER").Add(1, "AC1009");
        file.Add(9, "$INSUNITS").Add(70, "4");
        file.Add(9, "$EXTMIN").Add(10, 0).Add(20, 0).Add(30, 0);
        file.Add(9, "$EXTMAX").Add(10, size.X).Add(20, size.Y).Add(30, 0);
        file.Add(0, "ENDSEC");
    }

    private static void Tables(Groups file)
    {
        file.Add(0, "SECTION").Add(2, "TABLES").Add(0, "TABLE").Add(2, "LTYPE").Add(70, "1");
        file.Add(0, "LTYPE").Add(2, "CONTINUOUS").Add(70, "64").Add(3, "Solid line").Add(72, "65");
        file.Add(73, "0").Add(40, 0).Add(0, "ENDTAB");
        file.Add(0, "TABLE").Add(2, "LAYER").Add(70, Known.Length.ToString(CultureInfo.InvariantCulture));
        foreach (var (name, color, lineType) in Known)
        {
            file.Add(0, "LAYER").Add(2, name).Add(70, "64");
            file.Add(62, color.ToString(CultureInfo.InvariantCulture)).Add(6, lineType);
        }

        file.Add(0, "ENDTAB").Add(0, "TABLE").Add(2, "STYLE").Add(70, "1");
        file.Add(0, "STYLE").Add(2, "STANDARD").Add(70, "64").Add(40, 0).Add(41, 1).Add(50, 0);
        file.Add(71, "0").Add(42, 2.5).Add(3, "txt").Add(4, "").Add(0, "ENDTAB").Add(0, "ENDSEC");
    }

    private static void Mark(Groups file, Mark mark, Drawing drawing, bool withText)
    {
        switch (mark)
        {
            case PathMark { Pen: not null } path:
                foreach (var contour in path.Contours)
                {
                    Contour(file, contour, mark.Layer, drawing);
                }

                foreach (var ring in path.Rings)
                {
                    file.Add(0, "CIRCLE").Add(8, mark.Layer);
                    At(file, ring.Center, drawing);
                    file.Add(40, ring.Radius / drawing.Scale);
                }

                break;
            case TextMark text when withText:
                Text(file, text, drawing);
                break;
        }
    }

    private static void Contour(Groups file, Contour contour, string layer, Drawing drawing)
    {
        if (contour is { Closed: false, Spots.Length: 2 })
        {
            file.Add(0, "LINE").Add(8, layer);
            At(file, contour.Spots[0], drawing);
            var end = Real(contour.Spots[1], drawing);
            file.Add(11, end.X).Add(21, end.Y).Add(31, 0);
            return;
        }

        file.Add(0, "POLYLINE").Add(8, layer).Add(66, "1").Add(10, 0).Add(20, 0).Add(30, 0);
        file.Add(70, contour.Closed ? "1" : "0");
        foreach (var spot in contour.Spots)
        {
            file.Add(0, "VERTEX").Add(8, layer);
            At(file, spot, drawing);
        }

        file.Add(0, "SEQEND").Add(8, layer);
    }

    private static void Text(Groups file, TextMark mark, Drawing drawing)
    {
        file.Add(0, "TEXT").Add(8, mark.Layer);
        At(file, mark.At, drawing);
        file.Add(40, mark.Points * Lettering.Point * 0.72 / drawing.Scale).Add(1, Encoded(mark.Text));
        if (mark.Upright)
        {
            file.Add(50, 90);
        }

        if (mark.Align != Align.Start)
        {
            file.Add(72, mark.Align == Align.Middle ? "1" : "2");
            var end = Real(mark.At, drawing);
            file.Add(11, end.X).Add(21, end.Y).Add(31, 0);
        }
    }

    private static void At(Groups file, Spot spot, Drawing drawing)
    {
        var real = Real(spot, drawing);
        file.Add(10, real.X).Add(20, real.Y).Add(30, 0);
    }

    private static Spot Real(Spot spot, Drawing drawing) =>
        new(spot.X / drawing.Scale, (drawing.Height - spot.Y) / drawing.Scale);

    /// <summary>Signs beyond ASCII in the escape this format reads everywhere; no line breaks.</summary>
    private static string Encoded(string text)
    {
        var safe = new StringBuilder(text.Length);
        foreach (var c in text)
        {
            if (c is >= ' ' and <= '~')
            {
                safe.Append(c);
            }
            else if (char.IsControl(c))
            {
                safe.Append(' ');
            }
            else
            {
                safe.Append(CultureInfo.InvariantCulture, $"\\U+{(int)c:X4}");
            }
        }

        return safe.Replace("%%", "% %").ToString();
    }

    private sealed class Groups
    {
        private readonly StringBuilder text = new(8192);

        public Groups Add(int code, string value)
        {
            text.Append(CultureInfo.InvariantCulture, $"{code,3}")
                .Append("\r\n")
                .Append(value)
                .Append("\r\n");
            return this;
        }

        public Groups Add(int code, double value) =>
            Add(code, (Math.Round(value, 4) + 0.0).ToString("0.0###", CultureInfo.InvariantCulture));

        public override string ToString() => text.ToString();
    }
}
