using Litterfall.App;
using Litterfall.App.Files;
using Litterfall.Domain.Checking;
using Litterfall.Domain.DesignFile;
using Litterfall.Forecasting;
using Litterfall.Judging;
using Litterfall.Quantities.Sizing;
using Litterfall.UnitTests.House;
using Litterfall.UnitTests.Judging;
using Litterfall.UnitTests.Quantities.Measures;
using Litterfall.UnitTests.Quantities.Packs;
using Litterfall.UnitTests.Quantities.Sizing;

namespace Litterfall.UnitTests.Instructions.Building;

/// <summary>Designs that several tests read, run once.</summary>
internal static class Built
{
    private static readonly Lazy<DesignNumbers> Reference = new(() =>
        Posed
            .Run(
                "{ outside: { length: 45 cm, depth: 45 cm, height: 60 cm }, glass: { walls: 5 mm } }",
                """
                { drainage: { material: expanded-clay-8-16, depth: 5 cm },
                  barrier: { material: plastic-fly-screen, upturn: 15 mm },
                  soil: { recipe: ready-rainforest, depth: 7 cm, settling: 15 % },
                  litter: { material: oak-leaves, depth: 3 cm } }
                """,
                """
                planted: 2026-08-14
                misting: { nozzles: 2, each: 90 mL/min, times: [ { at: "07:00", for: 20 s },
                  { at: "13:00", for: 20 s }, { at: "19:00", for: 20 s } ] }
                """
            )
            .Numbers
    );

    private static readonly Lazy<DesignNumbers> Foamed = new(() =>
        Posed
            .Run(
                "{ inside: { length: 60 cm, depth: 45 cm, height: 60 cm }, glass: { walls: 5 mm } }",
                """
                { drainage: { material: expanded-clay-8-16, depth: 5 cm },
                  barrier: { material: plastic-fly-screen },
                  soil: { recipe: standard-rainforest, depth: 7 cm } }
                """,
                """
                planted: 2026-08-14
                background: { material: carved-foam, thickness: 4 cm }
                plants: [ { plant: neoregelia-small, mounted: true }, { plant: fittonia-albivenis } ]
                crew: [ { animal: folsomia-candida, count: 500 } ]
                animals: [ { animal: dendrobates-auratus, count: 2, origin: captive-bred } ]
                animalsIn: 2026-10-09
                hygiene: { bleach: 6 % }
                """
            )
            .Numbers
    );

    private static readonly Lazy<DesignNumbers> KitOfEight = new(() => Sample("ld-204-shop-kits"));

    private static readonly Lazy<DesignNumbers> WaitingRoom = new(() => Sample("ld-202-waiting-room"));

    private static readonly Lazy<DesignNumbers> AridBox = new(() => Sample("arid-no-drainage"));

    /// <summary>45 × 45 × 60 cm outside, 5 mm glass, 5 cm drainage, 7 cm ready mix, 3 cm leaves.</summary>
    public static DesignNumbers Box => Reference.Value;

    /// <summary>60 × 45 × 60 cm inside with a foam back, plants, crew and two frogs; planted 14 Aug
    /// 2026.</summary>
    public static DesignNumbers Foam => Foamed.Value;

    /// <summary>Eight kits of 30 × 30 × 45 cm, without plugs, lamps or animals.</summary>
    public static DesignNumbers Kits => KitOfEight.Value;

    /// <summary>24 × 18 × 18 in, 6 mm glass, four frogs, a lamp and misting.</summary>
    public static DesignNumbers Inches => WaitingRoom.Value;

    /// <summary>A box of sand and loam in two steps, no drainage, no plants, no animals.</summary>
    public static DesignNumbers Arid => AridBox.Value;

    private static DesignNumbers Sample(string name)
    {
        var document = SampleFiles.Read($"samples/{name}.viv.yaml");
        var folder = document.Design.Workshop is { } shop ? SourceTree.Path("samples", shop) : null;
        var design = DesignChecker.Check(document, Shop.Catalog(folder).Value!);
        Assert.True(design.IsGood, string.Join('\n', design.Faults));
        return DesignRun.Execute(design.Value!).Numbers;
    }
}
