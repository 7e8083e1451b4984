using System.IO.Compression;
using System.Text;
using System.Text.Json;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace Litterfall.Store;

/// <summary>
/// The file of the bench: where it is, its copy in one file, and everything in open formats.
/// </summary>
public static class StoreFile
{
    private const string Signature = "SQLite format 3\0";

    /// <summary>The file in the user's data folder.</summary>
    public static string Usual =>
        Path.Combine(
            Environment.GetFolderPath(
                Environment.SpecialFolder.LocalApplicationData,
                Environment.SpecialFolderOption.Create
            ),
            "litterfall",
            "bench.db"
        );

    /// <summary>Contexts on a file; its folder is made.</summary>
    /// <param name="path">The file.</param>
    public static IDbContextFactory<BenchContext> Contexts(string path)
    {
        if (Path.GetDirectoryName(Path.GetFullPath(path)) is { } folder)
        {
            Directory.CreateDirectory(folder);
        }

        return new Factory(path);
    }

    /// <summary>Copies all of a running or resting bench into one file, whole or not at all.</summary>
    /// <param name="path">The bench.</param>
    /// <param name="copy">The new file.</param>
    public static void Backup(string path, string copy)
    {
        var aside = $"{copy}.{Environment.ProcessId}.part";
        File.Delete(aside);
        try
        {
            using (var source = new SqliteConnection(Connection(path, SqliteOpenMode.ReadOnly)))
            using (var target = new SqliteConnection(Connection(aside, SqliteOpenMode.ReadWriteCreate)))
            {
                source.Open();
                target.Open();
                source.BackupDatabase(target);
                using var journal = target.CreateCommand();
                journal.CommandText = "PRAGMA journal_mode=DELETE";
                journal.ExecuteNonQuery();
            }

            File.Move(aside, copy, overwrite: true);
        }
        finally
        {
            File.Delete(aside);
        }
    }

    /// <summary>What is wrong with a file as a copy of a bench; null where it is good.</summary>
    /// <param name="copy">The file.</param>
    public static string? Trouble(string copy)
    {
        if (!File.Exists(copy))
        {
            return "there is no such file";
        }

        using (var file = File.OpenRead(copy))
        {
            var head = new byte[Signature.Length];
            if (
                file.ReadAtLeast(head, head.Length, false) < head.Length
                || Encoding.ASCII.GetString(head) != Signature
            )
            {
                return "this is no copy of a bench";
            }
        }

        try
        {
            using var db = new SqliteConnection(Connection(copy, SqliteOpenMode.ReadOnly));
            db.Open();
            using var check = db.CreateCommand();
            check.CommandText = "PRAGMA quick_check";
            if (check.ExecuteScalar() as string != "ok")
            {
                return "the copy is damaged";
            }

            check.CommandText = "SELECT COUNT(*) FROM sqlite_master WHERE name IN ('Designs', 'Versions')";
            return check.ExecuteScalar() is 2L ? null : "this is no copy of a bench";
        }
        catch (SqliteException e)
        {
            return $"the copy cannot be read ({e.Message.TrimEnd('.')})";
        }
    }

    /// <summary>
    /// Puts a copy in the place of the bench; what was there is kept beside it under a name with the time.
    /// </summary>
    /// <param name="path">The bench, not running.</param>
    /// <param name="copy">A good copy.</param>
    /// <param name="now">Time for the name of what was there.</param>
    /// <returns>Where what was there is kept; null where there was nothing.</returns>
    public static string? Restore(string path, string copy, DateTimeOffset now)
    {
        SqliteConnection.ClearAllPools();
        string? kept = null;
        if (File.Exists(path))
        {
            kept = FormattableString.Invariant($"{path}.before-{now:yyyyMMdd-HHmmss}");
            Backup(path, kept);
        }

        if (Path.GetDirectoryName(Path.GetFullPath(path)) is { } folder)
        {
            Directory.CreateDirectory(folder);
        }

        var aside = $"{path}.{Environment.ProcessId}.part";
        File.Copy(copy, aside, overwrite: true);
        foreach (var side in new[] { "-wal", "-shm" })
        {
            File.Delete(path + side);
        }

        File.Move(aside, path, overwrite: true);
        return kept;
    }

