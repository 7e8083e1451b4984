using Litterfall.Domain.Stock;
using Litterfall.Domain.Trade;
using Litterfall.Store;
using Microsoft.Data.Sqlite;

namespace Litterfall.UnitTests.Store;

/// <summary>A step of work is whole or nothing, numbers leave no gap, and the gate of stock stands.</summary>
public sealed class ShopStoreTests : IDisposable
{
    private static readonly DateOnly Day = new(2026, 9, 1);
    private readonly string folder = Directory.CreateTempSubdirectory("litterfall-shop").FullName;

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

    private static Lot Peat(string id, Func<Lot, Lot>? with = null)
    {
        var lot = new Lot
        {
            Id = id,
            Good = "peat",
            Since = Day,
            Amount = 10,
        };
        return with?.Invoke(lot) ?? lot;
    }

    private static Movement Line(string lot, MovementKind kind, double amount, DateOnly? day = null) =>
        new()
        {
            Lot = lot,
            Kind = kind,
            Amount = amount,
            Day = day ?? Day,
            Who = "Ilse",
        };

    private static async Task<string> RefusedAsync(BenchStore store, ShopChange change) =>
        (await Assert.ThrowsAsync<ShopRefusedException>(() => store.WriteAsync(change, Stop))).Message;

    [Fact]
    public async Task A_step_is_written_whole_or_not_at_all()
    {
        var store = await OpenAsync();
        var told = await RefusedAsync(
            store,
            new ShopChange("Ilse")
                .Keep("voss", 0, new Customer { Key = "voss", Name = "Pernille Voss" }, "new")
                .KeepNumbered<Order>(n => new() { Number = n, Customer = "voss" }, "asked")
                .Add(Peat("PEAT-1"))
                .Add(Line("PEAT-1", MovementKind.Received, 10))
                .Add(Line("PEAT-1", MovementKind.Used, 11))
        );
        Assert.Equal(
            "PEAT-1 has 10 left, and 11 were to go out. Count it, or take the rest from another lot.",
            told
        );
        Assert.Empty(await store.RecordsAsync<Customer>(Stop));
        Assert.Empty(await store.RecordsAsync<Order>(Stop));
        Assert.Empty(await store.LotsAsync(Stop));
        Assert.Empty(await store.MovementsAsync(0, Stop));
        // The number that was not used is the next one.
        var written = await store.WriteAsync(
            new ShopChange("Ilse").KeepNumbered<Order>(n => new() { Number = n, Customer = "voss" }, "asked"),
            Stop
        );
        Assert.Equal(1, Assert.Single(written.Records));
    }

    [Fact]
    public async Task Writers_side_by_side_leave_no_gap_in_numbers()
    {
        var store = await OpenAsync();
        var other = await OpenAsync();
        var writers = Enumerable
            .Range(0, 24)
            .Select(i =>
                Task.Run(
                    async () =>
                    {
                        var change = new ShopChange("w").KeepNumbered<Order>(
                            n => new() { Number = n, Customer = $"c{i}" },
                            "asked"
                        );
                        if (i % 4 == 3)
                        {
                            // Fails after its number was drawn.
                            change.Add(Line("NONE-1", MovementKind.Used, 1));
                            await Assert.ThrowsAsync<ShopRefusedException>(() =>
                                (i % 2 == 0 ? store : other).WriteAsync(change, Stop)
                            );
                            return 0;
                        }

                        return (await (i % 2 == 0 ? store : other).WriteAsync(change, Stop)).Records[0];
                    },
                    Stop
                )
            );
        var numbers = (await Task.WhenAll(writers)).Where(n => n > 0).Order();
        Assert.Equal(Enumerable.Range(1, 18), numbers);
        Assert.Equal(18, (await store.RecordsAsync<Order>(Stop)).Count);
    }

    [Fact]
    public async Task Side_by_side_nobody_takes_what_another_took()
    {
        var store = await OpenAsync();
        await store.WriteAsync(
            new ShopChange("Ilse").Add(Peat("PEAT-1")).Add(Line("PEAT-1", MovementKind.Received, 10)),
            Stop
        );
        var took = await Task.WhenAll(
            Enumerable
                .Range(0, 8)
                .Select(_ =>
                    Task.Run(
                        async () =>
                        {
                            try
                            {
                                await store.WriteAsync(
                                    new ShopChange("w").Add(Line("PEAT-1", MovementKind.Used, 3)),
                                    Stop
                                );
                                return 1;
                            }
                            catch (ShopRefusedException)
                            {
                                return 0;
                            }
                        },
                        Stop
                    )
                )
        );
        Assert.Equal(3, took.Sum());
        Assert.Equal(1, (await store.MovementsAsync(0, Stop)).Sum(m => m.Effect), 1e-9);
    }

