using System.Globalization;
using System.IO.Compression;
using System.Security.Cryptography;
using Litterfall.Domain.Tanks;
using Microsoft.EntityFrameworkCore;

namespace Litterfall.Store;

/// <summary>A logger file that was taken in.</summary>
/// <param name="Id">Its number.</param>
/// <param name="Report">What was read of it.</param>
/// <param name="Who">Who took it in.</param>
/// <param name="When">When, UTC.</param>
public sealed record KeptLog(int Id, LoggerReport Report, string Who, DateTime When);

/// <summary>A channel of which readings are kept.</summary>
/// <param name="Place">Tank, or what else it hangs in.</param>
/// <param name="Quantity">What it measures.</param>
/// <param name="Number">1, or more where several of one kind hang in one place.</param>
/// <param name="From">First reading, UTC.</param>
/// <param name="To">Last reading, UTC.</param>
/// <param name="Count">Readings.</param>
public sealed record KeptChannel(
    string Place,
    LogQuantity Quantity,
    int Number,
    DateTime From,
    DateTime To,
    int Count
);

/// <summary>Readings of loggers, packed.</summary>
public sealed partial class BenchStore
{
    private const int MostPlace = 60;

    /// <summary>
    /// Keeps a file with its report and its readings, whole or not at all. Readings that stand there with the
    /// same time and value are dropped and counted.
    /// </summary>
    /// <param name="report">What was read of it.</param>
    /// <param name="series">Its readings by channel.</param>
    /// <param name="bytes">The file.</param>
    /// <param name="who">Who takes it in.</param>
    /// <param name="cancel">Cancels before it is written.</param>
    /// <returns>What is kept; the report counts what stood there already.</returns>
    public async Task<KeptLog> KeepLogAsync(
        LoggerReport report,
        IReadOnlyList<LogSeries> series,
        byte[] bytes,
        string who,
        CancellationToken cancel = default
    )
    {
        var hash = Convert.ToHexStringLower(SHA256.HashData(bytes));
        var small = Packed(bytes);
        await using var db = await contexts.CreateDbContextAsync(cancel);
        await using var all = await db.Database.BeginTransactionAsync(cancel);
        if (await db.LogFiles.AsNoTracking().FirstOrDefaultAsync(f => f.Hash == hash, cancel) is { } same)
        {
            var there = Kept(same);
            return there with { Report = there.Report with { Kept = 0, Duplicates = report.Rows } };
        }

        var known = int.MaxValue;
        foreach (var (one, word) in Worded(series, report.Name))
        {
            known = Math.Min(known, await MergeAsync(db, one, word, cancel));
        }

        known = known == int.MaxValue ? 0 : Math.Min(known, report.Kept);
        var told = report with { Kept = report.Kept - known, Duplicates = report.Duplicates + known };
        var row = new LogFileRow
        {
            Name = report.Name,
            Hash = hash,
            Json = TradeJson.Write(told),
            Bytes = small,
            Who = who,
            Ticks = clock.GetUtcNow().UtcTicks,
        };
        db.LogFiles.Add(row);
        await db.SaveChangesAsync(cancel);
        await all.CommitAsync(cancel);
        return Kept(row);
    }

    /// <summary>Adds live readings; what stands there already is dropped.</summary>
    /// <returns>How many were new.</returns>
    public async Task<int> AddReadingsAsync(
        IReadOnlyCollection<LiveReading> readings,
        CancellationToken cancel = default
    )
    {
        await using var db = await contexts.CreateDbContextAsync(cancel);
        await using var all = await db.Database.BeginTransactionAsync(cancel);
        var known = 0;
        foreach (var group in readings.GroupBy(r => (r.Place, r.Quantity, r.Unit)))
        {
            var ordered = group.OrderBy(r => r.At).ToList();
            var one = new LogSeries(Short(group.Key.Place), group.Key.Quantity, group.Key.Unit)
            {
                Ticks = [.. ordered.Select(r => r.At.Ticks)],
                Values = [.. ordered.Select(r => r.Value)],
                Marks = [.. ordered.Select(_ => LogMarks.None)],
            };
            known += await MergeAsync(db, one, group.Key.Quantity.ToString(), cancel);
        }

        await db.SaveChangesAsync(cancel);
        await all.CommitAsync(cancel);
        return readings.Count - known;
    }

