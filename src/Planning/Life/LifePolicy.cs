namespace Litterfall.Planning.Life;

/// <summary>
/// Our own choices for the life of the floor, each with its reason; SI unless the name says otherwise.
/// </summary>
internal static class LifePolicy
{
    /// <summary>Days run for answers: five years of a tank.</summary>
    public const int Days = 5 * 365;

    /// <summary>Days within which a crew must settle.</summary>
    public const int ReadyDays = 300;

    /// <summary>Isopods that a floor bears by space, 1/m²: ten times the field densities read.</summary>
    public const double IsopodsPerSquareMeter = 1500.0;

    /// <summary>
    /// Near its plateau a crew bears half of what it bears while it grows (recalled habit of cultures).
    /// </summary>
    public const double HalfBearable = 0.5;

    /// <summary>
    /// Where nobody eats of it, a crew is ready when it has bred to so many times what was seeded.
    /// </summary>
    public const double Bred = 3.0;

    /// <summary>Share of its largest number at which a crew counts as settled.</summary>
    public const double Settled = 0.9;

    /// <summary>
    /// Share of its food that a small frog would take from springtails: falls with its mass, and with 6 g
    /// hardly any.
    /// </summary>
    public const double CrewShareAtNothing = 0.7;

    public const double CrewSharePerGram = 0.12;

    public const double MostCrewShare = 0.6;

    /// <summary>Activity of adults.</summary>
    public const double Activity = 1.5;

    /// <summary>Carbon of dry leaves.</summary>
    public const double Carbon = 0.45;

    /// <summary>
    /// New leaves and roots of a planted floor, g/(m² d) of dry mass, and nitrogen in them (recalled).
    /// </summary>
    public const double GrowthGrams = 200.0 / 365.0;

    public const double PlantNitrogen = 0.025;

    /// <summary>Depth at which leaves no longer cover, m.</summary>
    public const double CoverMeters = 0.02;

    /// <summary>Springtails for each square meter below which a crew counts as eaten up.</summary>
    public const double LeastSpringtails = 200.0;

    /// <summary>Nitrogen that forest litterfall carries, g/(m² y) (recalled: 100 kg/ha).</summary>
    public const double MostNitrogen = 10.0;

    /// <summary>Ground where nothing is computed: 22 °C, damp.</summary>
    public const double UsualCelsius = 22.0;

    public const double UsualKilopascals = -4.0;

    public const double UsualSaturation = 0.5;

    /// <summary>Suction of one meter of water head, kPa/m: water of 1000 kg/m³ under standard gravity.</summary>
    public const double KilopascalsPerMeter = 9.80665;
}
