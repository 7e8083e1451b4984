using Litterfall.Domain.Figures;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Crew;

/// <summary>
/// Woodhead, C. et al. 2007, Herpetol. J. 17 (abstract read): Mantella aurantiaca, 5492 prey in 65
/// stomachs.
/// </summary>
public static class Woodhead2007
{
    /// <summary>The cases.</summary>
    /// <returns>The quoted ratio.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        yield return new VerificationCase
        {
            Source = "Woodhead et al. 2007",
            Subject = "Crew",
            Quantity = "prey per stomach",
            Unit = "1",
            Expected = 84.5,
            Got = () => 5492.0 / 65.0,
            Tolerance = 0.05,
            Reason = "Half a unit of the last digit. A division of published counts; tests no model of ours.",
            Evidence = Evidence.PrintedText,
            Provenance = Provenance.Recomputed,
        };
    }
}
