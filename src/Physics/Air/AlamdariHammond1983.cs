namespace Litterfall.Physics.Air;

/// <summary>
/// Natural convection at the surfaces of an enclosure by Alamdari and Hammond (1983), Building Services
/// Engineering Research and Technology 4:106 (recalled), W/(m² K), laminar and turbulent joined by the sixth
/// power. Temperature differences are those of virtual temperatures, so that damp air counts as warmer.
/// Differences are rounded off at 0.02 K, and the coefficient kept above 0.3: a still layer conducts too.
/// </summary>
public sealed record AlamdariHammond1983
{
    private const double SmallKelvin = 0.02;
    private const double NeutralKelvin = 0.1;
    private const long ThirdOfBias = 0x2A9F_7893_0000_0000;
    private const long FourFifthsOfBias = 0x3325_D000_0000_0000;

    /// <summary>The correlations as published (recalled).</summary>
    public static readonly AlamdariHammond1983 Published = new();

    /// <summary>Upright, laminar: factor on (ΔT/H)^¼, W/(m^(7/4) K^(5/4)).</summary>
    public double WallLaminar { get; init; } = 1.5;

    /// <summary>Upright, turbulent: factor on ΔT^⅓, W/(m² K^(4/3)).</summary>
    public double WallTurbulent { get; init; } = 1.23;

    /// <summary>Level with rising air, laminar: factor on (ΔT/D)^¼, W/(m^(7/4) K^(5/4)).</summary>
    public double LevelLaminar { get; init; } = 1.4;

    /// <summary>Level with rising air, turbulent: factor on ΔT^⅓, W/(m² K^(4/3)).</summary>
    public double LevelTurbulent { get; init; } = 1.63;

    /// <summary>Level with air lying on it: factor on (ΔT/D²)^⅕, W/(m^(8/5) K^(6/5)).</summary>
    public double LevelStable { get; init; } = 0.6;

    /// <summary>Least coefficient, W/(m² K): own choice, a still layer conducts too.</summary>
    public double Least { get; init; } = 0.3;

    /// <summary>Upright surface.</summary>
    /// <param name="differenceKelvin">Surface less air, K, of either sign.</param>
    /// <param name="heightMeters">Height of the surface, m.</param>
    public double Vertical(double differenceKelvin, double heightMeters)
    {
        double d2 = Rounded(differenceKelvin);
        return Joined(Sixth(WallLaminar), Math.Sqrt(d2) / heightMeters, Sixth(WallTurbulent) * d2);
    }

    /// <summary>Level surface with air rising from it: a warm floor, a cold lid.</summary>
    /// <param name="differenceKelvin">Surface less air, K, of either sign.</param>
    /// <param name="widthMeters">Four times its area over its perimeter, m.</param>
    public double Unstable(double differenceKelvin, double widthMeters)
    {
        double d2 = Rounded(differenceKelvin);
        return Joined(Sixth(LevelLaminar), Math.Sqrt(d2) / widthMeters, Sixth(LevelTurbulent) * d2);
    }

    /// <summary>Level surface with air lying on it: a cool floor, a warm lid.</summary>
    /// <param name="differenceKelvin">Surface less air, K, of either sign.</param>
    /// <param name="widthMeters">Four times its area over its perimeter, m.</param>
    public double Stable(double differenceKelvin, double widthMeters)
    {
        double d = Math.Sqrt(Rounded(differenceKelvin));
        return Math.Max(Least, LevelStable * FifthRoot(d / (widthMeters * widthMeters)));
    }

    /// <summary>
    /// Level surface of either kind: within 0.1 K of neither rising nor lying air the two correlations pass
    /// evenly into each other (own choice), because a jump between them has no solution where damp ground
    /// rests on it.
    /// </summary>
    /// <param name="risingKelvin">How much the air at it would rise, K: below 0 it lies.</param>
    /// <param name="widthMeters">Four times its area over its perimeter, m.</param>
    public double Level(double risingKelvin, double widthMeters)
    {
        double share = Math.Clamp(0.5 + (0.5 * risingKelvin / NeutralKelvin), 0.0, 1.0);
        return share <= 0.0 ? Stable(risingKelvin, widthMeters)
            : share >= 1.0 ? Unstable(risingKelvin, widthMeters)
            : (share * Unstable(risingKelvin, widthMeters))
                + ((1.0 - share) * Stable(risingKelvin, widthMeters));
    }

    private static double Rounded(double kelvin) => (kelvin * kelvin) + (SmallKelvin * SmallKelvin);

    private static double Sixth(double x) => x * x * x * (x * x * x);

    /// <summary>
    /// Sixth root of the sum of sixth powers: of a x^¼, and of b ΔT^⅓, whose sixth power is b⁶ ΔT².
    /// </summary>
    private double Joined(double a6, double x, double turbulent6) =>
        Math.Max(Least, Math.Sqrt(CubeRoot((a6 * x * Math.Sqrt(x)) + turbulent6)));

    /// <summary>
    /// Fifth root of a number above 0, within 1e-12: a fifth of its exponent is within 3.4 %, and each of
    /// Halley's passes leaves twice the cube of that.
    /// </summary>
    private static double FifthRoot(double x)
    {
        double y = BitConverter.Int64BitsToDouble((BitConverter.DoubleToInt64Bits(x) / 5) + FourFifthsOfBias);
        double y2 = y * y;
        double y5 = y2 * y2 * y;
        y *= ((2.0 * y5) + (3.0 * x)) / ((3.0 * y5) + (2.0 * x));
        y2 = y * y;
        y5 = y2 * y2 * y;
        return y * (((2.0 * y5) + (3.0 * x)) / ((3.0 * y5) + (2.0 * x)));
    }

    /// <summary>
    /// Cube root of a number above 0, within 1e-14: a third of its exponent is within 3.5 %, and each of
    /// Halley's passes leaves two thirds of the cube of that.
    /// </summary>
    private static double CubeRoot(double x)
    {
        double y = BitConverter.Int64BitsToDouble((BitConverter.DoubleToInt64Bits(x) / 3) + ThirdOfBias);
        double y3 = y * y * y;
        y *= (y3 + (2.0 * x)) / ((2.0 * y3) + x);
        y3 = y * y * y;
        return y * ((y3 + (2.0 * x)) / ((2.0 * y3) + x));
    }
}
