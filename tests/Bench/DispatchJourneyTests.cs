using Microsoft.Playwright;

namespace Litterfall.Tests.Bench;

/// <summary>
/// A parcel from nothing to its verdict: its place has no forecast, then one that is typed; papers are
/// ticked; own rules are entered; the evidence of all parcels is checked.
/// </summary>
public sealed class DispatchJourneyTests(Browser browser, SharedBench shared) : Visits(browser)
{
    private static ILocatorAssertions Shown(IPage page) => Assertions.Expect(page.Locator("main"));

    [Fact]
    public async Task A_parcel_is_held_until_all_is_known_and_never_leaves_on_a_Friday()
    {
        Assert.NotEmpty(shared.Url);
        using var bench = await RunningBench.StartAsync(demo: true);
        var page = await PageAsync();
        await GoAsync(page, bench.Url + "/dispatch/new");
        await page.FillAsync("#parcel-0", "Orrin Sedge");
        await page.FillAsync("#parcel-1", "Farholt");
        await page.FillAsync("#parcel-2", "Tollgate hub");
        await page.FillAsync("#what-0", "Phantasmal poison frog");
        await page.FillAsync("#live-0-0", "3");
        await page.ClickAsync("button:has-text('Judge this parcel')");
        await page.WaitForSelectorAsync(".daypart");
        var parcel = page.Url;
        await page.ClickAsync(".dayrow button:has-text('Fri')");
        await Assertions.Expect(page.Locator(".daypart h2")).ToContainTextAsync("never");
        await Assertions.Expect(page.Locator(".clearpart .fault")).ToContainTextAsync("No label");
        Assert.Equal(0, await page.Locator(".clearpart button").CountAsync());
        await Assertions.Expect(page.Locator(".dayrow button").First).Not.ToContainTextAsync("ship");

        await TypeForecastAsync(page, bench.Url);
        await page.GotoAsync(parcel);
        await page.WaitForSelectorAsync(".daypart");
        await Shown(page).Not.ToContainTextAsync("There is no forecast for the destination");
        await Shown(page).ToContainTextAsync("Papers are not ticked off");
        var open = page.Locator(".ticklist input:not(:checked)");
        for (var left = await open.CountAsync(); left > 0; left--)
        {
            await open.First.ClickAsync();
            await Assertions.Expect(open).ToHaveCountAsync(left - 1);
        }

        await Shown(page).Not.ToContainTextAsync("Papers are not ticked off");
        await Browser.AxeAsync(page, "parcel");
        var label = await page.APIRequest.GetAsync(parcel + "/paper/carton-label.pdf");
        Assert.False(label.Ok);
    }

    private static async Task TypeForecastAsync(IPage page, string bench)
    {
        await GoAsync(page, bench + "/dispatch/forecasts");
        await Shown(page).ToContainTextAsync("There is no forecast for Farholt");
        await page.FillAsync("#fplace-0", "Farholt");
        await page.SelectOptionAsync("#f-node", new SelectOptionValue { Label = "Destination" });
        for (var day = 0; day < 8; day++)
        {
            await page.FillAsync($"#low-{day}", "17");
            await page.FillAsync($"#high-{day}", day == 3 ? "abc" : "22");
        }

        var save = page.Locator("button:text-is('Save the forecast')");
        await save.ClickAsync();
        await Shown(page).ToContainTextAsync("'abc' does not begin with a number");
        Assert.Equal("17", await page.InputValueAsync("#low-7"));
        await page.FillAsync("#high-3", "16");
        await save.ClickAsync();
        await Shown(page).ToContainTextAsync("The warmest is below the coldest");
        await page.FillAsync("#high-3", "21");
        await save.ClickAsync();
        await Shown(page).ToContainTextAsync("Saved the forecast of Farholt.");
        await Shown(page).Not.ToContainTextAsync("There is no forecast for Farholt");
    }

    [Fact]
    public async Task Own_rules_are_kept_and_the_evidence_of_all_parcels_is_whole()
    {
        Assert.NotEmpty(shared.Url);
        using var bench = await RunningBench.StartAsync(demo: true);
        var page = await PageAsync();
        await GoAsync(page, bench.Url + "/dispatch/rules");
        await page.ClickAsync("text=Add a band");
        await page.FillAsync("#band-0-0", "24");
        await page.FillAsync("#band-0-1", "20");
        var save = page.Locator("button:text-is('Save the rules')");
        await save.ClickAsync();
        await Shown(page).ToContainTextAsync("has to be above the other limit");
        await page.FillAsync("#band-0-0", "18");
        await page.FillAsync("#band-0-1", "24");
        await save.ClickAsync();
        await Assertions.Expect(page.Locator("form [role=status]")).ToContainTextAsync("aved");
        await page.ReloadAsync();
        await Assertions.Expect(page.Locator("#band-0-1")).ToHaveValueAsync("24 °C");

        await GoAsync(page, bench.Url + "/dispatch/arrivals");
        await page.ClickAsync("text=Check all parcels");
        await Assertions
            .Expect(page.Locator(".told"))
            .ToContainTextAsync("Whole: 52 links of all parcels, in their order.");
    }
}
