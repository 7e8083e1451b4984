using Litterfall.Domain.Figures;

namespace Litterfall.Domain.Catalog.Entries;

/// <summary>A frog, gecko or other animal the box is built for.</summary>
public sealed record AnimalEntry : CatalogEntry
{
    /// <inheritdoc/>
    public override EntryKind Kind => EntryKind.Animal;

    /// <summary>frog, toad, gecko, snake or what else it is.</summary>
    public CatalogText? Taxon => Text("taxon");

    /// <summary>Color of its back, then of its marks, as it is drawn.</summary>
    public CatalogText? Color => Text("color");

    /// <summary>Shortest adult, m.</summary>
    public Figure? ShortestAdult => Number("adultLengthLow");

    /// <summary>Longest adult, m.</summary>
    public Figure? LongestAdult => Number("adultLengthHigh");

    /// <summary>Longest on record, m.</summary>
    public Figure? LongestOnRecord => Number("lengthMax");

    /// <summary>Mass of an adult, kg.</summary>
    public Figure? Mass => Number("mass");

    /// <summary>Coolest it should be by day, K.</summary>
    public Figure? CoolestDay => Number("dayLow");

    /// <summary>Warmest it should be by day, K.</summary>
    public Figure? WarmestDay => Number("dayHigh");

    /// <summary>Coolest it should be at night, K.</summary>
    public Figure? CoolestNight => Number("nightLow");

    /// <summary>Warmest it should be at night, K.</summary>
    public Figure? WarmestNight => Number("nightHigh");

    /// <summary>Least daily mean of the relative humidity.</summary>
    public Figure? LeastHumidity => Number("humidityLow");

    /// <summary>Largest daily mean of the relative humidity.</summary>
    public Figure? LargestHumidity => Number("humidityHigh");

    /// <summary>Length of the smallest box, m.</summary>
    public Figure? SmallestBoxLength => Number("minTankLength");

    /// <summary>Depth of the smallest box, m.</summary>
    public Figure? SmallestBoxDepth => Number("minTankDepth");

    /// <summary>Height of the smallest box, m.</summary>
    public Figure? SmallestBoxHeight => Number("minTankHeight");

    /// <summary>Animals in the smallest box.</summary>
    public Figure? SmallestBoxCount => Number("minTankCount");

    /// <summary>How it is kept together, in words.</summary>
    public CatalogText? Group => Text("group");

    /// <summary>Most animals of one box however large.</summary>
    public Figure? LargestGroup => Number("groupMost");

    /// <summary>The form of its group: a single animal, a pair, one male with females.</summary>
    public CatalogText? GroupForm => Text("groupForm");

    /// <summary>Where it lives: on the ground, climbing, in water.</summary>
    public CatalogText? Habit => Text("habit");

    /// <summary>What it eats.</summary>
    public CatalogText? Food => Text("food");

    /// <summary>Body temperature it chooses where it can choose, K.</summary>
    public Figure? Preferred => Number("preferred");

    /// <summary>Critical thermal maximum, K.</summary>
    public Figure? CriticalMaximum => Number("ctMax");

    /// <summary>Critical thermal minimum, K.</summary>
    public Figure? CriticalMinimum => Number("ctMin");

    /// <summary>Warmth above which it suffers, K.</summary>
    public Figure? AvoidAbove => Number("avoidAbove");

    /// <summary>Cold below which it suffers, K.</summary>
    public Figure? AvoidBelow => Number("avoidBelow");

    /// <summary>Its appendix of the convention on trade in endangered species: I, II, III or none.</summary>
    public CatalogText? Cites => Text("cites");

    /// <summary>Class of temperature it travels in.</summary>
    public CatalogText? TransportClass => Text("transportClass");

    /// <summary>What its skin or bite does to people.</summary>
    public CatalogText? Toxin => Text("toxinNote");

    /// <summary>Eggs of one clutch.</summary>
    public Figure? Clutch => Number("clutch");

    /// <summary>Time from laying to hatching, s.</summary>
    public Figure? EggTime => Number("eggDays");

    /// <summary>Time from hatching to land, s.</summary>
    public Figure? TadpoleTime => Number("tadpoleDays");

    /// <summary>Share of tadpoles that reach land.</summary>
    public Figure? TadpoleSurvival => Number("tadpoleSurvival");

    /// <summary>Age it reaches, s.</summary>
    public Figure? Longevity => Number("longevity");

    /// <summary>Age at its first breeding, s.</summary>
    public Figure? Maturity => Number("maturity");

    /// <summary>Cups of water a pair needs.</summary>
    public Figure? WaterCupsPerPair => Number("waterCupsPerPair");

    /// <summary>Share of the floor that should be water.</summary>
    public Figure? WaterShare => Number("waterShare");

    /// <summary>Depth of soil over its body length.</summary>
    public Figure? SoilDepthShare => Number("soilDepthShare");
}
