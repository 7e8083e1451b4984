using Microsoft.Playwright;

namespace Litterfall.Tests.Bench;

/// <summary>
/// Every page: no axe violation, nothing wider than the screen, nothing from outside the machine.
/// </summary>
[Collection("one bench at a time")]
public sealed class LooksTests(Browser browser)
{
    [Theory]
    [InlineData(false, false)]
    [InlineData(true, false)]
    [InlineData(false, true)]
    public async Task Every_page_is_complete(bool isPhone, bool isDark)
    {
        using var bench = await RunningBench.StartAsync(demo: true);
        var page = await browser.PageAsync(isPhone, isDark);
        var outside = new List<string>();
        page.Request += (_, request) =>
        {
            if (
                !request.Url.StartsWith(bench.Url, StringComparison.Ordinal)
                && !request.Url.StartsWith("data:", StringComparison.Ordinal)
            )
            {
                outside.Add(request.Url);
            }
        };
        await LookAsync(page, bench.Url, "designs", ".examples svg");
        var design = await page.Locator("ul.designs a").First.GetAttributeAsync("href");
        await LookAsync(page, bench.Url + design, "desk", ".sheet svg");
        await page.WaitForTimeoutAsync(1500);
        await Browser.AxeAsync(page, "desk, computed");
        await LookAsync(page, bench.Url + design + "/versions", "versions", "table");
        await LookAsync(page, bench.Url + design + "/resize", "another size", "form");
        var id = design!.Split('/')[^1];
        await LookAsync(page, $"{bench.Url}/compare?a={id}&b={id}", "side by side", ".beside svg");
        await LookAsync(page, bench.Url + "/library", "library", "table");
        await LookAsync(page, bench.Url + "/library/folsomia-candida", "library entry", "table");
        await LookAsync(page, bench.Url + "/measure", "measure", "form");
        await LookAsync(page, bench.Url + "/units", "units", "form");
        Assert.Empty(outside);
    }

    /// <summary>Units are remembered for each kind of quantity.</summary>
    [Fact]
    public async Task Units_are_remembered()
    {
        using var bench = await RunningBench.StartAsync(demo: true);
        var page = await browser.PageAsync();
        await page.GotoAsync(bench.Url + "/units", new() { WaitUntil = WaitUntilState.NetworkIdle });
        await page.SelectOptionAsync("#unit-temperature", "F");
        await Assertions.Expect(page.Locator("main [role=status]").Last).ToContainTextAsync("remembered");
        await page.GotoAsync(bench.Url, new() { WaitUntil = WaitUntilState.NetworkIdle });
        await page.ClickAsync("ul.designs a:text-is('LD-201 flat tenant')");
        await page.WaitForSelectorAsync(".findings li");
        await Assertions.Expect(page.Locator("[aria-labelledby=p-air]")).ToContainTextAsync("°F");
    }

    private static async Task LookAsync(IPage page, string url, string what, string until)
    {
        await page.GotoAsync(url, new() { WaitUntil = WaitUntilState.NetworkIdle });
        await page.WaitForSelectorAsync(until);
        await Browser.AxeAsync(page, what);
        await Browser.FitsAsync(page);
        Assert.Equal(1, await page.Locator("h1").CountAsync());
    }
}
