using System.Collections.Frozen;
using System.Numerics;

namespace Litterfall.Documents.Perspective;

/// <summary>Colors as red, green and blue from 0 to 1, chosen to stay apart in grey.</summary>
internal static class Hue
{
    /// <summary>The ink of thin edges.</summary>
    public static readonly Vector3 Ink = Of(0x22302B);

    private static readonly Vector3 Green = Of(0x5E8C4A);

    private static readonly FrozenDictionary<string, Vector3> Named = new Dictionary<string, Vector3>(
        StringComparer.Ordinal
    )
    {
        ["green"] = Green,
        ["light green"] = Of(0x86AE58),
        ["dark green"] = Of(0x3E6B48),
        ["yellow green"] = Of(0x9CA84C),
        ["pale green"] = Of(0xA5C294),
        ["blue green"] = Of(0x4F8C84),
        ["gray green"] = Of(0x879C80),
        ["brown green"] = Of(0x7A7350),
        ["gray"] = Of(0xA3AEA2),
        ["purple"] = Of(0x7A5574),
        ["dark purple"] = Of(0x543C4C),
        ["red"] = Of(0xB14A45),
        ["dark red"] = Of(0x8A3B36),
        ["pink"] = Of(0xDD97A2),
        ["white"] = Of(0xF2EFE3),
        ["pale"] = Of(0xC4D3A8),
        ["silver"] = Of(0xC2D0C4),
        ["yellow"] = Of(0xE3C34E),
        ["orange"] = Of(0xD9803B),
        ["violet"] = Of(0x8A74B4),
        ["dark bands"] = Of(0x3F5A3A),
        ["black"] = Of(0x2C3034),
        ["brown"] = Of(0x8A6A48),
        ["dark brown"] = Of(0x5A432F),
        ["blue"] = Of(0x4178B4),
    }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>A color 0xRRGGBB.</summary>
    public static Vector3 Of(uint rgb) =>
        new(((rgb >> 16) & 255) / 255f, ((rgb >> 8) & 255) / 255f, (rgb & 255) / 255f);

    /// <summary>A color by its word; green for one that is not known.</summary>
    /// <param name="word">Such as "light green".</param>
    public static Vector3 Of(string word) => Named.GetValueOrDefault(word.Trim(), Green);

    /// <summary>0xAABBGGRR, as screens take it.</summary>
    public static uint Word(Vector3 color, float alpha = 1) =>
        Byte(color.X) | (Byte(color.Y) << 8) | (Byte(color.Z) << 16) | (Byte(alpha) << 24);

    /// <summary>A color a little lighter or darker.</summary>
    public static Vector3 Times(Vector3 color, float factor) =>
        Vector3.Clamp(color * factor, Vector3.Zero, Vector3.One);

    private static uint Byte(float share) => (uint)Math.Clamp((int)MathF.Round(share * 255), 0, 255);
}
