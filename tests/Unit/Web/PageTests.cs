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
        Assert.Equal("What are you building?", home.Find("h1").TextContent);
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

    /// <summary>A slip of the pen is told with the smallest size, and makes no design.</summary>
    [Theory]
    [InlineData("1 x 1 x 1 cm", "The length of 1 cm is too small.")]
    [InlineData("5 x 60 x 60 mm", "The length of 5 mm is too small.")]
    [InlineData("5 mm", "does not have three edges.")]
    [InlineData("60 x 45 x 600 in", "The height of 600 in is too large.")]
    public async Task A_size_that_no_tank_has_is_refused_with_the_smallest(string size, string words)
    {
        var store = await ReadyAsync();
        var home = page.Render<Home>();
        home.WaitForElement(".examples svg");
        home.Find("#size").Change(size);
        await home.Find("form.wish").SubmitAsync();
        var said = home.Find("#wish-fault").TextContent;
        Assert.Contains(words, said, StringComparison.Ordinal);
        Assert.Contains("8 cm to 3 m (3 1/4 in to 118 in)", said, StringComparison.Ordinal);
        Assert.Empty(await store.DesignsAsync(Stop));
    }

    [Fact]
    public async Task The_archive_keeps_designs_and_gives_them_back_after_loading_anew()
    {
        var store = await ReadyAsync();
        await store.AddAsync("page", Text, "begun", Stop);
        await store.AddAsync("other", Text, "begun", Stop);
        var home = page.Render<Home>();
        home.WaitForElement("[aria-label='Archive page']");
        await home.Find("[aria-label='Archive page']").ClickAsync();
        home.WaitForState(() => home.FindAll(".designs li").Count == 1);
        Assert.Contains("Archive (1)", home.Markup, StringComparison.Ordinal);
        page.Services.GetRequiredService<Microsoft.AspNetCore.Components.NavigationManager>()
            .NavigateTo("/?list=archive");
        var archive = page.Render<Home>();
        archive.WaitForElement("[aria-label='Restore page']");
        await archive.Find("[aria-label='Restore page']").ClickAsync();
        archive.WaitForState(() => archive.FindAll(".designs li").Count == 0);
        Assert.Equal(2, (await store.DesignsAsync(Stop)).Count);
    }

    [Fact]
    public async Task A_design_is_found_by_its_customer()
    {
        var store = await ReadyAsync();
        var one = await store.AddAsync("page", Text, "begun", Stop);
        await store.AddAsync("other", Text, "begun", Stop);
        await store.NoteOrderAsync(one.Id, new("Quoted", "Mira Holm", new DateOnly(2027, 3, 4)), Stop);
        var home = page.Render<Home>();
        home.WaitForState(() => home.FindAll(".designs li").Count == 2);
        home.Find("#find").Input("holm quoted");
        home.WaitForState(() => home.FindAll(".designs li").Count == 1);
        Assert.Contains("due 4 Mar 2027", home.Find(".designs li").TextContent, StringComparison.Ordinal);
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

    /// <summary>
    /// A reader of gallons types gallons: 2.5 gal of parts that give 2 gal yield 80 %; a level that rises by
    /// 1/2 in is read as that.
    /// </summary>
    [Fact]
    public async Task The_tests_are_read_in_the_units_of_the_reader()
    {
        var store = await ReadyAsync();
        foreach (var (kind, unit) in new[] { ("volume", "gal"), ("small", "fl oz"), ("length", "in") })
        {
            await store.ChooseAsync($"unit.{kind}", unit, Stop);
        }

        var measure = page.Render<Measure>();
        measure.WaitForState(() => measure.Find("label[for=b-in]").TextContent == "Loose parts, gal");
        Assert.Equal("Level rose, in", measure.Find("label[for=d-mm]").TextContent);
        Assert.Equal("Caught, fl oz", measure.Find("label[for=c-ml]").TextContent);
        measure.Find("#b-in").Change("2.5");
        measure.Find("#b-out").Change("2");
        await measure.FindAll("form")[0].SubmitAsync();
        measure.WaitForState(() => measure.FindAll("[role=status]")[0].TextContent.Length > 0);
        Assert.Contains(
            "yields 80 %",
            measure.FindAll("[role=status]")[0].TextContent,
            StringComparison.Ordinal
        );
    }

    /// <summary>What was read of a tank is kept by the browser, and read again page by page.</summary>
    [Fact]
    public async Task A_tank_is_measured_page_by_page()
    {
        var store = await ReadyAsync();
        var tank = page.Render<MeasureTank>();
        tank.WaitForState(() => !tank.Find(".steps .main").HasAttribute("disabled"));
        tank.Find("#t-name").Change("in the hall");
        await tank.Find("form").SubmitAsync();
        await tank.Find("form").SubmitAsync();
        Assert.Contains(
            "Each edge needs one reading",
            tank.Find("[role=alert]").TextContent,
            StringComparison.Ordinal
        );
        tank.Find("#t-length-1").Change("60,2");
        tank.Find("#t-length-2").Change("23 5/8 in");
        tank.Find("#t-depth-1").Change("45");
        tank.Find("#t-height-1").Change("sixty");
        Assert.Contains("'sixty' does not read", tank.Markup, StringComparison.Ordinal);
        await tank.Find("form").SubmitAsync();
        Assert.Equal("Size", tank.Find("h1").TextContent);
        tank.Find("#t-height-1").Change("60");
        Assert.Contains(page.JSInterop.Invocations, i =>
            i.Identifier == "litterfall.draft" && i.Arguments.Count == 2
        );
        for (var i = 0; i < 9; i++)
        {
            await tank.Find("form").SubmitAsync();
        }

        tank.WaitForState(() => store.DesignsAsync(Stop).Result.Count == 1);
        var made = (await store.DesignAsync((await store.DesignsAsync(Stop))[0].Id, Stop))!;
        Assert.Equal("in the hall", made.Name);
        Assert.Contains("length: [ 60.2 cm, 23 5/8 in ]", made.Text, StringComparison.Ordinal);
        Assert.Contains("inside length (2 readings)", made.Text, StringComparison.Ordinal);
    }

    /// <summary>Every entry is counted, and found by its common and by its scientific name.</summary>
    [Fact]
    public async Task The_library_lists_all_and_finds_by_any_name()
    {
        await ReadyAsync();
        var all = page.Services.GetRequiredService<BenchLibrary>().Catalog.Entries.Count();
        var list = page.Render<LibraryPage>();
        list.WaitForState(() => list.Find("p[role=status]").TextContent == $"{all} entries");
        Assert.True(all > 413);
        foreach (var words in new[] { "dyeing poison", "tinctorius dendrobates" })
        {
            list.Find("#find").Input(words);
            list.WaitForState(() => list.Find("p[role=status]").TextContent == "1 entry");
        }

        list.Find("#find").Input("no such thing at all");
        list.WaitForState(() => list.Find("p[role=status]").TextContent == "0 entries");
    }

    [Fact]
    public async Task An_own_entry_replaces_ours_or_is_added_and_can_be_deleted_and_brought_back()
    {
        await ReadyAsync();
        var library = page.Services.GetRequiredService<BenchLibrary>();
        var entry = page.Render<LibraryEntry>(p => p.Add(e => e.Key, "folsomia-candida"));
        entry.WaitForElement("#own-name");
        entry.Find("#own-name").Change("our springtail");
        await entry.FindAll("form")[0].SubmitAsync();
        entry.WaitForState(() => library.IsOwn("folsomia-candida"));
        Assert.Equal("our springtail", library.Catalog.Find("folsomia-candida")!.Name);

        await entry.FindAll("button").Single(b => b.TextContent == "Delete your entry").ClickAsync();
        Assert.Contains("No design uses it.", entry.Markup, StringComparison.Ordinal);
        await entry.FindAll("button").Single(b => b.TextContent == "Delete").ClickAsync();
        entry.WaitForState(() => !library.IsOwn("folsomia-candida"));
        Assert.NotEqual("our springtail", library.Catalog.Find("folsomia-candida")!.Name);
        await entry.FindAll("button").Single(b => b.TextContent == "Undo").ClickAsync();
        entry.WaitForState(() => library.IsOwn("folsomia-candida"));
        Assert.Equal("our springtail", library.Catalog.Find("folsomia-candida")!.Name);

        entry.FindAll("input[name=way]")[1].Change(true);
        entry.Find("#own-name").Change("Second springtail");
        await entry.FindAll("form")[0].SubmitAsync();
        entry.WaitForState(() => library.IsOwn("second-springtail"));
        Assert.False(library.IsOurs("second-springtail"));
        Assert.True(library.IsOurs("folsomia-candida"));
    }

    public async ValueTask DisposeAsync()
    {
        await page.DisposeAsync();
        SqliteConnection.ClearAllPools();
        Directory.Delete(folder, recursive: true);
    }
}
