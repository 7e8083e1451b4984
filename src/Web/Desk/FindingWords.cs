using Litterfall.Documents.Layout;
using Litterfall.Web.Library;

namespace Litterfall.Web.Desk;

/// <summary>Sentences of findings in the units that the reader likes.</summary>
public static class FindingWords
{
    /// <summary>
    /// The sentence with amounts of the kinds that the reader reads in US units told so, the metric one
    /// behind
    /// in brackets; differences of temperature in degrees.
    /// </summary>
    /// <param name="sentence">What a rule or a fix says.</param>
    /// <param name="taste">Units.</param>
    public static string Of(string sentence, Taste taste) =>
        UsUnits.Degrees(UsUnits.Of(sentence, unit => IsUs(unit, taste)));

    private static bool IsUs(string unit, Taste taste) =>
        unit switch
        {
            "mm" or "cm" or "m" or "cm²" or "m²" => taste.Chosen("length") == "in",
            "L" => taste.Chosen("volume") == "gal",
            "mL" or "mL/min" => taste.Chosen("small") == "fl oz",
            "kg" or "g" => taste.Chosen("mass") == "lb",
            "°C" or "K" => taste.Chosen("temperature") == "F",
            _ => false,
        };
}
