using Litterfall.Domain.Figures;
using Litterfall.Physics.Floor;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Floor;

/// <summary>
/// Own worked example, float check: 50 mm of aggregate with 42 % voids under moist soil of 490 kg/m³. Lift is
/// h · 0.58 · 1000, weight is 0.05 · bulk density + soil depth · 490, both kg/m².
/// </summary>
public static class OwnFloatCheck
{
    private const double Clay = 350.0;
    private const double Perlite = 100.0;
    private const double SoilDensity = 490.0;

    /// <summary>The cases.</summary>
    /// <returns>Safety ratios and balance heights of clay and perlite.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        // (17.5 + 34.3)/29 = 1.786
        yield return Case("safety ratio when full, clay under 70 mm soil", "1", 1.786, 0.0005, () =>
            AggregateFlotation.SafetyRatioWhenFull(Layer(Clay, 0.070))
        );
        // (17.5 + 12.25)/580 = 0.05129 m
        yield return Case("balance height, clay under 25 mm soil", "cm", 5.129, 0.0005, () =>
            100.0 * AggregateFlotation.BalanceHeightMeters(Layer(Clay, 0.025))
        );
        // (5 + 12.25)/580 = 0.02974 m
        yield return Case("balance height, perlite under 25 mm soil", "cm", 2.974, 0.0005, () =>
            100.0 * AggregateFlotation.BalanceHeightMeters(Layer(Perlite, 0.025))
        );
    }

    private static AggregateLayer Layer(double bulkDensity, double soilMeters) =>
        new(0.050, bulkDensity, 0.42, soilMeters * SoilDensity);

    private static VerificationCase Case(
        string quantity,
        string unit,
        double expected,
        double tolerance,
        Func<double> got
    ) =>
        new()
        {
            Source = "Own worked example, float check",
            Subject = "Floor",
            Quantity = quantity,
            Unit = unit,
            Expected = expected,
            Got = got,
            Tolerance = tolerance,
            Reason = "By hand to four digits.",
            Evidence = Evidence.WorkedExample,
            Provenance = Provenance.Recomputed,
        };
}
