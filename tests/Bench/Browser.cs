using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

[assembly: AssemblyFixture(typeof(Litterfall.Tests.Bench.Browser))]

namespace Litterfall.Tests.Bench;

/// <summary>Debian's own Chromium; tests skip with a reason where it is missing.</summary>
public sealed class Browser : IAsyncLifetime
{
    private const string Program = "/usr/bin/chromium";
    private static readonly string[] Quiet =
    [
        "--no-sandbox",
        "--disable-gpu",
        "--enable-unsafe-swiftshader",
        "--disable-quic",
        "--no-first-run",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync",
    ];

    private const int Patience = 90_000;

    private IPlaywright? playwright;
    private IBrowser? browser;

    /// <inheritdoc/>
    public async ValueTask InitializeAsync()
    {
        if (!File.Exists(Program))
        {
            return;
        }

        // A condition is waited for as long as a busy machine may take; a good page meets it at once.
        Assertions.SetDefaultExpectTimeout(Patience);
        playwright = await Playwright.CreateAsync();
        browser = await playwright.Chromium.LaunchAsync(new() { ExecutablePath = Program, Args = Quiet });
    }

    /// <summary>A page of a size; the phone has a finger, no mouse.</summary>
    public async Task<IPage> PageAsync(bool isPhone = false, bool isDark = false)
    {
        Assert.SkipUnless(browser is not null, "chromium is not installed");
        var context = await browser!.NewContextAsync(
            new()
            {
                ViewportSize = isPhone
                    ? new() { Width = 390, Height = 844 }
                    : new() { Width = 1440, Height = 950 },
                HasTouch = isPhone,
                ColorScheme = isDark ? ColorScheme.Dark : ColorScheme.Light,
                ReducedMotion = ReducedMotion.Reduce,
                AcceptDownloads = true,
            }
        );
        context.SetDefaultTimeout(Patience);
        return await context.NewPageAsync();
    }

    /// <summary>No violation of the axe rules.</summary>
    public static async Task AxeAsync(IPage page, string what)
    {
        var result = await page.RunAxe();
        Assert.True(
            result.Violations.Length == 0,
            $"{what}: "
                + string.Join(
                    "; ",
                    result.Violations.Select(v => $"{v.Id}, {v.Help}, {v.Nodes.Length}: {v.Nodes[0].Html}")
                )
        );
    }

    /// <summary>Nothing is wider than the screen.</summary>
    public static async Task FitsAsync(IPage page) =>
        Assert.True(
            await page.EvaluateAsync<bool>(
                "() => document.documentElement.scrollWidth <= document.documentElement.clientWidth + 1"
            ),
            "the page scrolls sideways"
        );

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        if (browser is not null)
        {
            await browser.DisposeAsync();
        }

        playwright?.Dispose();
    }
}
