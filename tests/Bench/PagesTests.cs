using Microsoft.Playwright;

namespace Litterfall.Tests.Bench;

/// <summary>
/// Pages beside the desk at four sizes, light and dark: nothing wider than the screen, no axe violation,
/// targets for a finger, letters that can be read.
/// </summary>
public sealed class PagesTests(Browser browser, SharedBench bench) : Visits(browser)
{
    /// <summary>44 px: WCAG 2.2, 2.5.5, target size; links within a sentence are excepted.</summary>
    private const string SmallTargets = """
        () => [...document.querySelectorAll(
            "main button, main a.button, main select, main summary, nav a, main label > input, main input")]
            .filter(e => e.getClientRects().length && !e.disabled)
            .filter(e => {
                const on = e.matches("[type=radio], [type=checkbox]") ? e.closest("label") ?? e : e;
                const at = on.getBoundingClientRect();
                return at.height < 43.5 || at.width < 43.5;
            })
            .map(e => `${e.tagName} ${(e.textContent || e.id || e.name).trim().slice(0, 30)}`)
        """;

    private const string SmallLetters = """
        () => [...document.querySelectorAll("main *")].filter(e =>
            [...e.childNodes].some(n => n.nodeType === 3 && n.textContent.trim())
            && !e.closest(".visually-hidden, svg") && e.getClientRects().length
            && parseFloat(getComputedStyle(e).fontSize) < 13.9)
            .map(e => e.textContent.trim().slice(0, 40))
        """;

    /// <summary>Contrast of placeholders, WCAG 2.2, 1.4.3: 4.5 to 1.</summary>
    private const string PalePlaceholders = """
        () => {
            const linear = v => v <= .04045 ? v / 12.92 : ((v + .055) / 1.055) ** 2.4;
            const light = c => {
                const [r, g, b] = c.match(/[\d.]+/g).slice(0, 3).map(v => linear(v / 255));
                return .2126 * r + .7152 * g + .0722 * b;
            };
            const fields = [...document.querySelectorAll("input[placeholder]")];
            return fields.filter(e => e.getClientRects().length).filter(e => {
                const a = light(getComputedStyle(e, "::placeholder").color);
                const b = light(getComputedStyle(e).backgroundColor);
                return (Math.max(a, b) + .05) / (Math.min(a, b) + .05) < 4.5;
            }).map(e => e.id);
        }
        """;

    /// <summary>Sizes, dark or light, and whether axe looks too: it takes most of the time.</summary>
    public static TheoryData<int, int, bool, bool> Sizes =>
        new()
        {
            { 1440, 900, false, true },
            { 1366, 768, true, IsLong },
            { 820, 1180, false, IsLong },
            { 390, 844, true, true },
        };

    private static bool IsLong => Environment.GetEnvironmentVariable("LITTERFALL_LONG") is "1";

    [Theory]
    [MemberData(nameof(Sizes))]
    public async Task Every_page_fits_and_is_reached_by_a_finger(
        int width,
        int height,
        bool isDark,
        bool hasAxe
    )
    {
        var page = await PageAsync(isPhone: width < 500, isDark);
        await page.SetViewportSizeAsync(width, height);
        var design = await bench.CopyAsync("LD-204 shop kits");
        foreach (var ((path, until), i) in Pages(design).Select((p, i) => (p, i)))
        {
            await GoAsync(page, path);
            await page.WaitForSelectorAsync(until);
            var what = $"{path[bench.Url.Length..]} at {width}";
            // In the short run each page is looked at once: on a light desk or on a dark phone.
            if (hasAxe && (IsLong || i % 2 == 0 == width > 500))
            {
                await Browser.AxeAsync(page, what);
            }

            await Browser.FitsAsync(page);
            Assert.Equal(1, await page.Locator("h1").CountAsync());
            foreach (var rule in new[] { SmallTargets, SmallLetters, PalePlaceholders })
            {
                var found = string.Join("; ", await page.EvaluateAsync<string[]>(rule));
                Assert.True(found == "", $"{what}: {found}");
            }
        }
    }

