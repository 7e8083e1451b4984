namespace Litterfall.Physics.Crew;

/// <summary>What the damp of the ground does to the crew.</summary>
public static class GroundDamp
{
    private const double LaysFully = 2.0;
    private const double LaysNoMore = 15.0;
    private const double GrowsFully = 10.0;
    private const double GrowsNoMore = 100.0;
    private const double LeastAir = 0.10;
    private const double EggsDrownPerDay = 0.5;
    private const double AnimalsDrownPerDay = 0.1;

    /// <summary>
    /// Share of the eggs a springtail lays: none from −15 kPa (Wang, Slotsbo and Holmstrup 2022, abstract),
    /// all to −2 kPa
    /// (recalled), by the logarithm between.
    /// </summary>
    /// <param name="kilopascals">Matric potential, kPa; 0 or less.</param>
    public static double Laying(double kilopascals) => Share(kilopascals, LaysFully, LaysNoMore);

    /// <summary>
    /// Share of their growth: none from −100 kPa (the same abstract), all to −10 kPa (recalled).
    /// </summary>
    /// <param name="kilopascals">Matric potential, kPa; 0 or less.</param>
    public static double Growth(double kilopascals) => Share(kilopascals, GrowsFully, GrowsNoMore);

    /// <summary>
    /// Share of the eggs laid where pores hold little air: all from a tenth of the volume on, none without
    /// (recalled: below about 10 % breeding stops).
    /// </summary>
    /// <param name="air">Air-filled porosity, m³/m³.</param>
    public static double Airy(double air) => Math.Clamp(air / LeastAir, 0.0, 1.0);

    /// <summary>
    /// Eggs and animals that drown in a day: half the eggs where no pore holds air, for eggs drown; a tenth
    /// of the animals, which float and live for days (both recalled as words, the numbers own choices), by
    /// the missing share of <see cref="Airy"/>.
    /// </summary>
    /// <param name="air">Air-filled porosity, m³/m³.</param>
    /// <returns>Shares of a day, 0 to 1.</returns>
    public static (double Eggs, double Animals) Drown(double air)
    {
        double lacks = 1.0 - Airy(air);
        return (EggsDrownPerDay * lacks, AnimalsDrownPerDay * lacks);
    }

    private static double Share(double kilopascals, double full, double none)
    {
        double suction = Math.Max(-kilopascals, 1e-9);
        return Math.Clamp(Math.Log(none / suction) / Math.Log(none / full), 0.0, 1.0);
    }
}
