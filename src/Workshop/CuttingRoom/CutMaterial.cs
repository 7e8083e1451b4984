using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain.Cutting;
using Litterfall.Domain.Trade;
using Litterfall.Workshop.Goods;

namespace Litterfall.Workshop.CuttingRoom;

/// <summary>What is to be cut from one material of one thickness, and from what it can be cut.</summary>
public sealed record CutMaterial
{
    /// <summary>The good.</summary>
    public required Good Good { get; init; }

    /// <summary>Thickness, mm; null where it has one alone.</summary>
    public double? Millimeters { get; init; }

    /// <summary>How it is cut.</summary>
    public required CuttingRules Rules { get; init; }

    /// <summary>Parts that no plan holds yet, the ones wanted first in front.</summary>
    public required ImmutableArray<WantedPart> Parts { get; init; }

    /// <summary>Parts in plans that are not cut yet.</summary>
    public int Planned { get; init; }

    /// <summary>Sheets, rolls and offcuts.</summary>
    public required ImmutableArray<SheetSupply> Supply { get; init; }

    /// <summary>Price of a square meter of new material, net; null where nobody said.</summary>
    public decimal? PricePerSquareMeter { get; init; }

    /// <summary>
    /// What does not fit on any sheet, with its cause and the nearest way, a sentence each.
    /// </summary>
    public ImmutableArray<OversizePart> Oversize { get; init; } = [];

    /// <summary>Tells materials apart in an address: "acrylic-sheet", "float-glass-6".</summary>
    public string Key => KeyOf(Good.Key, Millimeters);

    /// <summary>"acrylic sheet, 3 mm".</summary>
    public string Name =>
        Millimeters is { } mm
            ? string.Create(CultureInfo.InvariantCulture, $"{Good.Name}, {mm:0.#} mm")
            : Good.Name;

    /// <summary>Parts to cut.</summary>
    public int Count => Parts.Sum(p => p.Count);

    /// <summary>Everything that is cut in this workshop or ordered cut to size, by name.</summary>
    /// <param name="facts">What the table knows.</param>
    public static ImmutableArray<CutMaterial> LayAll(TableFacts facts)
    {
        var kept = facts.Supply.Goods;
        return
        [
            .. facts
                .Wanted.Select(w => (Part: w, Good: LibraryGoods.Find(w.Material, kept, facts.Catalog)))
                .GroupBy(w => (Key: w.Good?.Key ?? w.Part.Material, w.Part.Millimeters))
                .Select(g =>
                    Lay(
                        facts,
                        g.First().Good ?? Named(g.Key.Key),
                        g.Key.Millimeters,
                        [.. g.Select(w => w.Part)]
                    )
                )
                .OrderBy(m => m.Name, StringComparer.OrdinalIgnoreCase),
        ];
    }

    /// <summary>Key of a material of a thickness.</summary>
    /// <param name="good">Key of the good.</param>
    /// <param name="millimeters">Thickness.</param>
    public static string KeyOf(string good, double? millimeters) =>
        millimeters is { } mm ? string.Create(CultureInfo.InvariantCulture, $"{good}-{mm:0.#}") : good;

    private static CutMaterial Lay(
        TableFacts facts,
        Good good,
        double? millimeters,
        ImmutableArray<WantedPart> wanted
    )
    {
        var rules = facts.RulesOf(good.Key);
        var jobs = facts.Jobs.Where(j => j.Good == good.Key && j.Millimeters == millimeters).ToList();
        var supply = SheetSupply.Read(facts, good, millimeters, rules);
        var material = new CutMaterial
        {
            Good = good,
            Millimeters = millimeters,
            Rules = rules,
            Parts = OpenParts.Left(wanted, jobs),
            Planned = jobs.Where(j => j.State == CuttingJobState.Planned).Sum(j => j.Pieces.Count),
            Supply = supply,
            PricePerSquareMeter = SheetSupply.PricePerSquareMeter(facts, good, millimeters),
        };
        return material with
        {
            Oversize = [.. material.Parts.Select(p => OversizePart.Find(p, material)).OfType<OversizePart>()],
        };
    }

    private static Good Named(string key) =>
        new()
        {
            Key = key,
            Name = key.Replace('-', ' '),
            Kind = GoodKind.Sheet,
            Unit = StockUnit.Pieces,
        };
}