    /// <summary>Pages, and what is there once they are.</summary>
    private (string Path, string Until)[] Pages(string design) =>
        [
            (bench.Url, ".designs li"),
            (bench.Url + "/?list=archive", "[aria-current=page]:has-text('Archive')"),
            (design + "/papers", ".sheets img"),
            (design + "/versions", ".versions"),
            (design + "/resize", "#l"),
            (bench.Url + "/compare", "#one"),
            (bench.Url + "/library", ".entries a"),
            (bench.Url + "/library/folsomia-candida", "table"),
            (bench.Url + "/measure", "#b-in"),
            (bench.Url + "/measure/tank", ".steps .main:enabled"),
            (bench.Url + "/units", "#unit-length"),
            (bench.Url + "/devices", "main h2"),
            (bench.Url + "/orders", "main a[href='/orders/203']"),
            (bench.Url + "/orders/202", "#quoting"),
            (bench.Url + "/orders/review", "main table"),
            (bench.Url + "/invoices", "main a[href*='issued']"),
            (bench.Url + "/stock", "main a[href*='stock']"),
            (bench.Url + "/stock/lot/MIX-8", "main h2"),
            (bench.Url + "/batches", "main table"),
            (bench.Url + "/week", "main h1"),
            (bench.Url + "/today", "main nav"),
            (bench.Url + "/calendar", "main form"),
            (bench.Url + "/kits/204", "main table"),
            (bench.Url + "/table", ".batchcards li"),
            (bench.Url + "/table/2", ".cutsheet svg"),
            (bench.Url + "/rack", ".rack svg"),
            (bench.Url + "/buying", ".needs"),
            (bench.Url + "/workshop", "#letterhead-0"),
            (bench.Url + "/workshop/labor", "#stage-0"),
            (bench.Url + "/workshop/prices", "main table"),
            (bench.Url + "/workshop/import", "#list-supplier"),
            (bench.Url + "/dispatch", ".weekboard td a"),
            (bench.Url + "/dispatch/1", ".daypart"),
            (bench.Url + "/dispatch/new?order=203", "#p-order"),
            (bench.Url + "/dispatch/forecasts", "#f-node"),
            (bench.Url + "/dispatch/rules", "#homeregion"),
            (bench.Url + "/dispatch/arrivals", ".losstable"),
            (bench.Url + "/nowhere", "main h1"),
        ];

    /// <summary>Documents are looked at, enlarged by keys, and there at once the second time.</summary>
    [Fact]
    public async Task Documents_are_looked_at_and_kept()
    {
        var design = await bench.CopyAsync("LD-204 shop kits");
        var page = await PageAsync();
        await GoAsync(page, design + "/papers");
        await page.WaitForSelectorAsync(".sheets img");
        // Eight boxes: eight passports.
        Assert.Equal(8, await page.Locator(".sheets li:has-text('Tank passport')").CountAsync());
        await Assertions.Expect(page.Locator(".batch")).ToContainTextAsync("All 8 boxes");
        await page.Locator(".sheets button").First.ClickAsync();
        var viewer = page.Locator("dialog.viewer");
        await Assertions.Expect(viewer).ToContainTextAsync("Build sheet, page 1");
        await page.Keyboard.PressAsync("ArrowRight");
        await Assertions.Expect(viewer).ToContainTextAsync("Step cards, page 1");
        await Browser.AxeAsync(page, "enlarged");
        await page.WaitForFunctionAsync(
            """
            () => {
                const picture = document.querySelector(".viewer img");
                return picture.complete && picture.naturalWidth === 1754;
            }
            """
        );
        await page.Keyboard.PressAsync("Escape");
        await Assertions.Expect(viewer).Not.ToBeVisibleAsync();
        foreach (var list in await page.Locator(".listfile summary").AllAsync())
        {
            await list.ClickAsync();
        }

        await Browser.AxeAsync(page, "lists");
        await Browser.FitsAsync(page);
        using var client = new HttpClient();
        var begun = System.Diagnostics.Stopwatch.StartNew();
        var all = await client.GetByteArrayAsync(
            new Uri($"{design}/print.pdf?sheet=a4&slips=false"),
            TestContext.Current.CancellationToken
        );
        Assert.Equal("%PDF"u8.ToArray(), all[..4]);
        await client.GetByteArrayAsync(
            new Uri($"{design}/papers.zip?sheet=a4&slips=false"),
            TestContext.Current.CancellationToken
        );
        begun.Restart();
        await client.GetByteArrayAsync(
            new Uri($"{design}/papers.zip?sheet=a4&slips=false"),
            TestContext.Current.CancellationToken
        );
        // 0.3 s are asked for; a busy machine gets ten times that before this fails.
        Assert.True(begun.Elapsed < TimeSpan.FromSeconds(3), $"{begun.Elapsed}");
    }

