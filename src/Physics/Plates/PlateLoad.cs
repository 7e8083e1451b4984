namespace Litterfall.Physics.Plates;

/// <summary>
/// Wet soil behind a pane, with a water table in it.
/// </summary>
/// <param name="SoilHeightMeters">Height of the soil surface above the bottom edge, m.</param>
/// <param name="WaterTableMeters">Height of the water table above the bottom edge, m, at most the soil
/// height.</param>
/// <param name="BulkDensity">Bulk density of the wet soil, kg/m³; vivarium mixes run from 800 to
/// 1400.</param>
/// <param name="RestCoefficient">
/// Earth pressure coefficient at rest K0, 0 to 1; 1 − sin φ of Jaky (1944), about 0.5 (recalled).
/// </param>
public readonly record struct WetSoil(
    double SoilHeightMeters,
    double WaterTableMeters,
    double BulkDensity,
    double RestCoefficient = 0.5
);

/// <summary>Pressure lines over the height of a pane, as knots for <see cref="LevyPlate"/>.</summary>
public static class PlateLoad
{
    /// <summary>The same pressure everywhere.</summary>
    /// <param name="pressurePascals">Pressure, Pa.</param>
    /// <param name="heightMeters">Height of the pane, m, above 0.</param>
    /// <returns>Two knots.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The height is not positive.</exception>
    public static PressureKnot[] Uniform(double pressurePascals, double heightMeters)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(heightMeters);
        return [new(0.0, pressurePascals), new(heightMeters, pressurePascals)];
    }

    /// <summary>Standing water: ρ g (h − y) from the bottom edge to depth h (hydrostatics).</summary>
    /// <param name="depthMeters">Depth of water above the bottom edge, m, above 0.</param>
    /// <returns>Two knots; the pane must be at least as high as the water is deep.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The depth is not positive.</exception>
    public static PressureKnot[] Water(double depthMeters)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(depthMeters);
        double bottom = Constants.WaterDensity * Constants.StandardGravity * depthMeters;
        return [new(0.0, bottom), new(depthMeters, 0.0)];
    }

    /// <summary>
    /// Wet soil at rest: K0 (γ d − u) + u with depth d below the soil surface and pore-water pressure u below
    /// the water table. A soil lighter than its pore water pushes with the water alone (no negative grain
    /// stress).
    /// </summary>
    /// <param name="soil">The soil.</param>
    /// <returns>Two to four knots from the bottom edge to the soil surface.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A height, the density or K0 is out of range.</exception>
    public static PressureKnot[] Of(WetSoil soil)
    {
        ThrowIfImpossible(soil);
        List<double> heights = [0.0];
        double loss = GrainStressZero(soil);
        if (loss > 0.0 && loss < soil.WaterTableMeters)
        {
            heights.Add(loss);
        }

        if (soil.WaterTableMeters > 0.0 && soil.WaterTableMeters < soil.SoilHeightMeters)
        {
            heights.Add(soil.WaterTableMeters);
        }

        heights.Add(soil.SoilHeightMeters);
        return [.. heights.Select(y => new PressureKnot(y, Pressure(soil, y)))];
    }

    private static double Pressure(WetSoil soil, double y)
    {
        double pore =
            Constants.WaterDensity * Constants.StandardGravity * Math.Max(0.0, soil.WaterTableMeters - y);
        double total = soil.BulkDensity * Constants.StandardGravity * (soil.SoilHeightMeters - y);
        return (soil.RestCoefficient * Math.Max(0.0, total - pore)) + pore;
    }

    // Height below the water table where γ(hs − y) = ρw g (hw − y); only for soil lighter than water.
    private static double GrainStressZero(WetSoil soil)
    {
        double lighter = Constants.WaterDensity - soil.BulkDensity;
        double shortfall =
            (Constants.WaterDensity * soil.WaterTableMeters) - (soil.BulkDensity * soil.SoilHeightMeters);
        return lighter > 0.0 ? shortfall / lighter : 0.0;
    }

    private static void ThrowIfImpossible(WetSoil soil)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(soil.SoilHeightMeters, nameof(soil));
        ArgumentOutOfRangeException.ThrowIfNegative(soil.WaterTableMeters, nameof(soil));
        ArgumentOutOfRangeException.ThrowIfGreaterThan(
            soil.WaterTableMeters,
            soil.SoilHeightMeters,
            nameof(soil)
        );
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(soil.BulkDensity, nameof(soil));
        ArgumentOutOfRangeException.ThrowIfNegative(soil.RestCoefficient, nameof(soil));
        ArgumentOutOfRangeException.ThrowIfGreaterThan(soil.RestCoefficient, 1.0, nameof(soil));
    }
}
