using Litterfall.Domain.Figures;
using Litterfall.Physics.Air;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Air;

/// <summary>
/// IAPWS R7-97(2012), table 35: check value of the saturation-pressure equation (read as ten public programs
/// repeat it in their tests).
/// </summary>
public static class IapwsTable35
{
    private static readonly CaseSource Source = new(
        "Air",
        "IAPWS R7-97(2012), table 35",
        Evidence.PrintedTable,
        Provenance.Read
    );

    /// <summary>The cases.</summary>
    /// <returns>The one check value within our range.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        const string Reason = "Hyland and Wexler lie up to 2.2e-4 below.";
        yield return Source.Case($"saturation pressure at 300 K", "Pa", (3536.58941, 1.06), Reason, () =>
            MoistAir.SaturationPressure(26.85)
        );
        yield return Source.Case($"temperature at 3536.58941 Pa", "K", (300.0, 5e-3), Reason, () =>
            MoistAir.DewPoint(3536.58941) + 273.15
        );
    }
}
