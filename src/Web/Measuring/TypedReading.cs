using Litterfall.Domain.Units;

namespace Litterfall.Web.Measuring;

/// <summary>One reading as typed: any unit, or none where one was chosen for all.</summary>
public static class TypedReading
{
    private const string Digits = "0123456789½¼¾⅛⅜⅝⅞";

    /// <summary>The reading with its unit.</summary>
    /// <param name="text">As typed, such as "35 7/16", "60,2" or "24 in".</param>
    /// <param name="unit">Symbol of the unit of a number alone.</param>
    public static string Whole(string text, string unit)
    {
        var plain = text.Trim().Replace(',', '.').Replace('″', '"').Replace('′', '\'');
        plain = plain.EndsWith('"') ? $"{plain[..^1].TrimEnd()} in" : plain;
        return plain.Length > 0 && Digits.Contains(plain[^1]) ? $"{plain} {unit}" : plain;
    }

    /// <summary>What is wrong with a reading; null where it reads, or is left out.</summary>
    /// <param name="text">As typed.</param>
    /// <param name="unit">Symbol of the unit of a number alone.</param>
    /// <param name="most">Most it can be, with its unit; none for no limit.</param>
    public static string? Fault<T>(string text, string unit, string? most = null)
        where T : struct, IQuantity<T>
    {
        if (text.Trim().Length == 0)
        {
            return null;
        }

        if (!QuantityText.TryParse<T>(Whole(text, unit), out var read, out _))
        {
            return $"'{text.Trim()}' does not read; expected a number such as {Example(unit)}.";
        }

        return read.Si < 0 && T.Kind == Litterfall.Domain.Units.Length.Kind ? "It cannot be below zero."
            : most is not null && QuantityText.TryParse<T>(most, out var limit, out _) && read.Si > limit.Si
                ? $"It is too large (limit {most})."
            : null;
    }

    /// <summary>Largest less smallest of several readings, m; 0 where fewer than two read.</summary>
    /// <param name="texts">As typed.</param>
    /// <param name="unit">Symbol of the unit of a number alone.</param>
    public static double Spread(IEnumerable<string> texts, string unit)
    {
        var read = texts
            .Select(t => (Is: QuantityText.TryParse<Length>(Whole(t, unit), out var one, out _), one.Si))
            .Where(r => r.Is)
            .Select(r => r.Si)
            .ToList();
        return read.Count < 2 ? 0 : read.Max() - read.Min();
    }

    private static string Example(string unit) =>
        unit switch
        {
            "in" => "35 7/16",
            "mm" => "602",
            "cm" => "60.2",
            _ => $"22 {unit}",
        };
}
