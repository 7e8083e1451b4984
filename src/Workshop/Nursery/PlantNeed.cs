using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Schedule;
using Litterfall.Domain.Trade;
using Litterfall.Forecasting;
using Litterfall.Instructions.Care;

namespace Litterfall.Workshop.Nursery;

/// <summary>Plants of a kind that an order needs on a day.</summary>
/// <param name="Order">The order.</param>
/// <param name="Item">What they are for, as the customer knows it.</param>
/// <param name="Plant">Catalog key of the plant.</param>
/// <param name="Plants">How many.</param>
/// <param name="Day">Day on which they are planted, or leave with the parcel.</param>
public sealed record PlantNeed(Order Order, string Item, string Plant, int Plants, DateOnly Day)
{
    /// <summary>What a line of an order needs.</summary>
    /// <param name="order">The order.</param>
    /// <param name="item">Its line.</param>
    /// <param name="numbers">Numbers of the design; null for loose goods.</param>
    /// <param name="days">Its days in the plan of the workshop; null before there is one.</param>
    /// <param name="catalog">The library.</param>
    public static IEnumerable<PlantNeed> FromItem(
        Order order,
        OrderItem item,
        DesignNumbers? numbers,
        OrderDays? days,
        TradeCatalog catalog
    )
    {
        var grown = NurseryPractice.Days(CareIntervals.GrowIn);
        DateOnly? day =
            item.Kind == OrderItemKind.Build
                ? days?.Plant ?? order.Promised?.AddDays(-grown)
                : days?.Pack ?? order.Promised?.AddDays(-1);
        if (day is not { } on)
        {
            return [];
        }

        if (numbers is null)
        {
            return item.Good is { } good && catalog.Find<PlantEntry>(good) is { } entry
                ? [new(order, item.Name, entry.Key, (int)Math.Ceiling(item.Amount), on)]
                : [];
        }

        return numbers
            .Design.Design.Plants.GroupBy(p => catalog.Find<PlantEntry>(p.Kind)?.Key ?? p.Kind)
            .Select(g => new PlantNeed(
                order,
                item.Name,
                g.Key,
                (int)Math.Ceiling(g.Sum(p => p.Count) * item.Amount),
                on
            ));
    }
}
