using System.Globalization;

namespace Litterfall.Documents.Views;

/// <summary>
/// Lengths as a maker writes them: metric, or inches to a sixteenth with the metric beside.
/// </summary>
public static class Lengths
{
    private const double Inch = 0.0254;
    private const double Foot = 12 * Inch;

    /// <summary>Whole millimeters, or inches with the millimeters.</summary>
    public static string Edge(double meters, bool imperial) =>
        imperial
            ? string.Create(CultureInfo.InvariantCulture, $"{Inches(meters)} ({meters * 1000:0} mm)")
            : string.Create(CultureInfo.InvariantCulture, $"{meters * 1000:0} mm");

    /// <summary>Centimeters with one decimal, or inches with the centimeters.</summary>
    public static string Depth(double meters, bool imperial) =>
        imperial
            ? string.Create(CultureInfo.InvariantCulture, $"{Inches(meters)} ({meters * 100:0.0} cm)")
            : string.Create(CultureInfo.InvariantCulture, $"{meters * 100:0.0} cm");

    /// <summary>Centimeters with one decimal, or inches alone: for the crowded places of a drawing.</summary>
    public static string Short(double meters, bool imperial) =>
        imperial ? Inches(meters) : Depth(meters, false);

    /// <summary>The same without its unit, for a table that names it once.</summary>
    public static string Bare(double meters, bool imperial) =>
        Short(meters, imperial).Replace(imperial ? " in" : " cm", "", StringComparison.Ordinal);

    /// <summary>
    /// What is cut from a coil or rod: meters with one decimal, or feet with the meters; below a meter as an
    /// edge.
    /// </summary>
    public static string Way(double meters, bool imperial) =>
        meters < 1 ? Edge(meters, imperial)
        : imperial ? string.Create(CultureInfo.InvariantCulture, $"{meters / Foot:0.0} ft ({meters:0.0#} m)")
        : string.Create(CultureInfo.InvariantCulture, $"{meters:0.0#} m");

    /// <summary>Meters with at most two decimals, or whole inches: a way, not a size to cut to.</summary>
    public static string Brief(double meters, bool imperial) =>
        imperial
            ? string.Create(CultureInfo.InvariantCulture, $"{meters / Inch:0} in")
            : string.Create(CultureInfo.InvariantCulture, $"{meters:0.0#} m");

    /// <summary>Inches to the nearest sixteenth, the fraction in lowest terms.</summary>
    public static string Inches(double meters)
    {
        var sixteenths = (long)Math.Round(meters / Inch * 16, MidpointRounding.AwayFromZero);
        var (whole, part) = (sixteenths / 16, sixteenths % 16);
        if (part == 0)
        {
            return string.Create(CultureInfo.InvariantCulture, $"{whole} in");
        }

        var below = 16L;
        while (part % 2 == 0)
        {
            (part, below) = (part / 2, below / 2);
        }

        return whole == 0
            ? string.Create(CultureInfo.InvariantCulture, $"{part}/{below} in")
            : string.Create(CultureInfo.InvariantCulture, $"{whole} {part}/{below} in");
    }
}
