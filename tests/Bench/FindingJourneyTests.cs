using System.Text;
using Microsoft.Playwright;
using UglyToad.PdfPig;

namespace Litterfall.Tests.Bench;

/// <summary>
/// Findings are accepted with a reason, or solved: one by one, or all at once as one trial.
/// </summary>
public sealed class FindingJourneyTests(Browser browser, SharedBench shared) : Visits(browser)
{
    /// <summary>
    /// Four stops: a metal barrier under frogs, soil over the sill, doors a froglet gets through, an open
    /// vent.
    /// </summary>
    private const string Faulty = """
        litterfall: 1
        name: faulty
        box: { outside: { length: 45 cm, depth: 45 cm, height: 45 cm }, glass: { walls: 5 mm, base: 5 mm },
          opening: front, sill: 8 cm, doors: { count: 2, gap: 3 mm } }
        floor: { drainage: { material: expanded-clay-8-16, depth: 5 cm },
          barrier: { material: steel-gauze-0.5 },
          soil: { recipe: ready-rainforest, front: 7 cm, back: 9 cm } }
        vents: [ { length: 30 cm, width: 1 cm, height: 20 cm, side: front } ]
        animals: [ { animal: epipedobates-anthonyi, count: 2 } ]
        crew: [ { animal: folsomia-candida, count: 20 } ]
        misting: { nozzles: 1, each: 90 mL/min, times: [ { at: "08:00", for: 5 s } ] }

        """;

    [Fact]
    public async Task A_finding_is_accepted_with_a_reason_that_is_printed()
    {
        var page = await DeskAsync(await shared.CopyAsync(Usual));
        await page.ClickAsync("button:has-text('Show all')");
        var finding = page.Locator(".findings li", new() { HasText = "one person does not lift it" });
        await finding.Locator("text=Accept with my reason").ClickAsync();
        await Assertions.Expect(finding.Locator("input").First).ToBeFocusedAsync();
        // The field is focused; an empty reason is told and loses nothing.
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(finding.Locator(".fault")).ToContainTextAsync("Enter a reason");
        await page.Keyboard.TypeAsync("We carry it on a cart: \"two hands\", always.");
        await Browser.AxeAsync(page, "accepting");
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Locator(".verdict")).ToContainTextAsync("1 accepted");
        await Assertions
            .Expect(page.Locator(".findings li.accepted"))
            .ToContainTextAsync("We carry it on a cart");
        await Assertions.Expect(page.Locator(".tools")).ToContainTextAsync("Version 2");

        await page.ClickAsync("a:has-text('Build documents')");
        await page.WaitForSelectorAsync(".sheets li");
        var link = page.Locator("a[href*='01-build-sheet']").First;
        var answer = await page.APIRequest.GetAsync(
            new Uri(new Uri(page.Url), await link.GetAttributeAsync("href")!).ToString()
        );
        using var pdf = PdfDocument.Open(await answer.BodyAsync());
        var text = string.Concat(pdf.GetPages().Select(p => p.Text))
            .Replace(" ", "", StringComparison.Ordinal);
        Assert.Contains("Wecarryitonacart", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_box_with_several_stops_is_made_buildable_as_one_trial()
    {
        var page = await PageAsync();
        await GoAsync(page, shared.Url);
        await page.WaitForSelectorAsync("input[type=file]:enabled");
        await page.SetInputFilesAsync(
            "input[type=file]",
            new FilePayload
            {
                Name = "faulty.viv.yaml",
                MimeType = "text/plain",
                Buffer = Encoding.UTF8.GetBytes(Faulty),
            }
        );
        await SettledAsync(page);
        await Assertions.Expect(page.Locator(".verdict")).ToContainTextAsync("Don't build yet");
        var stops = page.Locator(".findings li.stop");
        Assert.True(await stops.CountAsync() >= 3);
        // Frogs get out by the doors: nobody can accept that.
        var doors = page.Locator(".findings li.stop", new() { HasText = "froglets can get out" }).First;
        Assert.Equal(0, await doors.Locator("text=Accept with my reason").CountAsync());

        await page.ClickAsync("button:text-is('Make it buildable')");
        var trial = page.Locator(".trial");
        await Assertions.Expect(trial.Locator("[aria-label=changes] li").First).ToBeVisibleAsync();
        await Assertions.Expect(trial.Locator("[aria-label=differences]")).ToContainTextAsync("Solved:");
        await Assertions.Expect(trial.Locator("[role=status]")).ToContainTextAsync("Ready to build");
        await Browser.AxeAsync(page, "make it buildable");
        await trial.Locator("text=Apply").ClickAsync();
        await Assertions.Expect(page.Locator(".verdict")).ToContainTextAsync("Ready to build");
        Assert.Equal(0, await stops.CountAsync());

        await page.ClickAsync("text=Undo");
        await Assertions.Expect(page.Locator(".verdict")).ToContainTextAsync("Don't build yet");
    }
}
