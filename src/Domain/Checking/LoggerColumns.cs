using System.Globalization;

namespace Litterfall.Domain.Checking;

/// <summary>Which column of a logger file holds what.</summary>
/// <param name="Time">Time, or date where the time of day stands apart.</param>
/// <param name="OfDay">Time of day where it stands apart, else -1.</param>
/// <param name="Warm">Temperature.</param>
/// <param name="Damp">Humidity.</param>
/// <param name="IsFahrenheit">Temperature in °F by its head.</param>
internal readonly record struct LoggerColumns(int Time, int OfDay, int Warm, int Damp, bool IsFahrenheit)
{
    private static readonly string[] Clocks = ["time", "zeit", "uhr", "stamp"];
    private static readonly string[] Dates = ["date", "datum", "day"];
    private static readonly string[] Temperatures = ["temp", "°c", "°f"];
    private static readonly string[] Humidities = ["hum", "rh", "feuchte", "%"];

    /// <summary>The last column that a line must have.</summary>
    public int Last => Math.Max(Math.Max(Time, OfDay), Math.Max(Warm, Damp));

    /// <summary>The columns by their heads; null where one is missing.</summary>
    public static LoggerColumns? ByHeads(string[] cells)
    {
        var names = cells.Select(n => n.Trim(' ', '"', '\'').ToLowerInvariant()).ToArray();
        var date = Array.FindIndex(names, n => Has(n, Dates) && !Has(n, Clocks));
        var clock = Array.FindIndex(names, n => Has(n, Clocks));
        var warm = Array.FindIndex(names, n => Has(n, Temperatures));
        var damp = Array.FindIndex(names, n => Has(n, Humidities));
        if (Math.Max(date, clock) < 0 || warm < 0 || damp < 0 || warm == damp)
        {
            return null;
        }

        var isApart = date >= 0 && clock >= 0;
        var head = names[warm];
        return new LoggerColumns(
            date >= 0 ? date : clock,
            isApart ? clock : -1,
            warm,
            damp,
            head.Contains("°f", StringComparison.Ordinal)
                || head.Contains("fahrenheit", StringComparison.Ordinal)
                || head.EndsWith("_f", StringComparison.Ordinal)
                || head.EndsWith(" f", StringComparison.Ordinal)
                || head.EndsWith("(f)", StringComparison.Ordinal)
        );
    }

    /// <summary>
    /// The columns of a file without heads: one that reads as a time, and two of numbers that units or the
    /// range of
    /// their values tell apart; null where they do not.
    /// </summary>
    public static LoggerColumns? ByValues(IReadOnlyList<string[]> rows)
    {
        var first = rows[0];
        var time = Array.FindIndex(first, c => LoggerTime.Read(c) is not null);
        var apart = -1;
        if (time < 0)
        {
            time = Array.FindIndex(first, c => LoggerTime.Read(c + " 00:00") is not null);
            apart = Array.FindIndex(first, c => LoggerTime.Read("2026-01-01 " + c.Trim()) is not null);
            if (time < 0 || apart < 0)
            {
                return null;
            }
        }

        var numbers = Enumerable
            .Range(0, first.Length)
            .Where(i => i != time && i != apart && LoggerValue.Read(first[i]).Number is not null)
            .ToList();
        int[] damp = [.. numbers.Where(i => first[i].Contains('%', StringComparison.Ordinal))];
        int[] warm = [.. numbers.Where(i => LoggerValue.Read(first[i]).Unit is 'C' or 'F')];
        if (damp.Length == 1 && warm.Length == 0 && numbers.Count == 2)
        {
            warm = [numbers.Single(i => i != damp[0])];
        }

        if (damp.Length == 0 && numbers.Count == 2)
        {
            damp = [.. numbers.Where(i => Most(rows, i) > WarmestRoom)];
            warm = [.. numbers.Where(i => Most(rows, i) <= WarmestRoom)];
        }

        return damp.Length == 1 && warm.Length == 1
            ? new LoggerColumns(time, apart, warm[0], damp[0], false)
            : null;
    }

    private const double WarmestRoom = 40;

    private static double Most(IReadOnlyList<string[]> rows, int column) =>
        rows.Where(r => r.Length > column).Max(r => LoggerValue.Read(r[column]).Number ?? double.MinValue);

    private static bool Has(string name, string[] words) =>
        words.Any(w => name.Contains(w, StringComparison.Ordinal));
}

/// <summary>One cell of a logger file.</summary>
/// <param name="Number">Its number; null where there is none.</param>
/// <param name="Unit">C, F or %, or a blank.</param>
/// <param name="IsBlank">True where the logger had nothing to tell.</param>
internal readonly record struct LoggerValue(double? Number, char Unit, bool IsBlank)
{
    private static readonly string[] Blanks = ["", "-", "--", "---", "na", "n/a", "nan", "null", "err"];

    private static readonly (string Word, char Unit)[] Units =
    [
        ("°c", 'C'),
        ("°f", 'F'),
        ("% rh", '%'),
        ("%rh", '%'),
        ("%", '%'),
        ("c", 'C'),
        ("f", 'F'),
    ];

    /// <summary>Reads a cell: a number with decimal point or comma, with or without its unit.</summary>
    public static LoggerValue Read(string cell)
    {
        var text = cell.Trim(' ', '"', '\'', '\u00A0').ToLowerInvariant();
        if (Blanks.Contains(text))
        {
            return new LoggerValue(null, ' ', true);
        }

        var unit = ' ';
        foreach (var (word, of) in Units)
        {
            if (text.EndsWith(word, StringComparison.Ordinal))
            {
                (text, unit) = (text[..^word.Length].TrimEnd(), of);
                break;
            }
        }

        return
            double.TryParse(
                text.Replace(',', '.'),
                NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint,
                CultureInfo.InvariantCulture,
                out var number
            ) && double.IsFinite(number)
            ? new LoggerValue(number, unit, false)
            : new LoggerValue(null, unit, false);
    }
}
