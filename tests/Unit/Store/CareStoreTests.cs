using Litterfall.Domain.Tanks;
using Litterfall.Store;
using Microsoft.Data.Sqlite;

namespace Litterfall.UnitTests.Store;

/// <summary>Lines of logs: a key counts once, nothing is changed, nothing is lost.</summary>
public sealed class CareStoreTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("litterfall-care").FullName;

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    private async Task<BenchStore> OpenAsync()
    {
        var store = new BenchStore(
            StoreFile.Contexts(Path.Combine(folder, "bench.db")),
            new StoreMarks("1.0", "abc"),
            TimeProvider.System
        );
        await store.OpenAsync(Stop);
        return store;
    }

    private static CareEntry Line(string key, double amount, string back = "") =>
        new()
        {
            Key = key,
            Tank = "A3",
            At = new DateTime(2026, 5, 4, 8, 0, 0, DateTimeKind.Utc),
            Kind = CareKind.Drained,
            Amount = amount,
            Who = "Ilse",
            TakesBack = back,
        };

    [Fact]
    public async Task A_line_sent_twice_counts_once_and_stays_as_it_was()
    {
        var store = await OpenAsync();
        var told = new List<string>();
        using var watch = store.WatchCare(told.Add);
        Assert.Equal(1, await store.AddCareAsync([Line("one", 1200)], Stop));
        Assert.Equal(1, await store.AddCareAsync([Line("one", 9), Line("two", 5), Line("two", 6)], Stop));
        await store.WriteAsync(new ShopChange("Ilse").Add(Line("one", 7)), Stop);
        var lines = await store.CareAsync("A3", cancel: Stop);
        Assert.Equal([1200.0, 5.0], lines.Select(l => l.Amount!.Value));
        Assert.Equal(DateTimeKind.Utc, lines[0].At.Kind);
        Assert.Equal(["A3", "A3"], told);
    }

    [Fact]
    public async Task A_line_that_is_taken_back_is_kept_and_does_not_count()
    {
        var store = await OpenAsync();
        await store.AddCareAsync([Line("one", 1200), Line("two", 5)], Stop);
        await store.AddCareAsync([Line("three", 1200, "one")], Stop);
        var all = await store.CareOfAllAsync(cancel: Stop);
        Assert.Equal(3, all.Count);
        Assert.Equal("two", Assert.Single(CareLines.Counting(all)).Key);
    }

    public void Dispose()
    {
        SqliteConnection.ClearAllPools();
        Directory.Delete(folder, recursive: true);
    }
}
