using Litterfall.Domain.Figures;
using Litterfall.Physics.Crew;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Crew;

/// <summary>
/// Tuomi, M. et al. 2009 (Yasso07; summary read): mass left after two years, deciduous leaves in the wet
/// tropics 15 %, conifer needles in tundra 68 %. k = −ln(0.15)/2 and −ln(0.68)/2.
/// </summary>
public static class Tuomi2009
{
    /// <summary>The cases.</summary>
    /// <returns>The comparisons with this source.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        yield return Case("k, 15 % left after 2 years", "1/y", 0.949, 5e-4, () =>
            Olson.DecayConstant(0.15, 2.0)
        );
        yield return Case("k, 68 % left after 2 years", "1/y", 0.193, 5e-4, () =>
            Olson.DecayConstant(0.68, 2.0)
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
            Source = "Tuomi et al. 2009",
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
