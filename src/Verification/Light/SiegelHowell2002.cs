using Litterfall.Domain.Figures;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Light;

/// <summary>
/// Siegel, R. and Howell, J. R. 2002, Thermal Radiation Heat Transfer, 4th ed., p. 843: equal plates
/// that face each other (example read in a library of heat transfer that computes the formula).
/// </summary>
public static class SiegelHowell2002
{
    private static readonly CaseSource Source = new(
        "Light",
        "Siegel and Howell 2002, 4th edition, p. 843",
        Evidence.PrintedText,
        Provenance.Read
    );

    /// <summary>The cases.</summary>
    /// <returns>A view factor.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        yield return Source.Case($"1 m by 1.5 m, 0.5 m apart", "1", (0.4756, 5e-5), "Half a digit.", () =>
            RectanglePair.Facing(1.0, 1.5, 0.5)
        );
    }
}
