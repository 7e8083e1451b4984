using Litterfall.App.Files;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Checking;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Stock;
using Litterfall.Domain.Trade;
using Litterfall.Forecasting;
using Litterfall.UnitTests.House;
using Litterfall.Workshop.Demo;
using Litterfall.Workshop.Stock;

namespace Litterfall.UnitTests.Workshop.Demo;

/// <summary>The invented workshop holds together: what it says of itself can be added up.</summary>
public sealed class DemoBookTests
{
    private static readonly Lazy<DemoBook> Book = new(() => Demo(new DateOnly(2027, 3, 4)));

    internal static DemoBook Demo(DateOnly day) => DemoBook.Create(Supply(), day);

    internal static DemoSupply Supply()
    {
        var catalog = Shop.Embedded();
        (int, string)[] files =
        [
            (201, "ld-201-flat"),
            (202, "ld-202-waiting-room"),
            (203, "ld-203-museum-foyer"),
            (204, "ld-204-shop-kits"),
            (205, "ld-205-attic"),
        ];
        return new DemoSupply(catalog, [.. files.Select(f => Design(catalog, f.Item1, f.Item2))]);
    }

    private static DemoDesign Design(TradeCatalog catalog, int order, string file)
    {
        var text = File.ReadAllText(SourceTree.Path($"samples/{file}.viv.yaml"));
        var document = DesignReader.Read(file, text).Value!;
        var bare = document.Design.Workshop is null
            ? document
            : DesignEdits.Remove(document, "workshop").Value!;
        var good = DesignChecker.Check(bare, catalog).Value!;
        return new DemoDesign(
            order,
            new Guid(order, 0, 0, new byte[8]),
            1,
            good.Design.Name,
            DesignNumbers.Shape(good)
        );
    }

    [Fact]
    public void Five_orders_are_open_and_forty_are_closed()
    {
        Assert.Equal(40, Book.Value.Orders.Count(o => o.State == OrderState.Closed));
        Assert.Equal(
            [201, 202, 203, 204, 205],
            Book.Value.Orders.Where(o => o.State != OrderState.Closed).Select(o => o.Number)
        );
        Assert.Equal(Enumerable.Range(1, 44), Book.Value.Quotes.Select(q => q.Number));
        Assert.Equal(
            Enumerable.Range(1, 40),
            Book.Value.Papers.Where(p => p.Kind == IssuedKind.Invoice).Select(p => p.Number)
        );
    }

    [Fact]
    public void Every_line_passes_the_gate_of_the_stock()
    {
        var lots = Book.Value.Lots.ToDictionary(l => l.Id, StringComparer.Ordinal);
        var states = new Dictionary<string, LotState>(StringComparer.Ordinal);
        foreach (var line in Book.Value.Lines)
        {
            var state = states.GetValueOrDefault(line.Lot);
            Assert.Null(StockGate.Refusal(lots[line.Lot], state, line));
            states[line.Lot] = state.After(line);
        }
    }

    [Fact]
    public void The_shelves_hold_what_the_scenario_says()
    {
        var book = StockBook.Empty.With(
            Book.Value.Lots,
            Book.Value.Lines.Select((line, i) => line with { Id = i + 1 })
        );
        double OnHand(string good) => book.OnHand(good);
        Assert.Equal(110, OnHand("expanded-clay-8-16"), 1e-6);
        Assert.Equal(74, OnHand("fine-bark"), 1e-6);
        Assert.Equal(22, OnHand("charcoal"), 1e-6);
        Assert.Equal(31, OnHand("tree-fern-fibre"), 1e-6);
        Assert.Equal(1.5 * 215, OnHand("peat"), 1e-6);
        Assert.Equal(46, OnHand("oak-leaves"), 1e-6);
        // Nineteen cups of four lines stood; the five of line C were discarded for mites.
        Assert.Equal(19 - 5, OnHand("folsomia-candida"), 1e-6);
        Assert.Equal(6, OnHand("trichorhina-tomentosa"), 1e-6);
    }

    [Fact]
    public void Wholesale_keeps_its_floor_and_nothing_lacks_a_price()
    {
        foreach (var quote in Book.Value.Quotes)
        {
            var margin = quote.Customer.IsWholesale ? 0.20m : 0.38m;
            Assert.All(quote.Options, o =>
            {
                Assert.Equal(o.Gross, o.Net + o.Tax);
                Assert.InRange(
                    (o.Net - o.Cost.Total - o.Cost.Fee) / o.Net,
                    margin - 0.0005m,
                    margin + 0.0005m
                );
                Assert.DoesNotContain(o.Goods, g => g.Cost is null && g.Amount > 0);
            });
        }
    }

    [Fact]
    public void The_scenario_is_moved_by_whole_weeks()
    {
        var promised = Book.Value.Orders.First(o => o.Number == 201).Promised!.Value;
        Assert.Equal(DayOfWeek.Friday, promised.DayOfWeek);
        Assert.Equal(0, (promised.DayNumber - new DateOnly(2026, 10, 16).DayNumber) % 7);
        Assert.True(promised > new DateOnly(2027, 3, 4));
    }

    /// <summary>
    /// On the Thursday of the scenario the tenant's box is planted a day later and grows in for six weeks,
    /// until its promised Friday. The museum's glass needs 12 working days, and its plants come too late.
    /// </summary>
    [Fact]
    public void The_plan_keeps_the_tenants_day_and_says_what_the_museum_waits_for()
    {
        var plan = Book.Value.Plan;
        var tenant = plan.Find(201)!;
        Assert.Equal(new DateOnly(2027, 3, 5), tenant.Days.Plant);
        Assert.Equal(tenant.Promised, tenant.Days.Arrive);
        var museum = plan.Find(203)!;
        Assert.True(museum.Days.Cut >= new DateOnly(2027, 3, 17));
        Assert.Contains("earliest honest date", museum.Blocker, StringComparison.Ordinal);
        Assert.NotNull(plan.Find(204));
        Assert.Equal(203, Assert.Single(plan.Moves).Order);
        Assert.All(Book.Value.Calendar.Holidays, h => Assert.Equal(DayOfWeek.Thursday, h.Day.DayOfWeek));
    }
}
