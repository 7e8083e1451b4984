using Litterfall.Store;
using SkiaSharp;

namespace Litterfall.Web.Library;

/// <summary>
/// Pictures taken of tanks. Each is drawn anew before it is kept: smaller, upright, and without what a camera
/// writes beside it, such as the place.
/// </summary>
public sealed class Photos(BenchStore store, UploadAllowance allowance)
{
    /// <summary>Largest picture that is taken, bytes.</summary>
    public const int LargestFile = 24 * 1024 * 1024;

    /// <summary>Longest edge of a picture that is kept, pixels.</summary>
    public const int LongestEdge = 1600;

    // Own choice: more than any camera of a phone gives, and 320 MB while it is read.
    private const long MostPixels = 80_000_000;
    private const int Quality = 85;

    /// <summary>Takes a picture; its name, or one sentence on why not.</summary>
    /// <param name="size">Size as told, bytes.</param>
    /// <param name="open">Opens what came.</param>
    public async Task<(string? Name, string? Trouble)> TakeAsync(long size, Func<Stream> open)
    {
        if (size > LargestFile)
        {
            return (null, $"The picture is too large (limit {LargestFile / 1024 / 1024} MB).");
        }

        if (allowance.Refusal(size) is { } tooMuch)
        {
            return (null, tooMuch);
        }

        await using var stream = open();
        using var came = new MemoryStream();
        await stream.CopyToAsync(came);
        var kept = await Task.Run(() => Drawn(came.ToArray()));
        if (kept is null)
        {
            return (null, "This picture does not read; expected a JPEG, PNG or WebP.");
        }

        var name = PhotoName.New();
        await store.AddFileAsync(name, kept);
        return (name, null);
    }

    /// <summary>A picture by its name; null where there is none.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="cancel">Cancels the reading.</param>
    public Task<byte[]?> FindAsync(string name, CancellationToken cancel = default) =>
        PhotoName.Is(name) ? store.FileAsync(name, cancel) : Task.FromResult<byte[]?>(null);

    /// <summary>The picture as a JPEG of its own; null where it does not read.</summary>
    /// <param name="bytes">What came.</param>
    public static byte[]? Drawn(byte[] bytes)
    {
        using var data = SKData.CreateCopy(bytes);
        using var codec = SKCodec.Create(data);
        if (codec is null || codec.Info.Width < 1 || (long)codec.Info.Width * codec.Info.Height > MostPixels)
        {
            return null;
        }

        var scale = Math.Min(1f, (float)LongestEdge / Math.Max(codec.Info.Width, codec.Info.Height));
        // A JPEG is read in eighths of its size; the rest is drawn smaller.
        var near = codec.GetScaledDimensions(Math.Min(1f, scale + 0.125f));
        var info = new SKImageInfo(near.Width, near.Height, SKColorType.Rgba8888, SKAlphaType.Premul);
        using var read = new SKBitmap(info);
        if (
            codec.GetPixels(info, read.GetPixels())
            is not (SKCodecResult.Success or SKCodecResult.IncompleteInput)
        )
        {
            return null;
        }

        return Upright(read, codec.EncodedOrigin);
    }

    private static byte[] Upright(SKBitmap read, SKEncodedOrigin origin)
    {
        var isTurned = origin >= SKEncodedOrigin.LeftTop;
        var (width, height) = isTurned ? (read.Height, read.Width) : (read.Width, read.Height);
        var scale = Math.Min(1f, (float)LongestEdge / Math.Max(width, height));
        var (across, down) = (Math.Max(1, (int)(width * scale)), Math.Max(1, (int)(height * scale)));
        using var surface = SKSurface.Create(new SKImageInfo(across, down));
        var canvas = surface.Canvas;
        canvas.Clear(SKColors.White);
        canvas.Scale((float)across / width, (float)down / height);
        canvas.Concat(Turn(origin, read.Width, read.Height));
        using var image = SKImage.FromBitmap(read);
        canvas.DrawImage(image, 0, 0, new SKSamplingOptions(SKFilterMode.Linear, SKMipmapMode.Linear));
        using var made = surface.Snapshot();
        using var jpeg = made.Encode(SKEncodedImageFormat.Jpeg, Quality);
        return jpeg.ToArray();
    }

    /// <summary>
    /// From the picture as it is stored to the picture as it is held (Exif 2.32, Orientation, from memory).
    /// </summary>
    private static SKMatrix Turn(SKEncodedOrigin origin, float width, float height) =>
        origin switch
        {
            SKEncodedOrigin.TopRight => new(-1, 0, width, 0, 1, 0, 0, 0, 1),
            SKEncodedOrigin.BottomRight => new(-1, 0, width, 0, -1, height, 0, 0, 1),
            SKEncodedOrigin.BottomLeft => new(1, 0, 0, 0, -1, height, 0, 0, 1),
            SKEncodedOrigin.LeftTop => new(0, 1, 0, 1, 0, 0, 0, 0, 1),
            SKEncodedOrigin.RightTop => new(0, -1, height, 1, 0, 0, 0, 0, 1),
            SKEncodedOrigin.RightBottom => new(0, -1, height, -1, 0, width, 0, 0, 1),
            SKEncodedOrigin.LeftBottom => new(0, 1, 0, -1, 0, width, 0, 0, 1),
            _ => SKMatrix.Identity,
        };
}
