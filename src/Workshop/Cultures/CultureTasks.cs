using System.Globalization;
using Litterfall.Domain.Cultures;
using Litterfall.Domain.Schedule;
using Litterfall.Quantities.Measures;

namespace Litterfall.Workshop.Cultures;

/// <summary>What is to be done at the culture shelf on the days of a span.</summary>
public static class CultureTasks
{
    // Minutes are our own choice, until worked hours say better.
    private const double MinutesToFeed = 2;
    private const double MinutesToLook = 1;
    private const double MinutesPerCup = 6;
    private const double MinutesPerFlyCup = 5;
    private const string Page = "/cultures";
    private const string FeedKey = "culture-feed-";

    /// <summary>Days of the week on which fly cups are started.</summary>
    public static IReadOnlyList<DayOfWeek> FlyDays { get; } = [DayOfWeek.Sunday, DayOfWeek.Wednesday];

    /// <summary>The tasks, by days; what is late stands on the first day.</summary>
    /// <param name="book">The shelf.</param>
    /// <param name="first">First day.</param>
    /// <param name="until">Last day.</param>
    /// <param name="orderName">Number of an order as people read it.</param>
    public static IReadOnlyList<DayTask> Find(
        CultureBook book,
        DateOnly first,
        DateOnly until,
        Func<int, string> orderName
    ) =>
        [
            .. Rounds(book, first, until)
                .Concat(Splits(book, first, until, orderName))
                .Concat(Goes(book, first, until, orderName))
                .Concat(Flies(book, first, until))
                .Concat(Old(book, first, until))
                .Concat(Powders(book, first, until))
                .OrderBy(t => t.Day)
                .ThenBy(t => t.Key, StringComparer.Ordinal),
        ];

    /// <summary>True for a round of feeding.</summary>
    public static bool IsFeeding(DayTask task) => task.Key.StartsWith(FeedKey, StringComparison.Ordinal);

    private static IEnumerable<DayTask> Rounds(CultureBook book, DateOnly first, DateOnly until)
    {
        var crew = book.Standing.Where(c => book.Kind(c.Species) is not null).ToList();
        var feed = CulturePractice.Days(CulturePractice.FeedEvery);
        var look = CulturePractice.Days(CulturePractice.LookEvery);
        foreach (var shelf in book.Shelves)
        {
            var here = crew.Where(c => c.Shelf == shelf.Key).ToList();
            foreach (var (day, due) in Due(here, c => c.LastFed.AddDays(feed), feed, first, until))
            {
                yield return Task(
                    $"{FeedKey}{shelf.Key}-{day:yyyyMMdd}",
                    day,
                    $"Feed {NumberText.Count(due.Count, "culture", "cultures")} on {shelf.Name}",
                    $"{Numbers(due)}. Only what is gone by the next time; those on hold last.",
                    MinutesToFeed * due.Count
                ) with
                {
                    Subjects = [.. due.Select(c => c.Number)],
                };
            }

            foreach (var (day, due) in Due(here, c => c.LastLook.AddDays(look), look, first, until))
            {
                yield return Task(
                    $"culture-look-{shelf.Key}-{day:yyyyMMdd}",
                    day,
                    $"Look at {NumberText.Count(due.Count, "culture", "cultures")} on {shelf.Name}",
                    $"{Numbers(due)}. Smell, damp, mold, mites under the lens; count one of each line.",
                    MinutesToLook * due.Count
                ) with
                {
                    Subjects = [.. due.Select(c => c.Number)],
                };
            }
        }
    }

    /// <summary>Days on which something is due again, those that are late on the first.</summary>
    private static IEnumerable<(DateOnly Day, List<Culture> Due)> Due(
        List<Culture> cultures,
        Func<Culture, DateOnly> next,
        int every,
        DateOnly first,
        DateOnly until
    ) =>
        cultures
            .SelectMany(c =>
                Enumerable
                    .Range(
                        0,
                        Math.Max(0, (until.DayNumber - Later(next(c), first).DayNumber + every) / every)
                    )
                    .Select(i => (Day: Later(next(c), first).AddDays(i * every), Culture: c))
            )
            .Where(d => d.Day <= until)
            .GroupBy(d => d.Day, d => d.Culture)
            .OrderBy(g => g.Key)
            .Select(g => (g.Key, g.ToList()));

