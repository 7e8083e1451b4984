using System.Collections.Immutable;
using Litterfall.Domain.Dispatch;
using Litterfall.Store;

namespace Litterfall.Web.Shipping;

/// <summary>Reads how parcels arrived.</summary>
public static class ArrivalReading
{
    /// <summary>Counts of all parcels that arrived.</summary>
    /// <param name="store">Where they are kept.</param>
    /// <param name="cancel">Ends the reading.</param>
    public static async Task<ImmutableArray<ArrivalCount>> AllAsync(
        BenchStore store,
        CancellationToken cancel = default
    ) => [.. (await store.RecordsAsync<ParcelArrival>(cancel)).SelectMany(a => a.Value.Counts)];
}
