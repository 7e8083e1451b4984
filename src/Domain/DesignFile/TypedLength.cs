using System.Globalization;

namespace Litterfall.Domain.DesignFile;

/// <summary>Lengths as people type them, kept in the unit they typed.</summary>
public static class TypedLength
{
    private const double Inch = 0.0254;

    /// <summary>A length in the unit of another text: "5 cm", "50 mm", "2 1/16 in".</summary>
    /// <param name="meters">The length, m.</param>
    /// <param name="like">What was typed before; empty for the user's usual unit.</param>
    /// <param name="usual">The user's usual unit: cm, mm or in.</param>
    public static string Write(double meters, string like, string usual) =>
        UnitOf(like) is var unit && unit.Length == 0 ? Write(meters, usual) : Write(meters, unit);

    /// <summary>A step of the arrow keys: 1 mm, or 1/16 in where inches were typed.</summary>
    /// <param name="like">What was typed before.</param>
    /// <param name="usual">The user's usual unit.</param>
    public static double Step(string like, string usual)
    {
        var unit = UnitOf(like) is { Length: > 0 } typed ? typed : usual;
        return unit is "in" or "ft" ? Inch / 16.0 : 0.001;
    }

    /// <summary>The text of a value in a design; empty where it is not written.</summary>
    public static string TextAt(DesignDocument document, string path) =>
        document.Spans.TryGetValue(path, out var span)
            ? document.Text[span.Start..span.End].Trim('"', '\'')
            : "";

    private static string UnitOf(string text)
    {
        var last = text.TrimEnd();
        if (last.EndsWith('"') || last.EndsWith("in", StringComparison.Ordinal))
        {
            return "in";
        }

        return last.EndsWith("mm", StringComparison.Ordinal) ? "mm"
            : last.EndsWith("cm", StringComparison.Ordinal) ? "cm"
            : last.EndsWith('m') ? "m"
            : last.EndsWith("ft", StringComparison.Ordinal) || last.EndsWith('\'') ? "ft"
            : "";
    }

    private static string Write(double meters, string unit) =>
        unit switch
        {
            "mm" => FormattableString.Invariant($"{Math.Round(meters * 1000):0} mm"),
            "m" => FormattableString.Invariant($"{Math.Round(meters, 3):0.###} m"),
            "in" or "ft" => Inches(meters),
            _ => FormattableString.Invariant($"{Math.Round(meters * 100, 1):0.#} cm"),
        };

    private static string Inches(double meters)
    {
        var sixteenths = (int)Math.Round(meters / Inch * 16.0);
        var (whole, rest) = (sixteenths / 16, sixteenths % 16);
        if (rest == 0)
        {
            return string.Create(CultureInfo.InvariantCulture, $"{whole} in");
        }

        var parts = 16;
        while (rest % 2 == 0)
        {
            (rest, parts) = (rest / 2, parts / 2);
        }

        return whole == 0
            ? string.Create(CultureInfo.InvariantCulture, $"{rest}/{parts} in")
            : string.Create(CultureInfo.InvariantCulture, $"{whole} {rest}/{parts} in");
    }
}
