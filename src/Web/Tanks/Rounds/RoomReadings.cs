using System.Collections.Immutable;
using Litterfall.Domain.Tanks;
using Litterfall.Store;

namespace Litterfall.Web.Tanks.Rounds;

/// <summary>Readings of temperature that advice on a room is made from.</summary>
public sealed class RoomReadings(BenchStore store)
{
    private const int Days = 14;

    /// <summary>The last two weeks that loggers measured; none where there is no logger.</summary>
    /// <param name="cancel">Ends the reading.</param>
    public async Task<ImmutableArray<LogSeries>> FindAsync(CancellationToken cancel)
    {
        var channels = (await store.LogChannelsAsync(cancel))
            .Where(c => c is { Quantity: LogQuantity.Temperature, Number: 1 })
            .ToList();
        if (channels.Count == 0)
        {
            return [];
        }

        var to = channels.Max(c => c.To);
        var series = ImmutableArray.CreateBuilder<LogSeries>();
        foreach (var channel in channels)
        {
            series.Add(await store.LogSpanAsync(channel, to.AddDays(-Days), to, cancel));
        }

        return series.ToImmutable();
    }
}
