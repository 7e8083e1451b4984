using System.Security.Cryptography;
using System.Text;

namespace Litterfall.Domain.DesignFile;

/// <summary>Short fingerprint of a design's text: the first 12 hexadecimal digits of its SHA-256.</summary>
public static class DesignHash
{
    /// <summary>The fingerprint; equal text gives equal fingerprints on every machine.</summary>
    public static string Of(string text) =>
        Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)))[..12];
}
