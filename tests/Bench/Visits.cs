using Microsoft.Playwright;

namespace Litterfall.Tests.Bench;

/// <summary>Pages of one test; they are left when it ends, so that no desk goes on computing.</summary>
public abstract class Visits(Browser browser) : IAsyncDisposable
{
    /// <summary>The design that most tests take.</summary>
    protected const string Usual = "LD-201 flat tenant";

    private readonly List<IPage> pages = [];

    /// <summary>An empty page of a person of their own.</summary>
    protected async Task<IPage> PageAsync(bool isPhone = false, bool isDark = false)
    {
        var page = await browser.PageAsync(isPhone, isDark);
        pages.Add(page);
        return page;
    }

    /// <summary>A page that answers.</summary>
    protected static async Task GoAsync(IPage page, string url)
    {
        await page.GotoAsync(url);
        await page.WaitForSelectorAsync("main h1");
    }

    /// <summary>A desk at which all is computed and every handle listens.</summary>
    protected async Task<IPage> DeskAsync(string url, bool isPhone = false)
    {
        var page = await PageAsync(isPhone);
        await page.GotoAsync(url);
        await SettledAsync(page);
        return page;
    }

    /// <summary>The desk listens and has a verdict of what it shows.</summary>
    protected static async Task SettledAsync(IPage page)
    {
        await page.WaitForSelectorAsync("#sheet[data-live]");
        await page.WaitForSelectorAsync(".verdictline .verdict:not(.old)");
    }

    /// <summary>Nothing on the page has changed for a third of a second, and its type is there.</summary>
    protected static Task StillAsync(IPage page) =>
        page.EvaluateAsync(
            """
            () => document.fonts.ready.then(() => new Promise(done => {
                let [last, same] = ["", 0];
                const look = () => {
                    const now = document.querySelector("main").innerHTML;
                    same = now === last ? same + 1 : 0;
                    last = now;
                    same < 4 ? setTimeout(look, 80) : done();
                };
                look();
            }))
            """
        );

    /// <summary>Types into a field of a part and leaves it.</summary>
    protected static async Task FieldAsync(IPage page, string id, string part, string value)
    {
        if (await page.Locator($"#{id}").CountAsync() == 0)
        {
            await PartAsync(page, part);
        }

        await page.FillAsync($"#{id}", value);
        await page.Keyboard.PressAsync("Tab");
    }

    /// <summary>Takes a part in hand; on a narrow screen the parts are behind a button.</summary>
    protected static async Task PartAsync(IPage page, string part)
    {
        if (await page.Locator(".partsbutton").IsVisibleAsync())
        {
            await page.ClickAsync(".partsbutton");
        }

        await page.ClickAsync($".parts .part:text-is('{part}')");
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        GC.SuppressFinalize(this);
        foreach (var page in pages)
        {
            await page.Context.CloseAsync();
        }
    }
}