    private static IEnumerable<DayTask> Splits(
        CultureBook book,
        DateOnly first,
        DateOnly until,
        Func<int, string> orderName
    ) =>
        from need in book.Shorts
        let order = need.Cover.Need.Order
        from step in need.Plan.Steps
        where step.Day <= until
        select Task(
            string.Create(
                CultureInfo.InvariantCulture,
                $"culture-split-{order.Number}-{step.Mother}-{(step.IsForMothers ? 1 : 2)}"
            ),
            Later(step.Day, first),
            $"Split {step.Mother} into {NumberText.Count(step.Cups, "new cup", "new cups")}",
            $"Line {step.Line}, for {orderName(order.Number)}; about "
                + $"{CultureWords.About(step.AnimalsEach)} animals each. Fresh substrate, new labels.",
            MinutesPerCup * step.Cups
        ) with
        {
            Order = order.Number,
            IsFirm = true,
            Page = $"{Page}/{step.Mother}",
        };

    private static IEnumerable<DayTask> Goes(
        CultureBook book,
        DateOnly first,
        DateOnly until,
        Func<int, string> orderName
    ) =>
        book
            .Covers.Where(c => c.Cups.Length > 0 && c.Need.Day <= until)
            .Select(c =>
                Task(
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"culture-take-{c.Need.Order.Number}-{c.Need.Species}"
                    ),
                    Later(c.Need.Day, first),
                    $"Take {NumberText.Count(c.Cups.Length, "cup", "cups")} of "
                        + $"{book.NameOf(c.Need.Species)} for {orderName(c.Need.Order.Number)}",
                    Numbers(c.Cups)
                        + (
                            c.Missing > 0
                                ? $"; {NumberText.Count(c.Missing, "cup is", "cups are")} missing"
                                : ""
                        ),
                    MinutesToLook * c.Cups.Length
                ) with
                {
                    Order = c.Need.Order.Number,
                    IsFirm = true,
                }
            );

    private static IEnumerable<DayTask> Flies(CultureBook book, DateOnly first, DateOnly until) =>
        from fly in book.Flies
        let name = fly.Kind.Entry.Called?.Text ?? fly.Kind.Entry.Name
        from start in fly.Starts(first, until, FlyDays)
        select Task(
            $"fly-start-{fly.Kind.Entry.Key}-{start.Day:yyyyMMdd}",
            start.Day,
            $"Start {NumberText.Count(start.Cups, "cup", "cups")} of {name}",
            fly.LeadDays is { } days
                ? $"Flies to feed from {NumberText.Day(start.Day.AddDays(days))} on. Two strains, kept apart."
                : "The shelf is too cold: no flies will come.",
            MinutesPerFlyCup * start.Cups
        ) with
        {
            IsFirm = true,
        };

    private static IEnumerable<DayTask> Old(CultureBook book, DateOnly first, DateOnly until)
    {
        var age = CulturePractice.Days(FlyPractice.Discard);
        return book
            .Standing.Where(c => book.Kind(c.Species) is null)
            .GroupBy(c => Later(c.Since.AddDays(age), first))
            .Where(g => g.Key <= until)
            .OrderBy(g => g.Key)
            .Select(g =>
                Task(
                    $"fly-discard-{g.Key:yyyyMMdd}",
                    g.Key,
                    $"Throw away {NumberText.Count(g.Count(), "old fly cup", "old fly cups")}",
                    $"{Numbers(g)}. Open outside: carbon dioxide and ammonia.",
                    MinutesToLook * g.Count()
                )
            );
    }

    private static IEnumerable<DayTask> Powders(CultureBook book, DateOnly first, DateOnly until)
    {
        for (var day = first; day <= until; day = day.AddDays(1))
        {
            var due = book
                .Fed.Where(f => f.IsHere(day))
                .Select(f => RationTable.For(f, book.Catalog))
                .Where(r => r.HasVitamins(day))
                .Select(r => r.Group.Tank)
                .ToList();
            if (due.Count > 0)
            {
                yield return Task(
                    $"vitamins-{day:yyyyMMdd}",
                    day,
                    $"Vitamin A with the food: {NumberText.Count(due.Count, "tank", "tanks")}",
                    $"{string.Join(", ", due)}. Dust what is eaten in half an hour; more is not better.",
                    MinutesToLook * due.Count
                ) with
                {
                    Kind = TaskKind.Care,
                };
            }
        }
    }

    private static DayTask Task(string key, DateOnly day, string title, string detail, double minutes) =>
        new()
        {
            Key = key,
            Day = day,
            Kind = TaskKind.Culture,
            Title = title,
            Detail = detail,
            Minutes = minutes,
            Page = Page,
        };

    private static string Numbers(IEnumerable<Culture> cultures) =>
        string.Join(", ", cultures.Select(c => c.Number));

    private static DateOnly Later(DateOnly a, DateOnly b) => a > b ? a : b;
}
