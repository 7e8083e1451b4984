using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Running.Diagnosis.Matrix;
using Litterfall.Running.Diagnosis.Words;

namespace Litterfall.Running.Diagnosis.Finding;

/// <summary>One result that a check can have.</summary>
/// <param name="Result">In words.</param>
/// <param name="Usual">Chance of it under a cause that is not named.</param>
/// <param name="Chances">Chance of it under the causes it tells apart.</param>
public sealed record CheckResult(string Result, double Usual, ImmutableDictionary<Cause, double> Chances)
{
    /// <summary>Chance of it under a cause.</summary>
    public double Chance(Cause cause) => Chances.GetValueOrDefault(cause, Usual);
}

/// <summary>Something to measure or look at next.</summary>
/// <param name="What">What to do, in one or two sentences.</param>
/// <param name="Minutes">Work it takes; waiting is not counted.</param>
/// <param name="Answers">Facts that tell its result already.</param>
/// <param name="Results">What it can show.</param>
public sealed record NextCheck(
    string What,
    double Minutes,
    ImmutableArray<TankFact> Answers,
    ImmutableArray<CheckResult> Results
)
{
    /// <summary>Causes whose deciding test it is.</summary>
    public ImmutableArray<Cause> Decides { get; init; } = [];
}

/// <summary>
/// The deciding tests of the trade. Which test decides what is common practice without a source; the chances
/// are our own choice, never surer than 95 %.
/// </summary>
public static class NextChecks
{
    /// <summary>All checks; the first is that of the level, with the rise that the engine expects.</summary>
    /// <param name="risePerDay">Rise of the level as set, mm a day; null where there is no layer to
    /// read.</param>
    /// <param name="nozzle">mL a minute that a nozzle gives by the design; null without misting.</param>
    public static IEnumerable<NextCheck> All(double? risePerDay, double? nozzle)
    {
        if (risePerDay is { } rise)
        {
            yield return Level(Math.Max(1.0, rise));
        }

        if (nozzle is { } flow)
        {
            yield return Nozzle(flow);
        }

        foreach (var check in Fixed)
        {
            yield return check;
        }
    }

    private static NextCheck Level(double rise)
    {
        var culture = CultureInfo.InvariantCulture;
        var most = Math.Max(2.0, Math.Round(0.7 * rise));
        return new NextCheck(
            "Siphon the water down to 1 cm and read the level on the next two mornings.",
            20,
            [],
            [
                Result(
                    string.Create(
                        culture,
                        $"It rises by {most:0} mm a day or more (about {rise:0.#} mm is computed as set)"
                    ),
                    0.08,
                    [
                        (Cause.OverMisting, 0.8),
                        (Cause.VentsShut, 0.6),
                        (Cause.WaterComesIn, 0.9),
                        (Cause.ThinDrainage, 0.45),
                        (Cause.NotDrained, 0.35),
                        (Cause.FineMix, 0.12),
                        (Cause.TankLeaks, 0.02),
                        (Cause.MistFails, 0.01),
                        (Cause.DryAir, 0.03),
                    ]
                ),
                Result(
                    string.Create(culture, $"It rises by less than {most:0} mm a day"),
                    0.42,
                    [
                        (Cause.OverMisting, 0.17),
                        (Cause.VentsShut, 0.35),
                        (Cause.WaterComesIn, 0.08),
                        (Cause.ThinDrainage, 0.5),
                        (Cause.NotDrained, 0.6),
                        (Cause.FineMix, 0.73),
                        (Cause.TankLeaks, 0.13),
                        (Cause.MistFails, 0.14),
                        (Cause.DryAir, 0.27),
                    ]
                ),
                Result(
                    "It stays or falls",
                    0.5,
                    [
                        (Cause.OverMisting, 0.03),
                        (Cause.VentsShut, 0.05),
                        (Cause.WaterComesIn, 0.02),
                        (Cause.ThinDrainage, 0.05),
                        (Cause.NotDrained, 0.05),
                        (Cause.FineMix, 0.15),
                        (Cause.TankLeaks, 0.85),
                        (Cause.MistFails, 0.85),
                        (Cause.DryAir, 0.7),
                    ]
                ),
            ]
        )
        {
            Decides = FaultMatrix.Wet,
        };
    }

    private static NextCheck Nozzle(double flow)
    {
        var culture = CultureInfo.InvariantCulture;
        return new NextCheck(
            "Hold a measuring cup under one nozzle for a minute of misting.",
            5,
            [TankFact.PumpFails],
            [
                Result(
                    string.Create(culture, $"Well over {1.3 * flow:0} mL"),
                    0.1,
                    [(Cause.OverMisting, 0.4), (Cause.MistFails, 0.01)]
                ),
                Result(
                    string.Create(culture, $"About {flow:0} mL, as entered"),
                    0.85,
                    [(Cause.OverMisting, 0.58), (Cause.MistFails, 0.15)]
                ),
                Result(
                    string.Create(culture, $"Under {0.6 * flow:0} mL, or nothing"),
                    0.05,
                    [(Cause.OverMisting, 0.02), (Cause.MistFails, 0.84), (Cause.DryAir, 0.15)]
                ),
            ]
        );
    }

