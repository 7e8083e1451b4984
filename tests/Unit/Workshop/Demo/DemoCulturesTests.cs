using Litterfall.Domain.Schedule;
using Litterfall.Workshop.Cultures;
using Litterfall.Workshop.Demo;
using Litterfall.Workshop.Nursery;
using Litterfall.Workshop.Stock;

namespace Litterfall.UnitTests.Workshop.Demo;

/// <summary>
/// The culture shelf of the scenario: line C thrown away for mites leaves order 204 three cups short.
/// </summary>
public sealed class DemoCulturesTests
{
    private static readonly DateOnly Scene = new(2026, 9, 3);
    private static readonly Lazy<(DemoBook Demo, CultureBook Cultures, NurseryBook Plants)> Made = new(Make);

    private static (DemoBook, CultureBook, NurseryBook) Make()
    {
        var demo = DemoBookTests.Demo(Scene);
        var supply = DemoBookTests.Supply();
        var stock = StockBook.Empty.With(demo.Lots, demo.Lines.Select((l, i) => l with { Id = i + 1 }));
        var open = demo.Orders.Where(o => o.IsOpen).ToList();
        var items = open.SelectMany(o =>
            o.Items.Select(i =>
                (Order: o, Item: i, Shape: supply.Designs.First(d => d.Order == o.Number).Numbers)
            )
        );
        var cultures = new CultureBook(
            demo.Cultures,
            demo.Shelves,
            demo.Fed,
            items.SelectMany(i =>
                CultureNeed.FromItem(i.Order, i.Item, i.Shape, null, (supply.Catalog, new ShopCalendar()))
            ),
            (supply.Catalog, stock, Scene)
        );
        var plants = new NurseryBook(
            demo.Trays,
            demo.Benches,
            demo.Mothers,
            items.SelectMany(i => PlantNeed.FromItem(i.Order, i.Item, i.Shape, null, supply.Catalog)),
            (supply.Catalog, stock, Scene)
        );
        return (demo, cultures, plants);
    }

    /// <summary>Nineteen cups in four lines, six tubs in two; three shelves.</summary>
    [Fact]
    public void The_shelves_stand_as_told()
    {
        var (demo, book, _) = Made.Value;
        Assert.Equal(3, demo.Shelves.Length);
        var cups = demo.Cultures.Where(c => c.Species == "folsomia-candida").ToList();
        Assert.Equal((19, 4), (cups.Count, cups.Select(c => c.Line).Distinct().Count()));
        var tubs = demo.Cultures.Where(c => c.Species == "trichorhina-tomentosa").ToList();
        Assert.Equal((6, 2), (tubs.Count, tubs.Select(c => c.Line).Distinct().Count()));
        Assert.Equal(14, book.Standing.Count(c => c.Species == "folsomia-candida"));
        foreach (var shelf in demo.Shelves)
        {
            var at = book.Standing.Where(c => c.Shelf == shelf.Key).Select(c => (c.Board, c.Place)).ToList();
            Assert.Equal(at.Count, at.Distinct().Count());
        }
    }

    /// <summary>
    /// Eight kits need a cup each. Two cups of lines A, B and D each stay as backup and two were started for
    /// the museum; of the other six one goes to order 201, so three are missing: those that line C had.
    /// </summary>
    [Fact]
    public void The_loss_of_line_C_leaves_order_204_three_cups_short()
    {
        var book = Made.Value.Cultures;
        var kits = book.Covers.Single(c => c.Need.Order.Number == 204);
        Assert.Equal((8, 3), (kits.Need.Cups, kits.Missing));
        var lost = Assert.Single(book.LostWith("folsomia-candida", "C"));
        Assert.Equal((204, 3), (lost.Cover.Need.Order.Number, lost.Lost));
        // Twenty days are enough to make them from the backups.
        Assert.True(book.Shorts.Single(s => s.Cover.Need.Order.Number == 204).Plan.IsPossible);
        Assert.Equal(
            0,
            book.Covers.Single(c =>
                c.Need.Order.Number == 203 && c.Need.Species == "folsomia-candida"
            ).Missing
        );
    }

    /// <summary>No cups were started in the week of the fair: flies run out twelve days later.</summary>
    [Fact]
    public void The_week_of_the_fair_is_a_famine_ahead()
    {
        var famine = Made.Value.Cultures.Flies.Single(f => f.Days[0].Needed > 0).Famine!;
        Assert.InRange(famine.Day, Scene, Scene.AddDays(10));
        Assert.True(famine.StartBy < Scene);
    }

    [Fact]
    public void A_week_has_its_tasks()
    {
        var (_, cultures, plants) = Made.Value;
        var until = Scene.AddDays(27);
        var tasks = CultureTasks.Find(cultures, Scene, until, n => $"LD-{n}");
        Assert.All(tasks, t => Assert.InRange(t.Day, Scene, until));
        Assert.Equal(tasks.Count, tasks.Select(t => t.Key).Distinct().Count());
        Assert.Contains(tasks, t => t.Key.StartsWith("culture-feed", StringComparison.Ordinal));
        Assert.Contains(tasks, t => t.Key.StartsWith("culture-split-204", StringComparison.Ordinal));
        Assert.Contains(tasks, t => t.Key.StartsWith("fly-start", StringComparison.Ordinal));
        var green = NurseryTasks.Find(plants, Scene, until);
        Assert.Contains(green, t => t.Title.StartsWith("Inspect 2 trays", StringComparison.Ordinal));
        Assert.Contains(green, t => t.Title.StartsWith("Pot ", StringComparison.Ordinal));
        Assert.Contains(green, t => t.Key.StartsWith("nursery-release", StringComparison.Ordinal));
    }

    /// <summary>Both trays came twelve days ago: out together after thirty.</summary>
    [Fact]
    public void Plants_are_kept_apart_and_their_losses_known()
    {
        var plants = Made.Value.Plants;
        Assert.Equal(Scene.AddDays(18), plants.Clock("quarantine-box")!.Ends);
        var loss = plants.Suppliers.Single().Loss;
        // 1 of 12, 3 of 10, 0 of 8 and a prior of 2 in 20: 6 of 50.
        Assert.Equal(6.0 / 50, loss.Mean, 1e-12);
    }
}
