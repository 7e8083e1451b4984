namespace Litterfall.Running.Diagnosis.Matrix;

/// <summary>Why a tank goes wrong.</summary>
public enum Cause
{
    /// <summary>More is misted than the air takes away.</summary>
    OverMisting,

    /// <summary>Vents are shut, so that the usual mist stays.</summary>
    VentsShut,

    /// <summary>Nobody draws the water off, or it has no way out.</summary>
    NotDrained,

    /// <summary>The drainage layer holds too little.</summary>
    ThinDrainage,

    /// <summary>Water comes in besides the mist.</summary>
    WaterComesIn,

    /// <summary>Water leaves through the glass or the drain.</summary>
    TankLeaks,

    /// <summary>The mix is too fine, old or packed and holds no air.</summary>
    FineMix,

    /// <summary>A dead animal.</summary>
    DeadAnimal,

    /// <summary>Too much food for the crew or the frogs.</summary>
    Overfed,

    /// <summary>Glass colder than the dew point.</summary>
    ColdGlass,

    /// <summary>Too little mist for the openings.</summary>
    DryAir,

    /// <summary>The misting fails.</summary>
    MistFails,

    /// <summary>The lamp is too strong or too near.</summary>
    LampTooStrong,

    /// <summary>Too little light.</summary>
    LowLight,

    /// <summary>Rosettes that belong on wood stand in soil.</summary>
    RosetteInSoil,

    /// <summary>Burnt by the dip.</summary>
    DipBurn,

    /// <summary>New plants that settle in.</summary>
    NewPlants,

    /// <summary>Hard water.</summary>
    HardWater,

    /// <summary>The mold of new wood and leaves, which passes.</summary>
    NewWood,

    /// <summary>No clean-up crew.</summary>
    NoCrew,

    /// <summary>Still air.</summary>
    StillAir,

    /// <summary>Too hot.</summary>
    TooHot,

    /// <summary>Too cold.</summary>
    TooCold,

    /// <summary>The crew dried out.</summary>
    CrewDried,

    /// <summary>Mites.</summary>
    Mites,

    /// <summary>Frogs ate the crew.</summary>
    CrewEaten,

    /// <summary>No cover.</summary>
    NoCover,

    /// <summary>Frogs fight.</summary>
    Bullying,

    /// <summary>New animals that settle in.</summary>
    NewAnimals,

    /// <summary>Mesh that flies pass.</summary>
    OpenMesh,

    /// <summary>Gap at doors or lid.</summary>
    DoorGap,

    /// <summary>Gap at the barrier.</summary>
    BarrierGap,

    /// <summary>Illness, which a program cannot judge.</summary>
    Illness,

    /// <summary>Something that is not in this list.</summary>
    SomethingElse,
}
