namespace Litterfall.Physics.Crew;

/// <summary>What a day does to a population; all are shares of the day, 0 to 1.</summary>
public readonly record struct CrewDay()
{
    /// <summary>Factor of what is laid: damp, air, crowding.</summary>
    public double Laying { get; init; } = 1.0;

    /// <summary>
    /// Factor of development: at 0 the young pause, and none of them dies of growing up.
    /// </summary>
    public double Growth { get; init; } = 1.0;

    /// <summary>
    /// Share of the juveniles taken at the end of the day, those hatched that day included.
    /// </summary>
    public double JuvenilesTaken { get; init; }

    /// <summary>Share of the adults taken at the end of the day.</summary>
    public double AdultsTaken { get; init; }

    /// <summary>Share of the eggs that drown.</summary>
    public double EggsDrowned { get; init; }

    /// <summary>Share of the hatched animals that drown.</summary>
    public double AnimalsDrowned { get; init; }
}
