using System.Collections.Immutable;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Tanks;
using Litterfall.Forecasting.Climate;
using Litterfall.Running.Diagnosis.Matrix;
using Litterfall.Running.Diagnosis.Trials;
using Litterfall.Running.Diagnosis.Words;

namespace Litterfall.UnitTests.Running.Diagnosis;

/// <summary>
/// Invents tanks with one main cause, as the world might make them: the engine runs with nozzle, air and
/// soil off
/// their entered values, the cause does to it what it does, and the keeper reads a level to 2 mm and tells
/// what
/// such a keeper tells. The chances of symptoms are drawn around the practitioner's, each anew for each
/// tank, so
/// that the finder does not know the rule it is asked by; some keepers tell much, some little.
/// </summary>
internal sealed class InventedTanks(TradeCatalog catalog, int seed)
{
    private ulong state = ((ulong)seed * 0xD1B54A32D192ED03UL) + 77;

    public static readonly DateOnly Start = new(2026, 2, 1);

    /// <summary>The next tank and its cause.</summary>
    public (Cause Truth, FaultCase Case) Next()
    {
        var truth = Draw();
        var design = Design(truth);
        var check = design.Check(catalog);
        var facts = Facts(truth);
        var start = Math.Round(5 + (15 * Uniform()));
        var days = 7 + (int)(18 * Uniform());
        var readings = Uniform() < 0.7 ? Levels(truth, design, start, days) : [];
        var (seen, denied) = Symptoms(truth);
        return (
            truth,
            new FaultCase
            {
                Design = check,
                Seen = seen,
                Denied = denied,
                Facts = [.. facts, new ToldFact(TankFact.Reported, true, null, Start.AddDays(days))],
                Readings = readings,
            }
        );
    }

    private Cause Draw()
    {
        var rows = FaultMatrix.Rows.Where(r => r.Cause != Cause.SomethingElse).ToArray();
        var at = Uniform() * rows.Sum(r => r.Weight);
        foreach (var row in rows)
        {
            at -= row.Weight;
            if (at < 0)
            {
                return row.Cause;
            }
        }

        return rows[^1].Cause;
    }

    /// <summary>
    /// How such tanks are set: over-misted ones by their timer, half of the dry ones by their openings.
    /// </summary>
    private FaultDesign Design(Cause truth)
    {
        var usual = new FaultDesign
        {
            Mistings = 1 + (int)(2 * Uniform()),
            MistSeconds = Math.Round(12 + (12 * Uniform())),
            AirChanges = Math.Round(1.5 + (2.5 * Uniform()), 1),
        };
        return truth switch
        {
            Cause.OverMisting => usual with { Mistings = 3, MistSeconds = Math.Round(25 + (25 * Uniform())) },
            Cause.NotDrained => usual with { Mistings = 2, MistSeconds = 25 },
            Cause.ThinDrainage => usual with { DrainageCm = 2, Mistings = 2, MistSeconds = 20 },
            Cause.DryAir => usual with
            {
                HumidityPercent = 65,
                AirChanges = Math.Round(8 + (6 * Uniform()), 1),
            },
            Cause.NewWood or Cause.NewPlants or Cause.NewAnimals => usual with { Planted = "2026-01-20" },
            Cause.FineMix => usual with { Planted = Uniform() < 0.6 ? "2022-03-01" : "2025-01-01" },
            Cause.RosetteInSoil => usual with { Plants = "{ plant: neoregelia-small }" },
            _ => usual,
        };
    }

    private ImmutableArray<TankReading> Levels(Cause truth, FaultDesign design, double start, int days)
    {
        var at = design.Check(catalog);
        var open = Litterfall.Domain.DesignFile.DesignEdits.SetPart(
            at.Document,
            "start",
            FormattableString.Invariant($"{{ level: {start:0.#} mm }}")
        );
        var ready = Litterfall.Domain.Checking.DesignChecker.Check(open.Value!, catalog).Value!;
        var air = Spread(0.25) * (truth == Cause.VentsShut ? 0.1 + (0.2 * Uniform()) : 1);
        var mist =
            Spread(0.1)
            * (
                truth switch
                {
                    Cause.MistFails => 0.3 * Uniform(),
                    Cause.OverMisting when Uniform() < 0.3 => 1.5,
                    _ => 1,
                }
            );
        var change = ClimateChange.None with { AirFlow = air, HeldAir = air, Mist = mist, IsDrained = false };
        var result = BoxRun.From(new BoxSetup(ready), Start, change)!.Through(days + 1);
        var beside = truth switch
        {
            Cause.WaterComesIn => (80 + (300 * Uniform())) / 81,
            Cause.TankLeaks => -(30 + (150 * Uniform())) / 81,
            _ => 0,
        };
        TankReading Reading(int day)
        {
            var level = day == 0 ? start : (1000 * result.Hours[(24 * day) + 9].LevelMeters) + (beside * day);
            return new TankReading
            {
                At = Start.AddDays(day).ToDateTime(new TimeOnly(9, 0)),
                Kind = ReadingKind.Level,
                Amount = Math.Max(0, Math.Round(level + (2 * Normal()))),
            };
        }

        return [Reading(0), Reading(days / 2), Reading(days)];
    }

