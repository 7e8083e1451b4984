using System.Collections.Immutable;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Trade;
using Litterfall.Workshop.Goods;

namespace Litterfall.Workshop.Demo;

/// <summary>Goods and prices of the invented workshop.</summary>
public static class DemoGoods
{
    // Key of the library's pack or good, price of one, packs and price of a second tier.
    private static readonly (string Pack, decimal Price, int From, decimal Then)[] BulkPacks =
    [
        ("pack-expanded-clay-8-16-10-l", 5.20m, 6, 4.60m),
        ("pack-expanded-clay-8-16-50-l", 17.80m, 0, 0),
        ("pack-expanded-clay-4-8-10-l", 5.40m, 0, 0),
        ("pack-fine-bark-20-l", 9.80m, 4, 8.90m),
        ("pack-fine-bark-70-l", 26.40m, 0, 0),
        ("pack-charcoal-5-l", 7.90m, 3, 6.90m),
        ("pack-charcoal-20-l", 24.50m, 0, 0),
        ("pack-tree-fern-fibre-8-dry-qt", 11.60m, 0, 0),
        ("pack-tree-fern-fibre-1-cu-ft", 31.00m, 0, 0),
        ("pack-coir-chips-10-l", 6.40m, 0, 0),
        ("pack-coir-chips-50-l", 21.00m, 0, 0),
        ("pack-coir-pith-brick-650-g", 3.10m, 0, 0),
        ("pack-coir-pith-block-5-kg", 14.90m, 0, 0),
        ("pack-chopped-sphagnum-150-g", 5.90m, 0, 0),
        ("pack-chopped-sphagnum-1-kg", 29.00m, 0, 0),
        ("pack-long-fibre-sphagnum-150-g", 7.40m, 0, 0),
        ("pack-long-fibre-sphagnum-500-g", 19.80m, 0, 0),
        ("pack-sheet-moss-5-l", 16.00m, 0, 0),
        ("pack-sheet-moss-10-l", 28.00m, 0, 0),
        ("pack-oak-leaves-1-gal", 4.20m, 0, 0),
        ("pack-oak-leaves-500-g", 12.50m, 0, 0),
        ("pack-magnolia-leaves-500-g", 15.50m, 0, 0),
        ("pack-magnolia-leaves-1-gal", 5.40m, 0, 0),
    ];

    // What is bought by the piece, and its price.
    private static readonly (string Key, decimal Price)[] Pieces =
    [
        ("mist-pump", 48m),
        ("mist-tank-10", 9.50m),
        ("mist-filter", 3.90m),
        ("check-valve", 2.40m),
        ("seconds-timer", 21m),
        ("mist-nozzle", 3.20m),
        ("mist-tee", 1.10m),
        ("mist-elbow", 0.95m),
        ("mist-end-cap", 0.70m),
        ("tube-clip", 0.35m),
        ("grommet", 0.60m),
        ("siphon", 6.20m),
        ("dip-tube", 2.80m),
        ("drain-bottle-2", 2.10m),
        ("drain-bottle-5", 3.60m),
        ("bulkhead-22", 7.40m),
        ("drain-strainer", 2.90m),
        ("drain-tap", 4.80m),
        ("hose-clip", 0.80m),
        ("plug-timer", 5.90m),
        ("rcd-30", 13.50m),
        ("gfci-class-a", 17m),
        ("socket-strip", 14m),
        ("thermometer", 6.90m),
        ("hygrometer", 8.90m),
        ("fan-60", 11m),
        ("fan-supply", 9m),
        ("lid-handle", 1.90m),
        ("lid-frame", 4.20m),
        ("lid-clip", 1.20m),
        ("mount-pin", 0.15m),
        ("feeding-dish", 2.20m),
        ("water-cup", 2.40m),
        ("tank-label", 0.30m),
        ("bleach", 1.90m),
        ("cleaning-spirit", 4.50m),
        ("gloves", 0.40m),
        ("cut-gloves", 6.50m),
        ("goggles", 5.50m),
        ("dust-mask", 1.60m),
        ("led-bar-6500k", 34m),
        ("led-panel-6500k", 72m),
        ("neoregelia-small", 8.50m),
        ("ficus-pumila", 3.80m),
        ("fittonia-albivenis", 3.20m),
        ("asplenium-nidus", 4.60m),
        ("selaginella-kraussiana", 3.90m),
        ("guzmania-lingulata", 7.90m),
        ("philodendron-hederaceum", 4.40m),
        ("drosophila-melanogaster", 4.50m),
    ];

