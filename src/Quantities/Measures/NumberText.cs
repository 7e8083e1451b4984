using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;

namespace Litterfall.Quantities.Measures;

/// <summary>
/// Numbers as the papers print them: liters and millimeters with one decimal, depths in centimeters with at
/// most one, with the nearest sixteenth of an inch beside where the box was typed in inches.
/// </summary>
public static class NumberText
{
    private const double Inch = 0.0254;
    private const int Sixteenths = 16;
    private const double SmallestLiters = 0.05;

    /// <summary>"9.7 L"; below 0.05 L whole milliliters.</summary>
    public static string Liters(Figure volume)
    {
        var liters = volume.Si * 1000;
        return liters is > 0 and < SmallestLiters
            ? $"{Plain(liters * 1000, "0")} mL"
            : $"{Plain(liters, "0.0")} L";
    }

    /// <summary>"500 mL".</summary>
    public static string Milliliters(Figure volume) => $"{Plain(volume.Si * 1e6, "0")} mL";

    /// <summary>"5 cm", or "5.1 cm (2 in)" for a maker who thinks in inches.</summary>
    public static string Depth(Figure length, bool inches) =>
        inches
            ? $"{Plain(length.Si * 100, "0.#")} cm ({InInches(length.Si)})"
            : $"{Plain(length.Si * 100, "0.#")} cm";

    /// <summary>"441.0 mm".</summary>
    public static string Millimeters(Figure length) => $"{Plain(length.Si * 1000, "0.0")} mm";

    /// <summary>"441.0 × 291.0 mm".</summary>
    public static string Size(Figure length, Figure width) =>
        $"{Plain(length.Si * 1000, "0.0")} × {Plain(width.Si * 1000, "0.0")} mm";

    /// <summary>"34.2 kg"; below 1 kg two decimals.</summary>
    public static string Kilograms(Figure mass) => $"{Plain(mass.Si, mass.Si < 1 ? "0.00" : "0.0")} kg";

    /// <summary>The number in its own unit with the unit behind it, at most one decimal.</summary>
    public static string Of(Figure figure) =>
        figure.Unit is { } unit && unit != Unit.One
            ? $"{Plain(figure.Value, "0.#")} {Symbol(unit)}"
            : Plain(figure.Value, "0.#");

    /// <summary>A whole number, rounded half away from zero.</summary>
    public static string Whole(Figure figure) => Plain(figure.Value, "0");

    /// <summary>"3 plants", "1 plant".</summary>
    public static string Count(int count, string one, string many) =>
        count == 1 ? $"1 {one}" : $"{Integer(count)} {many}";

    /// <summary>"1 day", "2.5 days".</summary>
    public static string Days(Figure time) =>
        Plain(time.Value, "0.#") is var number && number == "1" ? "1 day" : $"{number} days";

    /// <summary>A whole number without separators.</summary>
    public static string Integer(long number) => number.ToString(CultureInfo.InvariantCulture);

    /// <summary>"07:30".</summary>
    public static string Clock(TimeOnly time) => time.ToString("HH:mm", CultureInfo.InvariantCulture);

    /// <summary>"Fri 14 Aug 2026".</summary>
    public static string Day(DateOnly day) => day.ToString("ddd d MMM yyyy", CultureInfo.InvariantCulture);

    /// <summary>A length in meters to the nearest sixteenth: "4 1/2 in".</summary>
    public static string InInches(double meters)
    {
        var parts = (long)Math.Round(meters / Inch * Sixteenths, MidpointRounding.AwayFromZero);
        var (whole, rest) = (parts / Sixteenths, parts % Sixteenths);
        if (rest == 0)
        {
            return $"{Integer(whole)} in";
        }

        var below = Sixteenths;
        while (rest % 2 == 0)
        {
            (rest, below) = (rest / 2, below / 2);
        }

        return whole == 0
            ? $"{Integer(rest)}/{Integer(below)} in"
            : $"{Integer(whole)} {Integer(rest)}/{Integer(below)} in";
    }

    private static string Symbol(Unit unit) =>
        unit.Symbol switch
        {
            "C" => "°C",
            "cm2" => "cm²",
            "m2" => "m²",
            _ => unit.Symbol,
        };

    private static string Plain(double number, string format)
    {
        // A rounded decimal keeps 0.25 from printing as 0.2 where the double lies a hair below.
        var text = Math.Round(number, 9).ToString(format, CultureInfo.InvariantCulture);
        return text is "-0" or "-0.0" ? text[1..] : text;
    }

    /// <summary>A sentence begins with a capital letter.</summary>
    /// <param name="text">The sentence.</param>
    public static string Capital(string text) =>
        text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];
}
