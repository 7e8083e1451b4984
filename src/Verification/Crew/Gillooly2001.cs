using Litterfall.Domain.Figures;
using Litterfall.Physics;
using Litterfall.Physics.Crew;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Crew;

/// <summary>
/// Gillooly, J. F. et al. 2001, Science 293:2248, amphibian line as coded in a library of thermal biology
/// (code read): B = exp(16.68 − 5760/T) M^0.75/60. Values by hand.
/// </summary>
public static class Gillooly2001
{
    /// <summary>The cases.</summary>
    /// <returns>The comparisons with this source.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        // 5760/298.15 = 19.31914, e^(−2.63914) = 0.071423, /60
        yield return Case("1 g at 25 °C", "mW", 1.1904, 5e-5, () =>
            1e3 * Gillooly.RestingWatts(1.0, Kelvins(25.0))
        );
        yield return Case("1 g at 25 °C", "J/d", 102.8, 0.1, () =>
            86400.0 * Gillooly.RestingWatts(1.0, Kelvins(25.0))
        );
        // 5760/297.15 = 19.38415; 4.5^0.75 = 3.0897
        yield return Case("4.5 g at 24 °C", "J/d", 297.8, 0.1, () =>
            86400.0 * Gillooly.RestingWatts(4.5, Kelvins(24.0))
        );
    }

    private static double Kelvins(double celsius) => Constants.ZeroCelsiusKelvin + celsius;

    private static VerificationCase Case(
        string quantity,
        string unit,
        double expected,
        double tolerance,
        Func<double> got
    ) =>
        new()
        {
            Source = "Gillooly et al. 2001",
            Subject = "Crew",
            Quantity = quantity,
            Unit = unit,
            Expected = expected,
            Got = got,
            Tolerance = tolerance,
            Reason = "Half a unit of the last digit, one unit for J/d.",
            Evidence = Evidence.OtherCode,
            Provenance = Provenance.Recomputed,
            KnownDisagreement =
                "White et al. 2006 (Biol. Lett. 2:125) find different mass exponents for "
                + "vertebrate classes; 0.88 for amphibians (recalled).",
        };
}
