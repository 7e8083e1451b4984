using Microsoft.Playwright;
using UglyToad.PdfPig;

namespace Litterfall.Tests.Bench;

/// <summary>
/// The week of the invented workshop on the bench: from the quote that is taken to the invoice.
/// </summary>
public sealed class WorkshopJourneyTests(Browser browser, SharedBench shared) : Visits(browser)
{
    private static string Says(string status) => $"main :text('{status}')";

    [Fact]
    public async Task A_quote_is_taken_paid_built_and_billed()
    {
        Assert.NotEmpty(shared.Url);
        using var bench = await RunningBench.StartAsync(demo: true);
        var page = await PageAsync();
        await GoAsync(page, $"{bench.Url}/orders/202");
        await page.ClickAsync("button[aria-label^='Customer took this: planted of Q-0042']");
        await page.WaitForSelectorAsync("main h1 ~ .chip:has-text('Accepted'), .chip:text-is('Accepted')");
        await page.WaitForSelectorAsync(Says("not paid yet"));
        var deposit = await page.GetAttributeAsync("#pay-amount", "placeholder");
        await page.FillAsync("#pay-amount", deposit!);
        await page.ClickAsync("button:has-text('Record payment')");
        await page.WaitForSelectorAsync(Says(", paid"));
        // Its piece of mesh leaves a gap where frogs get under: nobody begins it so.
        await page.WaitForSelectorAsync(Says("would harm its animals"), new() { Timeout = 120_000 });
        await page.ClickAsync("button:has-text('Start work')");
        await page.WaitForSelectorAsync(Says("send a change order first"));
        await GoAsync(page, $"{bench.Url}/orders/201");
        await page.WaitForSelectorAsync(
            Says("nothing found that would harm its animals"),
            new() { Timeout = 120_000 }
        );
        await page.ClickAsync("button:has-text('Mark ready')");
        await page.WaitForSelectorAsync(".chip:text-is('Ready')");
        await page.ClickAsync("button:has-text('Record delivery')");
        await page.WaitForSelectorAsync(".chip:text-is('Delivered')");
        await page.ClickAsync("button:has-text('Issue invoice')");
        var invoice = page.Locator("a:has-text('Invoice I-0041')");
        await invoice.WaitForAsync();
        await page.ReloadAsync();
        await invoice.WaitForAsync();
        var text = await TextAsync(page, (await invoice.GetAttributeAsync("href"))!);
        Assert.Contains("PernilleVoss", text, StringComparison.Ordinal);
        Assert.Contains("I-0041", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_missing_is_bought_and_comes_in_as_lots()
    {
        Assert.NotEmpty(shared.Url);
        using var bench = await RunningBench.StartAsync(demo: true);
        var page = await PageAsync();
        await GoAsync(page, $"{bench.Url}/buying");
        await page.ClickAsync("button:has-text('Plan the purchase')");
        await page.WaitForSelectorAsync(Says("No cheaper purchase exists"));
        await page.ClickAsync("button:has-text('Put it on the list')");
        var bulk = page.Locator("article.purchase", new() { HasText = "Hollow Reed" });
        await bulk.Locator("button:has-text('It is ordered')").ClickAsync();
        await bulk.Locator(".chip:text-is('ordered')").WaitForAsync();
        var list = await bulk.Locator("a:has-text('Purchase list')").GetAttributeAsync("href");
        Assert.Contains("HollowReed", await TextAsync(page, list!), StringComparison.Ordinal);
        await bulk.Locator("button:has-text('It came')").ClickAsync();
        await bulk.Locator("#paid-0").FillAsync("7,15");
        await bulk.Locator("button:has-text('Take it in')").ClickAsync();
        await page.WaitForSelectorAsync(Says("Came in:"));
        await bulk.Locator(".chip:text-is('came')").WaitForAsync();
        await GoAsync(page, $"{bench.Url}/workshop/prices");
        await page.FillAsync("#find-price", "hollow");
        await page.WaitForSelectorAsync("td:has-text('7.15')");
    }

    [Fact]
    public async Task A_price_list_is_seen_before_it_is_taken()
    {
        Assert.NotEmpty(shared.Url);
        using var bench = await RunningBench.StartAsync(demo: true);
        var page = await PageAsync();
        await GoAsync(page, $"{bench.Url}/workshop/import");
        await page.WaitForSelectorAsync(
            "#list-supplier option >> nth=1",
            new() { State = WaitForSelectorState.Attached }
        );
        await page.ClickAsync("summary:has-text('Paste')");
        await page.FillAsync("#pasted", "Artikel;Gebinde;Preis\nfine bark;20 L;10,40\ncharcoal;5 L;n/a\n");
        await page.ClickAsync("button:has-text('Read what is pasted')");
        await page.WaitForSelectorAsync(Says("is no price of a pack"));
        await page.ClickAsync("button:has-text('Take 1 pack')");
        await page.WaitForSelectorAsync(Says("Took 1 pack."));
    }

    private static async Task<string> TextAsync(IPage page, string address)
    {
        var answer = await page.APIRequest.GetAsync(new Uri(new Uri(page.Url), address).ToString());
        Assert.True(answer.Ok);
        using var pdf = PdfDocument.Open(await answer.BodyAsync());
        return string.Concat(pdf.GetPages().Select(p => p.Text)).Replace(" ", "", StringComparison.Ordinal);
    }
}
