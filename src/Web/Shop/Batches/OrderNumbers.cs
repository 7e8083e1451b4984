using System.Collections.Concurrent;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Trade;
using Litterfall.Forecasting;
using Litterfall.Store;
using Litterfall.Web.Library;

namespace Litterfall.Web.Shop.Batches;

/// <summary>Numbers of the frozen versions that orders name, kept until the library changes.</summary>
public sealed class OrderNumbers(BenchStore store, BenchLibrary library)
{
    private const int Most = 400;
    private readonly ConcurrentDictionary<(Guid Design, int Version), DesignNumbers?> kept = new();
    private string mark = "";

    /// <summary>Sizes and quantities of an item; null where it is no design or cannot be computed.</summary>
    /// <param name="item">A line of an order.</param>
    /// <param name="cancel">Ends the reading.</param>
    public async Task<DesignNumbers?> FindAsync(OrderItem item, CancellationToken cancel = default)
    {
        if (item.Design is not { } design)
        {
            return null;
        }

        await library.LoadAsync(cancel);
        if (mark != library.Mark || kept.Count > Most)
        {
            kept.Clear();
            mark = library.Mark;
        }

        if (!kept.TryGetValue((design, item.Version), out var known))
        {
            known = kept[(design, item.Version)] =
                await store.DesignAsync(design, item.Version, cancel) is { } stored
                && DesignReader.Read(stored.Name, stored.Text).Value is { } document
                && library.Check(document) is { Value: { } good, IsGood: true }
                    ? DesignNumbers.Shape(good)
                    : null;
        }

        return known;
    }
}
