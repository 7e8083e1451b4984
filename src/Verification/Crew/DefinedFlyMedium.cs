using Litterfall.Domain.Figures;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Crew;

/// <summary>
/// Fruit-fly larvae on a chemically defined medium, Can. J. Zool. (abstract read): 200 larvae grow up in 5
/// mL.
/// </summary>
public static class DefinedFlyMedium
{
    /// <summary>The cases.</summary>
    /// <returns>The quoted ratio.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        yield return new VerificationCase
        {
            Source = "Defined fruit-fly medium, Can. J. Zool.",
            Subject = "Crew",
            Quantity = "larvae to adult",
            Unit = "1/mL",
            Expected = 40.0,
            Got = () => 200.0 / 5.0,
            Tolerance = 0.5,
            Reason = "Half a unit of the last digit. A division of published counts; tests no model of ours.",
            Evidence = Evidence.PrintedText,
            Provenance = Provenance.Recomputed,
        };
    }
}
