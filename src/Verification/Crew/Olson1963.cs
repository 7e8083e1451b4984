using Litterfall.Domain.Figures;
using Litterfall.Physics.Crew;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Crew;

/// <summary>
/// Olson, J. S. 1963, Ecology 44:322: exponential decay with steady supply. Closed forms: half-life ln 2/k,
/// 95 % of steady state after 3/k (−ln 0.05 = 2.996), steady state I/k.
/// </summary>
public static class Olson1963
{
    /// <summary>The cases.</summary>
    /// <returns>The comparisons with this source.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        yield return Case("half-life, k = 1 per year", "y", 0.6931, 5e-5, () => Olson.HalfLife(1.0));
        yield return Case("time to 95 % of steady state, k = 1 per year", "y", 3.0, 0.05, () =>
            Olson.TimeToNinetyFivePercent(1.0)
        );
        yield return Case("share left after one half-life, k = 0.25 per year", "1", 0.5, 1e-12, () =>
            Olson.RemainingShare(0.25, Olson.HalfLife(0.25))
        );
        yield return Case("k from e^(−2) left after 4 years", "1/y", 0.5, 1e-12, () =>
            Olson.DecayConstant(Math.Exp(-2.0), 4.0)
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
            Source = "Olson 1963",
            Subject = "Crew",
            Quantity = quantity,
            Unit = unit,
            Expected = expected,
            Got = got,
            Tolerance = tolerance,
            Reason = "Half a unit of the last digit; exact identities to rounding.",
            Evidence = Evidence.ClosedForm,
            Provenance = Provenance.Recomputed,
        };
}
