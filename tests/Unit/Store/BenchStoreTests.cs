using System.IO.Compression;
using Litterfall.Store;
using Litterfall.Web.Library;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;

namespace Litterfall.UnitTests.Store;

/// <summary>What the bench keeps: every version, both sides of a conflict, a copy in one file.</summary>
public sealed class BenchStoreTests : IDisposable
{
    private const string Text = """
        litterfall: 1
        name: kept
        box: { inside: { length: 40 cm, depth: 40 cm, height: 40 cm } }
        floor: { soil: { recipe: ready-rainforest, depth: 5 cm } }

        """;

    private readonly string folder = Directory.CreateTempSubdirectory("litterfall-store").FullName;

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    private string Path => System.IO.Path.Combine(folder, "bench.db");

    private async Task<BenchStore> OpenAsync(string? path = null)
    {
        var store = new BenchStore(
            StoreFile.Contexts(path ?? Path),
            new StoreMarks("1.0", "abc"),
            TimeProvider.System
        );
        await store.OpenAsync(Stop);
        return store;
    }

    private static string With(string depth) => Text.Replace("5 cm", depth, StringComparison.Ordinal);

    [Fact]
    public async Task A_design_comes_back_as_it_was_written()
    {
        var added = await (await OpenAsync()).AddAsync("kept", Text, "begun", Stop);
        var again = await (await OpenAsync()).DesignAsync(added.Id, Stop);
        Assert.Equal(Text, again!.Text);
        Assert.Equal(1, again.Version);
        var version = Assert.Single(await (await OpenAsync()).VersionsAsync(added.Id, Stop));
        Assert.Equal(("begun", Fingerprint.Of(Text), "1.0"), (version.Note, version.Hash, version.Engine));
    }

    [Fact]
    public async Task Undo_and_redo_walk_along_versions_and_lose_none()
    {
        var store = await OpenAsync();
        var design = await store.AddAsync("kept", Text, "begun", Stop);
        await store.SaveAsync(design.Id, 1, ("kept", With("6 cm"), "six"), Stop);
        await store.SaveAsync(design.Id, 2, ("kept", With("7 cm"), "seven"), Stop);
        Assert.Equal(With("6 cm"), (await store.GoToAsync(design.Id, 2, Stop))!.Text);
        Assert.Equal(3, await store.LastChildAsync(design.Id, 2, Stop));
        var branch = await store.SaveAsync(design.Id, 2, ("kept", With("8 cm"), "eight"), Stop);
        Assert.Equal((4, 2), (branch.Saved.Version, branch.Saved.Parent));
        Assert.Null(branch.Other);
        Assert.Equal(4, (await store.VersionsAsync(design.Id, Stop)).Count);
        Assert.Equal(With("7 cm"), (await store.DesignAsync(design.Id, 3, Stop))!.Text);
    }

    [Fact]
    public async Task Two_changes_of_one_version_are_both_kept_and_the_second_is_told()
    {
        var store = await OpenAsync();
        var design = await store.AddAsync("kept", Text, "begun", Stop);
        var first = await store.SaveAsync(design.Id, 1, ("kept", With("6 cm"), "one"), Stop);
        var second = await store.SaveAsync(design.Id, 1, ("kept", With("9 cm"), "other"), Stop);
        Assert.Null(first.Other);
        Assert.Equal(2, second.Other!.Version);
        Assert.Equal(With("6 cm"), (await store.DesignAsync(design.Id, Stop))!.Text);
        Assert.Equal(With("9 cm"), (await store.DesignAsync(design.Id, second.Saved.Version, Stop))!.Text);
    }

    [Fact]
    public async Task Many_at_once_lose_nothing()
    {
        var store = await OpenAsync();
        var design = await store.AddAsync("kept", Text, "begun", Stop);
        await Task.WhenAll(
            Enumerable
                .Range(0, 12)
                .Select(i =>
                    Task.Run(
                        () => store.SaveAsync(design.Id, 1, ("kept", With($"{i + 6} cm"), $"hand {i}"), Stop),
                        Stop
                    )
                )
        );
        var versions = await store.VersionsAsync(design.Id, Stop);
        Assert.Equal(13, versions.Count);
        Assert.Equal(Enumerable.Range(1, 13).Reverse(), versions.Select(v => v.Number));
        Assert.Equal(13, versions.Select(v => v.Hash).Distinct().Count());
    }

    [Fact]
    public async Task A_copy_of_a_running_bench_brings_everything_back()
    {
        var store = await OpenAsync();
        var design = await store.AddAsync("kept", Text, "begun", Stop);
        await store.ChooseAsync("unit.length", "in", Stop);
        await store.AddEntryAsync("own", "{}", "why", Stop);
        var copy = System.IO.Path.Combine(folder, "copy.litterfall");
        StoreFile.Backup(Path, copy);
        Assert.Null(StoreFile.Trouble(copy));
        await store.SaveAsync(design.Id, 1, ("kept", With("6 cm"), "after the copy"), Stop);
        var kept = StoreFile.Restore(Path, copy, new DateTimeOffset(2026, 1, 5, 0, 0, 0, TimeSpan.Zero));
        Assert.True(File.Exists(kept));
        var again = await OpenAsync();
        Assert.Equal(1, (await again.DesignAsync(design.Id, Stop))!.Version);
        Assert.Equal("in", (await again.ChoicesAsync(Stop))["unit.length"]);
        Assert.Single(await again.EntriesAsync(Stop));
        Assert.Equal(2, (await (await OpenAsync(kept)).VersionsAsync(design.Id, Stop)).Count);
    }

