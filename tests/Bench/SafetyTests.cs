using Microsoft.Playwright;

namespace Litterfall.Tests.Bench;

/// <summary>Nothing is lost: two people at one design, and the plug pulled in the middle of saving.</summary>
public sealed class SafetyTests(Browser browser, SharedBench shared) : Visits(browser)
{
    private static readonly int Rounds =
        Environment.GetEnvironmentVariable("LITTERFALL_LONG") == "1" ? 200 : 1;

    [Fact]
    public async Task What_one_changes_the_other_sees()
    {
        var url = await shared.CopyAsync(Usual);
        var one = await DeskAsync(url);
        var other = await DeskAsync(url);
        await FieldAsync(one, "f-floor-litter-depth", "Leaf litter", "4 cm");
        await Assertions.Expect(one.Locator(".tools")).ToContainTextAsync("Version 2");
        await Assertions.Expect(other.Locator(".tools")).ToContainTextAsync("Version 2");
        await Assertions
            .Expect(other.Locator(".told"))
            .ToContainTextAsync("This design was changed in another window");
        await FieldAsync(other, "f-floor-litter-depth", "Leaf litter", "5 cm");
        await Assertions.Expect(one.Locator(".tools")).ToContainTextAsync("Version 3");
    }

    /// <summary>
    /// The plug is pulled while fields are typed, twice, or 200 times in the long form; after each start
    /// every version that was shown as saved is there, and the file is sound.
    /// </summary>
    [Fact]
    public async Task A_killed_bench_keeps_every_change_it_had_told_as_saved()
    {
        var folder = Directory.CreateTempSubdirectory("litterfall-kill").FullName;
        var store = Path.Combine(folder, "bench.db");
        var told = 1;
        var bench = await RunningBench.StartAsync(store, demo: true);
        var page = await OpenAsync(bench);
        for (var round = 0; round < Rounds; round++)
        {
            for (var i = 0; i < 3; i++)
            {
                var depth = $"{3 + (round % 3)}.{i + 1} cm";
                await FieldAsync(page, "f-floor-litter-depth", "Leaf litter", depth);
                told++;
                await Assertions.Expect(page.Locator(".tools")).ToContainTextAsync($"Version {told}");
            }

            await BeginAsync(page, bench.Url, round);
            bench.Kill();
            bench.Dispose();
            await page.Context.CloseAsync();
            Assert.Null(Litterfall.Store.StoreFile.Trouble(store));
            bench = await RunningBench.StartAsync(store);
            page = await OpenAsync(bench);
            var shown = await page.Locator(".tools").InnerTextAsync();
            var late = shown.Contains($"Version {told + 1}", StringComparison.Ordinal);
            Assert.True(late || shown.Contains($"Version {told}", StringComparison.Ordinal), shown);
            told += late ? 1 : 0;
        }

        bench.Dispose();
        Assert.Null(Litterfall.Store.StoreFile.Trouble(store));
        Directory.Delete(folder, recursive: true);
    }

    /// <summary>
    /// One more write of some kind is on its way when the plug is pulled: it may or may not arrive.
    /// </summary>
    private static async Task BeginAsync(IPage page, string url, int round)
    {
        switch (round % 4)
        {
            case 0:
                await page.FillAsync("#f-floor-litter-depth", $"{7 + (round % 2)} cm");
                await page.Keyboard.PressAsync("Tab");
                break;
            case 1:
                await GoAsync(page, url + "/units");
                await page.ClickAsync("text=All US");
                break;
            case 2:
                await GoAsync(page, url);
                await page.Locator("ul.designs button:text-is('Copy')").Last.ClickAsync();
                break;
            default:
                await GoAsync(page, url);
                await page.Locator("ul.designs button:text-is('Archive')").Last.ClickAsync();
                break;
        }

        await page.WaitForTimeoutAsync((round % 7 * 10) + (round % 4 == 2 ? 150 : 0));
    }

    [Fact]
    public async Task A_bench_that_goes_away_is_told_and_taken_up_again()
    {
        var folder = Directory.CreateTempSubdirectory("litterfall-away").FullName;
        var store = Path.Combine(folder, "bench.db");
        using var bench = await RunningBench.StartAsync(store, demo: true);
        var page = await OpenAsync(bench);
        await FieldAsync(page, "f-floor-litter-depth", "Leaf litter", "4 cm");
        await Assertions.Expect(page.Locator(".tools")).ToContainTextAsync("Version 2");
        bench.Kill();
        await Assertions.Expect(page.Locator("#away")).ToBeVisibleAsync();
        using var again = await RunningBench.StartAsync(store, port: new Uri(bench.Url).Port);
        await Assertions.Expect(page.Locator("#away")).Not.ToBeVisibleAsync();
        await Assertions.Expect(page.Locator(".tools")).ToContainTextAsync("Version 2");
        await FieldAsync(page, "f-floor-litter-depth", "Leaf litter", "5 cm");
        await Assertions.Expect(page.Locator(".tools")).ToContainTextAsync("Version 3");
        again.Kill();
        Directory.Delete(folder, recursive: true);
    }

    private async Task<IPage> OpenAsync(RunningBench bench)
    {
        var page = await PageAsync();
        await GoAsync(page, bench.Url);
        await page.ClickAsync($"ul.designs a:text-is('{Usual}')");
        await page.WaitForSelectorAsync("#sheet[data-live]");
        return page;
    }
}
