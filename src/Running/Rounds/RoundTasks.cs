using System.Globalization;
using Litterfall.Domain.Schedule;
using Litterfall.Quantities.Measures;

namespace Litterfall.Running.Rounds;

/// <summary>The round as tasks of days: what is alike on a day is one task.</summary>
public static class RoundTasks
{
    // Own choice until worked hours say better.
    private const double MinutesEach = 3;

    /// <summary>Tasks of a span of days; what is late stands on its first day.</summary>
    /// <param name="book">The round.</param>
    /// <param name="from">First day.</param>
    /// <param name="until">Last day.</param>
    public static IReadOnlyList<DayTask> Find(RoundBook book, DateOnly from, DateOnly until) =>
        [
            .. book
                .All.Where(i => i.Due <= until)
                .GroupBy(i => (Day: i.Due < from ? from : i.Due, i.Task, i.What))
                .OrderBy(g => g.Key.Day)
                .ThenBy(g => g.First().Rank)
                .ThenBy(g => g.Key.Task, StringComparer.Ordinal)
                .Select(g => Task(g.Key.Day, g.Key.Task, g.Key.What, [.. g.Select(i => i.Tank)]))
                // One event for one identifier.
                .DistinctBy(t => t.Key),
        ];

    private static DayTask Task(DateOnly day, string task, string what, List<string> tanks) =>
        new()
        {
            Key = string.Create(
                CultureInfo.InvariantCulture,
                $"tanks-{task}-{(tanks.Count == 1 ? tanks[0] : $"{day:yyyyMMdd}")}"
            ),
            Day = day,
            Kind = TaskKind.Care,
            Title =
                tanks.Count == 1 ? $"{what}: {tanks[0]}" : $"{what}: {NumberText.Count(tanks.Count, "tank", "tanks")}",
            Detail = string.Join(", ", tanks),
            Minutes = MinutesEach * tanks.Count,
            Page = "/round",
            IsFirm = task is RoundPractice.Drain or RoundPractice.Quarantine,
        };
}
