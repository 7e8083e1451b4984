using Litterfall.Domain.Figures;
using Litterfall.Physics.Air;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Air.Tables;

/// <summary>
/// Wallace, J. M. and Hobbs, P. V. 2006, Atmospheric Science, 2nd ed., exercise 3.8 (question read in
/// a public solution, answers recalled): air of 1000 hPa and 18 °C with a mixing ratio of 6 g/kg.
/// </summary>
public static class WallaceHobbs2006
{
    private static readonly CaseSource Source = new(
        "Air",
        "Wallace and Hobbs 2006, exercise 3.8",
        Evidence.PrintedText,
        Provenance.Recalled
    );

    /// <summary>The cases.</summary>
    /// <returns>A humidity and a dew point.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        yield return Source.Case($"relative humidity", "%", (46.0, 0.6), "Half a digit, and a chart.", () =>
            100.0 * MoistAir.RelativeHumidity(18.0, 0.006, 100_000.0)
        );
        yield return Source.Case($"dew point", "°C", (6.5, 0.2), "A chart.", () =>
            MoistAir.DewPoint(MoistAir.VaporPressure(0.006, 100_000.0))
        );
    }
}
