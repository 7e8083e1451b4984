using System.Buffers.Binary;
using System.Diagnostics;
using System.Net;
using System.Text.Json;
using Microsoft.Playwright;

namespace Litterfall.Tests.Bench;

/// <summary>
/// The finished box in space: opens, turns, follows the hour, and fetches nothing from outside.
/// </summary>
public sealed class ViewTests(Browser browser, SharedBench shared) : Visits(browser)
{
    private const string Stand = ".stand[data-state=space]";

    private static readonly string? Album = Environment.GetEnvironmentVariable("VIEW_ALBUM");

    [Fact]
    public async Task The_view_opens_turns_and_fetches_nothing_from_outside()
    {
        var page = await DeskAsync(await shared.CopyAsync(Usual));
        var asked = new List<string>();
        page.Request += (_, request) => asked.Add(request.Url);
        Assert.DoesNotContain(asked, u => u.Contains("three", StringComparison.Ordinal));
        await OpenAsync(page);
        Assert.Contains(asked, u => u.EndsWith("/view/three.js", StringComparison.Ordinal));
        Assert.All(asked, u =>
            Assert.StartsWith(
                shared.Url,
                u.Replace("ws:", "http:", StringComparison.Ordinal),
                StringComparison.Ordinal
            )
        );
        Assert.True(await InkAsync(page) > 0.2, "the picture is nearly empty");
        await SnapAsync(page, "desk");

        var before = await TurnAsync(page);
        var box = (await page.Locator(Stand).BoundingBoxAsync())!;
        await page.Mouse.MoveAsync(box.X + 300, box.Y + 200);
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(box.X + 180, box.Y + 230, new() { Steps = 6 });
        await page.Mouse.UpAsync();
        await Assertions.Expect(page.Locator(Stand)).Not.ToHaveAttributeAsync("data-turn", before);
        var dragged = await TurnAsync(page);
        await page.FocusAsync(Stand);
        await page.Keyboard.PressAsync("ArrowRight");
        await Assertions.Expect(page.Locator(Stand)).Not.ToHaveAttributeAsync("data-turn", dragged);
        await page.Keyboard.PressAsync("+");
        await Assertions.Expect(page.Locator(Stand)).ToHaveAttributeAsync("data-zoom", "1.15");
        await SnapAsync(page, "turned");
        await page.Keyboard.PressAsync("Home");
        await Assertions.Expect(page.Locator(Stand)).ToHaveAttributeAsync("data-turn", before);
        await Browser.AxeAsync(page, "view");
        await Browser.FitsAsync(page);
    }

    [Fact]
    public async Task It_follows_the_hour_the_month_and_the_design()
    {
        var page = await DeskAsync(await shared.CopyAsync(Usual));
        await OpenAsync(page);
        var day = await LightnessAsync(page);
        await ShownAfterAsync(page, () => page.Locator(".ribbon input[type=range]").FillAsync("3"));
        await Assertions.Expect(page.Locator(Stand)).ToHaveAttributeAsync("data-light", "night");
        Assert.True(await LightnessAsync(page) < 0.6 * day, "the night is not dark");
        await SnapAsync(page, "night");
        await ShownAfterAsync(page, () => page.Locator(".ribbon input[type=range]").FillAsync("12"));
        await ShownAfterAsync(page, () => page.SelectOptionAsync("#view-month", "0"));
        await SnapAsync(page, "planted");
        await ShownAfterAsync(page, () => page.Locator(".viewtools .check input").CheckAsync());
        await SnapAsync(page, "animals");
        await ShownAfterAsync(page, () => FieldAsync(page, "f-floor-litter-depth", "Leaf litter", "6 cm"));
    }

