using System.Collections.Immutable;
using Litterfall.Documents.Drawings;
using SkiaSharp;

namespace Litterfall.Documents.Shop;

/// <summary>Pictures of any shape in a room on paper.</summary>
internal static class PictureFit
{
    /// <summary>
    /// The picture as large as the room allows, from its upper left; null where it is none.
    /// </summary>
    /// <param name="file">PNG or JPEG.</param>
    /// <param name="at">Upper left corner of the room.</param>
    /// <param name="width">Width of the room, mm.</param>
    /// <param name="height">Height of the room, mm.</param>
    public static PictureMark? Into(ImmutableArray<byte> file, Spot at, double width, double height)
    {
        if (file.IsDefaultOrEmpty)
        {
            return null;
        }

        using var data = SKData.CreateCopy(file.AsSpan());
        using var codec = SKCodec.Create(data);
        if (codec is null || codec.Info.Width < 1 || codec.Info.Height < 1)
        {
            return null;
        }

        var scale = Math.Min(width / codec.Info.Width, height / codec.Info.Height);
        return new(at, codec.Info.Width * scale, codec.Info.Height * scale, file);
    }
}
