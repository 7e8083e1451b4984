using System.Globalization;
using Litterfall.Domain.Tanks;

namespace Litterfall.Running.Service;

/// <summary>Numbers for tanks that are put in service.</summary>
public static class TankCodes
{
    private const int Longest = 40;

    /// <summary>Why a number cannot be given, in one sentence; null where it can.</summary>
    /// <param name="code">The number.</param>
    /// <param name="tanks">All tanks, those that were given up too.</param>
    public static string? Refusal(string code, IEnumerable<Tank> tanks)
    {
        if (code.Length is 0 or > Longest || !code.All(c => char.IsLetterOrDigit(c) || c is '-' or '.' or '_'))
        {
            return $"The number of a tank has 1 to {Longest} letters, digits, hyphens or points, such as T-18.";
        }

        // Numbers that addresses of the bench already use.
        if (code.ToLowerInvariant() is "new" or "-" or "log.json")
        {
            return $"{code} cannot be the number of a tank; choose another, such as T-18.";
        }

        return tanks.Any(t => string.Equals(t.Code, code, StringComparison.OrdinalIgnoreCase))
            ? $"There is a tank {code} already. Give this one another number."
            : null;
    }

    /// <summary>The next free number of a row: T-18 where T-17 is the last.</summary>
    /// <param name="begin">What comes before the number: "T-".</param>
    /// <param name="tanks">All tanks.</param>
    public static string Next(string begin, IEnumerable<Tank> tanks)
    {
        var last = tanks
            .Where(t => t.Code.StartsWith(begin, StringComparison.OrdinalIgnoreCase))
            .Select(t =>
                int.TryParse(t.Code.AsSpan(begin.Length), NumberStyles.None, CultureInfo.InvariantCulture, out var n)
                    ? n
                    : 0
            )
            .DefaultIfEmpty(0)
            .Max();
        return string.Create(CultureInfo.InvariantCulture, $"{begin}{last + 1}");
    }
}
