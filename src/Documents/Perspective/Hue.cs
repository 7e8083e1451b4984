using System.Numerics;
using Litterfall.Documents.Drawings;

namespace Litterfall.Documents.Perspective;

/// <summary>Colors as red, green and blue from 0 to 1, chosen to stay apart in grey.</summary>
internal static class Hue
{
    /// <summary>The ink of thin edges.</summary>
    public static readonly Vector3 Ink = Of(0x22302B);

    /// <summary>A color 0xRRGGBB.</summary>
    public static Vector3 Of(uint rgb) =>
        new(((rgb >> 16) & 255) / 255f, ((rgb >> 8) & 255) / 255f, (rgb & 255) / 255f);

    /// <summary>A color by its word; green for one that is not known.</summary>
    /// <param name="word">Such as "light green".</param>
    public static Vector3 Of(string word) => Of(NamedColors.Of(word));

    /// <summary>0xAABBGGRR, as screens take it.</summary>
    public static uint Word(Vector3 color, float alpha = 1) =>
        Byte(color.X) | (Byte(color.Y) << 8) | (Byte(color.Z) << 16) | (Byte(alpha) << 24);

    /// <summary>A color a little lighter or darker.</summary>
    public static Vector3 Times(Vector3 color, float factor) =>
        Vector3.Clamp(color * factor, Vector3.Zero, Vector3.One);

    private static uint Byte(float share) => (uint)Math.Clamp((int)MathF.Round(share * 255), 0, 255);
}
