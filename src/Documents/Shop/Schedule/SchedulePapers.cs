using System.Globalization;
using Litterfall.Documents.Drawings;
using Litterfall.Documents.Layout;
using Litterfall.Documents.Papers;
using Litterfall.Domain.Lists;
using Litterfall.Domain.Schedule;

namespace Litterfall.Documents.Shop.Schedule;

/// <summary>What is taken on a day, in words.</summary>
/// <param name="Day">The day.</param>
/// <param name="Hours">Hours of work.</param>
/// <param name="Bench">Places on the shelf.</param>
/// <param name="Quarantine">Places in quarantine.</param>
public sealed record DayLoadText(DateOnly Day, string Hours, string Bench, string Quarantine);

/// <summary>A customer whose day was moved.</summary>
/// <param name="Order">Number of the order.</param>
/// <param name="Customer">Name.</param>
/// <param name="Reach">Mail, telephone.</param>
/// <param name="Was">Day they know.</param>
/// <param name="Now">New day.</param>
/// <param name="Why">Why, in words.</param>
public sealed record TellLine(
    string Order,
    string Customer,
    string Reach,
    DateOnly Was,
    DateOnly Now,
    string Why
);

/// <summary>Papers of the plan: the week, one page per person, customers to tell.</summary>
public static class SchedulePapers
{
    private const string Anybody = "Whoever has time";

    /// <summary>The week: what is taken on each day, and all tasks by days.</summary>
    /// <param name="sheet">What the papers share.</param>
    /// <param name="loads">The days.</param>
    /// <param name="tasks">Tasks of these days.</param>
    public static PaperFile Week(ShopSheet sheet, Seq<DayLoadText> loads, Seq<DayTask> tasks)
    {
        var head = sheet.Head("Week plan", loads.Count > 0 ? $"week of {Day(loads[0].Day)}" : "");
        var taken = Table.Of(
            "Taken",
            (0.28, "day", false),
            (0.24, "hours for orders", false),
            (0.24, "shelf", false),
            (0.24, "quarantine", false)
        );
        foreach (var load in loads)
        {
            taken.Row("", Day(load.Day), load.Hours, load.Bench, load.Quarantine);
        }

        var list = Table.Of(
            "Tasks",
            (0.05, "", false),
            (0.47, "task", false),
            (0.24, "", false),
            (0.14, "who", false),
            (0.1, "min", true)
        );
        foreach (var day in tasks.GroupBy(t => t.Day).OrderBy(g => g.Key))
        {
            list.Group("", Day(day.Key), "", "", "");
            foreach (var task in day)
            {
                list.Tick("", "", task.Title, task.Detail, task.Who, Minutes(task));
            }
        }

        return sheet.Pdf(
            "week-plan.pdf",
            "Week plan",
            PageFrame.Sides(sheet.Size, head, _ =>
                [.. taken.Blocks, .. tasks.Count > 0 ? list.Blocks : [new Words("Nothing is planned.")]]
            )
        );
    }

    /// <summary>One page for each person: their tasks with boxes to tick, and a line for minutes.</summary>
    /// <param name="sheet">What the papers share.</param>
    /// <param name="people">Who works here; each gets a page.</param>
    /// <param name="tasks">Tasks of a day or a week.</param>
    public static PaperFile People(ShopSheet sheet, Seq<string> people, Seq<DayTask> tasks)
    {
        var pages = new List<Drawing>();
        var unnamed = tasks.Any(t => t.Who.Length == 0 || !people.Contains(t.Who));
        foreach (var name in people.Concat(unnamed || people.Count == 0 ? [Anybody] : []))
        {
            Seq<DayTask> own =
            [
                .. tasks.Where(t =>
                    name == Anybody ? t.Who.Length == 0 || !people.Contains(t.Who) : t.Who == name
                ),
            ];
            pages.AddRange(PageFrame.Sides(sheet.Size, sheet.Head(name, Span(tasks)), _ => Person(own)));
        }

        return sheet.Pdf("people.pdf", "Tasks by person", pages);
    }

    private static IReadOnlyList<Block> Person(Seq<DayTask> own)
    {
        if (own.Count == 0)
        {
            return [new Words("Nothing is planned.")];
        }

        var table = Table.Of(
            "",
            (0.05, "", false),
            (0.45, "task", false),
            (0.27, "", false),
            (0.1, "planned", true),
            (0.03, "", false),
            (0.1, "took, min", false)
        );
        foreach (var day in own.GroupBy(t => t.Day).OrderBy(g => g.Key))
        {
            var minutes = day.Sum(t => t.Minutes);
            table.Group("", Day(day.Key), "", minutes > 0 ? Told(minutes) : "", "", "");
            foreach (var task in day)
            {
                table.Tick("", "", task.Title, task.Detail, Minutes(task), "", "______");
            }
        }

        return table.Blocks;
    }

    /// <summary>Customers to tell, with the day they know and the new one.</summary>
    /// <param name="sheet">What the papers share.</param>
    /// <param name="lines">The customers.</param>
    public static PaperFile Tell(ShopSheet sheet, Seq<TellLine> lines)
    {
        var table = Table.Of(
            "",
            (0.05, "", false),
            (0.1, "order", false),
            (0.2, "customer", false),
            (0.21, "reached at", false),
            (0.13, "was", false),
            (0.13, "now", false),
            (0.18, "why", false)
        );
        foreach (var line in lines)
        {
            table.Tick("", "", line.Order, line.Customer, line.Reach, Day(line.Was), Day(line.Now), line.Why);
        }

        return sheet.Pdf(
            "customers-to-tell.pdf",
            "Customers to tell",
            PageFrame.Sides(sheet.Size, sheet.Head("Customers to tell", ""), _ =>
                lines.Count > 0 ? table.Blocks : [new Words("No customer's day has changed.")]
            )
        );
    }

    private static string Span(Seq<DayTask> tasks) =>
        tasks.Count == 0 ? ""
        : tasks.Min(t => t.Day) is var first && tasks.Max(t => t.Day) is var last && first == last
            ? Day(first)
        : $"{Day(first)} to {Day(last)}";

    private static string Minutes(DayTask task) => task.Minutes > 0 ? Told(task.Minutes) : "";

    private static string Told(double minutes) => minutes.ToString("0", CultureInfo.InvariantCulture);

    private static string Day(DateOnly day) => day.ToString("ddd d MMM", CultureInfo.InvariantCulture);
}
