using System.Collections.Immutable;
using Litterfall.Domain.Tanks;

namespace Litterfall.Running.Service;

/// <summary>The clock of animals that are kept apart.</summary>
/// <param name="Tank">Number of the tank.</param>
/// <param name="Started">Day of the last arrival: all in, all out.</param>
/// <param name="Days">Days it takes.</param>
/// <param name="Death">Day of the last death that nobody explained; null for none.</param>
public sealed record QuarantineClock(string Tank, DateOnly Started, int Days, DateOnly? Death)
{
    /// <summary>First day on which the animals may leave.</summary>
    public DateOnly Ends
    {
        get
        {
            var clock = Started.AddDays(Days);
            var death = Death?.AddDays(QuarantineClocks.DaysAfterDeath);
            return death > clock ? death.Value : clock;
        }
    }

    /// <summary>True where a death, not the clock, keeps them.</summary>
    public bool IsHeldByDeath => Ends > Started.AddDays(Days);
}

/// <summary>
/// Clocks of quarantine (zoo guides for amphibians, from memory): 30 days at least, 60 as a rule, 90 for
/// breeders and unknown sources; a new arrival starts the clock of the whole tank again, and an unexplained
/// death of a tank-mate keeps all for 30 days.
/// </summary>
public static class QuarantineClocks
{
    /// <summary>Days for which an unexplained death keeps the others.</summary>
    public const int DaysAfterDeath = 30;

    /// <summary>Word in the note of an arrival that starts a clock.</summary>
    public const string Word = "quarantine";

    private const int Rule = 60;

    // Words that explain a death.
    private const string Explained = "explained";

    /// <summary>The clock of a tank on a day; null where nothing in it is in quarantine.</summary>
    /// <param name="tank">Number of the tank.</param>
    /// <param name="lines">Lines of its log that count, in the order of time.</param>
    /// <param name="today">The day.</param>
    public static QuarantineClock? Find(string tank, IEnumerable<CareEntry> lines, DateOnly today)
    {
        ImmutableArray<CareEntry> all = [.. lines];
        var last = all.LastOrDefault(l =>
            l.Kind == CareKind.AnimalsIn && l.Note.Contains(Word, StringComparison.OrdinalIgnoreCase)
        );
        if (last is null)
        {
            return null;
        }

        // Whatever comes in meanwhile starts the clock of all again.
        var arrival = all.Last(l => l.Kind == CareKind.AnimalsIn && l.At >= last.At);
        var death = all.LastOrDefault(l =>
            l.Kind == CareKind.Died
            && !l.Note.Contains(Explained, StringComparison.OrdinalIgnoreCase)
            && l.At >= arrival.At
        );
        var clock = new QuarantineClock(
            tank,
            Day(arrival),
            DaysOf(last.Note),
            death is null ? null : Day(death)
        );
        return clock.Ends > today ? clock : null;
    }

    /// <summary>
    /// Last unexplained death of the days that keep a tank's animals; null where nothing keeps them.
    /// </summary>
    /// <param name="lines">Lines of the tank that count, in the order of time.</param>
    /// <param name="today">The day.</param>
    public static DateOnly? KeptByDeath(IEnumerable<CareEntry> lines, DateOnly today) =>
        lines.LastOrDefault(l =>
            l.Kind == CareKind.Died && !l.Note.Contains(Explained, StringComparison.OrdinalIgnoreCase)
        )
            is { } death
        && Day(death).AddDays(DaysAfterDeath) > today
            ? Day(death)
            : null;

    /// <summary>"quarantine 90 days": as written, else the rule.</summary>
    private static int DaysOf(string note)
    {
        var after = note[(note.IndexOf(Word, StringComparison.OrdinalIgnoreCase) + Word.Length)..];
        var digits = new string([
            .. after.SkipWhile(c => !char.IsAsciiDigit(c)).TakeWhile(char.IsAsciiDigit),
        ]);
        const int least = 30;
        const int most = 400;
        return int.TryParse(digits, out var days) && days is >= least and <= most ? days : Rule;
    }

    private static DateOnly Day(CareEntry line) => DateOnly.FromDateTime(line.At);
}
