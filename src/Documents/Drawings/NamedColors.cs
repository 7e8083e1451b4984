using System.Collections.Frozen;

namespace Litterfall.Documents.Drawings;

/// <summary>Quiet colors of leaves and animals by their words, chosen to stay apart in grey print.</summary>
internal static class NamedColors
{
    private const uint Green = 0x70A05A;

    private static readonly FrozenDictionary<string, uint> Known = new Dictionary<string, uint>(
        StringComparer.Ordinal
    )
    {
        ["green"] = Green,
        ["light green"] = 0x9CC26C,
        ["dark green"] = 0x4C7E58,
        ["yellow green"] = 0xAAB65A,
        ["pale green"] = 0xA5C294,
        ["blue green"] = 0x5C9C92,
        ["gray green"] = 0x93A98B,
        ["brown green"] = 0x7A7350,
        ["gray"] = 0xA3AEA2,
        ["purple"] = 0x7A5574,
        ["dark purple"] = 0x543C4C,
        ["red"] = 0xB14A45,
        ["dark red"] = 0x8A3B36,
        ["pink"] = 0xDD97A2,
        ["white"] = 0xF2EFE3,
        ["pale"] = 0xC4D3A8,
        ["silver"] = 0xC2D0C4,
        ["yellow"] = 0xE3C34E,
        ["orange"] = 0xD9803B,
        ["violet"] = 0x8A74B4,
        ["dark bands"] = 0x3F5A3A,
        ["black"] = 0x2C3034,
        ["brown"] = 0x8A6A48,
        ["dark brown"] = 0x5A432F,
        ["blue"] = 0x4178B4,
    }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>The same, paler, for a filling under ink.</summary>
    /// <param name="word">Such as "light green".</param>
    public static uint Pale(string word)
    {
        var color = Of(word);
        uint Part(int shift) => ((((color >> shift) & 255) * 70) + (250 * 30)) / 100 << shift;
        return Part(16) | Part(8) | Part(0);
    }

    /// <summary>A color by its word, 0xRRGGBB; green for one that is not known.</summary>
    /// <param name="word">Such as "light green".</param>
    public static uint Of(string word) => Known.GetValueOrDefault(word.Trim(), Green);
}
