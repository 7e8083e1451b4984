using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Lists;
using Litterfall.Domain.Trade;
using Litterfall.Forecasting;
using Litterfall.Instructions.Building;
using Litterfall.Instructions.Buying;
using Litterfall.Quantities.Measures;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Workshop.Kits;

/// <summary>Where in the box a thing lies.</summary>
public enum KitGroup
{
    /// <summary>Bags of aggregate, mix, moss and leaves.</summary>
    Bags,

    /// <summary>Panes, mesh, background.</summary>
    Flat,

    /// <summary>Wood and stone.</summary>
    Loose,

    /// <summary>Fittings, lamps, glue.</summary>
    Fittings,

    /// <summary>Cultures, on the day it leaves.</summary>
    Living,
}

/// <summary>One thing in a kit, in every measure it has.</summary>
/// <param name="Group">Where it lies.</param>
/// <param name="Key">Key of the library.</param>
/// <param name="Name">As people call it.</param>
public sealed record KitItem(KitGroup Group, string Key, string Name)
{
    /// <summary>Gear that stays in the workshop.</summary>
    private static readonly ImmutableArray<string> Tools =
    [
        "bleach",
        "cleaning-spirit",
        "gloves",
        "cut-gloves",
        "goggles",
        "dust-mask",
    ];

    /// <summary>Letter of the bag, in the order the builder opens them; empty for what is no bag.</summary>
    public string Letter { get; init; } = "";

    /// <summary>Liters in one kit; null where it is not measured so.</summary>
    public double? Liters { get; init; }

    /// <summary>Mass of one liter, kg; null where nobody knows.</summary>
    public double? KilogramsPerLiter { get; init; }

    /// <summary>Pieces in one kit.</summary>
    public double? Pieces { get; init; }

    /// <summary>Kilograms in one kit.</summary>
    public double? Kilograms { get; init; }

    /// <summary>Meters in one kit.</summary>
    public double? Meters { get; init; }

    /// <summary>Square meters in one kit, before waste.</summary>
    public double? SquareMeters { get; init; }

    /// <summary>Size of a piece; empty where it has none.</summary>
    public string Size { get; init; } = "";

    /// <summary>Other keys under which the workshop may keep it, such as the material of a pack.</summary>
    public Seq<string> Other { get; init; } = [];

    /// <summary>Amount in one kit as a good is counted; null where it is not measured so.</summary>
    /// <param name="unit">What the good is counted in.</param>
    public double? In(StockUnit unit) =>
        unit switch
        {
            StockUnit.Liters => Liters,
            StockUnit.Kilograms => Kilograms ?? Liters * KilogramsPerLiter,
            StockUnit.Meters => Meters,
            StockUnit.SquareMeters => SquareMeters,
            _ => Pieces,
        };

    /// <summary>All that goes into one kit of a design.</summary>
    /// <param name="numbers">Its numbers; shape is enough.</param>
    public static ImmutableArray<KitItem> All(DesignNumbers numbers)
    {
        var boxes = (double)numbers.Design.Design.Boxes;
        var bags = KitBags.Of(numbers);
        var layers = numbers.Layers.Where(l => l.Material is not null).ToList();
        return
        [
            .. bags.Select((bag, i) => Bag(bag, layers[i])),
            .. ShoppingList
                .Of(numbers)
                .Lines.Where(l =>
                    l.Kind is not (ShoppingKind.Bulk or ShoppingKind.FromStock or ShoppingKind.Plant)
                    && !Tools.Contains(l.Key)
                    && numbers.Design.Catalog.Find<FeederEntry>(l.Key) is null
                )
                .Select(l => Line(numbers.Design.Catalog, l, boxes)),
        ];
    }

    private static KitItem Bag(KitBag bag, FloorLayer layer) =>
        new(KitGroup.Bags, layer.Material!.Key, bag.Contents)
        {
            Letter = bag.Letter,
            Liters = bag.Amount.Si * 1000,
            KilogramsPerLiter = Density(layer),
        };

    /// <summary>
    /// A mix is bagged at squeeze wetness; aggregate, moss and leaves as they are bought. Null without a
    /// density.
    /// </summary>
    private static double? Density(FloorLayer layer) =>
        layer.Kind == LayerKind.Soil && layer.Mixed.Si > 0
            ? (layer.Mass?.Si + (layer.WaterToAdd?.Si * 1000 ?? 0)) / (layer.Mixed.Si * 1000)
        : layer.Loose.Si > 0 ? layer.Mass?.Si / (layer.Loose.Si * 1000)
        : null;

    private static KitItem Line(TradeCatalog catalog, ShoppingLine line, double boxes)
    {
        var pieces = line.Pieces?.Si / boxes;
        return new(GroupFor(line.Kind), line.Key, line.Item)
        {
            Pieces = pieces,
            Kilograms = line.Mass?.Si / boxes,
            Meters = pieces * line.Length?.Si,
            Liters = line.Liters?.Si * 1000 / boxes,
            SquareMeters = line.Area?.Si / boxes,
            Size =
                line is { Length: { } length, Width: { } width }
                    ? $"{NumberText.Tape(length.Si, width.Si)} mm"
                : line.Length is { } alone ? string.Create(CultureInfo.InvariantCulture, $"{alone.Si:0.##} m")
                : "",
            Other = catalog.Find<PackEntry>(line.Key)?.Material is { } material ? [material] : [],
        };
    }

    private static KitGroup GroupFor(ShoppingKind kind) =>
        kind switch
        {
            ShoppingKind.Mesh or ShoppingKind.Pane or ShoppingKind.Background or ShoppingKind.Box =>
                KitGroup.Flat,
            ShoppingKind.Hardscape => KitGroup.Loose,
            ShoppingKind.Crew => KitGroup.Living,
            _ => KitGroup.Fittings,
        };
}
