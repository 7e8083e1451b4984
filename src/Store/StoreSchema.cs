using System.Collections.Concurrent;
using System.Collections.Immutable;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;

namespace Litterfall.Store;

/// <summary>The tables of a file beside those this program knows.</summary>
public static class StoreSchema
{
    /// <summary>Choice under which a program that changes the tables leaves its version.</summary>
    internal const string WrittenBy = "store.writtenBy";

    /// <summary>Choice under which a copy carries the fingerprint of all that is in it.</summary>
    internal const string Sum = "copy.sum";

    private const string Objects =
        "SELECT type || ' ' || name || ' ' || tbl_name || ' ' || COALESCE(sql, '') FROM sqlite_master "
        + "WHERE name NOT LIKE '\\_\\_EFMigrations%' ESCAPE '\\' AND tbl_name NOT LIKE '\\_\\_EFMigrations%' "
        + "ESCAPE '\\' AND name NOT LIKE 'sqlite\\_%' ESCAPE '\\' ORDER BY type, name";

    private static readonly ConcurrentDictionary<string, string> Expected = new(StringComparer.Ordinal);
    private static readonly Lazy<ImmutableArray<string>> Known = new(() =>
    {
        using var db = Context("Data Source=:memory:");
        return [.. db.Database.GetMigrations()];
    });

    /// <summary>
    /// Refuses a file that a newer program has written: this one would not know what it reads.
    /// </summary>
    /// <param name="path">The file; where there is none, there is nothing to refuse.</param>
    /// <exception cref="StoreRefusedException">It is newer, with the version it needs.</exception>
    public static void RefuseNewer(string path)
    {
        if (!File.Exists(path))
        {
            return;
        }

        using var db = StoreFile.Opened(path);
        if (Newer(db) is { } words)
        {
            throw new StoreRefusedException(words.What, words.Needs);
        }
    }

    /// <summary>What makes a file newer than this program, and what it needs; null where it is not.</summary>
    internal static (string What, string Needs)? Newer(SqliteConnection db)
    {
        var applied = Applied(db);
        if (
            applied.Except(Known.Value, StringComparer.Ordinal).Order(StringComparer.Ordinal).LastOrDefault()
            is not { } last
        )
        {
            return null;
        }

        string? by = null;
        try
        {
            by = Scalar(db, $"SELECT Value FROM Choices WHERE Key = '{WrittenBy}'") as string;
        }
        catch (SqliteException)
        {
            // A newer program may keep its choices elsewhere.
        }

        return (
            $"a newer Litterfall wrote this file (tables of {Day(last)})",
            by is null ? "a Litterfall made since then" : $"Litterfall {by} or later"
        );
    }

    /// <summary>True where tables and indexes are exactly those of a program up to this one.</summary>
    internal static bool IsKnown(SqliteConnection db)
    {
        var applied = Applied(db);
        return applied.Length > 0
            && applied.SequenceEqual(Known.Value.Take(applied.Length))
            && Told(db) == Expected.GetOrAdd(applied[^1], Made);
    }

    private static ImmutableArray<string> Applied(SqliteConnection db) =>
        Scalar(db, "SELECT COUNT(*) FROM sqlite_master WHERE name = '__EFMigrationsHistory'") is > 0L
            ? [.. Texts(db, "SELECT MigrationId FROM __EFMigrationsHistory ORDER BY MigrationId")]
            : [];

    private static string Made(string last)
    {
        using var memory = new SqliteConnection("Data Source=:memory:");
        memory.Open();
        using var db = new BenchContext(
            new DbContextOptionsBuilder<BenchContext>().UseSqlite(memory).Options
        );
        db.GetService<IMigrator>().Migrate(last);
        return Told(memory);
    }

    private static string Told(SqliteConnection db) =>
        string.Concat(string.Join('\n', Texts(db, Objects)).Where(c => c == '\n' || !char.IsWhiteSpace(c)));

    private static List<string> Texts(SqliteConnection db, string sql)
    {
        using var command = db.CreateCommand();
        command.CommandText = sql;
        using var rows = command.ExecuteReader();
        var texts = new List<string>();
        while (rows.Read())
        {
            texts.Add(rows.GetString(0));
        }

        return texts;
    }

    internal static object? Scalar(SqliteConnection db, string sql)
    {
        using var command = db.CreateCommand();
        command.CommandText = sql;
        return command.ExecuteScalar();
    }

    private static BenchContext Context(string connection) =>
        new(new DbContextOptionsBuilder<BenchContext>().UseSqlite(connection).Options);

    /// <summary>"20261128160044_First" is of 2026-11-28.</summary>
    private static string Day(string migration) =>
        migration.Length > 8 && migration.Take(8).All(char.IsAsciiDigit)
            ? $"{migration[..4]}-{migration[4..6]}-{migration[6..8]}"
            : "a later day";
}