    [Fact]
    public async Task The_gate_names_what_is_wrong()
    {
        var store = await OpenAsync();
        await ThreeLotsAsync(store);
        async Task<string> Told(Movement line) => await RefusedAsync(store, new ShopChange("Ilse").Add(line));
        Assert.Contains(
            "PEAT-1 came on 1 Sep 2026",
            await Told(Line("PEAT-1", MovementKind.Used, 1, Day.AddDays(-1))),
            StringComparison.Ordinal
        );
        Assert.Contains(
            "PEAT-2 was good until 3 Sep 2026",
            await Told(Line("PEAT-2", MovementKind.Sold, 1, Day.AddDays(3))),
            StringComparison.Ordinal
        );
        Assert.Contains(
            "in quarantine until",
            await Told(Line("PEAT-3", MovementKind.Used, 1)),
            StringComparison.Ordinal
        );
        Assert.Contains(
            "There is no lot PEAT-9",
            await Told(Line("PEAT-9", MovementKind.Used, 1)),
            StringComparison.Ordinal
        );
        Assert.Contains(
            "a number of 0 or more",
            await Told(Line("PEAT-1", MovementKind.Used, -1)),
            StringComparison.Ordinal
        );
        await store.WriteAsync(new ShopChange("Ilse").Add(Line("PEAT-1", MovementKind.Held, 0)), Stop);
        Assert.Contains(
            "on hold",
            await Told(Line("PEAT-1", MovementKind.Used, 1)),
            StringComparison.Ordinal
        );
        // What died may be written off while on hold; less than nothing only when told.
        await store.WriteAsync(new ShopChange("Ilse").Add(Line("PEAT-1", MovementKind.Scrapped, 4)), Stop);
        await store.WriteAsync(
            new ShopChange("Ilse").Add(Line("PEAT-1", MovementKind.Scrapped, 9), true),
            Stop
        );
        Assert.Equal(
            -3,
            (await store.MovementsAsync(0, Stop)).Where(m => m.Lot == "PEAT-1").Sum(m => m.Effect),
            1e-9
        );
    }

    /// <summary>One without a day, one that spoils, one in quarantine.</summary>
    private static async Task ThreeLotsAsync(BenchStore store)
    {
        var change = new ShopChange("Ilse");
        foreach (
            var lot in new[]
            {
                Peat("PEAT-1"),
                Peat("PEAT-2", l => l with { Expires = Day.AddDays(2) }),
                Peat("PEAT-3", l => l with { QuarantinedUntil = Day.AddDays(9) }),
            }
        )
        {
            change.Add(lot).Add(Line(lot.Id, MovementKind.Received, 10));
        }

        await store.WriteAsync(change, Stop);
    }

    /// <summary>A line is taken back once, even when two do it at the same time.</summary>
    [Fact]
    public async Task A_line_is_taken_back_once()
    {
        var store = await OpenAsync();
        await store.WriteAsync(
            new ShopChange("Ilse")
                .Add(Peat("PEAT-1"))
                .Add(Line("PEAT-1", MovementKind.Received, 10))
                .Add(Line("PEAT-1", MovementKind.Used, 4)),
            Stop
        );
        var used = (await store.MovementsAsync(0, Stop))[1];
        var back = used with { Id = 0, Reverses = used.Id };
        await store.WriteAsync(new ShopChange("Ilse").Add(back), Stop);
        Assert.Contains(
            "taken back already",
            await RefusedAsync(store, new ShopChange("Tobin").Add(back)),
            StringComparison.Ordinal
        );
        Assert.Contains(
            "no line 77",
            await RefusedAsync(store, new ShopChange("Tobin").Add(back with { Reverses = 77 })),
            StringComparison.Ordinal
        );
        Assert.Equal(10, (await store.MovementsAsync(0, Stop)).Sum(m => m.Effect), 1e-9);
    }

    [Fact]
    public async Task Papers_are_numbered_one_after_another_by_their_kind()
    {
        var store = await OpenAsync();
        var written = await Task.WhenAll(
            Enumerable
                .Range(0, 12)
                .Select(i =>
                    Task.Run(
                        async () =>
                            (
                                await store.WriteAsync(
                                    new ShopChange("Tobin").Issue(
                                        i % 2 == 0 ? IssuedKind.Invoice : IssuedKind.Delivery,
                                        1,
                                        n => Paper(i % 2 == 0 ? IssuedKind.Invoice : IssuedKind.Delivery, n)
                                    ),
                                    Stop
                                )
                            ).Papers[0],
                        Stop
                    )
                )
        );
        Assert.Equal(Enumerable.Range(1, 6), written.Where((_, i) => i % 2 == 0).Order());
        Assert.Equal(Enumerable.Range(1, 6), written.Where((_, i) => i % 2 == 1).Order());
    }

    private static Invoice Paper(IssuedKind kind, int number) =>
        new()
        {
            Kind = kind,
            Number = number,
            Name = $"{number}",
            Order = 1,
            Day = Day,
            Shop = new ShopTerms { Name = "workshop" },
            Customer = new Customer { Key = "voss", Name = "Pernille Voss" },
            Lines = [],
        };

    public void Dispose()
    {
        SqliteConnection.ClearAllPools();
        Directory.Delete(folder, recursive: true);
    }
}
