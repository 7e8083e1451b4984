using Litterfall.App.Files;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Findings;
using Litterfall.Store;
using Litterfall.UnitTests.Judging.Fixes;
using Litterfall.Web.Desk;
using Litterfall.Web.Library;
using Xunit;

namespace Litterfall.UnitTests.Web;

/// <summary>What is tried belongs to the design beside which it was asked for.</summary>
public sealed class TrialTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("litterfall-trial").FullName;

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    /// <summary>To apply it later would take the change in between back.</summary>
    [Fact]
    public async Task A_change_closes_what_is_tried()
    {
        using var work = await DeskAsync(FaultyBoxes.Pairs);
        var fix = work.Look.Fixes.First(f => f.Finding.Slug == "group-rule-broken");
        work.Try(fix.Document, fix.Words);
        Assert.NotNull(work.Trial);
        Assert.Empty(await work.ChangeAsync(d => DesignEdits.Set(d, "floor.soil.depth", "8 cm"), "deeper"));
        Assert.Null(work.Trial);
        await work.EndTrialAsync(true);
        Assert.Equal("8 cm", work.Document.Design.Floor.Soil!.Depth!.Value.Text);
        Assert.Equal(5, work.Document.Design.Animals[0].Count);
    }

    [Fact]
    public async Task What_makes_it_buildable_is_one_trial_one_version_and_one_undo()
    {
        using var work = await DeskAsync(FaultyBoxes.Pairs);
        Assert.True(work.Look.Whole!.Stops);
        Assert.Null(await work.MakeBuildableAsync());
        Assert.NotEmpty(work.TriedChanges);
        await work.EndTrialAsync(true);
        await work.Settled;
        Assert.Equal(2, work.Version);
        Assert.False(work.Look.Whole!.Stops);
        Assert.Contains(
            "Ready to build",
            Verdict.Of(work.Look.Whole, UnitPreferences.Metric),
            StringComparison.Ordinal
        );
        await work.UndoAsync();
        await work.Settled;
        Assert.True(work.Look.Whole.Stops);
    }

    [Fact]
    public async Task A_change_ends_the_search()
    {
        using var work = await DeskAsync(FaultyBoxes.HighAndOpen);
        var search = work.MakeBuildableAsync();
        Assert.True(work.IsMakingBuildable);
        await work.ChangeAsync(d => DesignEdits.Set(d, "name", "renamed"), "renamed");
        Assert.Null(await search);
        Assert.Null(work.Trial);
        Assert.False(work.IsMakingBuildable);
    }

    /// <inheritdoc/>
    public void Dispose() => Directory.Delete(folder, recursive: true);

    private async Task<DeskWork> DeskAsync(string text)
    {
        var store = new BenchStore(
            StoreFile.Contexts(Path.Combine(folder, "bench.db")),
            new("test", "test"),
            TimeProvider.System
        );
        await store.OpenAsync(Stop);
        var library = new BenchLibrary(new BenchOptions(Shop.Embedded(), [], "test"), store);
        await library.LoadAsync(Stop);
        var design = await store.AddAsync("tried", text, "begun", Stop);
        var work = (await DeskWork.OpenAsync(store, library, design.Id, () => { }))!;
        await work.Settled;
        Assert.Contains(work.Look.Whole!.Open, f => f.Severity == Severity.Stop);
        return work;
    }
}
