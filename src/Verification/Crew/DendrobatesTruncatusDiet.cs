using Litterfall.Domain.Figures;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Crew;

/// <summary>
/// Diet of Dendrobates truncatus, Middle Magdalena valley, Colombia (abstract read): 824 prey in 25
/// stomachs.
/// </summary>
public static class DendrobatesTruncatusDiet
{
    /// <summary>The cases.</summary>
    /// <returns>The quoted ratio.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        yield return new VerificationCase
        {
            Source = "Diet study of Dendrobates truncatus, Middle Magdalena",
            Subject = "Crew",
            Quantity = "prey per stomach",
            Unit = "1",
            Expected = 33.0,
            Got = () => 824.0 / 25.0,
            Tolerance = 0.05,
            Reason = "Half a unit of the last digit. A division of published counts; tests no model of ours.",
            Evidence = Evidence.PrintedText,
            Provenance = Provenance.Recomputed,
        };
    }
}
