using System.Data.Common;
using Litterfall.App.Files;
using Litterfall.Domain.DesignFile;
using Litterfall.Store;
using Litterfall.Web.Desk;
using Litterfall.Web.Library;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace Litterfall.UnitTests.Store;

/// <summary>
/// A disk that takes nothing more, and a file that somebody holds: told, kept, tried again.
/// </summary>
public sealed class FullDiskTests : IDisposable
{
    private const string Text = """
        litterfall: 1
        name: full
        box: { inside: { length: 40 cm, depth: 40 cm, height: 40 cm } }
        floor: { soil: { recipe: ready-rainforest, depth: 5 cm } }

        """;

    private readonly string folder = Directory.CreateTempSubdirectory("litterfall-full").FullName;
    private readonly Disk disk = new();

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    private string At => Path.Combine(folder, "bench.db");

    private async Task<BenchStore> OpenAsync()
    {
        await new BenchStore(StoreFile.Contexts(At), new("1", "1"), TimeProvider.System).OpenAsync(Stop);
        return new(new Factory(At, disk), new("1", "1"), TimeProvider.System);
    }

    [Fact]
    public async Task A_change_on_a_full_disk_is_told_kept_and_saved_when_there_is_room()
    {
        var store = await OpenAsync();
        var design = await store.AddAsync("full", Text, "begun", Stop);
        var library = new BenchLibrary(new BenchOptions(Shop.Embedded(), [], "1"), store);
        using var work = (await DeskWork.OpenAsync(store, library, design.Id, () => { }))!;
        disk.IsFull = true;
        var depth = "5 cm # " + new string('x', 60_000);
        Assert.Empty(await work.ChangeAsync(d => Later(d, depth), "a long remark"));
        Assert.Equal("the disk is full", work.Unsaved);
        Assert.Empty(await work.ChangeAsync(d => DesignEdits.Set(d, "floor.soil.depth", "7 cm"), "seven"));
        Assert.Contains("7 cm", work.Document.Text, StringComparison.Ordinal);
        Assert.NotNull(work.Unsaved);
        await work.UndoAsync();
        Assert.Contains("7 cm", work.Document.Text, StringComparison.Ordinal);
        Assert.Equal(1, work.Version);
        disk.IsFull = false;
        Assert.True(await work.IsSavedAsync());
        Assert.Null(work.Unsaved);
        var saved = (await store.DesignAsync(design.Id, Stop))!;
        Assert.Equal((work.Document.Text, 2), (saved.Text, saved.Version));
        var note = (await store.VersionsAsync(design.Id, Stop))[0].Note;
        Assert.Contains("a long remark; seven", note, StringComparison.Ordinal);
    }

    [Fact]
    public async Task It_is_tried_again_by_itself()
    {
        var store = await OpenAsync();
        var design = await store.AddAsync("full", Text, "begun", Stop);
        var library = new BenchLibrary(new BenchOptions(Shop.Embedded(), [], "1"), store);
        using var work = (await DeskWork.OpenAsync(store, library, design.Id, () => { }))!;
        disk.IsFull = true;
        await work.ChangeAsync(d => Later(d, new string('y', 60_000)), "long");
        Assert.NotNull(work.Unsaved);
        disk.IsFull = false;
        for (var i = 0; i < 200 && work.Unsaved is not null; i++)
        {
            await Task.Delay(50, Stop);
        }

        Assert.Null(work.Unsaved);
        Assert.Equal(2, (await store.DesignAsync(design.Id, Stop))!.Version);
    }

    [Fact]
    public async Task Two_changes_at_once_follow_each_other()
    {
        var store = await OpenAsync();
        var design = await store.AddAsync("full", Text, "begun", Stop);
        var library = new BenchLibrary(new BenchOptions(Shop.Embedded(), [], "1"), store);
        using var work = (await DeskWork.OpenAsync(store, library, design.Id, () => { }))!;
        await Task.WhenAll(
            Enumerable
                .Range(6, 8)
                .Select(i => work.ChangeAsync(d => DesignEdits.Set(d, "floor.soil.depth", $"{i} cm"), $"{i}"))
        );
        Assert.Null(work.Conflict);
        Assert.True(await work.IsSavedAsync());
        Assert.Contains("13 cm", (await store.DesignAsync(design.Id, Stop))!.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(13, "the disk is full")]
    [InlineData(5, "another program holds")]
    [InlineData(8, "may only be read")]
    [InlineData(10, "the disk does not take it")]
    [InlineData(11, "is damaged")]
    public void Every_fault_of_the_file_has_its_sentence(int code, string words)
    {
        var fault = new DbUpdateException("saving", new SqliteException("raw", code));
        Assert.Contains(words, StoreTrouble.Words(fault), StringComparison.Ordinal);
        Assert.Null(StoreTrouble.Words(new InvalidOperationException("ours")));
    }

    [Theory]
    [InlineData("../../etc/own.ies", "own.ies")]
    [InlineData("C:\\lamps\\own.ies", "own.ies")]
    [InlineData("a\u0000b\n.csv", "ab.csv")]
    [InlineData("..", "file")]
    public void Names_of_files_are_cleaned(string name, string plain) =>
        Assert.Equal(plain, FileNames.Plain(name));

    [Fact]
    public void A_name_of_five_thousand_characters_is_cut_and_keeps_its_ending()
    {
        var name = FileNames.Short(new string('n', 5000) + ".ies");
        Assert.Equal(FileNames.Most, name.Length);
        Assert.EndsWith(".ies", name, StringComparison.Ordinal);
    }

    private static Litterfall.Domain.Faults.Reading<DesignDocument> Later(DesignDocument d, string remark) =>
        DesignReader.Read(d.File, $"{d.Text}# {remark}\n");

    public void Dispose()
    {
        SqliteConnection.ClearAllPools();
        Directory.Delete(folder, recursive: true);
    }

    private sealed class Factory(string path, Disk disk) : IDbContextFactory<BenchContext>
    {
        private readonly DbContextOptions<BenchContext> options = new DbContextOptionsBuilder<BenchContext>()
            .UseSqlite($"Data Source={path};Pooling=False")
            .AddInterceptors(disk)
            .Options;

        public BenchContext CreateDbContext() => new(options);
    }

    /// <summary>While it is full the file may not grow by a page.</summary>
    private sealed class Disk : DbConnectionInterceptor
    {
        public bool IsFull { get; set; }

        public override async Task ConnectionOpenedAsync(
            DbConnection connection,
            ConnectionEndEventData eventData,
            CancellationToken cancellationToken = default
        )
        {
            await using var command = connection.CreateCommand();
            command.CommandText = IsFull ? "PRAGMA max_page_count = 1" : "PRAGMA max_page_count = 1000000";
            await command.ExecuteNonQueryAsync(cancellationToken);
        }
    }
}
