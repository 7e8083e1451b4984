using Litterfall.Domain.Schedule;
using Litterfall.Domain.Trade;
using Litterfall.Workshop.Orders;
using Litterfall.Workshop.Quoting;
using Litterfall.Workshop.Scheduling;
using Litterfall.Workshop.Stock;

namespace Litterfall.Workshop.Demo;

/// <summary>The calendar of the invented workshop, and the plan of its accepted orders.</summary>
internal static class DemoPlan
{
    /// <summary>Working days that the museum's glass takes from the day it was ordered.</summary>
    private const int GlassDays = 12;

    private const int Museum = 203;
    private const int Tenant = 201;

    /// <summary>Carriers stop at noon on the day before the holiday in November.</summary>
    private const int Noon = 12;

    private static readonly DateOnly Holiday = new(2026, 11, 26);
    private static readonly DateOnly PlantsCame = new(2026, 8, 3);
    private static readonly DateOnly GlassOrdered = new(2026, 8, 31);

    /// <summary>Two people, a shelf for 14 tanks, a holiday on a Thursday in November.</summary>
    /// <param name="shift">Days by which the scenario is moved.</param>
    public static ShopCalendar Calendar(int shift) =>
        new()
        {
            Holidays = [new Holiday(Holiday.AddDays(shift), "Harvest holiday") { CarrierEndsEveAt = Noon }],
            Workers =
            [
                new Worker(DemoShop.Builder)
                {
                    Hours = [3, 4, 5, 5, 3, 0, 0],
                    Stages = ["build", "background", "plant"],
                },
                new Worker(DemoShop.Bookkeeper)
                {
                    Hours = [5, 6, 4, 4, 3, 0, 0],
                    Stages = ["plan", "cut", "mix", "pack"],
                },
            ],
        };

    /// <summary>
    /// What was done of the tenant's box: its plants came on a Monday in August, and where the Friday of the
    /// scenario is over it is planted.
    /// </summary>
    private static IEnumerable<DoneTask> Done(int shift, DateOnly today)
    {
        DoneTask Mark(string what, DateOnly day, double minutes) =>
            new(FormattableString.Invariant($"order-{Tenant}-{what}"), day, DemoShop.Builder, minutes)
            {
                Order = Tenant,
                Stage = minutes > 0 ? what : null,
            };
        yield return Mark(StageKey.Plants, PlantsCame.AddDays(shift), 0);
        var friday = DemoShop.Scene.AddDays(shift + 1);
        if (today > friday)
        {
            foreach (var (stage, minutes) in new[] { ("mix", 25.0), ("build", 70.0), ("plant", 95.0) })
            {
                yield return Mark(stage, friday, minutes);
            }
        }
    }

    /// <summary>The plan as it is made on the day the demo is filled.</summary>
    /// <param name="book">Orders, stock and goods.</param>
    /// <param name="supply">Numbers of the designs.</param>
    /// <param name="today">The day.</param>
    public static ShopPlan Make(DemoBook book, DemoSupply supply, DateOnly today)
    {
        var glass = WorkDays.After(GlassOrdered.AddDays(DemoShop.Shift(today)), GlassDays);
        var kept = new ShopPlan
        {
            Done = [.. Done(DemoShop.Shift(today), today)],
            Holds =
            [
                new PlanHold(
                    Museum,
                    StageKey.Cut,
                    glass,
                    $"the glass is ordered, needs {GlassDays} working days and comes on "
                        + PlanWords.Day(glass)
                ),
            ],
        };
        var open = book.Orders.Where(o => o.IsOpen).ToList();
        var stock = StockPicture.Read(
            StockBook.Empty.With(book.Lots, book.Lines.Select((l, i) => l with { Id = i + 1 })),
            today
        );
        var shop = new ShopSupply([.. book.Goods], [.. book.Offers], DemoShop.Suppliers, []);
        var awaited = GoodShortage.Awaited(open, stock, shop, today);
        var kinds = book.Goods.ToDictionary(g => g.Key, g => g.Kind, StringComparer.Ordinal);
        var reading = new OrderReading(DemoShop.Terms, kinds, kept, today);
        // Work at the tenant's box has begun: its goods were put aside then.
        var needs = open.Select(o =>
                reading.Read(
                    new OrderFacts(
                        o,
                        [.. o.Items.Select(i => new PricedItem(i, supply.Design(o.Number).Numbers))],
                        (o.Number == Tenant ? null : awaited.GetValueOrDefault(o.Number)) ?? []
                    )
                )
            )
            .ToList();
        var setting = new PlanSetting(book.Calendar, today);
        return PlanUpdate.Next(kept, ShopPlanner.Find(needs, setting), setting, "first plan");
    }
}
