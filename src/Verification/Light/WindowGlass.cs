using Litterfall.Domain.Figures;
using Litterfall.Physics.Light;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Light;

/// <summary>
/// Calculation of the light reflection and transmission in glass, glassproperties.com (read): about 8
/// % is thrown back by common soda-lime window glass, light upright, nothing taken up.
/// </summary>
public static class WindowGlass
{
    private static readonly CaseSource Source = new(
        "Light",
        "glassproperties.com, reflection of window glass",
        Evidence.PrintedText,
        Provenance.Read
    );

    /// <summary>The cases.</summary>
    /// <returns>A share of light.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        yield return Source.Case($"share thrown back, upright", "%", (8.0, 0.5), "Half a digit.", () =>
            100.0 * PaneOptics.Single(0.005, PaneOptics.GlassIndex, 0.0).Back(1.0)
        );
    }
}
