using Litterfall.Domain.Figures;
using static Litterfall.Domain.Figures.Citation;

namespace Litterfall.Judging.Rules;

/// <summary>Advice in numbers that findings and instructions share.</summary>
public static class Practice
{
    private const string Keepers = "keeper-practice";

    /// <summary>Time between trims of plants.</summary>
    public static readonly PracticeNumber Trims = new(
        4,
        8,
        "weeks",
        Habit("every 4 to 8 weeks, never more than a third of a plant at once")
    );

    /// <summary>Plants kept apart before they go in.</summary>
    public static readonly PracticeNumber PlantsApart = new(
        30,
        60,
        "days",
        Recalled(Keepers, "30 to 60 d for nursery plants, with checks for snails and slugs")
    );

    /// <summary>Animals from the wild kept apart.</summary>
    public static readonly PracticeNumber WildApart = PracticeNumber.One(
        90,
        "days",
        Recalled(Keepers, "zoo guides for amphibians, 90 days for animals of unknown source and for breeders")
    );

    /// <summary>Bleach dip of hardy plants.</summary>
    public static readonly PracticeNumber HardyDip = new(
        5,
        10,
        "minutes",
        Recalled(Keepers, "bleach dip of plants, times by softness of the leaf")
    );

    /// <summary>Bleach dip of soft plants.</summary>
    public static readonly PracticeNumber SoftDip = new(
        1,
        3,
        "minutes",
        Recalled(Keepers, "bleach dip of plants, times by softness of the leaf")
    );

    /// <summary>Openings of a barrier mesh.</summary>
    public static readonly PracticeNumber Barrier = new(
        1.0,
        1.5,
        "mm",
        Habit("a mesh of 1.0 to 1.5 mm keeps the soil out of the drainage layer")
    );

    /// <summary>Depth of loose leaves.</summary>
    public static readonly PracticeNumber Leaves = new(
        2,
        5,
        "cm",
        Habit("2 to 5 cm of loose litter, topped up so that 2 cm are left")
    );

    /// <summary>Boiling of leaves.</summary>
    public static readonly PracticeNumber BoiledLeaves = PracticeNumber.One(
        10,
        "minutes",
        Habit("leaves are boiled or baked before use")
    );

    /// <summary>Baking of leaves.</summary>
    public static readonly PracticeNumber BakedLeaves = PracticeNumber.One(
        45,
        "minutes",
        Habit("leaves are boiled or baked before use")
    );

    /// <summary>Warmth of the oven.</summary>
    public static readonly PracticeNumber Oven = PracticeNumber.One(
        93,
        "C",
        Habit("leaves are boiled or baked before use")
    );

    /// <summary>Boiling of wood.</summary>
    public static readonly PracticeNumber BoiledWood = new(
        30,
        60,
        "minutes",
        Habit("wood is boiled, baked or steamed before use")
    );

    /// <summary>How leaves are cleaned where the library does not say it.</summary>
    public static string CleanLeaves => $"Boil {BoiledLeaves} or bake {BakedLeaves} at {Oven}";
}
