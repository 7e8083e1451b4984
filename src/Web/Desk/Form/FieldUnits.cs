using System.Globalization;
using System.Text.RegularExpressions;
using Litterfall.Domain;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Units;
using Litterfall.Web.Library;

namespace Litterfall.Web.Desk.Form;

/// <summary>Units of fields: what a bare number means, and how far a step goes.</summary>
public static partial class FieldUnits
{
    private const double Inch = 0.0254;
    private const int Patience = 1000;
    private const int And = 5;

    /// <summary>
    /// What is typed with a unit behind it: a bare number takes the one that stood there before, else the
    /// reader's own.
    /// </summary>
    /// <param name="text">As typed.</param>
    /// <param name="before">What stood there before; empty for nothing.</param>
    /// <param name="key">The key.</param>
    /// <param name="preferences">The reader's units.</param>
    public static string WithUnit(string text, string before, DesignKey key, UnitPreferences preferences) =>
        key.Quantity is not null && Bare().IsMatch(text)
            ? $"{text} {(UnitOf(before) is { Length: > 0 } unit ? unit : Usual(key, preferences))}".TrimEnd()
            : text;

    /// <summary>
    /// A range of temperature as its middle and half its width; null where what is typed is no range.
    /// </summary>
    /// <param name="text">As typed, such as "19–24 °C".</param>
    /// <param name="preferences">The reader's units.</param>
    public static (string Middle, string Half)? Range(string text, UnitPreferences preferences)
    {
        var match = RangeForm().Match(text.Trim());
        if (!match.Success)
        {
            return null;
        }

        var unit = match.Groups["unit"].Success ? match.Groups["unit"].Value : match.Groups["first"].Value;
        unit =
            unit.TrimStart('°').ToUpperInvariant() is { Length: > 0 } named ? named
            : preferences.Chosen("temperature") is { } chosen ? chosen
            : "C";
        var (low, high) = (Number(match.Groups["low"].Value), Number(match.Groups["high"].Value));
        return low <= high
            ? (
                string.Create(CultureInfo.InvariantCulture, $"{(low + high) / 2:0.##} {unit}"),
                string.Create(CultureInfo.InvariantCulture, $"{(high - low) / 2:0.##} {unit}")
            )
            : null;
    }

    /// <summary>Readings of one edge, apart by commas, semicolons or "and".</summary>
    /// <param name="text">As typed.</param>
    public static IReadOnlyList<string> Readings(string text)
    {
        var list = new List<string>();
        var from = 0;
        for (var i = 0; i <= text.Length; i++)
        {
            var isAnd = string.CompareOrdinal(text, i, " and ", 0, And) == 0;
            if (i < text.Length && text[i] != ';' && !isAnd && !(text[i] == ',' && IsApart(text, i)))
            {
                continue;
            }

            var one = text[from..i].Trim().Trim('[', ']').Trim();
            if (one.Length > 0)
            {
                list.Add(one);
            }

            from = i + (isAnd ? And : 1);
        }

        return list;
    }

    /// <summary>A comma between digits is a decimal comma.</summary>
    private static bool IsApart(string text, int comma) =>
        comma + 1 >= text.Length
        || !char.IsAsciiDigit(text[comma + 1])
        || comma == 0
        || !char.IsAsciiDigit(text[comma - 1]);

    /// <summary>
    /// The value a step further, in the unit it is written in; null where it has no number.
    /// </summary>
    /// <param name="text">What stands there.</param>
    /// <param name="key">The key.</param>
    /// <param name="steps">How many steps, down where negative.</param>
    public static string? Stepped(string text, DesignKey key, int steps)
    {
        if (key.Form == KeyForm.Whole)
        {
            return int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var whole)
                ? Math.Max(0, whole + steps).ToString(CultureInfo.InvariantCulture)
                : null;
        }

        if (key.Quantity is not { } kind || !QuantityText.TryParse(kind, text, out var si, out _))
        {
            return null;
        }

        var unit = UnitOf(text);
        if (kind == QuantityKinds.Length && unit is "in" or "ft" or "\"" or "'")
        {
            var quarters = Math.Round(si / Inch * 4) + steps;
            return TypedLength.Write(Math.Max(0, quarters) * Inch / 4, "in", "in");
        }