    // What is bought by length, and its price for a meter.
    private static readonly (string Key, decimal Price)[] Lengths =
    [
        ("mist-tube-6", 1.20m),
        ("mist-tube-quarter-inch", 1.30m),
        ("drain-hose-12", 1.90m),
        ("mount-wire", 0.45m),
    ];

    // What is bought and cut by area: price of a square meter.
    private static readonly (string Key, decimal Price)[] Areas =
    [
        ("float-glass", 38m),
        ("acrylic-sheet", 31m),
        ("plastic-fly-screen", 4.30m),
        ("steel-gauze-0.5", 42m),
        ("cork-tile", 29m),
        ("tree-fern-panel", 64m),
    ];

    // Whole sheets and rolls to cut here: length, width and thickness in mm, price; 0 for mesh.
    private static readonly (string Key, double Length, double Width, double Thick, decimal Price)[] Sheets =
    [
        ("acrylic-sheet", 1200, 600, 3, 24.50m),
        ("acrylic-sheet", 1200, 600, 4, 31.20m),
        ("acrylic-sheet", 1200, 600, 5, 38.60m),
        ("cork-tile", 900, 600, 15, 16.40m),
        ("cork-tile", 900, 600, 20, 17.50m),
        ("tree-fern-panel", 1000, 600, 30, 41m),
        ("plastic-fly-screen", 30_000, 1220, 0, 165m),
        ("steel-gauze-0.5", 5_000, 1000, 0, 219m),
    ];

    // Cups of animals: the pack of the library and its price.
    private static readonly (string Pack, decimal Price)[] Cups =
    [
        ("pack-folsomia-candida-cup-950-ml", 11.50m),
        ("pack-folsomia-candida-cup-240-ml", 5.50m),
        ("pack-trichorhina-tomentosa-cup-950-ml", 14m),
        ("pack-silicone-neutral-cartridge", 6.80m),
    ];

    // Letters on the labels of what is used every week.
    private static readonly Dictionary<string, string> Letters = new(StringComparer.Ordinal)
    {
        ["expanded-clay-8-16"] = "CLAY",
        ["fine-bark"] = "BARK",
        ["charcoal"] = "CHAR",
        ["tree-fern-fibre"] = "FERN",
        ["peat"] = "PEAT",
        ["oak-leaves"] = "OAK",
        ["standard-rainforest"] = "MIX",
        ["folsomia-candida"] = "SPR",
        ["trichorhina-tomentosa"] = "ISO",
        ["drosophila-melanogaster"] = "FLY",
        ["plastic-fly-screen"] = "MESH",
        ["acrylic-sheet"] = "ACRY",
    };

    /// <summary>Goods that the library has no entry for.</summary>
    private static readonly Good[] Own =
    [
        new()
        {
            Key = DemoStock.TankGood,
            Name = "tank or kit",
            Letters = "LD",
            Kind = GoodKind.Tank,
            Unit = StockUnit.Pieces,
            Place = "grow-in shelf",
            Walk = 95,
        },
        new()
        {
            Key = "box",
            Name = "glass box, made to size",
            Kind = GoodKind.Sheet,
            Unit = StockUnit.Pieces,
            Place = "glass rack",
            Walk = 1,
        },
        new()
        {
            Key = "shipping-carton",
            Name = "shipping carton with foam lining",
            Kind = GoodKind.Packaging,
            Unit = StockUnit.Pieces,
            ReorderAt = 6,
            Place = "packing table",
            Walk = 90,
        },
    ];

    /// <summary>All offers.</summary>
    /// <param name="catalog">The library.</param>
    public static ImmutableArray<Offer> Offers(TradeCatalog catalog) =>
        [
            .. BulkPacks.Select(p => Bulk(catalog, p)),
            PeatBale(),
            .. Pieces.Select(p => Each(p.Key, p.Price, "each", catalog.Find<EquipmentEntry>(p.Key)?.Key)),
            .. Lengths.Select(p => Each(p.Key, p.Price, "a meter", p.Key)),
            .. Areas.Select(p => Each(p.Key, p.Price, "a square meter, cut to size", null)),
            .. Sheets.Select(Whole),
            .. Cups.Select(p => Cup(catalog, p.Pack, p.Price)),
            Each("cork-bark", 9.80m, "a kilogram", null),
            Each("slate", 1.60m, "a kilogram", null),
            Each("box", 68m, "each", null),
            Each("shipping-carton", 4.90m, "each", null),
        ];

