namespace Litterfall.Physics.Hygiene;

/// <summary>
/// Chlorine arithmetic for bleach baths, rinses and dechlorination. Percent NaOCl is weight by volume: 1 % is
/// 10 g/L. Bleach loses strength with age; enter the strength of the label with its date, or a test strip.
/// </summary>
public static class Chlorine
{
    private const double MilligramsPerLiterPerPercent = 10_000.0;

    // Cl2 + 2 S2O3²⁻ → S4O6²⁻ + 2 Cl⁻: two thiosulfate ions for one Cl2.
    private const double ThiosulfatePerChlorine = 2.0;

    /// <summary>Strength of a bath made from a product by dilution, C1 V1 = C2 V2.</summary>
    /// <param name="productPercent">NaOCl in the product, % w/v, 0 to 100.</param>
    /// <param name="productVolumeShare">Product in the finished bath by volume, 0 to 1; 5 % v/v is
    /// 0.05.</param>
    /// <returns>NaOCl in the bath, % w/v.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of range.</exception>
    public static double BathPercent(double productPercent, double productVolumeShare)
    {
        ThrowIfNotPercent(productPercent, nameof(productPercent));
        ThrowIfNotShare(productVolumeShare, nameof(productVolumeShare));
        return productPercent * productVolumeShare;
    }

    /// <summary>Share of product by volume that gives a wanted strength, C2 / C1.</summary>
    /// <param name="productPercent">NaOCl in the product, % w/v, above 0 to 100.</param>
    /// <param name="bathPercent">Wanted NaOCl in the bath, % w/v, 0 to the product's.</param>
    /// <returns>Share of the finished bath, 0 to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A value is out of range, or the product is too weak for the wanted strength.
    /// </exception>
    public static double ProductVolumeShare(double productPercent, double bathPercent)
    {
        ThrowIfNotPercent(productPercent, nameof(productPercent));
        ArgumentOutOfRangeException.ThrowIfZero(productPercent);
        ArgumentOutOfRangeException.ThrowIfNegative(bathPercent);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(bathPercent, productPercent);
        return bathPercent / productPercent;
    }

    /// <summary>What to measure out for a bath.</summary>
    /// <param name="bathLiters">Finished volume, L, above 0.</param>
    /// <param name="productVolumeShare">Product in the finished bath by volume, 0 to 1.</param>
    /// <returns>Product and water in mL. Bleach goes into water, never water into bleach.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of range.</exception>
    public static BleachRecipe Recipe(double bathLiters, double productVolumeShare)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(bathLiters);
        ThrowIfNotShare(productVolumeShare, nameof(productVolumeShare));
        double total = bathLiters * 1000.0;
        return new BleachRecipe(total * productVolumeShare, total * (1.0 - productVolumeShare));
    }

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

    /// <summary>Chlorine left after rinses that each carry a fixed share of liquid over, c · s^n.</summary>
    /// <param name="startMilligramsPerLiter">Chlorine in the bath, mg/L, 0 or more.</param>
    /// <param name="carryOverShare">Share of the liquid that stays on the goods at each rinse, 0 to
    /// 1.</param>
    /// <param name="rinses">Number of rinses in fresh water, 0 or more.</param>
    /// <returns>Chlorine in the last rinse, mg/L. Chlorine eaten by dirt or lost to air is left out: careful
    /// side.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of range.</exception>
    public static double AfterRinsesMilligramsPerLiter(
        double startMilligramsPerLiter,
        double carryOverShare,
        int rinses
    )
    {
        ArgumentOutOfRangeException.ThrowIfNegative(startMilligramsPerLiter);
        ThrowIfNotShare(carryOverShare, nameof(carryOverShare));
        ArgumentOutOfRangeException.ThrowIfNegative(rinses);
        return startMilligramsPerLiter * Math.Pow(carryOverShare, rinses);
    }

    /// <summary>
    /// Sodium thiosulfate pentahydrate that binds a mass of chlorine, from Cl2 + 2 S2O3²⁻ → S4O6²⁻ + 2 Cl⁻:
    /// 2 × 248.18 / 70.906 = 7.00 mg per mg.
    /// </summary>
    /// <param name="chlorineMilligrams">Chlorine as Cl2, mg, 0 or more.</param>
    /// <returns>Sodium thiosulfate pentahydrate, mg.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The mass is negative.</exception>
    public static double ThiosulfateMilligrams(double chlorineMilligrams)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(chlorineMilligrams);
        return chlorineMilligrams
            * ThiosulfatePerChlorine
            * Constants.ThiosulfatePentahydrateGramsPerMole
            / Constants.ChlorineGramsPerMole;
    }

    /// <summary>
    /// Ammonia set free when thiosulfate breaks monochloramine: one N for each Cl2 equivalent,
    /// 14.007/70.906 = 0.198 mg N per mg. Thiosulfate alone does not make chloramine water safe.
    /// </summary>
    /// <param name="boundChlorineMilligrams">Chlorine bound in NH2Cl, mg as Cl2, 0 or more.</param>
    /// <returns>Ammonia nitrogen, mg N.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The mass is negative.</exception>
    public static double AmmoniaFromChloramineMilligrams(double boundChlorineMilligrams)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(boundChlorineMilligrams);
        return boundChlorineMilligrams * Constants.NitrogenGramsPerMole / Constants.ChlorineGramsPerMole;
    }

    private static void ThrowIfNotPercent(double value, string name)
    {
        if (!(value >= 0.0 && value <= 100.0))
        {
            throw new ArgumentOutOfRangeException(name, value, "Must be 0 to 100 %.");
        }
    }

    private static void ThrowIfNotShare(double value, string name)
    {
        if (!(value >= 0.0 && value <= 1.0))
        {
            throw new ArgumentOutOfRangeException(name, value, "Must be 0 to 1.");
        }
    }
}

/// <summary>What to measure out for a bleach bath.</summary>
/// <param name="ProductMilliliters">Bleach product, mL.</param>
/// <param name="WaterMilliliters">Water, mL.</param>
public readonly record struct BleachRecipe(double ProductMilliliters, double WaterMilliliters);
