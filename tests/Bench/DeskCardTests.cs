using System.Globalization;
using Microsoft.Playwright;

namespace Litterfall.Tests.Bench;

/// <summary>Drawing, card and verdict on one screen; handles, zoom, lists and what is typed.</summary>
public sealed class DeskCardTests(Browser browser, SharedBench shared) : Visits(browser)
{
    private const string InWindow = """
        e => {
            const b = e.getBoundingClientRect();
            return b.top >= -1 && b.left >= -1 && b.bottom <= innerHeight + 1 && b.right <= innerWidth + 1;
        }
        """;

    private async Task<IPage> SizedAsync(string url, int width, int height)
    {
        var page = await PageAsync(width < 500);
        await page.SetViewportSizeAsync(width, height);
        await page.GotoAsync(url);
        await SettledAsync(page);
        return page;
    }

    /// <summary>
    /// The fields of what is taken by its handle are in the window, and so are drawing and verdict.
    /// </summary>
    [Theory]
    [InlineData(1440, 900)]
    [InlineData(1366, 768)]
    [InlineData(820, 1180)]
    [InlineData(390, 844)]
    public async Task The_fields_of_a_handle_are_in_the_window(int width, int height)
    {
        var page = await SizedAsync(await shared.CopyAsync(Usual), width, height);
        var count = await page.Locator(".grip").CountAsync();
        Assert.True(count > 5);
        for (var i = 0; i < count; i++)
        {
            var grip = page.Locator($".grip[data-grip='{i}']");
            var box = await grip.Locator(".dot").BoundingBoxAsync();
            var (x, y) = ((float)(box!.X + (box.Width / 2)), (float)(box.Y + (box.Height / 2)));
            if (width < 500)
            {
                await page.Touchscreen.TapAsync(x, y);
            }
            else
            {
                await page.Mouse.ClickAsync(x, y);
            }

            var what = await grip.GetAttributeAsync("aria-label");
            await Assertions.Expect(grip).ToHaveClassAsync("grip on");
            var field = page.Locator(".card [id^=f-]").First;
            await Assertions.Expect(field).ToBeVisibleAsync();
            Assert.True(await field.EvaluateAsync<bool>(InWindow), $"field of {what}");
            Assert.True(await page.Locator("#sheet").EvaluateAsync<bool>(InWindow), $"drawing with {what}");
            Assert.True(
                await page.Locator(".verdict").First.EvaluateAsync<bool>(InWindow),
                $"verdict with {what}"
            );
        }

        await Browser.AxeAsync(page, $"card at {width}");
        await Browser.FitsAsync(page);
    }

    /// <summary>Every handle of every demo design lies on top at its own place, on a phone.</summary>
    [Fact]
    public async Task Every_handle_is_under_its_own_finger()
    {
        var page = await PageAsync(isPhone: true);
        await GoAsync(page, shared.Url);
        await page.WaitForSelectorAsync(".designs a");
        var names = await page.Locator(".designs a[href^='/design/']").AllTextContentsAsync();
        foreach (var name in names.Select(n => n.Trim()).Where(n => n.Length > 0).Distinct())
        {
            await page.GotoAsync(await shared.CopyAsync(name));
            await page.WaitForSelectorAsync("#sheet[data-live]");
            foreach (var view in new[] { "Section", "Plan", "Front", "Light" })
            {
                await page.ClickAsync($"[role=tab]:text-is('{view}')");
                await page.WaitForSelectorAsync($"[role=tab][aria-selected=true]:text-is('{view}')");
                await StillAsync(page);
                var covered = await page.EvaluateAsync<string[]>(
                    """
                    () => [...document.querySelectorAll(".grip")].filter(g => {
                        const b = g.querySelector(".dot").getBoundingClientRect();
                        const at = document.elementFromPoint(b.x + b.width / 2, b.y + b.height / 2);
                        return at?.closest(".grip") !== g;
                    }).map(g => g.getAttribute("aria-label"))
                    """
                );
                Assert.True(covered.Length == 0, $"{name}, {view}: {string.Join(", ", covered)}");
            }
        }
    }

