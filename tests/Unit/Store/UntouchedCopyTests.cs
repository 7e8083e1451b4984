using System.Security.Cryptography;
using Litterfall.Store;
using Microsoft.Data.Sqlite;

namespace Litterfall.UnitTests.Store;

/// <summary>
/// A copy of files of a bench that was cut off amid a change: with a journal to play back, or with a log. It
/// is looked at, restored and saved from as what had been told as done, and not a byte of it changes.
/// </summary>
public sealed class UntouchedCopyTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("litterfall-untouched").FullName;

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    private string At(string name) => Path.Combine(folder, name);

    private static BenchStore StoreAt(string path) =>
        new(StoreFile.Contexts(path), new("1.0", "abc"), TimeProvider.System);

    private static string Text(int version) =>
        "litterfall: 1\nname: box\n"
        + $"box: {{ inside: {{ length: 40 cm, depth: 40 cm, height: {40 + version} cm }} }}\n";

    /// <summary>Sixty versions are more pages than a cache of ten holds, so that a change spills.</summary>
    private async Task<string> BenchAsync()
    {
        var store = StoreAt(At("bench.db"));
        await store.OpenAsync(Stop);
        var design = await store.AddAsync("box", Text(0), "begun", Stop);
        for (var v = 1; v < 60; v++)
        {
            var text = Text(v) + new string('#', 2000) + "\n";
            await store.SaveAsync(design.Id, v, ("box", text, "change"), Stop);
        }

        return At("bench.db");
    }

    [Fact]
    public async Task A_copy_with_a_journal_to_play_back_is_read_as_before_the_change()
    {
        var bench = await BenchAsync();
        SqliteConnection.ClearAllPools();
        using (var db = Opened(bench))
        {
            Run(db, "PRAGMA journal_mode = DELETE");
            Run(db, "PRAGMA cache_size = 10");
            Run(db, "BEGIN IMMEDIATE");
            Run(db, "UPDATE Versions SET Text = 'half done', Note = 'half done'");
            Directory.CreateDirectory(At("copy"));
            File.Copy(bench, At("copy/bench.db"));
            File.Copy(bench + "-journal", At("copy/bench.db-journal"));
        }

        // Part of the change is in the file: without its journal it is damaged.
        File.Copy(At("copy/bench.db"), At("alone.db"));
        Assert.NotNull(StoreFile.Trouble(At("alone.db")));
        await HoldsAllAsync(At("copy/bench.db"));
    }

    [Fact]
    public async Task A_copy_with_a_log_is_read_with_it()
    {
        var bench = await BenchAsync();
        Directory.CreateDirectory(At("copy"));
        File.Copy(bench, At("copy/bench.db"));
        File.Copy(bench + "-wal", At("copy/bench.db-wal"));
        Assert.NotEqual(0, new FileInfo(At("copy/bench.db-wal")).Length);
        await HoldsAllAsync(At("copy/bench.db"));
    }

    private async Task HoldsAllAsync(string copy)
    {
        var before = Told();
        Assert.Null(StoreFile.Trouble(copy));
        Assert.Equal(60, StoreCheck.Sound(copy).Length);
        StoreFile.Restore(At("restored.db"), copy, DateTimeOffset.UnixEpoch);
        var store = StoreAt(At("restored.db"));
        await store.OpenAsync(Stop);
        var design = Assert.Single(await store.DesignsAsync(Stop));
        Assert.Equal(60, (await store.DesignAsync(design.Id, Stop))!.Version);
        SqliteConnection.ClearAllPools();
        Assert.Equal(before, Told());
    }

    /// <summary>Every file beside the copy with what is in it.</summary>
    private string[] Told() =>
        [
            .. Directory
                .GetFiles(At("copy"))
                .Order(StringComparer.Ordinal)
                .Select(f =>
                    $"{Path.GetFileName(f)} {Convert.ToHexString(SHA256.HashData(File.ReadAllBytes(f)))}"
                ),
        ];

    private static SqliteConnection Opened(string path)
    {
        var db = new SqliteConnection(
            new SqliteConnectionStringBuilder { DataSource = path, Pooling = false }.ConnectionString
        );
        db.Open();
        return db;
    }

    private static void Run(SqliteConnection db, string sql)
    {
        using var command = db.CreateCommand();
        command.CommandText = sql;
        command.ExecuteNonQuery();
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        SqliteConnection.ClearAllPools();
        Directory.Delete(folder, recursive: true);
    }
}
