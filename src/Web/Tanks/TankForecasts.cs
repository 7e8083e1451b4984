using System.Collections.Concurrent;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Tanks;
using Litterfall.Forecasting;
using Litterfall.Running.Rounds;
using Litterfall.Store;
using Litterfall.Web.Library;

namespace Litterfall.Web.Tanks;

/// <summary>Numbers of the designs of running tanks, kept until the library changes.</summary>
public sealed class TankForecasts(BenchStore store, BenchLibrary library)
{
    private const int Most = 400;
    private readonly ConcurrentDictionary<(Guid, int), DesignNumbers?> kept = new();
    private readonly ConcurrentDictionary<(Guid, int), DrainOutlook?> outlooks = new();
    private string mark = "";

    /// <summary>Numbers of the design that stands for a tank; null where none can be computed.</summary>
    /// <param name="tank">The tank.</param>
    /// <param name="cancel">Ends the reading.</param>
    public async Task<DesignNumbers?> FindAsync(Tank tank, CancellationToken cancel = default)
    {
        if (tank.Design is not { } design)
        {
            return null;
        }

        if (mark != library.Mark || kept.Count > Most)
        {
            (mark, _) = (library.Mark, 0);
            kept.Clear();
            outlooks.Clear();
        }

        if (!kept.TryGetValue((design, tank.Version), out var known))
        {
            var stored =
                tank.Version > 0
                    ? await store.DesignAsync(design, tank.Version, cancel)
                    : await store.DesignAsync(design, cancel);
            known = kept[(design, tank.Version)] =
                stored is not null
                && DesignReader.Read(stored.Name, stored.Text).Value is { } document
                && library.Check(document) is { Value: { } good, IsGood: true }
                    ? DesignNumbers.Month(good)
                    : null;
        }

        return known;
    }

    /// <summary>What the forecast of a tank says of its reservoir; null where nothing is known.</summary>
    /// <param name="tank">The tank.</param>
    /// <param name="cancel">Ends the reading.</param>
    public async Task<DrainOutlook?> OutlookAsync(Tank tank, CancellationToken cancel = default)
    {
        if (await FindAsync(tank, cancel) is not { } numbers)
        {
            return null;
        }

        return outlooks.GetOrAdd((tank.Design!.Value, tank.Version), _ => DrainOutlook.From(numbers));
    }
}
