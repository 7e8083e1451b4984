using Litterfall.Domain.Figures;
using Litterfall.Physics.Light;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Light;

/// <summary>
/// Faust, J. E., Light management I (read as quoted with its example): 38.1 µmol/(m² s) over twelve
/// hours.
/// </summary>
public static class Faust
{
    private static readonly CaseSource Source = new(
        "Light",
        "Faust, Light management I, daily light",
        Evidence.PrintedText,
        Provenance.Read
    );

    /// <summary>The cases.</summary>
    /// <returns>The sum of a day.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        yield return Source.Case($"38.1 µmol/(m² s) for 12 h", "mol/m²", (1.6, 0.05), "Half a digit.", () =>
            DailyLight.Integral(38.1, DailyLight.OnSeconds(3600.0 * 6.0, 3600.0 * 18.0))
        );
    }
}
