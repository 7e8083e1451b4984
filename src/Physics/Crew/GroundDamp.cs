namespace Litterfall.Physics.Crew;

/// <summary>What the damp of the ground does to the crew.</summary>
public static class GroundDamp
{
    private const double LaysFully = 2.0;
    private const double LaysNoMore = 15.0;
    private const double GrowsFully = 10.0;
    private const double GrowsNoMore = 100.0;

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

    private static double Share(double kilopascals, double full, double none)
    {
        double suction = Math.Max(-kilopascals, 1e-9);
        return Math.Clamp(Math.Log(none / suction) / Math.Log(none / full), 0.0, 1.0);
    }
}
