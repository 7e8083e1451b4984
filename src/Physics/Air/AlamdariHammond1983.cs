namespace Litterfall.Physics.Air;

/// <summary>
/// Natural convection at the surfaces of an enclosure by Alamdari and Hammond (1983), Building Services
/// Engineering Research and Technology 4:106 (recalled), W/(m² K), laminar and turbulent joined by the sixth
/// power. Temperature differences are those of virtual temperatures, so that damp air counts as warmer.
/// Differences are rounded off at 0.02 K, and the coefficient kept above 0.3: a still layer conducts too.
/// </summary>
public static class AlamdariHammond1983
{
    private const double SmallKelvin = 0.02;
    private const double Least = 0.3;

    /// <summary>Upright surface.</summary>
    /// <param name="differenceKelvin">Surface less air, K, of either sign.</param>
    /// <param name="heightMeters">Height of the surface, m.</param>
    public static double Vertical(double differenceKelvin, double heightMeters)
    {
        double d2 = Rounded(differenceKelvin);
        double laminar = 1.5 * FourthRoot(Math.Sqrt(d2) / heightMeters);
        double turbulent = 1.23 * Math.Cbrt(Math.Sqrt(d2));
        return Joined(laminar, turbulent);
    }

    /// <summary>Level surface with air rising from it: a warm floor, a cold lid.</summary>
    /// <param name="differenceKelvin">Surface less air, K, of either sign.</param>
    /// <param name="widthMeters">Four times its area over its perimeter, m.</param>
    public static double Unstable(double differenceKelvin, double widthMeters)
    {
        double d2 = Rounded(differenceKelvin);
        double laminar = 1.4 * FourthRoot(Math.Sqrt(d2) / widthMeters);
        double turbulent = 1.63 * Math.Cbrt(Math.Sqrt(d2));
        return Joined(laminar, turbulent);
    }

    /// <summary>Level surface with air lying on it: a cool floor, a warm lid.</summary>
    /// <param name="differenceKelvin">Surface less air, K, of either sign.</param>
    /// <param name="widthMeters">Four times its area over its perimeter, m.</param>
    public static double Stable(double differenceKelvin, double widthMeters)
    {
        double d = Math.Sqrt(Rounded(differenceKelvin));
        return Math.Max(Least, 0.6 * Math.Pow(d / (widthMeters * widthMeters), 0.2));
    }

    private static double Rounded(double kelvin) => (kelvin * kelvin) + (SmallKelvin * SmallKelvin);

    private static double FourthRoot(double x) => Math.Sqrt(Math.Sqrt(x));

    private static double Joined(double a, double b)
    {
        double a2 = a * a;
        double b2 = b * b;
        return Math.Max(Least, Math.Sqrt(Math.Cbrt((a2 * a2 * a2) + (b2 * b2 * b2))));
    }
}
