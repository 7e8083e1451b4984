using System.Globalization;
using Litterfall.Domain.Cutting;
using Litterfall.Domain.Schedule;

namespace Litterfall.Workshop.CuttingRoom;

/// <summary>Which sheets are cut on which day.</summary>
public static class CuttingTasks
{
    /// <summary>Days before the promised one on which parts are cut where no plan of days says so.</summary>
    private const int DaysAhead = 7;

    /// <summary>Tasks of a span of days; what is late falls on its first day.</summary>
    /// <param name="jobs">All plans.</param>
    /// <param name="waiting">What no plan holds yet, by material.</param>
    /// <param name="span">First and last day.</param>
    /// <param name="days">Days of orders as they are planned, by number; empty for none.</param>
    /// <param name="minutesPerPart">Minutes a part takes.</param>
    public static IEnumerable<DayTask> Find(
        IEnumerable<CuttingJob> jobs,
        IEnumerable<CutMaterial> waiting,
        (DateOnly First, DateOnly Last) span,
        IReadOnlyDictionary<int, OrderDays> days,
        double minutesPerPart
    )
    {
        var cut = jobs.Where(j => j.State == CuttingJobState.Planned)
            .Select(j => ToCut(j, DayOf(j, days, span.First), minutesPerPart));
        var plan = waiting
            .Where(m => m.Rules.IsCutHere && m.Count > m.Oversize.Sum(o => o.Part.Count))
            .Select(m => ToPlan(m, DayOf(m, days, span.First)));
        return cut.Concat(plan)
            .Where(t => t.Day >= span.First && t.Day <= span.Last)
            .OrderBy(t => t.Day)
            .ThenBy(t => t.Key, StringComparer.Ordinal);
    }

    private static DayTask ToCut(CuttingJob job, DateOnly day, double minutesPerPart)
    {
        var totals = JobTotals.Read(job);
        var sheets = job.Plan.Sheets.Count;
        var from = string.Join(", ", totals.Pull.Select(p => p.Source.Name).Distinct(StringComparer.Ordinal));
        return new()
        {
            Key = string.Create(CultureInfo.InvariantCulture, $"cutting-{job.Number}"),
            Day = day,
            Kind = TaskKind.Cutting,
            Title = string.Create(
                CultureInfo.InvariantCulture,
                $"Cut {Count(job.Pieces.Count, "part")} of {job.Name} (plan {job.Number})"
            ),
            Detail = $"{Count(sheets, "sheet")}: {from}",
            Minutes = job.Pieces.Count * minutesPerPart,
            Order = Only(job),
            Stage = "cut",
            Page = string.Create(CultureInfo.InvariantCulture, $"/table/{job.Number}"),
        };
    }

    private static DayTask ToPlan(CutMaterial material, DateOnly day) =>
        new()
        {
            Key = $"cutting-plan-{material.Key}",
            Day = day,
            Kind = TaskKind.Cutting,
            Title = $"Plan the cutting of {Count(material.Count, "part")} of {material.Name}",
            Minutes = 5,
            Page = "/table",
        };

    /// <summary>An order's own task where a plan is for one order alone.</summary>
    private static int? Only(CuttingJob job)
    {
        var orders = job.Pieces.Select(p => p.Order).Distinct().ToList();
        return orders.Count == 1 ? orders[0] : null;
    }

    private static DateOnly DayOf(CuttingJob job, IReadOnlyDictionary<int, OrderDays> days, DateOnly first) =>
        Earliest(
            job.Pieces.Select(p => p.Order is { } order ? days.GetValueOrDefault(order)?.Cut : null),
            job.Wanted,
            first
        );

    private static DateOnly DayOf(
        CutMaterial material,
        IReadOnlyDictionary<int, OrderDays> days,
        DateOnly first
    ) =>
        Earliest(
            material.Parts.Select(p => p.Order is { } order ? days.GetValueOrDefault(order)?.Cut : null),
            material.Parts.Min(p => p.Day),
            first
        );

    private static DateOnly Earliest(IEnumerable<DateOnly?> planned, DateOnly? promised, DateOnly first)
    {
        var day = planned.Min() ?? promised?.AddDays(-DaysAhead) ?? first;
        return day < first ? first : day;
    }

    private static string Count(int count, string one) =>
        count == 1 ? $"1 {one}" : string.Create(CultureInfo.InvariantCulture, $"{count} {one}s");
}
