using Litterfall.Documents.Drawings;
using SkiaSharp;

namespace Litterfall.Documents.Pdf;

/// <summary>Draws marks on a canvas whose unit is one millimeter.</summary>
internal sealed class SkiaBrush(SKCanvas canvas) : IDisposable
{
    private readonly SKPaint paint = new() { IsAntialias = true };
    private readonly Dictionary<(bool Bold, double Points), SKFont> fonts = [];

    public void Draw(Drawing drawing)
    {
        foreach (var mark in drawing.Marks)
        {
            switch (mark)
            {
                case PathMark path:
                    Path(path);
                    break;
                case TextMark text:
                    Text(text);
                    break;
                case PictureMark picture:
                    Picture(picture);
                    break;
            }
        }
    }

    public void Dispose()
    {
        paint.Dispose();
        foreach (var font in fonts.Values)
        {
            font.Dispose();
        }
    }

    private void Path(PathMark mark)
    {
        using var builder = new SKPathBuilder();
        foreach (var contour in mark.Contours)
        {
            builder.MoveTo(Point(contour.Spots[0]));
            for (var i = 1; i < contour.Spots.Length; i++)
            {
                builder.LineTo(Point(contour.Spots[i]));
            }

            if (contour.Closed)
            {
                builder.Close();
            }
        }

        foreach (var ring in mark.Rings)
        {
            builder.AddCircle((float)ring.Center.X, (float)ring.Center.Y, (float)ring.Radius);
        }

        using var path = builder.Detach();
        if ((mark.Shade ?? Ink(mark.Fill)) is { } fill)
        {
            paint.Style = SKPaintStyle.Fill;
            paint.Color = Color(fill, mark.Strength);
            canvas.DrawPath(path, paint);
        }

        if (mark.Pen is { } pen)
        {
            Stroke(pen);
            canvas.DrawPath(path, paint);
            paint.PathEffect?.Dispose();
            paint.PathEffect = null;
        }
    }

    private void Stroke(Pen pen)
    {
        paint.Style = SKPaintStyle.Stroke;
        paint.StrokeWidth = (float)pen.Width;
        paint.StrokeJoin = SKStrokeJoin.Miter;
        paint.StrokeCap = SKStrokeCap.Butt;
        paint.Color = Color(pen.Tone, 1);
        paint.PathEffect =
            pen.Dash > 0 ? SKPathEffect.CreateDash([(float)pen.Dash, (float)pen.Dash * 0.8f], 0) : null;
    }

    private void Text(TextMark mark)
    {
        if (mark.Text.Length == 0)
        {
            return;
        }

        paint.Style = SKPaintStyle.Fill;
        paint.Color = Color(mark.Tone, 1);
        var width = mark.Align == Align.Start ? 0 : Lettering.Width(mark.Text, mark.Points, mark.Bold);
        var shift = (float)(mark.Align == Align.Middle ? -width / 2 : -width);
        canvas.Save();
        canvas.Translate((float)mark.At.X, (float)mark.At.Y);
        if (mark.Upright)
        {
            canvas.RotateDegrees(-90);
        }

        canvas.DrawText(mark.Text, shift, 0, SKTextAlign.Left, Font(mark.Bold, mark.Points), paint);
        canvas.Restore();
    }

    /// <summary>What is no picture leaves its place empty.</summary>
    private void Picture(PictureMark mark)
    {
        using var image = SKImage.FromEncodedData(mark.File.AsSpan());
        if (image is not null)
        {
            var (x, y) = ((float)mark.At.X, (float)mark.At.Y);
            canvas.DrawImage(
                image,
                new SKRect(x, y, x + (float)mark.Width, y + (float)mark.Height),
                new SKSamplingOptions(SKFilterMode.Linear, SKMipmapMode.Linear)
            );
        }
    }

    private SKFont Font(bool bold, double points)
    {
        if (!fonts.TryGetValue((bold, points), out var font))
        {
            font = new SKFont(Lettering.Typeface(bold), (float)(points * Lettering.Point))
            {
                Subpixel = true,
                LinearMetrics = true,
                Hinting = SKFontHinting.None,
            };
            fonts[(bold, points)] = font;
        }

        return font;
    }

    private static SKPoint Point(Spot spot) => new((float)spot.X, (float)spot.Y);

    private static uint? Ink(Tone? tone) => tone is { } known ? Inks.Of(known) : null;

    private static SKColor Color(Tone tone, double strength) => Color(Inks.Of(tone), strength);

    private static SKColor Color(uint ink, double strength) =>
        new(ink | ((uint)Math.Round(255 * strength) << 24));
}
