using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace Litterfall.FuzzTests;

/// <summary>
/// Damages texts: cuts, doubles, swaps and bends bytes and lines, and puts into the place of numbers what
/// numbers should never be. Seeded: the same seed makes the same texts everywhere.
/// </summary>
/// <param name="seed">The seed.</param>
internal sealed partial class Mutator(int seed)
{
    private const int MostEdits = 4;
    private const int MostBytes = 20_000;

    private static readonly string[] Numbers =
    [
        .. "0 -0 1 -1 NaN nan Infinity -Infinity inf 1e308 -1e308 1.8e308 1e999 5e-324 1e-308".Split(' '),
        .. "2.3e-308 1e15 1e-15 2147483648 -2147483649 9223372036854775808 0x10 1,5 1.5.5 1e".Split(' '),
        .. "1e+ + - . ½ ١ 1_000 1e-9 1e9 999999 0.000001 3.4028236e38 -5 100 360 1e6 1e-6".Split(' '),
    ];

    private static readonly string[] Words =
    [
        .. "\\ud800|\\u0000|\0|{\"key\":5}|null|[]|{}|\"\"|true|none|~|\uFEFF|\r|\r\n|\n\n|\t".Split('|'),
        .. "é|°|🐸|\u0085|'|\"|[[[[[[[[[[[[[[|{a: {a: {a: {a: |&a|*a|!!int |---|...|<<: ".Split('|'),
        .. "#|//|/* */|,|;|:|=1+1|%|\\".Split('|'),
        "\u2028",
        "\ud83d",
        new string('a', 700),
        new string(' ', 300),
        new string('9', 400),
    ];

    private readonly Random random = new(seed);

    /// <summary>A damaged copy of one of some texts.</summary>
    /// <param name="seeds">Texts to begin with.</param>
    public byte[] Next(IReadOnlyList<byte[]> seeds)
    {
        var text = seeds[random.Next(seeds.Count)];
        for (var edits = random.Next(1, MostEdits + 1); edits > 0; edits--)
        {
            text = Edited(text, seeds);
            text = text.Length > MostBytes ? text[..MostBytes] : text;
        }

        return text;
    }

    /// <summary>A copy of a design in which a few numbers are others, each by a factor near 1.</summary>
    /// <param name="text">The design.</param>
    public string Scaled(string text)
    {
        var places = Number().Matches(text).Where(m => m.Value.Length < 8).ToList();
        var chosen = places.OrderBy(_ => random.Next()).Take(random.Next(1, 4));
        foreach (var at in chosen.OrderByDescending(m => m.Index))
        {
            var value = double.Parse(at.Value, CultureInfo.InvariantCulture);
            var other = value * Math.Exp(random.NextDouble() - 0.5);
            var digits = at.Value.Contains('.', StringComparison.Ordinal) || value >= 3 ? 2 : 0;
            text = string.Concat(
                text.AsSpan(0, at.Index),
                Math.Round(other, digits).ToString(CultureInfo.InvariantCulture),
                text.AsSpan(at.Index + at.Length)
            );
        }

        return text;
    }

    private byte[] Edited(byte[] text, IReadOnlyList<byte[]> seeds)
    {
        if (text.Length < 2)
        {
            return Encoding.UTF8.GetBytes(Words[random.Next(Words.Length)] + "x");
        }

        var at = random.Next(text.Length);
        var length = Math.Min(1 + random.Next(random.Next(2) == 0 ? 4 : 60), text.Length - at);
        return random.Next(12) switch
        {
            0 => [.. text[..at], .. text[(at + length)..]],
            1 => [.. text[..at], (byte)random.Next(256), .. text[at..]],
            2 => [.. text[..at], (byte)(text[at] ^ (1 << random.Next(8))), .. text[(at + 1)..]],
            3 => [.. text[..(at + length)], .. text[at..]],
            4 => text[..(at + 1)],
            5 => Lines(text),
            6 => Spliced(text, seeds[random.Next(seeds.Count)]),
            7 => [.. text[..at], .. Encoding.UTF8.GetBytes(Words[random.Next(Words.Length)]), .. text[at..]],
            _ => Renumbered(text),
        };
    }

    /// <summary>A number in another's place; the text comes back as it was where it has none.</summary>
    private byte[] Renumbered(byte[] text)
    {
        var signs = Encoding.Latin1.GetString(text);
        var places = Number().Matches(signs);
        if (places.Count == 0)
        {
            return text;
        }

        var at = places[random.Next(places.Count)];
        var number = Numbers[random.Next(Numbers.Length)];
        return [.. text[..at.Index], .. Encoding.UTF8.GetBytes(number), .. text[(at.Index + at.Length)..]];
    }

    /// <summary>One line gone, doubled, or in another's place.</summary>
    private byte[] Lines(byte[] text)
    {
        var lines = Encoding.Latin1.GetString(text).Split('\n').ToList();
        var (one, other) = (random.Next(lines.Count), random.Next(lines.Count));
        switch (random.Next(3))
        {
            case 0:
                lines.RemoveAt(one);
                break;
            case 1:
                lines.Insert(other, lines[one]);
                break;
            default:
                (lines[one], lines[other]) = (lines[other], lines[one]);
                break;
        }

        return Encoding.Latin1.GetBytes(string.Join('\n', lines));
    }

    private byte[] Spliced(byte[] one, byte[] other) =>
        other.Length == 0 ? one : [.. one[..random.Next(one.Length)], .. other[random.Next(other.Length)..]];

    [GeneratedRegex("[0-9]+([.][0-9]+)?", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Number();
}
