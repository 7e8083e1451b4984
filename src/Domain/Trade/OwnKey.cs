using System.Globalization;
using System.Text;

namespace Litterfall.Domain.Trade;

/// <summary>Keys of the workshop's own records, made from names.</summary>
public static class OwnKey
{
    private const int Longest = 80;

    /// <summary>Small letters, digits and hyphens; accents are left off.</summary>
    /// <param name="name">The name; at least one letter or digit.</param>
    public static string From(string name)
    {
        var key = new StringBuilder();
        foreach (var letter in name.Normalize(NormalizationForm.FormD).ToLowerInvariant())
        {
            if (char.IsAsciiLetterLower(letter) || char.IsAsciiDigit(letter))
            {
                key.Append(letter);
            }
            else if (
                key.Length > 0
                && key[^1] != '-'
                && CharUnicodeInfo.GetUnicodeCategory(letter) != UnicodeCategory.NonSpacingMark
            )
            {
                key.Append('-');
            }
        }

        var said = key.ToString().Trim('-');
        return said.Length == 0 ? "own" : said[..Math.Min(Longest, said.Length)].TrimEnd('-');
    }
}
