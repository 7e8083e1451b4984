using Litterfall.Domain.Figures;
using Litterfall.Physics;
using Litterfall.Physics.Crew;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Crew;

/// <summary>
/// Emerson, K., Russo, R. C., Lund, R. E. and Thurston, R. V. 1975, J. Fish. Res. Board Can. 32:2379
/// (equation recalled): un-ionized share of ammonia. Shares by hand from pKa = 0.09018 + 2729.92/T; the pKa
/// of ammonium at 25 °C from handbooks of chemistry, 9.25 (recalled).
/// </summary>
public static class Emerson1975
{
    /// <summary>The cases.</summary>
    /// <returns>The comparisons with this source.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        // pKa(25 °C) = 9.24638, 1/(1 + 10^1.24638); pKa(20 °C) = 9.40255, 1/(1 + 10^2.40255) and 10^1.40255
        yield return Case("share at 25 °C, pH 8", "1", 0.05366, 5e-6, () => Share(25.0, 8.0));
        yield return Case("share at 20 °C, pH 7", "1", 0.00394, 5e-6, () => Share(20.0, 7.0));
        yield return Case("share at 20 °C, pH 8", "1", 0.03807, 5e-6, () => Share(20.0, 8.0));
        yield return Case("pH at which half is un-ionized, 25 °C", "1", 9.25, 0.005, () =>
            8.0 + Math.Log10((1.0 / Share(25.0, 8.0)) - 1.0)
        ) with
        {
            Evidence = Evidence.PrintedTable,
        };
    }

    private static double Share(double celsius, double ph) =>
        Emerson.UnionizedShare(Constants.ZeroCelsiusKelvin + celsius, ph);

    private static VerificationCase Case(
        string quantity,
        string unit,
        double expected,
        double tolerance,
        Func<double> got
    ) =>
        new()
        {
            Source = "Emerson et al. 1975",
            Subject = "Crew",
            Quantity = quantity,
            Unit = unit,
            Expected = expected,
            Got = got,
            Tolerance = tolerance,
            Reason = "Half a unit of the last digit.",
            Evidence = Evidence.ClosedForm,
            Provenance = Provenance.Recalled,
            KnownDisagreement =
                "The manual of one R package prints 2727.92 in place of 2729.92; a dozen "
                + "other programs use 2729.92.",
        };
}
