using System.Globalization;

namespace Litterfall.Domain.Units;

/// <summary>
/// Reads quantities as people write them: mixed inches, decimal comma or point, units of both worlds.
/// </summary>
public static class QuantityText
{
    private static readonly Dictionary<char, double> VulgarFractions = new()
    {
        ['½'] = 0.5,
        ['¼'] = 0.25,
        ['¾'] = 0.75,
        ['⅛'] = 0.125,
        ['⅜'] = 0.375,
        ['⅝'] = 0.625,
        ['⅞'] = 0.875,
    };

    /// <summary>Reads one quantity.</summary>
    /// <param name="text">As typed.</param>
    /// <param name="value">The quantity with its text.</param>
    /// <param name="problem">One sentence when it cannot be read.</param>
    public static bool TryParse<T>(string text, out Typed<T> value, out string problem)
        where T : struct, IQuantity<T>
    {
        var read = TryParse(T.Kind, text, out var si, out problem);
        value = new Typed<T>(read ? T.FromSi(si) : default, text);
        return read;
    }

    /// <summary>Reads one quantity of the given kind; <paramref name="si"/> is in SI.</summary>
    public static bool TryParse(QuantityKind kind, string text, out double si, out string problem)
    {
        si = 0;
        var cursor = new Cursor(text.Trim());
        if (!ReadTerm(kind, ref cursor, out si, out var firstFactor, out problem))
        {
            return false;
        }

        cursor.SkipSpaces();
        if (!cursor.AtEnd && !ReadSmallerTerm(kind, ref cursor, firstFactor, ref si, out problem))
        {
            return false;
        }

        return InRange(kind, text, si, out problem);
    }

    private static bool InRange(QuantityKind kind, string text, double si, out string problem)
    {
        problem = "";
        if (si < kind.Minimum - 1e-12)
        {
            problem =
                kind.Minimum == 0
                    ? $"'{text}' is negative; {kind.Name} cannot be"
                    : $"'{text}' is colder than anything a tank will meet";
        }
        else if (si > kind.Maximum * (1 + 1e-12))
        {
            problem =
                kind.Maximum == 1
                    ? $"'{text}' is more than the whole"
                    : $"'{text}' is too large (limit {Limit(kind)})";
        }

        return problem.Length == 0;
    }

    /// <summary>The largest value in the unit that gives the smallest number of at least one.</summary>
    private static string Limit(QuantityKind kind)
    {
        var (number, word) = kind
            .Words.Select(w => (Number: (kind.Maximum - w.Offset) / w.Factor, w.Word))
            .Where(w => w.Number >= 1)
            .MinBy(w => w.Number);
        return string.Create(CultureInfo.InvariantCulture, $"{number:0.###} {word}").TrimEnd();
    }

    /// <summary>Feet and inches, or pounds and ounces: the second term must be of a smaller unit.</summary>
    private static bool ReadSmallerTerm(
        QuantityKind kind,
        ref Cursor cursor,
        double firstFactor,
        ref double si,
        out string problem
    )
    {
        var mixes = kind == QuantityKinds.Length || kind == QuantityKinds.Mass;
        var rest = cursor.Rest;
        if (kind == QuantityKinds.Length && Math.Abs(firstFactor - 0.3048) < 1e-9)
        {
            cursor.TryReadWord("-"); // 1'-6" on drawings: the hyphen joins feet and inches
        }

        if (
            !mixes
            || !ReadTerm(kind, ref cursor, out var more, out var factor, out problem)
            || more < 0
            || factor >= firstFactor
            || !cursor.SkippedToEnd()
        )
        {
            problem = $"'{rest}' is left over after the first amount";
            return false;
        }

        si += more;
        problem = "";
        return true;
    }

    private static bool ReadTerm(
        QuantityKind kind,
        ref Cursor cursor,
        out double si,
        out double factor,
        out string problem
    )
    {
        si = factor = 0;
        if (!cursor.TryReadNumber(VulgarFractions, out var number, out problem))
        {
            return false;
        }

        cursor.SkipSpaces();
        foreach (var word in kind.Words)
        {
            if (cursor.TryReadWord(word.Word))
            {
                factor = word.Factor;
                si = number * word.Factor + word.Offset;
                return true;
            }
        }

        return ReadBare(kind, ref cursor, number, out si, out problem);
    }

    private static bool ReadBare(
        QuantityKind kind,
        ref Cursor cursor,
        double number,
        out double si,
        out string problem
    )
    {
        si = 0;
        problem = "";
        if (cursor.AtEnd)
        {
            if (kind.BareFactor is { } bare)
            {
                si = number * bare;
                return true;
            }

            problem = "the unit is missing";
            return false;
        }

        var word = cursor.Rest.Trim();
        problem = kind.Ambiguous.TryGetValue(word, out var advice)
            ? advice
            : $"'{word}' is not a unit of {kind.Name}";
        return false;
    }

