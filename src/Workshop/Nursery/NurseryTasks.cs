using System.Globalization;
using Litterfall.Domain.Nursery;
using Litterfall.Domain.Schedule;
using Litterfall.Quantities.Measures;

namespace Litterfall.Workshop.Nursery;

/// <summary>What is to be done with plants on the days of a span.</summary>
public static class NurseryTasks
{
    // Minutes are our own choice, until worked hours say better.
    private const double MinutesPerTray = 4;
    private const double MinutesPerDip = 15;
    private const double MinutesPerPlant = 2;

    /// <summary>The tasks, by days; what is late stands on the first day.</summary>
    /// <param name="book">The nursery.</param>
    /// <param name="from">First day.</param>
    /// <param name="until">Last day.</param>
    public static IReadOnlyList<DayTask> Find(NurseryBook book, DateOnly from, DateOnly until)
    {
        DayTask OnDay(DayTask task) => task.Day < from ? task with { Day = from } : task;
        return
        [
            .. Looks(book)
                .Concat(Dips(book))
                .Concat(Pots(book))
                .Concat(Releases(book))
                .Concat(Cuts(book))
                .Select(OnDay)
                .Where(t => t.Day <= until)
                .OrderBy(t => t.Day)
                .ThenBy(t => t.Key, StringComparer.Ordinal),
        ];
    }

    private static IEnumerable<DayTask> Looks(NurseryBook book) =>
        from bench in book.Benches
        let clock = book.Clock(bench.Key)
        where clock is not null
        from due in clock.Trays.GroupBy(clock.NextLook)
        where due.Key is not null
        select Task(
            $"nursery-look-{bench.Key}-{due.Key:yyyyMMdd}",
            due.Key ?? clock.Ends,
            $"Inspect {NumberText.Count(due.Count(), "tray", "trays")} in quarantine on {bench.Name}",
            (
                Numbers(due) + ". Lens on leaves and stems, knock one plant out and look at its roots.",
                MinutesPerTray * due.Count()
            ),
            "/nursery"
        ) with
        {
            Subjects = [.. due.Select(t => t.Number)],
        };

    private static IEnumerable<DayTask> Dips(NurseryBook book) =>
        book
            .Standing.Where(t => t is { Origin: TrayOrigin.Bought, IsInQuarantine: true, Dips.Count: 0 })
            .Select(t =>
                Task(
                    $"nursery-dip-{t.Number}",
                    t.Since,
                    $"Wash and dip {t.Number}, {book.NameOf(t.Plant)}",
                    (
                        book.IsHardy(t.Plant)
                            ? "Hardy leaves: the full bath. Gloves and goggles."
                            : "Soft leaves: half the bleach, a short time. Gloves and goggles.",
                        MinutesPerDip
                    ),
                    $"/nursery/{t.Number}"
                )
            );

    private static IEnumerable<DayTask> Pots(NurseryBook book) =>
        book
            .Stands.Where(s => s.PotOn is not null && s.Tray.Potted is null)
            .Select(s =>
                Task(
                    $"nursery-pot-{s.Tray.Number}",
                    s.PotOn!.Value,
                    $"Pot {s.Tray.Number}, {book.NameOf(s.Tray.Plant)}",
                    (
                        $"{NumberText.Count(s.Left, "cutting", "cuttings")}; tug at one first: "
                            + "rooted ones hold.",
                        MinutesPerPlant * s.Left
                    ),
                    $"/nursery/{s.Tray.Number}"
                )
            );

    private static IEnumerable<DayTask> Releases(NurseryBook book) =>
        from bench in book.Benches
        let clock = book.Clock(bench.Key)
        where clock is not null
        select Task(
            $"nursery-release-{bench.Key}",
            clock.Ends,
            $"Release {bench.Name}: all trays together",
            (Numbers(clock.Trays), MinutesPerTray * clock.Trays.Length),
            "/nursery"
        );

    private static IEnumerable<DayTask> Cuts(NurseryBook book) =>
        book
            .Covers.Where(c => c.Missing > 0 && c.CutBy >= book.Today && c.CanCut > 0)
            .Select(c =>
                Task(
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"nursery-cut-{c.Need.Order.Number}-{c.Need.Plant}"
                    ),
                    c.CutBy!.Value,
                    $"Take {NumberText.Count(Math.Min(c.Cut, c.CanCut), "cutting", "cuttings")} of "
                        + book.NameOf(c.Need.Plant),
                    ($"for {c.Need.Item}", MinutesPerPlant * Math.Min(c.Cut, c.CanCut)),
                    "/nursery"
                ) with
                {
                    Order = c.Need.Order.Number,
                }
            );

    private static DayTask Task(
        string key,
        DateOnly day,
        string title,
        (string Text, double Minutes) detail,
        string page
    ) =>
        new()
        {
            Key = key,
            Day = day,
            Kind = TaskKind.Nursery,
            Title = title,
            Detail = detail.Text,
            Minutes = detail.Minutes,
            Page = page,
        };

    private static string Numbers(IEnumerable<PlantTray> trays) =>
        string.Join(", ", trays.Select(t => t.Number));
}
