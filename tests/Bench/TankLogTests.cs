using Litterfall.Store;
using Microsoft.Playwright;

namespace Litterfall.Tests.Bench;

/// <summary>The log of a tank on a phone that loses its network.</summary>
public sealed class TankLogTests(Browser browser, SharedBench shared) : Visits(browser)
{
    private const string Ready = "body[data-ready=yes]";

    [Fact]
    public async Task Lines_written_without_a_network_arrive_once()
    {
        Assert.NotEmpty(shared.Url);
        using var bench = await RunningBench.StartAsync(demo: true);
        var store = new BenchStore(StoreFile.Contexts(bench.Store), new("test", "test"), TimeProvider.System);
        var before = (await store.CareAsync("B2", cancel: TestContext.Current.CancellationToken)).Count;
        var page = await PageAsync(isPhone: true);
        await page.GotoAsync($"{bench.Url}/tanks/B2/log");
        await page.WaitForSelectorAsync(Ready);
        await page.WaitForSelectorAsync("#how:has-text('without a network')");
        await page.Context.SetOfflineAsync(true);
        await WriteAsync(page, "Drained", "1.2");
        await WriteAsync(page, "Level", "1.5");
        await page.ReloadAsync();
        await page.WaitForSelectorAsync(Ready);
        await WriteAsync(page, "Misted", "40");
        await page.WaitForSelectorAsync("#state:has-text('3 lines wait to be sent')");
        await page.Context.SetOfflineAsync(false);
        await page.WaitForFunctionAsync("() => document.querySelectorAll('#lines .sent').length === 3");
        await page.ReloadAsync();
        await page.WaitForSelectorAsync(Ready);
        var lines = await store.CareAsync("B2", cancel: TestContext.Current.CancellationToken);
        Assert.Equal(before + 3, lines.Count);
        Assert.Equal([1200.0, 15.0, 40.0], lines.TakeLast(3).Select(l => l.Amount!.Value));
    }

    private static async Task WriteAsync(IPage page, string kind, string number)
    {
        await page.Locator("#kinds button", new() { HasTextString = kind }).First.ClickAsync();
        foreach (var sign in number)
        {
            await page.Locator($".keys button:text-is('{sign}')").ClickAsync();
        }

        await page.ClickAsync("dialog button:has-text('Write it')");
        await page.WaitForSelectorAsync(
            "dialog:not([open])",
            new() { State = WaitForSelectorState.Attached }
        );
    }
}
