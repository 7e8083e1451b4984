using Litterfall.Domain.Tanks;
using Litterfall.Store;
using Litterfall.Web.Library;
using Litterfall.Web.Shop.Stock;

namespace Litterfall.Web.Tanks;

/// <summary>Reads the running tanks of this bench and writes what is done with them.</summary>
public sealed class TankDesk(BenchStore store, BenchLibrary library, StockShelf shelf, TimeProvider clock)
{
    /// <summary>Everything the pages of tanks show.</summary>
    /// <param name="cancel">Ends the reading.</param>
    public async Task<TankView> LoadAsync(CancellationToken cancel = default)
    {
        await library.LoadAsync(cancel);
        var rooms = await store.RecordsAsync<TankRoom>(cancel);
        var care = await store.CareOfAllAsync(null, cancel);
        return new(
            await shelf.LoadAsync(cancel),
            await store.RecordsAsync<Tank>(cancel),
            rooms,
            library.Catalog,
            shelf.Today
        )
        {
            Care = CareLines.Counting(care).ToLookup(c => c.Tank, StringComparer.Ordinal),
        };
    }

    /// <summary>Now, UTC.</summary>
    public DateTime Now => clock.GetUtcNow().UtcDateTime;

    /// <summary>Who writes at this bench.</summary>
    public Task<string> WhoAsync() => shelf.WhoAsync();

    /// <summary>A time of the log by the clock of this machine.</summary>
    /// <param name="at">The time, UTC.</param>
    public DateTime Local(DateTime at) => TimeZoneInfo.ConvertTimeFromUtc(at, clock.LocalTimeZone);

    /// <summary>Writes a step of work; null where it is written, else why not, in one sentence.</summary>
    /// <param name="change">The step.</param>
    public Task<string?> WriteAsync(ShopChange change) => shelf.WriteAsync(change);
}
