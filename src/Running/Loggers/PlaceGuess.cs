using System.Text.RegularExpressions;

namespace Litterfall.Running.Loggers;

/// <summary>Where a sensor hangs, as the name of a file or of a column says it.</summary>
public static partial class PlaceGuess
{
    private static readonly string[] Rooms =
    [
        "room",
        "raum",
        "zimmer",
        "kamer",
        "pièce",
        "piece",
        "sala",
        "stanza",
        "rum",
        "habitación",
    ];

    private static readonly string[] NoTank = ["CH", "RH", "NO", "NR", "SN", "ID", "UTC", "GMT", "PM", "LOG"];

    /// <summary>The tank or room; empty where nothing says so.</summary>
    /// <param name="text">Name of a file without its folder, or of a column.</param>
    /// <param name="isColumn">True for a column: "T1" is a thermometer there, not a tank.</param>
    public static string Find(string text, bool isColumn)
    {
        var name = isColumn ? text : Ending().Replace(text, "");
        foreach (Match match in Tank().Matches(name))
        {
            var letters = match.Groups["letters"].Value.ToUpperInvariant();
            var isThermometer =
                isColumn
                && letters is "T" or "H" or "P" or "C"
                && !match.Value.Contains('-', StringComparison.Ordinal)
                && name.Length == match.Length;
            if (!isThermometer && !NoTank.Contains(letters, StringComparer.Ordinal))
            {
                return match.Value.ToUpperInvariant();
            }
        }

        var lower = name.ToLowerInvariant();
        if (
            lower.Contains("shelf", StringComparison.Ordinal)
            || lower.Contains("regal", StringComparison.Ordinal)
        )
        {
            return "culture shelf";
        }

        return Array.Exists(Rooms, r =>
            Regex.IsMatch(
                lower,
                $@"(?<![\p{{L}}]){r}(?![\p{{L}}])",
                RegexOptions.None,
                TimeSpan.FromSeconds(1)
            )
        )
            ? "room"
            : "";
    }

    [GeneratedRegex(
        @"(?<![\p{L}\p{N}])(?<letters>\p{L}{1,3})-?\d{1,3}(?![\p{L}\p{N}])",
        RegexOptions.None,
        1000
    )]
    private static partial Regex Tank();

    [GeneratedRegex(@"\.[A-Za-z]{1,4}$", RegexOptions.None, 1000)]
    private static partial Regex Ending();
}
