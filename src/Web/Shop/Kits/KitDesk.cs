using System.Globalization;
using Litterfall.Domain.Stock;
using Litterfall.Domain.Trade;
using Litterfall.Forecasting;
using Litterfall.Store;
using Litterfall.Web.Shop.Batches;
using Litterfall.Web.Shop.Stock;
using Litterfall.Workshop.Batches;
using Litterfall.Workshop.Kits;
using Litterfall.Workshop.Stock;

namespace Litterfall.Web.Shop.Kits;

/// <summary>Kits of one line of an order.</summary>
/// <param name="Item">The line.</param>
/// <param name="Numbers">Numbers of its design.</param>
/// <param name="Pick">What is picked for the kits that are not packed yet.</param>
/// <param name="Packed">Kits that are packed.</param>
/// <param name="Good">The kits as a good.</param>
public sealed record KitLine(
    OrderItem Item,
    DesignNumbers Numbers,
    KitPick Pick,
    IReadOnlyList<LotAccount> Packed,
    Good Good
);

/// <summary>Kits of an order as they stand.</summary>
/// <param name="Order">The order.</param>
/// <param name="Stock">Stock.</param>
/// <param name="Lines">Its kits.</param>
/// <param name="MixKilogramsPerLiter">Mass of a liter of the last batch weighed, by recipe.</param>
public sealed record KitView(
    Order Order,
    StockView Stock,
    IReadOnlyList<KitLine> Lines,
    IReadOnlyDictionary<string, double> MixKilogramsPerLiter
)
{
    /// <summary>Mass of a liter in a bag, kg: of the last batch weighed, else from the library.</summary>
    /// <param name="item">A bag.</param>
    public double? KilogramsPerLiter(KitItem item) =>
        MixKilogramsPerLiter.TryGetValue(item.Key, out var weighed) ? weighed : item.KilogramsPerLiter;
}

/// <summary>Kits of this bench.</summary>
public sealed class KitDesk(BenchStore store, StockShelf shelf, OrderNumbers numbers)
{
    /// <summary>Today.</summary>
    public DateOnly Today => shelf.Today;

    /// <summary>Kits of an order; null where there is no such order.</summary>
    /// <param name="number">Number of the order.</param>
    /// <param name="cancel">Ends the reading.</param>
    public async Task<KitView?> LoadAsync(int number, CancellationToken cancel = default)
    {
        var stock = await shelf.LoadAsync(cancel);
        if (stock.Orders.FirstOrDefault(o => o.Number == number) is not { } order)
        {
            return null;
        }

        var lines = new List<KitLine>();
        foreach (var item in order.Items.Where(i => i.Kind == OrderItemKind.Kit))
        {
            if (await numbers.FindAsync(item, cancel) is not { } shape)
            {
                continue;
            }

            var good = KitGood(item);
            var packed = stock.Book.LotsOf(good.Key).Where(l => l.Lot.Order == number).ToList();
            var left = Math.Max(0, (int)Math.Round(item.Amount) - packed.Count(l => l.In > 0));
            lines.Add(
                new(
                    item,
                    shape,
                    KitPick.Plan(shape, left, stock.Goods, stock.Book, shelf.Today, number),
                    packed,
                    good
                )
            );
        }

        var batches = (await store.RecordsAsync<SoilBatch>(cancel))
            .Select(b => b.Value)
            .OrderBy(b => b.Day)
            .GroupBy(b => b.Recipe, StringComparer.Ordinal)
            .Select(g => (g.Key, Weighed: BatchLearning.From([.. g]).KilogramsPerLiter))
            .Where(b => b.Weighed is not null)
            .ToDictionary(b => b.Key, b => b.Weighed!.Value, StringComparer.Ordinal);
        return new(order, stock, lines, batches);
    }

    /// <summary>Writes kits as packed; one sentence where it is refused.</summary>
    /// <param name="view">What was shown.</param>
    /// <param name="line">The kits.</param>
    public async Task<string?> PackAsync(KitView view, KitLine line)
    {
        var who = await shelf.WhoAsync();
        var letters = LotNumber.LettersOf(line.Good);
        var last = LotNumber.Last(letters, view.Stock.Book.Lots.Select(l => l.Lot.Id));
        var ids = Enumerable
            .Range(last + 1, line.Pick.Kits)
            .Select(n => string.Create(CultureInfo.InvariantCulture, $"{letters}-{n}"))
            .ToList();
        var step = line.Pick.Pack(line.Good, ids, view.Order.Number, (shelf.Today, who));
        var change = new ShopChange(who);
        if (!view.Stock.IsKept(line.Good.Key))
        {
            change.Keep(line.Good.Key, 0, line.Good, "packed for the first time");
        }

        foreach (var lot in step.Lots)
        {
            change.Add(lot);
        }

        foreach (var movement in step.Lines)
        {
            change.Add(movement);
        }

        return await shelf.WriteAsync(change);
    }

    private static Good KitGood(OrderItem item) =>
        new()
        {
            Key = $"kit-{item.Design:N}",
            Name = item.Name,
            Kind = GoodKind.Tank,
            Unit = StockUnit.Pieces,
            Letters = "KIT",
            Place = "packing bench",
            Walk = 90,
        };
}
