using System.Globalization;
using System.Text;
using Litterfall.Documents.Drawings;

namespace Litterfall.Documents.Svg;

/// <summary>
/// A drawing as SVG in millimeters. Coordinates are final (no transforms on lines), text lies in a group of
/// its
/// own, and each mark carries the key of the design it shows.
/// </summary>
public static class SvgWriter
{
    /// <summary>Writes a drawing at its size on paper.</summary>
    public static string Write(Drawing drawing, string title)
    {
        var svg = new StringBuilder(4096);
        svg.Append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n")
            .Append("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"")
            .Append(Number(drawing.Width))
            .Append("mm\" height=\"")
            .Append(Number(drawing.Height))
            .Append("mm\" viewBox=\"0 0 ")
            .Append(Number(drawing.Width))
            .Append(' ')
            .Append(Number(drawing.Height))
            .Append("\">\n<title>")
            .Append(Escaped(title))
            .Append("</title>\n<g fill=\"none\">\n");
        foreach (var mark in drawing.Marks)
        {
            if (mark is PathMark path)
            {
                Path(svg, path);
            }
        }

        svg.Append("</g>\n<g font-family=\"Inter, sans-serif\">\n");
        foreach (var mark in drawing.Marks)
        {
            if (mark is TextMark text)
            {
                Text(svg, text);
            }
        }

        return svg.Append("</g>\n</svg>\n").ToString();
    }

    private static void Path(StringBuilder svg, PathMark mark)
    {
        svg.Append("<path d=\"");
        foreach (var contour in mark.Contours)
        {
            for (var i = 0; i < contour.Spots.Length; i++)
            {
                svg.Append(i == 0 ? 'M' : 'L');
                Point(svg, contour.Spots[i]);
            }

            if (contour.Closed)
            {
                svg.Append('Z');
            }
        }

        foreach (var ring in mark.Rings)
        {
            Ring(svg, ring);
        }

        svg.Append('"');
        Marked(svg, mark);
        if ((mark.Shade ?? Ink(mark.Fill)) is { } fill)
        {
            svg.Append(" fill=\"").Append(Color(fill)).Append('"');
            if (mark.Strength < 1)
            {
                svg.Append(" fill-opacity=\"").Append(Number(mark.Strength)).Append('"');
            }
        }

        if (mark.Pen is { } pen)
        {
            svg.Append(" stroke=\"").Append(Color(pen.Tone)).Append("\" stroke-width=\"");
            svg.Append(Number(pen.Width)).Append('"');
            if (pen.Dash > 0)
            {
                svg.Append(" stroke-dasharray=\"").Append(Number(pen.Dash)).Append(' ');
                svg.Append(Number(pen.Dash * 0.8)).Append('"');
            }
        }

        svg.Append("/>\n");
    }

    private static void Ring(StringBuilder svg, Ring ring)
    {
        var radius = Number(ring.Radius);
        svg.Append('M');
        Point(svg, ring.Center.Moved(-ring.Radius, 0));
        foreach (var side in new[] { ring.Radius, -ring.Radius })
        {
            svg.Append('A').Append(radius).Append(' ').Append(radius).Append(" 0 1 0 ");
            Point(svg, ring.Center.Moved(side, 0));
        }

        svg.Append('Z');
    }

    private static void Text(StringBuilder svg, TextMark mark)
    {
        var (x, y) = (Number(mark.At.X), Number(mark.At.Y));
        svg.Append("<text x=\"").Append(x).Append("\" y=\"").Append(y).Append('"');
        Marked(svg, mark);
        svg.Append(" font-size=\"").Append(Number(mark.Points * Lettering.Point)).Append("\" fill=\"");
        svg.Append(Color(mark.Tone)).Append('"');
        if (mark.Bold)
        {
            svg.Append(" font-weight=\"600\"");
        }

        if (mark.Align != Align.Start)
        {
            svg.Append(" text-anchor=\"").Append(mark.Align == Align.Middle ? "middle" : "end").Append('"');
        }

        if (mark.Upright)
        {
            svg.Append(" transform=\"rotate(-90 ").Append(x).Append(' ').Append(y).Append(")\"");
        }

        svg.Append('>').Append(Escaped(mark.Text)).Append("</text>\n");
    }

    private static void Marked(StringBuilder svg, Mark mark)
    {
        if (mark.Key.Length > 0)
        {
            svg.Append(" data-key=\"").Append(Escaped(mark.Key)).Append('"');
        }

        svg.Append(" data-layer=\"").Append(mark.Layer).Append('"');
    }

    private static void Point(StringBuilder svg, Spot spot) =>
        svg.Append(Number(spot.X)).Append(' ').Append(Number(spot.Y));

    private static uint? Ink(Tone? tone) => tone is { } known ? Inks.Of(known) : null;

    private static string Color(Tone tone) => Color(Inks.Of(tone));

    private static string Color(uint ink) => string.Create(CultureInfo.InvariantCulture, $"#{ink:x6}");

    private static string Number(double value) =>
        (Math.Round(value, 3) + 0.0).ToString("0.###", CultureInfo.InvariantCulture);

    /// <summary>Text as XML: markup is escaped, signs that XML forbids are replaced.</summary>
    public static string Escaped(string text)
    {
        var safe = new StringBuilder(text.Length);
        for (var i = 0; i < text.Length; i++)
        {
            var c = text[i];
            if (char.IsHighSurrogate(c) && i + 1 < text.Length && char.IsLowSurrogate(text[i + 1]))
            {
                safe.Append(c).Append(text[++i]);
                continue;
            }

            safe.Append(
                c switch
                {
                    '&' => "&amp;",
                    '<' => "&lt;",
                    '>' => "&gt;",
                    '"' => "&quot;",
                    '\'' => "&#39;",
                    < ' ' or '\uFFFE' or '\uFFFF' => " ",
                    _ when char.IsSurrogate(c) => "\uFFFD",
                    _ => c.ToString(),
                }
            );
        }

        return safe.ToString();
    }
}
