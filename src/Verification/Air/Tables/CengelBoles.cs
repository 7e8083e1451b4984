using Litterfall.Domain.Figures;
using Litterfall.Physics.Air;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Air.Tables;

/// <summary>
/// Cengel, Y. A. and Boles, M. A., Thermodynamics: An Engineering Approach, table A-4 (recalled).
/// </summary>
public static class CengelBoles
{
    private static readonly CaseSource Source = new(
        "Air",
        "Cengel and Boles, Thermodynamics, table A-4",
        Evidence.PrintedTable,
        Provenance.Recalled
    );

    /// <summary>The cases.</summary>
    /// <returns>Pressures and enthalpies.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        (double Celsius, double Kilopascals, double Kilojoules)[] rows =
        [
            (20.0, 2.3392, 2537.4),
            (25.0, 3.1698, 2546.5),
            (30.0, 4.2469, 2555.6),
        ];
        foreach (var (celsius, kilopascals, kilojoules) in rows)
        {
            yield return Source.Case(
                $"saturation pressure at {celsius} °C",
                "kPa",
                CaseSource.Within(0.0005, kilopascals),
                "0.02 % of another equation of state.",
                () => MoistAir.SaturationPressure(celsius) / 1000.0
            );
            yield return Source.Case(
                $"enthalpy of saturated vapor at {celsius} °C",
                "kJ/kg",
                CaseSource.Within(6e-4, kilojoules),
                "Our straight line lies up to 0.05 % over the steam tables at 30 °C.",
                () => MoistAir.VaporEnthalpy(celsius) / 1000.0
            );
        }
    }
}
