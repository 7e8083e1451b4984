using System.Text;
using Litterfall.App;
using Litterfall.App.Files;
using Litterfall.Domain;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Faults;
using Litterfall.Domain.Keys;
using Litterfall.Forecasting;
using Litterfall.Forecasting.Coefficients;
using Litterfall.Forecasting.Light;
using Litterfall.Judging;
using Litterfall.Quantities.Sizing;
using Litterfall.Store;
using Litterfall.Web;
using Litterfall.Web.Charts;
using Litterfall.Web.Desk;
using Litterfall.Web.Library;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.Logging.Abstractions;

namespace Litterfall.UnitTests.Web;

/// <summary>Own entries, files that designs name, and what they change on a desk.</summary>
public sealed class LibraryTests : IDisposable
{
    private const string Text = """
        litterfall: 1
        name: lit
        box: { inside: { length: 60 cm, depth: 45 cm, height: 45 cm } }
        floor: { soil: { recipe: ready-rainforest, depth: 5 cm } }
        lid: { material: float-glass, thickness: 4 mm, gap: 2 mm }
        lamps: [ { lamp: led-bar-6500k, file: lamps/own.ies, above: 5 cm, on: "08:00", off: "20:00" } ]
        room: { temperature: 21 C, humidity: 50 % }

        """;

    /// <summary>
    /// Own worked example: 100 cd straight down falling linearly to 0 at 90°, all round. Its flux is
    /// 2π ∫ 100 (1 − θ/90°) sin θ dθ = 200π (1 − 2/π) = 228.319 lm.
    /// </summary>
    private const string Lamp = """
        IESNA:LM-63-2002
        [TEST] own worked example
        [MANUFAC] none
        TILT=NONE
        1 -1 1 2 1 1 2 0 0 0
        1 1 4
        0 90
        0
        100 0

        """;

    private readonly string folder = Directory.CreateTempSubdirectory("litterfall-library").FullName;

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    private async Task<(BenchStore Store, BenchLibrary Library)> OpenAsync()
    {
        var store = new BenchStore(
            StoreFile.Contexts(Path.Combine(folder, "bench.db")),
            new StoreMarks("1.0", "abc"),
            TimeProvider.System
        );
        await store.OpenAsync(Stop);
        var library = new BenchLibrary(new BenchOptions(Shop.Embedded(), [], "1.0"), store);
        await library.LoadAsync(Stop);
        return (store, library);
    }

    [Fact]
    public async Task A_lamp_file_is_named_missing_and_then_counts()
    {
        var (store, library) = await OpenAsync();
        var document = DesignReader.Read("lit", Text).Value!;
        var fault = library.Check(document).Faults[0];
        Assert.Contains("there is no file 'lamps/own.ies'", fault.Message, StringComparison.Ordinal);
        Assert.Contains("library page", fault.Expected, StringComparison.Ordinal);

        Assert.Null(await library.AddFileAsync("own.ies", Encoding.ASCII.GetBytes(Lamp)));
        var design = library.Check(document).Value!;
        var shape = DesignNumbers.Shape(design);
        var light = shape.Upto(Reach.Whole).Light!;
        Assert.Equal(200 * Math.PI * (1 - (2 / Math.PI)), light.Lamps[0].Lumens.Si, 0.01);

        // Another bench on the same file has it too, and the newest of a name counts.
        var twice = Lamp.Replace("100 0", "200 0", StringComparison.Ordinal);
        Assert.Null(await library.AddFileAsync("own.ies", Encoding.ASCII.GetBytes(twice)));
        var (_, again) = await OpenAsync();
        Assert.Equal(["own.ies"], again.Files);
        Assert.Equal(twice, Encoding.ASCII.GetString(Assert.Single(await store.FilesAsync(Stop)).Bytes));
    }

