using Litterfall.Domain.Figures;
using Litterfall.Physics.Hygiene;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Hygiene;

/// <summary>
/// Becker, M. H. and Gratwicke, B. 2017, PLoS ONE 12(4):e0176439 (abstract read): NaOCl against
/// Batrachochytrium dendrobatidis. 0.12 % killed all at 30 s to 15 min, 0.03 % at 15 min.
/// </summary>
public static class BeckerGratwicke2017
{
    /// <summary>The cases.</summary>
    /// <returns>Verdicts (1 sufficient, 0 not) where nothing was tried.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        yield return Case("0.03 %, 30 s sufficient (1 yes, 0 no)", "1", 0.0, () => Sufficient(0.03, 30.0));
        yield return Case("0.12 %, 20 s sufficient (1 yes, 0 no)", "1", 0.0, () => Sufficient(0.12, 20.0));
    }

    private static double Sufficient(double percent, double seconds) =>
        DisinfectionDose.Chytrid.Judge(percent, seconds) == DoseVerdict.Sufficient ? 1.0 : 0.0;

    private static VerificationCase Case(string quantity, string unit, double expected, Func<double> got) =>
        new()
        {
            Source = "Own worked example, bleach between published trials",
            Subject = "Hygiene",
            Quantity = quantity,
            Unit = unit,
            Expected = expected,
            Got = got,
            Tolerance = 0.0,
            Reason = "A published dose is met or it is not.",
            Evidence = Evidence.WorkedExample,
            Provenance = Provenance.Read,
            KnownDisagreement =
                "Johnson et al. 2003 (Dis. Aquat. Org. 57:255) needed 1 % for 1 min " + "(recalled).",
        };
}
