using Litterfall.App.Files;
using Litterfall.Domain.DesignFile;
using Litterfall.Store;
using Litterfall.Web.Desk;
using Litterfall.Web.Library;
using Litterfall.Web.Sharing;

namespace Litterfall.UnitTests.Web;

/// <summary>Who computes when, who gives up, and that work on a design before never shows again.</summary>
public sealed class TurnsTests
{
    private const string Text = """
        litterfall: 1
        name: turns
        box: { inside: { length: 40 cm, depth: 40 cm, height: 40 cm } }
        floor: { soil: { recipe: ready-rainforest, depth: 5 cm } }
        lid: { material: float-glass, thickness: 4 mm, gap: 2 mm }
        room: { temperature: 21 C, humidity: 50 % }

        """;

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Months_come_first_and_every_fourth_turn_is_of_the_others()
    {
        var turns = new Turns(2);
        using var begin = new ManualResetEventSlim();
        var order = new List<string>();
        Task Wait(WorkKind kind, string name) =>
            turns.RunAsync(
                kind,
                () =>
                {
                    order.Add(name);
                    return 0;
                },
                Stop
            );
        var first = turns.RunAsync(
            WorkKind.Month,
            () =>
            {
                begin.Wait(Stop);
                return 0;
            },
            Stop
        );
        var rest = new List<Task> { Wait(WorkKind.Whole, "check") };
        rest.AddRange(Enumerable.Range(1, 5).Select(i => Wait(WorkKind.Month, $"month {i}")));
        Assert.Equal(6, turns.Waiting);
        begin.Set();
        await Task.WhenAll([first, .. rest]);
        Assert.Equal(["month 1", "month 2", "month 3", "check", "month 4", "month 5"], order);
        Assert.Equal(0, turns.Waiting);
    }

    [Fact]
    public async Task Who_gives_up_leaves_the_row_at_once_and_nobody_else_loses_a_turn()
    {
        var turns = new Turns(2);
        using var begin = new ManualResetEventSlim();
        using var giveUp = new CancellationTokenSource();
        var first = turns.RunAsync(
            WorkKind.Month,
            () =>
            {
                begin.Wait(Stop);
                return 1;
            },
            Stop
        );
        var left = turns.RunAsync(WorkKind.Month, () => 2, giveUp.Token);
        var last = turns.RunAsync(WorkKind.Whole, () => 3, Stop);
        await giveUp.CancelAsync();
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => left);
        Assert.Equal(1, turns.Waiting);
        begin.Set();
        Assert.Equal((1, 3), (await first, await last));
        Assert.Equal(4, await turns.RunAsync(WorkKind.Search, () => 4, Stop));
    }

    [Fact]
    public void Seats_are_counted_and_given_back_once()
    {
        var room = new DeskRoom(2);
        var one = room.Sit();
        using var two = room.Sit();
        Assert.Null(room.Sit());
        one!.Dispose();
        one.Dispose();
        Assert.Equal(1, room.Taken);
        using var three = room.Sit();
        Assert.NotNull(three);
        Assert.InRange(DeskRoom.OfMachine().Most, 20, 1000);
    }

    /// <summary>Begun in quick succession, each document stays on the screen until the next.</summary>
    [Fact]
    public async Task Work_on_a_design_before_never_shows_again()
    {
        var store = new BenchStore(
            StoreFile.Contexts(Path.Combine(Path.GetTempPath(), $"turns-{Guid.NewGuid()}.db")),
            new("1", "1"),
            TimeProvider.System
        );
        var library = new BenchLibrary(new BenchOptions(Shop.Embedded(), [], "1"), store);
        var newest = DesignReader.Read("turns", Text).Value!;
        var stale = 0;
        using var run = new DeskRun(library, _ => { });
        for (var i = 0; i < 60; i++)
        {
            newest = DesignEdits.Set(newest, "floor.soil.depth", $"{50 + i} mm").Value!;
            run.Begin(newest, isPassing: i % 2 == 0);
            for (var look = 0; look < 200; look++)
            {
                stale += ReferenceEquals(run.Look!.Document, newest) ? 0 : 1;
                Thread.SpinWait(500);
            }
        }

        await run.Done;
        Assert.Equal(0, stale);
        Assert.Same(newest, run.Look!.Document);
        Assert.False(run.Look.MonthIsOld);
    }

    [Theory]
    [InlineData("{\"key\": 5}", "key is 5")]
    [InlineData("{\"key\": \"\\ud800\"}", "half a character")]
    [InlineData("{\"key\": \"\\u0000\"}", "control character")]
    [InlineData("{\"key\": \"\"}", "is no key")]
    [InlineData("[1]", "holds a list")]
    [InlineData("{", "not JSON")]
    public async Task An_own_entry_whose_key_does_not_read_is_refused_with_a_sentence(
        string json,
        string words
    )
    {
        var store = new BenchStore(
            StoreFile.Contexts(Path.Combine(Path.GetTempPath(), $"turns-{Guid.NewGuid()}.db")),
            new("1", "1"),
            TimeProvider.System
        );
        var library = new BenchLibrary(new BenchOptions(Shop.Embedded(), [], "1"), store);
        var told = await OwnEntry.AddAsync(library, json, "own");
        Assert.Contains(words, told, StringComparison.Ordinal);
    }
}
