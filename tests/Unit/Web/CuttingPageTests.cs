using System.IO.Compression;
using Bunit;
using Litterfall.App;
using Litterfall.App.Files;
using Litterfall.Domain.Cutting;
using Litterfall.Domain.Stock;
using Litterfall.Domain.Trade;
using Litterfall.Store;
using Litterfall.UnitTests.House;
using Litterfall.Web;
using Litterfall.Web.Library;
using Litterfall.Web.Shop.Cutting;
using Litterfall.Web.Shop.Stock;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.DependencyInjection;

namespace Litterfall.UnitTests.Web;

/// <summary>The pages of the cutting table, with a solver that lays one part on each piece of roll.</summary>
public sealed class CuttingPageTests : IAsyncDisposable
{
    private static readonly DateOnly Today = DateOnly.FromDateTime(DateTime.Now);
    private readonly string folder = Directory.CreateTempSubdirectory("litterfall-cutting").FullName;
    private readonly BunitContext page = new();

    private static CancellationToken Stop => Xunit.TestContext.Current.CancellationToken;

    private CuttingDesk Desk => page.Services.GetRequiredService<CuttingDesk>();

    /// <summary>One part at the corner of each piece: the first stock that is long enough.</summary>
    private static CuttingPlan OneByOne(CuttingTask task)
    {
        var roll = task.Stock[0];
        var sheets = task
            .Parts.SelectMany(p => Enumerable.Repeat(p, p.Count ?? 0))
            .Select(p => new CutSheet
            {
                Stock = roll.Id,
                Length = p.Length,
                Width = roll.Width,
                UsedLength = p.Length,
                Parts = [new(p.Id, 0, 0, p.Length, p.Width, false)],
                Cuts = [new(1, true, p.Length, 0, roll.Width), new(2, false, p.Width, 0, p.Length)],
                Offcuts = [new(0, p.Width, p.Length, roll.Width - p.Width)],
            });
        return new()
        {
            IsProved = false,
            Value = 2,
            Bound = 1.6,
            Sheets = [.. sheets],
        };
    }

    /// <summary>Two kits whose barriers are cut from a roll of 3 m.</summary>
    private async Task<BenchStore> ReadyAsync()
    {
        BenchHost.AddStore(
            page.Services,
            new BenchOptions(Shop.Embedded(), [], "1.0"),
            StoreFile.Contexts(Path.Combine(folder, "bench.db"))
        );
        page.Services.AddSingleton(
            new CutSolver(
                (task, _, found, _) =>
                {
                    var plan = OneByOne(task);
                    found(plan);
                    return plan;
                },
                _ => null,
                (_, _) => []
            )
        );
        page.JSInterop.Mode = JSRuntimeMode.Loose;
        var store = page.Services.GetRequiredService<BenchStore>();
        await store.OpenAsync(Stop);
        await ShopSeed.PeopleAsync(store, Stop);
        await ShopSeed.OrderAsync(
            store,
            ("pelloway", OrderItemKind.Kit, 2, OrderState.Accepted),
            SourceTree.Text("samples/ld-204-shop-kits.viv.yaml"),
            Stop
        );
        await RollAsync(store);
        return store;
    }

    private static async Task RollAsync(BenchStore store)
    {
        var roll = new Lot
        {
            Id = "MESH-1",
            Good = "plastic-fly-screen",
            Since = Today.AddDays(-5),
            Supplier = "hollow-reed",
            Amount = 3.66,
            Cost = 15.74m,
            Form = SheetForm.Roll,
            LengthMillimeters = 3000,
            WidthMillimeters = 1220,
        };
        await store.WriteAsync(
            new ShopChange("Tobin")
                .Keep(
                    "plastic-fly-screen",
                    0,
                    new Good
                    {
                        Key = "plastic-fly-screen",
                        Name = "plastic fly screen",
                        Letters = "MESH",
                        Kind = GoodKind.Sheet,
                        Unit = StockUnit.SquareMeters,
                        Place = "sheet rack",
                    },
                    "begun"
                )
                .Add(roll)
                .Add(
                    new Movement
                    {
                        Lot = "MESH-1",
                        Kind = MovementKind.Received,
                        Amount = 3.66,
                        Day = roll.Since,
                        Who = "Tobin",
                    }
                ),
            Stop
        );
    }