    [Fact]
    public async Task A_tank_is_measured_with_a_thumb_and_outlives_a_reload()
    {
        var page = await PageAsync(isPhone: true);
        await GoAsync(page, bench.Url + "/measure/tank");
        await page.WaitForSelectorAsync(".steps .main:enabled");
        await page.FillAsync("#t-name", "measured by thumb");
        await page.Keyboard.PressAsync("Tab");
        await page.SetInputFilesAsync(
            "main input[type=file]",
            new FilePayload
            {
                Name = "tank.png",
                MimeType = "image/png",
                Buffer = Convert.FromBase64String(
                    "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR4nGP4z8DwHwAFAAH/iZk9HQ"
                        + "AAAABJRU5ErkJggg=="
                ),
            }
        );
        await page.WaitForSelectorAsync(".photos img");
        await page.TapAsync(".steps .main");
        await page.FillAsync("#t-length-1", "60.2");
        await page.FillAsync("#t-depth-1", "17 3/4 in");
        await page.FillAsync("#t-height-1", "45");
        await page.Keyboard.PressAsync("Tab");
        await page.WaitForFunctionAsync(
            "() => (localStorage.getItem('litterfall.draft tank') ?? '').includes('45')"
        );
        await page.ReloadAsync();
        await Assertions.Expect(page.Locator("#t-depth-1")).ToHaveValueAsync("17 3/4 in");
        string[] titles = ["Glass", "Opening", "Layers", "Water", "Animals", "Plants", "Room", "All of it"];
        foreach (var title in titles)
        {
            await page.TapAsync(".steps .main");
            await Assertions.Expect(page.Locator("h1")).ToContainTextAsync(title);
            await Browser.AxeAsync(page, title);
            await Browser.FitsAsync(page);
            if (title is "Animals" or "Plants")
            {
                await page.Locator(".choices button").First.TapAsync();
                await page.WaitForSelectorAsync(".picked li");
            }
        }

        await page.TapAsync(".steps .main");
        await Assertions.Expect(page.Locator("h1")).ToContainTextAsync("measured by thumb");
    }

    /// <summary>
    /// Another device comes by the network address of this machine, with the code of the page Devices;
    /// turned away, its open page is told so.
    /// </summary>
    [Fact]
    public async Task A_device_is_paired_by_its_code_and_turned_away()
    {
        using var open = await RunningBench.StartAsync(demo: true, address: "0.0.0.0");
        var desk = await PageAsync();
        await GoAsync(desk, open.Url + "/devices");
        await desk.ClickAsync("text=Show a code");
        var address = (await desk.Locator("code.address").TextContentAsync())!;
        Assert.SkipWhen(
            address.Contains("127.0.0.1", StringComparison.Ordinal),
            "this machine has no address in a network"
        );
        await Browser.AxeAsync(desk, "pairing");
        var device = await PageAsync(isPhone: true);
        await device.GotoAsync(new Uri(address).GetLeftPart(UriPartial.Authority) + "/library");
        await Assertions.Expect(device.Locator("h1")).ToContainTextAsync("isn't paired with this bench");
        await Browser.AxeAsync(device, "not paired");
        await device.GotoAsync(address);
        await device.WaitForSelectorAsync(".designs li");
        await Assertions.Expect(desk.Locator("main")).ToContainTextAsync("Paired: ");
        await device.GotoAsync(new Uri(address).GetLeftPart(UriPartial.Authority) + "/units");
        await device.WaitForSelectorAsync("#unit-length");
        await desk.ClickAsync(".devices button:has-text('Remove')");
        await desk.ClickAsync(".devices button.main");
        await Assertions.Expect(device.Locator("h1")).ToContainTextAsync("isn't paired with this bench");
    }

    /// <summary>Who starts the bench by two clicks opens it to paired devices, and closes it again.</summary>
    [Fact]
    public async Task A_bench_of_one_computer_is_opened_on_its_page()
    {
        using var own = await RunningBench.StartAsync();
        var page = await PageAsync();
        await GoAsync(page, own.Url + "/devices");
        await page.ClickAsync("text=Let paired devices in");
        var answer = page.Locator("button:has-text('Show a code'), [role=status]:has-text('in no network')");
        await Assertions.Expect(answer.First).ToBeVisibleAsync();
        Assert.SkipUnless(
            await page.Locator("text=Show a code").IsVisibleAsync(),
            "this machine has no address in a network"
        );
        await page.ClickAsync("text=Show a code");
        var address = new Uri((await page.Locator("code.address").TextContentAsync())!);
        using var client = new HttpClient();
        using var stranger = await client.GetAsync(
            new Uri(address.GetLeftPart(UriPartial.Authority)),
            TestContext.Current.CancellationToken
        );
        Assert.Equal(System.Net.HttpStatusCode.Forbidden, stranger.StatusCode);
        await page.ClickAsync("text=This computer only");
        await Assertions.Expect(page.Locator("text=Let paired devices in")).ToBeVisibleAsync();
        using var other = new HttpClient();
        await Assert.ThrowsAsync<HttpRequestException>(() =>
            other.GetAsync(
                new Uri(address.GetLeftPart(UriPartial.Authority)),
                TestContext.Current.CancellationToken
            )
        );
    }

    /// <summary>Fifty designs and their pictures are there soon.</summary>
    [Fact]
    public async Task Fifty_designs_are_listed()
    {
        using var own = await RunningBench.StartAsync(demo: true);
        for (var i = 0; i < 50; i++)
        {
            await own.CopyAsync(Usual);
        }

        var page = await PageAsync();
        await GoAsync(page, own.Url);
        await Assertions.Expect(page.Locator(".designs li")).ToHaveCountAsync(59);
        await page.FillAsync("#find", "museum");
        await Assertions.Expect(page.Locator(".designs li")).ToHaveCountAsync(1);
    }
}
