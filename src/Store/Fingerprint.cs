using System.Security.Cryptography;
using System.Text;

namespace Litterfall.Store;

/// <summary>Fingerprints of texts.</summary>
public static class Fingerprint
{
    /// <summary>SHA-256 of a text in UTF-8, in hexadecimal.</summary>
    public static string Of(string text) =>
        Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)));
}