    private async Task<Kept<CuttingJob>> PlannedAsync()
    {
        await page
            .Services.GetRequiredService<CuttingRuns>()
            .StartAsync((await Desk.LoadAsync(Stop)).Material("plastic-fly-screen")!, false);
        return (await Desk.LoadAsync(Stop)).Find(1)!;
    }

    /// <summary>
    /// From the table to the rack and back: the two barriers of 312 × 297 mm take 624 mm of the roll, of
    /// which the two strips of 312 × 923 mm beside them are kept, worth something, and 30 minutes go to the
    /// order.
    /// </summary>
    [Fact]
    public async Task A_plan_is_found_cut_and_taken_back()
    {
        var store = await ReadyAsync();
        var table = page.Render<TablePage>();
        table.WaitForState(() => table.Markup.Contains("312 × 297 mm", StringComparison.Ordinal));
        Assert.Contains("3.00 m left, 1220 mm wide", table.Markup, StringComparison.Ordinal);
        var card = table
            .FindAll("ul.batchcards > li")
            .First(c => c.TextContent.Contains("fly screen", StringComparison.Ordinal));
        card.QuerySelector("button.main")!.Click();
        table.WaitForState(() => table.Markup.Contains("Open plan 1", StringComparison.Ordinal), Ample);
        Assert.Contains(
            "At most 25 % above the least possible; not proved.",
            table.Markup,
            StringComparison.Ordinal
        );

        var plan = page.Render<PlanPage>(p => p.Add(c => c.Number, 1));
        plan.WaitForState(() => plan.Markup.Contains("Write as cut", StringComparison.Ordinal));
        Assert.Contains("Pull 0.624 m", plan.Markup, StringComparison.Ordinal);
        plan.Find("button[aria-label='Next cut']").Click();
        Assert.Contains(
            "Cut 1: across at 312 mm from the left edge",
            plan.Find(".cutstep").TextContent,
            StringComparison.Ordinal
        );
        plan.Find("#minutes").Change("30");
        await plan.Find("form").SubmitAsync();
        plan.WaitForState(() => plan.Markup.Contains("Take the cutting back", StringComparison.Ordinal));
        var order = (await store.OrderAsync(1, Stop))!.Value;
        Assert.Equal(new WorkedTime("cut", 30, Today, "workshop"), Assert.Single(order.Worked));

        var rack = page.Render<RackPage>();
        rack.WaitForState(() => rack.FindAll("ul.rack > li").Count == 2);
        Assert.Contains("312 × 923 mm", rack.Markup, StringComparison.Ordinal);
        Assert.Contains("2.38 m left", rack.Markup, StringComparison.Ordinal);

        await plan.FindAll("button").First(b => b.TextContent == "Take the cutting back").ClickAsync();
        plan.WaitForState(() => plan.Markup.Contains("Write as cut", StringComparison.Ordinal));
        Assert.Empty((await store.OrderAsync(1, Stop))!.Value.Worked);
        Assert.Empty((await Desk.LoadAsync(Stop)).Rack);
        Assert.Equal(3.66, (await Desk.LoadAsync(Stop)).Facts.Book.Find("MESH-1")!.OnHand, 1e-9);
    }

    private static TimeSpan Ample => TimeSpan.FromSeconds(20);

    [Fact]
    public async Task Rules_offcuts_and_panels_are_entered_by_hand()
    {
        await ReadyAsync();
        var rack = page.Render<RackPage>();
        rack.WaitForState(() => rack.Markup.Contains("The rack is empty", StringComparison.Ordinal));
        await rack.Find("form").SubmitAsync();
        Assert.Contains("Choose the material.", rack.Markup, StringComparison.Ordinal);
        rack.Find("#rack-good").Change("plastic-fly-screen");
        rack.Find("#rack-length").Change("500");
        rack.Find("#rack-width").Change("400");
        await rack.Find("form").SubmitAsync();
        rack.WaitForState(() => rack.Markup.Contains("500 × 400 mm", StringComparison.Ordinal));
        rack.Find("button[aria-label='Scrap MESH-2']").Click();
        rack.WaitForState(() => rack.Markup.Contains("MESH-2 is thrown away", StringComparison.Ordinal));

        var table = page.Render<TablePage>();
        table.WaitForState(() => table.FindAll("#panel-good").Count == 1);
        table.Find("#panel-good").Change("plastic-fly-screen");
        table.Find("#panel-part").Change("test panel");
        table.Find("#panel-length").Change("2000");
        table.Find("#panel-width").Change("1500");
        await table.Find("#panel-good").Closest("form")!.SubmitAsync();
        table.WaitForState(() =>
            table.Markup.Contains("is larger than every sheet", StringComparison.Ordinal)
        );

        table.Find("#plastic-fly-screen-kerf").Change("wide");
        await table.Find("#plastic-fly-screen-kerf").Closest("form")!.SubmitAsync();
        Assert.Contains("nothing was changed", table.Markup, StringComparison.Ordinal);
        table.Find("#plastic-fly-screen-kerf").Change("1,5");
        await table.Find("#plastic-fly-screen-kerf").Closest("form")!.SubmitAsync();
        var rules = Assert.Single((await Desk.LoadAsync(Stop)).Rules).Value;
        Assert.Equal((1.5, "your own"), (rules.Kerf, rules.Source));
    }

