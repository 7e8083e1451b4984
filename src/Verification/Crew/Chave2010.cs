using Litterfall.Domain.Figures;
using Litterfall.Physics.Crew;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Crew;

/// <summary>
/// Chave, J. et al. 2010, Biogeosciences 7:43 (abstract read): old-growth South American rain forest drops
/// 8.61 Mg/ha, that is 861 g/m², of litter a year. With k = 1.5 per year it holds 861/1.5 g/m².
/// </summary>
public static class Chave2010
{
    /// <summary>The cases.</summary>
    /// <returns>The comparisons with this source.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        yield return Case("litter held at 861 g/m²/y and k = 1.5 per year", "g/m²", 574.0, 0.5, () =>
            Olson.SteadyState(861.0, 1.5)
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
            Source = "Chave et al. 2010",
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
