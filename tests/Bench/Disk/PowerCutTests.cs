using System.Diagnostics;
using Litterfall.Store;
using Microsoft.Data.Sqlite;

namespace Litterfall.Tests.Bench.Disk;

/// <summary>
/// Every kind of write is done once under watch; then the file is looked at as it would lie there if the
/// program had been killed, or the power cut, after any of the things it did to the disk: it opens, it is
/// whole, and all that had been told as done until then is in it.
/// </summary>
public sealed class PowerCutTests
{
    private static readonly bool IsLong = Environment.GetEnvironmentVariable("LITTERFALL_LONG") == "1";

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task What_was_told_as_saved_outlives_a_kill_and_a_power_cut_at_any_moment()
    {
        using var disk = await WatchedDisk.MakeAsync();
        var file = disk.At("bench.db");
        var program = Path.Combine(AppContext.BaseDirectory, "Litterfall.Tests.Writes.dll");
        using var writes = Process.Start(
            disk.Watch(
                new("dotnet", [program, file])
                {
                    UseShellExecute = false,
                    RedirectStandardOutput = true,
                    RedirectStandardInput = true,
                }
            )
        )!;
        var promises = new List<(long Mark, string Query)>();
        while (await writes.StandardOutput.ReadLineAsync(Stop) is { } query)
        {
            promises.Add((disk.Mark, query));
            await writes.StandardInput.WriteLineAsync();
        }

        await writes.WaitForExitAsync(Stop);
        Assert.Equal((0, 25), (writes.ExitCode, promises.Count));
        var ops = disk.Done();
        Assert.Contains(ops, op => op.Kind == 'S');
        foreach (var (cut, files) in Moments(new Dictionary<string, byte[]>(), ops))
        {
            disk.Become(files);
            if (cut == 0 || !File.Exists(file))
            {
                Assert.DoesNotContain(promises, p => p.Mark <= (cut == 0 ? 0 : ops[cut - 1].End));
                continue;
            }

            await new BenchStore(StoreFile.Contexts(file), new("1", "1"), TimeProvider.System).OpenAsync(
                Stop
            );
            Assert.True(StoreFile.Trouble(file) is null, $"after {cut}: {StoreFile.Trouble(file)}");
            using var db = new SqliteConnection($"Data Source={file};Pooling=False");
            db.Open();
            foreach (var (_, query) in promises.Where(p => p.Mark <= ops[cut - 1].End))
            {
                Assert.True(Count(db, query) > 0, $"after {cut} of {ops.Count}: {query}");
            }
        }
    }

    [Theory]
    [InlineData("restore")]
    [InlineData("backup")]
    public async Task A_copy_made_or_brought_back_is_whole_or_not_there_at_any_moment(string command)
    {
        using var disk = await WatchedDisk.MakeAsync();
        var (bench, copy) = (disk.At("bench.db"), disk.At("copy"));
        await MadeAsync(disk.At("new.db"), "new");
        StoreFile.Backup(disk.At("new.db"), copy);
        await MadeAsync(bench, "old");
        SqliteConnection.ClearAllPools();
        if (command == "backup")
        {
            await MadeAsync(bench, "newer");
            SqliteConnection.ClearAllPools();
        }

        var there = Directory
            .GetFiles(disk.Folder)
            .ToDictionary(f => f, File.ReadAllBytes, StringComparer.Ordinal);
        var program = Path.Combine(AppContext.BaseDirectory, "litterfall.dll");
        using var process = Process.Start(
            disk.Watch(
                new("dotnet", [program, command, copy, "--store", bench])
                {
                    UseShellExecute = false,
                    RedirectStandardOutput = true,
                    RedirectStandardError = true,
                }
            )
        )!;
        await process.WaitForExitAsync(Stop);
        Assert.Equal(0, process.ExitCode);
        var ops = disk.Done();
        foreach (var (cut, files) in Moments(there, ops))
        {
            disk.Become(files);
            var names = await NamesAsync(command == "restore" ? bench : copy);
            Assert.True(StoreFile.Trouble(copy) is null, $"after {cut}: {StoreFile.Trouble(copy)}");
            Assert.True(StoreFile.Trouble(bench) is null, $"after {cut}: {StoreFile.Trouble(bench)}");
            string[] before = command == "restore" ? ["old"] : ["new"];
            string[] after = command == "restore" ? ["new"] : ["newer", "old"];
            Assert.True(
                names.SequenceEqual(after) || (cut < ops.Count && names.SequenceEqual(before)),
                $"after {cut} of {ops.Count}: {string.Join(", ", names)}"
            );
        }
    }

    /// <summary>Moments of kills and cuts, spread over all that was done; after the last of it too.</summary>
    private static IEnumerable<(int Cut, Dictionary<string, byte[]> Files)> Moments(
        IReadOnlyDictionary<string, byte[]> there,
        IReadOnlyList<DiskOp> ops
    )
    {
        var chance = new Random(11);
        var moments = IsLong ? ops.Count : 25;
        for (var i = 0; i <= moments; i++)
        {
            var cut = (int)((long)i * ops.Count / moments);
            yield return (cut, DiskAfter.Kill(there, ops.Take(cut)));
            yield return (cut, DiskAfter.Cut(there, ops.Take(cut), chance));
        }
    }

    private static async Task MadeAsync(string path, string name)
    {
        var store = new BenchStore(StoreFile.Contexts(path), new("t", "t"), TimeProvider.System);
        await store.OpenAsync(Stop);
        await store.AddAsync(name, $"litterfall: 1\nname: {name}\n", "begun", Stop);
    }

    private static async Task<string[]> NamesAsync(string path)
    {
        var store = new BenchStore(StoreFile.Contexts(path), new("t", "t"), TimeProvider.System);
        await store.OpenAsync(Stop);
        var names = (await store.DesignsAsync(Stop))
            .Select(d => d.Name)
            .Order(StringComparer.Ordinal)
            .ToArray();
        SqliteConnection.ClearAllPools();
        return names;
    }

    private static long Count(SqliteConnection db, string query)
    {
        using var command = db.CreateCommand();
        command.CommandText = query;
        return (long)command.ExecuteScalar()!;
    }
}
