using Litterfall.Domain;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;

namespace Litterfall.Instructions.Care;

/// <summary>
/// Fixed intervals of build and care, in days. They stand until dates are computed from water, litter and
/// crew; sources and reach are in docs/models/care-dates.md.
/// </summary>
public static class CareIntervals
{
    /// <summary>Lead of the crew cultures before planting.</summary>
    public static readonly Figure Cultures = Days(
        "lead of the crew cultures before planting",
        56,
        "springtail cultures are started 8 weeks before they are seeded"
    );

    /// <summary>Quarantine of new plants.</summary>
    public static readonly Figure PlantQuarantine = Given(
        "plant quarantine",
        30,
        "recalled: plants are kept apart 30 to 60 days; trade habit 4 to 8 weeks"
    );

    /// <summary>Grow-in before a planted tank is handed over.</summary>
    public static readonly Figure GrowIn = Days("grow-in", 42, "grow-in of 6 weeks before delivery");

    /// <summary>Better time for animals.</summary>
    public static readonly Figure BetterAnimals = Days(
        "better time for animals after planting",
        56,
        "8 weeks of grow-in are better"
    );

    /// <summary>Look at the settled depth.</summary>
    public static readonly Figure SettleCheck = Days(
        "check of the settled soil after planting",
        56,
        "fresh mix settles for 4 to 8 weeks"
    );

    /// <summary>Trimming.</summary>
    public static readonly Figure Trim = Days(
        "time between trims",
        56,
        "every 4 to 8 weeks, never more than a third of a plant at once"
    );

    /// <summary>Wiping the front.</summary>
    public static readonly Figure FrontGlass = Days("time between wipes", 7, "front glass weekly");

    /// <summary>Cleaning the lid.</summary>
    public static readonly Figure Lid = Days("time between lid cleanings", 28, "lid monthly");

    /// <summary>Checking the light of a lamp.</summary>
    public static readonly Figure Lamp = Days("time between lamp checks", 364, "lamp output yearly");

    /// <summary>Seeding crew again.</summary>
    public static readonly Figure Reseed = Days(
        "time between crew seedings",
        273,
        "crew again every 6 to 12 months, or when a count trap stays low; 9 months taken"
    );

    /// <summary>First review of the layers.</summary>
    public static readonly Figure LayerReview = Days(
        "first review of the layers",
        728,
        "a layered floor lasts 2 to 5 years; looked at from 2 years on"
    );

    /// <summary>Time between later reviews.</summary>
    public static readonly Figure LaterReview = Days(
        "time between later reviews",
        364,
        "yearly once the floor is 2 years old"
    );

    /// <summary>Share of the life of the leaves after which they are topped up.</summary>
    public static readonly Figure LitterShare = Figure.Choice(
        "share of the life of the leaves before a top-up",
        50,
        Unit.Percent,
        "about half of them are gone then; gives 3 to 6 months for oak and leathery leaves, as keepers do"
    );

    /// <summary>Life of leaves the library does not know.</summary>
    public static readonly Figure LeafLife = Days(
        "life of the leaves",
        228,
        "leaves last 6 to 9 months where their kind is not known, middle taken"
    );

    /// <summary>Least quarantine of new animals.</summary>
    public static readonly Figure LeastQuarantine = Given(
        "least quarantine of animals",
        30,
        "recalled: zoo guides for amphibians, 30 days at least"
    );

    /// <summary>Quarantine of new animals.</summary>
    public static readonly Figure Quarantine = Given(
        "quarantine of animals",
        60,
        "recalled: zoo guides for amphibians, 60 days as a rule"
    );

    /// <summary>Quarantine of wild-caught and farm-bred animals.</summary>
    public static readonly Figure LongQuarantine = Given(
        "quarantine of wild-caught and farm-bred animals",
        90,
        "recalled: zoo guides for amphibians, 90 days for animals of unknown source and for breeders"
    );

    private static readonly Figure WeeklyLevel = Days("time between level readings", 7, "level weekly");

    /// <summary>Time between level readings: as entered, else weekly.</summary>
    public static Figure LevelCheck(CheckedDesign design) =>
        design.Design.Habits?.LevelCheck is { Si: > 0 } typed
            ? design.Figure("habits.levelCheck", "time between level readings", typed, Unit.Day)
            : WeeklyLevel;

    /// <summary>Quarantine of one kind of animal, by its origin.</summary>
    public static Figure Of(Resident resident) =>
        resident.Origin is AnimalOrigin.WildCaught or AnimalOrigin.FarmBred ? LongQuarantine : Quarantine;

    private static Figure Days(string name, double days, string habit) =>
        Figure.Given(name, Unit.Day.ToSiValue(days), Unit.Day, Citation.Habit(habit));

    private static Figure Given(string name, double days, string place) =>
        Figure.Given(
            name,
            Unit.Day.ToSiValue(days),
            Unit.Day,
            new Citation("keeper-practice", place, Provenance.Recalled)
        );
}
