using System.Collections.Immutable;
using Litterfall.Domain.Tanks;
using Litterfall.Store;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace Litterfall.UnitTests.Store;

/// <summary>Readings of loggers in the store: what goes in comes back bit by bit, and stands once.</summary>
public sealed class LogStoreTests : IDisposable
{
    private static readonly DateTime Start = new(2026, 2, 15, 0, 0, 0, DateTimeKind.Utc);
    private readonly string folder = Directory.CreateTempSubdirectory("litterfall-logs").FullName;

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    public void Dispose()
    {
        SqliteConnection.ClearAllPools();
        Directory.Delete(folder, recursive: true);
    }

    [Fact]
    public async Task Values_of_every_kind_come_back_bit_by_bit()
    {
        var store = await OpenAsync();
        double[] odd = [21.5, -0.0, 1.0 / 3.0, 99.9, 0.1 + 0.2, -273.15, double.Epsilon, 1e300, 20.0];
        double[] plain = [.. Enumerable.Range(0, 10_000).Select(i => (i * 7919 % 2000 / 100.0) - 5.0)];
        foreach (var values in (double[][])[odd, plain])
        {
            var one = Series("A3", values);
            await store.KeepLogAsync(Report(values.Length), [one], [1, (byte)values.Length], "Ilse", Stop);
        }

        var read = await SpanAsync(store, "A3");
        var both = odd.Concat(plain[odd.Length..]);
        // Where both have a time, each value stands; the first lines of the second differ from the first.
        var expected = odd.Zip(plain, (a, b) => new[] { a, b })
            .SelectMany(p => p)
            .Concat(plain[odd.Length..]);
        Assert.Equal(
            expected.Select(BitConverter.DoubleToInt64Bits),
            read.Values.Select(BitConverter.DoubleToInt64Bits)
        );
        Assert.Equal(both.Count() + odd.Length, read.Count);
        Assert.Equal("°C", read.Unit);
    }

    [Fact]
    public async Task A_second_download_adds_only_what_is_new_wherever_it_lies()
    {
        var store = await OpenAsync();
        var all = Enumerable.Range(0, 12_000).Select(i => i % 97 / 10.0).ToArray();
        var order = new[] { (6000, 9000), (0, 2000), (1500, 7000), (8000, 12_000) };
        var there = new HashSet<int>();
        foreach (var (from, to) in order)
        {
            var kept = await store.KeepLogAsync(
                Report(to - from),
                [Series("A3", all[from..to], from)],
                BitConverter.GetBytes(from),
                "Ilse",
                Stop
            );
            var known = Enumerable.Range(from, to - from).Count(i => !there.Add(i));
            Assert.Equal((to - from - known, known), (kept.Report.Kept, kept.Report.Duplicates));
        }

        var read = await SpanAsync(store, "A3");
        Assert.Equal(all, read.Values);
        Assert.Equal(Enumerable.Range(0, 12_000).Select(i => Start.AddMinutes(10 * i).Ticks), read.Ticks);
    }

    [Fact]
    public async Task The_same_file_counts_once_and_comes_back_as_it_was()
    {
        var store = await OpenAsync();
        byte[] bytes = [.. Enumerable.Range(0, 3000).Select(i => (byte)(i % 251))];
        var first = await store.KeepLogAsync(Report(3), [Series("A3", [1, 2, 3])], bytes, "Ilse", Stop);
        var again = await store.KeepLogAsync(Report(3), [Series("A3", [1, 2, 3])], bytes, "Tobin", Stop);
        Assert.Equal((first.Id, 0, 3), (again.Id, again.Report.Kept, again.Report.Duplicates));
        Assert.Equal(bytes, (await store.LogFileAsync(first.Id, Stop))!.Value.Bytes);
        Assert.True(await store.HasLogAsync(bytes, Stop));
        Assert.Single(await store.LogFilesAsync(Stop));
    }

    [Fact]
    public async Task Live_readings_fill_one_block_and_the_last_is_known()
    {
        var store = await OpenAsync();
        for (var i = 0; i < 30; i++)
        {
            LiveReading one = new("room", LogQuantity.Humidity, "%", 50 + i, Start.AddMinutes(i));
            Assert.Equal(1, await store.AddReadingsAsync([one], Stop));
            Assert.Equal(0, await store.AddReadingsAsync([one], Stop));
        }

        var channel = Assert.Single(await store.LogChannelsAsync(Stop));
        Assert.Equal(("room", LogQuantity.Humidity, 30), (channel.Place, channel.Quantity, channel.Count));
        var latest = Assert.Single(await store.LatestReadingsAsync(Stop));
        Assert.Equal((79.0, Start.AddMinutes(29)), (latest.Value, latest.At));
        await using var db = await Contexts.CreateDbContextAsync(Stop);
        Assert.Equal(1, await db.LogBlocks.CountAsync(Stop));
    }

    [Fact]
    public async Task Two_thermometers_in_one_tank_and_a_cell_without_value_are_kept_apart()
    {
        var store = await OpenAsync();
        await store.KeepLogAsync(
            Report(3),
            [Series("C1", [1, double.NaN, 3]), Series("C1", [4, 5, 6])],
            [9],
            "Ilse",
            Stop
        );
        var channels = await store.LogChannelsAsync(Stop);
        Assert.Equal([(1, 2), (2, 3)], channels.Select(c => (c.Number, c.Count)));
    }

    [Fact]
    public async Task A_damaged_block_is_said_and_never_shown()
    {
        var store = await OpenAsync();
        await store.KeepLogAsync(Report(3), [Series("A3", [1, 2, 3])], [9], "Ilse", Stop);
        await using (var db = await Contexts.CreateDbContextAsync(Stop))
        {
            var block = await db.LogBlocks.SingleAsync(Stop);
            block.Bytes = [.. block.Bytes.Select((b, i) => i == 9 ? (byte)(b ^ 1) : b)];
            await db.SaveChangesAsync(Stop);
        }

        await Assert.ThrowsAsync<InvalidDataException>(() => SpanAsync(store, "A3"));
    }

    private IDbContextFactory<BenchContext> Contexts => StoreFile.Contexts(Path.Combine(folder, "bench.db"));

    private async Task<BenchStore> OpenAsync()
    {
        var store = new BenchStore(Contexts, new StoreMarks("1.0", "abc"), TimeProvider.System);
        await store.OpenAsync(Stop);
        return store;
    }

    private static async Task<LogSeries> SpanAsync(BenchStore store, string place)
    {
        var channel = (await store.LogChannelsAsync(Stop)).Single(c => c.Place == place);
        return await store.LogSpanAsync(channel, channel.From, channel.To, Stop);
    }

    private static LogSeries Series(string place, double[] values, int first = 0) =>
        new(place, LogQuantity.Temperature, "°C")
        {
            Ticks = [.. values.Select((_, i) => Start.AddMinutes(10 * (first + i)).Ticks)],
            Values = [.. values],
            Marks = [.. values.Select((_, i) => i % 5 == 0 ? LogMarks.Stuck : LogMarks.None)],
        };

    private static LoggerReport Report(int rows) =>
        new()
        {
            Name = "a3.csv",
            Style = "commas",
            Zone = "UTC",
            Fingerprint = "f",
            Rows = rows,
            Kept = rows,
            Duplicates = 0,
            From = Start,
            To = Start,
        };
}
