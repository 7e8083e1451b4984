using Litterfall.Domain.Figures;
using Litterfall.Physics.Crew;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Crew;

/// <summary>
/// Coleman, K. and Jenkinson, D. S. 1996, RothC-26.3 (released code read): temperature factor of
/// decomposition. Expected values by hand from the coefficients in the code; the rounded coefficients 47.9,
/// 106, 18.3 of an R soil library (read) as other code; the factor is 1 at the mean temperature of
/// Rothamsted, 9.3 °C (recalled).
/// </summary>
public static class ColemanJenkinson1996
{
    /// <summary>The cases.</summary>
    /// <returns>The comparisons with this source.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        // 106.06/42.27 = 2.50911, e^ = 12.2940, 47.91/13.2940; 106.06/28.27 = 3.75168, e^ = 42.5927,
        // 47.91/43.5927
        yield return Case("a(24 °C)", "1", 3.6039, 5e-5, () => RothC.TemperatureFactor(24.0));
        yield return Case("a(10 °C)", "1", 1.0990, 5e-5, () => RothC.TemperatureFactor(10.0));
        yield return Case("a(24 °C) over a(10 °C)", "1", 3.279, 5e-4, () =>
            RothC.TemperatureFactor(24.0) / RothC.TemperatureFactor(10.0)
        );
        // 47.9/(1 + e^(106/42.3)) = 3.6120: the last digits of the three rounded coefficients move it by 0.3
        // %
        yield return Case("a(24 °C), rounded coefficients of other code", "1", 3.612, 0.011, () =>
            RothC.TemperatureFactor(24.0)
        ) with
        {
            Provenance = Provenance.Read,
        };
        yield return Case("a(−5.1 °C), frozen", "1", 0.0, 0.0, () => RothC.TemperatureFactor(-5.1)) with
        {
            Provenance = Provenance.Read,
        };
        yield return Case("a(9.3 °C), Rothamsted", "1", 1.0, 0.01, () => RothC.TemperatureFactor(9.3)) with
        {
            Evidence = Evidence.PrintedText,
            Provenance = Provenance.Recalled,
        };
    }

    private static VerificationCase Case(
        string quantity,
        string unit,
        double expected,
        double tolerance,
        Func<double> got
    ) =>
        new()
        {
            Source = "Coleman and Jenkinson 1996, RothC-26.3",
            Subject = "Crew",
            Quantity = quantity,
            Unit = unit,
            Expected = expected,
            Got = got,
            Tolerance = tolerance,
            Reason =
                "Half a unit of the last digit; rounded coefficients and the 0.05 K of 9.3 °C where "
                + "they are the base.",
            Evidence = Evidence.OtherCode,
            Provenance = Provenance.Recomputed,
        };
}