    private ref struct Cursor(string text)
    {
        private readonly ReadOnlySpan<char> all = text;
        private int at;

        public readonly bool AtEnd => at >= all.Length;

        public readonly string Rest => all[at..].ToString();

        public void SkipSpaces()
        {
            while (at < all.Length && (char.IsWhiteSpace(all[at]) || all[at] == '\u00A0'))
            {
                at++;
            }
        }

        public bool SkippedToEnd()
        {
            SkipSpaces();
            return AtEnd;
        }

        public bool TryReadWord(string word)
        {
            if (!all[at..].StartsWith(word, StringComparison.OrdinalIgnoreCase))
            {
                return false;
            }

            var next = at + word.Length;
            if (
                char.IsLetter(word[^1])
                && next < all.Length
                && (char.IsLetterOrDigit(all[next]) || all[next] == '/')
            )
            {
                return false;
            }

            at = next;
            return true;
        }

        public bool TryReadNumber(Dictionary<char, double> vulgar, out double number, out string problem)
        {
            number = 0;
            problem = "";
            SkipSpaces();
            var sign = 1.0;
            if (!AtEnd && all[at] is '-' or '−' or '+')
            {
                sign = all[at] == '+' ? 1 : -1;
                at++;
            }

            if (!AtEnd && vulgar.TryGetValue(all[at], out var alone))
            {
                at++;
                number = sign * alone;
                return true;
            }

            var digits = ReadDigits();
            if (digits.Length == 0)
            {
                problem = all.Length == 0 ? "nothing is written" : $"'{all}' does not begin with a number";
                return false;
            }

            return ReadAfterDigits(digits, sign, vulgar, out number, out problem);
        }

        private bool ReadAfterDigits(
            string digits,
            double sign,
            Dictionary<char, double> vulgar,
            out double number,
            out string problem
        )
        {
            problem = "";
            number = 0;
            if (at + 1 < all.Length && all[at] == '/' && char.IsAsciiDigit(all[at + 1]))
            {
                at++;
                if (!ReadDenominator(out var denominator, out problem))
                {
                    return false;
                }

                number = sign * Whole(digits) / denominator;
                return true;
            }

            if (!AtEnd && all[at] is '.' or ',')
            {
                return ReadDecimals(digits, sign, out number, out problem);
            }

            number = Whole(digits);
            var read = ReadFraction(vulgar, ref number, out problem);
            number *= sign;
            return read;
        }

        private bool ReadDecimals(string digits, double sign, out double number, out string problem)
        {
            number = 0;
            problem = "";
            var mark = all[at];
            at++;
            var decimals = ReadDigits();
            if (decimals.Length == 0)
            {
                problem = $"a digit is missing after '{digits}{mark}'";
                return false;
            }

            if (!AtEnd && all[at] is '.' or ',')
            {
                problem = $"'{all}' has two decimal marks; write the number without thousands marks";
                return false;
            }

            if (mark == ',' && decimals.Length == 3 && digits.Length <= 3 && digits[0] != '0')
            {
                problem =
                    $"'{digits},{decimals}' could be {digits}{decimals} or {digits}.{decimals}; write "
                    + $"one of them";
                return false;
            }

            number = sign * double.Parse($"{digits}.{decimals}", CultureInfo.InvariantCulture);
            return true;
        }

        /// <summary>"17 3/4": a fraction after blanks, or a fraction sign with or without one.</summary>
        private bool ReadFraction(Dictionary<char, double> vulgar, ref double number, out string problem)
        {
            problem = "";
            var back = at;
            SkipSpaces();
            if (!AtEnd && (all[at] == '-' || all[at] == '+') && at > back)
            {
                at = back;
                return true;
            }

            if (!AtEnd && vulgar.TryGetValue(all[at], out var sign))
            {
                at++;
                number += sign;
                return true;
            }

            if (!AtEnd && all[at] == '-')
            {
                at++;
            }

            var top = ReadDigits();
            if (top.Length == 0 || AtEnd || all[at] != '/')
            {
                at = back;
                return true;
            }

            at++;
            if (!ReadDenominator(out var denominator, out problem))
            {
                return false;
            }

            var fraction = Whole(top) / denominator;
            number += fraction;
            problem = fraction < 1 ? "" : $"'{top}/{denominator:0}' is not a proper fraction";
            return problem.Length == 0;
        }

        private bool ReadDenominator(out double denominator, out string problem)
        {
            denominator = Whole(ReadDigits());
            problem = denominator is 2 or 4 or 8 or 16 or 32 or 64
                ? ""
                : "fractions are written in halves, quarters, eighths or sixteenths";
            return problem.Length == 0;
        }

        private string ReadDigits()
        {
            var start = at;
            while (at < all.Length && char.IsAsciiDigit(all[at]))
            {
                at++;
            }

            return all[start..at].ToString();
        }

        private static double Whole(string digits) =>
            digits.Length == 0 ? 0 : double.Parse(digits, CultureInfo.InvariantCulture);
    }
}
