using Bunit;
using Litterfall.App;
using Litterfall.App.Files;
using Litterfall.Domain.Stock;
using Litterfall.Domain.Trade;
using Litterfall.Store;
using Litterfall.Web;
using Litterfall.Web.Library;
using Litterfall.Web.Shop.Stock;
using Litterfall.Workshop.Stock;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.DependencyInjection;

namespace Litterfall.UnitTests.Web;

/// <summary>The pages of the store room.</summary>
public sealed class StockPageTests : IAsyncDisposable
{
    private static readonly DateOnly Today = DateOnly.FromDateTime(DateTime.Now);
    private readonly string folder = Directory.CreateTempSubdirectory("litterfall-stock").FullName;
    private readonly BunitContext page = new();

    private static CancellationToken Stop => Xunit.TestContext.Current.CancellationToken;

    private StockShelf Shelf => page.Services.GetRequiredService<StockShelf>();

    private async Task<BenchStore> ReadyAsync(bool hasStock = true)
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
        if (hasStock)
        {
            await ShopSeed.OrderAsync(
                store,
                ("voss", OrderItemKind.Build, 1, OrderState.Delivered),
                null,
                Stop
            );
            await ShopSeed.StockAsync(store, Today, Stop);
        }

        return store;
    }

    [Fact]
    public async Task Goods_are_listed_with_what_runs_out_and_what_spoils()
    {
        await ReadyAsync();
        var stock = page.Render<StockPage>();
        stock.WaitForElement(".stocklist li");
        Assert.Contains("257.3 L", Row(stock, "peat"), StringComparison.Ordinal);
        Assert.Contains("first good until", Row(stock, "oak leaves"), StringComparison.Ordinal);
        Assert.Contains(
            "9 pieces free to use",
            Row(stock, "springtail Folsomia candida"),
            StringComparison.Ordinal
        );
        Assert.Contains(
            "4 L, ",
            stock.Find("#unassigned").ParentElement!.TextContent,
            StringComparison.Ordinal
        );
        stock.Find("#find").Input("hr 2231");
        Assert.Equal("peat", stock.FindAll(".stockname").Single().TextContent);
        Assert.Contains("PEAT-31", stock.Find(".lots").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Goods_are_received_into_a_lot_with_the_next_number()
    {
        await ReadyAsync(hasStock: false);
        var stock = page.Render<StockPage>();
        stock.WaitForElement(".told");
        await stock.FindAll("button").First(b => b.TextContent == "Receive goods").ClickAsync();
        stock.Find("#m-good").Change("peat");
        stock.Find("#m-amount").Input("2 gal");
        stock.Find("#m-price").Change("12,5");
        stock.Find("#m-from").Change("hollow-reed");
        await stock.Find("form").SubmitAsync();
        stock.WaitForElement("form a");
        var lot = (await Shelf.LoadAsync(Stop)).Book.Find("PEAT-1")!;
        // A gallon is 231 cubic inches.
        Assert.Equal(2 * 231 * Math.Pow(0.254, 3), lot.OnHand, 1e-9);
        Assert.Equal(12.5m, lot.Value);
        stock.Find("#m-amount").Input("plenty");
        await stock.Find("form").SubmitAsync();
        Assert.StartsWith(
            "Give the amount in L",
            stock.Find("form [role=alert]").TextContent.Trim(),
            StringComparison.Ordinal
        );
        Assert.Equal("plenty", stock.Find("#m-amount").GetAttribute("value"));
    }

    /// <summary>An amount larger than one lot is taken from two, and what is not there is told.</summary>
    [Fact]
    public async Task Use_takes_the_lots_that_are_proposed()
    {
        await ReadyAsync();
        var stock = page.Render<StockPage>();
        stock.WaitForElement(".stocklist li");
        await stock.FindAll("button").First(b => b.TextContent == "Use, sell or move").ClickAsync();
        stock.Find("#m-good").Change("peat");
        stock.Find("#m-amount").Input("100");
        Assert.Equal(
            "Takes 42.3 L of PEAT-31, 57.7 L of PEAT-32.",
            stock.Find("form [role=status]").TextContent
        );
        stock.Find("#m-into").Change("mix-7");
        await stock.Find("form").SubmitAsync();
        stock.WaitForState(() => stock.Markup.Contains("Written: use 100 L", StringComparison.Ordinal));
        var book = (await Shelf.LoadAsync(Stop)).Book;
        Assert.False(book.Find("PEAT-31")!.HasSome);
        Assert.Equal(157.3, book.Find("PEAT-32")!.OnHand, 1e-9);
        stock.Find("#m-amount").Input("900");
        await stock.Find("form").SubmitAsync();
        Assert.Contains("742.7 L of peat are missing", stock.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_lot_tells_its_way_and_a_line_is_taken_back()
    {
        await ReadyAsync();
        var lot = page.Render<LotPage>(p => p.Add(l => l.Id, "mix-7"));
        lot.WaitForElement(".way");
        Assert.Contains(
            "BARK-12",
            lot.Find("[aria-label='came from']").TextContent,
            StringComparison.Ordinal
        );
        Assert.Contains("TANK-9", lot.Find("[aria-label='went into']").TextContent, StringComparison.Ordinal);
        // 68.1 L of parts gave 60 L.
        Assert.Contains("11.9 %", lot.Find(".facts").TextContent, StringComparison.Ordinal);
        Assert.Contains(
            "Pernille Voss",
            lot.Find("[aria-label=customers]").TextContent,
            StringComparison.Ordinal
        );
        await lot.Find("[aria-label^='Take back: used']").ClickAsync();
        lot.Find("#why").Change("another tank");
        await lot.Find(".history form").SubmitAsync();
        lot.WaitForState(() => lot.Markup.Contains("Nothing of it has left", StringComparison.Ordinal));
        Assert.Contains("Taken back", lot.Markup, StringComparison.Ordinal);
        Assert.Equal(60, (await Shelf.LoadAsync(Stop)).Book.Find("MIX-7")!.OnHand, 1e-9);
    }

    [Fact]
    public async Task A_hold_takes_what_was_made_from_it_too()
    {
        await ReadyAsync();
        var lot = page.Render<LotPage>(p => p.Add(l => l.Id, "PEAT-31"));
        lot.WaitForElement("#reason");
        var hold = lot.FindAll("form")
            .Single(f => f.TextContent.Contains("What was found", StringComparison.Ordinal));
        await hold.SubmitAsync();
        Assert.Contains("Say why", lot.Find("[role=alert]").TextContent, StringComparison.Ordinal);
        lot.Find("#reason").Change("gnat eggs");
        await lot.FindAll("form")
            .Single(f => f.TextContent.Contains("What was found", StringComparison.Ordinal))
            .SubmitAsync();
        lot.WaitForState(() => lot.Markup.Contains("2 lots are on hold", StringComparison.Ordinal));
        var book = (await Shelf.LoadAsync(Stop)).Book;
        Assert.Equal("on hold", book.Find("MIX-7")!.Bar(Today));
    }

    [Fact]
    public async Task A_phone_counts_by_the_digits_of_a_label()
    {
        await ReadyAsync();
        var count = page.Render<CountPage>();
        count.WaitForElement("#digits");
        count.Find("#number").Change($"PEAT-13-{LotNumber.Check("PEAT-31")}");
        await count.FindAll("form")[0].SubmitAsync();
        Assert.Contains("mistyped", count.Find("[role=alert]").TextContent, StringComparison.Ordinal);
        count.Find("#digits").Input("31");
        await count.Find(".choices button").ClickAsync();
        Assert.Equal("42.3", count.Find("#found").GetAttribute("value"));
        await count.Find("[aria-label='one less']").ClickAsync();
        await count.Find("[aria-label='one less']").ClickAsync();
        Assert.Contains("2 L less", count.Find("[role=status]").TextContent, StringComparison.Ordinal);
        count.Find("#cause").Change("spilled or torn");
        await count.Find("form").SubmitAsync();
        count.WaitForState(() => count.Markup.Contains("PEAT-31 is counted", StringComparison.Ordinal));
        var lot = (await Shelf.LoadAsync(Stop)).Book.Find("PEAT-31")!;
        Assert.Equal((40.3, "spilled or torn"), (Math.Round(lot.OnHand, 9), lot.Lines[^1].Line.Note));
    }

    /// <summary>
    /// What the book does not allow is told, and taken only when somebody says that it is wrong.
    /// </summary>
    [Fact]
    public async Task More_than_there_is_goes_out_only_when_told()
    {
        await ReadyAsync();
        var lot = page.Render<LotPage>(p => p.Add(l => l.Id, "OAK-4"));
        lot.WaitForElement("#m-amount");
        lot.Find("#m-wish").Change(nameof(StockWish.ThrowAway));
        lot.Find("#m-amount").Input("50");
        await lot.Find(".stockform").SubmitAsync();
        Assert.Contains(
            "OAK-4 has 46 left",
            lot.Find(".stockform [role=alert]").TextContent,
            StringComparison.Ordinal
        );
        lot.Find(".stockform [type=checkbox]").Change(true);
        await lot.Find(".stockform").SubmitAsync();
        lot.WaitForState(() => lot.Markup.Contains("Written", StringComparison.Ordinal));
        Assert.Equal(-4, (await Shelf.LoadAsync(Stop)).Book.Find("OAK-4")!.OnHand, 1e-9);
    }

    private static string Row(IRenderedComponent<StockPage> stock, string good) =>
        stock
            .FindAll(".stocklist > li")
            .Single(li => li.QuerySelector(".stockname")!.TextContent == good)
            .TextContent;

    public async ValueTask DisposeAsync()
    {
        await page.DisposeAsync();
        SqliteConnection.ClearAllPools();
        Directory.Delete(folder, recursive: true);
    }
}