    [Fact]
    public async Task The_views_are_reached_by_keys()
    {
        var page = await SizedAsync(await shared.CopyAsync(Usual), 1366, 768);
        await page.Locator("[role=tab][aria-selected=true]").FocusAsync();
        foreach (
            var (key, view) in new[]
            {
                ("ArrowRight", "Plan"),
                ("ArrowRight", "Front"),
                ("Home", "Section"),
                ("ArrowLeft", null),
                ("End", null),
            }
        )
        {
            await page.Keyboard.PressAsync(key);
            var chosen = page.Locator("[role=tab][aria-selected=true]");
            if (view is not null)
            {
                await Assertions.Expect(chosen).ToHaveTextAsync(view);
            }

            await Assertions.Expect(chosen).ToBeFocusedAsync();
        }
    }

    [Fact]
    public async Task The_drawing_is_brought_near_and_whole_again_by_keys_and_buttons()
    {
        var page = await SizedAsync(await shared.CopyAsync(Usual), 1366, 768);
        var grips = page.Locator("svg.grips");
        var whole = await grips.GetAttributeAsync("viewBox");
        await page.FocusAsync("#sheet");
        await page.Keyboard.PressAsync("+");
        await page.Keyboard.PressAsync("+");
        var near = await grips.GetAttributeAsync("viewBox");
        Assert.NotEqual(whole, near);
        Assert.Equal(1 / 1.25 / 1.25, Wide(near!) / Wide(whole!), 1e-3);
        await page.Keyboard.PressAsync("ArrowRight");
        Assert.NotEqual(near, await grips.GetAttributeAsync("viewBox"));
        // What is drawn anew is shown through the same window.
        await FieldAsync(page, "f-floor-litter-depth", "Leaf litter", "5 cm");
        await Assertions.Expect(page.Locator(".tools")).ToContainTextAsync("Version 2");
        await StillAsync(page);
        var drawn = await page.Locator("#sheet > svg").First.GetAttributeAsync("viewBox");
        Assert.True(
            Wide(drawn!)
                < Wide(
                    await page.Locator("#sheet > svg").First.GetAttributeAsync("data-whole") ?? "0 0 9999 9"
                ) - 1
        );
        await page.ClickAsync("[data-zoom=fit]");
        Assert.Equal(Wide(whole!), Wide((await grips.GetAttributeAsync("viewBox"))!), 0.2);

        static double Wide(string box) => double.Parse(box.Split(' ')[2], CultureInfo.InvariantCulture);
    }

    /// <summary>A resting finger lists what lies under it; choosing opens its card.</summary>
    [Fact]
    public async Task A_long_press_lists_what_lies_under_the_finger()
    {
        var page = await SizedAsync(await shared.CopyAsync(Usual), 1366, 768);
        var box = await page.Locator("[aria-label='leaf litter'] .dot").BoundingBoxAsync();
        await page.Mouse.MoveAsync(box!.X + 4, box.Y + 4);
        await page.Mouse.DownAsync();
        var list = page.Locator(".underlist");
        await Assertions.Expect(list).ToBeVisibleAsync();
        await page.Mouse.UpAsync();
        await list.Locator("button:text-is('leaf litter')").ClickAsync();
        await Assertions.Expect(page.Locator(".card h2")).ToHaveTextAsync("Leaf litter");
        await Assertions.Expect(list).ToHaveCountAsync(0);
        await Assertions.Expect(page.Locator(".tools")).ToContainTextAsync("Version 1");
    }