    [Fact]
    public async Task Parts_cut_by_hand_leave_the_table()
    {
        await ReadyAsync();
        var table = page.Render<TablePage>();
        table.WaitForState(() => table.Markup.Contains("all are cut", StringComparison.Ordinal));
        var card = table
            .FindAll("ul.batchcards > li")
            .First(c => c.TextContent.Contains("fly screen", StringComparison.Ordinal));
        card.QuerySelectorAll("button")
            .First(b => b.TextContent.Contains("all are cut", StringComparison.Ordinal))
            .Click();
        table.WaitForState(() => table.Markup.Contains("2 parts cut by hand", StringComparison.Ordinal));
        Assert.Equal(0, (await Desk.LoadAsync(Stop)).Material("plastic-fly-screen")!.Count);
    }

    /// <summary>
    /// Codes of part labels, read by pdftoppm and zbarimg: programs that know nothing of ours.
    /// </summary>
    [Fact]
    public async Task Labels_and_files_of_a_plan_are_read_by_others()
    {
        await ReadyAsync();
        var job = await PlannedAsync();
        var view = await Desk.LoadAsync(Stop);
        var papers = new CuttingPapers(view, job.Value, "HTTP://192.168.178.20:5080/");
        var sheet = new Litterfall.Documents.Shop.ShopSheet(
            Litterfall.Documents.Layout.PaperSize.A4,
            "Lantern Ditch Workshop",
            Today,
            "1.0"
        );
        var read = Documents.Python.Read("json", Codes, papers.Labels(sheet, false).Bytes);
        Assert.SkipWhen(read["codes"] is null, "pdftoppm or zbarimg is not installed");
        Assert.Equal(
            [
                "HTTP://192.168.178.20:5080/TABLE/1",
                "HTTP://192.168.178.20:5080/TABLE/1/1",
                "HTTP://192.168.178.20:5080/TABLE/1/2",
            ],
            read["codes"]!.AsArray().Select(c => (string)c!).Distinct().Order(StringComparer.Ordinal)
        );
        using var zip = new ZipArchive(new MemoryStream(papers.Zip()));
        Assert.Equal(8, zip.Entries.Count);
        Assert.Contains(zip.Entries, e => e.Name == "plan-1-sheet-1-312x1220mm-parts-mm.dxf");
        Assert.Equal(3, papers.Pdf(sheet).Pages.Length);
        Assert.Empty(papers.Pdf(sheet).Pages.SelectMany(p => Documents.PageFaults.Of(p)));
    }

    private const string Codes = """
        import sys, json, os, subprocess, tempfile
        if not (os.path.exists("/usr/bin/pdftoppm") and os.path.exists("/usr/bin/zbarimg")):
            print(json.dumps({"codes": None})); sys.exit(0)
        with tempfile.TemporaryDirectory() as at:
            open(at + "/l.pdf", "wb").write(sys.stdin.buffer.read())
            subprocess.run(["/usr/bin/pdftoppm", "-r", "200", "-png", at + "/l.pdf", at + "/p"], check=True)
            pages = sorted(at + "/" + f for f in os.listdir(at) if f.endswith(".png"))
            out = subprocess.run(["/usr/bin/zbarimg", "-q", "--raw"] + pages, capture_output=True, text=True)
            print(json.dumps({"codes": out.stdout.split()}))
        """;

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        await page.DisposeAsync();
        SqliteConnection.ClearAllPools();
        Directory.Delete(folder, recursive: true);
    }
}
