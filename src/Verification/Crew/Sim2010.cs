using Litterfall.Domain.Figures;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Crew;

/// <summary>
/// Sim, R. R. et al. 2010, J. Zoo Wildl. Med. 41 (abstract read): whole-body vitamin A of foam-nest frogs,
/// 6386 IU/kg with 50 IU on the skin every other day, 1371 IU/kg in the control.
/// </summary>
public static class Sim2010
{
    /// <summary>The cases.</summary>
    /// <returns>The quoted ratio.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        yield return new VerificationCase
        {
            Source = "Sim et al. 2010",
            Subject = "Crew",
            Quantity = "vitamin A, topical over control",
            Unit = "1",
            Expected = 4.66,
            Got = () => 6386.0 / 1371.0,
            Tolerance = 0.005,
            Reason = "Half a unit of the last digit. A division of published counts; tests no model of ours.",
            Evidence = Evidence.PrintedText,
            Provenance = Provenance.Recomputed,
        };
    }
}
