using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Nursery;
using Litterfall.Domain.Schedule;
using Litterfall.Store;
using Litterfall.Web.Library;
using Litterfall.Web.Shop.Batches;
using Litterfall.Web.Shop.Stock;
using Litterfall.Workshop.Goods;
using Litterfall.Workshop.Nursery;
using Litterfall.Workshop.Stock;

namespace Litterfall.Web.Shop.Nursery;

/// <summary>Reads the plants of this bench and writes what is done with them.</summary>
public sealed class NurseryDesk(
    BenchStore store,
    BenchLibrary library,
    StockShelf shelf,
    OrderNumbers numbers
)
{
    /// <summary>Everything the pages of plants show.</summary>
    /// <param name="cancel">Ends the reading.</param>
    public async Task<NurseryView> LoadAsync(CancellationToken cancel = default)
    {
        await library.LoadAsync(cancel);
        var stock = await shelf.LoadAsync(cancel);
        var plan = (await store.RecordAsync<ShopPlan>(ShopPlan.Key, cancel))?.Value;
        var trays = await store.RecordsAsync<PlantTray>(cancel);
        var benches = await store.RecordsAsync<NurseryBench>(cancel);
        var mothers = await store.RecordsAsync<MotherPlant>(cancel);
        var needs = new List<PlantNeed>();
        foreach (var order in stock.Orders.Where(o => o.IsOpen))
        {
            foreach (var item in order.Items)
            {
                needs.AddRange(
                    PlantNeed.FromItem(
                        order,
                        item,
                        await numbers.FindAsync(item, cancel),
                        plan?.Find(order.Number)?.Days,
                        library.Catalog
                    )
                );
            }
        }

        return new(
            stock,
            new NurseryBook(
                trays.Select(t => t.Value),
                benches.Select(b => b.Value),
                mothers.Select(m => m.Value),
                needs,
                (library.Catalog, stock.Book, shelf.Today)
            ),
            mothers,
            trays.ToDictionary(t => t.Key, t => t.Version, StringComparer.Ordinal)
        );
    }

    /// <summary>Day at the bench, and who writes.</summary>
    public async Task<(DateOnly Day, string Who)> NowAsync() => (shelf.Today, await shelf.WhoAsync());

    /// <summary>Writes a step of work; null where it is written, else why not, in one sentence.</summary>
    /// <param name="view">What was shown.</param>
    /// <param name="step">The step.</param>
    public async Task<string?> WriteAsync(NurseryView view, NurseryStep step)
    {
        var change = new ShopChange(await shelf.WhoAsync());
        foreach (var tray in step.Trays)
        {
            change.Keep(tray.Number, view.Versions.GetValueOrDefault(tray.Number), tray, step.Note);
        }

        if (step.Mother is { } mother)
        {
            var basis = view.Mothers.FirstOrDefault(m => m.Key == mother.Key)?.Version ?? 0;
            change.Keep(mother.Key, basis, mother, step.Note);
        }

        foreach (var lot in step.Stock.Lots)
        {
            change.Add(lot);
            if (!view.Stock.IsKept(lot.Good) && GoodOf(view, lot.Good) is { } good)
            {
                change.Keep(good.Key, 0, good with { Place = "plant bench" }, "first tray");
            }
        }

        foreach (var line in step.Stock.Lines)
        {
            change.Add(line);
        }

        return await shelf.WriteAsync(change);
    }

    /// <summary>Writes a bench or a mother plant.</summary>
    /// <typeparam name="T">The record.</typeparam>
    /// <param name="key">Its key.</param>
    /// <param name="basis">Version it was changed from; 0 for a new one.</param>
    /// <param name="value">What it says.</param>
    /// <param name="note">What was changed.</param>
    public async Task<string?> KeepAsync<T>(string key, int basis, T value, string note) =>
        await shelf.WriteAsync(new ShopChange(await shelf.WhoAsync()).Keep(key, basis, value, note));

    /// <summary>Number for a new tray of a plant.</summary>
    /// <param name="view">What was shown.</param>
    /// <param name="plant">Catalog key.</param>
    public static string NextNumber(NurseryView view, string plant) =>
        LotNumber.Next(
            GoodOf(view, plant) ?? view.Stock.GoodOf(plant),
            view.Stock.Book.Lots.Select(l => l.Lot.Id).Concat(view.Book.Trays.Select(t => t.Number))
        );

    private static Domain.Trade.Good? GoodOf(NurseryView view, string plant) =>
        view.Stock.Goods.TryGetValue(plant, out var kept) ? kept
        : view.Book.Catalog.Find<PlantEntry>(plant) is { } entry ? LibraryGoods.From(entry)
        : null;
}
