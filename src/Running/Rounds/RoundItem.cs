using System.Collections.Immutable;
using Litterfall.Domain.Tanks;

namespace Litterfall.Running.Rounds;

/// <summary>How much something of the round presses.</summary>
public enum RoundWeight
{
    /// <summary>It comes, and can wait.</summary>
    Later,

    /// <summary>It is due.</summary>
    Due,

    /// <summary>It is late, or something is wrong.</summary>
    Late,
}

/// <summary>Something that a tank needs.</summary>
public sealed record RoundItem
{
    /// <summary>Number of the tank.</summary>
    public required string Tank { get; init; }

    /// <summary>Its word in logs and reminders.</summary>
    public required string Task { get; init; }

    /// <summary>What to do.</summary>
    public required string What { get; init; }

    /// <summary>Why now, in a clause.</summary>
    public required string Why { get; init; }

    /// <summary>Day it is due.</summary>
    public required DateOnly Due { get; init; }

    /// <summary>Line of the log that says it is done.</summary>
    public required CareKind Writes { get; init; }

    /// <summary>True where the line needs a number: a level, an amount.</summary>
    public bool AsksAmount { get; init; }

    /// <summary>Amount that is expected, in the unit of the kind; null for none.</summary>
    public double? Expected { get; init; }

    /// <summary>How much it presses on a day.</summary>
    /// <param name="today">The day.</param>
    public RoundWeight On(DateOnly today) =>
        IsFinding ? RoundWeight.Late
        : Due > today ? RoundWeight.Later
        : today.DayNumber - Due.DayNumber > Patience ? RoundWeight.Late
        : RoundWeight.Due;

    /// <summary>Its rank among things that press alike: water first.</summary>
    public int Rank =>
        Task switch
        {
            RoundPractice.Drain => 0,
            RoundPractice.Quarantine => 1,
            RoundPractice.Level => 2,
            RoundPractice.Look => 3,
            _ => 4,
        };

    /// <summary>True where something is wrong already.</summary>
    public bool IsFinding { get; init; }

    /// <summary>Days it may wait before it is late.</summary>
    public int Patience { get; init; } = 7;
}

/// <summary>What a logger or a log found in a tank.</summary>
/// <param name="Tank">Number of the tank, or of what else the logger hangs in.</param>
/// <param name="Day">Last day of it.</param>
/// <param name="Words">In one sentence.</param>
public sealed record RoundFinding(string Tank, DateOnly Day, string Words);

/// <summary>A tank with all that the round looks at.</summary>
/// <param name="Tank">The tank.</param>
/// <param name="Lines">Lines of its log that count, in the order of time.</param>
/// <param name="Outlook">Its forecast; null where nothing is drawn off, or nothing is known.</param>
public sealed record RoundTank(Tank Tank, ImmutableArray<CareEntry> Lines, DrainOutlook? Outlook)
{
    /// <summary>Days between readings of the level.</summary>
    public int LevelCheckDays { get; init; } = 7;

    /// <summary>End of quarantine of what is in it; null where nothing is in quarantine.</summary>
    public DateOnly? QuarantineEnds { get; init; }
}