    /// <summary>Files that were taken in, the last first.</summary>
    public async Task<IReadOnlyList<KeptLog>> LogFilesAsync(CancellationToken cancel = default)
    {
        await using var db = await contexts.CreateDbContextAsync(cancel);
        var rows = await db
            .LogFiles.AsNoTracking()
            .OrderByDescending(f => f.Id)
            .Select(f => new
            {
                f.Id,
                f.Json,
                f.Who,
                f.Ticks,
            })
            .ToListAsync(cancel);
        return rows.ConvertAll(f => new KeptLog(
            f.Id,
            TradeJson.Read<LoggerReport>(f.Json),
            f.Who,
            At(f.Ticks)
        ));
    }

    /// <summary>True where a file with these bytes was taken in.</summary>
    public async Task<bool> HasLogAsync(byte[] bytes, CancellationToken cancel = default)
    {
        var hash = Convert.ToHexStringLower(SHA256.HashData(bytes));
        await using var db = await contexts.CreateDbContextAsync(cancel);
        return await db.LogFiles.AnyAsync(f => f.Hash == hash, cancel);
    }

    /// <summary>A file as it was taken in; null where there is none.</summary>
    public async Task<(string Name, byte[] Bytes)?> LogFileAsync(int id, CancellationToken cancel = default)
    {
        await using var db = await contexts.CreateDbContextAsync(cancel);
        var row = await db.LogFiles.AsNoTracking().FirstOrDefaultAsync(f => f.Id == id, cancel);
        return row is null ? null : (row.Name, Whole(row.Bytes));
    }

    /// <summary>Channels of which readings are kept, by place.</summary>
    public async Task<IReadOnlyList<KeptChannel>> LogChannelsAsync(CancellationToken cancel = default)
    {
        await using var db = await contexts.CreateDbContextAsync(cancel);
        var rows = await db
            .LogBlocks.GroupBy(b => new { b.Place, b.Quantity })
            .Select(g => new
            {
                g.Key.Place,
                g.Key.Quantity,
                From = g.Min(b => b.FromTicks),
                To = g.Max(b => b.ToTicks),
                Count = g.Sum(b => b.Count),
            })
            .ToListAsync(cancel);
        return
        [
            .. rows.Select(r =>
                {
                    var (quantity, number) = Unworded(r.Quantity);
                    return new KeptChannel(r.Place, quantity, number, At(r.From), At(r.To), r.Count);
                })
                .OrderBy(c => c.Place, StringComparer.Ordinal)
                .ThenBy(c => c.Quantity)
                .ThenBy(c => c.Number),
        ];
    }

    /// <summary>Readings of a channel.</summary>
    /// <param name="channel">The channel; its span says nothing here.</param>
    /// <param name="from">First time, UTC.</param>
    /// <param name="to">Last time, UTC.</param>
    /// <param name="cancel">Ends the reading.</param>
    public async Task<LogSeries> LogSpanAsync(
        KeptChannel channel,
        DateTime from,
        DateTime to,
        CancellationToken cancel = default
    )
    {
        await using var db = await contexts.CreateDbContextAsync(cancel);
        var word = Worded(channel.Quantity, channel.Number);
        var blocks = await db
            .LogBlocks.AsNoTracking()
            .Where(b => b.Place == channel.Place && b.Quantity == word)
            .Where(b => b.ToTicks >= from.Ticks && b.FromTicks <= to.Ticks)
            .OrderBy(b => b.FromTicks)
            .Select(b => b.Bytes)
            .ToListAsync(cancel);
        var read = new LogBlock.Unpacked();
        var unit = "";
        foreach (var block in blocks)
        {
            unit = LogBlock.Unpack(block, read);
        }

        return LogMerge.Cut(read.Series(channel.Place, channel.Quantity, unit), from.Ticks, to.Ticks);
    }

    /// <summary>The last reading of each channel.</summary>
    public async Task<IReadOnlyList<LiveReading>> LatestReadingsAsync(CancellationToken cancel = default)
    {
        await using var db = await contexts.CreateDbContextAsync(cancel);
        var last = db
            .LogBlocks.GroupBy(b => new { b.Place, b.Quantity })
            .Select(g => g.Max(b => b.FromTicks));
        var blocks = await db
            .LogBlocks.AsNoTracking()
            .Where(b => last.Contains(b.FromTicks))
            .ToListAsync(cancel);
        var latest = new List<LiveReading>();
        foreach (var group in blocks.GroupBy(b => (b.Place, b.Quantity)))
        {
            var block = group.MaxBy(b => b.FromTicks)!;
            var read = new LogBlock.Unpacked();
            var unit = LogBlock.Unpack(block.Bytes, read);
            latest.Add(
                new(block.Place, Unworded(block.Quantity).Quantity, unit, read.Values[^1], At(read.Ticks[^1]))
            );
        }

        return latest;
    }

