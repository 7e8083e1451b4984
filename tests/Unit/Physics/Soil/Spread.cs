using CsCheck;

namespace Litterfall.UnitTests.Physics.Soil;

/// <summary>
/// Numbers evenly spread; <c>Gen.Double[from, to]</c> prefers its ends and round numbers.
/// </summary>
internal static class Spread
{
    /// <summary>Evenly from one number to another.</summary>
    public static Gen<double> Between(double from, double to) =>
        Gen.Double.Unit.Select(share => from + (share * (to - from)));

    /// <summary>Evenly in the logarithm.</summary>
    public static Gen<double> Decades(double from, double to) =>
        Between(Math.Log(from), Math.Log(to)).Select(Math.Exp);
}
