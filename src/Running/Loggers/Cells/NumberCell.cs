using System.Globalization;

namespace Litterfall.Running.Loggers.Cells;

/// <summary>A cell that holds a number, or says that there is none.</summary>
public static class NumberCell
{
    private const int MostDigits = 15;
    private const int MostPlaces = 22;
    private static readonly double[] Tens =
    [
        1e0,
        1e1,
        1e2,
        1e3,
        1e4,
        1e5,
        1e6,
        1e7,
        1e8,
        1e9,
        1e10,
        1e11,
        1e12,
        1e13,
        1e14,
        1e15,
        1e16,
        1e17,
        1e18,
        1e19,
        1e20,
        1e21,
        1e22,
    ];

    /// <summary>Words of loggers for a value that could not be measured.</summary>
    private static readonly string[] Missing =
    [
        "nan",
        "null",
        "n/a",
        "na",
        "n.a.",
        "err",
        "error",
        "fehler",
        "erreur",
        "ol",
        "open",
        "short",
        "fault",
        "invalid",
        "none",
        "no data",
        "missing",
        "sensor",
        "lo",
        "hi",
        "low",
        "high",
        "over",
        "under",
        "x",
        "?",
        "#n/a",
        "no signal",
        "inf",
        "-inf",
        "+inf",
        "ovf",
        "off",
        "absent",
        "disconnected",
    ];

    /// <summary>Reads a number with decimal point or comma and perhaps its unit behind it.</summary>
    /// <param name="cell">The cell.</param>
    /// <param name="value">The number; no number where the cell says that there is none.</param>
    /// <returns>False where the cell is something else.</returns>
    public static bool TryRead(ReadOnlySpan<char> cell, out double value)
    {
        value = double.NaN;
        var end = NumberEnd(cell, out var point, out var isPlain);
        if (end == 0)
        {
            return IsMissing(cell);
        }

        var rest = cell[end..].TrimStart();
        if (rest.Length > 0 && !IsUnit(rest))
        {
            return IsMissing(cell);
        }

        value = isPlain ? Fast(cell[..end], point) : Slow(cell[..end], point);
        return !double.IsNaN(value);
    }

    /// <summary>True where the cell says that there is no value.</summary>
    public static bool IsMissing(ReadOnlySpan<char> cell)
    {
        var text = cell.Trim();
        if (text.IndexOfAnyExcept("-*–—. ".AsSpan()) < 0)
        {
            return true;
        }

        foreach (var word in Missing)
        {
            if (text.Equals(word, StringComparison.OrdinalIgnoreCase))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>True for a number with a decimal comma.</summary>
    public static bool HasComma(ReadOnlySpan<char> cell) =>
        NumberEnd(cell, out var point, out _) > 0 && point >= 0 && cell[point] == ',';

    /// <summary>Where the number ends; the place of its decimal sign, -1 for none.</summary>
    private static int NumberEnd(ReadOnlySpan<char> cell, out int point, out bool isPlain)
    {
        point = -1;
        var (digits, signs, i) = (0, 0, 0);
        if (i < cell.Length && cell[i] is '+' or '-' or '−')
        {
            i++;
        }

        for (; i < cell.Length; i++)
        {
            if (char.IsAsciiDigit(cell[i]))
            {
                digits++;
            }
            else if (cell[i] is '.' or ',')
            {
                point = i;
                signs++;
            }
            else
            {
                break;
            }
        }

        isPlain = signs <= 1 && digits <= MostDigits;
        if (digits == 0)
        {
            return 0;
        }

        var power = Power(cell, i);
        isPlain &= power == i;
        return power;
    }

    /// <summary>Takes "e-05" in where one follows.</summary>
    private static int Power(ReadOnlySpan<char> cell, int i)
    {
        if (i >= cell.Length || cell[i] is not ('e' or 'E'))
        {
            return i;
        }

        var at = i + 1;
        if (at < cell.Length && cell[at] is '+' or '-')
        {
            at++;
        }

        var first = at;
        while (at < cell.Length && char.IsAsciiDigit(cell[at]))
        {
            at++;
        }

        return at > first ? at : i;
    }

    /// <summary>Digits and a power of ten that a double holds exactly: the quotient is rounded
    /// once.</summary>
    private static double Fast(ReadOnlySpan<char> number, int point)
    {
        long digits = 0;
        foreach (var c in number)
        {
            if (char.IsAsciiDigit(c))
            {
                digits = (digits * 10) + (c - '0');
            }
        }

        var places = point < 0 ? 0 : number.Length - point - 1;
        var value = places <= MostPlaces ? digits / Tens[places] : double.NaN;
        return number[0] is '-' or '−' ? -value : value;
    }

    /// <summary>With marks between thousands, a power of ten or many digits.</summary>
    private static double Slow(ReadOnlySpan<char> number, int point)
    {
        Span<char> clean = stackalloc char[64];
        var length = 0;
        for (var i = 0; i < number.Length && length < clean.Length; i++)
        {
            if (number[i] is '.' or ',' && i != point)
            {
                continue;
            }

            clean[length++] =
                i == point ? '.'
                : number[i] == '−' ? '-'
                : number[i];
        }

        return
            double.TryParse(clean[..length], NumberStyles.Float, CultureInfo.InvariantCulture, out var value)
            && double.IsFinite(value)
            ? value
            : double.NaN;
    }

    /// <summary>What may follow a number in its cell: "°C", "%", "% RH", "hPa", "lx".</summary>
    private static bool IsUnit(ReadOnlySpan<char> text) =>
        text.Length <= 12 && UnitWord.Find(text) is not null;
}
