using System.Collections.Immutable;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Nursery;
using Litterfall.Domain.Units;
using Litterfall.Instructions.Care;
using Litterfall.Quantities.Hygiene;
using Litterfall.Workshop.Stock;

namespace Litterfall.Workshop.Nursery;

/// <summary>Plants of the workshop as they stand on a day: trays, clocks, losses, needs.</summary>
public sealed class NurseryBook
{
    private const double UsualCelsius = 22;
    private readonly Dictionary<string, QuarantineClock?> clocks = new(StringComparer.Ordinal);
    private readonly Lazy<ImmutableArray<PlantStand>> stands;
    private readonly Lazy<ImmutableArray<PlantCover>> covers;

    /// <summary>Reads it all together.</summary>
    /// <param name="trays">All trays; those whose lot is used up count as emptied.</param>
    /// <param name="benches">Benches.</param>
    /// <param name="mothers">Mother plants.</param>
    /// <param name="needs">Plants that accepted orders need.</param>
    /// <param name="at">Library, book of stock and today.</param>
    public NurseryBook(
        IEnumerable<PlantTray> trays,
        IEnumerable<NurseryBench> benches,
        IEnumerable<MotherPlant> mothers,
        IEnumerable<PlantNeed> needs,
        (TradeCatalog Catalog, StockBook Stock, DateOnly Today) at
    )
    {
        (Catalog, Stock, Today) = at;
        Trays =
        [
            .. trays.Select(Settled).OrderBy(t => t.Since).ThenBy(t => t.Number, StringComparer.Ordinal),
        ];
        Benches = [.. benches.OrderBy(b => b.Use).ThenBy(b => b.Name, StringComparer.Ordinal)];
        Mothers = [.. mothers.Where(m => m.Ended is null).OrderBy(m => m.Name, StringComparer.Ordinal)];
        Needs = [.. needs];
        stands = new(() => [.. Standing.Select(Stand)]);
        covers = new(() => PlantCover.Find(Needs, stands.Value, Mothers, Times, Today));
    }

    /// <summary>The library.</summary>
    public TradeCatalog Catalog { get; }

    /// <summary>The book of stock.</summary>
    public StockBook Stock { get; }

    /// <summary>Today.</summary>
    public DateOnly Today { get; }

    /// <summary>All trays, oldest first.</summary>
    public ImmutableArray<PlantTray> Trays { get; }

    /// <summary>Benches.</summary>
    public ImmutableArray<NurseryBench> Benches { get; }

    /// <summary>Mother plants that are kept.</summary>
    public ImmutableArray<MotherPlant> Mothers { get; }

    /// <summary>Plants that accepted orders need.</summary>
    public ImmutableArray<PlantNeed> Needs { get; }

    /// <summary>Trays that stand.</summary>
    public IEnumerable<PlantTray> Standing => Trays.Where(t => t.IsStanding);

    /// <summary>Trays as they stand.</summary>
    public ImmutableArray<PlantStand> Stands => stands.Value;

    /// <summary>Needs against trays.</summary>
    public ImmutableArray<PlantCover> Covers => covers.Value;

    /// <summary>Losses of each supplier of bought trays.</summary>
    public IEnumerable<(string Supplier, PlantLoss Loss)> Suppliers =>
        Trays
            .Select(t => t.Supplier)
            .OfType<string>()
            .Distinct(StringComparer.Ordinal)
            .Order(StringComparer.Ordinal)
            .Select(s => (s, PlantLoss.OfSupplier(Trays, s, Today)));

    /// <summary>Losses of each kind of plant.</summary>
    public IEnumerable<(string Plant, bool IsBought, PlantLoss Loss)> Kinds =>
        Trays
            .Select(t => (t.Plant, IsBought: t.Origin == TrayOrigin.Bought))
            .Distinct()
            .OrderBy(p => p.Plant, StringComparer.Ordinal)
            .Select(p => (p.Plant, p.IsBought, PlantLoss.OfPlant(Trays, p.Plant, p.IsBought, Today)));

    /// <summary>Lots of plants in the book of stock that stand on no bench yet.</summary>
    public IEnumerable<LotAccount> Loose =>
        Stock
            .Lots.Where(l =>
                l.HasSome
                && l.Lot.Order is null
                && Catalog.Find<PlantEntry>(l.Lot.Good) is not null
                && Trays.All(t => t.Number != l.Lot.Id)
            )
            .OrderBy(l => l.Lot.Since)
            .ThenBy(l => l.Lot.Id, StringComparer.Ordinal);

    private PlantTimes Times =>
        new(
            NurseryPractice.Days(CareIntervals.PlantQuarantine),
            plant =>
                NurseryPractice.RootingDays(
                    Catalog.Find<PlantEntry>(plant),
                    Benches.FirstOrDefault(b => b.Use == BenchUse.Propagation)?.Celsius ?? UsualCelsius
                ) + NurseryPractice.Days(NurseryPractice.GrowOn),
            plant => PlantLoss.OfPlant(Trays, plant, true, Today),
            plant => PlantLoss.OfPlant(Trays, plant, false, Today)
        );

    /// <summary>A tray by its number; null where there is none.</summary>
    /// <param name="number">Its number.</param>
    public PlantTray? Find(string number) => Trays.FirstOrDefault(t => t.Number == number);

    /// <summary>A bench by its key; null where there is none.</summary>
    /// <param name="key">Its key.</param>
    public NurseryBench? Bench(string key) => Benches.FirstOrDefault(b => b.Key == key);

    /// <summary>Name of a plant.</summary>
    /// <param name="plant">Its key.</param>
    public string NameOf(string plant) => Catalog.Find(plant)?.Name ?? plant;

    /// <summary>Clock of a bench; null where nothing is kept apart on it.</summary>
    /// <param name="bench">Key of the bench.</param>
    public QuarantineClock? Clock(string bench)
    {
        if (!clocks.TryGetValue(bench, out var clock))
        {
            clock = clocks[bench] = Bench(bench) is { } known ? QuarantineClock.Of(known, Trays) : null;
        }

        return clock;
    }

    /// <summary>A tray as it stands.</summary>
    /// <param name="tray">The tray.</param>
    public PlantStand Stand(PlantTray tray) =>
        PlantStand.Of(
            tray,
            Stock.Find(tray.Number)?.OnHand,
            Clock(tray.Bench),
            PlantLoss.OfPlant(Trays, tray.Plant, tray.Origin == TrayOrigin.Bought, Today),
            (Catalog, Bench(tray.Bench)?.Celsius ?? UsualCelsius)
        );

    /// <summary>The dip of a plant from the strength on a label; soft plants take half the bleach for a
    /// shorter time.</summary>
    /// <param name="labelPercent">Sodium hypochlorite on the label, percent.</param>
    public static PlantDip Dip(double labelPercent) =>
        PlantDip.From(
            Figure.Given(
                "label strength of the bleach",
                labelPercent / 100,
                Unit.Percent,
                new Citation("workshop", "typed at the bench", Provenance.Entered)
            ),
            PlantDip.Bucket
        );

    /// <summary>True for plants that stand the full bath.</summary>
    /// <param name="plant">Key of the plant.</param>
    public bool IsHardy(string plant) => Catalog.Find<PlantEntry>(plant)?.BleachTolerance?.Text == "hardy";

    private PlantTray Settled(PlantTray tray) =>
        tray.Emptied is null && Stock.Find(tray.Number) is { HasSome: false } gone
            ? tray with
            {
                Emptied = gone.Lines.Length > 0 ? gone.Lines.Max(l => l.Line.Day) : Today,
            }
            : tray;
}