    /// <summary>Puts readings among those that stand there; how many stood there already.</summary>
    private static async Task<int> MergeAsync(
        BenchContext db,
        LogSeries series,
        string word,
        CancellationToken cancel
    )
    {
        if (series.Count == 0)
        {
            return 0;
        }

        var (place, from, to) = (series.Place, series.Ticks[0], series.Ticks[^1]);
        // What overlaps, and the block before while it is not full, are packed anew.
        var own = db.LogBlocks.AsNoTracking().Where(b => b.Place == place && b.Quantity == word);
        var near = await own.Where(b => b.FromTicks <= to && b.ToTicks >= from)
            .OrderBy(b => b.FromTicks)
            .ToListAsync(cancel);
        var before = await own.Where(b => b.ToTicks < from)
            .OrderByDescending(b => b.FromTicks)
            .FirstOrDefaultAsync(cancel);
        if (before is { Count: < LogBlock.Full })
        {
            near.Insert(0, before);
        }

        var there = new LogBlock.Unpacked();
        foreach (var block in near)
        {
            LogBlock.Unpack(block.Bytes, there);
        }

        var (merged, known) = LogMerge.Join(there.Series(place, series.Quantity, series.Unit), series);
        var ids = near.ConvertAll(b => b.Id);
        await db.LogBlocks.Where(b => ids.Contains(b.Id)).ExecuteDeleteAsync(cancel);
        for (var at = 0; at < merged.Count; at += LogBlock.Full)
        {
            var count = Math.Min(LogBlock.Full, merged.Count - at);
            db.LogBlocks.Add(
                new LogBlockRow
                {
                    Place = place,
                    Quantity = word,
                    FromTicks = merged.Ticks[at],
                    ToTicks = merged.Ticks[at + count - 1],
                    Count = count,
                    Bytes = LogBlock.Pack(merged, at, count),
                }
            );
        }

        return known;
    }

    /// <summary>Channels with the words they are kept under; a second of one kind gets a number.</summary>
    private static List<(LogSeries Series, string Word)> Worded(IReadOnlyList<LogSeries> series, string file)
    {
        var used = new Dictionary<(string, LogQuantity), int>();
        var worded = new List<(LogSeries, string)>();
        foreach (var one in series)
        {
            var place = Short(one.Place.Length > 0 ? one.Place : Path.GetFileNameWithoutExtension(file));
            var number = used[(place, one.Quantity)] = used.GetValueOrDefault((place, one.Quantity)) + 1;
            worded.Add((LogMerge.Present(one with { Place = place }), Worded(one.Quantity, number)));
        }

        return worded;
    }

    private static string Short(string place) => place.Length > MostPlace ? place[..MostPlace] : place;

    private static string Worded(LogQuantity quantity, int number) =>
        number == 1
            ? quantity.ToString()
            : string.Create(CultureInfo.InvariantCulture, $"{quantity} {number}");

    private static (LogQuantity Quantity, int Number) Unworded(string word)
    {
        var parts = word.Split(' ');
        return (
            Enum.Parse<LogQuantity>(parts[0]),
            parts.Length > 1 ? int.Parse(parts[1], CultureInfo.InvariantCulture) : 1
        );
    }

    private static KeptLog Kept(LogFileRow row) =>
        new(row.Id, TradeJson.Read<LoggerReport>(row.Json), row.Who, At(row.Ticks));

    private static byte[] Packed(byte[] bytes)
    {
        using var packed = new MemoryStream();
        using (var gzip = new GZipStream(packed, CompressionLevel.Fastest, leaveOpen: true))
        {
            gzip.Write(bytes);
        }

        return packed.ToArray();
    }

    private static byte[] Whole(byte[] packed)
    {
        using var gzip = new GZipStream(new MemoryStream(packed), CompressionMode.Decompress);
        using var whole = new MemoryStream();
        gzip.CopyTo(whole);
        return whole.ToArray();
    }
}
