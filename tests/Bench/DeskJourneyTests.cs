using System.IO.Compression;
using Microsoft.Playwright;
using UglyToad.PdfPig;

namespace Litterfall.Tests.Bench;

/// <summary>From an empty page to printed papers, by mouse, by finger and by keys.</summary>
public sealed class DeskJourneyTests(Browser browser, SharedBench shared) : Visits(browser)
{
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task A_box_is_built_from_nothing_to_its_papers(bool isPhone)
    {
        using var bench = await RunningBench.StartAsync();
        var page = await PageAsync(isPhone);
        await GoAsync(page, bench.Url);
        await page.WaitForSelectorAsync(".examples svg");
        await Browser.AxeAsync(page, "empty bench");
        await page.FillAsync("#size", "60 x 45 x 60 cm");
        await page.SelectOptionAsync("#who", "dendrobates-leucomelas");
        await page.ClickAsync("text=Create design");
        await SettledAsync(page);
        await Browser.FitsAsync(page);
        if (isPhone)
        {
            // The verdict opens what is behind it, and puts it down again.
            await page.TapAsync(".verdictline .verdict");
            await Assertions.Expect(page.Locator(".findings li").First).ToBeVisibleAsync();
            await Browser.AxeAsync(page, "findings");
            await page.TapAsync(".verdictline .verdict");
        }

        // A field with its unit as typed; the drawing follows.
        await PartAsync(page, "Leaf litter");
        await page.FillAsync("#f-floor-litter-depth", "1 1/2 in");
        await page.Keyboard.PressAsync("Tab");
        await Assertions.Expect(page.Locator(".sheet").First).ToContainTextAsync("litter");
        if (isPhone)
        {
            await page.ClickAsync(".partsbutton");
        }

        await page.ClickAsync(".part.add:has-text('plant')");
        await page.FillAsync("#pick-find", "pilea depressa");
        await page.ClickAsync(".entry");
        await Assertions
            .Expect(page.Locator("#f-plants-0-plant, [id^=f-plants-][id$=-plant]").First)
            .ToBeVisibleAsync();
        await Browser.AxeAsync(page, "desk");

        if (isPhone)
        {
            await page.ClickAsync(".cardhead button:text-is('Close')");
        }

        await page.ClickAsync("a:has-text('Build documents')");
        await page.WaitForSelectorAsync(".sheets li");
        await Browser.AxeAsync(page, "papers");
        await AssertPrintedAsync(page, "litter");
    }

