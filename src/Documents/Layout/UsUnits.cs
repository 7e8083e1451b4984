using System.Globalization;
using System.Text.RegularExpressions;
using Litterfall.Documents.Drawings;
using Litterfall.Quantities.Measures;

namespace Litterfall.Documents.Layout;

/// <summary>
/// Metric amounts in running text for a reader of inches: inches to a sixteenth, quarts and gallons, pounds
/// and degrees Fahrenheit, with the metric amount behind in brackets, since glaziers and laboratories differ.
/// What already stands beside its other unit is left as it is.
/// </summary>
public static partial class UsUnits
{
    private const double Inch = 0.0254;
    private const double InchesPerFoot = 12;
    private const double LitersPerQuart = 0.946352946;
    private const double QuartsPerGallon = 4;
    private const double OuncesPerQuart = 32;
    private const double KilogramsPerPound = 0.45359237;
    private const double OuncesPerPound = 16;

    private const double LargestDifference = 200;

    /// <summary>Below it a sixteenth says nothing, m.</summary>
    private const double SmallestForSixteenths = 0.0015;

    /// <summary>The text with its metric amounts told in US units first.</summary>
    /// <param name="text">A text.</param>
    public static string Of(string text) => Of(text, _ => true);

    /// <summary>The same for those metric units alone that the reader does not use.</summary>
    /// <param name="text">A text.</param>
    /// <param name="isTold">True for a metric unit that is told in the US one.</param>
    public static string Of(string text, Func<string, bool> isTold) =>
        text.Any(char.IsAsciiDigit)
            ? Amount()
                .Replace(text, m => isTold(m.Groups["unit"].Value) ? Told(m, IsAlone(m, text)) : m.Value)
            : text;

    /// <summary>Differences of temperature in degrees, as people say them: "4 °C" for "4 K".</summary>
    /// <param name="text">A text.</param>
    public static string Degrees(string text) => Kelvins().Replace(text, "${number} °C");

    /// <summary>A cell that is one volume or mass is told in US units alone: no glazier reads it.</summary>
    private static bool IsAlone(Match match, string text) =>
        match.Length == text.Length && (match.Groups["unit"].Value is "L" or "mL" or "kg" or "g");

    /// <summary>A drawing with its metric amounts told in US units first.</summary>
    /// <param name="drawing">A drawing.</param>
    public static Drawing Of(Drawing drawing) =>
        drawing with
        {
            Marks =
            [
                .. drawing.Marks.Select(mark =>
                    mark is TextMark text ? text with { Text = Of(text.Text) } : mark
                ),
            ],
        };

    private static string Told(Match match, bool isAlone)
    {
        var unit = match.Groups["unit"].Value;
        string[] numbers = [.. match.Groups["number"].Captures.Select(c => c.Value)];
        string[] between = [.. match.Groups["between"].Captures.Select(c => c.Value)];
        var values = Array.ConvertAll(numbers, n => double.Parse(n, CultureInfo.InvariantCulture));
        if (In(values, unit) is not { } told)
        {
            return match.Value;
        }

        var words = told.Numbers[0];
        for (var i = 1; i < told.Numbers.Length; i++)
        {
            words += between[i - 1] + told.Numbers[i];
        }

        return isAlone ? $"{words} {told.Unit}" : $"{words} {told.Unit} ({match.Value})";
    }

