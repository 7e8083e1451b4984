using Litterfall.Store;
using Litterfall.Tests.Bench.Disk;
using Microsoft.Data.Sqlite;
using Microsoft.Playwright;

namespace Litterfall.Tests.Bench;

/// <summary>What goes wrong at a desk is told in a sentence, and what was typed is still there.</summary>
public sealed class FaultTests(Browser browser, SharedBench shared) : Visits(browser)
{
    private static readonly bool IsLong = Environment.GetEnvironmentVariable("LITTERFALL_LONG") == "1";

    [Fact]
    public async Task A_file_that_somebody_holds_is_told_and_the_change_saved_afterwards()
    {
        using var bench = await RunningBench.StartAsync(demo: true);
        var page = await DeskAsync(await bench.CopyAsync(Usual));
        using (var other = new SqliteConnection($"Data Source={bench.Store};Pooling=False"))
        {
            other.Open();
            using var hold = other.CreateCommand();
            hold.CommandText = "BEGIN IMMEDIATE";
            hold.ExecuteNonQuery();
            await FieldAsync(page, "f-floor-litter-depth", "Leaf litter", "4 cm");
            var told = page.Locator(".conflict", new() { HasText = "Not saved yet" });
            await Assertions.Expect(told).ToContainTextAsync("another program holds the file");
            Assert.Equal("4 cm", await page.InputValueAsync("#f-floor-litter-depth"));
            await Assertions.Expect(page.Locator(".tools")).ToContainTextAsync("Version 1");
            await KeptHereAsync(page, "4 cm");
            await Task.Delay(IsLong ? 80_000 : 0, TestContext.Current.CancellationToken);
            hold.CommandText = "ROLLBACK";
            hold.ExecuteNonQuery();
        }

        await Assertions.Expect(page.Locator(".tools")).ToContainTextAsync("Version 2");
        await Assertions.Expect(page.Locator(".conflict")).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task A_full_disk_is_told_and_the_change_saved_when_there_is_room()
    {
        using var disk = await WatchedDisk.MakeAsync();
        using var bench = await RunningBench.StartAsync(disk.At("bench.db"), demo: true, disk: disk);
        var page = await DeskAsync(await bench.CopyAsync(Usual));
        disk.IsFull = true;
        await FieldAsync(page, "f-floor-litter-depth", "Leaf litter", "4 cm");
        var told = page.Locator(".conflict", new() { HasText = "Not saved yet" });
        await Assertions.Expect(told).ToContainTextAsync("the disk is full");
        await FieldAsync(page, "f-floor-litter-depth", "Leaf litter", "4.5 cm");
        await Assertions.Expect(told).ToContainTextAsync("the disk is full");
        Assert.Equal("4.5 cm", await page.InputValueAsync("#f-floor-litter-depth"));
        await KeptHereAsync(page, "4.5 cm");
        disk.IsFull = false;
        // A version of its own, or with the change before it, by which of them a try just then has in hand.
        await Assertions.Expect(page.Locator(".tools")).Not.ToContainTextAsync("Version 1");
        await Assertions.Expect(page.Locator(".conflict")).ToHaveCountAsync(0);
        await Assertions.Expect(page.Locator("#f-floor-litter-depth")).ToHaveValueAsync("4.5 cm");
        await page.ReloadAsync();
        await PartAsync(page, "Leaf litter");
        await Assertions.Expect(page.Locator("#f-floor-litter-depth")).ToHaveValueAsync("4.5 cm");
        bench.Kill();
        Assert.Null(StoreFile.Trouble(bench.Store));
    }

    /// <summary>The desk has the change and cannot save it: the browser keeps it.</summary>
    private static Task KeptHereAsync(IPage page, string value) =>
        page.WaitForFunctionAsync(
            """
            value => Object.keys(localStorage)
                .some(k => k.startsWith("litterfall.change") && localStorage[k].includes(value))
            """,
            value
        );

    [Fact]
    public async Task What_was_being_typed_when_the_bench_went_away_is_back_in_its_field()
    {
        var folder = Directory.CreateTempSubdirectory("litterfall-typing").FullName;
        var store = Path.Combine(folder, "bench.db");
        using var bench = await RunningBench.StartAsync(store, demo: true);
        var page = await DeskAsync(await bench.CopyAsync(Usual));
        await page.ClickAsync(".part:text-is('Leaf litter')");
        await page.FillAsync("#f-floor-litter-depth", "4.5 cm");
        bench.Kill();
        await Assertions.Expect(page.Locator("#away")).ToContainTextAsync("what you are typing is kept here");
        using var again = await RunningBench.StartAsync(store, port: new Uri(bench.Url).Port);
        await Assertions.Expect(page.Locator("#kept")).ToContainTextAsync("4.5 cm");
        await Assertions.Expect(page.Locator("#f-floor-litter-depth")).ToHaveValueAsync("4.5 cm");
        await page.Keyboard.PressAsync("Tab");
        await Assertions.Expect(page.Locator(".tools")).ToContainTextAsync("Version 2");
        again.Kill();
        Directory.Delete(folder, recursive: true);
    }

    /// <summary>
    /// 100 kB pass the line whole; 300 kB are told beside their field, nothing older is saved instead.
    /// </summary>
    [Fact]
    public async Task Long_texts_pass_whole_or_are_refused_before_they_are_sent()
    {
        var page = await PageAsync();
        await GoAsync(page, shared.Url + "/library/folsomia-candida");
        var text = page.Locator("#own");
        // Its details are there once the entry is, not with the page's heading.
        await text.WaitForAsync(new() { State = WaitForSelectorState.Attached });
        await StillAsync(page);
        await page.EvaluateAsync("() => document.querySelectorAll('details').forEach(d => d.open = true)");
        var save = page.Locator("form:has(#own) button").First;
        await text.FillAsync(new string(' ', 100_000) + "{");
        await save.ClickAsync();
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("this is not JSON");
        await text.FillAsync(new string('x', 300_000));
        await save.ClickAsync();
        Assert.Contains(
            "It is not sent",
            await text.EvaluateAsync<string>("e => e.validationMessage"),
            StringComparison.Ordinal
        );
        Assert.Equal(300_000, (await text.InputValueAsync()).Length);
        await text.FillAsync("[");
        await save.ClickAsync();
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("this is not JSON");
    }

    [Theory]
    [InlineData("/compare?a=<script>&b=x", "is not here")]
    [InlineData("/compare?a=x&va=-1&b=y&vb=99999999999", "is not here")]
    [InlineData("/nowhere", "There is no such page here")]
    [InlineData("/design/00000000-0000-0000-0000-000000000001", "There is no such design here")]
    [InlineData("/design/00000000-0000-0000-0000-000000000001/papers", "there are no documents")]
    public async Task An_address_of_nothing_gets_a_page_of_ours(string address, string words)
    {
        var page = await PageAsync();
        await page.GotoAsync(shared.Url + address);
        await Assertions.Expect(page.Locator("body")).ToContainTextAsync(words);
        await Assertions.Expect(page.Locator("#blazor-error-ui")).Not.ToBeVisibleAsync();
    }

    [Fact]
    public async Task More_files_than_are_taken_are_told()
    {
        var page = await PageAsync();
        await GoAsync(page, shared.Url);
        await page.WaitForSelectorAsync("input[type=file]:enabled");
        await page.SetInputFilesAsync(
            "input[type=file]",
            Enumerable
                .Range(0, 21)
                .Select(i => new FilePayload
                {
                    Name = $"{i}.csv",
                    MimeType = "text/csv",
                    Buffer = "a"u8.ToArray(),
                })
        );
        await Assertions
            .Expect(page.Locator("main"))
            .ToContainTextAsync("21 files were chosen; expected at most 20");
        await page.WaitForSelectorAsync("input[type=file]:enabled");
        await page.SetInputFilesAsync(
            "input[type=file]",
            new FilePayload
            {
                Name = new string('n', 5000) + ".ies",
                MimeType = "text/plain",
                Buffer = "IESNA91"u8.ToArray(),
            }
        );
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("expected at most 120");
        await GoAsync(page, shared.Url + "/units");
    }
}
