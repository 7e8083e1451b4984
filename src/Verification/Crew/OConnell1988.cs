using Litterfall.Domain.Figures;
using Litterfall.Physics.Crew;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Crew;

/// <summary>
/// O'Connell, A. M. 1988 (abstract read): karri eucalypt leaves lose 47 to 55 % in 82 weeks. k = −ln(0.53)
/// and −ln(0.45) over 82·7/365.25 years.
/// </summary>
public static class OConnell1988
{
    /// <summary>The cases.</summary>
    /// <returns>The comparisons with this source.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        yield return Case("k, 47 % lost in 82 weeks", "1/y", 0.404, 5e-4, () =>
            Olson.DecayConstant(0.53, 82.0 * 7.0 / 365.25)
        );
        yield return Case("k, 55 % lost in 82 weeks", "1/y", 0.508, 5e-4, () =>
            Olson.DecayConstant(0.45, 82.0 * 7.0 / 365.25)
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
            Source = "O'Connell 1988",
            Subject = "Crew",
            Quantity = quantity,
            Unit = unit,
            Expected = expected,
            Got = got,
            Tolerance = tolerance,
            Reason = "Half a unit of the last digit.",
            Evidence = Evidence.ClosedForm,
            Provenance = Provenance.Recomputed,
        };
}
