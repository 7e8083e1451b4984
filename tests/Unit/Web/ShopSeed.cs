using Litterfall.Domain.Stock;
using Litterfall.Domain.Trade;
using Litterfall.Store;

namespace Litterfall.UnitTests.Web;

/// <summary>A small invented workshop with stock, two customers and three orders.</summary>
internal static class ShopSeed
{
    public static readonly Good Peat = Bulk("peat", "peat", "PEAT", 40) with { ReorderAt = 60 };

    public static Good Bulk(string key, string name, string letters, int walk) =>
        new()
        {
            Key = key,
            Name = name,
            Letters = letters,
            Kind = GoodKind.Bulk,
            Unit = StockUnit.Liters,
            Place = "bulk bay",
            Walk = walk,
            ReorderAt = 20,
        };

    public static readonly Good Springtails = new()
    {
        Key = "folsomia-candida",
        Name = "springtail Folsomia candida",
        Letters = "SPR",
        Kind = GoodKind.Culture,
        Unit = StockUnit.Pieces,
        Place = "culture shelf",
        Walk = 70,
        KeepsDays = 60,
        ReorderAt = 6,
    };

    /// <summary>Goods, people and terms.</summary>
    public static async Task PeopleAsync(BenchStore store, CancellationToken stop)
    {
        var change = new ShopChange("Tobin")
            .Keep(
                ShopTerms.Key,
                0,
                new ShopTerms { Name = "Lantern Ditch Workshop", OrderPrefix = "LD-" },
                "begun"
            )
            .Keep(
                "hollow-reed",
                0,
                new Supplier
                {
                    Key = "hollow-reed",
                    Name = "Hollow Reed Bulk Goods",
                    Currency = "EUR",
                },
                "begun"
            )
            .Keep(
                "voss",
                0,
                new Customer
                {
                    Key = "voss",
                    Name = "Pernille Voss",
                    Phone = "0151 0000",
                    Address = ["3 Tanner's Row", "Upper Sallow"],
                },
                "begun"
            )
            .Keep("pelloway", 0, new Customer { Key = "pelloway", Name = "Pelloway Pet Supplies" }, "begun");
        Good[] goods =
        [
            Peat,
            Bulk("fine-bark", "fine bark", "BARK", 20),
            Bulk("charcoal", "charcoal", "CHAR", 30),
            Bulk("tree-fern-fibre", "tree-fern fiber", "FERN", 25),
            Bulk("chopped-sphagnum", "chopped sphagnum", "SPH", 50),
            Bulk("expanded-clay-8-16", "expanded clay 8–16 mm", "CLAY", 10),
            Bulk("oak-leaves", "oak leaves", "OAK", 55),
            Springtails,
        ];
        foreach (var good in goods)
        {
            change.Keep(good.Key, 0, good, "begun");
        }

        await store.WriteAsync(change, stop);
    }

    /// <summary>Lots of it all: bought in spring, a mix made, a tank that left.</summary>
    /// <param name="store">The store.</param>
    /// <param name="today">Today.</param>
    /// <param name="stop">Ends the writing.</param>
    public static async Task StockAsync(BenchStore store, DateOnly today, CancellationToken stop)
    {
        var change = new ShopChange("Ilse");
        void Buy(string id, string good, double liters, decimal cost, Func<Lot, Lot>? with = null)
        {
            var lot = new Lot
            {
                Id = id,
                Good = good,
                Since = today.AddDays(-40),
                Supplier = "hollow-reed",
                Amount = liters,
                Cost = cost,
            };
            lot = with?.Invoke(lot) ?? lot;
            change.Add(lot);
            change.Add(Line(id, MovementKind.Received, liters, lot.Since));
        }

        Buy("PEAT-31", "peat", 52, 18.40m, l =>
            l with
            {
                SupplierLot = "HR 2231",
                Since = today.AddDays(-60),
            }
        );
        Buy("PEAT-32", "peat", 215, 76.00m);
        Buy("BARK-12", "fine-bark", 140, 52.80m);
        Buy("CHAR-3", "charcoal", 60, 73.50m);
        Buy("FERN-7", "tree-fern-fibre", 113, 124.00m);
        Buy("SPH-2", "chopped-sphagnum", 70, 35.40m);
        Buy("CLAY-5", "expanded-clay-8-16", 110, 39.20m);
        Buy("OAK-4", "oak-leaves", 46, 21.00m, l => l with { Expires = today.AddDays(9) });
        Buy("SPR-4", Springtails.Key, 9, 0, l =>
            l with
            {
                Supplier = null,
                Line = "A",
                Expires = today.AddDays(30),
            }
        );
        Buy("SPR-5", Springtails.Key, 6, 0, l =>
            l with
            {
                Supplier = null,
                Line = "B",
                QuarantinedUntil = today.AddDays(20),
            }
        );
        Made(change, today);
        await store.WriteAsync(change, stop);
    }

    /// <summary>A mix and a tank that left.</summary>
    private static void Made(ShopChange change, DateOnly today)
    {
        var mixed = today.AddDays(-20);
        change.Add(
            new Lot
            {
                Id = "MIX-7",
                Good = "standard-rainforest",
                Since = mixed,
                Amount = 60,
            }
        );
        foreach (
            var (lot, liters) in new[]
            {
                ("FERN-7", 19.5),
                ("BARK-12", 19.5),
                ("CHAR-3", 9.7),
                ("PEAT-31", 9.7),
                ("SPH-2", 9.7),
            }
        )
        {
            change.Add(Line(lot, MovementKind.Used, liters, mixed) with { Into = "MIX-7" });
        }

        change.Add(Line("MIX-7", MovementKind.Made, 60, mixed));
        change.Add(
            new Lot
            {
                Id = "TANK-9",
                Good = "planted-tank",
                Since = today.AddDays(-15),
                Amount = 1,
                Order = 1,
            }
        );
        change.Add(Line("TANK-9", MovementKind.Made, 1, today.AddDays(-15)));
        change.Add(Line("MIX-7", MovementKind.Used, 18.2, today.AddDays(-15)) with { Into = "TANK-9" });
        change.Add(Line("CLAY-5", MovementKind.Used, 13, today.AddDays(-15)) with { Into = "TANK-9" });
        change.Add(Line("TANK-9", MovementKind.Sold, 1, today.AddDays(-2)) with { Into = "1" });
        change.Add(Line("CLAY-5", MovementKind.Used, 4, today.AddDays(-3)));
    }

    /// <summary>An order for a design.</summary>
    public static async Task<int> OrderAsync(
        BenchStore store,
        (string Customer, OrderItemKind Kind, double Amount, OrderState State) what,
        string? design,
        CancellationToken stop
    )
    {
        var stored = design is null ? null : await store.AddAsync("for an order", design, "begun", stop);
        var written = await store.WriteAsync(
            new ShopChange("Tobin").KeepNumbered<Order>(
                n =>
                    new()
                    {
                        Number = n,
                        Customer = what.Customer,
                        State = what.State,
                        Items =
                        [
                            new()
                            {
                                Kind = what.Kind,
                                Name = what.Kind == OrderItemKind.Kit ? "small kit" : "planted tank",
                                Design = stored?.Id,
                                Version = stored?.Version ?? 0,
                                Amount = what.Amount,
                            },
                        ],
                    },
                "asked"
            ),
            stop
        );
        return written.Records[0];
    }

    private static Movement Line(string lot, MovementKind kind, double amount, DateOnly day) =>
        new()
        {
            Lot = lot,
            Kind = kind,
            Amount = amount,
            Day = day,
            Who = "Ilse",
        };
}
