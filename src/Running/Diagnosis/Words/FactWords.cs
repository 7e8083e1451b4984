using System.Collections.Immutable;

namespace Litterfall.Running.Diagnosis.Words;

/// <summary>Facts of a tank as they are written: key, title, form.</summary>
public static class FactWords
{
    private static readonly ImmutableArray<(TankFact Fact, FactForm Form, string Title)> Known =
    [
        (TankFact.VentTaped, FactForm.YesNo, "a vent was taped or shut"),
        (TankFact.VentOpened, FactForm.YesNo, "more was opened than the design says"),
        (TankFact.MistChanged, FactForm.Day, "day on which misting was changed"),
        (TankFact.LastDrain, FactForm.Day, "day on which it was last drained"),
        (TankFact.LastDrainLevel, FactForm.Number, "level left after that draining, mm over the base"),
        (TankFact.NeverDrained, FactForm.YesNo, "it was never drained"),
        (TankFact.Reported, FactForm.Day, "day the symptoms were reported"),
        (TankFact.PumpFails, FactForm.YesNo, "the misting pump is silent, or nozzles are clogged"),
        (TankFact.WaterFeature, FactForm.YesNo, "a stream, fall or filled basin runs in it"),
        (TankFact.WaterOutside, FactForm.YesNo, "water was found outside the tank"),
        (TankFact.SoilOld, FactForm.YesNo, "the soil is old and fine"),
        (TankFact.SoilYears, FactForm.Number, "age of the soil, years"),
        (TankFact.SqueezeStreams, FactForm.YesNo, "a squeezed fist of soil gives a stream"),
        (TankFact.SqueezeCrumbles, FactForm.YesNo, "a squeezed fist of soil gives nothing and crumbles"),
        (TankFact.HoleSmells, FactForm.YesNo, "a hole poked into the soil smells"),
        (TankFact.DeadAnimalFound, FactForm.YesNo, "a dead animal was found"),
        (TankFact.FoodLeft, FactForm.YesNo, "food for the crew is left lying"),
        (TankFact.MitesSeen, FactForm.YesNo, "mites were seen"),
        (TankFact.CultureSealed, FactForm.YesNo, "the culture stands in a tight box"),
        (TankFact.WoodNew, FactForm.YesNo, "wood or leaves are new"),
        (TankFact.NoCrew, FactForm.YesNo, "no springtails were put in"),
        (TankFact.PlantsNew, FactForm.YesNo, "plants came in less than six weeks ago"),
        (TankFact.PlantsDipped, FactForm.YesNo, "plants were dipped in bleach"),
        (TankFact.BromeliadInSoil, FactForm.YesNo, "bromeliads are planted in soil"),
        (TankFact.TapWater, FactForm.YesNo, "tap water is used"),
        (TankFact.WaterSolids, FactForm.Number, "dissolved solids of the water, mg/L"),
        (TankFact.LampOld, FactForm.YesNo, "the lamp is old or dim"),
        (TankFact.LampStronger, FactForm.YesNo, "the lamp is new, stronger or nearer"),
        (TankFact.FloorLight, FactForm.Number, "plant light at the floor, µmol/(m² s)"),
        (TankFact.Hottest, FactForm.Number, "highest air temperature seen, °C"),
        (TankFact.Coldest, FactForm.Number, "lowest air temperature seen, °C"),
        (TankFact.Driest, FactForm.Number, "lowest humidity seen, %"),
        (TankFact.HeatWave, FactForm.YesNo, "a heat wave, or sun on the tank"),
        (TankFact.HeatingOff, FactForm.YesNo, "the heating failed or is off at night"),
        (TankFact.FogsAtNight, FactForm.YesNo, "panes fog only in the evening or at night"),
        (TankFact.AnimalsNew, FactForm.YesNo, "animals came in less than four weeks ago"),
        (TankFact.AnimalsChase, FactForm.YesNo, "animals chase or wrestle"),
        (TankFact.FloorBare, FactForm.YesNo, "the floor has little cover"),
        (TankFact.MeshOpen, FactForm.YesNo, "the mesh has wide openings or a hole"),
        (TankFact.DoorGap, FactForm.YesNo, "doors or lid leave a gap"),
        (TankFact.BarrierGap, FactForm.YesNo, "a gap at the barrier or around the drain"),
        (TankFact.AirStill, FactForm.YesNo, "the air does not move"),
    ];

    /// <summary>All facts: key as a file writes it, form, title.</summary>
    public static IEnumerable<(TankFact Fact, string Key, FactForm Form, string Title)> All =>
        Known.Select(k => (k.Fact, Key(k.Fact), k.Form, k.Title));

    /// <summary>Title of a fact.</summary>
    public static string Title(TankFact fact) => Known.First(k => k.Fact == fact).Title;

    /// <summary>Form of a fact.</summary>
    public static FactForm Form(TankFact fact) => Known.First(k => k.Fact == fact).Form;

    /// <summary>
    /// The fact that a key names: "ventTaped", "vent taped" and "Vent-taped" are one; null where it names
    /// none.
    /// </summary>
    public static TankFact? Find(string key)
    {
        var plain = Plain(key);
        foreach (var (fact, _, _) in Known)
        {
            if (Plain(fact.ToString()) == plain)
            {
                return fact;
            }
        }

        return null;
    }

    /// <summary>Key of a fact in a file: "ventTaped".</summary>
    public static string Key(TankFact fact)
    {
        var name = fact.ToString();
        return char.ToLowerInvariant(name[0]) + name[1..];
    }

    private static string Plain(string key) =>
        new([.. key.Where(char.IsLetterOrDigit).Select(char.ToLowerInvariant)]);
}