    [Fact]
    public async Task A_lamp_file_that_does_not_read_is_refused_with_its_line()
    {
        var (_, library) = await OpenAsync();
        var broken = Lamp.Replace("100 0", "100", StringComparison.Ordinal);
        var told = await library.AddFileAsync("own.ies", Encoding.ASCII.GetBytes(broken));
        Assert.StartsWith("own.ies, line ", told, StringComparison.Ordinal);
        Assert.Empty(library.Files);
        var large = await library.AddFileAsync("log.csv", new byte[BenchLibrary.LargestFile + 1]);
        Assert.Equal("log.csv is too large; expected at most 8 MB.", large);
    }

    [Fact]
    public async Task A_new_value_reaches_an_open_desk()
    {
        var (store, library) = await OpenAsync();
        var plain = Text.Replace("file: lamps/own.ies", "lumens: 2000", StringComparison.Ordinal);
        var design = await store.AddAsync("lit", plain, "begun", Stop);
        using var work = (await DeskWork.OpenAsync(store, library, design.Id, () => { }))!;
        await work.Settled;
        var before = work.Look.Whole;
        var entry = library.Catalog.Find("ready-rainforest")!;
        var json = OwnEntry.Json(
            entry,
            (entry.Key, "our ready mix"),
            new Dictionary<string, (double, string)>()
        );
        Assert.Null(await OwnEntry.AddAsync(library, json, "renamed"));
        await work.Settled;
        Assert.NotSame(before, work.Look.Whole);
        Assert.Equal("our ready mix", library.Catalog.Find("ready-rainforest")!.Name);
    }

    [Fact]
    public void A_form_keeps_what_does_not_read_and_names_it()
    {
        var form = new OwnForm { Name = "mix", Place = "weighed" };
        form.Set("dryDensity", "heavy");
        Assert.Contains("'heavy' is no number", form.Read("mix", out _), StringComparison.Ordinal);
        Assert.Equal("heavy", form.Text("dryDensity"));
        form.Set("dryDensity", "0,14");
        Assert.Null(form.Read("mix", out var values));
        Assert.Equal((0.14, "weighed"), values["dryDensity"]);
        var same = new OwnForm { Name = "mix" };
        Assert.Contains("Nothing is changed", same.Read("mix", out _), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_verdict_of_a_design_nobody_opened_is_computed_behind()
    {
        var (store, library) = await OpenAsync();
        var plain = Text.Replace("file: lamps/own.ies", "lumens: 2000", StringComparison.Ordinal);
        await store.AddAsync("lit", plain, "begun", Stop);
        await store.AddAsync("not to be read", "litterfall: 1", "begun", Stop);
        using var keeper = new VerdictKeeper(
            store,
            library,
            TimeProvider.System,
            NullLogger<VerdictKeeper>.Instance
        );
        await keeper.StartAsync(Stop);
        for (var i = 0; i < 300 && (await store.DesignsAsync(Stop)).Any(d => d.Verdict is null); i++)
        {
            await Task.Delay(100, Stop);
        }

        await keeper.StopAsync(Stop);
        var verdicts = (await store.DesignsAsync(Stop)).ToDictionary(d => d.Name, d => d.Verdict);
        Assert.Contains("caution", verdicts["lit"], StringComparison.Ordinal);
        Assert.Equal("Cannot be calculated as entered.", verdicts["not to be read"]);
    }

    [Fact]
    public async Task The_ribbon_names_what_it_shows()
    {
        var (_, library) = await OpenAsync();
        var plain = Text.Replace("file: lamps/own.ies", "lumens: 2000", StringComparison.Ordinal);
        var month = DesignNumbers.Month(library.Check(DesignReader.Read("lit", plain).Value!).Value!);
        var strip = RibbonStrip.Of(month, DeskMoment.Hours(month), UnitPreferences.Metric);
        Assert.Matches("^[0-9.]+ to [0-9.]+ °C$", strip.Air);
        Assert.Contains("fog", strip.Fog, StringComparison.Ordinal);
        Assert.EndsWith("over the base", strip.Water, StringComparison.Ordinal);
        Assert.False(strip.Mist);
        Assert.False(strip.Barrier);
        Assert.Contains("class=\"night\"", strip.Body, StringComparison.Ordinal);
    }

    public void Dispose()
    {
        SqliteConnection.ClearAllPools();
        Directory.Delete(folder, true);
    }
}
