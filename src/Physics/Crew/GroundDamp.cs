namespace Litterfall.Physics.Crew;

/// <summary>What the damp of the ground does to the crew.</summary>
public sealed record GroundDamp
{
    /// <summary>As recalled and read; each method says which.</summary>
    public static readonly GroundDamp Usual = new();

    /// <summary>Suction up to which springtails lay all their eggs, kPa.</summary>
    public double LaysFully { get; init; } = 2.0;

    /// <summary>Suction from which they lay none, kPa.</summary>
    public double LaysNoMore { get; init; } = 15.0;

    /// <summary>Suction up to which they grow fully, kPa.</summary>
    public double GrowsFully { get; init; } = 10.0;

    /// <summary>Suction from which they do not grow, kPa.</summary>
    public double GrowsNoMore { get; init; } = 100.0;

    /// <summary>Air in the pores from which the crew lives unhindered, m³/m³.</summary>
    public double LeastAir { get; init; } = 0.10;

    /// <summary>Share of the eggs that drown in a day without air, 1/d.</summary>
    public double EggsDrownPerDay { get; init; } = 0.5;

    /// <summary>Share of the animals that drown in a day without air, 1/d.</summary>
    public double AnimalsDrownPerDay { get; init; } = 0.1;

    /// <summary>
    /// Share of the eggs a springtail lays: none from −15 kPa (Wang, Slotsbo and Holmstrup 2022, abstract),
    /// all to −2 kPa
    /// (recalled), by the logarithm between.
    /// </summary>
    /// <param name="kilopascals">Matric potential, kPa; 0 or less.</param>
    public double Laying(double kilopascals) => Share(kilopascals, LaysFully, LaysNoMore);

    /// <summary>
    /// Share of their growth: none from −100 kPa (the same abstract), all to −10 kPa (recalled).
    /// </summary>
    /// <param name="kilopascals">Matric potential, kPa; 0 or less.</param>
    public double Growth(double kilopascals) => Share(kilopascals, GrowsFully, GrowsNoMore);

    /// <summary>
    /// Share of the eggs laid where pores hold little air: all from a tenth of the volume on, none without
    /// (recalled: below about 10 % breeding stops).
    /// </summary>
    /// <param name="air">Air-filled porosity, m³/m³.</param>
    public double Airy(double air) => Math.Clamp(air / LeastAir, 0.0, 1.0);

    /// <summary>
    /// Eggs and animals that drown in a day: half the eggs where no pore holds air, for eggs drown; a tenth
    /// of the animals, which float and live for days (both recalled as words, the numbers own choices), by
    /// the missing share of <see cref="Airy"/>.
    /// </summary>
    /// <param name="air">Air-filled porosity, m³/m³.</param>
    /// <returns>Shares of a day, 0 to 1.</returns>
    public (double Eggs, double Animals) Drown(double air)
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