    /// <summary>All goods, with places, minimum stock and how long they keep.</summary>
    /// <param name="catalog">The library.</param>
    public static ImmutableArray<Good> All(TradeCatalog catalog)
    {
        var keys = Offers(catalog).Select(o => o.Good).Distinct(StringComparer.Ordinal);
        return
        [
            .. Own,
            .. keys.Select(key => catalog.Find(key) is { } entry ? LibraryGoods.From(entry) : null)
                .OfType<Good>()
                .Select(Placed),
            Placed(LibraryGoods.From(catalog.Find("standard-rainforest")!)!),
        ];
    }

    private static Good Placed(Good good)
    {
        var isArea = Areas.Any(a => a.Key == good.Key);
        var (place, walk) = good.Kind switch
        {
            GoodKind.Sheet => ("sheet rack", 10),
            GoodKind.Bulk => ("bulk bay", 20),
            GoodKind.Mix => ("mixing tubs", 25),
            GoodKind.Equipment => ("drawers", 40),
            GoodKind.Plant => ("plant bench", 60),
            GoodKind.Culture => ("culture shelf", 70),
            _ => ("store room", 80),
        };
        return good with
        {
            Letters = Letters.GetValueOrDefault(good.Key, ""),
            Unit = isArea ? StockUnit.SquareMeters : good.Unit,
            Place = place,
            Walk = walk,
            KeepsDays = good.Kind switch
            {
                GoodKind.Culture => 60,
                GoodKind.Plant => 120,
                _ => good.KeepsDays,
            },
            ReorderAt = good.Key switch
            {
                "expanded-clay-8-16" => 60,
                "fine-bark" => 40,
                "charcoal" => 15,
                "tree-fern-fibre" => 20,
                "peat" => 60,
                "oak-leaves" => 40,
                "folsomia-candida" => 8,
                "trichorhina-tomentosa" => 4,
                _ => 0,
            },
        };
    }

    private static Offer Bulk(TradeCatalog catalog, (string Pack, decimal Price, int From, decimal Then) told)
    {
        var pack = catalog.Find<PackEntry>(told.Pack)!;
        return new Offer
        {
            Key = $"{DemoShop.Bulk}-{told.Pack}",
            Supplier = DemoShop.Bulk,
            Good = pack.Material!,
            Pack = pack.Name,
            LibraryPack = told.Pack,
            Amount = pack.LooseVolume!.Si * 1000,
            Tiers =
                told.From > 0
                    ? [new PriceTier(1, told.Price), new PriceTier(told.From, told.Then)]
                    : [new PriceTier(1, told.Price)],
        };
    }

    /// <summary>The bale opens to what this workshop measured, not to what others say.</summary>
    private static Offer PeatBale() =>
        new()
        {
            Key = $"{DemoShop.Bulk}-peat-bale",
            Supplier = DemoShop.Bulk,
            Good = "peat",
            Pack = "bale of 3.8 cubic feet, as opened here",
            LibraryPack = "pack-peat-bale-3_8-cu-ft",
            Amount = 215,
            Tiers = [new PriceTier(1, 28.50m)],
        };

    private static Offer Cup(TradeCatalog catalog, string key, decimal price)
    {
        var pack = catalog.Find<PackEntry>(key)!;
        return new Offer
        {
            Key = $"{DemoShop.Wares}-{key}",
            Supplier = DemoShop.Wares,
            Good = pack.Material!,
            Pack = pack.Name,
            LibraryPack = key,
            Amount = 1,
            Tiers = [new PriceTier(1, price)],
        };
    }

    private static Offer Whole((string Key, double Length, double Width, double Thick, decimal Price) told)
    {
        var isRoll = told.Thick == 0;
        var pack = isRoll
            ? FormattableString.Invariant($"roll {told.Width / 1000:0.00} × {told.Length / 1000:0} m")
            : FormattableString.Invariant($"sheet {told.Length:0} × {told.Width:0} × {told.Thick:0} mm");
        return new Offer
        {
            Key = $"{DemoShop.Wares}-{OwnKey.From($"{told.Key} {pack}")}",
            Supplier = DemoShop.Wares,
            Good = told.Key,
            Pack = pack,
            Amount = told.Length * told.Width * 1e-6,
            SheetArea = told.Length * told.Width * 1e-6,
            SheetMillimeters = isRoll ? null : told.Thick,
            LengthMillimeters = told.Length,
            WidthMillimeters = told.Width,
            IsRoll = isRoll,
            Tiers = [new PriceTier(1, told.Price)],
        };
    }

    private static Offer Each(string key, decimal price, string pack, string? library) =>
        new()
        {
            Key = $"{DemoShop.Wares}-{OwnKey.From(key)}",
            Supplier = DemoShop.Wares,
            Good = key,
            Pack = pack,
            LibraryPack = library,
            Amount = 1,
            Tiers = [new PriceTier(1, price)],
        };
}
