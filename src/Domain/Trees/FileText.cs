using System.Text;

namespace Litterfall.Domain.Trees;

/// <summary>Text of a file that somebody brings, whatever program saved it.</summary>
public static class FileText
{
    private const int Looked = 200;
    private const int ManyZeros = 20;

    /// <summary>
    /// UTF-8, UTF-16 by its mark or by its zeros, else the old western code page: only signs such as °
    /// differ.
    /// </summary>
    /// <param name="bytes">The file.</param>
    public static string Decode(byte[] bytes)
    {
        var zeros = bytes.AsSpan(0, Math.Min(bytes.Length, Looked)).Count((byte)0);
        if (bytes is [0xFE, 0xFF, ..] || (zeros > ManyZeros && bytes[0] == 0))
        {
            return Encoding.BigEndianUnicode.GetString(bytes);
        }

        if (bytes is [0xFF, 0xFE, ..] || zeros > ManyZeros)
        {
            return Encoding.Unicode.GetString(bytes);
        }

        try
        {
            return new UTF8Encoding(false, true).GetString(bytes);
        }
        catch (DecoderFallbackException)
        {
            return Encoding.Latin1.GetString(bytes);
        }
    }
}
