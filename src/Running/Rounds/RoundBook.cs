using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain.Tanks;
using Litterfall.Quantities.Measures;

namespace Litterfall.Running.Rounds;

/// <summary>Who needs what, in walking order.</summary>
public sealed class RoundBook
{

    /// <summary>The round of a day.</summary>
    /// <param name="tanks">Tanks in walking order.</param>
    /// <param name="findings">What loggers and logs found of late.</param>
    /// <param name="today">The day.</param>
    public RoundBook(ImmutableArray<RoundTank> tanks, ImmutableArray<RoundFinding> findings, DateOnly today)
    {
        Today = today;
        Tanks = tanks;
        Findings = [.. findings.Where(f => Age(f.Day) is >= 0 and <= RoundPractice.DaysOfFindings)];
        All = [.. tanks.SelectMany(Needs)];
    }

    /// <summary>The day.</summary>
    public DateOnly Today { get; }

    /// <summary>Tanks in walking order.</summary>
    public ImmutableArray<RoundTank> Tanks { get; }

    /// <summary>Findings of the last days, those of no tank too.</summary>
    public ImmutableArray<RoundFinding> Findings { get; }

    /// <summary>All that comes, tank by tank in walking order, the nearest first in each.</summary>
    public ImmutableArray<RoundItem> All { get; }

    /// <summary>What is due today, in walking order.</summary>
    public ImmutableArray<RoundItem> DueNow => [.. All.Where(i => i.On(Today) != RoundWeight.Later)];

    /// <summary>What is due in one tank.</summary>
    /// <param name="tank">Number of the tank.</param>
    public IEnumerable<RoundItem> For(string tank) => DueNow.Where(i => i.Tank == tank);

    private int Age(DateOnly day) => Today.DayNumber - day.DayNumber;

    private IEnumerable<RoundItem> Needs(RoundTank tank) =>
        Wrong(tank)
            .Concat(Water(tank))
            .Concat(RoundPractice.Habits.Select(h => Habit(tank, h)))
            .Concat(Watched(tank))
            .OrderBy(i => i.Due)
            .ThenBy(i => i.Task, StringComparer.Ordinal);

    /// <summary>Findings that nobody looked at since.</summary>
    private IEnumerable<RoundItem> Wrong(RoundTank tank)
    {
        var seen = LastDay(tank, _ => true);
        return Findings
            .Where(f => f.Tank == tank.Tank.Code && (seen is null || seen <= f.Day))
            .Select(f =>
                Item(tank, RoundPractice.Look, "Look at the tank and its animals", f.Words) with
                {
                    Due = f.Day,
                    IsFinding = true,
                }
            );
    }

    private IEnumerable<RoundItem> Water(RoundTank tank)
    {
        if (tank.Outlook is not { } outlook)
        {
            yield break;
        }

        var state = DrainState.Find(tank.Lines, outlook, tank.Tank.Since, Today);
        if (state.Due is { } due)
        {
            yield return Item(tank, RoundPractice.Drain, "Draw water off", Levels(state, outlook)) with
            {
                Due = due,
                Writes = CareKind.Drained,
                AsksAmount = true,
                Expected = Math.Round(state.Milliliters / 50) * 50,
                Patience = 3,
            };
        }

        var read = state.Read ?? tank.Tank.Since;
        yield return Item(
            tank,
            RoundPractice.Level,
            "Read the level",
            state.Read is { } last ? $"last read {NumberText.Day(last)}" : "never read"
        ) with
        {
            Due = read.AddDays(tank.LevelCheckDays),
            Writes = CareKind.Level,
            AsksAmount = true,
        };
    }

    private static string Levels(DrainState state, DrainOutlook outlook)
    {
        var plain = CultureInfo.InvariantCulture;
        var now = state.LevelMillimeters > outlook.LimitMillimeters
            ? "over"
            : string.Create(plain, $"about {state.LevelMillimeters:0} of");
        var by = state.IsMeasured ? "own readings" : "design";
        return string.Create(plain, $"{now} {outlook.LimitMillimeters:0} mm, by its {by}");
    }

    private static RoundItem Habit(RoundTank tank, RoundHabit habit)
    {
        var last = LastDay(tank, l => IsOf(l, habit));
        return Item(
            tank,
            habit.Task,
            habit.What,
            last is { } day ? $"last {NumberText.Day(day)}; {habit.Why}" : $"not yet; {habit.Why}"
        ) with
        {
            Due = (last ?? tank.Tank.Planted ?? tank.Tank.Since).AddDays(habit.Days),
            Writes = habit.Task is "litter" or "crew" ? CareKind.Added : CareKind.Tended,
            Patience = habit.Days / 4,
        };
    }

    private static bool IsOf(CareEntry line, RoundHabit habit) =>
        line.Task == habit.Task
        || line.Task.Length == 0
            && line.Kind is CareKind.Added or CareKind.Tended
            && habit.Words.Any(w => line.Note.Contains(w, StringComparison.OrdinalIgnoreCase));

    private IEnumerable<RoundItem> Watched(RoundTank tank)
    {
        if (tank.QuarantineEnds is { } ends && ends >= Today)
        {
            var last = LastDay(tank, l => l.Task == RoundPractice.Quarantine);
            yield return Item(
                tank,
                RoundPractice.Quarantine,
                "Look at the animals in quarantine, last of all, with their own tools",
                $"in quarantine until {NumberText.Day(ends)}"
            ) with
            {
                Due = (last ?? Today.AddDays(-RoundPractice.QuarantineLookDays)).AddDays(
                    RoundPractice.QuarantineLookDays
                ),
            };
        }

        var seen = LastDay(tank, _ => true) ?? tank.Tank.Since;
        yield return Item(
            tank,
            RoundPractice.Look,
            "Look at the tank",
            $"nothing is written since {NumberText.Day(seen)}"
        ) with
        {
            Due = seen.AddDays(RoundPractice.DaysUnseen),
        };
    }

    private static DateOnly? LastDay(RoundTank tank, Func<CareEntry, bool> which) =>
        tank.Lines.LastOrDefault(which) is { } line ? DateOnly.FromDateTime(line.At) : null;

    private static RoundItem Item(RoundTank tank, string task, string what, string why) =>
        new()
        {
            Tank = tank.Tank.Code,
            Task = task,
            What = what,
            Why = why,
            Due = tank.Tank.Since,
            Writes = CareKind.Note,
        };
}
