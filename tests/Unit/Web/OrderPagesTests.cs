using Bunit;
using Litterfall.App.Files;
using Litterfall.Domain.Trade;
using Litterfall.Store;
using Litterfall.UnitTests.House;
using Litterfall.Web;
using Litterfall.Web.Library;
using Litterfall.Web.Pages;
using Litterfall.Web.Shop.Orders;
using Litterfall.Workshop.Demo;
using Litterfall.Workshop.Orders;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.DependencyInjection;

namespace Litterfall.UnitTests.Web;

/// <summary>Pages of orders, from the enquiry to the credit, rendered without a browser.</summary>
public sealed class OrderPagesTests : IAsyncDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("litterfall-orders").FullName;
    private readonly BunitContext page = new();

    private static CancellationToken Stop => Xunit.TestContext.Current.CancellationToken;

    private static DateOnly Today => DateOnly.FromDateTime(DateTime.Now);

    private async Task<BenchStore> ReadyAsync()
    {
        var catalog = Shop.Embedded();
        BenchHost.AddStore(
            page.Services,
            new BenchOptions(catalog, [], "1.0"),
            StoreFile.Contexts(Path.Combine(folder, "bench.db"))
        );
        page.JSInterop.Mode = JSRuntimeMode.Loose;
        var store = page.Services.GetRequiredService<BenchStore>();
        await store.OpenAsync(Stop);
        var change = new ShopChange("Ilse").Keep(ShopTerms.Key, 0, DemoShop.Terms, "terms");
        foreach (var good in DemoGoods.All(catalog))
        {
            change.Keep(good.Key, 0, good, "new");
        }

        foreach (var offer in DemoGoods.Offers(catalog))
        {
            change.Keep(offer.Key, 0, offer, "new");
        }

        change.Keep("voss", 0, new Customer { Key = "voss", Name = "Pernille Voss" }, "new");
        await store.WriteAsync(change, Stop);
        return store;
    }

    private static async Task<Guid> DesignAsync(BenchStore store)
    {
        var text = File.ReadAllText(Path.Combine(SourceTree.Root, "samples", "ld-204-shop-kits.viv.yaml"))
            .Replace("workshop: lantern-ditch", "", StringComparison.Ordinal);
        return (await store.AddAsync("Shop kits", text, "begun", Stop)).Id;
    }

    /// <summary>An order whose design was looked at, so that no whole check runs in the background.</summary>
    private static async Task<int> OrderAsync(BenchStore store, Guid design) =>
        (
            await store.WriteAsync(
                new ShopChange("Ilse").KeepNumbered<Order>(
                    n => new Order
                    {
                        Number = n,
                        Customer = "voss",
                        Promised = Today.AddDays(60),
                        Items =
                        [
                            new OrderItem
                            {
                                Kind = OrderItemKind.Kit,
                                Name = "Shop kits",
                                Design = design,
                                Version = 1,
                                Amount = 8,
                                Harm = "",
                            },
                        ],
                        History = [new OrderEvent(DateTime.UtcNow, "Ilse", OrderState.Enquiry, "Asked for.")],
                    },
                    "enquiry"
                ),
                Stop
            )
        ).Records[0];

    [Fact]
    public async Task An_enquiry_of_a_new_customer_is_kept_whole()
    {
        var store = await ReadyAsync();
        var design = await DesignAsync(store);
        page.Services.GetRequiredService<Microsoft.AspNetCore.Components.NavigationManager>()
            .NavigateTo($"/orders/new?design={design}");
        var form = page.Render<NewOrder>();
        form.WaitForElement(".itemrow");
        await form.Find("form").SubmitAsync();
        Assert.Contains(
            "name of the customer",
            form.Find("[role=alert]").TextContent,
            StringComparison.Ordinal
        );
        Assert.Empty(await store.RecordsAsync<Order>(Stop));
        form.Find("#customer-name").Change("Marl Street Dental");
        form.Find("#promised").Change(Today.AddDays(-1).ToString("yyyy-MM-dd"));
        await form.Find("form").SubmitAsync();
        Assert.Contains("is over", form.Find("[role=alert]").TextContent, StringComparison.Ordinal);
        Assert.Single(await store.RecordsAsync<Customer>(Stop));
        form.Find("#promised").Change(Today.AddDays(90).ToString("yyyy-MM-dd"));
        await form.Find("form").SubmitAsync();
        var order = Assert.Single(await store.RecordsAsync<Order>(Stop)).Value;
        Assert.Equal(("marl-street-dental", 1), (order.Customer, order.Items[0].Version));
        Assert.Equal(OrderState.Enquiry, order.History[^1].State);
    }

    [Fact]
    public async Task An_order_goes_from_quote_to_credit_and_its_numbers_never_gap()
    {
        var store = await ReadyAsync();
        var number = await OrderAsync(store, await DesignAsync(store));
        var desk = page.Render<OrderPage>(p => p.Add(o => o.Number, number));
        desk.WaitForElement(".optiontable", TimeSpan.FromSeconds(20));
        Assert.Equal(3, desk.FindAll(".optionforms fieldset").Count);
        await Click(desk, "Issue the quote");
        desk.WaitForState(() => desk.FindAll("#sent ~ .card").Count == 1);
        var quote = Assert.Single(await store.QuotesAsync(number, Stop));
        Assert.Equal(3, quote.Options.Count);
        Assert.All(quote.Options, o => Assert.Equal(o.Net, o.Lines.Sum(l => l.Net)));
        await desk.Find($"[aria-label='Customer took this: Kit of {quote.Name}']").ClickAsync();
        desk.WaitForElement("[aria-label=payment]");
        var order = (await store.OrderAsync(number, Stop))!.Value;
        Assert.Equal((OrderState.Accepted, quote.Options[0].Gross), (order.State, order.Gross));
        Assert.Contains("deposit", desk.Find(".findings").TextContent, StringComparison.Ordinal);
        await desk.Find("form[aria-label=payment]").SubmitAsync();
        order = (await store.OrderAsync(number, Stop))!.Value;
        Assert.Equal(order.Deposit, order.Paid);
        await Click(desk, "Issue invoice");
        var invoice = Assert.Single(await store.InvoicesAsync(number, Stop));
        Assert.Equal(order.Gross - order.Deposit, invoice.Due);
        await Click(desk, "Issue invoice");
        Assert.Contains("stands already", desk.Find("[role=alert]").TextContent, StringComparison.Ordinal);
        desk.Find("#credit-reason").Change("wrong address");
        await desk.Find($"[aria-label='Take back with a credit: {invoice.Name}']").ClickAsync();
        await Click(desk, "Issue invoice");
        var papers = await store.InvoicesAsync(number, Stop);
        Assert.Equal(
            ["I-0001", "C-0001", "I-0002"],
            papers
                .OrderBy(p =>
                    p.Kind == IssuedKind.Credit ? 1
                    : p.Number == 1 ? 0
                    : 2
                )
                .Select(p => p.Name)
        );
        Assert.Equal("I-0001", papers.Single(p => p.Kind == IssuedKind.Credit).TakesBack);
    }

    [Fact]
    public async Task Another_window_is_told_and_nothing_is_half_saved()
    {
        var store = await ReadyAsync();
        var number = await OrderAsync(store, await DesignAsync(store));
        var desk = page.Render<OrderPage>(p => p.Add(o => o.Number, number));
        desk.WaitForElement("#order-notes");
        var kept = (await store.OrderAsync(number, Stop))!;
        await store.WriteAsync(
            new ShopChange("Tobin").Keep(
                kept.Key,
                kept.Version,
                kept.Value with
                {
                    Notes = "theirs",
                },
                "notes"
            ),
            Stop
        );
        desk.Find("#order-notes").Change("mine");
        desk.WaitForState(() => desk.FindAll("[role=alert]").Count > 0);
        Assert.Contains("another window", desk.Find("[role=alert]").TextContent, StringComparison.Ordinal);
        Assert.Equal("theirs", (await store.OrderAsync(number, Stop))!.Value.Notes);
        Assert.Equal("theirs", desk.Find("#order-notes").GetAttribute("value"));
    }

    [Fact]
    public async Task The_board_and_the_list_of_designs_show_the_order()
    {
        var store = await ReadyAsync();
        var design = await DesignAsync(store);
        var number = await OrderAsync(store, design);
        var board = page.Render<OrdersPage>();
        board.WaitForElement(".orders li");
        Assert.Contains("Pernille Voss", board.Find(".orders li").TextContent, StringComparison.Ordinal);
        Assert.Contains("No quote was sent yet.", board.Markup, StringComparison.Ordinal);
        board.Find("#find-order").Input("nobody");
        board.WaitForState(() => board.FindAll(".orders li").Count == 0);
        var home = page.Render<Home>();
        home.WaitForState(() => home.FindAll(".designs li").Count == 1);
        var card = home.Find(".designs li").TextContent;
        Assert.Contains($"Order {number}", card, StringComparison.Ordinal);
        Assert.Contains("Enquiry", card, StringComparison.Ordinal);
        Assert.Contains("Pernille Voss", card, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Hours_are_read_as_people_write_them()
    {
        var store = await ReadyAsync();
        var number = await OrderAsync(store, await DesignAsync(store));
        var desk = page.Render<OrderPage>(p => p.Add(o => o.Number, number));
        desk.WaitForElement("#worked");
        foreach (var (typed, minutes) in new[] { ("1:30", 90.0), ("45 min", 45), ("1,5 h", 90), ("20", 20) })
        {
            desk.Find("#worked").Change(typed);
            await desk.Find("form[aria-label='worked time']").SubmitAsync();
            Assert.Equal(minutes, (await store.OrderAsync(number, Stop))!.Value.Worked[^1].Minutes);
        }

        desk.Find("#worked").Change("a while");
        await desk.Find("form[aria-label='worked time']").SubmitAsync();
        Assert.Contains(
            "“a while” is no time",
            desk.Find("[role=alert]").TextContent,
            StringComparison.Ordinal
        );
        Assert.Equal(4, (await store.OrderAsync(number, Stop))!.Value.Worked.Count);
    }

    [Fact]
    public async Task Papers_and_the_journal_are_served()
    {
        await using var program = await ProgramUnderTest.StartAsync();
        await program.Store.WriteAsync(new ShopChange("Ilse").Issue(IssuedKind.Delivery, 1, n => new Invoice
        {
            Kind = IssuedKind.Delivery,
            Number = n,
            Name = IssuedName.From("D-", n),
            Order = 1,
            Day = Today,
            Shop = DemoShop.Terms,
            Customer = DemoShop.Customers[0],
            Lines = [new QuoteLine("tank", 1, 0)],
        }), Stop);
        var (code, body, answer) = await program.AskAsync("GET", "/issued/delivery/1.pdf", null);
        Assert.Equal((200, "application/pdf"), (code, answer.Content.Headers.ContentType!.MediaType));
        Assert.StartsWith("%PDF", body, StringComparison.Ordinal);
        Assert.Equal(404, (await program.AskAsync("GET", "/issued/invoice/1.pdf", null)).Code);
        Assert.Equal(404, (await program.AskAsync("GET", "/quote/1.pdf", null)).Code);
        var journal = await program.AskAsync("GET", "/journal.csv?from=2026-01-01", null);
        Assert.Contains("date,kind,number", journal.Body, StringComparison.Ordinal);
        // A device that is not paired gets nothing of it.
        Assert.NotEqual(200, (await program.AskAsync("GET", "/journal.csv")).Code);
    }

    private static Task Click(IRenderedComponent<OrderPage> desk, string words) =>
        desk.FindAll("button").First(b => b.TextContent.Trim() == words).ClickAsync();

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        await page.DisposeAsync();
        SqliteConnection.ClearAllPools();
        Directory.Delete(folder, recursive: true);
    }
}
