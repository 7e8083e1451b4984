using System.Globalization;
using System.Text;
using SkiaSharp;

namespace Litterfall.Documents.Drawings;

/// <summary>
/// The embedded type: widths of words, and what to do with signs it does not have. Text is set sign by sign
/// without a shaper, so a width is the sum of the advances, on paper as on screen.
/// </summary>
public static class Lettering
{
    /// <summary>Millimeters in a typographic point.</summary>
    public const double Point = 25.4 / 72;

    /// <summary>Stands for a sign the type does not have.</summary>
    public const char Unknown = '□';

    private static readonly Lazy<Face> Regular = new(() => new Face("fonts/Inter-Regular.ttf"));
    private static readonly Lazy<Face> SemiBold = new(() => new Face("fonts/Inter-SemiBold.ttf"));

    /// <summary>The typeface of a weight.</summary>
    internal static SKTypeface Typeface(bool bold) => (bold ? SemiBold : Regular).Value.Typeface;

    /// <summary>Width of a text in millimeters.</summary>
    public static double Width(string text, double points, bool bold = false) =>
        (bold ? SemiBold : Regular).Value.Advance(text) * points * Point;

    /// <summary>
    /// The text on one line with only signs the type has: control signs and line breaks become blanks, each
    /// other sign (an emoji with its modifiers counts as one) becomes <see cref="Unknown"/>.
    /// </summary>
    public static string Clean(string text)
    {
        if (IsPlain(text))
        {
            return text;
        }

        var clean = new StringBuilder(text.Length);
        var elements = StringInfo.GetTextElementEnumerator(text.Normalize(NormalizationForm.FormC));
        while (elements.MoveNext())
        {
            var element = elements.GetTextElement();
            if (element.All(c => char.IsControl(c) || char.IsWhiteSpace(c)))
            {
                clean.Append(' ');
            }
            else if (element.All(Regular.Value.Has))
            {
                clean.Append(element);
            }
            else
            {
                clean.Append(Regular.Value.Has(element[0]) ? element[0] : Unknown);
            }
        }

        return clean.ToString();
    }

    /// <summary>The text, cut with an ellipsis where it is wider than the room.</summary>
    public static string Cut(string text, double width, double points, bool bold = false)
    {
        var clean = Clean(text);
        if (Width(clean, points, bold) <= width)
        {
            return clean;
        }

        var kept = clean.Length;
        while (kept > 0 && Width(string.Concat(clean.AsSpan(0, kept), "…"), points, bold) > width)
        {
            kept--;
        }

        return string.Concat(clean.AsSpan(0, kept).TrimEnd(), "…");
    }

    /// <summary>Lines no wider than the room; a word longer than a line is broken.</summary>
    public static List<string> Wrap(string text, double width, double points, bool bold = false)
    {
        var lines = new List<string>();
        var line = "";
        foreach (var word in Clean(text).Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var longer = line.Length == 0 ? word : $"{line} {word}";
            if (Width(longer, points, bold) <= width)
            {
                line = longer;
                continue;
            }

            if (line.Length > 0)
            {
                lines.Add(line);
            }

            line = word;
            while (Width(line, points, bold) > width && line.Length > 1)
            {
                var kept = line.Length - 1;
                while (kept > 1 && Width(line[..kept], points, bold) > width)
                {
                    kept--;
                }

                lines.Add(line[..kept]);
                line = line[kept..];
            }
        }

        lines.Add(line);
        return lines;
    }

    private static bool IsPlain(string text)
    {
        foreach (var c in text)
        {
            if (c is < ' ' or > '~')
            {
                return false;
            }
        }

        return true;
    }

    private sealed class Face
    {
        /// <summary>All signs of the type lie below this one.</summary>
        private const int End = 0x2800;
        private const int Units = 1000;
        private readonly double[] advances = new double[End];
        private readonly bool[] has = new bool[End];

        public Face(string resource)
        {
            using var stream = typeof(Lettering).Assembly.GetManifestResourceStream(resource)!;
            using var data = SKData.Create(stream);
            Typeface = SKTypeface.FromData(data);
            using var font = new SKFont(Typeface, Units)
            {
                Subpixel = true,
                LinearMetrics = true,
                Hinting = SKFontHinting.None,
            };
            var glyphs = font.GetGlyphs(Enumerable.Range(0, End).ToArray());
            var widths = font.GetGlyphWidths(glyphs);
            for (var i = 0; i < End; i++)
            {
                (advances[i], has[i]) = (widths[i] / Units, glyphs[i] != 0);
            }
        }

        public SKTypeface Typeface { get; }

        public bool Has(char sign) => sign < End && has[sign];

        public double Advance(string text)
        {
            var sum = 0.0;
            foreach (var sign in text)
            {
                sum += advances[sign < End ? sign : 0];
            }

            return sum;
        }
    }
}