    /// <summary>Everything as a zip of open formats: design files, versions, entries, choices.</summary>
    /// <param name="contexts">The bench.</param>
    /// <param name="cancel">Cancels between files.</param>
    public static async Task<byte[]> ExportAsync(
        IDbContextFactory<BenchContext> contexts,
        CancellationToken cancel = default
    )
    {
        await using var db = await contexts.CreateDbContextAsync(cancel);
        using var bytes = new MemoryStream();
        using (var zip = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true))
        {
            var designs = await db.Designs.AsNoTracking().OrderBy(d => d.CreatedTicks).ToListAsync(cancel);
            var index = new StringBuilder(
                "design,name,version,parent,worked on,time,engine,library,hash,note\r\n"
            );
            foreach (var design in designs)
            {
                var versions = db.Versions.AsNoTracking().Where(v => v.DesignId == design.Id);
                await foreach (
                    var v in versions.OrderBy(v => v.Number).AsAsyncEnumerable().WithCancellation(cancel)
                )
                {
                    Put(zip, $"designs/{design.Id}/{v.Number:0000}.viv.yaml", v.Text);
                    string[] row =
                    [
                        $"{design.Id}",
                        design.Name,
                        $"{v.Number}",
                        $"{v.Parent}",
                        v.Number == design.Head ? "yes" : "",
                        $"{new DateTime(v.Ticks, DateTimeKind.Utc):yyyy-MM-ddTHH:mm:ssZ}",
                        v.Engine,
                        v.Library,
                        v.Hash,
                        v.Note,
                    ];
                    index.AppendJoin(',', row.Select(Quoted)).Append("\r\n");
                }
            }

            await FilesAsync(zip, db, cancel);
            Put(zip, "versions.csv", index.ToString());
            Put(zip, "entries.json", JsonSerializer.Serialize(await db.Entries.ToListAsync(cancel)));
            Put(zip, "choices.json", JsonSerializer.Serialize(await db.Choices.ToListAsync(cancel)));
        }

        return bytes.ToArray();
    }

    private static async Task FilesAsync(ZipArchive zip, BenchContext db, CancellationToken cancel)
    {
        await foreach (
            var file in db
                .Files.AsNoTracking()
                .OrderBy(f => f.Id)
                .AsAsyncEnumerable()
                .WithCancellation(cancel)
        )
        {
            using var entry = zip.CreateEntry($"files/{file.Id:0000}-{file.Name}", CompressionLevel.Fastest)
                .Open();
            entry.Write(file.Bytes);
        }
    }

    private static string Quoted(string text) =>
        $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";

    private static void Put(ZipArchive zip, string name, string text)
    {
        using var file = zip.CreateEntry(name, CompressionLevel.Fastest).Open();
        file.Write(Encoding.UTF8.GetBytes(text));
    }

    private static string Connection(string path, SqliteOpenMode mode) =>
        new SqliteConnectionStringBuilder
        {
            DataSource = path,
            Mode = mode,
            DefaultTimeout = 10,
            Pooling =
                mode == SqliteOpenMode.ReadWriteCreate && !path.EndsWith(".part", StringComparison.Ordinal),
        }.ConnectionString;

    private sealed class Factory(string path) : IDbContextFactory<BenchContext>
    {
        private readonly DbContextOptions<BenchContext> options = new DbContextOptionsBuilder<BenchContext>()
            .UseSqlite(Connection(path, SqliteOpenMode.ReadWriteCreate))
            .AddInterceptors(new FullSync())
            .Options;

        public BenchContext CreateDbContext() => new(options);
    }
}
