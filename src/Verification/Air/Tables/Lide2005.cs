using Litterfall.Domain.Figures;
using Litterfall.Physics.Air;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Air.Tables;

/// <summary>
/// Lide, D. R. 2005, CRC Handbook of Chemistry and Physics: vapor pressure of water (read as an
/// encyclopedia quotes it).
/// </summary>
public static class Lide2005
{
    private static readonly CaseSource Source = new(
        "Air",
        "Lide 2005, Handbook of Chemistry and Physics, vapor pressure of water",
        Evidence.PrintedTable,
        Provenance.Read
    );

    /// <summary>The cases.</summary>
    /// <returns>Saturation pressures.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        (double Celsius, double Kilopascals)[] rows =
        [
            (0.0, 0.6113),
            (5.0, 0.8726),
            (10.0, 1.2281),
            (15.0, 1.7056),
            (20.0, 2.3388),
            (25.0, 3.1690),
            (30.0, 4.2455),
            (35.0, 5.6267),
            (40.0, 7.3814),
            (45.0, 9.5898),
            (50.0, 12.3440),
        ];
        foreach (var (celsius, kilopascals) in rows)
        {
            yield return Source.Case(
                $"saturation pressure at {celsius} °C",
                "kPa",
                CaseSource.Within(5e-4, kilopascals),
                "The two equations of state differ by 0.02 %, and the printed digits by 0.01 %.",
                () => MoistAir.SaturationPressure(celsius) / 1000.0
            );
        }
    }
}
