using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Running.Diagnosis.Words;

namespace Litterfall.Running.Diagnosis.Matrix;

/// <summary>
/// What a told fact is worth. The directions are common practice without a source, the factors our own
/// choice:
/// 3 for a hint, 6 for what practitioners take as a proof of kind, a third and a sixth for the opposite.
/// </summary>
public static class FactClues
{
    private const double Hint = 3.0;
    private const double Strong = 6.0;

    private static readonly ImmutableArray<(
        TankFact Fact,
        string Yes,
        string No,
        (Cause, double)[] Factors
    )> YesNo =
    [
        (
            TankFact.VentTaped,
            "A vent was taped or shut",
            "No vent was shut",
            [(Cause.VentsShut, Strong), (Cause.OverMisting, 2.0), (Cause.StillAir, 2.0), (Cause.DryAir, 0.3)]
        ),
        (
            TankFact.VentOpened,
            "More was opened than the design says",
            "Nothing was opened",
            [(Cause.DryAir, Strong), (Cause.VentsShut, 0.1), (Cause.OverMisting, 0.5)]
        ),
        (
            TankFact.NeverDrained,
            "It was never drained",
            "It is drained",
            [(Cause.NotDrained, Strong), (Cause.OverMisting, 1.2)]
        ),
        (
            TankFact.PumpFails,
            "The pump is silent, or nozzles are clogged",
            "Pump and nozzles work",
            [(Cause.MistFails, 12.0), (Cause.OverMisting, 0.2)]
        ),
        (
            TankFact.WaterFeature,
            "A stream, fall or basin runs in it",
            "No stream or basin",
            [(Cause.WaterComesIn, Strong)]
        ),
        (TankFact.WaterOutside, "Water was found outside", "It is dry outside", [(Cause.TankLeaks, 12.0)]),
        (TankFact.SoilOld, "The soil is old and fine", "The soil is fresh and open", [(Cause.FineMix, Hint)]),
        (
            TankFact.SqueezeStreams,
            "A squeezed fist gives a stream",
            "A squeezed fist gives a few drops",
            [
                (Cause.OverMisting, 2.5),
                (Cause.VentsShut, 2.0),
                (Cause.NotDrained, 2.5),
                (Cause.ThinDrainage, 2.5),
                (Cause.WaterComesIn, 2.5),
                (Cause.FineMix, 2.5),
                (Cause.DryAir, 0.1),
                (Cause.MistFails, 0.1),
                (Cause.CrewDried, 0.1),
            ]
        ),
        (
            TankFact.SqueezeCrumbles,
            "A squeezed fist crumbles",
            "A squeezed fist holds together",
            [
                (Cause.DryAir, Hint),
                (Cause.MistFails, Hint),
                (Cause.CrewDried, Hint),
                (Cause.TankLeaks, 2.0),
                (Cause.OverMisting, 0.05),
                (Cause.VentsShut, 0.2),
                (Cause.NotDrained, 0.05),
                (Cause.ThinDrainage, 0.05),
                (Cause.WaterComesIn, 0.05),
                (Cause.FineMix, 0.3),
            ]
        ),
        (
            TankFact.HoleSmells,
            "A hole poked into the soil smells",
            "A hole poked into the soil smells of earth",
            [
                (Cause.FineMix, Hint),
                (Cause.OverMisting, 2.0),
                (Cause.NotDrained, 2.0),
                (Cause.ThinDrainage, 2.0),
                (Cause.VentsShut, 1.5),
                (Cause.WaterComesIn, 2.0),
                (Cause.DeadAnimal, 0.5),
            ]
        ),
        (
            TankFact.DeadAnimalFound,
            "A dead animal was found",
            "No dead animal was found",
            [(Cause.DeadAnimal, 15.0)]
        ),
        (
            TankFact.FoodLeft,
            "Food is left lying",
            "No food is left",
            [(Cause.Overfed, Strong), (Cause.Mites, 1.5)]
        ),
        (TankFact.MitesSeen, "Mites were seen", "No mites under the lens", [(Cause.Mites, 20.0)]),
        (
            TankFact.CultureSealed,
            "The culture stands in a tight box",
            "The culture has air",
            [(Cause.Overfed, Hint)]
        ),
        (TankFact.WoodNew, "Wood or leaves are new", "Wood and leaves are old", [(Cause.NewWood, Strong)]),
        (TankFact.NoCrew, "No springtails were put in", "Springtails were put in", [(Cause.NoCrew, Strong)]),
        (
            TankFact.PlantsNew,
            "Plants are new",
            "Plants have stood for longer",
            [(Cause.NewPlants, Strong), (Cause.DipBurn, 2.0)]
        ),
        (
            TankFact.PlantsDipped,
            "Plants were dipped in bleach",
            "Plants were not dipped",
            [(Cause.DipBurn, 8.0)]
        ),
        (
            TankFact.BromeliadInSoil,
            "Bromeliads are planted in soil",
            "Bromeliads are mounted",
            [(Cause.RosetteInSoil, 4.0)]
        ),
        (TankFact.TapWater, "Tap water is used", "Soft water is used", [(Cause.HardWater, 4.0)]),
        (
            TankFact.LampOld,
            "The lamp is old or dim",
            "The lamp is fresh",
            [(Cause.LowLight, Hint), (Cause.LampTooStrong, 0.3)]
        ),
        (
            TankFact.LampStronger,
            "The lamp is new, stronger or nearer",
            "The lamp is as it was",
            [(Cause.LampTooStrong, Strong), (Cause.LowLight, 0.2), (Cause.TooHot, 1.5)]
        ),
        (
            TankFact.HeatWave,
            "A heat wave, or sun on the tank",
            "No heat wave",
            [(Cause.TooHot, Strong), (Cause.TooCold, 0.1)]
        ),
        (
            TankFact.HeatingOff,
            "The heating failed or is off at night",
            "The heating runs",
            [(Cause.TooCold, Strong), (Cause.ColdGlass, 2.5), (Cause.TooHot, 0.2)]
        ),
        (
            TankFact.FogsAtNight,
            "Panes fog only in the evening or at night",
            "Panes fog through the day",
            [(Cause.ColdGlass, 4.0), (Cause.OverMisting, 0.5), (Cause.VentsShut, 0.6)]
        ),
        (
            TankFact.AnimalsNew,
            "The animals are new",
            "The animals have been there for longer",
            [(Cause.NewAnimals, 8.0)]
        ),
        (TankFact.AnimalsChase, "Animals chase or wrestle", "Nobody chases", [(Cause.Bullying, 10.0)]),
        (
            TankFact.FloorBare,
            "The floor has little cover",
            "The floor is well covered",
            [(Cause.NoCover, Strong)]
        ),
        (
            TankFact.MeshOpen,
            "The mesh is wide or has a hole",
            "The mesh is fine and whole",
            [(Cause.OpenMesh, 8.0)]
        ),
        (
            TankFact.DoorGap,
            "Doors or lid leave a gap",
            "Doors and lid are tight",
            [(Cause.DoorGap, 8.0), (Cause.DryAir, 1.3)]
        ),
        (TankFact.BarrierGap, "The barrier has a gap", "The barrier is tight", [(Cause.BarrierGap, 10.0)]),
        (
            TankFact.AirStill,
            "The air does not move",
            "The air moves",
            [(Cause.StillAir, 5.0), (Cause.VentsShut, 2.0)]
        ),
    ];

