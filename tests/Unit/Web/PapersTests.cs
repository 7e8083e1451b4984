using System.IO.Compression;
using Litterfall.App.Files;
using Litterfall.Domain.Units;
using Litterfall.Store;
using Litterfall.Web;
using Litterfall.Web.Library;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.DependencyInjection;

namespace Litterfall.UnitTests.Web;

/// <summary>The documents of a design as the page shows them, and how long they are kept.</summary>
public sealed class PapersTests : IAsyncDisposable
{
    private const string Three = """
        litterfall: 1
        name: three
        boxes: 3
        box: { inside: { length: 40 cm, depth: 40 cm, height: 40 cm } }
        floor: { soil: { recipe: ready-rainforest, depth: 5 cm } }
        lid: { material: float-glass, thickness: 4 mm, gap: 2 mm }
        room: { temperature: 21 C, humidity: 50 % }

        """;

    private readonly string folder = Directory.CreateTempSubdirectory("litterfall-papers").FullName;
    private readonly ServiceProvider services;

    /// <summary>A bench without pages.</summary>
    public PapersTests()
    {
        var all = new ServiceCollection();
        BenchHost.AddStore(
            all,
            new BenchOptions(Shop.Embedded(), [], "1.0"),
            StoreFile.Contexts(Path.Combine(folder, "bench.db"))
        );
        services = all.BuildServiceProvider();
    }

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    private BenchStore Store => services.GetRequiredService<BenchStore>();

    private BenchLibrary Library => services.GetRequiredService<BenchLibrary>();

    private Task<PaperSet?> SetAsync(Guid id, string sheet = "a4")
    {
        var from = services.GetRequiredService<PaperSources>();
        return from.Shelf.SetAsync(id, (sheet, false), from, cancel: Stop);
    }

    private async Task<Guid> DesignAsync()
    {
        await Store.OpenAsync(Stop);
        await Library.LoadAsync(Stop);
        return (await Store.AddAsync("three", Three, "begun", Stop)).Id;
    }

    [Fact]
    public async Task Documents_are_kept_until_the_design_changes()
    {
        var id = await DesignAsync();
        var first = await SetAsync(id);
        // Each page that opens reads the library again.
        await Library.LoadAsync(Stop);
        var second = await SetAsync(id);
        Assert.Same(first, second);
        Assert.Same(first!.Zip, second!.Zip);
        Assert.Same(
            first.Picture("01-build-sheet.pdf", 1, 560),
            second.Picture("01-build-sheet.pdf", 1, 560)
        );
        var letter = await SetAsync(id, "letter");
        Assert.NotEqual(first.Mark, letter!.Mark);
        var changed = Three.Replace("5 cm", "6 cm", StringComparison.Ordinal);
        await Store.SaveAsync(id, 1, ("three", changed, "deeper"), Stop);
        Assert.NotEqual(first.Mark, (await SetAsync(id))!.Mark);
    }

    [Fact]
    public async Task An_own_entry_makes_them_anew()
    {
        var id = await DesignAsync();
        var before = (await SetAsync(id))!.Mark;
        var entry = Library.Catalog.Find("ready-rainforest")!;
        Assert.Null(await OwnEntry.AddAsync(Library, OwnEntry.Json(entry), "mine"));
        Assert.NotEqual(before, (await SetAsync(id))!.Mark);
    }

    /// <summary>Three boxes of one kind: three passports, three labels, each with its own number.</summary>
    [Fact]
    public async Task Each_box_has_a_passport_and_a_label()
    {
        var set = (await SetAsync(await DesignAsync()))!;
        Assert.Equal(3, set.Find("09-tank-passport.pdf")!.Pages.Length);
        var label = Assert.Single(set.Find("09-labels.pdf")!.Pages);
        var words = label.Marks.OfType<Litterfall.Documents.Drawings.TextMark>().Select(m => m.Text).ToList();
        Assert.Equal(
            3,
            words
                .Where(w => w.StartsWith("LF", StringComparison.Ordinal) && w.Length == 13)
                .Distinct()
                .Count()
        );
        Assert.Contains("box 3 of 3", words);
    }

    /// <summary>By hand: 40 × 40 × 5 cm are 8 L in a box; more is bought, for it settles.</summary>
    [Fact]
    public async Task Figures_of_one_box_stand_beside_those_of_all()
    {
        var set = (await SetAsync(await DesignAsync()))!;
        Assert.All(set.Batch, row => Assert.Equal(3 * row.One, row.All, 9));
        var soil = set.Batch.First(row => row.Name.StartsWith("Soil", StringComparison.Ordinal));
        Assert.InRange(Unit.Liter.FromSi(soil.One), 8, 16);
    }

    /// <summary>A4 is 210 × 297 mm (ISO 216); bytes 16 to 23 of a PNG are its size (11.2.2).</summary>
    [Fact]
    public async Task A_page_becomes_a_picture_of_its_shape()
    {
        var set = (await SetAsync(await DesignAsync()))!;
        var png = set.Picture("01-build-sheet.pdf", 1, 560)!;
        var width = System.Buffers.Binary.BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(16));
        var height = System.Buffers.Binary.BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(20));
        Assert.Equal((560, 792), (width, height));
        Assert.Null(set.Picture("01-build-sheet.pdf", 99, 560));
        Assert.Null(set.Picture("01-build-sheet.pdf", 1, 561));
        Assert.Null(set.Picture("../secret", 1, 560));
    }

    [Fact]
    public async Task Lists_and_drawings_are_told_with_their_scale()
    {
        var set = (await SetAsync(await DesignAsync()))!;
        var cuts = DrawnFile.Of(set.Files, "cut/");
        Assert.NotEmpty(cuts);
        Assert.All(cuts, cut => Assert.Equal("1:1", cut.Scale));
        Assert.All(cuts, cut => Assert.NotNull(cut.Dxf));
        var lists = ListedFile.Of(set.Files);
        Assert.Contains(lists, l => l is { Title: "Shopping list", Rows.Count: > 0 });
        Assert.Contains(lists, l => l.Calendar == "06-calendar.ics");
        Assert.All(lists, l => Assert.All(l.Rows, row => Assert.Equal(l.Heads.Length, row.Length)));
        using var zip = new ZipArchive(new MemoryStream(set.Zip));
        Assert.Equal(set.Files.Count, zip.Entries.Count);
        Assert.Equal("%PDF"u8.ToArray(), set.Print[..4]);
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        await services.DisposeAsync();
        SqliteConnection.ClearAllPools();
        Directory.Delete(folder, recursive: true);
    }
}
