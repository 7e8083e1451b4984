namespace Litterfall.UnitTests.Judging.Coefficients;

/// <summary>Small designs that between them show every coefficient at work.</summary>
internal static class PosedModels
{
    private const string Soil = "soil: { recipe: standard-rainforest, depth: 6 cm }";
    private const string Leaves = "litter: { material: oak-leaves, depth: 3 cm }";
    private const string Grains = "drainage: { material: expanded-clay-8-16, depth: 4 cm }";
    private const string Mist =
        "misting: { nozzles: 1, each: 90 mL/min, times: [ { at: \"07:30\", for: 20 s } ] }\n";
    private const string Storm =
        "misting: { nozzles: 2, each: 90 mL/min, times: [ { at: \"07:30\", for: 60 s } ] }\n";
    private const string Lid = "lid: { material: glass, thickness: 4 mm }\n";
    private const string Led = "lamps: [ { lamp: led-bar-6500k, lumens: 2000, watts: 18 } ]\n";
    private const string Basin = "basins: [ { length: 20 cm, width: 15 cm, depth: 4 cm } ]\n";
    private const string Plant = "plants: [ { plant: fittonia-albivenis, count: 3 } ]\n";
    private const string Crew =
        "crew: [ { animal: folsomia-candida, count: 300 }, { animal: trichorhina-tomentosa, count: 40 } ]\n";
    private const string Frogs = "animals: [ { animal: epipedobates-anthonyi, count: 2 } ]\n";
    private const string Front =
        "{ outside: { length: 40 cm, depth: 40 cm, height: 45 cm }, glass: { walls: 5 mm, base: 5 mm }, "
        + "opening: front, sill: 10 cm }";
    private const string NoGlass = "{ inside: { length: 39 cm, depth: 39 cm, height: 44 cm } }";

    private static string Floor(params string[] layers) => $"floor: {{ {string.Join(", ", layers)} }}\n";

    private static string Held(int humidity, int airChanges = 1) =>
        $"headspace: {{ hold: {{ air: 24 C, humidity: {humidity} %, airChanges: {airChanges} }} }}\n";

    /// <summary>A box that its air dries out within weeks.</summary>
    private static string Dry =>
        Held(60, 20) + "room: { temperature: 20 C, humidity: 30 % }\nhabits: { handMist: 5 mL }\n";

    private static PosedModel Seeded(int springtails) =>
        new(
            "crew",
            Floor(Soil, Leaves)
                + Mist
                + $"crew: [ {{ animal: folsomia-candida, count: {springtails} }} ]\n"
                + Frogs
                + Held(90)
        );

    public static readonly PosedModel[] Air =
    [
        new(
            "headspace",
            Floor(Grains, Soil, Leaves)
                + Mist
                + Lid
                + Led
                + Plant
                + "hardscape: [ { material: cork-bark, mass: 0.6 kg } ]\n"
                + "background: { material: cork-tile, thickness: 2 cm, sides: [back] }\n"
                + "vents: [ { area: 40 cm2, mesh: steel-gauze-0.5 }, "
                + "{ length: 20 cm, width: 4 cm, mesh: steel-gauze-0.5, side: top } ]\n"
                + "room: { temperature: 20 C, swing: 2 K, humidity: 45 %, weekend: { temperature: 17 C }, "
                + "faces: { left: outer wall, right: window } }\nplanted: 2026-01-05\n"
        ),
        new(
            "headspace",
            Floor(Soil)
                + Lid
                + Led
                + "habits: { handMist: 60 mL }\nplanted: 2026-07-06\n"
                + "room: { temperature: 23 C, humidity: 50 %, faces: { left: outer wall, right: window } }\n"
        ),
        new(
            "headspace",
            Floor(Soil)
                + Mist
                + Led
                + "lid: { material: acrylic-sheet }\n"
                + "fan: { flow: 20 L/min }\nheating: { watts: 6 W, thermostat: true }\n"
                + "vents: [ { area: 20 cm2, height: 10 cm } ]\n",
            NoGlass
        ),
        new(
            "headspace",
            Floor(Soil)
                + Mist
                + "lid: { material: steel-gauze-1.0, share: 50 % }\n"
                + "fan: { flow: 20 L/min, use: vent }\n"
        ),
        new("headspace", Floor(Soil) + Mist + "lid: { material: glass, thickness: 4 mm, gap: 0 mm }\n"),
        new("headspace", Floor(Soil) + Mist + Lid, Front),
        new("headspace", Floor(Soil) + Mist + Lid + "plants: [ { plant: fittonia-albivenis, count: 40 } ]\n"),
        new(
            "headspace",
            Floor(Soil)
                + Mist
                + Lid
                + "background: { material: cork-tile, thickness: 2 cm, sides: [back] }\n"
                + "vents: [ { area: 40 cm2, mesh: steel-gauze-0.5 } ]\n"
        )
        {
            Lacks =
            [
                ("background.material", ["thermalConductivity", "density"]),
                ("vents[0].mesh", ["wireDiameter"]),
            ],
        },
        new(
            "headspace",
            Floor(Soil) + "habits: { handMist: 5 mL }\nlid: { material: steel-gauze-1.0 }\n" + Led
        ),
        new("headspace", Floor(Grains, Soil) + Mist + Lid + Led + Basin),
        new("headspace", Floor(Soil) + Held(92) + "room: { temperature: 20 C, humidity: 50 % }\n"),
    ];

