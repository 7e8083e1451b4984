using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace Litterfall.Store;

/// <summary>
/// The file of the bench: where it is, its copy in one file, and the way back.
/// </summary>
public static class StoreFile
{
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
    /// <exception cref="StoreRefusedException">
    /// The bench is of a newer program, or the new file is one that a bench has open.
    /// </exception>
    public static void Backup(string path, string copy)
    {
        if (StoreLock.Real(path) == StoreLock.Real(copy) || StoreLock.IsHeld(copy))
        {
            throw new StoreRefusedException($"{copy} is open in a bench", "another name for the copy");
        }

        StoreSchema.RefuseNewer(path);
        var aside = Aside(copy);
        try
        {
            CopyPages(path, aside);
            using (var target = new SqliteConnection(Connection(aside, SqliteOpenMode.ReadWrite)))
            {
                target.Open();
                Run(target, "PRAGMA journal_mode=DELETE");
                Run(target, $"DELETE FROM Choices WHERE Key = '{StoreSchema.Sum}'");
                Run(
                    target,
                    $"INSERT INTO Choices (Key, Value) VALUES ('{StoreSchema.Sum}', '{StoreSum.Of(target)}')"
                );
            }

            Disk.Keep(aside);
            Disk.Replace(aside, copy);
        }
        finally
        {
            File.Delete(aside);
        }
    }

    /// <summary>What is wrong with a file as a copy of a bench; null where it is good.</summary>
    /// <param name="copy">The file.</param>
    public static string? Trouble(string copy) => StoreCheck.Trouble(copy);

    /// <summary>
    /// Puts a copy in the place of the bench; what was there is kept beside it under a name with the time.
    /// Until the last step the bench is as it was; that step is one renaming.
    /// </summary>
    /// <param name="path">The bench, not running.</param>
    /// <param name="copy">A good copy.</param>
    /// <param name="now">Time for the name of what was there.</param>
    /// <returns>Where what was there is kept; null where there was nothing.</returns>
    /// <exception cref="StoreRefusedException">
    /// A bench has the file open, or the copy is not whole.
    /// </exception>
    public static string? Restore(string path, string copy, DateTimeOffset now)
    {
        var real = StoreLock.Real(path);
        using var taken = StoreLock.Take(real)
            ?? throw new StoreRefusedException(
                "a bench has this file open, and what is done there would be lost",
                "the bench closed first (Ctrl-C where it was started)"
            );
        SqliteConnection.ClearAllPools();
        var aside = Aside(real);
        try
        {
            using (var looked = LookedAt.Of(copy))
            {
                RefuseDamaged(looked.Path);
                CopyPages(looked.Path, aside);
            }

            // What was read is looked at once more as it lies on this disk.
            RefuseDamaged(aside);
            Unpair(aside);
            Disk.Keep(aside);
            var kept = File.Exists(real) ? Keep(real, now) : null;
            Disk.Replace(aside, real);
            return kept;
        }
        finally
        {
            File.Delete(aside);
        }
    }

    /// <summary>
    /// Devices that were let in when the copy was made may have been turned away since: after a restore each
    /// is paired anew.
    /// </summary>
    private static void Unpair(string restored)
    {
        using var db = new SqliteConnection(Connection(restored, SqliteOpenMode.ReadWrite));
        db.Open();
        if (
            StoreSchema.Scalar(db, "SELECT EXISTS (SELECT 1 FROM sqlite_master WHERE name = 'Devices')") is 0L
            || StoreSchema.Scalar(db, "SELECT EXISTS (SELECT 1 FROM Devices)") is 0L
        )
        {
            return;
        }

        Run(db, "DELETE FROM Devices");
        Run(db, $"DELETE FROM Choices WHERE Key = '{StoreSchema.Sum}'");
    }

    private static void RefuseDamaged(string copy)
    {
        if (StoreCheck.Trouble(copy) is { } trouble)
        {
            throw new StoreRefusedException(trouble, "a file written by litterfall backup");
        }
    }

    /// <summary>
    /// Keeps what was there, and folds its log into it: a log left beside another file would be taken for its
    /// own. A file too damaged to be read is kept as it lies.
    /// </summary>
    private static string Keep(string path, DateTimeOffset now)
    {
        var name = FormattableString.Invariant($"{path}.before-{now:yyyyMMdd-HHmmss}");
        var kept = name;
        for (var i = 2; File.Exists(kept); i++)
        {
            kept = FormattableString.Invariant($"{name}-{i}");
        }

        try
        {
            CopyPages(path, kept);
            using var old = new SqliteConnection(Connection(path, SqliteOpenMode.ReadWrite));
            old.Open();
            Run(old, "PRAGMA wal_checkpoint(TRUNCATE)");
            Run(old, "PRAGMA journal_mode=DELETE");
        }
        catch (SqliteException e) when (e.SqliteErrorCode is 1 or 11 or 26)
        {
            foreach (var side in new[] { "", "-wal" }.Where(side => File.Exists(path + side)))
            {
                File.Copy(path + side, kept + side, overwrite: true);
            }
        }

        foreach (var side in new[] { "-wal", "-shm", "-journal" })
        {
            File.Delete(path + side);
        }

        return kept;
    }

    private static string Aside(string path)
    {
        var aside = $"{path}.{Environment.ProcessId}.part";
        if (Path.GetDirectoryName(Path.GetFullPath(path)) is { } folder)
        {
            Directory.CreateDirectory(folder);
        }

        File.Delete(aside);
        return aside;
    }

    private static void CopyPages(string from, string to)
    {
        using var source = Opened(from);
        using var target = new SqliteConnection(Connection(to, SqliteOpenMode.ReadWriteCreate));
        target.Open();
        source.BackupDatabase(target);
    }

    /// <summary>
    /// A file open for reading. A program that was killed amid a change leaves a journal that must be played
    /// back before the file can be read; that takes writing.
    /// </summary>
    internal static SqliteConnection Opened(string path)
    {
        const int readOnly = 8;
        var db = new SqliteConnection(Connection(path, SqliteOpenMode.ReadOnly));
        try
        {
            db.Open();
            Run(db, "SELECT COUNT(*) FROM sqlite_master");
            return db;
        }
        catch (SqliteException e)
        {
            db.Dispose();
            if (e.SqliteErrorCode != readOnly)
            {
                throw;
            }
        }

        var writer = new SqliteConnection(Connection(path, SqliteOpenMode.ReadWrite));
        writer.Open();
        return writer;
    }

    private static void Run(SqliteConnection db, string sql)
    {
        using var command = db.CreateCommand();
        command.CommandText = sql;
        command.ExecuteNonQuery();
    }

    internal static string Connection(string path, SqliteOpenMode mode, bool isPooled = false) =>
        new SqliteConnectionStringBuilder
        {
            DataSource = path,
            Mode = mode,
            DefaultTimeout = 5,
            Pooling = isPooled,
        }.ConnectionString;

    private sealed class Factory(string path) : IDbContextFactory<BenchContext>
    {
        private readonly DbContextOptions<BenchContext> options = new DbContextOptionsBuilder<BenchContext>()
            .UseSqlite(Connection(path, SqliteOpenMode.ReadWriteCreate, isPooled: true))
            .AddInterceptors(new FullSync())
            .Options;

        public BenchContext CreateDbContext() => new(options);
    }
}