    private (ImmutableArray<Symptom> Seen, ImmutableArray<Symptom> Denied) Symptoms(Cause truth)
    {
        var row = FaultMatrix.RowOf(truth);
        var talkative = 0.8 * Normal();
        var seen = ImmutableArray.CreateBuilder<Symptom>();
        var denied = ImmutableArray.CreateBuilder<Symptom>();
        for (var attempt = 0; attempt < 20 && seen.Count == 0; attempt++)
        {
            foreach (var symptom in Enum.GetValues<Symptom>())
            {
                var chance = row.Chance(symptom);
                var odds = Math.Log(chance / (1 - chance)) + (0.5 * Normal()) + (0.5 * talkative);
                if (Uniform() < 1 / (1 + Math.Exp(-odds)))
                {
                    seen.Add(symptom);
                }
            }
        }

        return (seen.ToImmutable(), denied.ToImmutable());
    }

    /// <summary>
    /// Half of the keepers know the fact that goes with their cause; few tell one of another cause.
    /// </summary>
    private IEnumerable<ToldFact> Facts(Cause truth)
    {
        foreach (var (cause, fact, number) in Telling)
        {
            if (Uniform() < (cause == truth ? 0.5 : 0.03))
            {
                yield return new ToldFact(fact, true, number, null);
            }
        }
    }

    private static readonly (Cause Cause, TankFact Fact, double? Number)[] Telling =
    [
        (Cause.VentsShut, TankFact.VentTaped, null),
        (Cause.NotDrained, TankFact.NeverDrained, null),
        (Cause.WaterComesIn, TankFact.WaterFeature, null),
        (Cause.TankLeaks, TankFact.WaterOutside, null),
        (Cause.FineMix, TankFact.SoilOld, null),
        (Cause.DeadAnimal, TankFact.DeadAnimalFound, null),
        (Cause.Overfed, TankFact.FoodLeft, null),
        (Cause.ColdGlass, TankFact.FogsAtNight, null),
        (Cause.DryAir, TankFact.Driest, 50),
        (Cause.MistFails, TankFact.PumpFails, null),
        (Cause.LampTooStrong, TankFact.LampStronger, null),
        (Cause.LowLight, TankFact.LampOld, null),
        (Cause.RosetteInSoil, TankFact.BromeliadInSoil, null),
        (Cause.DipBurn, TankFact.PlantsDipped, null),
        (Cause.NewPlants, TankFact.PlantsNew, null),
        (Cause.HardWater, TankFact.TapWater, null),
        (Cause.NewWood, TankFact.WoodNew, null),
        (Cause.NoCrew, TankFact.NoCrew, null),
        (Cause.StillAir, TankFact.AirStill, null),
        (Cause.TooHot, TankFact.Hottest, 31),
        (Cause.TooCold, TankFact.Coldest, 14),
        (Cause.Mites, TankFact.MitesSeen, null),
        (Cause.NoCover, TankFact.FloorBare, null),
        (Cause.Bullying, TankFact.AnimalsChase, null),
        (Cause.NewAnimals, TankFact.AnimalsNew, null),
        (Cause.OpenMesh, TankFact.MeshOpen, null),
        (Cause.DoorGap, TankFact.DoorGap, null),
        (Cause.BarrierGap, TankFact.BarrierGap, null),
    ];

    private double Spread(double sigma) => Math.Exp(sigma * Normal());

    private double Normal() => Math.Sqrt(-2 * Math.Log(1 - Uniform())) * Math.Cos(2 * Math.PI * Uniform());

    /// <summary>From 0 to 1, by the mixing function of Steele and others 2014 (from memory).</summary>
    private double Uniform()
    {
        state += 0x9E3779B97F4A7C15UL;
        var z = state;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EBUL;
        z ^= z >> 31;
        return (z >> 11) * (1.0 / (1UL << 53));
    }
}
