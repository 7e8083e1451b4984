using System.Globalization;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Schedule;
using Litterfall.Domain.Trade;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Instructions.Buying;
using Litterfall.Instructions.Care;
using Litterfall.Workshop.Stock;

namespace Litterfall.Workshop.Cultures;

/// <summary>Cups of an animal that an order needs on a day.</summary>
/// <param name="Order">The order.</param>
/// <param name="Item">What they are for, as the customer knows it.</param>
/// <param name="Species">Catalog key of the crew animal or feeder.</param>
/// <param name="Cups">Cups.</param>
/// <param name="Animals">Animals that walk in each; for flies 0, a cup is a cup.</param>
/// <param name="Liters">Substrate of each, liters.</param>
/// <param name="Day">Day on which they go in, or out with the parcel.</param>
public sealed record CultureNeed(
    Order Order,
    string Item,
    string Species,
    int Cups,
    double Animals,
    double Liters,
    DateOnly Day
)
{
    private const double UsualLiters = 0.475;

    /// <summary>What a line of an order needs: a design by its crew, loose goods by their amount.</summary>
    /// <param name="order">The order.</param>
    /// <param name="item">Its line.</param>
    /// <param name="numbers">Numbers of the design, shape is enough; null for loose goods.</param>
    /// <param name="days">Its days in the plan of the workshop; null before there is one.</param>
    /// <param name="shop">Library and calendar of the workshop.</param>
    public static IEnumerable<CultureNeed> FromItem(
        Order order,
        OrderItem item,
        DesignNumbers? numbers,
        OrderDays? days,
        (TradeCatalog Catalog, ShopCalendar Calendar) shop
    )
    {
        if (DayOf(order, item.Kind, days, shop.Calendar) is not { } day)
        {
            return [];
        }

        return numbers is null
            ? Loose(order, item, day, shop.Catalog)
            : CrewStarters
                .Of(numbers)
                .Where(s => s.Pack?.Pieces is { Si: > 0 })
                .Select(s => new CultureNeed(
                    order,
                    item.Name,
                    s.Crew.Key,
                    CupsOf(s, item),
                    // What a tank is to be seeded with, shared out over its cups.
                    Math.Ceiling(s.CountPerBox.Si * item.Amount / CupsOf(s, item)),
                    Substrate(s.Pack!),
                    day
                ));
    }

    /// <summary>The needs less the cups that went to their orders already.</summary>
    /// <param name="needs">Needs.</param>
    /// <param name="book">The book of stock.</param>
    public static IReadOnlyList<CultureNeed> Open(IEnumerable<CultureNeed> needs, StockBook book)
    {
        var left = new Dictionary<(int Order, string Species), int>();
        var open = new List<CultureNeed>();
        foreach (var need in needs)
        {
            var key = (need.Order.Number, need.Species);
            var done = left.TryGetValue(key, out var rest) ? rest : Done(book, need);
            var taken = Math.Min(done, need.Cups);
            left[key] = done - taken;
            if (need.Cups > taken)
            {
                open.Add(need with { Cups = need.Cups - taken });
            }
        }

        return open;
    }

    /// <summary>
    /// Day on which cups are needed: a tank gets its crew when it is planted, a kit and loose goods leave
    /// with the parcel. Without a plan: the promised day less the grow-in, or less the days of travel.
    /// </summary>
    private static DateOnly? DayOf(Order order, OrderItemKind kind, OrderDays? days, ShopCalendar calendar) =>
        days is not null
            ? kind == OrderItemKind.Build
                ? days.Plant ?? days.Pack
                : days.Pack
            : order.Promised is not { } promised
                ? null
                : kind == OrderItemKind.Build
                    ? promised.AddDays(-CulturePractice.Days(CareIntervals.GrowIn))
                    : Leaves(promised.AddDays(-calendar.TransitDays), calendar);

    private static DateOnly Leaves(DateOnly last, ShopCalendar calendar)
    {
        var day = last;
        while (calendar.ShipDays.Count > 0 && !calendar.ShipDays.Contains(day.DayOfWeek))
        {
            day = day.AddDays(-1);
        }

        return day;
    }

    private static IEnumerable<CultureNeed> Loose(
        Order order,
        OrderItem item,
        DateOnly day,
        TradeCatalog catalog
    )
    {
        var cups = (int)Math.Ceiling(item.Amount);
        if (item.Good is not { } good || cups < 1)
        {
            yield break;
        }

        if (catalog.Find<CrewEntry>(good) is { } crew)
        {
            var pack = catalog
                .PacksOf(crew.Key)
                .Where(p => p.Pieces is { Si: > 0 })
                .OrderBy(p => p.Pieces!.Si)
                .FirstOrDefault();
            yield return new(
                order,
                item.Name,
                crew.Key,
                cups,
                pack?.Pieces?.Si ?? 0,
                pack is null ? UsualLiters * CulturePractice.Filling.Si : Substrate(pack),
                day
            );
        }
        else if (catalog.Find<FeederEntry>(good) is { WarmthToAdults: not null } fly)
        {
            yield return new(order, item.Name, fly.Key, cups, 0, FlyPractice.Medium.Si * 1000, day);
        }
    }

    /// <summary>Each kit gets cups of its own; tanks planted on one bench share them.</summary>
    private static int CupsOf(CrewStarter starter, OrderItem item) =>
        (int)
            Math.Ceiling(
                item.Kind == OrderItemKind.Kit
                    ? starter.CupsPerBox.Si * item.Amount
                    : (starter.CountPerBox.Si * item.Amount / starter.Pack!.Pieces!.Si) - 1e-9
            );

    private static double Substrate(PackEntry pack) =>
        (pack.Volume is { } volume ? Unit.Liter.FromSi(volume.Si) : UsualLiters) * CulturePractice.Filling.Si;

    private static int Done(StockBook book, CultureNeed need)
    {
        var number = need.Order.Number.ToString(CultureInfo.InvariantCulture);
        return (int)
            book.LotsOf(need.Species)
                .SelectMany(Genealogy.EdgesFrom)
                .Where(e => e.IsSale ? e.Into == number : book.Find(e.Into)?.Lot.Order == need.Order.Number)
                .Sum(e => e.Amount);
    }
}
