using System.Collections.Concurrent;
using Litterfall.Domain.Tanks;
using Microsoft.EntityFrameworkCore;

namespace Litterfall.Store;

/// <summary>Logs of the tanks.</summary>
public sealed partial class BenchStore
{
    private readonly ConcurrentDictionary<object, Action<string>> careWatchers = new();

    /// <summary>Tells the number of every tank whose log grew, until it is disposed of.</summary>
    /// <param name="tell">Called on the thread of the change.</param>
    public IDisposable WatchCare(Action<string> tell)
    {
        var watcher = new CareWatcher(careWatchers);
        careWatchers[watcher] = tell;
        return watcher;
    }

    private sealed class CareWatcher(ConcurrentDictionary<object, Action<string>> all) : IDisposable
    {
        public void Dispose() => all.TryRemove(this, out _);
    }

    /// <summary>The log of a tank in the order of time, with lines that were taken back.</summary>
    /// <param name="tank">Number of the tank.</param>
    /// <param name="from">Lines of this time and later, UTC; null for all.</param>
    /// <param name="cancel">Ends the reading.</param>
    public Task<IReadOnlyList<CareEntry>> CareAsync(
        string tank,
        DateTime? from = null,
        CancellationToken cancel = default
    ) => CareAsync(c => c.Tank == tank, from, cancel);

    /// <summary>The logs of all tanks in the order of time, with lines that were taken back.</summary>
    /// <param name="from">Lines of this time and later, UTC; null for all.</param>
    /// <param name="cancel">Ends the reading.</param>
    public Task<IReadOnlyList<CareEntry>> CareOfAllAsync(
        DateTime? from = null,
        CancellationToken cancel = default
    ) => CareAsync(_ => true, from, cancel);

    /// <summary>Adds lines; one whose key is there already is left out, and the kept one stays.</summary>
    /// <param name="lines">The lines.</param>
    /// <param name="cancel">Cancels before they are written.</param>
    /// <returns>How many were new.</returns>
    public async Task<int> AddCareAsync(
        IReadOnlyCollection<CareEntry> lines,
        CancellationToken cancel = default
    )
    {
        await using var db = await contexts.CreateDbContextAsync(cancel);
        await using var all = await db.Database.BeginTransactionAsync(cancel);
        var tanks = await PutCareAsync(db, lines, cancel);
        await db.SaveChangesAsync(cancel);
        await all.CommitAsync(cancel);
        TellCare(tanks);
        return tanks.Count;
    }

    /// <summary>Adds what is new; the tanks it belongs to, one for each line.</summary>
    private async Task<IReadOnlyList<string>> PutCareAsync(
        BenchContext db,
        IReadOnlyCollection<CareEntry> lines,
        CancellationToken cancel
    )
    {
        var keys = lines.Select(l => l.Key).ToList();
        var known = (
            await db.Care.Where(c => keys.Contains(c.Key)).Select(c => c.Key).ToListAsync(cancel)
        ).ToHashSet(StringComparer.Ordinal);
        var tanks = new List<string>();
        foreach (var line in lines.Where(l => known.Add(l.Key)))
        {
            db.Care.Add(
                new CareRow
                {
                    Key = line.Key,
                    Tank = line.Tank,
                    Kind = line.Kind.ToString(),
                    AtTicks = line.At.Ticks,
                    Json = TradeJson.Write(line),
                    Ticks = clock.GetUtcNow().UtcTicks,
                }
            );
            tanks.Add(line.Tank);
        }

        return tanks;
    }

    private async Task<IReadOnlyList<CareEntry>> CareAsync(
        System.Linq.Expressions.Expression<Func<CareRow, bool>> which,
        DateTime? from,
        CancellationToken cancel
    )
    {
        await using var db = await contexts.CreateDbContextAsync(cancel);
        var least = from?.Ticks ?? 0;
        var texts = await db
            .Care.AsNoTracking()
            .Where(which)
            .Where(c => c.AtTicks >= least)
            .OrderBy(c => c.AtTicks)
            .ThenBy(c => c.Id)
            .Select(c => c.Json)
            .ToListAsync(cancel);
        return texts.ConvertAll(TradeJson.Read<CareEntry>);
    }

    private void TellCare(IReadOnlyList<string> tanks)
    {
        foreach (var tank in tanks.Distinct(StringComparer.Ordinal))
        {
            foreach (var tell in careWatchers.Values)
            {
                tell(tank);
            }
        }
    }
}