    /// <summary>Thresholds: below, between and above; factors of each side.</summary>
    private static readonly ImmutableArray<(
        TankFact Fact,
        double Low,
        double High,
        (Cause, double)[] Below,
        (Cause, double)[] Above
    )> Numbers =
    [
        (
            TankFact.FloorLight,
            20,
            100,
            [(Cause.LowLight, Hint), (Cause.LampTooStrong, 0.1)],
            [(Cause.LampTooStrong, Hint), (Cause.LowLight, 0.1)]
        ),
        (TankFact.Hottest, 27, 28, [(Cause.TooHot, 0.1)], [(Cause.TooHot, 8.0), (Cause.TooCold, 0.3)]),
        (TankFact.Coldest, 16, 18, [(Cause.TooCold, 8.0), (Cause.TooHot, 0.5)], [(Cause.TooCold, 0.1)]),
        (
            TankFact.Driest,
            60,
            70,
            [
                (Cause.DryAir, Hint),
                (Cause.MistFails, Hint),
                (Cause.CrewDried, 2.0),
                (Cause.OverMisting, 0.2),
                (Cause.VentsShut, 0.1),
            ],
            [(Cause.DryAir, 0.25), (Cause.MistFails, 0.3), (Cause.CrewDried, 0.4)]
        ),
        (TankFact.WaterSolids, 50, 100, [(Cause.HardWater, 0.15)], [(Cause.HardWater, 5.0)]),
        (TankFact.SoilYears, 1, 3, [(Cause.FineMix, 0.5)], [(Cause.FineMix, 2.5)]),
    ];

    /// <summary>Clues of what was told.</summary>
    public static IEnumerable<Clue> From(IEnumerable<ToldFact> told)
    {
        foreach (var fact in told)
        {
            if (FactWords.Form(fact.Fact) == FactForm.YesNo)
            {
                var row = YesNo.First(r => r.Fact == fact.Fact);
                yield return fact.IsSo
                    ? Clue.Create(row.Yes, row.Factors)
                    : Clue.Create(row.No, Turned(row.Factors));
            }
            else if (
                fact.Number is { } number
                && Numbers.FirstOrDefault(n => n.Fact == fact.Fact) is { Below: not null } limits
            )
            {
                var text = string.Create(
                    CultureInfo.InvariantCulture,
                    $"{Capital(FactWords.Title(fact.Fact))}: {number:0.#}"
                );
                if (number < limits.Low)
                {
                    yield return Clue.Create(text, limits.Below);
                }
                else if (number >= limits.High)
                {
                    yield return Clue.Create(text, limits.Above);
                }
            }
        }
    }

    /// <summary>Who denies a fact speaks against what it would prove, and says little for the rest.</summary>
    private static (Cause, double)[] Turned((Cause Cause, double Factor)[] factors) =>
        [.. factors.Where(f => f.Factor > 1.0).Select(f => (f.Cause, Math.Max(0.08, 1.0 / f.Factor)))];

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
