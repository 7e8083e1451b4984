using Bunit;
using Litterfall.App.Files;
using Litterfall.Domain.Schedule;
using Litterfall.Domain.Trade;
using Litterfall.Store;
using Litterfall.UnitTests.House;
using Litterfall.Web;
using Litterfall.Web.Library;
using Litterfall.Web.Shop.Schedule;
using Litterfall.Workshop.Demo;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.DependencyInjection;

namespace Litterfall.UnitTests.Web;

/// <summary>The week, the day and the calendar, rendered without a browser.</summary>
public sealed class SchedulePagesTests : IAsyncDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("litterfall-plan").FullName;
    private readonly BunitContext page = new();

    private static CancellationToken Stop => Xunit.TestContext.Current.CancellationToken;

    private static DateOnly Today => DateOnly.FromDateTime(DateTime.Now);

    /// <summary>One order of eight kits, promised in ten weeks, and one that is only asked for.</summary>
    private async Task<BenchStore> ReadyAsync()
    {
        BenchHost.AddStore(
            page.Services,
            new BenchOptions(Shop.Embedded(), [], "1.0"),
            StoreFile.Contexts(Path.Combine(folder, "bench.db"))
        );
        page.JSInterop.Mode = JSRuntimeMode.Loose;
        var store = page.Services.GetRequiredService<BenchStore>();
        await store.OpenAsync(Stop);
        var text = (
            await File.ReadAllTextAsync(
                Path.Combine(SourceTree.Root, "samples", "ld-204-shop-kits.viv.yaml"),
                Stop
            )
        ).Replace("workshop: lantern-ditch", "", StringComparison.Ordinal);
        var design = (await store.AddAsync("Shop kits", text, "begun", Stop)).Id;
        var item = new OrderItem
        {
            Kind = OrderItemKind.Kit,
            Name = "Shop kits",
            Design = design,
            Version = 1,
            Amount = 8,
        };
        var order = new Order
        {
            Number = 1,
            Customer = "pelloway",
            State = OrderState.Accepted,
            Promised = Today.AddDays(70),
            Items = [item],
        };
        await store.WriteAsync(
            new ShopChange("Ilse")
                .Keep(ShopTerms.Key, 0, DemoShop.Terms, "terms")
                .Keep(
                    ShopCalendar.Key,
                    0,
                    new ShopCalendar { Workers = [new Worker("Ilse"), new Worker("Tobin")] },
                    "calendar"
                )
                .Keep("pelloway", 0, new Customer { Key = "pelloway", Name = "Pelloway Pet Supplies" }, "new")
                .Keep("1", 0, order, "new")
                .Keep("2", 0, order with { Number = 2, State = OrderState.Enquiry, Promised = null }, "new"),
            Stop
        );
        return store;
    }

    [Fact]
    public async Task The_first_plan_puts_the_order_on_days_and_a_tick_writes_its_hours()
    {
        var store = await ReadyAsync();
        var week = page.Render<WeekPage>();
        Assert.Contains("Nothing is planned yet", week.Markup, StringComparison.Ordinal);
        await week.Find("button.main").ClickAsync(new());
        week.WaitForAssertion(() =>
            Assert.Contains("LD-1", week.Find("svg").TextContent, StringComparison.Ordinal)
        );
        var plan = (await store.RecordAsync<ShopPlan>(ShopPlan.Key, Stop))!.Value;
        var tasks = plan.Find(1)!.Tasks;
        Assert.True(plan.Find(1)!.Days.Arrive <= Today.AddDays(70));
        var task = tasks.First(t => t.Task.Stage == "cut").Task;

        page.Services.GetRequiredService<Microsoft.AspNetCore.Components.NavigationManager>()
            .NavigateTo($"/today?day={task.Day:yyyy-MM-dd}");
        var today = page.Render<TodayPage>();
        var button = today.Find($"button[aria-label='Done: {task.Title}']");
        await button.Closest("form")!.SubmitAsync();
        var worked = Assert.Single((await store.OrderAsync(1, Stop))!.Value.Worked);
        Assert.Equal(("cut", task.Minutes), (worked.Stage, worked.Minutes));

        await today.Find($"button[aria-label='Undo: {task.Title}']").ClickAsync(new());
        Assert.Empty((await store.OrderAsync(1, Stop))!.Value.Worked);
    }

    [Fact]
    public async Task What_slipped_moves_the_day_and_names_the_customer()
    {
        await ReadyAsync();
        var desk = page.Services.GetRequiredService<PlanDesk>();
        Assert.Null(await desk.ReplanAsync("first plan", null, Stop));
        var week = page.Render<WeekPage>();
        await week.Find("#slip-order").ChangeAsync(new() { Value = "1" });
        await week.Find("#slip-stage").ChangeAsync(new() { Value = "pack" });
        await week.Find("#slip-why").ChangeAsync(new() { Value = "boxes are late" });
        var form = week.Find("#slip-order").Closest("form")!;
        await form.SubmitAsync();
        Assert.Contains("Choose the first day", week.Find(".fault").TextContent, StringComparison.Ordinal);
        await week.Find("#slip-day").ChangeAsync(new() { Value = $"{Today.AddDays(84):yyyy-MM-dd}" });
        await week.Find("#slip-order").Closest("form")!.SubmitAsync();
        week.WaitForAssertion(() =>
            Assert.Contains("Tell these customers", week.Markup, StringComparison.Ordinal)
        );
        Assert.Contains(
            "Pelloway Pet Supplies",
            week.Find("#tell").ParentElement!.TextContent,
            StringComparison.Ordinal
        );
        await week.Find("button[aria-label='Told: LD-1']").ClickAsync(new());
        Assert.DoesNotContain("Tell these customers", week.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_order_that_is_asked_for_is_tried_beside_the_others()
    {
        await ReadyAsync();
        var desk = page.Services.GetRequiredService<PlanDesk>();
        await desk.ReplanAsync("first plan", null, Stop);
        var (answer, setting) = (await desk.TryAsync(2, Today.AddDays(70), Stop))!.Value;
        Assert.Contains(
            "nobody else is moved",
            Assert.Single(answer.Sentences(setting)),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task The_calendar_says_in_one_sentence_what_it_cannot_take()
    {
        var store = await ReadyAsync();
        var form = page.Render<CalendarPage>();
        await form.Find("#away-0").ChangeAsync(new() { Value = "next week" });
        await form.Find("form").SubmitAsync();
        Assert.Contains("'next week' is no span of days", form.Markup, StringComparison.Ordinal);
        await form.Find("#away-0").ChangeAsync(new() { Value = "2027-02-01 to 2027-02-05" });
        await form.Find("#bench").ChangeAsync(new() { Value = "9" });
        await form.Find("form").SubmitAsync();
        form.WaitForAssertion(() => Assert.Contains("Saved", form.Markup, StringComparison.Ordinal));
        var calendar = (await store.RecordAsync<ShopCalendar>(ShopCalendar.Key, Stop))!.Value;
        Assert.Equal(9, calendar.BenchPlaces);
        Assert.Equal(new DaysAway(new(2027, 2, 1), new(2027, 2, 5)), Assert.Single(calendar.Workers[0].Away));
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        await page.DisposeAsync();
        SqliteConnection.ClearAllPools();
        Directory.Delete(folder, true);
    }
}
