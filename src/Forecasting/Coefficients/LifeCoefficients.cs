using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;

namespace Litterfall.Forecasting.Coefficients;

/// <summary>What the life of the floor rests on besides its animals and leaves.</summary>
/// <param name="list">Takes them, changed where they are to be.</param>
public sealed class LifeCoefficients(CoefficientList list)
{
    /// <summary>What nobody knows of the crew's rates, as a factor on the young that live to lay.</summary>
    public Coefficient YoungThatLive { get; } =
        list.Add(
            "youngThatLive",
            "factor on the young that live to lay",
            1,
            Unit.One,
            (0.5, 1.2),
            Citation.Choice("field studies find far less, fed cultures nearly all")
        );

    /// <summary>Most young that live to lay.</summary>
    public Coefficient MostSurvival { get; } =
        list.Add(
            "mostSurvival",
            "most young that live to lay",
            98,
            Unit.Percent,
            (85, 99),
            Citation.Choice("some always die")
        );

    /// <summary>Isopods that a floor bears by space.</summary>
    public Coefficient IsopodsBySpace { get; } =
        list.Add(
            "isopodsBySpace",
            "isopods that a floor bears",
            1500,
            Unit.PerSquareMeter,
            (500, 3000),
            Citation.Choice("ten times the field densities read")
        );

    /// <summary>Near its plateau a crew bears so much of what it bears while it grows.</summary>
    public Coefficient HalfBearable { get; } =
        list.Add(
            "halfBearable",
            "share that a crowded crew bears of what a growing one does",
            50,
            Unit.Percent,
            (30, 70),
            Citation.Recalled("keeper-practice", "habit of cultures")
        );

    /// <summary>
    /// Where nobody eats of it, a crew is ready when it has bred to so many times what was seeded.
    /// </summary>
    public Coefficient Bred { get; } =
        list.Add(
            "bred",
            "how often what was seeded a crew must be",
            3,
            Unit.One,
            (2, 5),
            Citation.Choice("where nobody eats of it, a crew is ready then")
        );

    /// <summary>Share of its largest number at which a crew counts as settled.</summary>
    public Coefficient Settled { get; } =
        list.Add(
            "settled",
            "share of its largest number at which a crew counts as settled",
            90,
            Unit.Percent,
            (80, 95),
            Citation.Choice("the rest takes months")
        );

    /// <summary>Share of its food that a frog of no mass would take from springtails.</summary>
    public Coefficient CrewShareAtNothing { get; } =
        list.Add(
            "crewShareAtNothing",
            "share of its food that a tiny frog takes from springtails",
            70,
            Unit.Percent,
            (40, 90),
            Citation.Choice("the smaller the frog the smaller its prey")
        );

    /// <summary>How much that falls with each gram.</summary>
    public Coefficient CrewSharePerGram { get; } =
        list.Add(
            "crewSharePerGram",
            "how much that share falls with each gram",
            12,
            Unit.Percent,
            (8, 16),
            Citation.Choice("with 6 g hardly any")
        );

    /// <summary>Most of its food that a frog takes from springtails.</summary>
    public Coefficient MostCrewShare { get; } =
        list.Add(
            "mostCrewShare",
            "most food from springtails",
            60,
            Unit.Percent,
            (30, 80),
            Citation.Choice("flies are easier to catch")
        );

    /// <summary>Springtails have bred where they are so many times what was seeded.</summary>
    public Coefficient Breeds { get; } =
        list.Add(
            "breeds",
            "how often what was seeded springtails must be to count as breeding",
            1.5,
            Unit.One,
            (1.2, 2),
            Citation.Choice("less is what was seeded itself, before its first young are counted")
        );

    /// <summary>Dry share of a springtail that says none.</summary>
    public Coefficient SpringtailDry { get; } =
        list.Add(
            "springtailDry",
            "dry share of a springtail",
            31,
            Unit.Percent,
            (25, 35),
            Citation.Recalled("petersen-luxton-1982", "a third")
        );

    /// <summary>Mean mobile springtail over an adult.</summary>
    public Coefficient MeanOfAdult { get; } =
        list.Add(
            "meanOfAdult",
            "mean mobile springtail over an adult",
            37.5,
            Unit.Percent,
            (25, 50),
            Citation.Recalled("petersen-luxton-1982", "three eighths")
        );

    /// <summary>Adults among mobile springtails.</summary>
    public Coefficient AdultsAmongMobile { get; } =
        list.Add(
            "adultsAmongMobile",
            "adults among mobile springtails",
            7,
            Unit.Percent,
            (4, 15),
            Citation.Recalled("petersen-luxton-1982", "7 of 100")
        );

    /// <summary>Dry mass of the adult springtail whose energy is known.</summary>
    public Coefficient AdultDry { get; } =
        list.Add(
            "adultDry",
            "dry mass of an adult springtail",
            0.04,
            CoefficientUnits.Milligram,
            (0.03, 0.06),
            Citation.Recalled("petersen-luxton-1982", "0.040 mg")
        );

    /// <summary>Springtails that hunting animals can meet.</summary>
    public Coefficient SpringtailsExposed { get; } =
        list.Add(
            "springtailsExposed",
            "springtails where a frog hunts",
            30,
            Unit.Percent,
            (10, 60),
            Citation.Choice("of ten, three are on leaves")
        );