    public static readonly PosedModel[] Water =
    [
        new("water", Floor(Grains, Soil, Leaves) + Mist + Plant + Held(85)),
        new("water", Floor(Grains, Soil) + Storm + Plant + Held(95)),
        new("water", Floor(Soil) + Plant + Dry),
        new("water", Floor("drainage: { raised: 5 cm }", Soil) + Storm + Held(95)),
        new("water", Floor("soil: { recipe: worm-castings, depth: 5 cm }") + Mist + Lid),
        Air[1] with
        {
            Part = "water",
        },
    ];

    public static readonly PosedModel[] Light =
    [
        new(
            "light",
            Floor(Soil, "moss: { material: long-fibre-sphagnum, depth: 1 cm, cover: 50 % }")
                + Lid
                + "lamps: [ { lamp: led-bar-6500k } ]\nplants: [ { plant: fittonia-albivenis, count: 2 }, "
                + "{ plant: hypnum }, { plant: spathiphyllum-wallisii } ]\n"
                + "hardscape: [ { material: cork-bark, mass: 0.6 kg } ]\n"
                + "background: { material: cork-tile, thickness: 2 cm, sides: [back] }\n"
        )
        {
            Lacks =
            [
                (
                    "lamps[0].lamp",
                    [
                        "efficacy",
                        "fluxTypical",
                        "power",
                        "ppfPerKilolumen",
                        "visibleShare",
                        "radiationEfficacy",
                        "downShare",
                        "width",
                        "diameter",
                        "length",
                    ]
                ),
                ("background.material", ["reflectance"]),
                ("hardscape[0].material", ["reflectance"]),
                ("floor.soil.recipe", ["reflectance"]),
            ],
        },
        new(
            "light",
            Floor(Soil)
                + "lid: { material: acrylic-sheet, thickness: 4 mm }\n"
                + "lamps: [ { lamp: halogen-spot-35w } ]\n"
        ),
        new(
            "light",
            Floor(Soil)
                + "lid: { material: steel-gauze-1.0, share: 50 % }\n"
                + "lamps: [ { lamp: fluorescent-t5-24w, above: 3 cm } ]\n",
            NoGlass
        ),
        new(
            "light",
            Floor(Soil)
                + Lid
                + Led
                + Basin
                + "light: { reading: { lux: 2000 lx, at: { x: 20 cm, y: 20 cm } } }\n"
        ),
        new(
            "light",
            Floor(Soil)
                + "lid: { material: steel-gauze-1.0 }\n"
                + Led
                + "hardscape: [ "
                + "{ material: cork-bark, mass: 0.1 kg, length: 12 cm, at: { x: 8 cm, y: 8 cm } }, "
                + "{ material: cork-bark, mass: 0.2 kg, length: 16 cm, at: { x: 30 cm, y: 30 cm } } ]\n"
        ),
    ];

    public static readonly PosedModel[] Life =
    [
        new("crew", Floor(Grains, Soil, Leaves) + Mist + Plant + Crew + Frogs + Held(90)),
        new("crew", Floor(Grains, Soil, Leaves) + Mist + Crew + Held(90)),
        new(
            "crew",
            Floor(Soil, Leaves) + Crew + "animals: [ { animal: ranitomeya-imitator, count: 1 } ]\n" + Dry
        ),
        new("crew", Floor(Soil, Leaves) + Storm + Crew + Frogs + Held(99)),
        new("crew", Floor("soil: { recipe: worm-castings, depth: 5 cm }", Leaves) + Crew + Frogs),
        new("crew", Floor(Soil, Leaves) + Mist + Plant + Crew + Frogs + Held(90))
        {
            Lacks =
            [
                ("crew[0].animal", ["dryMass", "meanMobileDryMass"]),
                ("crew[1].animal", ["freshMass", "litterRate"]),
                ("floor.litter.material", ["decayAt24C"]),
                ("animals[0].animal", ["mass"]),
            ],
        },
        new(
            "crew",
            Floor(Soil, Leaves)
                + Mist
                + "crew: [ { animal: folsomia-candida, count: 300 }, "
                + "{ animal: trichorhina-tomentosa, count: 900 } ]\n"
                + "animals: [ { animal: trachycephalus-resinifictrix, count: 1 } ]\n"
                + Held(90)
        ),
        new(
            "crew",
            Floor(Soil, Leaves)
                + Mist
                + "crew: [ { animal: folsomia-candida, count: 300 }, "
                + "{ animal: porcellionides-pruinosus, count: 200 } ]\n"
                + "animals: [ { animal: ranitomeya-imitator, count: 80 } ]\n"
                + Held(90)
        ),
        Seeded(1500),
        Seeded(2500),
        Seeded(4000),
        Seeded(6500),
    ];
}
