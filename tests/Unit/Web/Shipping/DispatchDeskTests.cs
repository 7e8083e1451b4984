using Bunit;
using Litterfall.App.Files;
using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Tanks;
using Litterfall.Store;
using Litterfall.Web;
using Litterfall.Web.Library;
using Litterfall.Web.Shipping;
using Litterfall.Web.Shipping.Parcels;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.DependencyInjection;

namespace Litterfall.UnitTests.Web.Shipping;

/// <summary>
/// A parcel from the wish to the claim at a bench: own worked examples with an invented mild or hot week.
/// </summary>
public sealed class DispatchDeskTests : IAsyncDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("litterfall-dispatch").FullName;
    private readonly BunitContext page = new();
    private readonly BenchClock clock = new() { Now = DispatchSeed.MondayMorning };

    private static CancellationToken Stop => Xunit.TestContext.Current.CancellationToken;

    private static DateOnly Tuesday => DispatchSeed.Monday.AddDays(1);

    private DispatchDesk Desk => page.Services.GetRequiredService<DispatchDesk>();

    private async Task<BenchStore> ReadyAsync(Func<DateOnly, double>? hub = null)
    {
        BenchHost.AddStore(
            page.Services,
            new BenchOptions(Shop.Embedded(), [], "1.0"),
            StoreFile.Contexts(Path.Combine(folder, "bench.db"))
        );
        page.Services.AddSingleton<TimeProvider>(clock);
        page.JSInterop.Mode = JSRuntimeMode.Loose;
        var store = page.Services.GetRequiredService<BenchStore>();
        await store.OpenAsync(Stop);
        await DispatchSeed.FillAsync(store, hub ?? (_ => 25), Stop);
        return store;
    }

    private async Task<Kept<Parcel>> KeptAsync() => (await Desk.LoadAsync(Stop)).Find(1)!;

    private async Task TickAllAsync()
    {
        foreach (var paper in DispatchDesk.Papers(await Desk.LoadAsync(Stop), (await KeptAsync()).Value))
        {
            if (paper is { IsNeeded: true, IsThere: false })
            {
                Assert.Null(await Desk.TickAsync(await KeptAsync(), paper.Key, true));
            }
        }
    }

    private async Task<DayVerdict> DayAsync(DateOnly day)
    {
        var view = await Desk.LoadAsync(Stop);
        var week = (await Desk.JudgeAsync(view, [view.Find(1)!], Stop))["1"];
        return week.Days.First(d => d.Day == day);
    }

    private async Task ClearAsync()
    {
        await TickAllAsync();
        Assert.Null(await Desk.ClearAsync(await KeptAsync(), await DayAsync(Tuesday)));
    }

    [Fact]
    public async Task Without_its_papers_a_parcel_is_held_and_says_which()
    {
        await ReadyAsync();
        var day = await DayAsync(Tuesday);
        Assert.False(day.MayShip);
        Assert.Contains(day.Reasons, r => r.Rule == ShipRule.Animals && r.Cure.Length > 0 && r.IsProtective);
        var refused = await Desk.ClearAsync(await KeptAsync(), day);
        Assert.Contains("papers", refused!, StringComparison.OrdinalIgnoreCase);
        Assert.Empty(await Desk.LinksAsync(1, Stop));
    }

    [Fact]
    public async Task A_cleared_parcel_is_frozen_takes_its_carton_and_its_label_prints_on_its_day_alone()
    {
        var store = await ReadyAsync();
        await ClearAsync();
        var view = await Desk.LoadAsync(Stop);
        Assert.Equal(
            (ParcelState.Cleared, Tuesday),
            (view.Find(1)!.Value.State, view.Find(1)!.Value.ShipDay)
        );
        Assert.Equal(15, view.Rules.Cartons.Sum(c => view.Stock.Book.OnHand(c.Good)));

        var cleared = (await Desk.ClearedAsync(1, false, Stop))!;
        Assert.Contains("Tue", DispatchDesk.LabelRefusal(view, cleared)!, StringComparison.Ordinal);
        clock.Now = DispatchSeed.MondayMorning.AddDays(1);
        Assert.Null(DispatchDesk.LabelRefusal(await Desk.LoadAsync(Stop), cleared));
        clock.Now = DispatchSeed.MondayMorning.AddDays(4);
        Assert.Contains(
            "Friday",
            DispatchDesk.LabelRefusal(await Desk.LoadAsync(Stop), cleared)!,
            StringComparison.Ordinal
        );

        // Thirty days later it is shown as it was frozen.
        clock.Now = DispatchSeed.MondayMorning.AddDays(30);
        var later = (await Desk.ClearedAsync(1, false, Stop))!;
        Assert.Equal(cleared.Day, later.Day);
        Assert.Equal(cleared.Plan, later.Plan);
        Assert.StartsWith(
            "Whole",
            await Desk.CheckAsync(1, await Desk.LinksAsync(1, Stop), Stop),
            StringComparison.Ordinal
        );
        var link = (await Desk.LinksAsync(1, Stop))[0];
        await Assert.ThrowsAsync<ShopRefusedException>(() =>
            store.WriteAsync(
                new ShopChange("Tobin").Keep(
                    DispatchDesk.KeyOf(link),
                    1,
                    link with
                    {
                        Note = "other",
                    },
                    "change"
                ),
                Stop
            )
        );
    }

    [Fact]
    public async Task Taking_the_clearance_back_gives_the_carton_back_and_keeps_the_evidence()
    {
        await ReadyAsync();
        await ClearAsync();
        Assert.Null(await Desk.DropAsync(await KeptAsync(), "the customer is away"));
        var view = await Desk.LoadAsync(Stop);
        Assert.Equal(ParcelState.Planned, view.Find(1)!.Value.State);
        Assert.Equal(16, view.Rules.Cartons.Sum(c => view.Stock.Book.OnHand(c.Good)));
        Assert.Equal(
            [EvidenceKind.Cleared, EvidenceKind.Dropped],
            (await Desk.LinksAsync(1, Stop)).Select(l => l.Kind)
        );
    }

    [Fact]
    public async Task From_hand_over_to_claim_every_step_is_a_link_and_the_frogs_leave_their_tank()
    {
        var store = await ReadyAsync();
        await ClearAsync();
        Assert.Contains(
            "not for today",
            (await Desk.HandOverAsync(await Desk.LoadAsync(Stop), await KeptAsync(), ""))!,
            StringComparison.Ordinal
        );
        clock.Now = DispatchSeed.MondayMorning.AddDays(1).AddHours(10);
        Assert.Null(await Desk.HandOverAsync(await Desk.LoadAsync(Stop), await KeptAsync(), "T 77"));
        var gone = (await store.CareAsync("B1", null, Stop))[^1];
        Assert.Equal(
            (CareKind.AnimalsOut, 2.0, "dendrobates-auratus"),
            (gone.Kind, gone.Amount, gone.Species)
        );

        clock.Now = DispatchSeed.MondayMorning.AddDays(2).AddHours(5);
        var rows =
            "time,temperature C\n2026-07-07 18:00,21.5\n2026-07-07 22:00,27.0\n"
            + "2026-07-08 02:00,22.0\n2026-07-08 09:00,21.8\n";
        Assert.Null(
            await Desk.AddLoggerAsync(
                await Desk.LoadAsync(Stop),
                (await KeptAsync()).Value,
                "inside.csv",
                System.Text.Encoding.UTF8.GetBytes(rows)
            )
        );
        Assert.Null(
            await Desk.ArrivedAsync(await KeptAsync(), [1], (clock.Now.UtcDateTime.AddHours(-1), false))
        );
        var claim = new Claim
        {
            Parcel = 1,
            SaidAt = clock.Now.UtcDateTime,
            PhotoAt = clock.Now.UtcDateTime,
            WasMet = true,
            Species = "dendrobates-auratus",
            Dead = 1,
        };
        Assert.Null(await Desk.KeepAsync((await KeptAsync()).Value, claim));
        var links = await Desk.LinksAsync(1, Stop);
        Assert.Equal(
            [
                EvidenceKind.Cleared,
                EvidenceKind.HandedOver,
                EvidenceKind.Logger,
                EvidenceKind.Arrived,
                EvidenceKind.Claim,
            ],
            links.Select(l => l.Kind)
        );
        // By hand, above 26 °C along straight lines: 1/5.5 and 1/5 of four hours each, 1.53 in all.
        Assert.Contains("1 of 4 readings outside 17–26 °C, 1.5 hours", links[2].Note);
        await ProofAsync();
    }

    private async Task ProofAsync()
    {
        var counts = await Desk.ArrivalsAsync(Stop);
        Assert.Equal((2, 1), (counts[0].Sent, counts[0].Dead));
        var zip = (await Desk.ExportAsync(1, Stop))!;
        Assert.True((await Desk.CheckExportAsync(zip)).IsWhole);
        zip[zip.AsSpan().IndexOf("Quernmoor Museum"u8)] ^= 1;
        Assert.False((await Desk.CheckExportAsync(zip)).IsWhole);
        Assert.True((await Desk.CheckAllAsync(Stop)).IsWhole);
    }

    [Fact]
    public async Task A_changed_row_of_the_file_is_found_at_its_link()
    {
        await ReadyAsync();
        await ClearAsync();
        await using (var db = new SqliteConnection($"Data Source={Path.Combine(folder, "bench.db")}"))
        {
            await db.OpenAsync(Stop);
            await using var command = db.CreateCommand();
            command.CommandText =
                "UPDATE Records SET Json = replace(Json, 'Quernmoor Museum', 'Quernmoor Musuem') "
                + "WHERE Kind = 'evidence'";
            Assert.Equal(1, await command.ExecuteNonQueryAsync(Stop));
        }

        var told = await Desk.CheckAsync(1, await Desk.LinksAsync(1, Stop), Stop);
        Assert.Contains("link 1", told, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_hot_hub_stops_the_parcel_and_the_page_names_the_day_that_works()
    {
        await ReadyAsync(d => d <= Tuesday ? 34 : 25);
        await TickAllAsync();
        var shown = page.Render<ParcelPage>(p => p.Add(x => x.Number, 1));
        shown.WaitForAssertion(
            () => Assert.Contains("First day that works: Wed 8 Jul", shown.Markup, StringComparison.Ordinal),
            TimeSpan.FromSeconds(20)
        );
        await shown.InvokeAsync(() => shown.Find(".dayrow button.never").Click());
        Assert.Contains("34 °C at the hub", shown.Markup, StringComparison.Ordinal);
        Assert.Contains("depot pick-up only", shown.Markup, StringComparison.Ordinal);
        Assert.Contains("No label", shown.Find(".clearpart").TextContent, StringComparison.Ordinal);

        var board = page.Render<DispatchPage>();
        board.WaitForAssertion(
            () => Assert.Equal(7, board.FindAll(".weekboard td a").Count),
            TimeSpan.FromSeconds(20)
        );
        // Friday to Sunday: never, whatever the weather.
        Assert.Equal(
            ["never", "never", "never"],
            board.FindAll(".weekboard td").Skip(4).Take(3).Select(td => td.ClassName)
        );
    }

    public async ValueTask DisposeAsync()
    {
        await page.DisposeAsync();
        SqliteConnection.ClearAllPools();
        Directory.Delete(folder, true);
    }
}
