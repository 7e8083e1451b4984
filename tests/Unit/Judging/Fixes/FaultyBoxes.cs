namespace Litterfall.UnitTests.Judging.Fixes;

/// <summary>Boxes that are wrong on purpose, each in several ways at once.</summary>
internal static class FaultyBoxes
{
    private const string Head = "litterfall: 1\nname: posed\n";

    private const string Cube =
        "box: { outside: { length: 45 cm, depth: 45 cm, height: 45 cm }, glass: { walls: 5 mm, base: 5 mm }, "
        + "opening: front, sill: 8 cm }\n";

    /// <summary>Thin layers, no barrier, no drain, too many animals and too little light.</summary>
    public const string ThinAndCrowded =
        Head
        + Cube
        + "floor: { drainage: { material: expanded-clay-8-16, depth: 2 cm }, soil: { recipe: "
        + "ready-rainforest, "
        + "depth: 2 cm }, litter: { material: oak-leaves, depth: 1 cm } }\n"
        + "animals: [ { animal: dendrobates-auratus, count: 9 } ]\nwaterCups: 0\n"
        + "lamps: [ { lamp: led-bar-6500k, lumens: 1400, watts: 14, above: 3 cm, on: \"08:00\", off: "
        + "\"16:00\" } ]\n"
        + "lid: { material: glass, thickness: 4 mm, gap: 0 mm }\n";

    /// <summary>
    /// Four stops: a metal barrier under frogs, soil over the sill, doors a froglet gets through, an open
    /// vent.
    /// </summary>
    public const string HighAndOpen =
        Head
        + "box: { outside: { length: 45 cm, depth: 45 cm, height: 45 cm }, glass: { walls: 5 mm, base: 5 "
        + "mm }, "
        + "opening: front, sill: 8 cm, doors: { count: 2, gap: 3 mm } }\n"
        + "floor: { drainage: { material: expanded-clay-8-16, depth: 5 cm }, barrier: { material: "
        + "steel-gauze-0.5 }, soil: { recipe: ready-rainforest, front: 7 cm, back: 9 cm } }\n"
        + "vents: [ { length: 30 cm, width: 1 cm, height: 20 cm, side: front } ]\n"
        + "animals: [ { animal: epipedobates-anthonyi, count: 2 } ]\n"
        + "crew: [ { animal: folsomia-candida, count: 20 } ]\nelectrics: { dripLoops: false }\n"
        + "misting: { nozzles: 1, each: 90 mL/min, times: [ { at: \"08:00\", for: 5 s } ] }\n";

    /// <summary>A pair species as two males and three females.</summary>
    public const string Pairs =
        Head
        + "box: { outside: { length: 90 cm, depth: 60 cm, height: 60 cm }, glass: { walls: 8 mm, base: 8 "
        + "mm } }\n"
        + "floor: { soil: { recipe: ready-rainforest, depth: 7 cm } }\n"
        + "animals: [ { animal: dendrobates-tinctorius, count: 5, males: 2, females: 3 } ]\n";
}
