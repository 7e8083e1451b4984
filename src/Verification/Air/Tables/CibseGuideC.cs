using Litterfall.Domain.Figures;
using Litterfall.Physics.Air;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Air.Tables;

/// <summary>
/// CIBSE Guide C, Reference data, properties of humid air (recalled): the row of 20 °C, 50 %
/// saturation.
/// </summary>
public static class CibseGuideC
{
    private static readonly CaseSource Source = new(
        "Air",
        "CIBSE Guide C, air of 20 °C, half saturated",
        Evidence.PrintedTable,
        Provenance.Recalled
    );

    /// <summary>The cases.</summary>
    /// <returns>Moisture, enthalpy and volume.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        double w = 0.5 * MoistAir.HumidityRatio(20.0, 1.0, MoistAir.StandardPascals);
        yield return Source.Case(
            $"moisture of 20 °C, half saturated",
            "g/kg",
            CaseSource.Within(6e-3, 7.376),
            "The table counts air as a real gas, which takes 0.4 to 0.5 % more vapor.",
            () => 1000.0 * w
        );
        yield return Source.Case(
            $"enthalpy of 20 °C, half saturated",
            "kJ/kg",
            CaseSource.Within(6e-3, 38.84),
            "The same, in the vapor's share of the heat.",
            () => MoistAir.Enthalpy(20.0, w) / 1000.0
        );
        yield return Source.Case(
            $"volume of 20 °C, half saturated",
            "m³/kg",
            CaseSource.Within(1e-3, 0.8402),
            "The same, in the vapor's share of the volume.",
            () => MoistAir.SpecificVolume(20.0, w, MoistAir.StandardPascals)
        );
    }
}
