using UglyToad.PdfPig;

namespace Litterfall.Tests.Bench;

/// <summary>
/// The cutting table of the demo: planned, cut one after the other on a phone, written, taken back.
/// </summary>
public sealed class CuttingJourneyTests(Browser browser, SharedBench shared) : Visits(browser)
{
    private static string Says(string status) => $"main :text('{status}')";

    [Fact]
    public async Task A_roll_is_planned_and_cut()
    {
        Assert.NotEmpty(shared.Url);
        using var bench = await RunningBench.StartAsync(demo: true);
        var page = await PageAsync(isPhone: true);
        await GoAsync(page, $"{bench.Url}/table");
        var card = page.Locator(".batchcards > li", new() { HasText = "fly screen" });
        await card.Locator("button:has-text('Plan the cutting')").ClickAsync();
        await card.Locator("a:has-text('Open plan 3')").ClickAsync(new() { Timeout = 60_000 });
        await page.WaitForSelectorAsync("main h1:has-text('Plan 3')");
        await page.ClickAsync("button[aria-label='Next cut']");
        await page.WaitForSelectorAsync(".cutstep:has-text('Cut 1:')");
        var sheets = await page.GetAttributeAsync("a:has-text('Print cut sheets')", "href");
        var sent = await page.APIRequest.GetAsync(bench.Url + sheets);
        using var pdf = PdfDocument.Open(await sent.BodyAsync());
        Assert.Contains("print at 100 %", pdf.GetPage(2).Text, StringComparison.Ordinal);
        await page.FillAsync("#minutes", "20");
        await page.ClickAsync("button:has-text('Write as cut')");
        await page.WaitForSelectorAsync(Says("offcuts are on the rack"));
        await GoAsync(page, $"{bench.Url}/orders/203");
        await page.WaitForSelectorAsync(Says("20 min"));
        await GoAsync(page, $"{bench.Url}/table/3");
        await page.ClickAsync("button:has-text('Take the cutting back')");
        await page.WaitForSelectorAsync(Says("stock and hours are as before"));
    }
}