    /// <summary>The numbers in the US unit that suits the largest of them; null without one.</summary>
    private static (string[] Numbers, string Unit)? In(double[] values, string unit) =>
        unit switch
        {
            "mm" => Length(values, 0.001),
            "cm" => Length(values, 0.01),
            "m" => Length(values, 1),
            "L" => Volume(values, 1),
            "mL" => Volume(values, 0.001),
            "mL/min" => (
                Each(values, v => Plain(v * 0.001 / LitersPerQuart * OuncesPerQuart, 1)),
                "fl oz/min"
            ),
            "kg" => Mass(values, 1),
            "g" => Mass(values, 0.001),
            "°C" => (Each(values, v => Plain(v * 1.8 + 32, 0)), "°F"),
            // Above it the color of a lamp is meant.
            "K" when values.Max() < LargestDifference => (Each(values, Difference), "°F"),
            "cm²" => (Each(values, v => Plain(v * 1e-4 / (Inch * Inch), 0)), "sq in"),
            "m²" => (Each(values, v => Plain(v / (Inch * Inch * InchesPerFoot * InchesPerFoot), 1)), "sq ft"),
            _ => null,
        };

    /// <summary>A difference of less than one degree keeps its tenth.</summary>
    private static string Difference(double kelvins) => Plain(kelvins * 1.8, kelvins * 1.8 < 0.95 ? 1 : 0);

    private static (string[], string)? Length(double[] values, double meters)
    {
        if (values.Max() * meters < SmallestForSixteenths)
        {
            return (Each(values, v => Plain(v * meters / Inch, 3)), "in");
        }

        return (
            Each(values, v => NumberText.InInches(v * meters).Replace(" in", "", StringComparison.Ordinal)),
            "in"
        );
    }

    private static (string[], string)? Volume(double[] values, double liters)
    {
        var quarts = values.Max() * liters / LitersPerQuart;
        return quarts >= QuartsPerGallon * 2
                ? (Each(values, v => Plain(v * liters / LitersPerQuart / QuartsPerGallon, 1)), "gal")
            : quarts >= 0.5 ? (Each(values, v => Plain(v * liters / LitersPerQuart, 1)), "qt")
            : (Each(values, v => Plain(v * liters / LitersPerQuart * OuncesPerQuart, 1)), "fl oz");
    }

    private static (string[], string)? Mass(double[] values, double kilograms)
    {
        var pounds = values.Max() * kilograms / KilogramsPerPound;
        return pounds >= 1
            ? (Each(values, v => Plain(v * kilograms / KilogramsPerPound, 1)), "lb")
            : (
                Each(values, v =>
                    Plain(v * kilograms / KilogramsPerPound * OuncesPerPound, pounds < 0.01 ? 3 : 1)
                ),
                "oz"
            );
    }

    private static string[] Each(double[] values, Func<double, string> told) =>
        Array.ConvertAll(values, v => told(v));

    private static string Plain(double number, int digits)
    {
        var text = Math.Round(number, digits, MidpointRounding.AwayFromZero)
            .ToString("0.###", CultureInfo.InvariantCulture);
        return text == "-0" ? "0" : text;
    }

    /// <summary>Not the color of a lamp, which has thousands.</summary>
    [GeneratedRegex(
        @"(?<![\d.])(?<number>\d{1,2}(?:\.\d+)?) K(?![\w²³/·])",
        RegexOptions.ExplicitCapture,
        60_000
    )]
    private static partial Regex Kelvins();

    /// <summary>
    /// "5 cm", "5–10 mm", "590.0 × 440.0 × 5 mm", "22 to 25 °C"; not "(457 mm)" after inches, and not what
    /// inches follow in brackets.
    /// </summary>
    [GeneratedRegex(
        @"(?=[-\d])(?<![\w.,/]|(?:in|°F|qt|gal|lb|oz|ft) \([^()]{0,30})(?<number>-?\d+(?:\.\d+)?)"
            + @"(?:(?<between> ?[–×-] ?| to | by | and | or )(?<number>-?\d+(?:\.\d+)?)){0,3} "
            + @"(?<unit>mL/min|mm|cm²|cm|m²|mL|m|L|kg|g|°C|K)(?![\w²³/·])"
            + @"(?! \([^()]{0,30}(?: in|°F|qt|gal|lb|oz|ft)\))",
        RegexOptions.ExplicitCapture,
        60_000
    )]
    private static partial Regex Amount();
}