    /// <summary>Isopods that hunting animals can meet.</summary>
    public Coefficient IsopodsExposed { get; } =
        list.Add(
            "isopodsExposed",
            "isopods where a frog hunts",
            2,
            Unit.Percent,
            (0.5, 10),
            Citation.Choice("dwarf ones dig")
        );

    /// <summary>Fresh mass of a crew animal that says none.</summary>
    public Coefficient IsopodMass { get; } =
        list.Add(
            "isopodMass",
            "fresh mass of a dwarf isopod that says none",
            1.2,
            CoefficientUnits.Milligram,
            (0.8, 2),
            Citation.Recalled("keeper-practice", "dwarf isopods")
        );

    /// <summary>Young isopods over adults.</summary>
    public Coefficient YoungOfAdult { get; } =
        list.Add(
            "youngOfAdult",
            "young isopod over an adult",
            25,
            Unit.Percent,
            (15, 40),
            Citation.Recalled("keeper-practice", "mean of the young")
        );

    /// <summary>Energy in the fresh mass of isopods.</summary>
    public Coefficient IsopodEnergy { get; } =
        list.Add(
            "isopodEnergy",
            "energy of isopods",
            3.9,
            CoefficientUnits.JoulePerMilligram,
            (3, 5),
            Citation.Recalled("keeper-practice", "30 % dry at 13 J/mg, much of it lime")
        );

    /// <summary>Dry food of isopods that say none, of their fresh mass and day.</summary>
    public Coefficient LitterRate { get; } =
        list.Add(
            "litterRate",
            "dry food of isopods, of their mass a day",
            3,
            Unit.Percent,
            (1, 6),
            Citation.Recalled("detritivore-microcosms", "order of consumption")
        );

    /// <summary>Decay of leaves that say none, 1/y at 24 °C.</summary>
    public Coefficient Decay { get; } =
        list.Add(
            "decay",
            "decay of leaves that say none, at 24 °C",
            1,
            CoefficientUnits.PerYear,
            (0.4, 2),
            Citation.Recalled("litter-decay-literature", "slower leaves of warm forests, 1/y")
        );

    /// <summary>Mass of amphibians that say none.</summary>
    public Coefficient FrogMass { get; } =
        list.Add(
            "frogMass",
            "mass of an amphibian that says none",
            2,
            CoefficientUnits.Gram,
            (0.5, 5),
            Citation.Choice("middle of the library's small frogs")
        );

    /// <summary>Activity of adults.</summary>
    public Coefficient Activity { get; } =
        list.Add(
            "activity",
            "spending of an active frog over a resting one",
            1.5,
            Unit.One,
            (1.3, 2.5),
            Citation.Recalled("gatten-1992", "1.5 of adults, 2 growing, 2.5 breeding")
        );

    /// <summary>New leaves and roots of a planted floor, g/(m² y) of dry mass.</summary>
    public Coefficient Growth { get; } =
        list.Add(
            "growth",
            "new leaves and roots of a planted floor, dry, a year",
            200,
            CoefficientUnits.Growth,
            (50, 500),
            Citation.Recalled("litter-decay-literature", "g/(m² y), shaded undergrowth")
        );

    /// <summary>Nitrogen of new leaves and roots.</summary>
    public Coefficient PlantNitrogen { get; } =
        list.Add(
            "plantNitrogen",
            "nitrogen of new leaves and roots",
            2.5,
            Unit.Percent,
            (1.5, 3.5),
            Citation.Recalled("litter-decay-literature", "leaves of undergrowth")
        );

    /// <summary>Depth at which leaves no longer cover.</summary>
    public Coefficient Cover { get; } =
        list.Add(
            "cover",
            "depth below which leaves no longer cover",
            2,
            Unit.Centimeter,
            (1, 3),
            Citation.Habit("2 cm of leaves or more")
        );

    /// <summary>Springtails for each square meter below which a crew counts as eaten up.</summary>
    public Coefficient LeastSpringtails { get; } =
        list.Add(
            "leastSpringtails",
            "springtails below which a crew counts as eaten up",
            200,
            Unit.PerSquareMeter,
            (50, 1000),
            Citation.Choice("too few to clear mold")
        );

    /// <summary>Ground where nothing is computed.</summary>
    public Coefficient GroundWarmth { get; } =
        list.Add(
            "groundWarmth",
            "temperature of a ground that is not computed",
            22,
            Unit.Celsius,
            (18, 26),
            Citation.Choice("a heated room with a lamp")
        );

    /// <summary>Its matric potential.</summary>
    public Coefficient GroundHead { get; } =
        list.Add(
            "groundHead",
            "matric potential of a ground that is not computed",
            -4,
            Unit.Kilopascal,
            (-8, -1),
            Citation.Choice("damp")
        );

    /// <summary>Its pores that are full.</summary>
    public Coefficient GroundFull { get; } =
        list.Add(
            "groundFull",
            "pores full of water in a ground that is not computed",
            50,
            Unit.Percent,
            (30, 80),
            Citation.Choice("damp")
        );

    /// <summary>Air in its pores.</summary>
    public Coefficient GroundAir { get; } =
        list.Add(
            "groundAir",
            "air in the pores of a ground that is not computed",
            30,
            Unit.Percent,
            (5, 50),
            Citation.Choice("damp")
        );
}
