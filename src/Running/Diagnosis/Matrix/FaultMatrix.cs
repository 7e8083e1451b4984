using System.Collections.Immutable;
using Litterfall.Running.Diagnosis.Words;
using static Litterfall.Running.Diagnosis.Words.Symptom;

namespace Litterfall.Running.Diagnosis.Matrix;

/// <summary>A cause, how often it is the one, and what it shows.</summary>
/// <param name="Cause">The cause.</param>
/// <param name="Title">In a few words.</param>
/// <param name="Weight">How often it is the main cause, against the others; they need not sum to one.</param>
/// <param name="Shows">Share of keepers with this cause who tell of a symptom.</param>
public sealed record CauseRow(
    Cause Cause,
    string Title,
    double Weight,
    ImmutableDictionary<Symptom, double> Shows
)
{
    /// <summary>Chance that a keeper with this cause tells of a symptom.</summary>
    public double Chance(Symptom symptom) => Shows.GetValueOrDefault(symptom, FaultMatrix.Beside);
}

/// <summary>
/// What practitioners look for first. Order and rough shares are common practice without a source; the
/// numbers
/// are our own choice, and are replaced by what the readings say wherever there are readings.
/// </summary>
public static class FaultMatrix
{
    /// <summary>Chance that a keeper tells of a symptom which the main cause does not make.</summary>
    public const double Beside = 0.04;

