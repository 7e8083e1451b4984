using Litterfall.Domain.Figures;
using Litterfall.Physics.Air;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Air.Tables;

/// <summary>
/// Moran, M. J. and Shapiro, H. N., Fundamentals of Engineering Thermodynamics, table A-2, after the
/// steam tables of Keenan, Keyes, Hill and Moore (recalled; the row of 25 °C read as a course quotes
/// it).
/// </summary>
public static class MoranShapiro
{
    private static readonly CaseSource Source = new(
        "Air",
        "Moran and Shapiro, Fundamentals of Engineering Thermodynamics, table A-2",
        Evidence.PrintedTable,
        Provenance.Recalled
    );

    /// <summary>The cases.</summary>
    /// <returns>Pressures and enthalpies.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        (double Celsius, double Kilopascals, double Kilojoules)[] rows =
        [
            (20.0, 2.339, 2538.1),
            (25.0, 3.169, 2547.2),
            (30.0, 4.246, 2556.3),
        ];
        foreach (var (celsius, kilopascals, kilojoules) in rows)
        {
            yield return Source.Case(
                $"saturation pressure at {celsius} °C",
                "kPa",
                CaseSource.Within(0.001, kilopascals),
                "Half a digit, and 0.03 % of another equation of state.",
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