    /// <summary>
    /// What it costs to draw, for the record; software alone draws here, a graphics card is faster.
    /// </summary>
    [Fact]
    public async Task A_foyer_of_plants_is_few_calls()
    {
        var page = await DeskAsync(await shared.CopyAsync("LD-203 museum foyer"));
        await OpenAsync(page);
        var cost = await page.EvaluateAsync<JsonElement>(
            """
            async () => {
                const view = document.querySelector(".stand").view;
                view.cost();
                const from = performance.now();
                for (let i = 0; i < 30; i++) { view.move(6, 0, 1); await new Promise(requestAnimationFrame); }
                return { ...view.cost(), frame: (performance.now() - from) / 30 };
            }
            """
        );
        TestContext.Current.SendDiagnosticMessage("view: {0}", cost.GetRawText());
        Assert.True(cost.GetProperty("calls").GetInt32() < 60, cost.GetRawText());
        await SnapAsync(page, "foyer");
    }

    [Fact]
    public async Task On_a_phone_it_fits_and_turns_under_a_finger()
    {
        var page = await DeskAsync(await shared.CopyAsync(Usual), isPhone: true);
        await OpenAsync(page);
        await Browser.FitsAsync(page);
        await SnapAsync(page, "phone");
        var before = await TurnAsync(page);
        var box = (await page.Locator(Stand).BoundingBoxAsync())!;
        var finger = await page.Context.NewCDPSessionAsync(page);
        foreach (
            var (kind, step) in new[]
            {
                ("touchStart", 0),
                ("touchMove", 1),
                ("touchMove", 2),
                ("touchEnd", 2),
            }
        )
        {
            var points =
                kind == "touchEnd" ? [] : new[] { new { x = box.X + 100 + (40 * step), y = box.Y + 120 } };
            await finger.SendAsync(
                "Input.dispatchTouchEvent",
                new Dictionary<string, object> { ["type"] = kind, ["touchPoints"] = points }
            );
        }

        await Assertions.Expect(page.Locator(Stand)).Not.ToHaveAttributeAsync("data-turn", before);
        await Browser.AxeAsync(page, "view on a phone");
    }

    /// <summary>
    /// A browser that draws nothing in space has the still of the server, with the same controls.
    /// </summary>
    [Fact]
    public async Task Without_a_graphics_card_a_still_stands_in_its_place()
    {
        var page = await PageAsync();
        await page.AddInitScriptAsync(
            "const get = HTMLCanvasElement.prototype.getContext;"
                + "HTMLCanvasElement.prototype.getContext = function (kind, ...more) "
                + "{ return kind.startsWith('webgl') ? null : get.call(this, kind, ...more); };"
        );
        await page.GotoAsync(await shared.CopyAsync(Usual));
        await SettledAsync(page);
        await page.ClickAsync("#tab-view");
        var still = page.Locator(".stand[data-state=still] img");
        await Assertions.Expect(still).ToHaveJSPropertyAsync("complete", true);
        await page.WaitForFunctionAsync("() => document.querySelector('.stand img').naturalWidth === 960");
        var first = await still.GetAttributeAsync("src");
        await page.SelectOptionAsync("#view-month", "24");
        await Assertions.Expect(still).Not.ToHaveAttributeAsync("src", first!);
        Assert.Contains(
            "months after planting",
            await still.GetAttributeAsync("alt"),
            StringComparison.Ordinal
        );
        await SnapAsync(page, "still");
    }

    [Fact]
    public async Task Stills_have_the_size_that_was_asked_for()
    {
        using var client = new HttpClient();
        var address = await shared.CopyAsync(Usual);
        foreach (
            var (query, width, height) in new[]
            {
                ("width=360", 360, 288),
                ("width=480&height=360&month=0&animals=true", 480, 360),
                ("", 960, 768),
                ("width=640&hour=30&turn=-40&rise=30&zoom=1.5", 640, 512),
            }
        )
        {
            var bytes = await client.GetByteArrayAsync(
                $"{address}/still.png?{query}",
                TestContext.Current.CancellationToken
            );
            // PNG (ISO/IEC 15948): width and height stand in the first chunk, from byte 16.
            Assert.Equal(width, BinaryPrimitives.ReadInt32BigEndian(bytes.AsSpan(16)));
            Assert.Equal(height, BinaryPrimitives.ReadInt32BigEndian(bytes.AsSpan(20)));
        }

        var answer = await client.GetAsync(
            $"{address}/still.png?width=360",
            TestContext.Current.CancellationToken
        );
        var again = new HttpRequestMessage(HttpMethod.Get, $"{address}/still.png?width=360");
        again.Headers.IfNoneMatch.Add(answer.Headers.ETag!);
        Assert.Equal(
            HttpStatusCode.NotModified,
            (await client.SendAsync(again, TestContext.Current.CancellationToken)).StatusCode
        );
    }

