using System.Globalization;
using Litterfall.Domain.Trade;
using Litterfall.Instructions.Care;

namespace Litterfall.Workshop.Stock;

/// <summary>
/// Numbers of lots: letters of the good and a running number, with a check character (ISO 7064, MOD 37,36)
/// behind it on labels, so that a mistyped number is noticed.
/// </summary>
public static class LotNumber
{
    private const int Letters = 4;

    /// <summary>The number with its check character, as labels and codes carry it: "PEAT-31-X".</summary>
    /// <param name="lot">Number of the lot.</param>
    public static string Checked(string lot) => $"{lot}-{Check(lot)}";

    /// <summary>Check character over the letters and digits of a number.</summary>
    /// <param name="lot">Number of the lot.</param>
    public static char Check(string lot) =>
        TankNumber.Check(string.Concat(lot.ToUpperInvariant().Where(char.IsAsciiLetterOrDigit)));

    /// <summary>
    /// The lot that was typed or scanned, or one sentence: letters may be small, the check character may be
    /// left off, blanks do not count.
    /// </summary>
    /// <param name="typed">As typed.</param>
    /// <param name="isThere">True for numbers of lots.</param>
    public static (string? Lot, string? Fault) Read(string typed, Func<string, bool> isThere)
    {
        var plain = string.Concat(typed.ToUpperInvariant().Where(c => !char.IsWhiteSpace(c)));
        if (plain.Length == 0)
        {
            return (null, "Type the number on the label, such as PEAT-31.");
        }

        if (isThere(plain))
        {
            return (plain, null);
        }

        if (plain.Length < 3 || plain[^2] != '-')
        {
            return (null, $"There is no lot {plain}. Look at the label again.");
        }

        var lot = plain[..^2];
        if (Check(lot) != plain[^1])
        {
            return (null, $"{plain} is mistyped: its last character does not fit. Look at the label again.");
        }

        return isThere(lot) ? (lot, null) : (null, $"There is no lot {lot} here. Look at the label again.");
    }

    /// <summary>The next free number of a good.</summary>
    /// <param name="good">The good.</param>
    /// <param name="lots">Numbers that are taken.</param>
    public static string Next(Good good, IEnumerable<string> lots)
    {
        var letters = LettersOf(good);
        return $"{letters}-{Number(1 + Last(letters, lots))}";
    }

    /// <summary>Letters before the numbers of a good: its own, or the first of its name.</summary>
    /// <param name="good">The good.</param>
    public static string LettersOf(Good good)
    {
        if (good.Letters.Length > 0)
        {
            return good.Letters;
        }

        var first = string.Concat(good.Name.ToUpperInvariant().Where(char.IsAsciiLetter).Take(Letters));
        return first.Length > 0 ? first : "LOT";
    }

    /// <summary>The highest number that follows some letters; 0 for none.</summary>
    /// <param name="letters">The letters.</param>
    /// <param name="lots">Numbers that are taken.</param>
    public static int Last(string letters, IEnumerable<string> lots) =>
        lots.Where(l =>
                l.Length > letters.Length + 1
                && l[letters.Length] == '-'
                && l.StartsWith(letters, StringComparison.Ordinal)
            )
            .Select(l =>
                int.TryParse(
                    l.AsSpan(letters.Length + 1),
                    NumberStyles.None,
                    CultureInfo.InvariantCulture,
                    out var n
                )
                    ? n
                    : 0
            )
            .DefaultIfEmpty()
            .Max();

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
