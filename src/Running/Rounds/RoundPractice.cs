using System.Collections.Immutable;

namespace Litterfall.Running.Rounds;

/// <summary>Something that comes back on the round every so many days.</summary>
/// <param name="Task">Its word in logs.</param>
/// <param name="What">What to do.</param>
/// <param name="Days">Days between.</param>
/// <param name="Words">Words of a log that say it was done.</param>
/// <param name="Why">Where the days come from.</param>
public sealed record RoundHabit(string Task, string What, int Days, ImmutableArray<string> Words, string Why);

/// <summary>Habits of the round: common practice of keepers, no source.</summary>
public static class RoundPractice
{
    /// <summary>Task of reading the level.</summary>
    public const string Level = "level";

    /// <summary>Task of drawing water off.</summary>
    public const string Drain = "drain";

    /// <summary>Task of looking at a tank.</summary>
    public const string Look = "look";

    /// <summary>Task of looking at animals in quarantine.</summary>
    public const string Quarantine = "quarantine";

    /// <summary>Days after which a tank that nobody wrote of is named.</summary>
    public const int DaysUnseen = 10;

    /// <summary>Days for which an excursion of the air stays on the round.</summary>
    public const int DaysOfFindings = 14;

    /// <summary>Days between looks at animals in quarantine.</summary>
    public const int QuarantineLookDays = 7;

    /// <summary>
    /// What comes back by the calendar. Litter every 3 to 6 months, crew every 6 to 12, trimming every 4 to 8
    /// weeks, lamps yearly: common practice, no source; a middle is taken.
    /// </summary>
    public static ImmutableArray<RoundHabit> Habits { get; } =
    [
        new("litter", "Top up leaf litter to 2 cm", 120, ["leaves", "leaf", "litter"], "every 3 to 6 months"),
        new(
            "crew",
            "Add springtails and isopods, or count a trap first",
            273,
            ["springtail", "isopod", "crew"],
            "every 6 to 12 months"
        ),
        new("trim", "Trim, never more than a third of a plant", 56, ["trim"], "every 4 to 8 weeks"),
        new("lamp", "Check the lamp's light and clean its cover", 364, ["lamp", "light"], "yearly"),
    ];
}