    /// <summary>As a tape and a thermometer are read: three readings, a range, a bare number.</summary>
    [Fact]
    public async Task Typed_as_people_read_it()
    {
        var page = await SizedAsync(await shared.CopyAsync(Usual), 1366, 768);
        await FieldAsync(page, "f-room-temperature", "Room", "19-24 °C");
        await Assertions.Expect(page.Locator("#f-room-temperature")).ToHaveValueAsync("21.5 °C");
        await Assertions.Expect(page.Locator("#f-room-swing")).ToHaveValueAsync("2.5 C");
        await FieldAsync(page, "f-box-outside-length", "Box", "35 1/2 in, 35 7/16 in, 35 9/16 in");
        await Assertions
            .Expect(page.Locator("#f-box-outside-length"))
            .ToHaveValueAsync("35 1/2 in, 35 7/16 in, 35 9/16 in");
        await Assertions.Expect(page.Locator(".fault")).ToHaveCountAsync(0);
        await FieldAsync(page, "f-floor-litter-depth", "Leaf litter", "4");
        await Assertions.Expect(page.Locator("#f-floor-litter-depth")).ToHaveValueAsync("4 cm");
        await page.FocusAsync("#f-floor-litter-depth");
        await page.Keyboard.PressAsync("ArrowUp");
        await Assertions.Expect(page.Locator("#f-floor-litter-depth")).ToHaveValueAsync("4.5 cm");
    }

    /// <summary>
    /// From the list by its common name, by dragging, and one more beside it: each its own.
    /// </summary>
    [Fact]
    public async Task A_plant_is_chosen_dragged_and_doubled()
    {
        var page = await SizedAsync(await shared.CopyAsync(Usual), 1366, 768);
        await page.ClickAsync("[role=tab]:text-is('Plan')");
        await page.WaitForSelectorAsync("[role=tab][aria-selected=true]:text-is('Plan')");
        await page.ClickAsync(".part.add:has-text('plant')");
        await page.FillAsync("#pick-find", "jewel");
        await Assertions.Expect(page.Locator(".entry").First).ToContainTextAsync("jewel");
        await Browser.AxeAsync(page, "picture list");
        await page.Locator(".entry")
            .First.DragToAsync(
                page.Locator("#sheet"),
                new()
                {
                    TargetPosition = new() { X = 300, Y = 160 },
                }
            );
        await Assertions.Expect(page.Locator("#f-plants-3-at-x")).ToBeVisibleAsync();
        var x = await page.InputValueAsync("#f-plants-3-at-x");
        await page.ClickAsync("button:text-is('One more')");
        await Assertions.Expect(page.Locator("#f-plants-4-at-x")).ToBeVisibleAsync();
        Assert.NotEqual(x, await page.InputValueAsync("#f-plants-4-at-x"));
        await page.ClickAsync("button:text-is('Remove')");
        await Assertions.Expect(page.Locator(".parts")).Not.ToContainTextAsync("orchid 2");
    }

    /// <summary>A part or a field is found by typing; Enter goes there.</summary>
    [Fact]
    public async Task A_field_is_found_by_typing()
    {
        var page = await SizedAsync(await shared.CopyAsync(Usual), 1366, 768);
        await page.FillAsync("#find-part", "swab");
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Locator("#f-animals-0-swab")).ToBeFocusedAsync();
        await page.FillAsync("#find-part", "weekends");
        await Assertions.Expect(page.Locator(".hits")).ToContainTextAsync("Nothing is called so");
        await page.FillAsync("#find-part", "drip loop");
        await Assertions.Expect(page.Locator(".hits li")).ToHaveCountAsync(1);
    }

    /// <summary>An own mix by its parts is made, used and computed.</summary>
    [Fact]
    public async Task A_mix_of_own_parts_is_used()
    {
        var page = await SizedAsync(await shared.CopyAsync(Usual), 1366, 768);
        await page.ClickAsync(".part:text-is('Soil')");
        await page.ClickAsync(".mixparts summary");
        await page.FillAsync("#mix-part-0", "3");
        await page.FillAsync("#mix-name", "Bench mix");
        await page.ClickAsync("text=Use this mix");
        await Assertions
            .Expect(page.Locator("#f-floor-soil-recipe option:checked"))
            .ToHaveTextAsync("Bench mix");
        await SettledAsync(page);
        await Assertions.Expect(page.Locator(".fault")).ToHaveCountAsync(0);
    }
}
