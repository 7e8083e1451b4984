using Litterfall.Documents.Drawings;
using SkiaSharp;

namespace Litterfall.Documents.Pdf;

/// <summary>A page as a picture, for screens: the marks and the type of its PDF.</summary>
public static class PageImage
{
    // Lines and letters on white: little is won by a stronger compression, and it takes four times as long.
    private static readonly SKPngEncoderOptions Encoding = new(SKPngEncoderFilterFlags.Sub, 2);

    /// <summary>Draws a page on white.</summary>
    /// <param name="page">The page.</param>
    /// <param name="pixels">How wide it becomes; it keeps its shape.</param>
    /// <returns>A PNG.</returns>
    public static byte[] Write(Drawing page, int pixels)
    {
        var scale = (float)(pixels / page.Width);
        var info = new SKImageInfo(pixels, (int)Math.Round(page.Height * scale));
        using var surface = SKSurface.Create(info);
        surface.Canvas.Clear(SKColors.White);
        surface.Canvas.Scale(scale);
        using (var brush = new SkiaBrush(surface.Canvas))
        {
            brush.Draw(page);
        }

        using var pixmap = surface.PeekPixels()!;
        using var data = pixmap.Encode(Encoding)!;
        return data.ToArray();
    }
}