    [Fact]
    public void What_is_no_copy_is_refused_with_a_reason()
    {
        var other = System.IO.Path.Combine(folder, "other.txt");
        File.WriteAllText(other, "a letter");
        Assert.Contains("no copy", StoreFile.Trouble(other), StringComparison.Ordinal);
        Assert.Contains("no such file", StoreFile.Trouble(other + "x"), StringComparison.Ordinal);
        using (var db = new SqliteConnection($"Data Source={other}.db;Pooling=False"))
        {
            db.Open();
            using var make = db.CreateCommand();
            make.CommandText = "CREATE TABLE Letters (Id INTEGER)";
            make.ExecuteNonQuery();
        }

        Assert.Contains("no copy", StoreFile.Trouble($"{other}.db"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Everything_goes_out_in_open_formats()
    {
        var store = await OpenAsync();
        var design = await store.AddAsync("a \"quoted\" name", Text, "begun, with a comma", Stop);
        await store.AddAsync("=HYPERLINK(\"http://x\")", Text, "@note", Stop);
        using var zip = new ZipArchive(
            new MemoryStream(await BenchExport.WriteAsync(StoreFile.Contexts(Path), Stop))
        );
        using var file = new StreamReader(zip.GetEntry($"designs/{design.Id}/0001.viv.yaml")!.Open());
        Assert.Equal(Text, await file.ReadToEndAsync(Stop));
        using var index = new StreamReader(zip.GetEntry("versions.csv")!.Open());
        var rows = await index.ReadToEndAsync(Stop);
        Assert.Contains("\"a \"\"quoted\"\" name\"", rows, StringComparison.Ordinal);
        // A text that a spreadsheet would run is marked as text, by the writer of all our tables.
        Assert.Contains("'=HYPERLINK", rows, StringComparison.Ordinal);
        Assert.Contains("'@note", rows, StringComparison.Ordinal);
    }

    /// <summary>RFC 4122 version 7 numbers sort by time; designs put away stay and come back.</summary>
    [Fact]
    public async Task Put_away_is_not_deleted()
    {
        var store = await OpenAsync();
        var design = await store.AddAsync("kept", Text, "begun", Stop);
        await store.ArchiveAsync(design.Id, true, Stop);
        Assert.Empty(await store.DesignsAsync(Stop));
        Assert.NotNull(await store.DesignAsync(design.Id, Stop));
        await store.ArchiveAsync(design.Id, false, Stop);
        Assert.Single(await store.DesignsAsync(Stop));
    }

    public void Dispose()
    {
        SqliteConnection.ClearAllPools();
        Directory.Delete(folder, recursive: true);
    }

    /// <summary>A file of an older program opens, whatever tables came since; so does a copy of it.</summary>
    [Fact]
    public async Task A_file_of_an_older_program_opens()
    {
        await using (var db = StoreFile.Contexts(Path).CreateDbContext())
        {
            await db.GetService<IMigrator>().MigrateAsync("20261128193845_Files", cancellationToken: Stop);
            await db.Database.ExecuteSqlAsync(
                $"""
                INSERT INTO Designs (Id, Name, Head, CreatedTicks, ChangedTicks, IsAway, Stamp)
                VALUES ('0193AAAA-0000-7000-8000-000000000001', 'kept', 1, 1, 1, 0, 0)
                """,
                Stop
            );
            await db.Database.ExecuteSqlAsync(
                $"""
                INSERT INTO Versions (DesignId, Number, Parent, Text, Hash, Note, Engine, Library, Ticks)
                VALUES ('0193AAAA-0000-7000-8000-000000000001', 1, 0, {Text}, {Fingerprint.Of(
                    Text
                )}, '', '', '', 1)
                """,
                Stop
            );
        }

        SqliteConnection.ClearAllPools();
        StoreFile.Backup(Path, Path + ".copy");
        Assert.Null(StoreFile.Trouble(Path + ".copy"));
        StoreFile.Restore(Path, Path + ".copy", TimeProvider.System.GetUtcNow());
        var store = await OpenAsync();
        Assert.Equal("kept", Assert.Single(await store.DesignsAsync(Stop)).Name);
        Assert.Empty(await store.DevicesAsync(Stop));
    }

    /// <summary>Who was turned away after the copy was made does not come back with it.</summary>
    [Fact]
    public async Task After_a_restore_each_device_is_paired_anew()
    {
        var store = await OpenAsync();
        await store.AddAsync("kept", Text, "begun", Stop);
        await store.AddDeviceAsync("0123456789abcdef0123456789abcdef", "Phone", Stop);
        StoreFile.Backup(Path, Path + ".copy");
        Assert.Null(StoreFile.Trouble(Path + ".copy"));
        SqliteConnection.ClearAllPools();
        StoreFile.Restore(Path, Path + ".copy", TimeProvider.System.GetUtcNow());
        Assert.Empty(await (await OpenAsync()).DevicesAsync(Stop));
    }

    /// <summary>The secret is made once, and only its user reads it.</summary>
    [Fact]
    public void The_secret_of_devices_lies_beside_the_file()
    {
        var key = DeviceKey.Of(Path);
        Assert.Equal(32, key.Length);
        Assert.Equal(key, DeviceKey.Of(Path));
        if (!OperatingSystem.IsWindows())
        {
            Assert.Equal(
                UnixFileMode.UserRead | UnixFileMode.UserWrite,
                File.GetUnixFileMode(Path + ".devices")
            );
        }
    }
}
