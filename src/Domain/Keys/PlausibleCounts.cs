namespace Litterfall.Domain.Keys;

/// <summary>
/// How many of a kind one box takes at most, so that every check ends in seconds. Own choices, well above
/// what small makers build.
/// </summary>
public static class PlausibleCounts
{
    /// <summary>Most lamps over one box.</summary>
    public const int Lamps = 16;

    /// <summary>Most openings for air.</summary>
    public const int Vents = 40;

    /// <summary>Most times of misting or fogging a day.</summary>
    public const int Mistings = 96;

    /// <summary>Most lines of plants.</summary>
    public const int PlantLines = 120;

    /// <summary>Most lamps times lines of plants: the light of each lamp is followed to each plant.</summary>
    public const int LampsTimesPlants = 600;

    /// <summary>The same for the schema.</summary>
    public const string LampsTimesPlantsWords = "600";

    /// <summary>Most pieces of wood and stone.</summary>
    public const int Pieces = 60;

    /// <summary>Most basins of water.</summary>
    public const int Basins = 6;

    /// <summary>Most shelves inside.</summary>
    public const int Shelves = 8;

    /// <summary>Most accepted findings.</summary>
    public const int Acceptances = 200;

    /// <summary>Most steps of the soil.</summary>
    public const int Steps = 12;

    /// <summary>Most lines of notes.</summary>
    public const int Notes = 40;

    /// <summary>Most photos.</summary>
    public const int Photos = 24;
}
