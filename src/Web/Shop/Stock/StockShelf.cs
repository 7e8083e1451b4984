using Litterfall.Domain.Stock;
using Litterfall.Domain.Trade;
using Litterfall.Store;
using Litterfall.Web.Library;
using Litterfall.Workshop.Goods;
using Litterfall.Workshop.Stock;

namespace Litterfall.Web.Shop.Stock;

/// <summary>
/// The book of stock of this bench: read once, then grown by the lines that were written since. Every page
/// that shows or changes stock asks here.
/// </summary>
public sealed class StockShelf(BenchStore store, BenchLibrary library, TimeProvider clock) : IDisposable
{
    private const string WhoChoice = "shop.who";
    private readonly SemaphoreSlim turn = new(1, 1);
    private StockBook book = StockBook.Empty;

    /// <summary>The day at the bench.</summary>
    public DateOnly Today => DateOnly.FromDateTime(clock.GetLocalNow().Date);

    /// <summary>Stock with the names of goods, suppliers and customers as they are now.</summary>
    /// <param name="cancel">Ends the reading.</param>
    public async Task<StockView> LoadAsync(CancellationToken cancel = default)
    {
        var known = await BookAsync(cancel);
        var goods = await store.RecordsAsync<Good>(cancel);
        var suppliers = await store.RecordsAsync<Supplier>(cancel);
        var orders = await store.RecordsAsync<Order>(cancel);
        var customers = await store.RecordsAsync<Customer>(cancel);
        var terms = await store.RecordAsync<ShopTerms>(ShopTerms.Key, cancel);
        var byKey = goods.ToDictionary(g => g.Key, g => g.Value, StringComparer.Ordinal);
        foreach (var key in known.Goods.Where(k => !byKey.ContainsKey(k)))
        {
            if (library.Catalog.Find(key) is { } entry && LibraryGoods.From(entry) is { } good)
            {
                byKey[key] = good with { Key = key };
            }
        }

        return new(
            known,
            byKey,
            suppliers.ToDictionary(s => s.Key, s => s.Value, StringComparer.Ordinal),
            [.. orders.Select(o => o.Value).OrderByDescending(o => o.Number)],
            customers.ToDictionary(c => c.Key, c => c.Value, StringComparer.Ordinal),
            terms?.Value
        )
        {
            Described = goods.Select(g => g.Key).ToHashSet(StringComparer.Ordinal),
        };
    }

    /// <summary>Who writes at this bench.</summary>
    /// <param name="cancel">Ends the reading.</param>
    public async Task<string> WhoAsync(CancellationToken cancel = default) =>
        (await store.ChoicesAsync(cancel)).GetValueOrDefault(WhoChoice) is { Length: > 0 } name
            ? name
            : "workshop";

    /// <summary>Writes a step of work; null where it is written, else why not, in one sentence.</summary>
    /// <param name="change">The step.</param>
    public Task<string?> WriteAsync(ShopChange change) => Attempt.AtAsync(() => store.WriteAsync(change));

    /// <summary>Lots and lines as one step.</summary>
    /// <param name="step">What is written.</param>
    public async Task<string?> WriteAsync(StockStep step)
    {
        var change = new ShopChange(await WhoAsync());
        foreach (var lot in step.Lots)
        {
            change.Add(lot);
        }

        foreach (var line in step.Lines)
        {
            change.Add(line, step.MayGoBelow);
        }

        return await WriteAsync(change);
    }

    /// <summary>The book as it stands.</summary>
    /// <param name="cancel">Ends the reading.</param>
    public async Task<StockBook> BookAsync(CancellationToken cancel = default)
    {
        await turn.WaitAsync(cancel);
        try
        {
            var lines = await store.MovementsAsync(book.LastLine, cancel);
            if (lines.Count > 0)
            {
                book = book.With(await store.LotsAsync(cancel), lines);
            }

            return book;
        }
        finally
        {
            turn.Release();
        }
    }

    /// <inheritdoc/>
    public void Dispose() => turn.Dispose();
}