        var word = kind.Words.FirstOrDefault(w =>
            string.Equals(w.Word, unit, StringComparison.OrdinalIgnoreCase)
        );
        var (factor, offset) = word.Word is null ? (kind.BareFactor ?? 1, 0) : (word.Factor, word.Offset);
        var (number, step) = ((si - offset) / factor, Step(kind, unit, (si - offset) / factor));
        var next = (Math.Round(number / step) + steps) * step;
        var least = kind == QuantityKinds.Temperature ? -40 : 0;
        return string.Create(
                CultureInfo.InvariantCulture,
                $"{Math.Round(Math.Max(least, next), 4):0.####} {unit}"
            )
            .TrimEnd();
    }

    /// <summary>The unit a text ends with; empty where it has none.</summary>
    /// <param name="text">Such as "5 1/2 in".</param>
    public static string UnitOf(string text)
    {
        var rest = Head().Replace(text.Trim(), "").Trim();
        // Feet and inches: the last of both.
        return rest.Length > 1 && rest[0] is '\'' or '′' ? Head().Replace(rest[1..].Trim(), "").Trim() : rest;
    }

    private static double Step(QuantityKind kind, string unit, double number) =>
        kind == QuantityKinds.Length
            ? unit == "mm"
                ? (number < 30 ? 1 : 5)
                : unit == "m"
                    ? 0.05
                    : 0.5
            : kind == QuantityKinds.Temperature || kind == QuantityKinds.TemperatureDifference
                ? 0.5
                : kind == QuantityKinds.Share
                    ? 5
                    : kind == QuantityKinds.LuminousFlux
                        ? 100
                        : kind == QuantityKinds.Duration
                            ? (unit is "s" or "sec" or "min" ? 5 : 1)
                            : kind == QuantityKinds.Mass && unit == "g" || kind == QuantityKinds.Illuminance
                                ? 50
                                : kind == QuantityKinds.Mass || kind == QuantityKinds.AirChangeRate
                                    ? 0.1
                                    : kind == QuantityKinds.Flow
                                    || kind == QuantityKinds.ElectricCurrent
                                    || kind == QuantityKinds.Angle
                                        ? 5
                                        : kind == QuantityKinds.Elevation
                                            ? 100
                                            : 1;

    private static string Usual(DesignKey key, UnitPreferences preferences)
    {
        var kind = key.Quantity!;
        var isUs = preferences.Chosen("length") == "in";
        return kind == QuantityKinds.Length ? preferences.Chosen("length") ?? "cm"
            : kind == QuantityKinds.Temperature ? preferences.Chosen("temperature") ?? "C"
            : kind == QuantityKinds.TemperatureDifference ? preferences.Chosen("temperature") ?? "K"
            : kind == QuantityKinds.Volume ? preferences.Chosen("volume") ?? "L"
            : kind == QuantityKinds.Mass ? preferences.Chosen("mass") ?? "kg"
            : kind == QuantityKinds.Elevation ? (isUs ? "ft" : "m")
            : kind == QuantityKinds.Area ? (isUs ? "sq in" : "cm2")
            : kind == QuantityKinds.Duration ? UsualTime(key)
            : kind == QuantityKinds.Share ? "%"
            : kind == QuantityKinds.Flow ? (key.Owner == typeof(Fan) ? "m3/h" : "mL/min")
            : kind.Words[^1].Word;
    }

    private static string UsualTime(DesignKey key) =>
        key.Owner == typeof(MistTime) ? "s"
        : key.Name == "ramp" ? "min"
        : key.Name == "age" ? "h"
        : "d";

    private static double Number(string text) =>
        double.Parse(text.Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture);

    [GeneratedRegex(
        @"^[-−+]?\s*(\d+([.,]\d+)?|\d+\s*/\s*\d+|\d+[ -]\d+/\d+|\d*\s*[½¼¾⅛⅜⅝⅞])$",
        RegexOptions.ExplicitCapture,
        Patience
    )]
    private static partial Regex Bare();

    [GeneratedRegex(
        @"^[-−+]?\s*(\d+[ -]\d+/\d+|\d+/\d+|\d+([.,]\d+)?\s*[½¼¾⅛⅜⅝⅞]?|[½¼¾⅛⅜⅝⅞])",
        RegexOptions.ExplicitCapture,
        Patience
    )]
    private static partial Regex Head();

    [GeneratedRegex(
        @"^(?<low>-?\d+([.,]\d+)?)\s*(?<first>°?\s*[CFK])?\s*(-|–|—|to|\.\.)\s*(?<high>-?\d+([.,]\d+)?)"
            + @"\s*(?<unit>°?\s*[CFK])?$",
        RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture,
        Patience
    )]
    private static partial Regex RangeForm();
}
