namespace Litterfall.Running.Diagnosis.Words;

/// <summary>What is known of a tank beside its design.</summary>
public enum TankFact
{
    /// <summary>A vent was taped or shut, or the lid was sealed.</summary>
    VentTaped,

    /// <summary>More was opened than the design says.</summary>
    VentOpened,

    /// <summary>Day on which misting was changed.</summary>
    MistChanged,

    /// <summary>Day on which it was last drained.</summary>
    LastDrain,

    /// <summary>Level left after that draining, mm over the base.</summary>
    LastDrainLevel,

    /// <summary>It was never drained.</summary>
    NeverDrained,

    /// <summary>Day the symptoms were reported.</summary>
    Reported,

    /// <summary>The pump is silent, or nozzles drip or are clogged.</summary>
    PumpFails,

    /// <summary>A stream, fall or filled basin runs in it.</summary>
    WaterFeature,

    /// <summary>Water was found outside the tank.</summary>
    WaterOutside,

    /// <summary>The soil is years old or crumbles to dust.</summary>
    SoilOld,

    /// <summary>Age of the soil, years.</summary>
    SoilYears,

    /// <summary>A fist of soil gives a stream.</summary>
    SqueezeStreams,

    /// <summary>A fist of soil gives nothing and crumbles.</summary>
    SqueezeCrumbles,

    /// <summary>A hole poked into the soil smells.</summary>
    HoleSmells,

    /// <summary>A dead animal was found.</summary>
    DeadAnimalFound,

    /// <summary>Food is left lying.</summary>
    FoodLeft,

    /// <summary>Mites were seen.</summary>
    MitesSeen,

    /// <summary>The culture stands in a tight box.</summary>
    CultureSealed,

    /// <summary>Wood or leaves are new.</summary>
    WoodNew,

    /// <summary>No springtails were ever put in.</summary>
    NoCrew,

    /// <summary>Plants came in less than six weeks ago.</summary>
    PlantsNew,

    /// <summary>Plants were dipped in bleach.</summary>
    PlantsDipped,

    /// <summary>Bromeliads are planted in soil.</summary>
    BromeliadInSoil,

    /// <summary>Tap water is used.</summary>
    TapWater,

    /// <summary>Dissolved solids of the water, mg/L.</summary>
    WaterSolids,

    /// <summary>The lamp is old, or has grown dim.</summary>
    LampOld,

    /// <summary>The lamp is new, stronger, or nearer than before.</summary>
    LampStronger,

    /// <summary>Light at the floor, µmol/(m² s).</summary>
    FloorLight,

    /// <summary>Highest air temperature seen, °C.</summary>
    Hottest,

    /// <summary>Lowest air temperature seen, °C.</summary>
    Coldest,

    /// <summary>Lowest humidity seen, %.</summary>
    Driest,

    /// <summary>Heat wave or sun on the tank.</summary>
    HeatWave,

    /// <summary>The heating failed or is off at night.</summary>
    HeatingOff,

    /// <summary>Panes fog only in the evening or at night.</summary>
    FogsAtNight,

    /// <summary>Animals came in less than four weeks ago.</summary>
    AnimalsNew,

    /// <summary>Animals chase or wrestle.</summary>
    AnimalsChase,

    /// <summary>The floor is bare: little cover.</summary>
    FloorBare,

    /// <summary>The mesh has openings over 0.6 mm, or a hole.</summary>
    MeshOpen,

    /// <summary>A gap at doors or lid.</summary>
    DoorGap,

    /// <summary>A gap at the barrier or around the drain.</summary>
    BarrierGap,

    /// <summary>No air moves: no fan, no vents below.</summary>
    AirStill,
}

/// <summary>How a fact is told.</summary>
public enum FactForm
{
    /// <summary>Yes or no.</summary>
    YesNo,

    /// <summary>A number in the unit that its title names.</summary>
    Number,

    /// <summary>A day.</summary>
    Day,
}

/// <summary>A fact as it was told.</summary>
/// <param name="Fact">Which.</param>
/// <param name="IsSo">Yes or no; true for a number or a day.</param>
/// <param name="Number">The number; null for none.</param>
/// <param name="Day">The day; null for none.</param>
public sealed record ToldFact(TankFact Fact, bool IsSo, double? Number, DateOnly? Day);