    private static readonly ImmutableArray<NextCheck> Fixed =
    [
        Yes(
            "Poke a finger-wide hole down to the barrier and smell it.",
            5,
            [TankFact.HoleSmells],
            ("The hole smells sour or of eggs", "It smells of forest floor", 0.08),
            [
                (Cause.FineMix, 0.85),
                (Cause.OverMisting, 0.6),
                (Cause.NotDrained, 0.65),
                (Cause.ThinDrainage, 0.6),
                (Cause.WaterComesIn, 0.6),
                (Cause.VentsShut, 0.45),
                (Cause.DeadAnimal, 0.25),
                (Cause.Overfed, 0.25),
            ]
        ),
        Yes(
            "Squeeze a fist of soil from the middle of the floor.",
            5,
            [TankFact.SqueezeStreams, TankFact.SqueezeCrumbles],
            ("A stream of water runs out", "A few drops, or it crumbles", 0.08),
            [
                (Cause.OverMisting, 0.75),
                (Cause.NotDrained, 0.75),
                (Cause.ThinDrainage, 0.75),
                (Cause.WaterComesIn, 0.85),
                (Cause.VentsShut, 0.5),
                (Cause.FineMix, 0.75),
                (Cause.DryAir, 0.02),
                (Cause.MistFails, 0.02),
                (Cause.CrewDried, 0.02),
            ]
        ),
        Yes(
            "Wipe the panes dry at noon and note the hours at which they fog again, with the lamp "
                + "off and on.",
            15,
            [TankFact.FogsAtNight],
            ("They fog only in the evening or at night", "They fog within hours by day too", 0.4),
            [
                (Cause.ColdGlass, 0.85),
                (Cause.TooCold, 0.7),
                (Cause.OverMisting, 0.25),
                (Cause.VentsShut, 0.15),
                (Cause.StillAir, 0.3),
            ]
        ),
        Yes(
            "Hold a strip of tissue at each vent: does it move?",
            5,
            [TankFact.VentTaped, TankFact.AirStill],
            ("It does not move at a vent that should be open", "It moves", 0.12),
            [(Cause.VentsShut, 0.9), (Cause.StillAir, 0.75), (Cause.OverMisting, 0.3), (Cause.DryAir, 0.03)]
        ),
        Yes(
            "Measure the plant light at the floor and at the leaves that suffer.",
            10,
            [TankFact.FloorLight],
            ("Under 20 µmol/m²/s", "20 µmol/m²/s or more", 0.2),
            [(Cause.LowLight, 0.9), (Cause.LampTooStrong, 0.02)]
        ),
        Yes(
            "Measure the plant light at the leaves that are burnt, and lay a thermometer there for a day.",
            10,
            [TankFact.LampStronger],
            ("Over 100 µmol/m²/s, or over 30 °C (86 °F) at the leaf", "Less of both", 0.12),
            [(Cause.LampTooStrong, 0.9), (Cause.TooHot, 0.5), (Cause.LowLight, 0.01)]
        ),
        new NextCheck(
            "Hang a logger in the shade of the plants for 48 hours.",
            10,
            [TankFact.Hottest, TankFact.Coldest, TankFact.Driest],
            [
                Result(
                    "Over 28 °C (82 °F) for half an hour or more",
                    0.08,
                    [(Cause.TooHot, 0.88), (Cause.LampTooStrong, 0.3), (Cause.TooCold, 0.01)]
                ),
                Result("Under 16 °C (61 °F)", 0.05, [(Cause.TooCold, 0.85), (Cause.TooHot, 0.01)]),
                Result(
                    "Under 60 % humidity for hours",
                    0.08,
                    [
                        (Cause.DryAir, 0.85),
                        (Cause.MistFails, 0.8),
                        (Cause.CrewDried, 0.6),
                        (Cause.TooHot, 0.08),
                        (Cause.OverMisting, 0.02),
                        (Cause.VentsShut, 0.02),
                    ]
                ),
                Result(
                    "None of these",
                    0.79,
                    [
                        (Cause.TooHot, 0.03),
                        (Cause.TooCold, 0.1),
                        (Cause.DryAir, 0.05),
                        (Cause.MistFails, 0.08),
                        (Cause.CrewDried, 0.3),
                        (Cause.LampTooStrong, 0.55),
                    ]
                ),
            ]
        ),
        Yes(
            "Look at the culture, or at a spoon of litter, under a lens.",
            10,
            [TankFact.MitesSeen],
            ("Slow round mites crawl in it", "No mites", 0.06),
            [(Cause.Mites, 0.95), (Cause.Overfed, 0.2)]
        ),
        new NextCheck(
            "Lay a slice of potato under a leaf overnight and count what sits on it.",
            10,
            [],
            [
                Result(
                    "Nothing",
                    0.15,
                    [
                        (Cause.NoCrew, 0.9),
                        (Cause.CrewDried, 0.8),
                        (Cause.CrewEaten, 0.35),
                        (Cause.TooHot, 0.5),
                        (Cause.Mites, 0.5),
                    ]
                ),
                Result(
                    "A few",
                    0.35,
                    [(Cause.NoCrew, 0.08), (Cause.CrewEaten, 0.6), (Cause.CrewDried, 0.15)]
                ),
                Result("Many", 0.5, [(Cause.NoCrew, 0.02), (Cause.CrewEaten, 0.05), (Cause.CrewDried, 0.05)]),
            ]
        ),
        Yes(
            "Push a 0.6 mm wire through the vent mesh, and look at it against a lamp for holes.",
            5,
            [TankFact.MeshOpen],
            ("The wire passes, or there is a hole", "It does not pass", 0.1),
            [(Cause.OpenMesh, 0.93), (Cause.DoorGap, 0.08)]
        ),
        Yes(
            "Slide a strip of paper around doors, lid and cables.",
            5,
            [TankFact.DoorGap],
            ("It slips in somewhere", "It holds all around", 0.12),
            [(Cause.DoorGap, 0.93), (Cause.OpenMesh, 0.08)]
        ),
        Yes(
            "Run a 2 mm feeler along the barrier's edge and around the drain.",
            15,
            [TankFact.BarrierGap],
            ("It slips through", "It holds all around", 0.08),
            [(Cause.BarrierGap, 0.95)]
        ),
        Yes(
            "Take a photo of the floor from above and count hiding places: a leaf pile or hole for "
                + "each frog and two more.",
            5,
            [TankFact.FloorBare],
            ("Fewer than that", "Enough", 0.2),
            [(Cause.NoCover, 0.92), (Cause.NewAnimals, 0.25)]
        ),
        Yes(
            "Watch the group for twenty minutes at the first feeding of the day.",
            20,
            [TankFact.AnimalsChase],
            ("One chases, wrestles or sits on another", "They eat side by side", 0.08),
            [(Cause.Bullying, 0.88)]
        ),
        Yes(
            "Look whether old plants suffer, or only those that came last.",
            5,
            [TankFact.PlantsNew, TankFact.PlantsDipped],
            ("Only those that came last", "Old ones too", 0.12),
            [(Cause.NewPlants, 0.9), (Cause.DipBurn, 0.88), (Cause.RosetteInSoil, 0.3)]
        ),
        Yes(
            "Pull gently at the plant that melts and look at its foot.",
            5,
            [TankFact.BromeliadInSoil],
            ("A bromeliad or other air plant, rotten where soil touches it", "Something else rots", 0.05),
            [(Cause.RosetteInSoil, 0.92), (Cause.OverMisting, 0.15), (Cause.FineMix, 0.12)]
        ),
        Yes(
            "Measure the dissolved solids of the misting water.",
            5,
            [TankFact.WaterSolids, TankFact.TapWater],
            ("Over 100 mg/L", "Less", 0.2),
            [(Cause.HardWater, 0.93)]
        ),
        Yes(
            "Dry the stand and lay paper under the tank and its drain for a day.",
            10,
            [TankFact.WaterOutside],
            ("The paper is wet", "It stays dry", 0.04),
            [(Cause.TankLeaks, 0.93)]
        ),
        Yes(
            "Search the floor and under the wood for something dead. Wear gloves.",
            15,
            [TankFact.DeadAnimalFound],
            ("Something dead is found", "Nothing is found", 0.03),
            [(Cause.DeadAnimal, 0.85)]
        ),
        Yes(
            "Leave out all food for the crew for a week.",
            2,
            [TankFact.FoodLeft],
            ("Mold and smell go back", "They stay", 0.2),
            [(Cause.Overfed, 0.88), (Cause.NewWood, 0.35), (Cause.NoCrew, 0.1)]
        ),
        Yes(
            "Stop the stream or basin for two days and read the level on both mornings.",
            5,
            [],
            ("The level stops rising", "It rises as before", 0.1),
            [(Cause.WaterComesIn, 0.9), (Cause.OverMisting, 0.05)]
        ),
        Yes(
            "Ask a vet who treats amphibians: weights of a week, droppings, a swab.",
            30,
            [],
            ("The vet finds an illness", "The vet finds nothing", 0.08),
            [(Cause.Illness, 0.85), (Cause.Bullying, 0.15)]
        ),
    ];

    private static NextCheck Yes(
        string what,
        double minutes,
        ImmutableArray<TankFact> answers,
        (string Yes, string No, double Usual) told,
        (Cause Cause, double Chance)[] chances
    ) =>
        new(
            what,
            minutes,
            answers,
            [
                Result(told.Yes, told.Usual, chances),
                Result(told.No, 1.0 - told.Usual, [.. chances.Select(c => (c.Cause, 1.0 - c.Chance))]),
            ]
        );

    private static CheckResult Result(string text, double usual, (Cause Cause, double Chance)[] chances) =>
        new(text, usual, chances.ToImmutableDictionary(c => c.Cause, c => c.Chance));
}
