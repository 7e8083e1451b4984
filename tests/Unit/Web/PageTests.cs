using Bunit;
using Litterfall.App;
using Litterfall.App.Files;
using Litterfall.Domain;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Faults;
using Litterfall.Domain.Keys;
using Litterfall.Store;
using Litterfall.Web;
using Litterfall.Web.Charts;
using Litterfall.Web.Desk;
using Litterfall.Web.Desk.Form;
using Litterfall.Web.Library;
using Litterfall.Web.Pages;
using Litterfall.Web.Parts;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.DependencyInjection;

namespace Litterfall.UnitTests.Web;

/// <summary>Pages and parts of the bench, rendered without a browser.</summary>
public sealed class PageTests : IAsyncDisposable
{
    private const string Text = """
        litterfall: 1
        name: page
        box: { inside: { length: 40 cm, depth: 40 cm, height: 40 cm } }
        floor: { soil: { recipe: ready-rainforest, depth: 5 cm } }
        lid: { material: float-glass, thickness: 4 mm, gap: 2 mm }
        room: { temperature: 21 C, humidity: 50 % }

        """;

    private readonly string folder = Directory.CreateTempSubdirectory("litterfall-pages").FullName;
    private readonly BunitContext page = new();

    private static CancellationToken Stop => Xunit.TestContext.Current.CancellationToken;

    private async Task<BenchStore> ReadyAsync()
    {
        BenchHost.AddStore(
            page.Services,
            new BenchOptions(Shop.Embedded(), [new BenchExample("one", "an example", Text)], "1.0"),
            StoreFile.Contexts(Path.Combine(folder, "bench.db"))
        );
        page.JSInterop.Mode = JSRuntimeMode.Loose;
        var store = page.Services.GetRequiredService<BenchStore>();
        await store.OpenAsync(Stop);
        return store;
    }

    private async Task<DeskWork> DeskAsync()
    {
        var store = await ReadyAsync();
        var design = await store.AddAsync("page", Text, "begun", Stop);
        var library = page.Services.GetRequiredService<BenchLibrary>();
        return (await DeskWork.OpenAsync(store, library, design.Id, () => { }))!;
    }

    [Fact]
    public async Task An_empty_bench_asks_one_thing_and_shows_examples()
    {
        await ReadyAsync();
        var home = page.Render<Home>();
        home.WaitForElement(".examples svg");
        Assert.Equal("What shall live where?", home.Find("h1").TextContent);
        Assert.Empty(home.FindAll(".designs"));
        home.Find("#size").Change("60 by 45");
        await home.Find("form.wish").SubmitAsync();
        Assert.Contains(
            "does not have three edges",
            home.Find("[role=alert]").TextContent,
            StringComparison.Ordinal
        );
        Assert.Equal("60 by 45", home.Find("#size").GetAttribute("value"));
    }

    [Fact]
    public async Task A_field_keeps_what_does_not_read_and_says_why()
    {
        using var work = await DeskAsync();
        var box = page.Render<FieldBox>(p =>
            p.Add(
                    b => b.Field,
                    FormBook
                        .Of(work.Document)
                        .SelectMany(f => f.AllFields)
                        .First(f => f.Path == "floor.soil.depth")
                )
                .Add(b => b.Work, work)
        );
        await box.Find("input").ChangeAsync(new() { Value = "five" });
        Assert.Equal("five", box.Find("input").GetAttribute("value"));
        Assert.Equal("true", box.Find("input").GetAttribute("aria-invalid"));
        Assert.NotEmpty(box.Find("[role=alert]").TextContent);
        Assert.Equal(1, work.Version);
        await box.Find("input").ChangeAsync(new() { Value = "2 1/2 in" });
        Assert.Empty(box.FindAll("[role=alert]"));
        Assert.Equal(2, work.Version);
        Assert.Contains("depth: 2 1/2 in", work.Document.Text, StringComparison.Ordinal);
        await work.UndoAsync();
        Assert.Contains("depth: 5 cm", work.Document.Text, StringComparison.Ordinal);
        Assert.True(work.CanRedo);
        await work.RedoAsync();
        Assert.Contains("2 1/2 in", work.Document.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_rail_tells_the_verdict_and_each_number_can_be_asked()
    {
        using var work = await DeskAsync();
        await work.Settled;
        string? asked = null;
        var rail = page.Render<Rail>(p => p.Add(r => r.Work, work).Add(r => r.OnAsk, k => asked = k));
        Assert.True(rail.FindAll(".findings li").Count > 0);
        rail.FindAll(".num")[0].Click();
        Assert.NotNull(asked);
        var slip = page.Render<Slip>(p => p.Add(s => s.Look, work.Look).Add(s => s.Key, asked));
        Assert.Contains("How far it can be trusted", slip.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_change_elsewhere_arrives_and_a_conflict_is_kept()
    {
        using var work = await DeskAsync();
        var store = page.Services.GetRequiredService<BenchStore>();
        await store.SaveAsync(
            work.Id,
            1,
            ("page", Text.Replace("5 cm", "6 cm", StringComparison.Ordinal), "from elsewhere"),
            Stop
        );
        for (var i = 0; i < 100 && work.Version != 2; i++)
        {
            await Task.Delay(20, Stop);
        }

        Assert.Equal(2, work.Version);
        Assert.True(work.CameFromElsewhere);
        Assert.Contains("depth: 6 cm", work.Document.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_chart_says_what_it_shows_and_has_a_table()
    {
        var chart = page.Render<LineChart>(p =>
            p.Add(c => c.Title, "Water")
                .Add(c => c.Unit, "mm")
                .Add(c => c.Values, [0.0, 4.0, 8.0])
                .Add(c => c.Mark, (10.0, "barrier"))
        );
        Assert.Contains(
            "from 0 to 8 mm",
            chart.Find("svg").GetAttribute("aria-label"),
            StringComparison.Ordinal
        );
        Assert.Equal(3, chart.FindAll("tbody tr").Count);
        Assert.Contains("barrier", chart.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_measured_value_goes_before_ours_and_says_so()
    {
        await ReadyAsync();
        var measure = page.Render<Measure>();
        measure.Find("#b-in").Change("10");
        measure.Find("#b-out").Change("8,2");
        await measure.FindAll("form")[0].SubmitAsync();
        measure.WaitForState(() => measure.FindAll("[role=status]")[0].TextContent.Length > 0);
        Assert.Contains(
            "yields 82 %",
            measure.FindAll("[role=status]")[0].TextContent,
            StringComparison.Ordinal
        );
        var value = page
            .Services.GetRequiredService<BenchLibrary>()
            .Catalog.Find("standard-rainforest")!
            .Values.Single(v => v.Name == "mixingYield");
        Assert.Equal(82.0, value.Number);
        Assert.Equal(Litterfall.Domain.Figures.Provenance.Measured, value.Origin.Provenance);
        Assert.Contains("10 L", value.Origin.Place, StringComparison.Ordinal);
    }

    public async ValueTask DisposeAsync()
    {
        await page.DisposeAsync();
        SqliteConnection.ClearAllPools();
        Directory.Delete(folder, recursive: true);
    }
}
