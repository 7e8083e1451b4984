using System.Collections.Immutable;
using Litterfall.Domain.Nursery;

namespace Litterfall.Workshop.Nursery;

/// <summary>
/// Quarantine of a bench: all in together, all out together. The clock starts when the last plants joined,
/// and again on the day something was found on any of them.
/// </summary>
/// <param name="Bench">The bench.</param>
/// <param name="Trays">Trays kept apart on it.</param>
/// <param name="Started">Day the clock started last.</param>
/// <param name="Ends">First day on which all may be released.</param>
/// <param name="Why">Why it started on that day, in words.</param>
public sealed record QuarantineClock(
    NurseryBench Bench,
    ImmutableArray<PlantTray> Trays,
    DateOnly Started,
    DateOnly Ends,
    string Why
)
{
    /// <summary>The clock of a bench; null where nothing is kept apart on it.</summary>
    /// <param name="bench">The bench.</param>
    /// <param name="trays">All trays.</param>
    public static QuarantineClock? Of(NurseryBench bench, IEnumerable<PlantTray> trays)
    {
        ImmutableArray<PlantTray> here =
        [
            .. trays.Where(t => t.Bench == bench.Key && t.IsInQuarantine).OrderBy(t => t.Since),
        ];
        if (here.IsEmpty)
        {
            return null;
        }

        var last = here[^1];
        var found = here.SelectMany(t => t.Inspections.Select(i => (Tray: t, Look: i)))
            .Where(i => i.Look.Found.Length > 0)
            .OrderBy(i => i.Look.Day)
            .LastOrDefault();
        var isFound = found.Look is not null && found.Look.Day > last.Since;
        var started = isFound ? found.Look!.Day : last.Since;
        return new(
            bench,
            here,
            started,
            started.AddDays(here.Max(t => t.QuarantineDays)),
            isFound ? $"{found.Tray.Number}: {found.Look!.Found}"
                : here.Length > 1 && here[0].Since < started ? $"{last.Number} joined"
                : ""
        );
    }

    /// <summary>Days on which the trays are looked at before release.</summary>
    public ImmutableArray<DateOnly> Looks =>
        [
            Started.AddDays(NurseryPractice.Days(NurseryPractice.FirstLook)),
            Ends.AddDays(-NurseryPractice.Days(NurseryPractice.LastLook)),
        ];

    /// <summary>The next look that is due on a tray; null where all were done.</summary>
    /// <param name="tray">One of its trays.</param>
    public DateOnly? NextLook(PlantTray tray)
    {
        var done = Clean(tray);
        return done < Looks.Length ? Looks[done] : null;
    }

    /// <summary>Why a tray may not be released on a day, in one sentence; null where it may.</summary>
    /// <param name="day">The day.</param>
    public string? Bar(DateOnly day)
    {
        if (day < Ends)
        {
            var left = Ends.DayNumber - day.DayNumber;
            return left == 1
                ? "One more day of quarantine."
                : FormattableString.Invariant($"{left} more days of quarantine.");
        }

        var wanted = (int)NurseryPractice.Inspections.Si;
        return Trays.FirstOrDefault(t => Clean(t) < wanted) is { } tray
                ? FormattableString.Invariant(
                    $"{tray.Number} was looked at {Times(Clean(tray))} since the start; {wanted} are due."
                )
            : Trays.FirstOrDefault(t =>
                day.DayNumber - t.Inspections.Max(i => i.Day).DayNumber
                > NurseryPractice.Days(NurseryPractice.LastLook)
            )
                is { } old
                ? $"Look at {old.Number} once more: its last look is too old."
            : null;
    }

    /// <summary>Clean looks at a tray since the clock started, one a day counted.</summary>
    private int Clean(PlantTray tray) =>
        tray
            .Inspections.Where(i => i.Day > Started && i.Found.Length == 0)
            .Select(i => i.Day)
            .Distinct()
            .Count();

    private static string Times(int count) =>
        count switch
        {
            0 => "not once",
            1 => "once",
            _ => FormattableString.Invariant($"{count} times"),
        };
}
