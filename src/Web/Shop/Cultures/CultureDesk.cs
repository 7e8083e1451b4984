using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Cultures;
using Litterfall.Domain.Schedule;
using Litterfall.Domain.Trade;
using Litterfall.Store;
using Litterfall.Web.Library;
using Litterfall.Web.Shop.Batches;
using Litterfall.Web.Shop.Stock;
using Litterfall.Workshop.Cultures;
using Litterfall.Workshop.Goods;
using Litterfall.Workshop.Stock;

namespace Litterfall.Web.Shop.Cultures;

/// <summary>Reads the culture shelf of this bench and writes what is done at it.</summary>
public sealed class CultureDesk(
    BenchStore store,
    BenchLibrary library,
    StockShelf shelf,
    OrderNumbers numbers
)
{
    /// <summary>Everything the pages of cultures show.</summary>
    /// <param name="cancel">Ends the reading.</param>
    public async Task<CultureView> LoadAsync(CancellationToken cancel = default)
    {
        await library.LoadAsync(cancel);
        var stock = await shelf.LoadAsync(cancel);
        var plan = (await store.RecordAsync<ShopPlan>(ShopPlan.Key, cancel))?.Value;
        var cultures = await store.RecordsAsync<Culture>(cancel);
        var shelves = await store.RecordsAsync<CultureShelf>(cancel);
        var fed = await store.RecordsAsync<FedGroup>(cancel);
        var calendar = (await store.RecordAsync<ShopCalendar>(ShopCalendar.Key, cancel))?.Value
            ?? new ShopCalendar();
        var needs = new List<CultureNeed>();
        foreach (var order in stock.Orders.Where(o => o.IsOpen))
        {
            foreach (var item in order.Items)
            {
                needs.AddRange(
                    CultureNeed.FromItem(
                        order,
                        item,
                        await numbers.FindAsync(item, cancel),
                        plan?.Find(order.Number)?.Days,
                        (library.Catalog, calendar)
                    )
                );
            }
        }

        return new(
            stock,
            new CultureBook(
                cultures.Select(c => c.Value),
                shelves.Select(s => s.Value),
                fed.Select(f => f.Value),
                CultureNeed.Open(needs, stock.Book),
                (library.Catalog, stock.Book, shelf.Today)
            ),
            shelves,
            [.. fed.Where(f => f.Value.Until is null || f.Value.Until >= shelf.Today)],
            cultures.ToDictionary(c => c.Key, c => c.Version, StringComparer.Ordinal)
        );
    }

    /// <summary>Day at the bench, and who writes.</summary>
    public async Task<(DateOnly Day, string Who)> NowAsync() => (shelf.Today, await shelf.WhoAsync());

    /// <summary>Writes a step of work; null where it is written, else why not, in one sentence.</summary>
    /// <param name="view">What was shown.</param>
    /// <param name="step">The step.</param>
    public async Task<string?> WriteAsync(CultureView view, CultureStep step)
    {
        var change = new ShopChange(await shelf.WhoAsync());
        foreach (var culture in step.Cultures)
        {
            change.Keep(culture.Number, view.Versions.GetValueOrDefault(culture.Number), culture, step.Note);
        }

        foreach (var lot in step.Stock.Lots)
        {
            change.Add(lot);
        }

        foreach (var line in step.Stock.Lines)
        {
            change.Add(line);
        }

        var species = step.Cultures.Select(c => c.Species).FirstOrDefault();
        if (
            species is not null
            && !view.Stock.IsKept(species)
            && view.Book.Catalog.Find(species) is { } entry
            && LibraryGoods.From(entry) is { } good
        )
        {
            change.Keep(good.Key, 0, good with { Place = "culture shelf" }, "first culture");
        }

        return await shelf.WriteAsync(change);
    }

    /// <summary>Writes a shelf or animals in care.</summary>
    /// <typeparam name="T">The record.</typeparam>
    /// <param name="key">Its key.</param>
    /// <param name="basis">Version it was changed from; 0 for a new one.</param>
    /// <param name="value">What it says.</param>
    /// <param name="note">What was changed.</param>
    public async Task<string?> KeepAsync<T>(string key, int basis, T value, string note) =>
        await shelf.WriteAsync(new ShopChange(await shelf.WhoAsync()).Keep(key, basis, value, note));

    /// <summary>Numbers for new cultures of an animal.</summary>
    /// <param name="view">What was shown.</param>
    /// <param name="species">Catalog key.</param>
    /// <param name="count">How many.</param>
    public static IReadOnlyList<string> NextNumbers(CultureView view, string species, int count)
    {
        var good =
            view.Stock.Goods.TryGetValue(species, out var kept) ? kept
            : view.Book.Catalog.Find(species) is { } entry ? LibraryGoods.From(entry)
            : null;
        var numbers = new List<string>();
        var taken = view
            .Stock.Book.Lots.Select(l => l.Lot.Id)
            .Concat(view.Book.Cultures.Select(c => c.Number))
            .ToList();
        while (good is not null && numbers.Count < count)
        {
            numbers.Add(LotNumber.Next(good, taken.Concat(numbers)));
        }

        return numbers;
    }

    /// <summary>Animals that can be bred: crew of known rates, and flies.</summary>
    /// <param name="view">What was shown.</param>
    public static IEnumerable<CatalogEntry> Bred(CultureView view) =>
        view
            .Book.Catalog.Of<CrewEntry>()
            .Where(e => view.Book.Kind(e.Key) is not null)
            .OrderBy(e => e.Name, StringComparer.Ordinal)
            .Cast<CatalogEntry>()
            .Concat(view.Book.Catalog.Of<FeederEntry>().Where(e => FlyKind.From(e) is not null));
}
