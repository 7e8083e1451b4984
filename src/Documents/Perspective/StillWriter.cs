using System.Numerics;
using System.Runtime.InteropServices;
using SkiaSharp;

namespace Litterfall.Documents.Perspective;

/// <summary>
/// A picture of a scene as PNG, for papers, lists, quotes and browsers without a graphics card.
/// </summary>
public static class StillWriter
{
    /// <summary>Smallest edge of a picture, px.</summary>
    public const int Least = 64;

    /// <summary>Largest edge of a picture, px.</summary>
    public const int Most = 2400;

    /// <summary>Usual height over width.</summary>
    public const double UsualShape = 0.8;

    private const int BandRows = 96;
    private const float LineLift = 1.0012f;

    /// <summary>A scene as a picture.</summary>
    /// <param name="scene">The scene.</param>
    /// <param name="width">Width, px.</param>
    /// <param name="height">Height, px.</param>
    /// <param name="camera">
    /// From where; the whole box a little from the right and above where left out.
    /// </param>
    /// <param name="cancel">Ends it.</param>
    /// <exception cref="ArgumentOutOfRangeException">The size is beyond its bounds.</exception>
    public static byte[] Png(
        BoxScene scene,
        int width,
        int height,
        Camera? camera = null,
        CancellationToken cancel = default
    )
    {
        using var bitmap = Draw(scene, width, height, camera, cancel);
        using var data = bitmap.Encode(SKEncodedImageFormat.Png, 100);
        return data.ToArray();
    }

    internal static SKBitmap Draw(
        BoxScene scene,
        int width,
        int height,
        Camera? camera,
        CancellationToken cancel = default
    )
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(width, Least);
        ArgumentOutOfRangeException.ThrowIfLessThan(height, Least);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(width, Most);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(height, Most);
        var fine = width <= 640 ? 3 : 2;
        var seen = Sight.Of(
            scene,
            camera ?? Camera.Fit(scene, (float)width / height),
            (width * fine, height * fine)
        );
        var line = Math.Clamp(width / 900f, 0.42f, 2.2f) * fine;
        var bitmap = new SKBitmap(new SKImageInfo(width, height, SKColorType.Rgba8888, SKAlphaType.Opaque));
        try
        {
            var rows = new uint[height][];
            Parallel.For(
                0,
                (height + BandRows - 1) / BandRows,
                new ParallelOptions { CancellationToken = cancel },
                band =>
                {
                    var first = band * BandRows;
                    var count = Math.Min(BandRows, height - first);
                    var raster = new Raster(width * fine, first * fine, count * fine, y =>
                        Paper(scene.IsLit, y / (float)(height * fine))
                    );
                    seen.Draw(raster, line, LineLift);
                    for (var y = 0; y < count; y++)
                    {
                        rows[first + y] = Row(raster, y * fine, fine, width);
                    }
                }
            );
            var pixels = MemoryMarshal.Cast<byte, uint>(bitmap.GetPixelSpan());
            for (var y = 0; y < height; y++)
            {
                rows[y].CopyTo(pixels.Slice(y * width, width));
            }

            return bitmap;
        }
        catch
        {
            bitmap.Dispose();
            throw;
        }
    }

    /// <summary>Paper, a little darker toward the foot.</summary>
    private static uint Paper(bool isLit, float share)
    {
        var (top, foot) = isLit ? (Hue.Of(0xFAF7F0), Hue.Of(0xECE5D6)) : (Hue.Of(0x242C33), Hue.Of(0x181E23));
        return Hue.Word(Vector3.Lerp(top, foot, share));
    }

    /// <summary>The mean of fine by fine points for each point of a row.</summary>
    private static uint[] Row(Raster raster, int from, int fine, int width)
    {
        var row = new uint[width];
        var all = fine * fine;
        for (var x = 0; x < width; x++)
        {
            uint r = 0;
            uint g = 0;
            uint b = 0;
            for (var j = 0; j < fine; j++)
            {
                var at = ((from + j) * raster.Width) + (x * fine);
                for (var i = 0; i < fine; i++)
                {
                    var c = raster.Colors[at + i];
                    r += c & 255;
                    g += (c >> 8) & 255;
                    b += (c >> 16) & 255;
                }
            }

            var half = (uint)all / 2;
            row[x] =
                ((r + half) / (uint)all)
                | (((g + half) / (uint)all) << 8)
                | (((b + half) / (uint)all) << 16)
                | 0xFF000000;
        }

        return row;
    }
}
