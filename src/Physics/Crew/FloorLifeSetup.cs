using System.Collections.Immutable;

namespace Litterfall.Physics.Crew;

/// <summary>The ground of one day, at the depth where the crew lives.</summary>
/// <param name="Celsius">Mean temperature, °C.</param>
/// <param name="Kilopascals">Matric potential, kPa; 0 or less.</param>
/// <param name="Saturation">Share of the pores full of water, 0 to 1.</param>
/// <param name="Air">Air-filled porosity, m³/m³.</param>
public readonly record struct GroundDay(double Celsius, double Kilopascals, double Saturation, double Air);

/// <summary>What one crew animal weighs, holds and eats.</summary>
/// <param name="AdultMilligrams">Fresh mass of an adult, mg.</param>
/// <param name="YoungMilligrams">Mean fresh mass of a juvenile, mg.</param>
/// <param name="JoulesPerMilligram">Energy in its fresh mass, J/mg.</param>
/// <param name="Exposed">Share of them that hunting animals can meet, 0 to 1.</param>
/// <param name="Droppings">
/// Dry droppings of animals it eats, mg for each mg of its fresh mass and day.
/// </param>
public sealed record CrewBody(
    double AdultMilligrams,
    double YoungMilligrams,
    double JoulesPerMilligram,
    double Exposed,
    double Droppings
);

/// <summary>A crew animal with its start.</summary>
/// <param name="Species">Its rates.</param>
/// <param name="Body">Its body.</param>
/// <param name="Count">Mobile animals seeded, as adults.</param>
/// <param name="MostPerSquareMeter">What space alone bears, 1/m²; infinite where food limits it.</param>
public sealed record CrewStock(CrewSpecies Species, CrewBody Body, double Count, double MostPerSquareMeter);

/// <summary>Animals that eat of the crew.</summary>
/// <param name="Count">How many.</param>
/// <param name="Grams">Mass of each, g.</param>
/// <param name="Activity">1.5 for adults.</param>
/// <param name="CrewShare">Share of its food that it would take from the crew, 0 to 1.</param>
public sealed record CrewEater(double Count, double Grams, double Activity, double CrewShare);

/// <summary>Springtails added again and again, shared among their kinds as these were seeded.</summary>
/// <param name="From">First day.</param>
/// <param name="Every">Days between.</param>
/// <param name="Count">Animals each time, as adults.</param>
public sealed record CrewReseed(int From, int Every, double Count);

/// <summary>A floor and what lives on it.</summary>
public sealed record FloorLifeSetup
{
    /// <summary>Floor, m².</summary>
    public required double SquareMeters { get; init; }

    /// <summary>The crew.</summary>
    public required ImmutableArray<CrewStock> Crew { get; init; }

    /// <summary>Dry leaf litter at the start, g.</summary>
    public required double LitterGrams { get; init; }

    /// <summary>Its decay constant at 24 °C, 1/y.</summary>
    public required double DecayPerYear { get; init; }

    /// <summary>Nitrogen of the litter, share of its dry mass.</summary>
    public required double LitterNitrogen { get; init; }

    /// <summary>Days after which litter is brought back to its start, again and again; 0 for never.</summary>
    public int TopUpEvery { get; init; }

    /// <summary>Who eats of the crew.</summary>
    public ImmutableArray<CrewEater> Eaters { get; init; } = [];

    /// <summary>Day they move in; never where negative.</summary>
    public int EatersFrom { get; init; } = -1;

    /// <summary>Adult springtails added again and again; null for never.</summary>
    public CrewReseed? Reseed { get; init; }

    /// <summary>Nitrogen that plants can take up, g/d.</summary>
    public required double PlantGramsPerDay { get; init; }

    /// <summary>What the run rests on besides.</summary>
    public FloorLifeRates Rates { get; init; } = FloorLifeRates.Usual;
}

/// <summary>The floor at the end of a day.</summary>
/// <param name="Mobile">Hatched animals of each stock.</param>
/// <param name="LitterGrams">Dry litter, g.</param>
/// <param name="MineralGrams">Nitrogen free in the ground, g.</param>
public readonly record struct FloorLifeDay(
    ImmutableArray<double> Mobile,
    double LitterGrams,
    double MineralGrams
)
{
    /// <summary>Springtails eaten that day.</summary>
    public double EatenPerDay { get; init; }

    /// <summary>Springtails that could be eaten that day without end.</summary>
    public double BearablePerDay { get; init; }

    /// <summary>Energy of these, J.</summary>
    public double BearableJoules { get; init; }

    /// <summary>Small flies all eaters need besides.</summary>
    public double FliesPerDay { get; init; }

    /// <summary>Dry droppings of the eaters that lie there, g.</summary>
    public double DroppingsGrams { get; init; }

    /// <summary>Dry droppings that fall, g/d.</summary>
    public double DroppingsPerDay { get; init; }

    /// <summary>Dry droppings that the crew could eat, g/d.</summary>
    public double DroppingsEatable { get; init; }
}

/// <summary>Masses that went through a floor, g; each misses by rounding alone.</summary>
/// <param name="LitterMiss">Litter at the start and laid on, less what is left and gone.</param>
/// <param name="NitrogenMiss">
/// Nitrogen in litter, ground and plants at the end, less at the start and brought in.
/// </param>
/// <param name="NitrogenFromFood">Brought in with the food of the animals.</param>
/// <param name="NitrogenToPlants">Taken up by plants.</param>
/// <param name="LitterGone">Dry litter gone.</param>
/// <param name="LitterLaidOn">Dry litter laid on.</param>
/// <param name="DroppingsMiss">Droppings fallen, less what is eaten, rotted and left.</param>
public sealed record FloorLifeLedger(
    double LitterMiss,
    double NitrogenMiss,
    double NitrogenFromFood,
    double NitrogenToPlants,
    double LitterGone,
    double LitterLaidOn,
    double DroppingsMiss
);