    /// <summary>All causes.</summary>
    public static readonly ImmutableArray<CauseRow> Rows =
    [
        Row(
            Cause.OverMisting,
            "Too much mist for the air that leaves",
            10,
            (Floods, 0.55),
            (Smells, 0.4),
            (Fogs, 0.5),
            (PlantsMelt, 0.4),
            (FrogsOffFloor, 0.35),
            (CrewGone, 0.25),
            (Mold, 0.15),
            (Algae, 0.2)
        ),
        Row(
            Cause.VentsShut,
            "Vents shut or taped",
            6,
            (Fogs, 0.8),
            (Floods, 0.3),
            (Smells, 0.35),
            (Mold, 0.35),
            (PlantsMelt, 0.3),
            (FrogsOffFloor, 0.2),
            (CrewGone, 0.15)
        ),
        Row(
            Cause.NotDrained,
            "Water is not drawn off",
            6,
            (Floods, 0.75),
            (Smells, 0.5),
            (FrogsOffFloor, 0.4),
            (PlantsMelt, 0.35),
            (CrewGone, 0.25)
        ),
        Row(
            Cause.ThinDrainage,
            "Drainage layer too thin for this misting",
            2.5,
            (Floods, 0.75),
            (Smells, 0.4),
            (FrogsOffFloor, 0.35),
            (PlantsMelt, 0.3)
        ),
        Row(
            Cause.WaterComesIn,
            "Water comes in besides the mist (stream, hose, basin)",
            2,
            (Floods, 0.85),
            (Smells, 0.3),
            (FrogsOffFloor, 0.3)
        ),
        Row(
            Cause.TankLeaks,
            "Water leaves through a seam or the drain",
            1.5,
            (WaterOutside, 0.75),
            (DriesOut, 0.35)
        ),
        Row(
            Cause.FineMix,
            "Soil too fine, old or packed: no air in it",
            4,
            (Smells, 0.55),
            (PlantsMelt, 0.45),
            (Floods, 0.3),
            (FrogsOffFloor, 0.3),
            (CrewGone, 0.3),
            (Mold, 0.15)
        ),
        Row(
            Cause.DeadAnimal,
            "A dead animal",
            1,
            (Smells, 0.85),
            (Mold, 0.25),
            (FrogDied, 0.2),
            (FliesOut, 0.1)
        ),
        Row(
            Cause.Overfed,
            "Too much food left lying",
            3,
            (Mold, 0.55),
            (Smells, 0.45),
            (FliesOut, 0.3),
            (CrewGone, 0.3)
        ),
        Row(
            Cause.ColdGlass,
            "Glass colder than the dew point of the tank's air",
            5,
            (Fogs, 0.92),
            (Floods, 0.06)
        ),
        Row(
            Cause.DryAir,
            "Air too dry: too little mist for the openings",
            6,
            (PlantsCrisp, 0.6),
            (DriesOut, 0.45),
            (MossDies, 0.35),
            (FrogsHide, 0.3),
            (FrogsInWater, 0.3),
            (CrewGone, 0.2)
        ),
        Row(
            Cause.MistFails,
            "Misting fails: pump, nozzle or timer",
            4,
            (DriesOut, 0.55),
            (PlantsCrisp, 0.45),
            (MossDies, 0.3),
            (FrogsHide, 0.3),
            (FrogsInWater, 0.25),
            (CrewGone, 0.2)
        ),
        Row(
            Cause.LampTooStrong,
            "Lamp too strong or too near",
            3,
            (LeavesBleached, 0.55),
            (PlantsCrisp, 0.45),
            (MossDies, 0.3),
            (FrogsHide, 0.3),
            (Algae, 0.15)
        ),
        Row(Cause.LowLight, "Too little light", 4, (PlantsPale, 0.6), (MossDies, 0.4), (PlantsMelt, 0.35)),
        Row(Cause.RosetteInSoil, "Bromeliad planted in soil", 2.5, (PlantsMelt, 0.9)),
        Row(
            Cause.DipBurn,
            "Plants burnt by the bleach dip",
            1.2,
            (PlantsMelt, 0.6),
            (PlantsCrisp, 0.35),
            (LeavesBleached, 0.25)
        ),
        Row(
            Cause.NewPlants,
            "New plants settling in",
            4,
            (PlantsMelt, 0.75),
            (PlantsCrisp, 0.2),
            (PlantsPale, 0.15)
        ),
        Row(
            Cause.HardWater,
            "Hard or salty water",
            3,
            (WhiteSpots, 0.6),
            (PlantsCrisp, 0.3),
            (MossDies, 0.3),
            (Algae, 0.25)
        ),
        Row(Cause.NewWood, "Mold of new wood and leaves, which passes", 4, (Mold, 0.92)),
        Row(Cause.NoCrew, "No clean-up crew at work", 3, (Mold, 0.6), (CrewGone, 0.3), (Smells, 0.1)),
        Row(Cause.StillAir, "Air stands still", 2, (Mold, 0.5), (Fogs, 0.3), (PlantsMelt, 0.2)),
        Row(
            Cause.TooHot,
            "Too hot",
            5,
            (CrewGone, 0.5),
            (FrogsInWater, 0.4),
            (FrogsHide, 0.35),
            (FrogDied, 0.25),
            (PlantsCrisp, 0.2),
            (PlantsMelt, 0.15)
        ),
        Row(Cause.TooCold, "Too cold", 2, (FrogsHide, 0.55), (Fogs, 0.25), (FrogDied, 0.1)),
        Row(Cause.CrewDried, "Springtails dried out", 2, (CrewGone, 0.88), (DriesOut, 0.35)),
        Row(Cause.Mites, "Mites in the culture", 2, (CrewGone, 0.85)),
        Row(Cause.CrewEaten, "Frogs ate the springtails", 3, (CrewGone, 0.9)),
        Row(Cause.NoCover, "Too little cover", 3, (FrogsHide, 0.88)),
        Row(Cause.Bullying, "Frogs bully each other", 2, (FrogsHide, 0.6), (FrogsThin, 0.5), (FrogDied, 0.2)),
        Row(Cause.NewAnimals, "New animals settling in", 4, (FrogsHide, 0.9)),
        Row(Cause.OpenMesh, "Vent mesh lets flies out", 3, (FliesOut, 0.9)),
        Row(Cause.DoorGap, "Gap at the doors or the lid", 3, (FliesOut, 0.85), (DriesOut, 0.1)),
        Row(Cause.BarrierGap, "Gap at the barrier or around the drain", 2, (FrogsUnderBarrier, 0.92)),
        Row(
            Cause.Illness,
            "Illness: ask a vet",
            1.5,
            (FrogDied, 0.6),
            (FrogsThin, 0.45),
            (FrogsHide, 0.3),
            (FrogsInWater, 0.25)
        ),
        Row(Cause.SomethingElse, "Something that is not in this list", 2),
    ];

    private static readonly ImmutableDictionary<Cause, CauseRow> ByCause = Rows.ToImmutableDictionary(r =>
        r.Cause
    );

    /// <summary>The row of a cause.</summary>
    public static CauseRow RowOf(Cause cause) => ByCause[cause];

    /// <summary>Causes that put water where it does not belong.</summary>
    public static readonly ImmutableArray<Cause> Wet =
    [
        Cause.OverMisting,
        Cause.VentsShut,
        Cause.NotDrained,
        Cause.ThinDrainage,
        Cause.WaterComesIn,
    ];

    private static CauseRow Row(
        Cause cause,
        string title,
        double weight,
        params ReadOnlySpan<(Symptom Symptom, double Share)> shows
    )
    {
        var all = ImmutableDictionary.CreateBuilder<Symptom, double>();
        foreach (var (symptom, share) in shows)
        {
            all[symptom] = share;
        }

        return new CauseRow(cause, title, weight, all.ToImmutable());
    }
}
