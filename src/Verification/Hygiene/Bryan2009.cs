using Litterfall.Domain.Figures;
using Litterfall.Physics.Hygiene;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Hygiene;

/// <summary>
/// Bryan, L. K. et al. 2009, Dis. Aquat. Org. 84:89-94 (abstract read): bleach against Ranavirus. 3 % and 5 %
/// worked at 1 and 5 min; 0.2 % and 1 % did not.
/// </summary>
public static class Bryan2009
{
    /// <summary>The cases.</summary>
    /// <returns>Verdicts: 1 sufficient, 0 not shown, −1 shown to fail.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        yield return Case("2 % v/v, 5 min, not tried", 0.0, 2.0, 300.0);
        yield return Case("3 % v/v, 30 s, not tried", 0.0, 3.0, 30.0);
    }

    private static double Verdict(double percent, double seconds) =>
        DisinfectionDose.Ranavirus.Judge(percent, seconds) switch
        {
            DoseVerdict.Sufficient => 1.0,
            DoseVerdict.ShownToFail => -1.0,
            _ => 0.0,
        };

    private static VerificationCase Case(string quantity, double expected, double percent, double seconds) =>
        new()
        {
            Source = "Own worked example, bleach between published trials",
            Subject = "Hygiene",
            Quantity = quantity + " (1 sufficient, 0 not shown, −1 shown to fail)",
            Unit = "1",
            Expected = expected,
            Got = () => Verdict(percent, seconds),
            Tolerance = 0.0,
            Reason = "A published dose is met or it is not.",
            Evidence = Evidence.WorkedExample,
            Provenance = Provenance.Read,
            KnownDisagreement =
                "The abstract does not say whether the percentage is of product or of NaOCl; "
                + "product by volume is assumed.",
        };
}
