using System.Collections.Immutable;
using Litterfall.Domain.Nursery;
using Litterfall.Domain.Stock;

namespace Litterfall.Workshop.Demo;

/// <summary>Plants of the demo: two trays in quarantine, cuttings that root, a year of losses.</summary>
/// <param name="book">Where they go.</param>
/// <param name="stock">Lots and lines.</param>
internal sealed class DemoNursery(DemoBook book, DemoStock stock)
{
    private const string Apart = "quarantine-box";
    private const string Roots = "rooting-bench";
    private const string Ready = "plant-bench";
    private const int QuarantineDays = 30;

    /// <summary>Writes trays; returns benches and mother plants.</summary>
    public (ImmutableArray<NurseryBench> Benches, ImmutableArray<MotherPlant> Mothers) Write()
    {
        Past("fittonia-albivenis", 12, 3.20m, (-110, 1));
        Past("asplenium-nidus", 10, 4.60m, (-95, 3));
        Past("neoregelia-small", 8, 8.50m, (-80, 0));
        Kept("neoregelia-small", 14, 8.50m, 1, 0);
        Kept("ficus-pumila", 16, 3.80m, 2, 1);
        Cuttings("fittonia-albivenis", 12, (-20, null), 1);
        Cuttings("philodendron-hederaceum", 8, (-36, -8), 2);
        return (
            [
                Bench(Apart, "Quarantine box", BenchUse.Quarantine, 22),
                Bench(Roots, "Rooting bench", BenchUse.Propagation, 24),
                Bench(Ready, "Plant bench", BenchUse.Growing, 22),
            ],
            [
                Mother("fittonia-albivenis", "Fittonia 1", -20),
                Mother("philodendron-hederaceum", "Philodendron 1", -36),
                Mother("ficus-pumila", "Creeping fig 1", null),
            ]
        );
    }

    /// <summary>A tray that came, lost some, was released and planted out.</summary>
    private void Past(string plant, int count, decimal each, (int Day, int Died) past)
    {
        var came = Day(past.Day);
        var lot = stock.Receive(plant, count, each, came);
        var released = came.AddDays(QuarantineDays);
        if (past.Died > 0)
        {
            stock.Line(lot, MovementKind.Died, past.Died, came.AddDays(9), null, "rot at the base");
        }

        var left = count - past.Died;
        stock.Line(lot, MovementKind.Scrapped, left, released.AddDays(20), null, "planted at the fair");
        book.NewTrays.Add(
            new PlantTray
            {
                Number = lot,
                Plant = plant,
                Origin = TrayOrigin.Bought,
                Supplier = DemoShop.Wares,
                Since = came,
                Plants = count,
                Bench = Ready,
                QuarantineDays = QuarantineDays,
                Deaths =
                    past.Died > 0
                        ? [new TrayDeath(came.AddDays(9), past.Died, "rot at the base", DemoShop.Builder)]
                        : [],
                Released = released,
                Emptied = released.AddDays(20),
            }
        );
    }

    /// <summary>A tray in quarantine, dipped, not yet inspected.</summary>
    private void Kept(string plant, int count, decimal each, int place, int died)
    {
        var came = Day(-12);
        var lot = stock.Quarantine(plant, count, each, came);
        if (died > 0)
        {
            stock.Line(lot, MovementKind.Died, died, came.AddDays(5), null, "broken in the parcel");
        }

        book.NewTrays.Add(
            new PlantTray
            {
                Number = lot,
                Plant = plant,
                Origin = TrayOrigin.Bought,
                Supplier = DemoShop.Wares,
                Since = came,
                Plants = count,
                Bench = Apart,
                Place = place,
                QuarantineDays = QuarantineDays,
                Dips = [new TrayDip(came, 5.25, 5, DemoShop.Builder)],
                Deaths =
                    died > 0
                        ? [new TrayDeath(came.AddDays(5), died, "broken in the parcel", DemoShop.Builder)]
                        : [],
            }
        );
    }

    private void Cuttings(string plant, int count, (int Cut, int? Potted) days, int place)
    {
        var cut = Day(days.Cut);
        var lot = stock.Make(
            new Lot
            {
                Id = "",
                Good = plant,
                Since = cut,
                Amount = count,
                Line = "cuttings",
            }
        );
        book.NewTrays.Add(
            new PlantTray
            {
                Number = lot,
                Plant = plant,
                Origin = TrayOrigin.Cutting,
                Mother = "own mother plant",
                Since = cut,
                Plants = count,
                Bench = Roots,
                Place = place,
                Potted = days.Potted is { } potted ? Day(potted) : null,
            }
        );
    }

    private static NurseryBench Bench(string key, string name, BenchUse use, double celsius) =>
        new()
        {
            Key = key,
            Name = name,
            Use = use,
            Celsius = celsius,
        };

    private MotherPlant Mother(string plant, string name, int? cut) =>
        new()
        {
            Key = Domain.Trade.OwnKey.From(name),
            Plant = plant,
            Name = name,
            Bench = Ready,
            Since = Day(-200),
            LastCut = cut is { } day ? Day(day) : null,
        };

    private DateOnly Day(int days) => stock.Day(DemoShop.Scene.AddDays(days));
}
