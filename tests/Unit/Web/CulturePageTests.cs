using Bunit;
using Litterfall.App.Files;
using Litterfall.Domain.Cultures;
using Litterfall.Store;
using Litterfall.Web;
using Litterfall.Web.Library;
using Litterfall.Web.Shop.Cultures;
using Litterfall.Web.Shop.Nursery;
using Litterfall.Web.Shop.Stock;
using Litterfall.Workshop.Stock;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.DependencyInjection;

namespace Litterfall.UnitTests.Web;

/// <summary>The pages of cultures and of plants.</summary>
public sealed class CulturePageTests : IAsyncDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("litterfall-cultures").FullName;
    private readonly BunitContext page = new();

    private static CancellationToken Stop => Xunit.TestContext.Current.CancellationToken;

    private async Task<BenchStore> ReadyAsync()
    {
        BenchHost.AddStore(
            page.Services,
            new BenchOptions(Shop.Embedded(), [], "1.0"),
            StoreFile.Contexts(Path.Combine(folder, "bench.db"))
        );
        page.JSInterop.Mode = JSRuntimeMode.Loose;
        var store = page.Services.GetRequiredService<BenchStore>();
        await store.OpenAsync(Stop);
        await ShopSeed.PeopleAsync(store, Stop);
        return store;
    }

    private Task<StockBook> Book => page.Services.GetRequiredService<StockShelf>().BookAsync(Stop);

    private static async Task SubmitAsync(IRenderedComponent<CulturesPage> shown, string button) =>
        await shown
            .FindAll("form")
            .First(f => f.TextContent.Contains(button, StringComparison.Ordinal))
            .SubmitAsync();

    /// <summary>
    /// A shelf, two cups on it, one counted and split, then mites: all of the line, daughters too, are on
    /// hold in the book of stock.
    /// </summary>
    [Fact]
    public async Task A_line_lives_and_dies_on_its_shelf()
    {
        var store = await ReadyAsync();
        var shown = page.Render<CulturesPage>();
        shown.WaitForElement("#s-name");
        shown.Find("#s-name").Change("Shelf <1>");
        shown.Find("#s-warm").Change("warm");
        await SubmitAsync(shown, "Add the shelf");
        Assert.Contains("how warm", shown.Find("[role=alert]").TextContent, StringComparison.Ordinal);
        shown.Find("#s-warm").Change("21,5");
        await SubmitAsync(shown, "Add the shelf");
        Assert.Contains("Shelf &lt;1&gt;", shown.Markup, StringComparison.Ordinal);
        shown.Find("#c-species").Change("folsomia-candida");
        shown.Find("#c-line").Change("A");
        shown.Find("#c-count").Change("2");
        shown.Find("#c-animals").Change("400");
        shown.Find("#c-liters").Change("0.25");
        await SubmitAsync(shown, "adults only");
        Assert.Contains("Choose the shelf", shown.Find("[role=alert]").TextContent, StringComparison.Ordinal);
        shown.Find("#c-shelf").Change("shelf-1");
        await SubmitAsync(shown, "adults only");
        Assert.Equal(["SPR-1", "SPR-2"], (await Book).Lots.Select(l => l.Lot.Id).Order());
        Assert.Equal(2, shown.FindAll(".cultureshelf a").Count);

        var one = page.Render<CulturePage>(p => p.Add(c => c.Id, "SPR-1"));
        one.WaitForElement("#count");
        one.Find("#count").Change("1000");
        await one.FindAll("form")[0].SubmitAsync();
        Assert.Contains("the model follows", one.Find("[role=status]").TextContent, StringComparison.Ordinal);
        one.Find("#cups").Change("3");
        await one.FindAll("form")
            .First(f => f.TextContent.Contains("New cups", StringComparison.Ordinal))
            .SubmitAsync();
        Assert.Equal(["SPR-3", "SPR-4", "SPR-5"], Genealogy.Descendants(await Book, "SPR-1"));
        Assert.Equal(4, one.FindAll(".lineage li").Count);

        shown.Find("#l-line").Change("folsomia-candida|A");
        await SubmitAsync(shown, "Put the line on hold");
        Assert.All((await Book).Lots, l => Assert.True(l.IsHeld));
        Assert.Equal(5, shown.FindAll(".cultureshelf .sign.held").Count);
        var kept = await store.RecordsAsync<Culture>(Stop);
        Assert.All(kept, c => Assert.Equal("mites", c.Value.Held));
    }

    /// <summary>
    /// Bought plants go to quarantine first; what is found starts the clock again; dead ones leave the book.
    /// </summary>
    [Fact]
    public async Task Plants_are_kept_apart_and_counted_out()
    {
        await ReadyAsync();
        var shown = page.Render<NurseryPage>();
        shown.WaitForElement("#b-name");
        foreach (var (name, use) in new[] { ("Box", "Quarantine"), ("Bench", "Growing") })
        {
            shown.Find("#b-name").Change(name);
            shown.Find("#b-use").Change(use);
            await shown
                .FindAll("form")
                .First(f => f.TextContent.Contains("Add the bench", StringComparison.Ordinal))
                .SubmitAsync();
        }

        shown.Find("#p-plant").Change("fittonia-albivenis");
        shown.Find("#p-count").Change("10");
        shown.Find("#p-from").Change("hollow-reed");
        shown.Find("#p-bench").Change("bench");
        await shown
            .FindAll("form")
            .First(f => f.TextContent.Contains("Add a tray", StringComparison.Ordinal))
            .SubmitAsync();
        Assert.Contains(
            "quarantine bench first",
            shown.Find("[role=alert]").TextContent,
            StringComparison.Ordinal
        );
        shown.Find("#p-bench").Change("box");
        await shown
            .FindAll("form")
            .First(f => f.TextContent.Contains("Add a tray", StringComparison.Ordinal))
            .SubmitAsync();
        var lot = Assert.Single((await Book).Lots);
        Assert.Equal(30, lot.Lot.QuarantinedUntil!.Value.DayNumber - lot.Lot.Since.DayNumber);
        Assert.Contains("All out together", shown.Markup, StringComparison.Ordinal);

        var tray = page.Render<TrayPage>(p => p.Add(t => t.Id, lot.Lot.Id));
        tray.WaitForElement("#dead");
        tray.Find("#dead").Change("4");
        await tray.FindAll("form")[1].SubmitAsync();
        Assert.Equal(6, (await Book).Find(lot.Lot.Id)!.OnHand);
        tray.Find("#found").Change("snails");
        await tray.FindAll("form")[0].SubmitAsync();
        Assert.True((await Book).Find(lot.Lot.Id)!.IsHeld);
        tray.Find("#label").Input("5.25");
        Assert.Contains("mL of the bleach", tray.Markup, StringComparison.Ordinal);
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        await page.DisposeAsync();
        SqliteConnection.ClearAllPools();
        Directory.Delete(folder, true);
    }
}
