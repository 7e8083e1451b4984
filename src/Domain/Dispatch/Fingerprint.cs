using System.Security.Cryptography;
using System.Text;

namespace Litterfall.Domain.Dispatch;

/// <summary>Fingerprints (SHA-256) as small hexadecimal digits.</summary>
public static class Fingerprint
{
    private const int ShortDigits = 16;
    private const int Group = 4;

    /// <summary>Fingerprint of bytes.</summary>
    /// <param name="bytes">The bytes.</param>
    public static string From(ReadOnlySpan<byte> bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));

    /// <summary>Fingerprint of a text in UTF-8.</summary>
    /// <param name="text">The text.</param>
    public static string From(string text) => From(Encoding.UTF8.GetBytes(text));

    /// <summary>First digits, as people compare them by eye: "3f9a 02bc 71de 55aa".</summary>
    /// <param name="sha256">The whole fingerprint.</param>
    public static string Short(string sha256) =>
        string.Join(
            ' ',
            sha256[..Math.Min(ShortDigits, sha256.Length)].Chunk(Group).Select(c => new string(c))
        );
}
