using Litterfall.Domain.Figures;

namespace Litterfall.Domain.Catalog.Entries;

/// <summary>A springtail or isopod of the clean-up crew.</summary>
public sealed record CrewEntry : CatalogEntry
{
    private const string CulturePlateauKey = "culturePlateau";

    /// <inheritdoc/>
    public override EntryKind Kind => EntryKind.Crew;

    /// <summary>springtail or isopod.</summary>
    public CatalogText? Taxon => Text("taxon");

    /// <summary>Length of an adult, m.</summary>
    public Figure? AdultLength => Number("adultLength");

    /// <summary>Fresh mass of an adult, kg.</summary>
    public Figure? FreshMass => Number("freshMass");

    /// <summary>Dry mass of an adult, kg.</summary>
    public Figure? DryMass => Number("dryMass");

    /// <summary>Mean dry mass of the animals that walk, kg.</summary>
    public Figure? MeanMobileDryMass => Number("meanMobileDryMass");

    /// <summary>Mean fresh mass, kg.</summary>
    public Figure? MeanFreshMass => Number("meanFreshMass");

    /// <summary>Temperature below which nothing develops, K.</summary>
    public Figure? DevelopmentZero => Number("T0");

    /// <summary>Warmth from egg to hatching, K·s.</summary>
    public Figure? WarmthToHatching => Number("KE");

    /// <summary>Warmth from hatching to the first eggs, K·s.</summary>
    public Figure? WarmthToFirstEggs => Number("KJ");

    /// <summary>Warmth from birth to the first brood, K·s.</summary>
    public Figure? WarmthToFirstBrood => Number("KI");

    /// <summary>Warmth the young take to leave the pouch, K·s.</summary>
    public Figure? WarmthOfYoung => Number("KM");

    /// <summary>Warmth between broods, K·s.</summary>
    public Figure? WarmthBetweenBroods => Number("KB");

    /// <summary>Eggs of a life at 15 °C.</summary>
    public Figure? EggsPerLifeAt15 => Number("eggsPerLifeAt15C");

    /// <summary>Eggs of a life at 21 °C.</summary>
    public Figure? EggsPerLifeAt21 => Number("eggsPerLifeAt21C");

    /// <summary>Eggs of a life at 27 °C.</summary>
    public Figure? EggsPerLifeAt27 => Number("eggsPerLifeAt27C");

    /// <summary>Life of an adult at 15 °C, s.</summary>
    public Figure? AdultLifeAt15 => Number("adultLifeAt15C");

    /// <summary>Life of an adult at 24 °C, s.</summary>
    public Figure? AdultLifeAt24 => Number("adultLifeAt24C");

    /// <summary>Life of an adult, s.</summary>
    public Figure? AdultLife => Number("adultLife");

    /// <summary>Eggs of an adult over time, 1/s.</summary>
    public Figure? EggRate => Number("eggsPerDay");

    /// <summary>Share of eggs that hatch.</summary>
    public Figure? Hatch => Number("hatch");

    /// <summary>Share of the hatched that become adult.</summary>
    public Figure? Survival => Number("survival");

    /// <summary>Share of females.</summary>
    public Figure? FemaleShare => Number("femaleFraction");

    /// <summary>Warmest at which eggs hatch as well as ever, K.</summary>
    public Figure? HatchBestTo => Number("hatchBestTo");

    /// <summary>Warmth at which no egg hatches, K.</summary>
    public Figure? HatchStopsAt => Number("hatchStopsAt");

    /// <summary>Coolest it thrives at, K.</summary>
    public Figure? CoolestIdeal => Number("idealLow");

    /// <summary>Warmest it thrives at, K.</summary>
    public Figure? WarmestIdeal => Number("idealHigh");

    /// <summary>Warmth that kills it, K.</summary>
    public Figure? HeatLimit => Number("heatLimit");

    /// <summary>Life of an adult above the warmth that kills it, s.</summary>
    public Figure? AdultLifeInHeat => Number("adultLifeInHeat");

    /// <summary>From here on nothing that it lays grows up, K.</summary>
    public Figure? BreedingEndsAt => BreedsTo ?? HatchStopsAt ?? GrowthZeroAt;

    /// <summary>Coolest warmth at which it breeds, K.</summary>
    public Figure? BreedsFrom => Number("breedsFrom");

    /// <summary>Warmest at which it breeds, K.</summary>
    public Figure? BreedsTo => Number("breedsTo");

    /// <summary>From here on it lays the fewer eggs the warmer it is, K.</summary>
    public Figure? BreedsLessFrom => Number("breedsLessFrom");

    /// <summary>Warmth from which growth slows, K.</summary>
    public Figure? GrowthFallsFrom => Number("growthFallsFrom");

    /// <summary>Warmth at which growth ends, K.</summary>
    public Figure? GrowthZeroAt => Number("growthZeroAt");

    /// <summary>Water potential at which breeding ends, Pa.</summary>
    public Figure? BreedingStopsAt => Number("breedingStopsAt");

    /// <summary>Water potential at which it stops moving, Pa.</summary>
    public Figure? ActivityStopsAt => Number("activityStopsAt");

    /// <summary>Water potential down to which it breeds as well as ever, Pa.</summary>
    public Figure? BreedingFullTo => Number("breedingFullTo");

    /// <summary>Water potential down to which it grows as well as ever, Pa.</summary>
    public Figure? GrowthFullTo => Number("growthFullTo");

    /// <summary>Class of temperature it travels in.</summary>
    public CatalogText? TransportClass => Text("transportClass");

    /// <summary>Dry food eaten over its dry mass and time, 1/s.</summary>
    public Figure? Ingestion => Number("ingestion");

    /// <summary>Share of the food it keeps.</summary>
    public Figure? Assimilation => Number("assimilation");

    /// <summary>Animals to start with over the floor, 1/m².</summary>
    public Figure? SeedDensity => Number("seedDensity");

    /// <summary>Animals that walk in a culture of 1 L, half of it substrate, at their most.</summary>
    public Figure? CulturePlateau => Number(CulturePlateauKey);

    /// <summary>Fewest and most it is told to be.</summary>
    public (Figure Low, Figure High)? CulturePlateauBand => Band(CulturePlateauKey);

    /// <summary>What the law of some places asks of its keeper.</summary>
    public CatalogText? LegalNote => Text("legalNote");

    /// <summary>Young of one brood.</summary>
    public Figure? Brood => Number("brood");

    /// <summary>Share of the born that outlive their first days.</summary>
    public Figure? BirthSurvival => Number("birthSurvival");

    /// <summary>Dry litter eaten over its fresh mass and time, 1/s.</summary>
    public Figure? LitterRate => Number("litterRate");

    /// <summary>Least relative humidity it lives in.</summary>
    public Figure? LeastHumidity => Number("humidityLow");
}
