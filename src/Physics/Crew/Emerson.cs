namespace Litterfall.Physics.Crew;

/// <summary>Share of ammonia in fresh water that is un-ionized and so poisonous (Emerson et al.
/// 1975).</summary>
public static class Emerson
{
    // Emerson, Russo, Lund and Thurston 1975, J. Fish. Res. Board Can. 32:2379 (recalled):
    // pKa = 0.09018 + 2729.92 / T_K, f = 1 / (1 + 10^(pKa − pH)). Fresh water, 0 to 50 °C.
    private const double Intercept = 0.09018;
    private const double Slope = 2729.92;

    /// <summary>Un-ionized share of total ammonia.</summary>
    /// <param name="temperatureKelvin">Water temperature, K, 273.15 to 323.15.</param>
    /// <param name="acidityPh">pH, 0 to 14.</param>
    /// <returns>Share, 0 to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of range.</exception>
    public static double UnionizedShare(double temperatureKelvin, double acidityPh)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(temperatureKelvin, Constants.ZeroCelsiusKelvin);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(temperatureKelvin, Constants.ZeroCelsiusKelvin + 50.0);
        ArgumentOutOfRangeException.ThrowIfNegative(acidityPh);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(acidityPh, 14.0);
        double pKa = Intercept + (Slope / temperatureKelvin);
        return 1.0 / (1.0 + Math.Pow(10.0, pKa - acidityPh));
    }
}
