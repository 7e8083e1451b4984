using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Litterfall.Domain.DesignFile;
using Litterfall.Forecasting;

namespace Litterfall.Instructions.Care;

/// <summary>
/// Short number of a tank for labels and records: "LF", ten characters of 0-9 and A-Z, and a check character
/// by ISO 7064, MOD 37,36, which catches every single wrong character and all but about 2 in
/// 1000 swaps of neighbors (the standard itself claims nearly all).
/// </summary>
public static class TankNumber
{
    private const string Alphabet = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";
    private const int Size = 36;
    private const int Digits = 10;
    private const string Prefix = "LF";

    /// <summary>Number of one box of a design.</summary>
    /// <param name="designHash">Fingerprint of the design's text, hexadecimal, at least 12 digits.</param>
    /// <param name="box">1 for the first of equal boxes, 2 for the second and so on.</param>
    public static string Of(string designHash, int box = 1)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(box, 1);
        var digits = box == 1 ? designHash : Fingerprint(designHash, box);
        var rest = ulong.Parse(digits.AsSpan(0, 12), NumberStyles.HexNumber, CultureInfo.InvariantCulture);
        Span<char> text = stackalloc char[Digits];
        for (var i = Digits - 1; i >= 0; i--)
        {
            text[i] = Alphabet[(int)(rest % Size)];
            rest /= Size;
        }

        var body = string.Concat(Prefix, text);
        return body + Check(body);
    }

    /// <summary>
    /// Number of a box of a design: the number the design carries, else one made from its name and the edges
    /// of its box, so that it stays the same while layers, plants and dates are still being changed and a
    /// calendar written again replaces the old one.
    /// </summary>
    /// <param name="numbers">The design.</param>
    /// <param name="box">1 for the first of equal boxes.</param>
    public static string Of(DesignNumbers numbers, int box = 1)
    {
        var design = numbers.Design.Design;
        if (design.Tank is { } issued)
        {
            return box == 1 ? issued : Of(DesignHash.Of(issued), box);
        }

        var edges = (design.Box.Outside ?? design.Box.Inside)!;
        var typed = new[] { edges.Length, edges.Depth, edges.Height }.SelectMany(e => e.Select(t => t.Text));
        return Of(DesignHash.Of($"{design.Name}\n{string.Join('\n', typed)}"), box);
    }

    /// <summary>Check character of a text of 0-9 and A-Z (ISO 7064, hybrid system MOD 37,36).</summary>
    /// <exception cref="FormatException">The text has another character.</exception>
    public static char Check(string text) => Alphabet[(Size + 1 - Remainder(text)) % Size];

    /// <summary>True when the last character is the check character of those before it.</summary>
    public static bool IsValid(string text) =>
        text.Length > 1
        && text.All(c => Alphabet.Contains(c, StringComparison.Ordinal))
        && Check(text[..^1]) == text[^1];

    private static int Remainder(string text)
    {
        var product = Size;
        foreach (var letter in text)
        {
            var value = Alphabet.IndexOf(letter, StringComparison.Ordinal);
            if (value < 0)
            {
                throw new FormatException("Only 0-9 and A-Z carry a check character.");
            }

            var sum = (product + value) % Size;
            product = (sum == 0 ? Size : sum) * 2 % (Size + 1);
        }

        return product;
    }

    private static string Fingerprint(string designHash, int box) =>
        Convert.ToHexStringLower(
            SHA256.HashData(
                Encoding.UTF8.GetBytes(string.Create(CultureInfo.InvariantCulture, $"{designHash}/{box}"))
            )
        );
}
