using Bunit;
using Litterfall.App;
using Litterfall.App.Files;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Stock;
using Litterfall.Domain.Trade;
using Litterfall.Forecasting;
using Litterfall.Store;
using Litterfall.UnitTests.House;
using Litterfall.Web;
using Litterfall.Web.Library;
using Litterfall.Web.Shop.Batches;
using Litterfall.Web.Shop.Kits;
using Litterfall.Web.Shop.Stock;
using Litterfall.Workshop.Stock;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.DependencyInjection;

namespace Litterfall.UnitTests.Web;

/// <summary>The pages of soil batches and of kits.</summary>
public sealed class BatchPageTests : IAsyncDisposable
{
    private static readonly DateOnly Today = DateOnly.FromDateTime(DateTime.Now);
    private readonly string folder = Directory.CreateTempSubdirectory("litterfall-batches").FullName;
    private readonly BunitContext page = new();

    private static CancellationToken Stop => Xunit.TestContext.Current.CancellationToken;

    private async Task<BenchStore> ReadyAsync(OrderItemKind kind, double amount)
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
        await ShopSeed.OrderAsync(store, ("voss", OrderItemKind.Build, 1, OrderState.Delivered), null, Stop);
        await ShopSeed.StockAsync(store, Today, Stop);
        await ShopSeed.OrderAsync(
            store,
            ("pelloway", kind, amount, OrderState.Accepted),
            SourceTree.Text("samples/ld-204-shop-kits.viv.yaml"),
            Stop
        );
        return store;
    }

    private StockShelf Shelf => page.Services.GetRequiredService<StockShelf>();

    /// <summary>
    /// Eighty boxes need more than the 41.8 L that are ready. What came out is written with its lots, and the
    /// yield that it teaches is used by designs from then on: 0.9 and a prior of 0.88 that counts for two
    /// give (2 × 0.88 + 0.9) / 3 = 0.8867.
    /// </summary>
    [Fact]
    public async Task A_mix_is_planned_made_and_teaches_its_yield()
    {
        var store = await ReadyAsync(OrderItemKind.Build, 24);
        var batches = page.Render<BatchesPage>();
        batches.WaitForElement(".batchcards");
        var card = batches.Find(".batchcards > li");
        Assert.Contains("Pelloway Pet Supplies", card.TextContent, StringComparison.Ordinal);
        Assert.Contains("Ready in stock: 41.8 L of MIX-7", card.TextContent, StringComparison.Ordinal);
        Assert.Contains("from common practice", card.TextContent, StringComparison.Ordinal);
        Assert.Contains("N95", card.TextContent, StringComparison.Ordinal);
        var parts = (await page.Services.GetRequiredService<BatchDesk>().LoadAsync(Stop)) is var view
            ? view.Plan(view.Recipes.Single(r => r.Key == "standard-rainforest"), 0).Parts.Sum(p => p.Liters)
            : 0;
        await batches
            .FindAll("form")
            .First(f => f.TextContent.Contains("came out", StringComparison.Ordinal))
            .SubmitAsync();
        Assert.Contains(
            "Measure the mix",
            batches.Find("[role=alert]").TextContent,
            StringComparison.Ordinal
        );
        batches
            .Find("#out-standard-rainforest")
            .Change(FormattableString.Invariant($"{0.9 * parts:0.#########}"));
        batches.Find("#wet-standard-rainforest").Change("100");
        batches.Find("#dry-standard-rainforest").Change("130");
        await batches
            .FindAll("form")
            .First(f => f.TextContent.Contains("came out", StringComparison.Ordinal))
            .SubmitAsync();
        Assert.Contains("drying makes it lighter", batches.Markup, StringComparison.Ordinal);
        batches.Find("#dry-standard-rainforest").Change("60");
        batches.Find("#kg-standard-rainforest").Change("25");
        await batches
            .FindAll("form")
            .First(f => f.TextContent.Contains("came out", StringComparison.Ordinal))
            .SubmitAsync();
        batches.WaitForState(() => batches.Markup.Contains("MIX-8 is written", StringComparison.Ordinal));
        var made = (await store.RecordsAsync<SoilBatch>(Stop)).Single().Value;
        Assert.Equal((0.6, 5), (made.DryShare, made.Parts.Select(p => p.Good).Distinct().Count()));
        var lot = (await Shelf.LoadAsync(Stop)).Book.Find("MIX-8")!;
        Assert.Equal(0.9 * parts, lot.OnHand, 1e-6);
        Assert.Equal(lot.Lot.Cost, lot.Feeds.Sum(f => f.Cost));
        Assert.Equal(0.1, MassBalance.Shrinkage(lot)!.Value, 1e-6);

        var library = page.Services.GetRequiredService<BenchLibrary>();
        var yield = library.Catalog.Find<RecipeEntry>("standard-rainforest")!.MixingYield!;
        Assert.Equal(((2 * 0.88) + 0.9) / 3, yield.Si, 1e-4);
        Assert.Equal(Provenance.Measured, yield.Origin.Provenance);
        Assert.StartsWith("learned from 1 batch", yield.Origin.Place, StringComparison.Ordinal);
        Assert.Contains("learned from 1 batch", batches.Markup, StringComparison.Ordinal);
    }

    /// <summary>A design needs its soil before settling, with its loss, for each box.</summary>
    [Fact]
    public async Task A_need_is_the_mixed_soil_of_all_boxes()
    {
        await ReadyAsync(OrderItemKind.Kit, 8);
        var view = await page.Services.GetRequiredService<BatchDesk>().LoadAsync(Stop);
        var need = Assert.Single(view.Needs);
        var order = (await Shelf.LoadAsync(Stop)).Orders.Single(o => o.Number == need.Order.Number);
        var numbers = (
            await page.Services.GetRequiredService<OrderNumbers>().FindAsync(order.Items[0], Stop)
        )!;
        // 292 × 277 mm, 5.5 cm deep on the mean, settled by 15 %, 3 % lost; wood stands in it.
        var soil = numbers.Layers.Single(l => l.Layer == "soil");
        Assert.Equal(8 * soil.Finished.Si * 1000 / 0.85 * 1.03, need.Liters, 1e-9);
        Assert.InRange(
            need.Liters,
            0.9 * 8 * 2.92 * 2.77 * 0.55 / 0.85 * 1.03,
            8 * 2.92 * 2.77 * 0.55 / 0.85 * 1.03
        );
    }

    [Fact]
    public async Task Eight_kits_are_picked_at_once_and_packed()
    {
        await ReadyAsync(OrderItemKind.Kit, 8);
        var kits = page.Render<KitPage>(p => p.Add(k => k.Number, 2));
        kits.WaitForElement(".picklist");
        Assert.Contains("8 kits to pack", kits.Find("h2").TextContent, StringComparison.Ordinal);
        Assert.Contains("CLAY-5", kits.Find(".picklist").TextContent, StringComparison.Ordinal);
        kits.Find("[aria-label^='1 L of expanded clay']").Input("0.4");
        // 292 × 277 × 40 mm are 3.235 L: 1.294 kg, 2 % more or less.
        Assert.Contains("1.27–1.32 kg", kits.Find("[aria-label=bags]").TextContent, StringComparison.Ordinal);
        var pack = kits.FindAll("button").Single(b => b.TextContent == "Write 8 kits as packed");
        await pack.ClickAsync();
        kits.WaitForState(() => kits.Markup.Contains("all packed", StringComparison.Ordinal));
        var book = (await Shelf.LoadAsync(Stop)).Book;
        Assert.Equal(
            8,
            book.Lots.Count(l => l.Lot.Order == 2 && l.Lot.Id.StartsWith("KIT-", StringComparison.Ordinal))
        );
        Assert.Contains("KIT-8", Genealogy.Descendants(book, "BARK-12"));
    }

    [Fact]
    public async Task An_order_that_is_not_there_has_no_kits()
    {
        await ReadyAsync(OrderItemKind.Kit, 1);
        var kits = page.Render<KitPage>(p => p.Add(k => k.Number, 77));
        kits.WaitForState(() => kits.Markup.Contains("There is no such order", StringComparison.Ordinal));
    }

    public async ValueTask DisposeAsync()
    {
        await page.DisposeAsync();
        SqliteConnection.ClearAllPools();
        Directory.Delete(folder, recursive: true);
    }
}
