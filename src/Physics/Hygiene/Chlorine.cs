namespace Litterfall.Physics.Hygiene;

/// <summary>
/// Chlorine arithmetic for bleach baths, rinses and dechlorination. Percent NaOCl is weight by volume: 1 % is
/// 10 g/L. Bleach loses strength with age; enter the strength of the label with its date, or a test strip.
/// </summary>
public static class Chlorine
{
    private const double MilligramsPerLiterPerPercent = 10_000.0;

    /// <summary>NaOCl by mass per volume.</summary>
    /// <param name="sodiumHypochloritePercent">NaOCl, % w/v, 0 to 100.</param>
    /// <returns>NaOCl, mg/L.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of range.</exception>
    public static double SodiumHypochloriteMilligramsPerLiter(double sodiumHypochloritePercent)
    {
        ThrowIfNotPercent(sodiumHypochloritePercent, nameof(sodiumHypochloritePercent));
        return sodiumHypochloritePercent * MilligramsPerLiterPerPercent;
    }

    /// <summary>Available chlorine expressed as Cl2: NaOCl × 70.906/74.44, one mole for one mole.</summary>
    /// <param name="sodiumHypochloritePercent">NaOCl, % w/v, 0 to 100.</param>
    /// <returns>Chlorine, mg/L as Cl2.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of range.</exception>
    public static double ChlorineMilligramsPerLiter(double sodiumHypochloritePercent) =>
        SodiumHypochloriteMilligramsPerLiter(sodiumHypochloritePercent)
        * (Constants.ChlorineGramsPerMole / Constants.SodiumHypochloriteGramsPerMole);

    private static void ThrowIfNotPercent(double value, string name)
    {
        if (!(value >= 0.0 && value <= 100.0))
        {
            throw new ArgumentOutOfRangeException(name, value, "Must be 0 to 100 %.");
        }
    }
}
