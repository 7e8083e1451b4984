namespace Litterfall.Quantities.Measuring;

/// <summary>
/// Three tests with a bucket, a cup and a stick that turn recalled values into measured ones. Own worked
/// examples: volumes and their ratios, nothing else.
/// </summary>
public static class WorkshopTests
{
    /// <summary>Mixing yield: liters of mix out of so many loose liters of parts.</summary>
    /// <param name="looseLiters">Parts before mixing, L, above 0.</param>
    /// <param name="mixedLiters">Mix after mixing, moist, loosely filled, L, above 0.</param>
    /// <returns>Share, 0 to 1; null where the numbers cannot be right.</returns>
    public static double? MixingYield(double looseLiters, double mixedLiters) =>
        looseLiters > 0.0 && mixedLiters > 0.0 && mixedLiters <= looseLiters
            ? mixedLiters / looseLiters
            : null;

    /// <summary>Settling: what the mix loses in height when the bucket is knocked until it stops.</summary>
    /// <param name="mixedLiters">Before, L, above 0.</param>
    /// <param name="settledLiters">After, L, above 0.</param>
    /// <returns>Share, 0 to below 1; null where the numbers cannot be right.</returns>
    public static double? Settling(double mixedLiters, double settledLiters) =>
        mixedLiters > 0.0 && settledLiters > 0.0 && settledLiters <= mixedLiters
            ? 1.0 - (settledLiters / mixedLiters)
            : null;

    /// <summary>Flow of one nozzle from a cup held under it.</summary>
    /// <param name="milliliters">Caught, mL, above 0.</param>
    /// <param name="seconds">Time, s, above 0.</param>
    /// <returns>mL/min; null where the numbers cannot be right.</returns>
    public static double? NozzleFlow(double milliliters, double seconds) =>
        milliliters > 0.0 && seconds > 0.0 ? milliliters / seconds * 60.0 : null;

    /// <summary>
    /// Share of a drainage layer that takes water, from how far a known volume raises the level in the dip
    /// tube.
    /// </summary>
    /// <param name="liters">Poured in, L, above 0.</param>
    /// <param name="riseMillimeters">Rise of the level, mm, above 0.</param>
    /// <param name="floorSquareMeters">Floor of the layer, m², above 0.</param>
    /// <returns>Share, 0 to 1; null where the numbers cannot be right.</returns>
    public static double? DrainablePorosity(double liters, double riseMillimeters, double floorSquareMeters)
    {
        double layer = riseMillimeters / 1000.0 * floorSquareMeters * 1000.0;
        return liters > 0.0 && layer > 0.0 && liters <= layer ? liters / layer : null;
    }
}
