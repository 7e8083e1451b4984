using Litterfall.Domain.Figures;
using Litterfall.Physics.Crew;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Crew;

/// <summary>
/// Morón-Ríos, A. and Levy-Tacher, S. I. 2023 (abstract read): leaves of Ochroma pyramidale lose 37 % in
/// 180 days. k = −ln(0.63)/(180/365).
/// </summary>
public static class MoronRios2023
{
    /// <summary>The cases.</summary>
    /// <returns>The comparisons with this source.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        yield return Case("k, 37 % lost in 180 days", "1/y", 0.937, 5e-4, () =>
            Olson.DecayConstant(0.63, 180.0 / 365.0)
        );
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
            Source = "Morón-Ríos and Levy-Tacher 2023",
            Subject = "Crew",
            Quantity = quantity,
            Unit = unit,
            Expected = expected,
            Got = got,
            Tolerance = tolerance,
            Reason = "Half a unit of the last digit, year of 365 days.",
            Evidence = Evidence.ClosedForm,
            Provenance = Provenance.Recomputed,
        };
}
