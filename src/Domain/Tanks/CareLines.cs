namespace Litterfall.Domain.Tanks;

/// <summary>Which lines of a tank's log count, and which may be written.</summary>
public static class CareLines
{
    /// <summary>Longest key of a line, characters.</summary>
    public const int LongestKey = 80;

    /// <summary>Longest number of a tank, characters.</summary>
    public const int LongestCode = 60;

    /// <summary>Longest note, characters.</summary>
    public const int LongestNote = 2000;

    /// <summary>Longest name of who wrote, of a lot or of a person, characters.</summary>
    public const int LongestName = 200;

    // More than any tank holds, weighs or eats: a slip of the thumb, not a reading.
    private const double LargestAmount = 1e6;

    // Nobody kept such a log before, and no clock of a phone runs further ahead.
    private static readonly DateTime Earliest = new(1990, 1, 1, 0, 0, 0, DateTimeKind.Utc);

    /// <summary>
    /// Lines that count, in the order of time: without those that were taken back and those that take back.
    /// </summary>
    /// <param name="lines">Lines of one tank or of many.</param>
    public static IReadOnlyList<CareEntry> Counting(IEnumerable<CareEntry> lines)
    {
        var all = lines as IReadOnlyCollection<CareEntry> ?? [.. lines];
        var gone = all.Where(l => l.TakesBack.Length > 0).Select(l => (l.Tank, l.TakesBack)).ToHashSet();
        return
        [
            .. all.Where(l => l.TakesBack.Length == 0 && !gone.Contains((l.Tank, l.Key)))
                .OrderBy(l => l.At)
                .ThenBy(l => l.Key, StringComparer.Ordinal),
        ];
    }

    /// <summary>Why a line is not taken, in one sentence; null where it is.</summary>
    /// <param name="line">The line.</param>
    /// <param name="now">Now, UTC.</param>
    public static string? Refusal(CareEntry line, DateTime now)
    {
        if (line.Key.Length is 0 or > LongestKey)
        {
            return $"A line needs a key of 1 to {LongestKey} characters.";
        }

        if (line.Tank.Length is 0 or > LongestCode)
        {
            return $"A line needs the number of its tank, 1 to {LongestCode} characters.";
        }

        if (line.At.Kind != DateTimeKind.Utc || line.At < Earliest || line.At > now.AddDays(1))
        {
            return "The time of the line is not believable; set the clock of the phone and write it again.";
        }

        if (line.Amount is { } amount && (!double.IsFinite(amount) || amount is < 0 or > LargestAmount))
        {
            return "The amount must be a number of 0 or more.";
        }

        if (line.HumidityPercent is { } humidity && !(humidity is >= 0 and <= 110))
        {
            return "The humidity must be 0 to 100 %.";
        }

        return line.Note.Length > LongestNote ? $"The note is too long (limit {LongestNote} characters)."
            : new[] { line.Species, line.Other, line.Photo, line.Who, line.TakesBack }.Any(t =>
                t.Length > LongestName
            )
                ? $"A name is too long (limit {LongestName} characters)."
            : null;
    }
}
