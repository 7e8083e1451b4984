namespace Litterfall.Running.Diagnosis.Words;

/// <summary>What a keeper sees, smells or misses.</summary>
public enum Symptom
{
    /// <summary>Water stands over the drainage layer, or the soil is wet at the glass.</summary>
    Floods,

    /// <summary>It smells sour, rotten, of a ditch.</summary>
    Smells,

    /// <summary>Panes stay white.</summary>
    Fogs,

    /// <summary>Plants melt or rot.</summary>
    PlantsMelt,

    /// <summary>Plants turn crisp.</summary>
    PlantsCrisp,

    /// <summary>Plants stretch and pale.</summary>
    PlantsPale,

    /// <summary>Leaves bleach or burn.</summary>
    LeavesBleached,

    /// <summary>Mold.</summary>
    Mold,

    /// <summary>Springtails or isopods are gone.</summary>
    CrewGone,

    /// <summary>Frogs hide.</summary>
    FrogsHide,

    /// <summary>Frogs sit on wood and never on the floor.</summary>
    FrogsOffFloor,

    /// <summary>Frogs sit in water.</summary>
    FrogsInWater,

    /// <summary>Frogs grow thin.</summary>
    FrogsThin,

    /// <summary>A frog died.</summary>
    FrogDied,

    /// <summary>Frogs are found under the barrier.</summary>
    FrogsUnderBarrier,

    /// <summary>Flies or gnats in the room.</summary>
    FliesOut,

    /// <summary>Algae, or slime, on the front.</summary>
    Algae,

    /// <summary>Moss dies.</summary>
    MossDies,

    /// <summary>White spots on panes and leaves.</summary>
    WhiteSpots,

    /// <summary>Soil and moss dry out.</summary>
    DriesOut,

    /// <summary>Water under or beside the tank.</summary>
    WaterOutside,
}
