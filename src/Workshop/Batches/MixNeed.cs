using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Stock;
using Litterfall.Domain.Trade;
using Litterfall.Forecasting;
using Litterfall.Quantities.Sizing;
using Litterfall.Workshop.Stock;

namespace Litterfall.Workshop.Batches;

/// <summary>So much of a mix that an order needs.</summary>
/// <param name="Order">The order.</param>
/// <param name="Item">What it is for, as the customer knows it.</param>
/// <param name="Recipe">Key of the recipe.</param>
/// <param name="Liters">Mixed liters, loose, with what is lost on the way.</param>
public sealed record MixNeed(Order Order, string Item, string Recipe, double Liters)
{
    /// <summary>What a design needs; null where its soil is bought ready, or it has none.</summary>
    /// <param name="order">The order.</param>
    /// <param name="item">Its line with the design.</param>
    /// <param name="numbers">Numbers of the design; shape is enough.</param>
    public static MixNeed? FromDesign(Order order, OrderItem item, DesignNumbers numbers) =>
        numbers.Layers.FirstOrDefault(l => l.Kind == LayerKind.Soil)
            is { Material: RecipeEntry { Parts.IsDefaultOrEmpty: false } recipe } soil
            ? new(
                order,
                item.Name,
                recipe.Key,
                // The layers are those of one box; loss counts on what is put in, and so on what comes out.
                item.Amount
                    * soil.Mixed.Si
                    * 1000
                    * (soil.Loose.Si > 0 ? soil.ToBuy.Si / soil.Loose.Si : 1)
            )
            : null;

    /// <summary>
    /// The need less what went into lots of the order already, or was sold to it as it is.
    /// </summary>
    /// <param name="needs">Needs of one recipe.</param>
    /// <param name="book">The book of stock.</param>
    public static IReadOnlyList<MixNeed> Open(IEnumerable<MixNeed> needs, StockBook book)
    {
        var left = new Dictionary<(int Order, string Recipe), double>();
        var open = new List<MixNeed>();
        foreach (var need in needs)
        {
            var key = (need.Order.Number, need.Recipe);
            var done = left.TryGetValue(key, out var rest)
                ? rest
                : Done(book, need.Recipe, need.Order.Number);
            var taken = Math.Min(done, need.Liters);
            left[key] = done - taken;
            if (need.Liters - taken > StockGate.Rounding * Math.Max(1, need.Liters))
            {
                open.Add(need with { Liters = need.Liters - taken });
            }
        }

        return open;
    }

    private static double Done(StockBook book, string recipe, int order)
    {
        var number = order.ToString(System.Globalization.CultureInfo.InvariantCulture);
        return book.LotsOf(recipe)
            .SelectMany(Genealogy.EdgesFrom)
            .Where(e => e.IsSale ? e.Into == number : book.Find(e.Into)?.Lot.Order == order)
            .Sum(e => e.Amount);
    }
}