    /// <summary>A word stands on the build sheet of the papers that are downloaded.</summary>
    private static async Task AssertPrintedAsync(IPage page, string word)
    {
        var download = await page.RunAndWaitForDownloadAsync(() =>
            page.ClickAsync("text=Download everything (zip)")
        );
        var path = await download.PathAsync();
        using var zip = ZipFile.OpenRead(path);
        using var sheet = zip.Entries.Single(e => e.Name == "01-build-sheet.pdf").Open();
        using var bytes = new MemoryStream();
        await sheet.CopyToAsync(bytes, TestContext.Current.CancellationToken);
        using var pdf = PdfDocument.Open(bytes.ToArray());
        Assert.Contains(word, pdf.GetPage(1).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Dragging_changes_the_value_it_shows_and_undo_takes_it_back()
    {
        var page = await DeskAsync(await shared.CopyAsync(Usual));
        var dot = await page.Locator("[aria-label='drainage layer'] .dot").BoundingBoxAsync();
        var (x, y) = (dot!.X + (dot.Width / 2), dot.Y + (dot.Height / 2));
        await page.Mouse.MoveAsync(x, y);
        await page.Mouse.DownAsync();
        for (var i = 1; i <= 20; i++)
        {
            await page.Mouse.MoveAsync(x, y - (2 * i));
            await page.WaitForTimeoutAsync(25);
        }

        await page.Mouse.UpAsync();
        await Assertions.Expect(page.Locator(".tools")).ToContainTextAsync("Version 2");
        var grip = page.Locator("[aria-label='drainage layer']");
        Assert.True(
            int.Parse(
                await grip.GetAttributeAsync("aria-valuenow") ?? "0",
                System.Globalization.CultureInfo.InvariantCulture
            ) > 45
        );
        await page.ClickAsync("text=Undo");
        await Assertions.Expect(grip).ToHaveAttributeAsync("aria-valuetext", "4 cm");
        await page.Keyboard.PressAsync("Control+Shift+Z");
        await Assertions.Expect(page.Locator(".tools")).ToContainTextAsync("Version 2");
    }

    /// <summary>
    /// A lamp without a place is dragged over the map of light; its place is written and kept.
    /// </summary>
    [Fact]
    public async Task A_lamp_is_dragged_over_the_map_of_light()
    {
        var page = await DeskAsync(await shared.CopyAsync(Usual));
        await page.WaitForSelectorAsync(".leaves li");
        await page.ClickAsync("[role=tab]:text-is('Light')");
        await Assertions.Expect(page.Locator(".under")).ToContainTextAsync("Drag a lamp");
        var lamp = page.Locator(".grip[data-way=both]").Last;
        var dot = await lamp.Locator(".dot").BoundingBoxAsync();
        var (x, y) = (dot!.X + (dot.Width / 2), dot.Y + (dot.Height / 2));
        await page.Mouse.MoveAsync(x, y);
        await page.Mouse.DownAsync();
        for (var i = 1; i <= 15; i++)
        {
            await page.Mouse.MoveAsync(x, y + (4 * i));
            await page.WaitForTimeoutAsync(30);
        }

        await page.Mouse.UpAsync();
        await Assertions.Expect(page.Locator(".tools")).ToContainTextAsync("Version 2");
        await Assertions.Expect(page.Locator("#f-lamps-0-at-y")).ToBeVisibleAsync();
        await Browser.AxeAsync(page, "map of light");
    }

    [Fact]
    public async Task The_keyboard_moves_a_handle_by_a_millimeter()
    {
        var page = await DeskAsync(await shared.CopyAsync(Usual));
        var grip = page.Locator("[aria-label='leaf litter']");
        await grip.FocusAsync();
        await page.Keyboard.PressAsync("ArrowUp");
        await Assertions.Expect(grip).ToHaveAttributeAsync("aria-valuetext", "3.1 cm");
        await Assertions.Expect(page.Locator(".tools")).ToContainTextAsync("Version 2");
        // Keys in quick succession are one version.
        await page.Keyboard.PressAsync("Shift+ArrowUp");
        await page.Keyboard.PressAsync("ArrowDown");
        await Assertions.Expect(grip).ToHaveAttributeAsync("aria-valuetext", "4 cm");
        await Assertions.Expect(page.Locator(".tools")).ToContainTextAsync("Version 3");
    }

    [Fact]
    public async Task A_number_tells_where_it_comes_from()
    {
        var page = await DeskAsync(await shared.CopyAsync(Usual));
        await page.Locator("button.num").First.ClickAsync();
        var slip = page.Locator("dialog.slip");
        await Assertions.Expect(slip).ToBeVisibleAsync();
        await Assertions.Expect(slip).ToContainTextAsync("How far it can be trusted");
        await Browser.AxeAsync(page, "slip");
        await page.Keyboard.PressAsync("Escape");
        await Assertions.Expect(slip).Not.ToBeVisibleAsync();
    }

    [Fact]
    public async Task A_fix_is_tried_beside_the_design_and_kept()
    {
        var page = await DeskAsync(await shared.CopyAsync(Usual));
        await page.ClickAsync("button:has-text('Show all')");
        await page.Locator("button:has-text('residual-current')").First.ClickAsync();
        var trial = page.Locator(".trial");
        await Assertions.Expect(trial).ToContainTextAsync("Solved: Lamps and the misting pump");
        await Browser.AxeAsync(page, "trial");
        await trial.Locator("text=Apply").ClickAsync();
        await Assertions.Expect(page.Locator(".tools")).ToContainTextAsync("Version 2");
        await Assertions.Expect(page.Locator(".findings")).Not.ToContainTextAsync("no-trip-device");
    }

    /// <summary>A design that names a luminaire file comes in with it and is computed.</summary>
    [Fact]
    public async Task A_design_is_brought_with_its_lamp_file()
    {
        const string design = """
            litterfall: 1
            name: brought
            box: { inside: { length: 60 cm, depth: 45 cm, height: 45 cm } }
            floor: { soil: { recipe: ready-rainforest, depth: 5 cm } }
            lid: { material: float-glass, thickness: 4 mm, gap: 2 mm }
            lamps: [ { lamp: led-bar-6500k, file: own.ies, above: 5 cm, on: "08:00", off: "20:00" } ]
            room: { temperature: 21 C, humidity: 50 % }

            """;
        const string lamp =
            "IESNA:LM-63-2002\n[TEST] own\n[MANUFAC] none\nTILT=NONE\n1 -1 1 2 1 1 2 0 0 0\n1 1 4\n0 "
            + "90\n0\n900 0\n";
        var page = await PageAsync();
        await GoAsync(page, shared.Url);
        await page.WaitForSelectorAsync("input[type=file]:enabled");
        await page.SetInputFilesAsync(
            "input[type=file]",
            new FilePayload[]
            {
                new()
                {
                    Name = "brought.viv.yaml",
                    MimeType = "text/plain",
                    Buffer = System.Text.Encoding.UTF8.GetBytes(design),
                },
                new()
                {
                    Name = "own.ies",
                    MimeType = "text/plain",
                    Buffer = System.Text.Encoding.UTF8.GetBytes(lamp),
                },
            }
        );
        await Assertions.Expect(page.Locator("h1")).ToContainTextAsync("brought");
        await Assertions
            .Expect(page.Locator("[aria-labelledby=p-light]"))
            .ToContainTextAsync("On the ground");
    }

    [Fact]
    public async Task Another_size_is_made_with_its_reasons()
    {
        var page = await DeskAsync(await shared.CopyAsync("LD-203 museum foyer"));
        await page.ClickAsync("summary:text-is('More')");
        await page.ClickAsync("text=Resize a copy");
        await page.FillAsync("#l", "120 cm");
        await page.ClickAsync("text=Show what changes");
        await Assertions
            .Expect(page.Locator("table"))
            .ToContainTextAsync("as many for each square meter of floor");
        await Browser.AxeAsync(page, "another size");
        await page.ClickAsync("text=Make the copy");
        await Assertions.Expect(page.Locator("h1")).ToContainTextAsync("120 cm long");
    }
}
