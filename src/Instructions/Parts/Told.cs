using Litterfall.Domain.Figures;
using Litterfall.Judging.Rules;
using Litterfall.Quantities.Equipping;
using static Litterfall.Domain.Figures.Citation;
using static Litterfall.Judging.Rules.PracticeNumber;

namespace Litterfall.Instructions.Parts;

/// <summary>Numbers that steps, care sheets and cautions tell; nothing is computed with them.</summary>
internal static class Told
{
    private const string Keepers = "keeper-practice";

    /// <summary>Mold after planting.</summary>
    public static readonly PracticeNumber Mold = new(
        4,
        6,
        "weeks",
        Recalled(Keepers, "mold bloom on new wood and leaves for the first 4 to 6 weeks")
    );

    /// <summary>Settling of fresh mix.</summary>
    public static readonly PracticeNumber Settling = new(
        4,
        8,
        "weeks",
        Habit("fresh mix settles for 4 to 8 weeks")
    );

    /// <summary>Most by which an edge misses the size a box is sold by.</summary>
    public static readonly PracticeNumber SizeByName = One(
        7,
        "mm",
        Habit("boxes sold by name differ by up to 7 mm an edge")
    );

    /// <summary>Time of a leak test, and of plants in air after the dip.</summary>
    public static readonly PracticeNumber Day = One(24, "hours", Habit("a day and a night"));

    /// <summary>Lines of silicone under a panel.</summary>
    public static readonly PracticeNumber GlueLines = One(5, "cm", Habit("lines of silicone 5 cm apart"));

    /// <summary>Feet of a raised floor.</summary>
    public static readonly PracticeNumber Feet = One(
        EquipmentPolicy.FeetSpan.Value,
        "cm",
        EquipmentPolicy.FeetSpan.Origin
    );

    /// <summary>Spots of silicone along a barrier.</summary>
    public static readonly PracticeNumber Spots = One(
        10,
        "cm",
        Habit("silicone spots every 10 cm, no gap over 2 mm")
    );

    /// <summary>Soaking of dry peat and moss.</summary>
    public static readonly PracticeNumber Soak = new(
        30,
        60,
        "minutes",
        Habit("dry peat and moss are wetted 30 to 60 min in warm water or overnight")
    );

    /// <summary>Strength of bleach as it is sold.</summary>
    public static readonly PracticeNumber BleachSold = new(
        3,
        8,
        "%",
        Recalled(Keepers, "household bleach holds 3 to 8.25 %")
    );

    /// <summary>Days without food after which adults are seen by a veterinarian.</summary>
    public static readonly PracticeNumber Unfed = One(
        5,
        "days",
        Recalled(Keepers, "signs that need a veterinarian")
    );

    /// <summary>The same of froglets.</summary>
    public static readonly PracticeNumber UnfedFroglet = One(2, "days", Unfed.Origin);

    /// <summary>Mesh that holds feeder flies.</summary>
    public static readonly PracticeNumber FlyMesh = One(
        0.5,
        "mm",
        Recalled(Keepers, "apertures that hold fruit flies and springtails")
    );

    /// <summary>The same with care.</summary>
    public static readonly PracticeNumber FinerFlyMesh = One(0.3, "mm", FlyMesh.Origin);

    /// <summary>Opening that springtails pass.</summary>
    public static readonly PracticeNumber SpringtailMesh = One(0.2, "mm", FlyMesh.Origin);

    /// <summary>Dust of silica in the air of a workplace.</summary>
    public static readonly PracticeNumber Silica = One(
        0.05,
        "mg/m³",
        Recalled(Keepers, "dust of growing media and aggregates; silica limit 0.05 mg/m3, 8 h")
    );

    /// <summary>Time over which that limit is averaged.</summary>
    public static readonly PracticeNumber SilicaShift = One(8, "hours", Silica.Origin);

    /// <summary>Dissolved solids in misting water.</summary>
    public static readonly PracticeNumber MistSolids = One(
        50,
        "mg/L",
        Recalled(Keepers, "misting water below 50 mg/L, standing 24 to 48 h removes chlorine only")
    );

    /// <summary>Time without an unexplained death before a release from quarantine.</summary>
    public static readonly PracticeNumber NoDeath = One(
        30,
        "days",
        Recalled(Keepers, "zoo guides for amphibians, release from quarantine")
    );

    private static readonly Citation Feeding = Recalled(
        Keepers,
        "feeding and supplement calendar of zoos and keepers for small frogs"
    );

    /// <summary>Feeding days a week of froglets.</summary>
    public static readonly PracticeNumber FrogletDays = One(7, "", Feeding);

    /// <summary>Feeding days a week of adults.</summary>
    public static readonly PracticeNumber AdultDays = new(5, 6, "", Feeding);

    /// <summary>Feeding days a week of breeding animals.</summary>
    public static readonly PracticeNumber BreedingDays = new(6, 7, "", Feeding);

    /// <summary>Age up to which a frog counts as a froglet for its powders.</summary>
    public static readonly PracticeNumber FrogletAge = One(6, "months", Feeding);

    /// <summary>Time between vitamins of breeding females.</summary>
    public static readonly PracticeNumber BreedingVitamins = One(10, "days", Feeding);

    /// <summary>Time in which dusted food is eaten.</summary>
    public static readonly PracticeNumber DustEaten = One(30, "minutes", Feeding);

    /// <summary>Margin of mesh round an opening.</summary>
    public static readonly PracticeNumber MeshMargin = One(
        25,
        "mm",
        Habit("vent mesh laps 25 mm over every side")
    );

    /// <summary>What one can of foam gives.</summary>
    public static readonly PracticeNumber FoamCan = new(15, 40, "L", Habit("cans of foam give 15 to 40 L"));

    /// <summary>Level to which a reservoir is drawn down.</summary>
    public static readonly PracticeNumber DrawnDown = One(
        1,
        "cm",
        Habit("a siphon leaves about 1 cm in the layer")
    );
}
