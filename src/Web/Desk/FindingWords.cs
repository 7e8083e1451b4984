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
    /// <param name="preferences">Units.</param>
    public static string Of(string sentence, UnitPreferences preferences) =>
        UsUnits.Degrees(UsUnits.Of(sentence, unit => IsUs(unit, preferences)));

    private static bool IsUs(string unit, UnitPreferences preferences) =>
        unit switch
        {
            "mm" or "cm" or "m" or "cm²" or "m²" => preferences.Chosen("length") == "in",
            "L" => preferences.Chosen("volume") == "gal",
            "mL" or "mL/min" => preferences.Chosen("small") == "fl oz",
            "kg" or "g" => preferences.Chosen("mass") == "lb",
            "°C" or "K" => preferences.Chosen("temperature") == "F",
            _ => false,
        };
}