    [Theory]
    [InlineData("width=10", "width is '10'; expected a whole number from 64 to 2400.")]
    [InlineData("width=99999", "width is '99999'; expected a whole number from 64 to 2400.")]
    [InlineData("width=wide", "width is 'wide'; expected a whole number from 64 to 2400.")]
    [InlineData("month=30", "month is '30'; expected a whole number from 0 to 24.")]
    [InlineData("hour=-1", "hour is '-1'; expected a whole number from 0 to 744.")]
    [InlineData("zoom=NaN", "zoom is 'NaN'; expected a number from 0.5 to 2.5.")]
    [InlineData("animals=some", "animals is 'some'; expected true or false.")]
    public async Task What_a_still_cannot_be_is_refused_in_a_sentence(string query, string sentence)
    {
        using var client = new HttpClient();
        var address = await shared.CopyAsync(Usual);
        var answer = await client.GetAsync(
            $"{address}/still.png?{query}",
            TestContext.Current.CancellationToken
        );
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Equal(
            sentence + "\n",
            await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken)
        );
    }

    private static async Task OpenAsync(IPage page)
    {
        var clock = Stopwatch.StartNew();
        await page.ClickAsync("#tab-view");
        await page.WaitForSelectorAsync($"{Stand}[data-shown]");
        TestContext.Current.SendDiagnosticMessage("view after {0} ms", clock.ElapsedMilliseconds);
    }

    private static async Task<string> TurnAsync(IPage page) =>
        (await page.Locator(Stand).GetAttributeAsync("data-turn"))!;

    private static async Task ShownAfterAsync(IPage page, Func<Task> act)
    {
        var shown = await page.Locator(Stand).GetAttributeAsync("data-shown");
        await act();
        await Assertions.Expect(page.Locator(Stand)).Not.ToHaveAttributeAsync("data-shown", shown!);
        await StillAsync(page);
    }

    /// <summary>Share of the picture that something is drawn on.</summary>
    private static Task<double> InkAsync(IPage page) =>
        page.EvaluateAsync<double>(
            Pixels + "return all.filter((_, i) => i % 4 === 3 && all[i] > 0).length / (all.length / 4); }"
        );

    /// <summary>Mean lightness of what is drawn, 0 to 255.</summary>
    private static Task<double> LightnessAsync(IPage page) =>
        page.EvaluateAsync<double>(
            Pixels
                + "let [sum, n] = [0, 0]; for (let i = 0; i < all.length; i += 4) "
                + "if (all[i + 3] > 200) { sum += all[i] + all[i + 1] + all[i + 2]; n++; } "
                + "return sum / 3 / n; }"
        );

    private const string Pixels =
        "() => { const canvas = document.querySelector('.stand canvas'); "
        + "const flat = document.createElement('canvas'); [flat.width, flat.height] = [320, 200]; "
        + "const pen = flat.getContext('2d'); pen.drawImage(canvas, 0, 0, 320, 200); "
        + "const all = pen.getImageData(0, 0, 320, 200).data; ";

    private static Task SnapAsync(IPage page, string name) =>
        Album is null
            ? Task.CompletedTask
            : page.ScreenshotAsync(new() { Path = Path.Combine(Album, $"view-{name}.png") });
}
